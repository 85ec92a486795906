package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells of the map against whole runs: of what stands, and of others drawn at random. */
class TradeoffMapTest {
  private static final double A_HUNDREDTH_OF_A_WH = 0.01;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "alder-fold",
        "grandfell-farm",
        "kelp-point",
        "peat-hut",
        "whin-cabin",
        "harrow-combe"
      })
  void aCellIsWhatRunTells(String name) {
    Scenario home = ScenarioReader.read(Path.of("scenarios", name + ".yaml"));
    Trials trials = Trials.of(home, (what, done) -> {});
    TradeoffAxes fine = TradeoffAxes.of(home, TradeoffAsked.USUAL);
    TradeoffAxes axes = TradeoffMap.isFull(trials) ? fine.coarser(2, 2) : fine;
    TradeoffMap map = TradeoffMap.of(trials, axes, 2);
    TradeoffAxes shown = map.axes();
    assertEquals(home, shown.home(shown.presentPanels(), shown.presentBank()));
    assertTrue(map.panels() > 1 && map.banks() > 1);
    var random = new Random(name.hashCode());
    for (int k = 0; k < 4; k++) {
      int i = k == 0 ? shown.presentPanels() : random.nextInt(map.panels());
      int j = k == 0 ? shown.presentBank() : random.nextInt(map.banks());
      Unmet ran = Unmet.of(Study.run(shown.home(i, j), (what, done) -> {}).ledger());
      assertEquals(ran.unmetHours(), map.unmetHours(i, j), 1e-9, name + " " + i + " " + j);
      assertEquals(ran.wh(), map.unmetWh(i, j), A_HUNDREDTH_OF_A_WH, name + " " + i + " " + j);
    }
  }
}
