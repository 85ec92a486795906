package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.ArraySpec;
import greyspell.outcome.GreySpell;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.PlayGrid.Answer;
import java.nio.file.Path;
import java.util.ArrayList;
import org.junit.jupiter.api.Test;

class PlayGridTest {
  private static StudyResult run(String home) {
    return Study.run(ScenarioReader.read(Path.of("scenarios", home + ".yaml")), (what, done) -> {});
  }

  private static void presentIsTheRun(StudyResult result) {
    PlayGrid grid = PlayGrids.of(result);
    var total = result.outcome().total();
    double years = result.ledger().forcing().calendar().years();
    Answer now = grid.present();
    assertEquals(total.unmetHours() / years, now.unmetHours(), 1e-9);
    assertEquals(total.unmetWh() / years, now.unmetWh(), 1e-3);
    assertEquals(total.beyond().generatorHours() / years, now.generatorHours(), 1e-9);
    int month = result.scenario().site().isNorthern() ? 12 : 6;
    assertEquals(result.outcome().autonomy().darkDays().in(month), now.darkDays(), 1e-9);
    double givesWh =
        result.outcome().usableBankWh() * result.scenario().bank().dischargeEfficiency();
    int beating = 0;
    for (GreySpell spell : result.outcome().greySpells()) {
      beating += spell.shortWh() > givesWh ? 1 : 0;
    }
    assertEquals(beating, now.beatingSpells());
  }

  @Test
  void theHomeAsItStandsIsTheRun() {
    presentIsTheRun(run("alder-fold"));
  }

  @Test
  void alsoWhereTheFullLoopIsNeeded() {
    presentIsTheRun(run("harrow-combe"));
  }

  @Test
  void anotherBankIsWhatARunOfItTells() {
    StudyResult result = run("alder-fold");
    PlayGrid grid = PlayGrids.of(result);
    Trials trials = Trials.of(result.scenario(), (what, done) -> {});
    for (int k : new int[] {0, grid.banks().size() - 1}) {
      Scenario home = result.scenario();
      Scenario other = home.withBank(home.bank().withPacks(grid.banks().get(k).packs()));
      Unmet told = trials.run(other).unmet();
      Answer answer = grid.at(grid.presentPanels(), k, grid.presentUse());
      assertEquals(told.unmetHours(), answer.unmetHours(), 1e-9);
      assertEquals(told.wh(), answer.unmetWh(), 1e-3 * Math.max(1.0, told.wh()));
    }
  }

  @Test
  void twiceTheStringsIsCloseToARunOfThem() {
    StudyResult result = run("tamarisk-mesa");
    PlayGrid grid = PlayGrids.of(result);
    Scenario home = result.scenario();
    var arrays = new ArrayList<ArraySpec>();
    for (ArraySpec array : home.arrays()) {
      arrays.add(array.withStrings(array.module(), array.inSeries(), 2 * array.inParallel()));
    }
    int twice = -1;
    for (int k = 0; k < grid.panels().size(); k++) {
      twice = grid.panels().get(k).factor() == 2.0 ? k : twice;
    }
    assertTrue(twice >= 0);
    Scenario more =
        home.withArrays(arrays)
            .withController(home.controller().withCount(2 * home.controller().count()));
    Unmet told = Trials.of(home, (what, done) -> {}).run(more).unmet();
    Answer answer = grid.at(twice, grid.presentBank(), grid.presentUse());
    // the second controller's standby, and the heat of longer wires, are not in the grid
    assertEquals(told.unmetHours(), answer.unmetHours(), 0.1 * told.unmetHours() + 5.0);
  }

  @Test
  void moreIsNeverWorse() {
    PlayGrid grid = PlayGrids.of(run("alder-fold"));
    for (int p = 0; p < grid.panels().size(); p++) {
      for (int b = 0; b < grid.banks().size(); b++) {
        for (int u = 0; u < grid.uses().size(); u++) {
          double wh = grid.at(p, b, u).unmetWh();
          if (p > 0) {
            assertTrue(wh <= grid.at(p - 1, b, u).unmetWh() + 1e-6);
          }
          if (u > 0) {
            assertTrue(wh >= grid.at(p, b, u - 1).unmetWh() - 1e-6);
          }
        }
      }
    }
  }
}
