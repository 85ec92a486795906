package greyspell.storage.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class TwoTankTest {
  private static final double C = 0.4;
  private static final double K = 0.5;
  private static final double CAPACITY = 100.0;

  private static void after(
      double q1, double q2, double current, double hours, double expected1, double expected2) {
    double draw = current * hours;
    double got = TwoTank.of(C, K, hours).availableAfterWh(q1, q2, draw);
    assertEquals(expected1, got, 1e-6);
    assertEquals(expected2, q1 + q2 - draw - got, 1e-6);
  }

  /** Own construction, checked apart against the differential equation. */
  @Test
  void stepsAreThoseOfTheEquation() {
    after(40.0, 60.0, 10.0, 1.0, 31.278368, 58.721632);
    after(40.0, 60.0, 30.0, 1.5, 3.005196, 51.994804);
    after(5.0, 60.0, 0.0, 2.0, 18.274532, 46.725468);
  }

  /** Own construction. */
  @Test
  void limitsAreThoseOfTheEquation() {
    var tank = TwoTank.of(C, K);
    assertEquals(45.862976, tank.mostOutWh(40.0, 60.0), 1e-6);
    double in = tank.mostInWh(20.0, 30.0, CAPACITY);
    assertEquals(22.931488, in, 1e-6);
    assertEquals(40.0, tank.availableAfterWh(20.0, 30.0, -in), 1e-9);
    assertEquals(0.0, tank.mostInWh(40.0, 60.0, CAPACITY));
    assertEquals(0.0, tank.mostOutWh(0.0, 0.0));
  }

  /**
   * Own construction: what a full battery gives at constant currents until the first tank is dry.
   */
  @Test
  void aFasterDrawGivesLess() {
    double[] current = {5.0, 10.0, 20.0, 50.0, 100.0};
    double[] given = {85.003, 70.868, 55.124, 45.330, 42.531};
    for (int i = 0; i < current.length; i++) {
      assertEquals(given[i], current[i] * hoursUntilDry(C, K, CAPACITY, current[i]), 1e-3);
    }
  }

  private static double hoursUntilDry(double c, double k, double capacity, double current) {
    double low = 1e-6, high = 1000.0;
    for (int i = 0; i < 200; i++) {
      double mid = 0.5 * (low + high);
      var tank = TwoTank.of(c, k, mid);
      if (tank.mostOutWh(c * capacity, (1.0 - c) * capacity) > current * mid) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return 0.5 * (low + high);
  }

  @Test
  void oneTankHoldsAllAtHand() {
    var tank = TwoTank.of(1.0, 0.3);
    assertEquals(70.0, tank.mostOutWh(70.0, 0.0), 1e-12);
    assertEquals(50.0, tank.availableAfterWh(70.0, 0.0, 20.0), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> TwoTank.of(0.0, 0.3));
    assertThrows(IllegalArgumentException.class, () -> TwoTank.of(Double.NaN, 0.3));
  }

  /** Hours with any draw within the limits never leave the tanks, nor lose anything. */
  @Property(tries = 300)
  void neverLeavesItsTanks(
      @ForAll @DoubleRange(min = 0.05, max = 1.0) @Scale(8) double c,
      @ForAll @DoubleRange(min = 0.001, max = 20.0) @Scale(8) double k,
      @ForAll @DoubleRange(min = 0.0, max = 1.0) @Scale(8) double fill,
      @ForAll @DoubleRange(min = -1.0, max = 1.0) @Scale(8) double strength) {
    var tank = TwoTank.of(c, k);
    double q1 = c * fill * 1000.0, q2 = (1.0 - c) * fill * 1000.0;
    double turn = strength;
    for (int h = 0; h < 60; h++) {
      turn = (turn * 1.7 + 0.61) % 1.0;
      double draw =
          turn > 0.0 ? turn * tank.mostOutWh(q1, q2) : turn * tank.mostInWh(q1, q2, 1000.0);
      double next = tank.availableAfterWh(q1, q2, draw);
      q2 = q1 + q2 - draw - next;
      q1 = next;
      assertTrue(q1 > -1e-9 && q1 < c * 1000.0 + 1e-9, "first " + q1);
      assertTrue(q2 > -1e-9 && q2 < (1.0 - c) * 1000.0 + 1e-9, "second " + q2);
      turn = h % 3 == 0 ? -turn : turn;
    }
  }

  /** Two half hours of a draw are one hour of it. */
  @Property(tries = 200)
  void stepsAddUp(
      @ForAll @DoubleRange(min = 0.05, max = 0.95) @Scale(8) double c,
      @ForAll @DoubleRange(min = 1e-6, max = 20.0) @Scale(8) double k,
      @ForAll @DoubleRange(min = -50.0, max = 50.0) @Scale(8) double draw) {
    var half = TwoTank.of(c, k, 0.5);
    double q1 = 300.0, q2 = 200.0;
    double mid = half.availableAfterWh(q1, q2, 0.5 * draw);
    double end = half.availableAfterWh(mid, q1 + q2 - 0.5 * draw - mid, 0.5 * draw);
    assertEquals(TwoTank.of(c, k).availableAfterWh(q1, q2, draw), end, 1e-9);
  }
}
