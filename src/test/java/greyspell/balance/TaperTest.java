package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.storage.step.Taper;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** The hour's absorption against small steps of the printed rule. */
class TaperTest {
  private static final double FULL_WH = 10_000.0;
  private static final double MOST_WH = 3000.0;
  private static final int STEPS = 36_000;

  /** A tenth of a second each, at the acceptance in the middle of the step. */
  private static double bySmallSteps(
      double knee, double tail, double share, double mostWh, double efficiency) {
    double at = share, inWh = 0.0, dt = 1.0 / STEPS;
    for (int i = 0; i < STEPS; i++) {
      double half = at + 0.5 * dt * efficiency * accepted(knee, tail, at, mostWh) / FULL_WH;
      double stepWh = dt * accepted(knee, tail, half, mostWh);
      inWh += stepWh;
      at += efficiency * stepWh / FULL_WH;
    }
    return inWh;
  }

  private static double accepted(double knee, double tail, double share, double mostWh) {
    return share <= knee ? mostWh : mostWh * (tail + (1.0 - tail) * (1.0 - share) / (1.0 - knee));
  }

  /** The corner at the knee costs the small steps what one of them could: below 1e-4 Wh here. */
  @Property(tries = 60)
  void anyHourEqualsSmallSteps(
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 0.95) double knee,
      @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 1.0) double tail,
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 1.0) double share,
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 3000.0) double mostWh,
      @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 1.0) double efficiency) {
    assertEquals(
        bySmallSteps(knee, tail, share, mostWh, efficiency),
        new Taper(knee, tail).mostInWh(share, FULL_WH, mostWh, efficiency),
        1e-4);
  }

  @Test
  void anHourThatCrossesTheKnee() {
    double got = new Taper(0.8, 0.05).mostInWh(0.7, FULL_WH, MOST_WH, 0.9);
    assertEquals(bySmallSteps(0.8, 0.05, 0.7, MOST_WH, 0.9), got, 1e-4);
    assertTrue(got < MOST_WH && got > 1000.0 / 0.9, "more than to the knee, less than the limit");
  }

  @Test
  void farBelowTheKneeTheLimitIsTaken() {
    assertEquals(MOST_WH, new Taper(0.8, 0.05).mostInWh(0.2, FULL_WH, MOST_WH, 0.9));
  }

  @Test
  void aTailOfOneIsNoTaper() {
    assertEquals(MOST_WH, new Taper(0.5, 1.0).mostInWh(0.99, FULL_WH, MOST_WH, 0.9), 1e-9);
  }

  /** Full, the tail is what the hour begins with; it falls on, for the rule knows no lid. */
  @Test
  void fullTheHourBeginsWithTheTail() {
    double got = new Taper(0.8, 0.05).mostInWh(1.0, FULL_WH, MOST_WH, 0.9);
    assertEquals(bySmallSteps(0.8, 0.05, 1.0, MOST_WH, 0.9), got, 1e-4);
    assertTrue(got < 0.05 * MOST_WH);
    double slow = new Taper(0.8, 0.05).mostInWh(1.0, FULL_WH, 1.0, 0.9);
    assertEquals(0.05, slow, 1e-4);
  }

  @Test
  void withTheTailFullIsReached() {
    var taper = new Taper(0.8, 0.03);
    double wh = 0.5 * FULL_WH;
    int hours = 0;
    while (wh < FULL_WH && hours < 1000) {
      wh += 0.9 * taper.mostInWh(wh / FULL_WH, FULL_WH, MOST_WH, 0.9);
      hours++;
    }
    assertTrue(hours > 3 && hours < 40, "hours until full: " + hours);
  }

  @Test
  void theFullerTheLess() {
    var taper = new Taper(0.6, 0.04);
    double beforeWh = Double.POSITIVE_INFINITY;
    for (int percent = 0; percent <= 100; percent++) {
      double wh = taper.mostInWh(percent / 100.0, FULL_WH, MOST_WH, 0.9);
      assertTrue(wh <= beforeWh + 1e-9 && wh > 0.0, percent + " %: " + wh);
      beforeWh = wh;
    }
  }
}
