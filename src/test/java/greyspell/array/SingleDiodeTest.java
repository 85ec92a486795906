package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Regression values worked out apart from this code (own construction, not published) and the laws
 * of the curve. Sheet numbers as in {@link Sheets}.
 */
class SingleDiodeTest {
  private static final SingleDiode PV_3 = Sheets.diode(DataSheetFit.deSoto(Sheets.PV_3));
  private static final SingleDiode PV_4 = Sheets.diode(DataSheetFit.deSoto(Sheets.PV_4));

  @Test
  void findsTheFiveParametersOfThe54CellSheet() {
    DiodeParameters got = Sheets.diode(DataSheetFit.deSoto(Sheets.PV_1)).reference();
    assertEquals(8.22719, got.lightA(), 1e-3 * 8.22719);
    assertEquals(4.29824e-10, got.saturationA(), 1e-3 * 4.29824e-10);
    assertEquals(0.33537, got.seriesOhm(), 1e-3 * 0.33537);
    assertEquals(160.219, got.shuntOhm(), 1e-3 * 160.219);
    assertEquals(1.39113, got.idealityV(), 1e-3 * 1.39113);
  }

  @Test
  void findsTheFiveParametersOfThe60CellSheet() {
    DiodeParameters got = PV_3.reference();
    assertEquals(9.83965, got.lightA(), 1e-3 * 9.83965);
    assertEquals(5.05251e-11, got.saturationA(), 1e-3 * 5.05251e-11);
    assertEquals(0.28768, got.seriesOhm(), 1e-3 * 0.28768);
    assertEquals(293.01, got.shuntOhm(), 1e-3 * 293.01);
    assertEquals(1.53188, got.idealityV(), 1e-3 * 1.53188);
  }

  @ParameterizedTest
  @CsvSource({
    "1000, 25, 300.625",
    "1000, 50, 272.072",
    "1000, 0, 328.539",
    "800, 45, 223.548",
    "400, 25, 121.033",
    "200, 25, 59.560",
    "100, 25, 29.054",
    "1000, -20, 350.351"
  })
  void powerOfThe60CellModule(double irradianceWm2, double cellC, double expectedW) {
    assertEquals(expectedW, PV_3.maxPowerW(irradianceWm2, cellC), 0.0005 * expectedW);
  }

  @ParameterizedTest
  @CsvSource({"1000, 25, 100.005", "1000, 50, 89.197", "200, 25, 20.132", "1000, 0, 110.506"})
  void powerOfThe36CellModule(double irradianceWm2, double cellC, double expectedW) {
    assertEquals(expectedW, PV_4.maxPowerW(irradianceWm2, cellC), 0.001 * expectedW);
  }

  @Test
  void voltages() {
    assertEquals(45.292, PV_3.openCircuitV(1000.0, -20.0), 0.0005 * 45.292);
    assertEquals(37.336, PV_3.openCircuitV(200.0, 25.0), 0.0005 * 37.336);
    assertEquals(15.715, PV_4.maxPower(1000.0, 50.0).voltageV(), 0.001 * 15.715);
  }

  @Test
  void efficiencyAtWeakLightStaysNearThatOfFullLight() {
    double relative = 5.0 * PV_3.maxPowerW(200.0, 25.0) / PV_3.maxPowerW(1000.0, 25.0);
    assertTrue(relative >= 0.99 && relative <= 1.02, () -> "relative efficiency " + relative);
  }

  /**
   * Invented sheets of the usual kinds (cells, Isc, Voc, Imp, Vmp, coefficients in %/K): all are
   * met without a caution, with an ideality near 1 per cell and a power at weak light as usual for
   * silicon.
   */
  @ParameterizedTest
  @CsvSource({
    "72, 10.40, 49.6, 9.86, 41.6, 0.050, -0.27, -0.35",
    "54, 13.87, 38.9, 13.19, 32.6, 0.046, -0.25, -0.30",
    "60, 10.90, 44.3, 10.22, 37.2, 0.040, -0.24, -0.26",
    "60, 9.19, 38.2, 8.74, 30.9, 0.050, -0.31, -0.41",
    "96, 6.46, 64.9, 5.98, 54.7, 0.050, -0.27, -0.35",
    "36, 3.45, 21.7, 3.15, 17.4, 0.040, -0.37, -0.50"
  })
  void usualSheetsAreMetWithoutCaution(
      int cells,
      double isc,
      double voc,
      double imp,
      double vmp,
      double alpha,
      double beta,
      double gamma) {
    ModuleSpec sheet =
        Sheets.sheet(cells, isc, voc, imp, vmp, alpha / 100.0, beta / 100.0, gamma / 100.0);
    DiodeFit fit = DataSheetFit.of(sheet);
    assertEquals(List.of(), fit.cautions());
    SingleDiode diode = Sheets.diode(fit);
    double thermalV = SingleDiode.BOLTZMANN_EV_PER_K * SingleDiode.REFERENCE_K;
    double ideality = diode.reference().idealityV() / (cells * thermalV);
    assertTrue(ideality > 0.8 && ideality < 1.4, () -> "ideality " + ideality);
    double relative = 5.0 * diode.maxPowerW(200.0, 25.0) / (vmp * imp);
    assertTrue(relative > 0.95 && relative < 1.02, () -> "relative efficiency " + relative);
  }

  /** Common practice, no source: heavy overcast barely lowers the voltage. */
  @Test
  void openCircuitVoltageStaysAboveNineTenthsUnderHeavyOvercast() {
    for (SingleDiode diode : new SingleDiode[] {PV_3, PV_4}) {
      assertTrue(diode.openCircuitV(100.0, 25.0) > 0.9 * diode.openCircuitV(1000.0, 25.0));
    }
  }

  @Test
  void fillFactorAndEfficiencyOfTheSheet() {
    assertEquals(0.7684, Sheets.PV_3.fillFactor(), 1e-4);
    var withArea =
        new ModuleSpec(
            "", 300.6, 39.8, 9.83, 32.5, 9.25, -0.0038, -0.0031, 0.0005, 45, 60, null, 1.64);
    Double efficiency = withArea.efficiency();
    assertEquals(0.1833, efficiency == null ? 0.0 : efficiency, 1e-4);
    assertNull(Sheets.PV_3.efficiency());
  }

  @Test
  void maximumPowerAgreesWithASearchAlongTheCurve() {
    for (double irradianceWm2 : new double[] {5.0, 50.0, 300.0, 1100.0}) {
      for (double cellC : new double[] {-25.0, 10.0, 70.0}) {
        double ocV = PV_3.openCircuitV(irradianceWm2, cellC);
        double searchedW =
            new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                    new MaxEval(500),
                    GoalType.MAXIMIZE,
                    new SearchInterval(0.0, ocV),
                    new UnivariateObjectiveFunction(
                        v -> v * PV_3.currentA(irradianceWm2, cellC, v)))
                .getValue();
        assertEquals(searchedW, PV_3.maxPowerW(irradianceWm2, cellC), 1e-9 * searchedW);
      }
    }
  }

  @Test
  void currentAgreesWithABracketingSolverFromBelowZeroToAboveOpenCircuit() {
    DiodeParameters p = PV_3.at(650.0, 40.0);
    for (double voltageV = -20.0; voltageV <= 45.0; voltageV += 2.5) {
      double v = voltageV;
      double expected =
          new BrentSolver(1e-13, 1e-13)
              .solve(
                  500,
                  i ->
                      p.lightA()
                          - p.saturationA() * Math.expm1((v + i * p.seriesOhm()) / p.idealityV())
                          - (v + i * p.seriesOhm()) / p.shuntOhm()
                          - i,
                  -200.0,
                  50.0);
      assertEquals(expected, PV_3.currentA(650.0, 40.0, v), 1e-9);
    }
  }

  @Test
  void noLightGivesNothing() {
    assertEquals(0.0, PV_3.maxPowerW(0.0, -20.0));
    assertEquals(0.0, PV_3.openCircuitV(0.0, -20.0));
    assertEquals(0.0, PV_3.currentA(0.0, -20.0, 10.0));
    assertEquals(new CurvePoint(0.0, 0.0), PV_3.maxPower(0.0, 10.0));
  }

  @Test
  void aSheetThatNoCellCanHaveIsRefusedWithTheReason() {
    // 0.99 of the voltage and 0.99 of the current: squarer than any diode
    DiodeFit fit =
        DataSheetFit.of(Sheets.sheet(60, 10.0, 40.0, 9.99, 39.99, 0.0005, -0.003, -0.004));
    assertNull(fit.diode());
    assertTrue(fit.failure().startsWith("no solar cell's curve has its maximum power at"));
  }

  @Test
  void aPowerCoefficientThatCannotBeMetIsACaution() {
    DiodeFit fit = DataSheetFit.of(Sheets.sheet(60, 9.83, 39.8, 9.25, 32.5, 5e-4, -31e-4, -10e-4));
    assertEquals(1, fit.cautions().size());
    assertTrue(fit.cautions().get(0).contains("its power coefficient of -0.100 %/K"));
  }
}
