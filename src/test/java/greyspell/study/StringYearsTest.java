package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerSpec;
import greyspell.electrical.StringJudge;
import greyspell.electrical.StringJudgement;
import greyspell.electrical.Wanted;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.StringYears.Year;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StringYearsTest {
  private static Scenario home(String name) {
    return ScenarioReader.read(Path.of("scenarios/" + name + ".yaml"), Path.of("shared"));
  }

  private static StringJudgement judged(Scenario home, ArraySpec plane, ControllerSpec on) {
    return StringJudge.judge(
        plane.module(),
        on,
        ElectricalCheck.rules(home, Records.of(home)),
        Wanted.modules(plane.modules()));
  }

  private static StringYears years(Scenario home, ArraySpec plane, StringJudgement judged) {
    StringYears years = StringYears.Weather.read(home).of(plane, judged);
    assertNotNull(years);
    return years;
  }

  private static Year year(StringYears years, int place) {
    Year year = years.at(place);
    assertNotNull(year, "arrangement " + place);
    return year;
  }

  private static int built(StringYears years, StringJudgement judged) {
    for (int k = 0; k < judged.arrangements().size(); k++) {
      if (years.isBuilt(judged.arrangements().get(k))) {
        return k;
      }
    }
    throw new AssertionError("not among the arrangements");
  }

  private static double sum(double[] wh) {
    return Arrays.stream(wh).sum();
  }

  /** One physics: what stands beside the built strings is what the run books, before the bank. */
  @ParameterizedTest
  @ValueSource(strings = {"whin-cabin", "tamarisk-mesa", "kelp-point", "peat-hut"})
  void theBuiltStringsBringWhatTheRunBooks(String name) {
    Scenario home = home(name);
    StudyResult run = Study.run(home, (what, done) -> {});
    var forcing = run.ledger().forcing();
    double perYear = 1.0 / forcing.calendar().years();
    double wiresWh = sum(forcing.controllerParts().get(1).wh());
    ArraySpec plane = home.arrays().get(0);
    StringJudgement judged = judged(home, plane, home.controller());
    StringYears years = years(home, plane, judged);
    Year year = year(years, built(years, judged));
    double busWh = perYear * (sum(forcing.solarBusWh()) + wiresWh);
    assertEquals(busWh, year.outputWh(), 1e-9 * busWh);
    assertEquals(perYear * run.planes().get(0).cableHeatWh(), year.cableHeatWh(), 1e-9 * busWh);
    assertEquals(perYear * sum(forcing.clippedWh()), year.clippedWh(), 1e-9 * busWh);
    assertTrue(years.isWireStated() && years.isAlone());
  }

  /** The same modules in the same light: what one arrangement brings less, it loses by name. */
  @ParameterizedTest
  @ValueSource(strings = {"whin-cabin", "alder-fold", "grandfell-farm", "kelp-point"})
  void outputAndLossesOfEveryArrangementAddUpToTheSame(String name) {
    Scenario home = home(name);
    for (ArraySpec plane : home.arrays()) {
      StringJudgement judged = judged(home, plane, home.controller());
      StringYears years = years(home, plane, judged);
      double allWh = total(year(years, built(years, judged)));
      int reckoned = 0;
      for (int k = 0; k < judged.arrangements().size(); k++) {
        var a = judged.arrangements().get(k);
        Double limitV = a.limitV();
        boolean isBeyond = limitV != null && a.coldOpenV() > limitV;
        assertEquals(isBeyond, years.at(k) == null, a.words());
        if (!isBeyond) {
          assertEquals(allWh, total(year(years, k)), 1e-9 * allWh, a.words());
          reckoned++;
        }
        assertNull(years.ifTracked(k));
      }
      assertTrue(reckoned >= 2, plane.name());
    }
  }

  private static double total(Year y) {
    return y.outputWh()
        + y.outsideWindowWh()
        + y.heldWh()
        + y.cableHeatWh()
        + y.clippedWh()
        + y.controllerLossWh();
  }

  /** Twice the strings at half the voltage: four times the heat in the same wire. */
  @Test
  void heatInTheWireGoesWithTheSquareOfTheCurrent() {
    Scenario home = home("kelp-point");
    ArraySpec plane = home.arrays().get(0);
    StringJudgement judged = judged(home, plane, home.controller());
    StringYears years = years(home, plane, judged);
    double one = year(years, 0).cableHeatWh();
    double two = year(years, 1).cableHeatWh();
    assertEquals(4.0 * one, two, 1e-9 * two);
  }

  /** A string on one of two controllers leaves the other idle; two share them evenly. */
  @Test
  void stringsAreSharedAsWholes() {
    Scenario home = home("kelp-point");
    ArraySpec plane = home.arrays().get(0);
    ControllerSpec small = withLimit(home.controller(), 1500.0, 1);
    ControllerSpec pair = withLimit(home.controller(), 1500.0, 2);
    StringJudgement onOne = judged(home, plane, small);
    StringJudgement onTwo = judged(home, plane, pair);
    StringYears one = years(home, plane, onOne);
    StringYears two = years(home, plane, onTwo);
    assertTrue(year(one, 0).clippedWh() > 100_000.0);
    assertEquals(year(one, 0).outputWh(), year(two, 0).outputWh(), 1e-6);
    // five strings of two: two and three, so the fuller one clips more than an even share would
    ControllerSpec both = withLimit(home.controller(), 3000.0, 1);
    double even = year(years(home, plane, judged(home, plane, both)), 1).clippedWh();
    assertEquals(even, year(two, 1).clippedWh(), 1e-6);
    assertFalse(year(two, 0).clippedWh() <= even);
  }

  private static ControllerSpec withLimit(ControllerSpec c, double mostW, int count) {
    return new ControllerSpec(
        c.name(),
        count,
        mostW,
        null,
        c.efficiency(),
        c.lowestTrackingV(),
        c.highestTrackingV(),
        c.startV(),
        c.absoluteMaximumV(),
        c.maxShortCircuitA(),
        c.standbyW(),
        c.kind(),
        c.efficiencyPoints());
  }

  /**
   * What holding costs, once the controller's own efficiency and the wire have taken their part.
   */
  @Test
  void aTrackingControllerBringsWhatHoldingLoses() {
    Scenario home = home("peat-hut");
    ArraySpec plane = home.arrays().get(0);
    StringJudgement judged = judged(home, plane, home.controller());
    StringYears years = years(home, plane, judged);
    Year held = year(years, 0);
    Year tracked = years.ifTracked(0);
    assertNotNull(tracked);
    assertTrue(held.heldWh() > 0.2 * held.outputWh());
    assertEquals(0.0, tracked.heldWh());
    assertEquals(0.0, tracked.clippedWh() + held.clippedWh());
    assertEquals(
        home.controller().efficiency()
            * (held.heldWh() + held.cableHeatWh() - tracked.cableHeatWh()),
        tracked.outputWh() - held.outputWh(),
        1e-6);
  }

  @Test
  void otherModulesAreNotAsBuilt() {
    Scenario home = home("alder-fold");
    ArraySpec plane = home.arrays().get(0);
    StringJudgement same = judged(home, plane, home.controller());
    ArraySpec foreign =
        plane.withStrings(
            home("whin-cabin").arrays().get(0).module(), plane.inSeries(), plane.inParallel());
    StringYears years = years(home, foreign, same);
    same.arrangements().forEach(a -> assertFalse(years.isBuilt(a), a.words()));
    assertFalse(years.isAlone());
  }
}
