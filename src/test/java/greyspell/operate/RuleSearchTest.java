package greyspell.operate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.load.Priority;
import greyspell.operate.RuleCard.Price;
import greyspell.operate.RuleCard.Told;
import greyspell.report.RulesText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Trial;
import greyspell.study.Trials;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RuleSearchTest {
  private static final class Once {
    static final Trials ALDER_FOLD =
        Trials.of(ScenarioReader.read(Path.of("scenarios/alder-fold.yaml")), (what, done) -> {});
    static final RuleCard CARD = RuleSearch.of(ALDER_FOLD);
  }

  @Test
  void withoutRulesTheHomeIsAsItIs() {
    Trial trial = Once.ALDER_FOLD.run(Once.ALDER_FOLD.home());
    List<Price> prices = new RulePlay(Once.ALDER_FOLD).prices(List.of());
    for (int w = 0; w < 2; w++) {
      var figures = trial.winters().get(w).figures();
      assertEquals(figures.unmetWh(), prices.get(w).unmetWh(), 1.0);
      assertEquals(figures.unmetHours(), prices.get(w).unmetHours(), 1e-9);
      assertEquals(0.0, prices.get(w).givenUpWh(), 1e-9);
      assertEquals(prices.get(w).unmetWh(), prices.get(w).unmetWithWh(), 1e-9);
    }
  }

  /** A rule that always holds is the home without that appliance. */
  @Test
  void aRuleThatAlwaysHoldsIsTheHomeWithout() {
    Scenario home = Once.ALDER_FOLD.home();
    int number = -1;
    for (int a = 0; a < home.load().appliances().size(); a++) {
      number = home.load().appliances().get(a).name().equals("Television") ? a : number;
    }
    var always = new Rule(1.1, false, List.of(number), "Television");
    List<Price> prices = new RulePlay(Once.ALDER_FOLD).prices(List.of(always));
    var others = new java.util.ArrayList<>(home.load().appliances());
    others.remove(number);
    Trial without =
        Once.ALDER_FOLD.run(
            home.withLoad(
                new greyspell.load.LoadPlan(others, null, home.load().dailyVariationFraction())));
    for (int w = 0; w < 2; w++) {
      assertEquals(without.winters().get(w).figures().unmetWh(), prices.get(w).unmetWithWh(), 1.0);
      assertEquals(
          without.winters().get(w).figures().unmetHours(), prices.get(w).withUnmetHours(), 0.5);
    }
  }

  @Test
  void rulesHelpOnWintersOnWhichTheyWereNotFound() {
    assertFalse(Once.CARD.rules().isEmpty());
    assertTrue(Once.CARD.rules().size() <= 3);
    assertEquals(1, Once.CARD.learnt().size());
    assertEquals(1, Once.CARD.tried().size());
    assertFalse(Once.CARD.learnt().contains(Once.CARD.tried().get(0)));
    for (Told told : Once.CARD.rules()) {
      assertTrue(told.learnt().avoidedWh() > 0.0);
      assertTrue(told.tried().unmetWithWh() < told.tried().unmetWh());
      assertTrue(told.tried().givenUpWh() > 0.0);
      for (int a : told.rule().appliances()) {
        var appliance = Once.ALDER_FOLD.home().load().appliances().get(a);
        assertFalse(appliance.priority() == Priority.MUST_RUN || appliance.isMedical());
      }
    }
    String text = RulesText.of(Once.CARD);
    assertTrue(text.contains("leaves"), text);
    assertTrue(text.contains("Found on 1 winter, tried on 1 other"), text);
    assertTrue(text.contains("With it the winter " + Once.CARD.tried().get(0) + " has"), text);
    boolean isSkyAsked = Once.CARD.rules().stream().anyMatch(told -> told.rule().ifGrey());
    assertEquals(isSkyAsked, text.contains("A grey day ahead is"), text);
  }
}
