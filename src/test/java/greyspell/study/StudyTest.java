package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.weather.WeatherSeries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyTest {
  @TempDir private Path folder = Path.of("");

  /** The hut whose controller holds its panel at the bank's voltage, the bank in detail. */
  private Scenario hut(String bankLines) throws IOException {
    String text =
        Files.readString(Path.of("scenarios/peat-hut.yaml"))
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString())
            .replace("bank:\n", "bank:\n" + bankLines);
    Path file = Files.writeString(folder.resolve("hut.yaml"), text);
    return ScenarioReader.read(file, Path.of("shared"));
  }

  @Test
  void aThirdPassOverTheVoltagesChangesFarLessThanTheSecond() throws IOException {
    Scenario hut = hut("  model: detailed\n");
    WeatherSeries weather = Study.read(hut);
    Design design = new HomeDesign(hut, Without.NOTHING).make(weather, new ArrayList<>());
    var usedWh = new double[3];
    var home =
        new HomeForcing(
            hut, HomeLight.of(hut, weather), Without.NOTHING, new ArrayList<>(), new ArrayList<>());
    double[] bankV = null;
    Forcing forcing = null;
    for (int pass = 0; pass < 3; pass++) {
      forcing =
          bankV == null ? home.make() : home.atVoltage(bankV, Objects.requireNonNull(forcing));
      Laps laps = Laps.run(forcing, design, hut.startChargeFraction());
      bankV = laps.ledger().bankV();
      for (double wh : forcing.solarBusWh()) {
        usedWh[pass] += wh;
      }
    }
    double second = Math.abs(usedWh[1] - usedWh[0]), third = Math.abs(usedWh[2] - usedWh[1]);
    assertTrue(second > 1.0, "the voltage makes no difference: " + second);
    assertTrue(third < 0.1 * second, third + " after " + second);
  }

  @Test
  void serviceYearsBeginWithTheRunItselfAndTheBankFades() throws IOException {
    StudyResult result =
        Study.run(hut("  model: detailed\n  service_years: 6\n"), (what, done) -> {});
    var years = result.besides().service();
    assertEquals(6, years.size());
    assertEquals(1.0, years.get(0).healthShare());
    for (int k = 1; k < years.size(); k++) {
      assertTrue(years.get(k).healthShare() < years.get(k - 1).healthShare());
    }
    assertTrue(years.get(5).unmet().wh() > years.get(0).unmet().wh());
  }

  /** Left out one at a time, every loss of energy that this home has leaves less unserved. */
  @Test
  void leavingOutALossNeverLeavesMoreUnserved() throws IOException {
    Scenario hut = hut("  model: detailed\n");
    Trials trials = Trials.of(hut, Study.read(hut));
    double wholeWh = trials.run(hut).unmet().wh();
    var losses =
        EnumSet.of(
            Effect.INCIDENCE,
            Effect.SOILING,
            Effect.HELD_AT_BANK_VOLTAGE,
            Effect.CONTROLLER_LOSS,
            Effect.STANDBY,
            Effect.INVERTER_LOSS,
            Effect.COLD_CAPACITY,
            Effect.CELL_LOSS,
            Effect.SELF_DISCHARGE,
            Effect.TWO_TANKS);
    for (Effect effect : losses) {
      double wh = trials.run(hut, Set.of(effect)).unmet().wh();
      assertTrue(wh <= wholeWh + 1e-6, effect + " " + wh + " against " + wholeWh);
    }
    assertTrue(trials.run(hut, losses).unmet().wh() < 0.8 * wholeWh);
  }
}
