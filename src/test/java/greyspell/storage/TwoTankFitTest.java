package greyspell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.storage.CellDefaults.Tanks;
import greyspell.storage.TwoTankFit.RatePoint;
import greyspell.storage.step.TwoTank;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class TwoTankFitTest {
  private static final Tanks USUAL = new Tanks(0.55, 0.24);

  private static List<RatePoint> made(double c, double k, double tanksAh, double... inH) {
    var points = new ArrayList<RatePoint>();
    for (double h : inH) {
      points.add(new RatePoint(h, tanksAh * TwoTankFit.givenShare(c, k, h)));
    }
    return points;
  }

  /** What the tanks themselves give when they are emptied evenly. */
  @Test
  void theCurveIsThatOfTheTanks() {
    for (double h : new double[] {0.1, 1.0, 5.0, 20.0, 100.0}) {
      double most = TwoTank.of(0.4, 0.5, h).mostOutWh(40.0, 60.0);
      assertEquals(most, 100.0 * TwoTankFit.givenShare(0.4, 0.5, h), 1e-9);
    }
  }

  @Property(tries = 40)
  void findsTheTanksThatMadeThePoints(
      @ForAll @DoubleRange(min = 0.2, max = 0.8) @Scale(8) double c,
      @ForAll @DoubleRange(min = 0.06, max = 0.6) @Scale(8) double k) {
    TwoTankFit fit = TwoTankFit.of(made(c, k, 400.0, 3.0, 10.0, 50.0), USUAL);
    assertEquals(c, fit.availableShare(), 1e-3);
    assertEquals(k, fit.exchangePerH(), 1e-2 * k + 1e-3);
    assertEquals(400.0, fit.tanksAh(), 1.0);
    assertTrue(fit.worstMissShare() < 1e-4);
  }

  /** A sheet's three points; c, k and size found apart by a fine grid. */
  @Test
  void followsAUsualSheet() {
    var points = List.of(new RatePoint(5, 310), new RatePoint(20, 390), new RatePoint(100, 440));
    TwoTankFit fit = TwoTankFit.of(points, USUAL);
    assertEquals(0.556, fit.availableShare(), 0.005);
    assertEquals(0.240, fit.exchangePerH(), 0.005);
    assertEquals(454.5, fit.tanksAh(), 1.0);
    assertTrue(fit.worstMissShare() < 0.001);
    assertEquals(List.of(), fit.cautions());
  }

  @Test
  void twoPointsKeepTheUsualShareAndOneGivesTheSize() {
    TwoTankFit two = TwoTankFit.of(made(0.55, 0.3, 200.0, 5.0, 50.0), USUAL);
    assertEquals(0.55, two.availableShare());
    assertEquals(0.3, two.exchangePerH(), 1e-4);
    TwoTankFit one = TwoTankFit.of(List.of(new RatePoint(20.0, 100.0)), USUAL);
    assertEquals(0.24, one.exchangePerH());
    assertEquals(100.0 / TwoTankFit.givenShare(0.55, 0.24, 20.0), one.tanksAh(), 1e-9);
    TwoTankFit sized = TwoTankFit.sized(made(0.55, 0.24, 300.0, 5.0, 20.0, 100.0), USUAL);
    assertEquals(300.0, sized.tanksAh(), 1e-9);
  }

  @Test
  void pointsOffTheLineAreAskedAbout() {
    var swapped = List.of(new RatePoint(5, 310), new RatePoint(20, 315), new RatePoint(100, 540));
    List<String> cautions = TwoTankFit.of(swapped, USUAL).cautions();
    assertTrue(cautions.stream().anyMatch(c -> c.contains("Peukert line")), cautions::toString);
    assertThrows(
        IllegalArgumentException.class,
        () -> TwoTankFit.of(List.of(new RatePoint(5, 310), new RatePoint(20, 300)), USUAL));
    assertThrows(IllegalArgumentException.class, () -> TwoTankFit.of(List.of(), USUAL));
  }

  // ---- Peukert ----------------------------------------------------------------------------------

  /** Own construction: 100 Ah in 20 h, exponent 1.2. */
  @Test
  void peukertTimesAndCapacities() {
    var p = new Peukert(100.0, 20.0, 1.2);
    double[][] table = {{10, 8.7055, 87.06}, {20, 3.7893, 75.79}, {50, 1.2619, 63.10}};
    for (double[] at : table) {
      assertEquals(at[1], p.runH(at[0]), 1e-3 * 0.5);
      assertEquals(at[2], p.drawnAh(at[0]), 5e-3);
      assertEquals(p.drawnAh(at[0]), p.capacityAh(p.runH(at[0])), 1e-9);
    }
  }

  /**
   * The tanks that are fitted to points of a Peukert line stay near it between them. The two
   * farthest places were found apart, with another least squares program: own construction.
   */
  @Test
  void tanksFollowAPeukertLine() {
    var line = new Peukert(100.0, 20.0, 1.2);
    var points = new ArrayList<RatePoint>();
    for (double h : new double[] {5.0, 20.0, 100.0}) {
      points.add(new RatePoint(h, line.capacityAh(h)));
    }
    Peukert found = Peukert.through(points);
    assertEquals(1.2, found.peukertExponent(), 1e-9);
    assertEquals(0.0, found.worstOffShare(points), 1e-12);
    TwoTankFit fit = TwoTankFit.of(points, USUAL);
    double least = 0.0;
    double most = 0.0;
    for (double h = 5.0; h <= 100.0; h += 5.0) {
      double given =
          fit.tanksAh() * TwoTankFit.givenShare(fit.availableShare(), fit.exchangePerH(), h);
      least = Math.min(least, given / line.capacityAh(h) - 1.0);
      most = Math.max(most, given / line.capacityAh(h) - 1.0);
    }
    assertEquals(-0.02013, least, 1e-4, "in 10 h");
    assertEquals(0.02960, most, 1e-4, "in 50 h");
  }
}
