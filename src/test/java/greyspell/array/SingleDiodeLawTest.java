package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class SingleDiodeLawTest {
  private static final double STEP_K = 10.0;

  @Property(tries = 4000)
  void everyPlausibleSheetIsMet(@ForAll long seed) {
    ModuleSpec sheet = Sheets.random(new Random(seed));
    DiodeFit fit = DataSheetFit.of(sheet);
    SingleDiode diode = Sheets.diode(fit);

    near(sheet.shortCircuitA(), diode.shortCircuitA(1000.0, 25.0), 0.001);
    near(sheet.openCircuitV(), diode.openCircuitV(1000.0, 25.0), 0.001);
    near(sheet.maxPowerV(), diode.maxPower(1000.0, 25.0).voltageV(), 0.001);
    near(sheet.maxPowerA(), diode.maxPower(1000.0, 25.0).currentA(), 0.001);
    near(
        sheet.shortCircuitPerK(),
        (diode.shortCircuitA(1000.0, 35.0) / sheet.shortCircuitA() - 1.0) / STEP_K,
        0.01);
    near(
        sheet.openCircuitPerK(),
        (diode.openCircuitV(1000.0, 35.0) / sheet.openCircuitV() - 1.0) / STEP_K,
        0.01);
    boolean isPowerCoefficientImpossible =
        fit.cautions().stream().anyMatch(c -> c.contains("its power coefficient"));
    if (!isPowerCoefficientImpossible) {
      near(
          sheet.powerPerK(),
          (diode.maxPowerW(1000.0, 35.0) / diode.maxPowerW(1000.0, 25.0) - 1.0) / STEP_K,
          0.01);
    }
    DiodeParameters reference = diode.reference();
    assertTrue(
        reference.seriesOhm() >= 0.0
            && reference.shuntOhm() > 0.0
            && reference.saturationA() > 0.0);
  }

  @Property(tries = 1500)
  void moreLightNeverGivesLessAndThePowerPointLiesOnTheCurve(@ForAll long seed) {
    var random = new Random(seed);
    SingleDiode diode = Sheets.diode(DataSheetFit.of(Sheets.random(random)));
    double cellC = -40.0 + 130.0 * random.nextDouble();
    double weakWm2 = 1300.0 * random.nextDouble();
    double strongWm2 = weakWm2 + 100.0 * random.nextDouble();
    assertTrue(diode.maxPowerW(weakWm2, cellC) <= diode.maxPowerW(strongWm2, cellC));
    CurvePoint point = diode.maxPower(strongWm2, cellC);
    assertEquals(
        point.currentA(),
        diode.currentA(strongWm2, cellC, point.voltageV()),
        1e-9 * point.currentA());
    assertTrue(point.voltageV() > 0.0 && point.voltageV() < diode.openCircuitV(strongWm2, cellC));
    assertEquals(0.0, diode.currentA(strongWm2, cellC, diode.openCircuitV(strongWm2, cellC)), 1e-9);
    assertEquals(point.powerW(), diode.maxPowerW(strongWm2, cellC), 1e-9 * point.powerW());
  }

  private static void near(double expected, double got, double share) {
    assertEquals(expected, got, Math.abs(expected) * share);
  }
}
