package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import org.junit.jupiter.api.Test;

class PlanesTogetherTest {
  private static final SingleDiode PV_3 = Sheets.diode(DataSheetFit.of(Sheets.PV_3));

  private static LitString lit(int inSeries, double irradianceWm2, double cellC) {
    return new LitString(PV_3, inSeries, 3, irradianceWm2, cellC);
  }

  @Test
  void equalPlanesLoseNothing() {
    PlanesTogether got = PlanesTogether.of(lit(3, 600.0, 30.0), lit(3, 600.0, 30.0));
    assertEquals(6 * PV_3.maxPowerW(600.0, 30.0), got.separateW(), 1e-9 * got.separateW());
    assertEquals(0.0, got.parallelLossShare(), 1e-9);
    assertEquals(0.0, got.seriesLossShare(), 1e-9);
  }

  /** A morning: east at 800 W/m², west at 150 W/m². */
  @Test
  void neverPutTwoOrientationsInARow() {
    PlanesTogether got = PlanesTogether.of(lit(3, 800.0, 35.0), lit(3, 150.0, 18.0));
    assertTrue(got.parallelLossShare() >= 0.0 && got.parallelLossShare() < 0.01);
    assertTrue(got.seriesLossShare() > 0.15, "lost " + got.seriesLossShare());
    // the dark three are bypassed, nine diodes: what is left is the bright string less their drops
    double bypassedW = got.first().powerW() - 9 * 0.5 * got.first().currentA();
    assertEquals(bypassedW, got.series().powerW(), 0.002 * bypassedW);
  }

  @Test
  void unequalNumbersInParallelCostMuch() {
    PlanesTogether got = PlanesTogether.of(lit(4, 700.0, 25.0), lit(3, 700.0, 25.0));
    assertTrue(got.parallelLossShare() > 0.04, "lost " + got.parallelLossShare());
    assertEquals(0.0, got.seriesLossShare(), 1e-9);
  }

  /** Its cells are diodes that the bright string drives forward, hardly below their own knee. */
  @Test
  void aDarkPlaneDrawsLittleFromTheOtherInParallel() {
    PlanesTogether got = PlanesTogether.of(lit(3, 500.0, 20.0), lit(3, 0.0, 5.0));
    assertTrue(got.parallelLossShare() > 0.0 && got.parallelLossShare() < 0.01);
    double v = got.parallel().voltageV();
    double drawnA = StringCurve.of(lit(3, 0.0, 5.0)).currentA(v);
    assertTrue(drawnA < 0.0, "A " + drawnA);
    assertEquals(
        got.parallel().currentA(), StringCurve.of(lit(3, 500.0, 20.0)).currentA(v) + drawnA, 1e-9);
  }

  @Test
  void overManyHoursTheSumsAreThoseOfTheHours() {
    var calendar = HourCalendar.typicalYear();
    var array =
        new ArraySpec(
            "roof",
            40.0,
            90.0,
            Sheets.PV_3,
            3,
            1,
            Monthly.constant(0.0),
            Monthly.constant(0.0),
            0.0,
            0.0,
            0.0,
            ModuleChoices.usual());
    double[] east = {0.0, 600.0, 500.0, 200.0, 0.0};
    double[] west = {0.0, 100.0, 500.0, 650.0, 30.0};
    double[] air = {5.0, 6.0, 9.0, 10.0, 8.0};
    CellHours first = CellHours.of(array, calendar, east, east, air, null);
    CellHours second = CellHours.of(array, calendar, west, west, air, null);
    var energy = PlanesTogether.over(lit(3, 0.0, 0.0), first, lit(3, 0.0, 0.0), second);
    double separate = 0.0;
    double series = 0.0;
    for (int h = 1; h < 5; h++) {
      var now =
          PlanesTogether.of(
              lit(3, first.lightWm2()[h], first.cellC()[h]),
              lit(3, second.lightWm2()[h], second.cellC()[h]));
      separate += now.separateW();
      series += now.series().powerW();
    }
    assertEquals(separate, energy.separateWh(), 1e-9);
    assertEquals(series, energy.seriesWh(), 1e-9);
    assertTrue(energy.parallelLossShare() < 0.01 && energy.seriesLossShare() > 0.1);
  }
}
