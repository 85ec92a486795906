package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.outcome.Outcome.WinterBooks;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.scenario.ScenarioReader;
import greyspell.sizing.Tally;
import greyspell.sizing.Target;
import greyspell.study.PanelSteps.Room;
import greyspell.study.SizeResult.Point;
import greyspell.weather.ensemble.ClimateSite;
import greyspell.weather.ensemble.EnsembleSource;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is found against trying every pair, and against run. */
final class SizeStudyTest {
  private static Scenario home(String name) {
    return ScenarioReader.read(Path.of("scenarios/" + name + ".yaml"));
  }

  private static SizeWanted wanted(Target target, int roof, int packs) {
    return new SizeWanted(List.of(target), new Room(null, roof, true), packs, null, 5.0, 1.3);
  }

  private static SizeResult sized(Scenario home, Trials trials, SizeWanted wanted) {
    return SizeStudy.of(home, trials, wanted, (what, done) -> {});
  }

  /** Whether a trial, which is what run tells, keeps to a target. */
  private static boolean isMet(Trial trial, Trials trials, Target target) {
    Tally tally = tally(trial, trials);
    return target.isMet(tally, Double.NaN);
  }

  private static Tally tally(Trial trial, Trials trials) {
    var winters = new ArrayList<Tally.OneWinter>();
    for (WinterBooks winter : trial.winters()) {
      winters.add(
          new Tally.OneWinter(
              winter.winter().name(), winter.figures().unmetHours(), winter.figures().unmetDays()));
    }
    return new Tally(
        trials.years(),
        winters.size(),
        (int) Math.round(trial.unmet().unmetHours() * trials.years()),
        (int) Math.round(trial.generatorHours() * trials.years()),
        winters);
  }

  private static Target target(String words) {
    String[] part = words.split(" ", -1);
    int n = Integer.parseInt(part[1]);
    return switch (part[0]) {
      case "hours" -> new Target.UnmetHours(n);
      case "days" -> new Target.LossDays(n);
      default -> new Target.DarkWinters(n, Integer.parseInt(part[2]));
    };
  }

  /** Sums alone, a controller that does not track, a stated start, a generator, a second source. */
  @ParameterizedTest
  @CsvSource({
    "whin-cabin, 24, 9, hours 100",
    "whin-cabin, 24, 9, days 5",
    "whin-cabin, 24, 9, dark 1 2",
    "alder-fold, 66, 14, hours 60",
    "alder-fold, 66, 14, days 12",
    "tamarisk-mesa, 30, 6, hours 2",
    "kelp-point, 30, 6, hours 300",
    "peat-hut, 8, 6, hours 20",
    "harrow-combe, 20, 3, hours 60",
    "harrow-combe, 20, 3, days 3",
    "sedge-island, 12, 4, hours 250"
  })
  void theFrontierIsThatOfTryingThemAll(String name, int roof, int packs, String words) {
    Scenario home = home(name);
    Target target = target(words);
    Trials trials = Trials.of(home, (what, done) -> {});
    SizeResult result = sized(home, trials, wanted(target, roof, packs));
    var expected = new ArrayList<String>();
    int least = packs + 1;
    Integer leastHere = null, fewestHere = null;
    for (var step : result.steps().steps()) {
      boolean isFound = false;
      for (int bank = 1; bank <= packs; bank++) {
        Scenario variant = step.home().withBank(home.bank().withPacks(bank));
        boolean isMet = isMet(trials.run(variant), trials, target);
        if (isMet && !isFound) {
          isFound = true;
          if (step.home() == home) {
            leastHere = bank;
          }
          if (bank < least) {
            expected.add(step.modules() + " " + bank);
            least = bank;
          }
        }
        if (isMet && bank == home.bank().packs() && fewestHere == null) {
          fewestHere = step.modules();
        }
      }
    }
    var found = new ArrayList<String>();
    for (Point point : result.frontier()) {
      found.add(point.modules() + " " + point.packs());
    }
    assertEquals(expected, found);
    if (result.steps().present() >= 0) {
      Point bank = result.leastBank();
      assertEquals(leastHere, bank == null ? null : bank.packs());
    }
    Point panels = result.fewestPanels();
    assertEquals(fewestHere, panels == null ? null : Integer.valueOf(panels.modules()));
    if (result.possible() > 30) {
      assertTrue(result.tried() < result.possible(), result.tried() + " of " + result.possible());
    }
  }

  @ParameterizedTest
  @CsvSource({"whin-cabin, hours 150", "tamarisk-mesa, hours 1", "harrow-combe, hours 40"})
  void theAnswerWrittenIntoTheFileGivesByRunWhatIsPromised(String name, String words) {
    Scenario home = home(name);
    Path file = Path.of("scenarios/" + name + ".yaml");
    Target target = target(words);
    Trials trials = Trials.of(home, (what, done) -> {});
    SizeResult result = sized(home, trials, wanted(target, 60, 12));
    int looked = 0;
    for (Point point : result.frontier()) {
      Scenario written = SizeEdit.of(file, home, point, false).scenario(null);
      assertEquals(point.home().arrays(), written.arrays());
      assertEquals(point.home().controller(), written.controller());
      assertEquals(point.capacityWh(), written.bank().capacityWh(), 1e-6);
      StudyResult run = Study.run(written, (what, done) -> {});
      Unmet told = Unmet.of(run.ledger());
      assertEquals(point.tally().unmetHoursPerYear(), told.unmetHours(), 1e-9);
      assertTrue(target.isMet(point.tally(), 0.0));
      assertEquals(written.bank().packs(), point.packs());
      if (written.bank().packs() > 1) {
        Scenario less = written.withBank(written.bank().withPacks(written.bank().packs() - 1));
        assertFalse(isMet(trials.run(less), trials, target), "one pack fewer");
      }
      looked++;
    }
    assertTrue(looked > 0);
  }

  /** At Kelp Point each pack draws 5 W of its own: what lacks grows with the bank. */
  @Test
  void aBankThatHoldsTheLongestLackServesAllAndOneThatHoldsLessDoesNot() {
    Scenario home = home("kelp-point");
    Trials trials = Trials.of(home, (what, done) -> {});
    SizeResult result = sized(home, trials, wanted(new Target.UnmetHours(0.0), 10, 12));
    Point least = result.leastBank();
    assertNotNull(least);
    double lackWh = result.deficit().deepestWh();
    assertTrue(lackWh <= least.home().bank().limits().windowWh(), lackWh + " Wh");
    Scenario less = home.withBank(home.bank().withPacks(least.home().bank().packs() - 1));
    SizeResult more = sized(home, trials, wanted(new Target.UnmetHours(9.0), 10, 12));
    assertTrue(more.deficit().deepestWh() > less.bank().limits().windowWh(), "misses hours");
  }

  @Test
  void drawnWintersCountEachByItself() {
    Scenario home = home("whin-cabin");
    var series = Study.read(home);
    var source = EnsembleSource.spliced(series, ClimateSite.of(series.source(), null, null), 8, 3L);
    Trials trials = Trials.of(home, source, 8, (what, done) -> {});
    Target target = new Target.DarkWinters(1, 4);
    SizeResult result = sized(home, trials, wanted(target, 40, 10));
    assertFalse(result.frontier().isEmpty());
    for (Point point : result.frontier()) {
      assertEquals(tally(trials.run(point.home()), trials), point.tally());
      assertEquals(8, point.tally().winters().size());
      assertTrue(point.tally().darkWinters() <= 2);
      Integer packs = point.packs();
      if (packs != null && packs > 1) {
        Scenario less = point.home().withBank(home.bank().withPacks(packs - 1));
        assertFalse(isMet(trials.run(less), trials, target));
      }
    }
  }

  @Test
  void autonomyByTheRuleAsksForNoSun() {
    Scenario home = home("alder-fold");
    Trials trials = Trials.of(home, (what, done) -> {});
    var wanted =
        new SizeWanted(
            List.of(new Target.AutonomyDays(5.0)), new Room(null, null, false), 40, null, 5.0, 1.3);
    SizeResult result = sized(home, trials, wanted);
    Point least = result.leastBank();
    assertNotNull(least);
    double days =
        Study.run(least.home(), (w, d) -> {}).outcome().autonomy().darkDays().list().stream()
            .mapToDouble(Double::doubleValue)
            .min()
            .orElseThrow();
    assertTrue(days >= 5.0, days + "");
    Integer packs = least.packs();
    assertNotNull(packs);
    Scenario less = home.withBank(home.bank().withPacks(packs - 1));
    double fewer =
        Study.run(less, (w, d) -> {}).outcome().autonomy().darkDays().list().stream()
            .mapToDouble(Double::doubleValue)
            .min()
            .orElseThrow();
    assertTrue(fewer < 5.0, fewer + "");
    assertTrue(result.frontier().isEmpty(), "the rule sees no panels");
    assertNull(result.cheapest());
  }

  /** A price put in on either side of a limit makes the pair that is told for that side. */
  @ParameterizedTest
  @CsvSource({
    "whin-cabin, 24, 9, hours 100, PACK_IN_MODULES, true",
    "grandfell-farm, 90, 12, hours 20, CONTROLLER, false",
    "harrow-combe, 10, 8, hours 10, PACK, false",
    "tamarisk-mesa, 12, 6, hours 10, PACK_IN_MODULES, false"
  })
  void whichPairIsCheapestAtWhichPrice(
      String name,
      int roof,
      int packs,
      String words,
      CheapestByPrice.Unknown unknown,
      boolean aside) {
    Scenario home = home(name);
    Trials trials = Trials.of(home, (what, done) -> {});
    SizeWanted wanted = wanted(target(words), roof, packs);
    SizeResult open = sized(home, trials, wanted);
    assertNull(open.cheapest());
    CheapestByPrice byPrice = open.byPrice();
    assertNotNull(byPrice);
    assertEquals(unknown, byPrice.unknown());
    assertEquals(aside, byPrice.areControllersLeftAside());
    assertTrue(byPrice.ranges().size() > 1);
    double from = 0.0;
    for (CheapestByPrice.Range range : byPrice.ranges()) {
      double to = Double.isInfinite(range.upToCost()) ? from + 1000.0 : range.upToCost();
      for (double price : new double[] {0.99 * from + 0.01 * to, 0.01 * from + 0.99 * to}) {
        SizeResult priced = sized(priced(name, unknown, price), trials, wanted);
        Point cheapest = priced.cheapest();
        assertNotNull(cheapest);
        assertTrue(priced.missingPrices().isEmpty());
        assertNull(priced.byPrice());
        assertEquals(range.point().modules(), cheapest.modules(), price + "");
        assertEquals(range.point().packs(), cheapest.packs());
      }
      from = to;
    }
  }

  /** The file with the price in it; controllers that are left aside cost nothing. */
  private static Scenario priced(String name, CheapestByPrice.Unknown unknown, double price) {
    ScenarioEdit edit = ScenarioEdit.of(Path.of("scenarios/" + name + ".yaml"));
    String value = Show.trimmed(price, 6);
    edit =
        switch (unknown) {
          case MODULE -> edit.set("costs.per_module", value);
          case PACK -> edit.set("costs.per_pack", value);
          case CONTROLLER -> edit.set("costs.per_controller", value);
          case PACK_IN_MODULES ->
              edit.set("costs.per_module", "1")
                  .set("costs.per_pack", value)
                  .set("costs.per_controller", "0");
        };
    return edit.scenario(null);
  }

  @Test
  void aBankOfAnySizeIsAtMostThatOfWholePacks() {
    Scenario home = home("whin-cabin");
    Trials trials = Trials.of(home, (what, done) -> {});
    Target target = new Target.UnmetHours(900.0);
    SizeResult packs = sized(home, trials, wanted(target, 12, 24));
    SizeResult any =
        sized(
            home,
            trials,
            new SizeWanted(List.of(target), new Room(null, 12, true), 24, 250.0, 5.0, 1.3));
    Point whole = packs.leastBank(), free = any.leastBank();
    assertNotNull(whole);
    assertNotNull(free);
    assertNull(free.packs());
    assertTrue(free.capacityWh() <= whole.capacityWh() + 250.0);
    assertTrue(free.capacityWh() > whole.capacityWh() - home.bank().capacityWh() / 2.0 - 250.0);
    Scenario smaller = home.withBank(home.bank().withCapacityWh(free.capacityWh() - 250.0));
    assertFalse(isMet(trials.run(smaller), trials, target));
    assertTrue(isMet(trials.run(free.home()), trials, target));
  }
}
