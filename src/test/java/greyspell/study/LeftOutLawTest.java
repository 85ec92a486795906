package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Forcing;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Left out of a run, or taken out of the scenario: nearly the same goes unserved. */
final class LeftOutLawTest {
  private static final ScenarioEdit SNOWY = ScenarioEdit.of(Path.of("scenarios/sedge-island.yaml"));

  private static double unmetWh(Trials trials, Scenario home, Set<Effect> leftOut) {
    return Arrays.stream(trials.books(0, home, leftOut).unmetWh()).sum();
  }

  /**
   * Losses after the one that is left out are not worked out anew, so a few hundredths lie between.
   */
  @ParameterizedTest
  @CsvSource({
    "SNOW, arrays[0].snow, none, 0.03",
    "SOILING, arrays[0].soiling, 0 %, 0.1",
    "SHADE, arrays[0].shade, 0 %, 0.1",
    "GROWTH, loads.growth, 0 %, 1e-9",
    "BANK_HEALTH, bank.health, 100 %, 1e-9"
  })
  void whatIsLeftOutIsAsIfItWereNotThere(Effect effect, String key, String value, double share) {
    Scenario home = SNOWY.set("arrays[0].shade", "6 %").set("bank.health", "85 %").scenario(null);
    Scenario changed =
        SNOWY
            .set("arrays[0].shade", "6 %")
            .set("bank.health", "85 %")
            .set(key, value)
            .scenario(null);
    Trials trials = Trials.of(home, (what, done) -> {});
    double nowWh = unmetWh(trials, home, Set.of());
    double savedWh = nowWh - unmetWh(trials, changed, Set.of());
    assertTrue(savedWh > 100.0, effect.key());
    assertEquals(savedWh, nowWh - unmetWh(trials, home, EnumSet.of(effect)), share * savedWh);
  }

  /** Clean glass under snow is dark glass. */
  @Test
  void snowHoldsBackWhatDirtNoLongerDoes() {
    Scenario home = SNOWY.set("arrays[0].soiling", "30 %").scenario(null);
    Scenario clean = SNOWY.set("arrays[0].soiling", "0 %").scenario(null);
    Trials trials = Trials.of(home, (what, done) -> {});
    Forcing.Columns dirty = trials.forcing(0, home, Set.of()).columns();
    Forcing.Columns given = trials.forcing(0, home, EnumSet.of(Effect.SOILING)).columns();
    Forcing.Columns washed = trials.forcing(0, clean, Set.of()).columns();
    int covered = 0;
    for (int h = 0; h < dirty.solarAvailableWh.length; h++) {
      double sumWh = given.solarAvailableWh[h];
      for (var loss : given.arrayLosses) {
        sumWh += loss.wh()[h];
      }
      assertEquals(given.solarNominalWh[h], sumWh, 1e-6);
      if (dirty.solarNominalWh[h] > 50.0 && washed.solarAvailableWh[h] == 0.0) {
        covered++;
        assertEquals(0.0, given.solarAvailableWh[h], 1e-6);
      }
    }
    assertTrue(covered > 100, covered + " hours under snow");
  }
}
