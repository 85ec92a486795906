package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Ledger;
import greyspell.cause.Said;
import greyspell.cause.SaidValue.Energy;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.Explanation.Edit;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Remedy;
import greyspell.study.Explanation.Shares;
import greyspell.study.Explanation.Spell;
import greyspell.study.Explanation.WinterLine;
import greyspell.words.Units;
import greyspell.words.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The whole of explain for a home with two spells, and for one with causes of every kind. */
final class ExplainStudyTest {
  private static final Path MESA = Path.of("scenarios/tamarisk-mesa.yaml");
  private static final Path HUT = Path.of("scenarios/peat-hut.yaml");

  private static final Explanation MESA_TOLD = explain(ScenarioEdit.of(MESA));
  private static final Explanation HUT_TOLD = explain(ScenarioEdit.of(HUT));

  private static Explanation explain(ScenarioEdit file) {
    Trials trials = Trials.of(file.scenario(null), (what, done) -> {});
    return ExplainStudy.of(trials, Said.of("unsure.not_told"), file, null, (what, done) -> {});
  }

  @Test
  void sharesSumToWhatWasNotServed() {
    Explanation told = MESA_TOLD;
    Shares whole = told.shares();
    assertNotNull(whole);
    sums(whole);
    double spellsWh = 0.0;
    for (Spell spell : told.spells()) {
      sums(spell.shares());
      assertEquals(spell.spell().unmetWh(), spell.shares().wholeWh(), 0.1);
      spellsWh += spell.spell().unmetWh();
    }
    assertEquals(whole.wholeWh(), spellsWh, 0.1);
    for (WinterLine winter : told.winters()) {
      Shares shares = winter.shares();
      assertEquals(winter.unmetWh() > 0.0, shares != null);
      if (shares != null) {
        sums(shares);
        assertEquals(winter.unmetWh(), shares.wholeWh(), 0.1);
      }
    }
    if (whole.isExact()) {
      assertTrue(whole.parts().size() <= 8);
      assertEquals(1 << whole.parts().size(), whole.runs() - screenRuns(told));
      assertEquals(0.0, whole.errorWh());
    } else {
      assertTrue(whole.parts().size() > 8);
      assertTrue(whole.errorWh() > 0.0);
    }
  }

  /** One for the home itself and one for each cause that it has. */
  private static int screenRuns(Explanation told) {
    Set<Effect> present = Effects.present(told.home());
    int had = 0;
    for (WinterCause cause : WinterCause.values()) {
      had += cause.effects().stream().anyMatch(present::contains) ? 1 : 0;
    }
    return 1 + had;
  }

  private static void sums(Shares shares) {
    double sumWh = shares.restWh(), share = shares.restWh() / shares.wholeWh();
    for (Part part : shares.parts()) {
      sumWh += part.wh();
      share += part.ofWholeShare();
    }
    assertEquals(shares.wholeWh(), sumWh, 1e-6);
    assertEquals(1.0, share, 1e-9);
  }

  /** None that changes a hundredth or more when left out alone hides among the smaller ones. */
  @Test
  void whatMattersStandsAlone() {
    Explanation told = MESA_TOLD;
    Trials trials = Trials.of(told.home(), (what, done) -> {});
    Shares shares = told.shares();
    assertNotNull(shares);
    var apart = EnumSet.noneOf(WinterCause.class);
    var smaller = EnumSet.noneOf(WinterCause.class);
    for (Part part : shares.parts()) {
      apart.add(part.cause());
      smaller.addAll(part.members());
    }
    assertTrue(apart.size() > 2 && !smaller.isEmpty());
    for (WinterCause cause : WinterCause.values()) {
      if (!cause.effects().isEmpty()) {
        double leftWh = trials.run(told.home(), cause.effects()).unmet().wh() * trials.years();
        boolean isLarge = Math.abs(shares.wholeWh() - leftWh) >= 0.01 * shares.wholeWh();
        assertEquals(!isLarge, !apart.contains(cause), cause.key());
        assertTrue(!isLarge || !smaller.contains(cause), cause.key());
      }
    }
  }

  /** Nobody's fault, what can be changed, and what stays without any of them, are the whole. */
  @Test
  void bothKindsAndTheRestAreTheWhole() {
    for (Explanation told : List.of(MESA_TOLD, HUT_TOLD)) {
      Shares s = told.shares();
      assertNotNull(s);
      assertEquals(1.0, s.seasonShare() + s.fixableShare() + s.restWh() / s.wholeWh(), 1e-9);
    }
  }

  /** Days that differ filled the hut's bank: the run with every day alike says by how much. */
  @Test
  void aShareBelowZeroIsToldAsHelp() {
    Shares shares = HUT_TOLD.shares();
    assertNotNull(shares);
    List<Said> helped = shares.helped();
    assertEquals(
        shares.parts().stream().filter(p -> p.ofWholeShare() <= -0.005).count(), helped.size());
    assertEquals("helped.bright_days", helped.get(0).key());
    Trials trials = Trials.of(HUT_TOLD.home(), (what, done) -> {});
    double alikeWh = trials.run(HUT_TOLD.home(), Set.of(Effect.MORE_CLOUD)).unmet().wh() * 3.0;
    double toldWh = ((Energy) helped.get(0).values().get(0)).wh();
    assertEquals(alikeWh - shares.wholeWh(), toldWh, 0.1);
    assertTrue(toldWh > 0.0);
  }

  /** A share that lots may have put below zero is not called help. */
  @Test
  void aShareWithinItsErrorIsLeftOpen() {
    var sure = new Part(WinterCause.WIRING, -30.0, 10.0, -0.03, -20.0, List.of());
    var open = new Part(WinterCause.SHADE, -9.0, 10.0, -0.009, 5.0, List.of());
    var small = new Part(WinterCause.SNOW, -4.0, 1.0, -0.004, -4.0, List.of());
    var shares = new Shares(1000.0, List.of(small, open, sure), 1043.0, false, 40);
    assertEquals(
        List.of("helped", "helped.unsure"), shares.helped().stream().map(Said::key).toList());
  }

  /** Of one spell every kind of change is told, enough or not. */
  @Test
  void whatIsNotEnoughIsToldToo() {
    Explanation told = explain(ScenarioEdit.of(Path.of("scenarios/alder-fold.yaml")));
    List<String> keys = told.spells().get(0).remedies().stream().map(r -> r.said().key()).toList();
    assertTrue(keys.contains("remedy.none.less"), keys.toString());
    assertTrue(keys.contains("remedy.move.all"), keys.toString());
    for (Remedy free : told.free()) {
      assertFalse(free.said().key().equals("remedy.none.less"), "a first step, not the last");
    }
    assertTrue(told.uncertainties().stream().anyMatch(u -> u.key().equals("unsure.need")));
  }

  /** By one plain run of the home without it. */
  @Test
  void whatACauseSavesAloneIsARunWithoutIt() {
    Explanation told = MESA_TOLD;
    Trials trials = Trials.of(told.home(), (what, done) -> {});
    Shares shares = told.shares();
    assertNotNull(shares);
    for (Part part : shares.parts()) {
      var out = EnumSet.noneOf(Effect.class);
      out.addAll(part.cause().effects());
      part.members().forEach(m -> out.addAll(m.effects()));
      double leftWh = trials.run(told.home(), out).unmet().wh() * trials.years();
      assertEquals(shares.wholeWh() - leftWh, part.aloneWh(), 0.1, part.cause().key());
    }
  }

  /** What is told of a remedy is what the program says of the changed file. */
  @Test
  void remediesAreWhatRunTells() {
    for (Path file : List.of(MESA, HUT)) {
      ScenarioEdit text = ScenarioEdit.of(file);
      Explanation told = file.equals(MESA) ? MESA_TOLD : HUT_TOLD;
      int found = 0;
      var all = new ArrayList<>(told.remedies());
      all.addAll(told.free());
      for (Remedy remedy : all) {
        Unmet after = Unmet.of(Study.run(changed(text, remedy), (w, d) -> {}).ledger());
        assertEquals(remedy.afterUnmetWh(), after.wh(), 1e-3, remedy.said().key());
        assertEquals(remedy.afterUnmetHours(), after.unmetHours(), 1e-9, remedy.said().key());
        assertEquals(remedy.isFound(), after.unmetHours() == 0.0, remedy.said().key());
        found += remedy.isFound() ? 1 : 0;
      }
      assertTrue(found >= 2, file + ": " + found);
      for (Remedy remedy : told.spells().get(0).remedies()) {
        Ledger ledger = Study.run(changed(text, remedy), (w, d) -> {}).ledger();
        var spell = told.spells().get(0).spell();
        double unmetWh = 0.0;
        for (int h = spell.fromHour(); h < spell.toHour(); h++) {
          unmetWh += ledger.unmetWh(h);
        }
        assertEquals(remedy.afterUnmetWh(), unmetWh, 1e-3, remedy.said().key());
        assertEquals(remedy.isFound(), unmetWh < 1e-6, remedy.said().key());
      }
    }
  }

  private static Scenario changed(ScenarioEdit text, Remedy remedy) {
    ScenarioEdit changed = text;
    assertFalse(remedy.edits().isEmpty());
    for (Edit edit : remedy.edits()) {
      changed = edit.in(changed);
    }
    return changed.scenario(null);
  }

  /** Held against the whole electrical check of the changed home. */
  @Test
  void wiresThatAChangeOverloadsAreNamed() {
    ScenarioEdit text = ScenarioEdit.of(HUT);
    assertFalse(wiresFailing(text.scenario(null)).contains("array to controller"));
    int overloaded = 0;
    for (Remedy remedy : HUT_TOLD.spells().get(0).remedies()) {
      String failing = wiresFailing(changed(text, remedy));
      for (String wire : remedy.wires()) {
        assertTrue(failing.contains(wire), failing);
      }
      overloaded += remedy.wires().size();
      assertEquals(
          failing.contains("array to controller"),
          remedy.wires().contains("array to controller"),
          remedy.said().key());
    }
    assertEquals(1, overloaded);
  }

  private static String wiresFailing(Scenario home) {
    return ElectricalCheck.of(home, null).failing();
  }

  @Test
  void everySentenceCanBeSaidInEveryLanguage() {
    for (Explanation told : List.of(MESA_TOLD, HUT_TOLD)) {
      for (String language : Words.LANGUAGES) {
        Words words = Words.of(language, Units.METRIC);
        words.say(told.verdict().said());
        told.uncertainties().forEach(words::say);
        told.cautions().forEach(words::say);
        told.remedies().forEach(r -> said(words, r));
        told.free().forEach(r -> said(words, r));
        for (Spell spell : told.spells()) {
          spell.story().forEach(words::say);
          spell.dayLines().forEach(words::say);
          spell.remedies().forEach(r -> said(words, r));
        }
        for (WinterCause cause : WinterCause.values()) {
          assertTrue(words.has(cause.key()), cause.key());
        }
      }
    }
  }

  @Test
  void twiceTheSame() {
    assertEquals(MESA_TOLD, explain(ScenarioEdit.of(MESA)));
  }

  @Test
  void whereAllIsServedNothingIsExplainedAndNothingPromised() {
    Explanation told = explain(ScenarioEdit.of(MESA).set("bank.in_parallel", "6"));
    assertEquals(0, told.verdict().darkWinters());
    Double mayStill = told.verdict().mayStillFailShare();
    assertNotNull(mayStill);
    // 1 - 0.05^(1/n), the exact bound for no failure in n
    assertEquals(1.0 - Math.pow(0.05, 1.0 / told.verdict().winters()), mayStill, 1e-12);
    assertEquals(List.of(), told.spells());
    assertEquals(List.of(), told.remedies());
    assertNull(told.shares());
  }

  @Test
  void aMedicalLoadIsNeverCalledAdequateAndNeverTouched() {
    ScenarioEdit file = ScenarioEdit.of(MESA).set("loads.appliances[0].medical", "yes");
    Explanation told = explain(file);
    assertEquals(1, told.cautions().size());
    assertEquals("caution.medical", told.cautions().get(0).key());
    for (Remedy remedy : told.free()) {
      for (Edit edit : remedy.edits()) {
        assertFalse(edit.path().startsWith("loads.appliances[0]"), edit.path());
        assertFalse(edit.path().equals("loads.growth"), edit.path());
      }
    }
  }

  private static void said(Words words, Remedy remedy) {
    words.say(remedy.said());
    words.say(remedy.effect());
  }
}
