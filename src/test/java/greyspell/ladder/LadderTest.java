package greyspell.ladder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.ladder.Step.Kind;
import greyspell.report.LadderJson;
import greyspell.report.LadderText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.scenario.ScenarioReader;
import greyspell.sizing.LifeCycleCost;
import greyspell.study.Study;
import greyspell.study.StudyResult;
import greyspell.study.Trial;
import greyspell.study.Trials;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class LadderTest {
  private static final Path ALDER_FOLD = Path.of("scenarios/alder-fold.yaml");

  private static Ladder climb(ScenarioEdit text, Climb.Wanted wanted) {
    Scenario home = text.scenario(null);
    Trials trials = ALDER.isFor(home) ? ALDER.as(home) : quiet(home);
    return Climb.of(text, null, trials, LadderTest::quiet, wanted, (what, done) -> {});
  }

  private static Trials quiet(Scenario home) {
    return Trials.of(home, (what, done) -> {});
  }

  private static ScenarioEdit priced() {
    return ScenarioEdit.of(ALDER_FOLD)
        .set("costs.per_controller", "450")
        .set("costs.generator", "900")
        .set("costs.per_generator_hour", "0.5")
        .set("costs.per_tilted_module", "40")
        .set(
            "costs.measures",
            "[{name: Thrifty pump, price: 260, key: \"loads.appliances[7].power\", value: 300 W}]");
  }

  /** Weather and sky of Alder Fold, made once for homes with other prices. */
  private static final Trials ALDER = quiet(ScenarioEdit.of(ALDER_FOLD).scenario(null));

  /** Climbed once: the bars take their time. */
  private static final class Climbed {
    static final Ladder LADDER = climb(priced(), new Climb.Wanted(null, null, 3));
  }

  /** The numbers of every rung are those of run on the scenario that the rung writes. */
  @ParameterizedTest
  @ValueSource(strings = {"scenarios/alder-fold.yaml", "scenarios/harrow-combe.yaml"})
  void everyNumberCanBeHadByRun(String file) {
    ScenarioEdit text = ScenarioEdit.of(Path.of(file)).set("costs.per_pack", "1400");
    Scenario home = text.scenario(null);
    var trying =
        new Trying(text, null, ALDER.isFor(home) ? ALDER.as(home) : quiet(home), LadderTest::quiet);
    Trial before = trying.now();
    List<Rung> rungs =
        Climb.rungs(trying, new Climb.Wanted(null, null, 2), 12.0, "Ember Hollow EH-2P");
    assertFalse(rungs.isEmpty());
    for (Rung rung : rungs) {
      assertEquals(before, rung.tried().before());
      Scenario changed = ScenarioReader.readText(rung.text(), Path.of(file), null);
      StudyResult run = Study.run(changed, (what, done) -> {});
      Trial after = rung.tried().after();
      int years = run.ledger().forcing().calendar().years();
      assertEquals(run.outcome().total().unmetWh() / years, after.unmet().wh(), 1e-6);
      assertEquals(
          (double) run.outcome().total().unmetHours() / years, after.unmet().unmetHours(), 1e-9);
      assertEquals(run.fuelBetween(0, run.ledger().hours()).fuelL() / years, after.fuelL(), 1e-9);
      before = after;
    }
    assertEquals(rungs.get(rungs.size() - 1).text(), trying.text().text());
  }

  @Test
  void freeComesFirstAndNoFreeStepCostsDarkHours() {
    Ladder ladder = Climbed.LADDER;
    boolean isPaid = false;
    for (Rung rung : ladder.rungs()) {
      isPaid |= !rung.tried().step().kind().isFree();
      assertEquals(isPaid, !rung.tried().step().kind().isFree());
      assertTrue(rung.tried().avoidedWh() >= 100.0);
      assertTrue(rung.tried().avoidedUnmetHours() >= -0.5);
    }
    assertTrue(isPaid);
  }

  /**
   * Just below a price that is told another kind comes first, just above it the same step as ever:
   * for prices that are stated and for those that are not, with what comes beside a panel.
   */
  @ParameterizedTest
  @ValueSource(strings = {"costs.per_pack", "costs.per_module", "costs.per_controller"})
  void theOrderFlipsAtThePriceThatIsTold(String key) {
    ScenarioEdit text = priced();
    if (key.equals("costs.per_controller")) {
      // with nothing dearer in its way
      text = text.remove(key).remove("costs.measures").remove("costs.generator");
    }
    Rung first = first(text);
    Turn flip =
        first.flips().stream()
            .filter(f -> f.price().key().equals(key))
            .findFirst()
            .orElseThrow(() -> new AssertionError(first.flips().toString()));
    assertTrue(flip.isPossible() && flip.alsoMissing().isEmpty());
    Rung below = first(text.set(key, Double.toString(flip.cost() * 0.99)));
    Rung above = first(text.set(key, Double.toString(flip.cost() * 1.01)));
    assertEquals(flip.tried().step().kind(), below.tried().step().kind());
    assertEquals(first.tried().step().words(), above.tried().step().words());
  }

  /** Up to a price of its own the step stays first, and no further. */
  @Test
  void aStepStaysFirstUpToThePriceThatIsTold() {
    ScenarioEdit text = priced().remove("costs.measures").remove("costs.generator");
    Rung first = first(text);
    Turn upTo = first.upTo();
    assertNotNull(upTo);
    Double stated = upTo.price().cost();
    assertNotNull(stated);
    assertTrue(upTo.cost() > stated, upTo.toString());
    Kind kind = first.tried().step().kind();
    String key = upTo.price().key();
    assertEquals(
        kind, first(text.set(key, Double.toString(upTo.cost() * 0.99))).tried().step().kind());
    assertNotEquals(
        kind, first(text.set(key, Double.toString(upTo.cost() * 1.01))).tried().step().kind());
  }

  /**
   * A generator with a price and no fuel price is told as without a price, and what it hangs on.
   */
  @Test
  void aGeneratorWithoutAFuelPriceIsNotForgotten() {
    Ladder ladder = climb(priced().remove("costs.fuel_per_litre"), new Climb.Wanted(null, null, 1));
    assertTrue(ladder.unpriced().stream().anyMatch(t -> t.step().kind() == Kind.GENERATOR));
    assertEquals(List.of("costs.fuel_per_litre"), ladder.missingPrices());
    assertTrue(
        firstPaid(ladder.rungs()).flips().stream()
            .anyMatch(f -> f.price().key().equals("costs.fuel_per_litre")));
  }

  /** A bank that is worn already: one is due now, the next after a new one's life. */
  @Test
  void aWornBankIsReplacedNowAndThenAsNewOnesAre() {
    ScenarioEdit text = priced().set("bank.health", "70 %").set("costs.discount_rate", "4 %");
    Ladder ladder = climb(text, new Climb.Wanted(700.0, null, 1));
    assertEquals(0.0, ladder.presentLife().leftYears());
    Double fresh = ladder.presentLife().newYears();
    assertNotNull(fresh);
    StudyResult asNew =
        Study.run(
            text.set("bank.health", "100 %").set("bank.service_years", "20").scenario(null),
            (what, done) -> {});
    Double told = asNew.besides().replacementYears();
    assertNotNull(told);
    assertEquals(told, fresh, 1e-9);
    LifeCycleCost cost = ladder.presentCost();
    assertNotNull(cost);
    assertEquals(6 * 1450.0 * (1.0 + Math.pow(1.04, -fresh)), cost.replacementCost(), 1e-6);
    String words = LadderText.of(ladder);
    assertTrue(words.contains("due for replacement now"), words);
  }

  @Test
  void aNewBankIsAStepWhereTheOldOneHasServed() {
    ScenarioEdit text = priced().set("bank.health", "60 %");
    Trials trials = ALDER.as(text.scenario(null));
    List<Step> steps =
        PaidSteps.of(trials.home(), text, null, "Ember Hollow EH-2P", List.of()).stream()
            .filter(s -> s.words().startsWith("Storage: a new bank"))
            .toList();
    assertEquals(1, steps.size());
    assertEquals(6 * 1450.0, steps.get(0).onceCost());
    Tried tried = trying(text).all(steps).get(0).tried();
    assertNotNull(tried);
    Trial asNew = ALDER.run(text.set("bank.health", "100 %").scenario(null));
    assertEquals(asNew.unmet(), tried.after().unmet());
    assertTrue(tried.avoidedWh() > 100.0);
  }

  private static Trying trying(ScenarioEdit text) {
    Scenario home = text.scenario(null);
    return new Trying(text, null, ALDER.as(home), LadderTest::quiet);
  }

  /** The first that costs money, in the weather of Alder Fold. */
  private static Rung first(ScenarioEdit text) {
    return firstPaid(
        Climb.rungs(trying(text), new Climb.Wanted(null, null, 1), 16.0, "Ember Hollow EH-2P"));
  }

  private static Rung firstPaid(List<Rung> rungs) {
    return rungs.stream().filter(r -> !r.tried().step().kind().isFree()).findFirst().orElseThrow();
  }

  @Test
  void theBudgetIsKept() {
    Ladder ladder = climb(priced(), new Climb.Wanted(700.0, null, 20));
    Double once = ladder.onceCost();
    assertNotNull(once);
    assertTrue(once <= 700.0, "spent " + once);
    assertTrue(ladder.end().contains("budget"), ladder.end());
  }

  /** With an engine in the house, panels and packs compete with fuel. */
  @Test
  void theLadderEndsWhereFuelIsCheaper() {
    ScenarioEdit text =
        priced()
            .set("generator", "{from: Ember Hollow EH-4P, charger: {power: 2 kW}}")
            .set("costs.fuel_per_litre", "0.4");
    Ladder ladder = climb(text, Climb.Wanted.USUAL);
    assertTrue(ladder.end().startsWith("From here fuel is cheaper"), ladder.end());
    Double fuel = ladder.fuelCostPerKwh();
    assertNotNull(fuel);
    Trial top = ladder.top();
    assertEquals(
        (top.fuelL() * 0.4 + top.generatorHours() * 0.5) / (top.unmet().generatorWh() / 1000.0),
        fuel,
        1e-9);
  }

  @Test
  void withoutPricesNothingIsInvented() {
    ScenarioEdit text = ScenarioEdit.of(ALDER_FOLD).remove("costs");
    Ladder ladder = climb(text, Climb.Wanted.USUAL);
    assertTrue(ladder.rungs().stream().allMatch(r -> r.tried().step().kind().isFree()));
    assertTrue(ladder.missingPrices().contains("costs.per_pack"));
    assertTrue(ladder.unpriced().stream().anyMatch(t -> t.step().kind() == Kind.PACK));
    assertNull(ladder.presentCost());
    String told = LadderText.of(ladder);
    assertTrue(told.contains("costs.per_pack"), told);
    assertFalse(told.contains("EUR"), told);
  }

  @Test
  void aMeasureOfTheUsersOwnIsTakenOnceAndWorthWhatRunSays() {
    Ladder ladder = Climbed.LADDER;
    List<Rung> measures =
        ladder.rungs().stream().filter(r -> r.tried().step().kind() == Kind.MEASURE).toList();
    assertEquals(1, measures.size());
    assertEquals("Thrifty pump", measures.get(0).tried().step().words());
    Scenario thrifty = ScenarioReader.readText(measures.get(0).text(), ALDER_FOLD, null);
    assertEquals(ALDER.run(thrifty).unmet(), measures.get(0).tried().after().unmet());
    assertEquals(0, ladder.refused().stream().filter(r -> r.step().kind() == Kind.MEASURE).count());
  }

  /** A year's average holds hours that lie in no whole winter; a refusal tells its figures. */
  @Test
  void theWordsTellWhatTheFiguresAreOf() {
    String told = LadderText.of(Climbed.LADDER).replaceAll("\\s+", " ");
    assertTrue(told.contains("over all 3 years of the weather; 2 winters are whole"), told);
    assertTrue(told.contains("short-circuit current, 69.3 A"), told);
    assertTrue(told.contains("The one at the top is due"), told);
    List<Rung> rungs = Climbed.LADDER.rungs();
    assertEquals(rungs.get(rungs.size() - 1).text(), Climbed.LADDER.topText());
  }

  @Test
  void theFilesSayTheSame() throws Exception {
    Ladder ladder = Climbed.LADDER;
    String json = LadderJson.text(ladder);
    assertTrue(json.contains("\"rungs\""), json);
    for (Rung rung : ladder.rungs()) {
      assertTrue(json.contains(rung.tried().step().words().replace("\"", "\\\"")));
    }
    for (Bar bar : ladder.bars()) {
      assertTrue(json.contains(bar.what()));
    }
    assertEquals(
        ladder.bars().stream().map(Bar::widthWh).sorted((a, b) -> Double.compare(b, a)).toList(),
        ladder.bars().stream().map(Bar::widthWh).toList());
  }
}
