package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.storage.step.TwoTank;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/**
 * The two tanks against small steps of their differential equations, and against figures of our own
 * that were worked out apart from this program (own construction, not published). A step of {@link
 * TwoTank} is one hour; other spans are asked for by scaling k.
 */
class TwoTankTest {
  private static final double C = 0.4;
  private static final double K_PER_H = 0.5;
  private static final double FULL_AH = 100.0;

  /** y1 and y2 after hours at this draw, by the equations as printed, with k' = k c (1 - c). */
  private static double[] bySmallSteps(
      double c, double k, double y1, double y2, double draw, double hours) {
    int steps = 3600;
    double dt = hours / steps, valve = k * c * (1.0 - c);
    double a = y1, b = y2;
    for (int i = 0; i < steps; i++) {
      double k1 = flow(c, valve, a, b);
      double k2 = flow(c, valve, a + 0.5 * dt * (k1 - draw), b - 0.5 * dt * k1);
      double k3 = flow(c, valve, a + 0.5 * dt * (k2 - draw), b - 0.5 * dt * k2);
      double k4 = flow(c, valve, a + dt * (k3 - draw), b - dt * k3);
      double flowed = dt * (k1 + 2.0 * k2 + 2.0 * k3 + k4) / 6.0;
      a += flowed - draw * dt;
      b -= flowed;
    }
    return new double[] {a, b};
  }

  private static double flow(double c, double valve, double y1, double y2) {
    return valve * (y2 / (1.0 - c) - y1 / c);
  }

  /** Charge over a span other than an hour: draw and k for the span. */
  private static void holds(
      double draw, double hours, double y1, double y2, double expected1, double expected2) {
    TwoTank tanks = TwoTank.of(C, K_PER_H * hours);
    double drawn = draw * hours;
    double after = tanks.availableAfterWh(y1, y2, drawn);
    assertEquals(expected1, after, 1e-6, "available");
    assertEquals(expected2, y1 + y2 - drawn - after, 1e-6, "bound");
    double[] small = bySmallSteps(C, K_PER_H, y1, y2, draw, hours);
    assertEquals(small[0], after, 1e-6, "available by small steps");
    assertEquals(small[1], y1 + y2 - drawn - after, 1e-6, "bound by small steps");
  }

  @Test
  void anHourOfDrawFromTheFullBank() {
    holds(10.0, 1.0, 40.0, 60.0, 31.278368, 58.721632);
  }

  @Test
  void anHourAndAHalfOfAHardDraw() {
    holds(30.0, 1.5, 40.0, 60.0, 3.005196, 51.994804);
  }

  @Test
  void twoHoursOfRestAfterAHardDraw() {
    holds(0.0, 2.0, 5.0, 60.0, 18.274532, 46.725468);
  }

  @Test
  void theMostThatAnHourGivesAndTakes() {
    TwoTank tanks = TwoTank.of(C, K_PER_H);
    double out = tanks.mostOutWh(40.0, 60.0);
    assertEquals(45.862976, out, 1e-6);
    assertEquals(0.0, bySmallSteps(C, K_PER_H, 40.0, 60.0, out, 1.0)[0], 1e-6);
    double in = tanks.mostInWh(20.0, 30.0, FULL_AH);
    assertEquals(22.931488, in, 1e-6);
    assertEquals(40.0, bySmallSteps(C, K_PER_H, 20.0, 30.0, -in, 1.0)[0], 1e-6);
  }

  @Test
  void theFasterItIsEmptiedTheLessItGives() {
    double[][] deliveredAh = {
      {5.0, 85.003}, {10.0, 70.868}, {20.0, 55.124}, {50.0, 45.330}, {100.0, 42.531}
    };
    for (double[] at : deliveredAh) {
      assertEquals(at[1], deliveredAh(at[0]), 1e-3, at[0] + " A");
    }
    assertEquals(C * FULL_AH, deliveredAh(1e6), 1e-3, "at once: the available tank");
    assertEquals(FULL_AH, deliveredAh(0.01), 0.1, "slowly: nearly all");
  }

  /** The span after which the most that can be drawn is just this current. */
  private static double deliveredAh(double currentA) {
    double shortH = 0.0, longH = FULL_AH / currentA;
    for (int i = 0; i < 100; i++) {
      double hours = 0.5 * (shortH + longH);
      double most = TwoTank.of(C, K_PER_H * hours).mostOutWh(C * FULL_AH, (1.0 - C) * FULL_AH);
      if (most > currentA * hours) {
        shortH = hours;
      } else {
        longH = hours;
      }
    }
    return currentA * longH;
  }

  @Property(tries = 100)
  void anyHourEqualsSmallSteps(
      @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.95) double c,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 4.0) double k,
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 1.0) double fill1,
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 1.0) double fill2,
      @ForAll @Scale(4) @DoubleRange(min = -3000.0, max = 3000.0) double drawWh) {
    double y1 = 10_000.0 * c * fill1, y2 = 10_000.0 * (1.0 - c) * fill2;
    double[] small = bySmallSteps(c, k, y1, y2, drawWh, 1.0);
    assertEquals(small[0], TwoTank.of(c, k).availableAfterWh(y1, y2, drawWh), 1e-6);
  }

  /** No hour ends with less than nothing or more than full, and none passes through it. */
  @Property(tries = 100)
  void atTheMostTheTankStaysWithinItsWallsThroughTheHour(
      @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.95) double c,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 4.0) double k,
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 1.0) double fill1,
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 1.0) double fill2) {
    double full = 10_000.0, y1 = full * c * fill1, y2 = full * (1.0 - c) * fill2;
    TwoTank tanks = TwoTank.of(c, k);
    double out = tanks.mostOutWh(y1, y2), in = tanks.mostInWh(y1, y2, full);
    for (int tenth = 1; tenth <= 10; tenth++) {
      double hours = 0.1 * tenth;
      TwoTank part = TwoTank.of(c, k * hours);
      assertTrue(part.availableAfterWh(y1, y2, out * hours) > -1e-6, "never below empty");
      assertTrue(part.availableAfterWh(y1, y2, -in * hours) < c * full + 1e-6, "never above full");
    }
  }
}
