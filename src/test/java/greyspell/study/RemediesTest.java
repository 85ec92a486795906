package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.BusNeed;
import greyspell.balance.Ledger;
import greyspell.cause.DarkSpell;
import greyspell.cause.DarkSpells;
import greyspell.cause.SaidValue;
import greyspell.cause.SaidValue.Hours;
import greyspell.cause.SaidValue.Litres;
import greyspell.power.FuelUse;
import greyspell.power.GeneratorRules;
import greyspell.power.RunTimes;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.ChangeRuns.PartSpells;
import greyspell.study.Explanation.Edit;
import greyspell.study.Explanation.Kind;
import greyspell.study.Explanation.Remedy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Of a generator the levels are told at which it runs least, not the first that are enough. */
final class RemediesTest {
  private static final int YEARS = 3;
  private static final Path CABIN = Path.of("scenarios/whin-cabin.yaml");
  private static final Path COMBE = Path.of("scenarios/harrow-combe.yaml");

  /** A home, its spells and what is told of them. */
  private record Told(ScenarioEdit file, List<DarkSpell> spells, Remedies remedies) {
    static Told of(ScenarioEdit file) {
      Scenario home = file.scenario(null);
      Trials trials = Trials.of(home, (what, done) -> {});
      Ledger ledger = trials.books(0, home, Set.of());
      double[] needWh = BusNeed.wh(ledger.forcing(), trials.design(0, home, Set.of()).inverter());
      List<DarkSpell> spells = DarkSpells.of(ledger, needWh);
      var parts = List.of(new PartSpells(0, spells));
      return new Told(file, spells, new Remedies(trials, file, null, parts, List.of(12)));
    }

    List<Change> changes() {
      return GeneratorChanges.of(file.scenario(null), file);
    }
  }

  /** What one run of a changed file comes to between two hours. */
  private record Ran(int unmetHours, int hours, double fuelL) {
    static Ran of(Ledger ledger, FuelUse fuel, int from, int to) {
      int unmetHours = 0, hours = 0;
      double fuelL = 0.0;
      for (int h = from; h < to; h++) {
        int at = h % ledger.hours();
        unmetHours += ledger.isUnmet(at) ? 1 : 0;
        hours += ledger.isGeneratorOn(at) ? 1 : 0;
        fuelL += fuel.litresL()[at];
      }
      return new Ran(unmetHours, hours, fuelL);
    }

    boolean isBetterThan(Ran other) {
      return hours < other.hours || (hours == other.hours && fuelL < other.fuelL - 1e-9);
    }
  }

  private static Ledger run(Scenario home) {
    return Study.run(home, (what, done) -> {}).ledger();
  }

  private static FuelUse fuel(Scenario home, Ledger ledger) {
    FuelUse fuel = Again.fuel(home, ledger);
    assertNotNull(fuel);
    return fuel;
  }

  private static Scenario with(Told told, List<Edit> edits) {
    ScenarioEdit changed = told.file;
    for (Edit edit : edits) {
      changed = edit.in(changed);
    }
    return changed.scenario(null);
  }

  private static Remedy generator(List<Remedy> remedies) {
    List<Remedy> found = remedies.stream().filter(r -> r.kind() == Kind.GENERATOR).toList();
    assertEquals(1, found.size());
    assertTrue(found.get(0).isFound());
    return found.get(0);
  }

  private static void tells(Ran ran, double years, Remedy remedy) {
    List<SaidValue> values = remedy.effect().values();
    assertEquals(ran.hours / years, ((Hours) values.get(0)).lengthH(), 1e-9);
    assertEquals(ran.fuelL / years, ((Litres) values.get(1)).fuelL(), 1e-6);
  }

  /** Every level of the way that is told, each by a plain run of the changed file. */
  private static void isLeast(Told told, Remedy remedy, int from, int to, double years) {
    Scenario home = with(told, remedy.edits());
    Ledger ledger = run(home);
    Ran ran = Ran.of(ledger, fuel(home, ledger), from, to);
    assertEquals(0, ran.unmetHours);
    tells(ran, years, remedy);
    int others = 0;
    for (Change change : told.changes()) {
      if (change.said().key().equals(remedy.said().key())) {
        Scenario other = with(told, change.edits());
        Ledger books = run(other);
        Ran then = Ran.of(books, fuel(other, books), from, to);
        boolean isCandidate = then.unmetHours == 0 && then.hours > 0;
        assertFalse(isCandidate && then.isBetterThan(ran), change.edits() + " " + then + ran);
        others += isCandidate ? 1 : 0;
      }
    }
    assertTrue(others > 2, "only " + others + " prevent");
  }

  /** The cabin's runs fewer hours from 20 % than from 10 %. */
  @Test
  void aNewGeneratorIsToldAtTheLevelsThatRunItLeast() {
    Told told = Told.of(ScenarioEdit.of(CABIN));
    Remedy all = generator(told.remedies.all());
    isLeast(told, all, 0, run(told.file.scenario(null)).hours(), YEARS);
    assertNotEquals(told.changes().get(0).edits(), all.edits());
    DarkSpell longest = told.spells.get(0);
    for (DarkSpell spell : told.spells) {
      longest = spell.unmetWh() > longest.unmetWh() ? spell : longest;
    }
    Remedy one = generator(told.remedies.of(told.spells.indexOf(longest)));
    isLeast(told, one, longest.fromHour(), longest.toHour(), 1.0);
  }

  /** Where it served a spell by what it charged before, that is said, and no hours of none. */
  @Test
  void aGeneratorThatRanBeforeASpellIsToldSo() {
    ScenarioEdit file = ScenarioEdit.of(Path.of("scenarios/peat-hut.yaml"));
    Scenario home = file.scenario(null);
    Trials trials = Trials.of(home, (what, done) -> {});
    Ledger dark = trials.books(0, home, Set.of());
    var variants = new ArrayList<Ledger>();
    for (Change change : GeneratorChanges.of(home, file)) {
      Scenario variant = change.of(file, null);
      assertNotNull(variant);
      variants.add(trials.books(0, variant, Set.of()));
    }
    int hour = 0;
    while (!isStoodStill(dark, variants, hour)) {
      hour++;
    }
    double wh = dark.unmetWh(hour);
    var one = new DarkSpell(hour, hour, hour, hour + 1, false, false, 0.0, 1, wh, List.of());
    var remedies =
        new Remedies(trials, file, null, List.of(new PartSpells(0, List.of(one))), List.of(12));
    Remedy told = generator(remedies.of(0));
    assertEquals("effect.generator.before.spell", told.effect().key());
    assertEquals(0.0, told.afterUnmetWh());
  }

  /** Dark without a generator, served with one, which no level runs in that hour. */
  private static boolean isStoodStill(Ledger dark, List<Ledger> variants, int hour) {
    return dark.isUnmet(hour)
        && variants.stream().noneMatch(v -> v.isGeneratorOn(hour) || v.isUnmet(hour));
  }

  /** Hours at home mean nothing where it starts by itself: they go with the manual policy. */
  @Test
  void aManualGeneratorMayStartByItself() {
    ScenarioEdit hardlyAtHome =
        ScenarioEdit.of(COMBE)
            .set("generator.home_hours", "20:00-21:00")
            .set("generator.home_days", "Mon-Thu");
    Told told = Told.of(hardlyAtHome);
    for (Change change : told.changes()) {
      assertNotNull(change.of(told.file, null), change.edits().toString());
    }
    Remedy all = generator(told.remedies.all());
    assertEquals("remedy.generator.auto", all.said().key());
    Scenario.Generator generator = with(told, all.edits()).generator();
    assertNotNull(generator);
    assertEquals(GeneratorRules.Policy.AUTO, generator.rules().policy());
    assertFalse(generator.rules().permitted().equals(RunTimes.ALWAYS));
    isLeast(told, all, 0, run(told.file.scenario(null)).hours(), YEARS);
  }

  /** What is already so is not tried: it starts by itself, at any hour. */
  @Test
  void whatIsSoAlreadyIsNoChange() {
    ScenarioEdit file =
        ScenarioEdit.of(COMBE)
            .remove("generator.home_hours")
            .set("generator.policy", "auto")
            .set("generator.permitted_hours", "00:00-24:00");
    List<Change> changes = GeneratorChanges.of(file.scenario(null), file);
    assertFalse(changes.isEmpty());
    for (Change change : changes) {
      assertEquals("remedy.generator.sooner", change.said().key());
    }
  }
}
