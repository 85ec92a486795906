package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Strings under equal and unequal light: cases with a known answer, and laws. */
class PanelCurveTest {
  private static final SingleDiode PV_3 = Sheets.diode(DataSheetFit.of(Sheets.PV_3));
  private static final double DROP_V = StringCurve.USUAL_BYPASS_DROP_V;

  private static LitString lit(int inSeries, double irradianceWm2) {
    return new LitString(PV_3, inSeries, 3, irradianceWm2, 25.0);
  }

  private static StringCurve groups(double... irradianceWm2) {
    var groups = new ArrayList<CellGroup>();
    for (double g : irradianceWm2) {
      groups.add(new CellGroup(PV_3, 1.0 / 3.0, 1, g, 25.0));
    }
    return StringCurve.of(groups, DROP_V);
  }

  @Test
  void equalLightInARowIsSoManyTimesOne() {
    CurvePoint one = PV_3.maxPower(700.0, 25.0);
    CurvePoint five = PanelCurve.of(StringCurve.of(lit(5, 700.0))).maxPower();
    assertEquals(5.0 * one.voltageV(), five.voltageV(), 1e-7 * five.voltageV());
    assertEquals(one.currentA(), five.currentA(), 1e-7 * one.currentA());
    assertEquals(5.0 * one.powerW(), five.powerW(), 1e-12 * five.powerW());
    assertEquals(1, PanelCurve.of(StringCurve.of(lit(5, 700.0))).summits().size());
  }

  @Test
  void equalStringsInParallelAreSoManyTimesOne() {
    StringCurve one = StringCurve.of(lit(2, 450.0));
    PanelCurve three = PanelCurve.of(one, one, one);
    CurvePoint single = PanelCurve.of(one).maxPower();
    assertEquals(single.voltageV(), three.maxPower().voltageV(), 1e-9 * single.voltageV());
    assertEquals(3.0 * single.powerW(), three.maxPower().powerW(), 1e-12 * 3 * single.powerW());
    assertEquals(one.openCircuitV(), three.openCircuitV(), 1e-12 * one.openCircuitV());
  }

  /**
   * By hand: one group of three dark. The bright two thirds carry on; the dark third costs its
   * bypass drop: V = 2/3 V1(I) - 0.5.
   */
  @Test
  void aDarkBypassGroupCostsAThirdAndItsDrop() {
    PanelCurve shaded = PanelCurve.of(groups(1000.0, 1000.0, 0.0));
    CurvePoint full = PV_3.maxPower(1000.0, 25.0);
    double v = full.voltageV() * 2.0 / 3.0 - DROP_V;
    // the voltage that carries the module's own best current
    assertEquals(v, groups(1000.0, 1000.0, 0.0).voltageV(full.currentA()), 1e-6);
    double lost = 1.0 - shaded.maxPower().powerW() / full.powerW();
    assertTrue(lost > 1.0 / 3.0 && lost < 1.0 / 3.0 + DROP_V / full.voltageV(), "lost " + lost);
    assertEquals(1, shaded.summits().size());
  }

  /** By hand: without drop a dark group costs exactly a third. */
  @Test
  void withoutBypassDropADarkGroupCostsExactlyAThird() {
    var groups =
        List.of(
            new CellGroup(PV_3, 1.0 / 3.0, 2, 1000.0, 25.0),
            new CellGroup(PV_3, 1.0 / 3.0, 1, 0.0, 25.0));
    double w = PanelCurve.of(StringCurve.of(groups, 0.0)).maxPower().powerW();
    assertEquals(2.0 / 3.0 * PV_3.maxPowerW(1000.0, 25.0), w, 1e-9 * w);
  }

  @Test
  void aHalfShadedGroupMakesTwoSummits() {
    PanelCurve shaded = PanelCurve.of(groups(1000.0, 1000.0, 500.0));
    List<CurvePoint> summits = shaded.summits();
    assertEquals(2, summits.size());
    // left: bypassed, two thirds at full current; right: all three at the weak one's current
    assertTrue(summits.get(0).voltageV() < 0.7 * Sheets.PV_3.maxPowerV());
    assertTrue(summits.get(1).voltageV() > Sheets.PV_3.maxPowerV());
    double weakA = PV_3.maxPower(500.0, 25.0).currentA();
    assertEquals(weakA, summits.get(1).currentA(), 0.06 * weakA);
    assertEquals(
        Math.max(summits.get(0).powerW(), summits.get(1).powerW()), shaded.maxPower().powerW());
  }

  @Test
  void threeLightsMakeThreeSummits() {
    assertEquals(3, PanelCurve.of(groups(1000.0, 600.0, 250.0)).summits().size());
  }

  @Test
  void noLightHasNoSummitAndNothingToGive() {
    PanelCurve dark = PanelCurve.of(groups(0.0, 0.0, 0.0));
    assertEquals(List.of(), dark.summits());
    assertEquals(new CurvePoint(0.0, 0.0), dark.maxPower());
    assertEquals(0.0, dark.openCircuitV());
  }

  @Test
  void theTraceRunsFromShortToOpenCircuitAndHoldsItsSummits() {
    PanelCurve shaded = PanelCurve.of(groups(1000.0, 600.0, 250.0));
    CurveTrace trace = shaded.trace(50);
    assertEquals(0.0, trace.voltageV()[0]);
    assertEquals(shaded.shortCircuitA(), trace.shortCircuitA());
    assertEquals(shaded.openCircuitV(), trace.openCircuitV());
    assertEquals(0.0, trace.currentA()[trace.currentA().length - 1], 1e-9);
    for (int k = 1; k < trace.voltageV().length; k++) {
      assertTrue(trace.voltageV()[k] > trace.voltageV()[k - 1]);
      assertTrue(trace.currentA()[k] <= trace.currentA()[k - 1] + 1e-12);
    }
    assertEquals(3, trace.summits().size());
    assertEquals(shaded.maxPower(), trace.maxPower());
  }

  @Property(tries = 25)
  void summitsAreAllThereIsToFind(@ForAll long seed) {
    PanelCurve curve = random(new Random(seed));
    double best = 0.0;
    int steps = 600;
    var w = new double[steps + 1];
    for (int k = 0; k <= steps; k++) {
      w[k] = curve.powerW(curve.openCircuitV() * k / steps);
      best = Math.max(best, w[k]);
    }
    // a dark group lets nearly nothing through: rounding there is not a summit
    double leastW = 1e-6 * best;
    int turns = 0;
    for (int k = 1; k < steps; k++) {
      turns += w[k] > leastW && w[k] > w[k - 1] && w[k] >= w[k + 1] ? 1 : 0;
    }
    double found = curve.maxPower().powerW();
    assertTrue(found >= best * (1.0 - 1e-12), found + " W, a search finds " + best);
    assertTrue(found <= best * 1.001, found + " W, a search finds " + best);
    // the search may step over a low summit beside a switch
    assertTrue(curve.summits().size() >= turns, curve.summits().size() + " < " + turns);
    for (CurvePoint summit : curve.summits()) {
      double v = summit.voltageV();
      double step = 1e-5 * v;
      assertTrue(
          summit.powerW() >= curve.powerW(v - step) && summit.powerW() >= curve.powerW(v + step));
    }
  }

  @Property(tries = 100)
  void togetherNeverMoreThanApart(@ForAll long seed) {
    var random = new Random(seed);
    StringCurve a = randomString(random);
    StringCurve b = randomString(random);
    double apart = PanelCurve.of(a).maxPower().powerW() + PanelCurve.of(b).maxPower().powerW();
    assertTrue(PanelCurve.of(a, b).maxPower().powerW() <= apart * (1.0 + 1e-12));
    double v = PanelCurve.of(a, b).openCircuitV();
    assertTrue(
        v >= Math.min(a.openCircuitV(), b.openCircuitV()) - 1e-9
            && v <= Math.max(a.openCircuitV(), b.openCircuitV()) + 1e-9);
  }

  @Property(tries = 100)
  void aRowNeverBeatsItsModulesApart(@ForAll long seed) {
    var random = new Random(seed);
    SingleDiode diode = Sheets.diode(DataSheetFit.of(Sheets.random(random)));
    double apart = 0.0;
    double weakest = Double.POSITIVE_INFINITY;
    int n = 2 + random.nextInt(4);
    var groups = new ArrayList<CellGroup>();
    for (int k = 0; k < n; k++) {
      double g = 20.0 + 1180.0 * random.nextDouble();
      double cellC = -30.0 + 100.0 * random.nextDouble();
      groups.add(new CellGroup(diode, 1.0 / 3.0, 3, g, cellC));
      double own = diode.maxPowerW(g, cellC);
      apart += own;
      weakest = Math.min(weakest, own);
    }
    double row = PanelCurve.of(StringCurve.of(groups, DROP_V)).maxPower().powerW();
    assertTrue(row <= apart * (1.0 + 1e-9), row + " W of " + apart);
    assertTrue(row >= weakest * (1.0 - 1e-9), row + " W, weakest " + weakest);
  }

  @Property(tries = 100)
  void voltageAndCurrentAreEachOthersInverse(@ForAll long seed) {
    var random = new Random(seed);
    StringCurve string = randomString(random);
    double v = string.openCircuitV() * 1.1 * random.nextDouble();
    double i = string.currentA(v);
    if (Math.abs(i) > 1e-6) { // a dark group turns over within less
      assertEquals(v, string.voltageV(i), 1e-8 * v + 1e-9);
    }
  }

  private static StringCurve randomString(Random random) {
    int n = 1 + random.nextInt(5);
    var groups = new ArrayList<CellGroup>();
    for (int k = 0; k < n; k++) {
      double g = random.nextInt(6) == 0 ? 0.0 : 20.0 + 1180.0 * random.nextDouble();
      groups.add(
          new CellGroup(
              PV_3, 1.0 / 3.0, 1 + random.nextInt(3), g, -30.0 + 100.0 * random.nextDouble()));
    }
    groups.add(new CellGroup(PV_3, 1.0 / 3.0, 1, 100.0 + 900.0 * random.nextDouble(), 25.0));
    return StringCurve.of(groups, DROP_V);
  }

  private static PanelCurve random(Random random) {
    return random.nextBoolean()
        ? PanelCurve.of(randomString(random))
        : PanelCurve.of(randomString(random), randomString(random));
  }
}
