package greyspell.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.report.EffectsText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Effect;
import greyspell.study.Effects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** docs/effects.md is what {@code greyspell effects} writes of all shipped homes. */
class EffectsDocTest {
  @TempDir private Path folder = Path.of("");

  private static final Path PAGE = Path.of("docs/effects.md");

  private static List<Path> homes() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @Test
  void pageIsInStepAndEveryEffectIsMetSomewhere() throws IOException {
    List<Path> files = homes();
    var effects = new ArrayList<Effects>();
    for (Path file : files) {
      effects.add(Effects.of(ScenarioReader.read(file, Path.of("shared"))));
    }
    String page = EffectsText.page(effects, files);
    GeneratedDoc.check(PAGE, page);
    Set<Effect> met = EnumSet.noneOf(Effect.class);
    effects.forEach(home -> meet(home, met));
    meet(Effects.of(awkward()), met);
    meet(Effects.of(asleep()), met);
    assertEquals(
        Set.of(), EnumSet.complementOf(EnumSet.copyOf(met)), "what no home meets is not tried");
  }

  private static void meet(Effects home, Set<Effect> met) {
    home.left().stream().filter(l -> !home.isIdle(l)).forEach(l -> met.add(l.effect()));
  }

  /**
   * Harrow Combe with everything too small, old or in the shade, for what good homes do not meet.
   */
  private Scenario awkward() throws IOException {
    String text =
        harrowCombe()
            .replace(
                "in_series: 5\n    in_parallel: 2",
                "in_series: 2\n    in_parallel: 5\n    shade: 10 %\n    ageing: 5 %")
            .replace(
                "controller: Sable Ridge SR-D70",
                "controller: {from: Sable Ridge SR-D70, start_voltage: 72 V, max_output_current: 4 A}")
            .replace(
                "inverter: Dunmore Ward DW-1600-48 ",
                "inverter: {from: Dunmore Ward DW-1600-48, continuous_power: 0.16 kW, surge_power: 1 kW}")
            .replace("length: 2 m, size: 35 mm2", "length: 20 m, size: 10 mm2")
            .replace(
                "battery: Hallam Tub HT-L16 ",
                "battery: {from: Hallam Tub HT-L16, max_charge: 8 A, taper_from: 40 %, coldest_charge: 9 °C}\n  health: 70 %");
    return read(text);
  }

  /** Harrow Combe with an inverter that wakes for few loads, and no motor to start. */
  private Scenario asleep() throws IOException {
    return read(
        harrowCombe()
            .replace(
                "inverter: Dunmore Ward DW-1600-48 ",
                "inverter: {from: Dunmore Ward DW-1600-48, search: {draw: 1 W, wakes_at: 400 W}}")
            .replaceAll("    - .*(Fridge|Well pump|Washing).*\\n", ""));
  }

  private static String harrowCombe() throws IOException {
    return Files.readString(Path.of("scenarios/harrow-combe.yaml"))
        .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString());
  }

  private Scenario read(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("home.yaml"), text);
    return ScenarioReader.read(file, Path.of("shared"));
  }

  /** Left out, a loss before the bus cannot leave a house of constant efficiencies worse off. */
  @Test
  void lossesOnlyHurt() throws IOException {
    Effects home =
        Effects.of(ScenarioReader.read(Path.of("scenarios/alder-fold.yaml"), Path.of("shared")));
    for (Effects.LeftOut l : home.left()) {
      assertTrue(l.unmet().wh() <= home.whole().wh() + 1.0, l.effect().words());
    }
  }
}
