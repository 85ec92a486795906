package greyspell.ladder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.ladder.Step.Kind;
import greyspell.report.LadderJson;
import greyspell.report.LadderText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.scenario.ScenarioReader;
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
    return Climb.of(text, null, quiet(home), LadderTest::quiet, wanted, (what, done) -> {});
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

  /** Climbed once: the bars take their time. */
  private static final class Climbed {
    static final Ladder LADDER = climb(priced(), new Climb.Wanted(null, null, 3));
  }

  /** The numbers of every rung are those of run on the scenario that the rung writes. */
  @ParameterizedTest
  @ValueSource(strings = {"scenarios/alder-fold.yaml", "scenarios/harrow-combe.yaml"})
  void everyNumberCanBeHadByRun(String file) {
    ScenarioEdit text = ScenarioEdit.of(Path.of(file)).set("costs.per_pack", "1400");
    Ladder ladder = climb(text, new Climb.Wanted(null, null, 2));
    assertFalse(ladder.rungs().isEmpty());
    Trial before = ladder.present();
    for (Rung rung : ladder.rungs()) {
      assertEquals(before, rung.tried().before());
      Scenario changed = ScenarioReader.readText(rung.tried().text(), Path.of(file), null);
      StudyResult run = Study.run(changed, (what, done) -> {});
      Trial after = rung.tried().after();
      int years = run.ledger().forcing().calendar().years();
      assertEquals(run.outcome().total().unmetWh() / years, after.unmet().wh(), 1e-6);
      assertEquals(
          (double) run.outcome().total().unmetHours() / years, after.unmet().unmetHours(), 1e-9);
      assertEquals(run.fuelBetween(0, run.ledger().hours()).fuelL() / years, after.fuelL(), 1e-9);
      before = after;
    }
    assertEquals(ladder.rungs().get(ladder.rungs().size() - 1).tried().text(), ladder.topText());
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
   * Of all that could be bought the rung is the cheapest, and a little below its flip the other is.
   */
  @Test
  void theOrderFlipsAtThePriceThatIsTold() {
    ScenarioEdit text = priced();
    Ladder ladder = Climbed.LADDER;
    Rung first = firstPaid(ladder);
    Rung.Flip flip =
        first.flips().stream()
            .filter(f -> f.statedCost() != null && f.pieceCost() > 0.0)
            .filter(f -> f.tried().step().kind() == Kind.PACK)
            .findFirst()
            .orElseThrow();
    Double stated = flip.statedCost();
    assertNotNull(stated);
    assertTrue(flip.pieceCost() < stated);
    Rung cheaper =
        firstPaid(
            climb(
                text.set("costs.per_pack", Double.toString(flip.pieceCost() * 0.99)),
                new Climb.Wanted(null, null, 1)));
    Rung dearer =
        firstPaid(
            climb(
                text.set("costs.per_pack", Double.toString(flip.pieceCost() * 1.01)),
                new Climb.Wanted(null, null, 1)));
    assertEquals(Kind.PACK, cheaper.tried().step().kind());
    assertEquals(first.tried().step(), dearer.tried().step());
  }

  private static Rung firstPaid(Ladder ladder) {
    return ladder.rungs().stream()
        .filter(r -> !r.tried().step().kind().isFree())
        .findFirst()
        .orElseThrow();
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
    assertTrue(measures.size() <= 1);
    assertEquals(0, ladder.refused().stream().filter(r -> r.step().kind() == Kind.MEASURE).count());
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
