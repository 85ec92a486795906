package greyspell.cause.log;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * How far a figure may be off by the chance of which days the log holds: whole days are drawn anew,
 * as many as there are, and the figure is read again. Hours of one day go together, for the errors
 * of a day do.
 *
 * <p>Block bootstrap: Efron and Tibshirani, An Introduction to the Bootstrap, 1993 (from memory).
 */
final class DayDraws {
  static final int DRAWS = 240;

  private DayDraws() {}

  /** Reads a figure from days, each counted so many times. */
  interface Figure {
    double of(int[] timesOfDay, SplittableRandom random);
  }

  /** One standard deviation of a figure, by the middle two thirds of the draws. */
  static double spread(int days, long seed, Figure figure) {
    var random = new SplittableRandom(seed);
    var values = new double[DRAWS];
    int n = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      double value = figure.of(times(days, random), random);
      if (Double.isFinite(value)) {
        values[n++] = value;
      }
    }
    if (n < DRAWS / 2) {
      return Double.POSITIVE_INFINITY;
    }
    double[] sorted = Arrays.copyOf(values, n);
    Arrays.sort(sorted);
    return 0.5 * (sorted[(int) (0.8413 * (n - 1))] - sorted[(int) (0.1587 * (n - 1))]);
  }

  static int[] times(int days, SplittableRandom random) {
    var times = new int[days];
    for (int d = 0; d < days; d++) {
      times[random.nextInt(days)]++;
    }
    return times;
  }

  /** A normal deviate, by the polar method. */
  static double normal(SplittableRandom random) {
    double u;
    double v;
    double s;
    do {
      u = 2.0 * random.nextDouble() - 1.0;
      v = 2.0 * random.nextDouble() - 1.0;
      s = u * u + v * v;
    } while (s >= 1.0 || s == 0.0);
    return u * Math.sqrt(-2.0 * Math.log(s) / s);
  }
}
