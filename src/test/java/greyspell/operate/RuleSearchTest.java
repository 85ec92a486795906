package greyspell.operate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Ledger;
import greyspell.calendar.Winter;
import greyspell.load.Priority;
import greyspell.operate.RuleCard.Price;
import greyspell.operate.RuleCard.Told;
import greyspell.power.FuelUse;
import greyspell.report.RulesCardPage;
import greyspell.report.RulesJson;
import greyspell.report.RulesText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Trial;
import greyspell.study.Trials;
import greyspell.study.WintersWanted;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

  /** Bank with voltage, generator, loads let go by their class: what {@code run} tells of it. */
  @Test
  void aHomeWithRulesOfItsOwnIsToldAsRunTellsIt() {
    Trials trials =
        Trials.of(ScenarioReader.read(Path.of("scenarios/harrow-combe.yaml")), (what, done) -> {});
    Scenario home = trials.home();
    int number = number(home, "Television");
    var play = new RulePlay(trials);
    List<Price> none = play.prices(List.of());
    List<Price> always = play.prices(List.of(new Rule(1.1, false, List.of(number), "Television")));
    var others = new java.util.ArrayList<>(home.load().appliances());
    others.remove(number);
    Trial as = trials.run(home);
    Trial without = trials.run(home.withLoad(home.load().withAppliances(others)));
    for (int w = 0; w < 2; w++) {
      var asIs = as.winters().get(w).figures();
      assertEquals(asIs.unmetWh(), none.get(w).unmetWh(), 1.0);
      assertEquals(asIs.unmetHours(), none.get(w).unmetHours(), 1e-9);
      var figures = without.winters().get(w).figures();
      assertTrue(Math.abs(asIs.unmetWh() - figures.unmetWh()) > 100.0, "the television matters");
      // the bank's voltage, and with it the wires' loss, is that of the home as it is
      assertEquals(figures.unmetWh(), always.get(w).unmetWithWh(), 0.02 * figures.unmetWh());
    }
    saved(trials, none, always);
  }

  /** Litres are those of the books, and stand in words, figures and on the card. */
  private static void saved(Trials trials, List<Price> none, List<Price> always) {
    Scenario home = trials.home();
    Ledger ledger = trials.books(0, home, Set.of());
    var wh = new double[ledger.hours()];
    var on = new double[ledger.hours()];
    for (int h = 0; h < wh.length; h++) {
      wh[h] = ledger.generatorWh(h);
      on[h] = ledger.isGeneratorOn(h) ? 1.0 : 0.0;
    }
    var generator = home.generator();
    assertNotNull(generator);
    FuelUse fuel = FuelUse.of(generator.spec(), wh, on);
    List<Winter> winters =
        ledger.forcing().calendar().winters(true).stream().filter(Winter::isWhole).toList();
    for (int w = 0; w < 2; w++) {
      double burntL = fuel.totalL(winters.get(w).fromHour(), winters.get(w).toHour());
      assertEquals(burntL, none.get(w).fuelL(), 1e-6);
      assertEquals(burntL, none.get(w).fuelWithL(), 1e-6);
      assertEquals(burntL, always.get(w).fuelL(), 1e-6);
      assertTrue(always.get(w).fuelWithL() < burntL - 1.0, "less is asked for");
    }
    var rule = new Rule(1.1, false, List.of(0), "Television");
    Price price = always.get(1);
    var card =
        new RuleCard(
            home, List.of(new Told(rule, price, price)), List.of("a"), List.of("b"), false);
    String litres =
        "Fuel: " + Math.round(price.fuelL()) + " → " + Math.round(price.fuelWithL()) + " L.";
    assertTrue(RulesText.of(card).replaceAll("\\s+", " ").contains(litres), litres);
    assertFalse(RulesText.of(Once.CARD).contains("Fuel"), "no generator there");
  }

  @Test
  void litresStandInTheFileForProgramsWhereThereIsAGenerator() throws Exception {
    Scenario combe = ScenarioReader.read(Path.of("scenarios/harrow-combe.yaml"));
    var rule = new Rule(0.5, false, List.of(0), "Television");
    var told = new Told(rule, price(158.25, 140.25), price(90.0, 91.0));
    var card = new RuleCard(combe, List.of(told), List.of("a"), List.of("b"), false);
    String json = RulesJson.text(card);
    assertTrue(json.contains("\"fuel_l\" : 158.25"), json);
    assertTrue(json.contains("\"fuel_l_with\" : 140.25"), json);
    assertTrue(json.contains("\"fuel_l_with\" : 91.0"), json);
    assertFalse(RulesJson.text(Once.CARD).contains("fuel_l"));
  }

  private static Price price(double fuelL, double fuelWithL) {
    return new Price(2000.0, 1000.0, 20.0, 10.0, 500.0, 4.0, fuelL, fuelWithL);
  }

  @Test
  void theCardTellsTheLitres(@TempDir Path folder) throws Exception {
    Scenario combe = ScenarioReader.read(Path.of("scenarios/harrow-combe.yaml"));
    var rule = new Rule(0.5, false, List.of(0), "Television");
    var told = new Told(rule, price(158.25, 140.25), price(158.25, 140.25));
    RulesCardPage.write(
        new RuleCard(combe, List.of(told), List.of("a"), List.of("b"), false), folder);
    String page = Files.readString(folder.resolve(RulesCardPage.CARD));
    assertTrue(page.contains("Fuel: 158 → 140 L."), page);
  }

  /** One lap from the stated charge, like {@code run}; not from what the home settles to. */
  @Test
  void aStatedStartIsWhereItStarts(@TempDir Path folder) throws Exception {
    String text = Files.readString(Path.of("scenarios/whin-cabin.yaml"));
    String weather = Path.of("weather-samples/grey-maritime.csv").toAbsolutePath().toString();
    Path file = folder.resolve("cabin.yaml");
    Files.writeString(
        file, text.replace("../weather-samples/grey-maritime.csv", weather) + "\nstart: 0 %\n");
    Scenario home = ScenarioReader.read(file, Path.of("shared"));
    var source = WintersWanted.of(home, 2).draw(home).source();
    Trials trials = Trials.of(home, source, 2, (what, done) -> {});
    assertTrue(trials.books(0, home, Set.of()).isUnmet(0), "the first hour is dark");
    List<Price> prices = new RulePlay(trials).prices(List.of());
    for (int w = 0; w < 2; w++) {
      assertEquals(
          trials.run(home).winters().get(w).figures().unmetWh(), prices.get(w).unmetWh(), 1e-6);
    }
  }

  @Test
  void whatWarmsOrCoolsIsLeftAlone() {
    assertTrue(WarmOrCold.isIn("Stock-tank heater") && WarmOrCold.isIn("Chest freezer"));
    assertTrue(
        WarmOrCold.isIn("Fridge-freezer, efficient") && WarmOrCold.isIn("Well pump, 1/2 hp"));
    assertTrue(WarmOrCold.cools("Kühlschrank") && WarmOrCold.cools("Gefriertruhe"));
    assertTrue(WarmOrCold.warms("Heizungsregler"));
    assertFalse(WarmOrCold.isIn("Waschmaschine") || WarmOrCold.isIn("Fernseher"));
    assertFalse(WarmOrCold.isIn("Washing machine, cold wash") || WarmOrCold.isIn("Television"));
  }

  /** Harrow Combe keeps half in reserve: 55 % to 95 %; Alder Fold 15 %: 30 % to 90 %. */
  @Test
  void thresholdsLieBetweenReserveAndFull() {
    var half = ScenarioReader.read(Path.of("scenarios/harrow-combe.yaml")).bank();
    List<Double> below = RuleSearch.thresholds(half);
    assertEquals(9, below.size());
    assertEquals(0.55, below.get(0), 1e-9);
    assertEquals(0.95, below.get(8), 1e-9);
    below = RuleSearch.thresholds(Once.ALDER_FOLD.home().bank());
    assertEquals(0.3, below.get(0), 1e-9);
    assertEquals(0.9, below.get(below.size() - 1), 1e-9);
  }

  private static int number(Scenario home, String name) {
    int number = -1;
    for (int a = 0; a < home.load().appliances().size(); a++) {
      number = home.load().appliances().get(a).name().equals(name) ? a : number;
    }
    return number;
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
