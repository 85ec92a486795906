package greyspell.cause.log;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Load seen beside expected: a factor on all of it, and watts that are always there, told apart by
 * the quiet hours of the night.
 *
 * <pre>
 * f = (Y - Yn) / (X - Xn),   w = Yn - f Xn
 *
 * Y, X     mean load seen and expected                       W
 * Yn, Xn   the same in the three hours of the day in which least is expected       W
 *
 * where w would be named and the night is as expected      w = Yn - Xn,   f = Y / X
 * where w would be named and Yn - Xn has another sign      w = Yn - Xn,   f = (Y - w) / X
 * </pre>
 *
 * The last two lines keep a load that was added in the evening from being told as a factor on all
 * and a night that draws less, which no night shows.
 *
 * <p>Hours with the bank nearly empty, in which loads may have been cut off, are left out. Spread
 * by {@link DayDraws}, with 1 % for the meter. Own method, no source. Held by LogStudyTest.
 *
 * @param factor f
 * @param alwaysOnW w, beside what the factor brings
 * @param wholeFactor Y / X
 * @param isNightAsExpected whether the factor is that of the whole day, since the quiet hours do
 *     not differ or cannot tell
 * @param nightFromHour first of the three quiet hours of the day
 * @param seenNightW Yn
 * @param expectedNightW Xn
 */
public record LoadCompared(
    Estimate factor,
    Estimate alwaysOnW,
    double wholeFactor,
    boolean isNightAsExpected,
    int nightFromHour,
    double seenNightW,
    double expectedNightW) {
  private static final int NIGHT_HOURS = 3;
  private static final int DAY = 24;
  private static final long SEED = 31L;
  private static final int FEWEST_HOURS = 96;
  private static final double METER_SHARE = 0.01;
  private static final double LEAST_CONTRAST_SHARE = 0.15;

  /** Null where the log has no load. */
  static @Nullable LoadCompared of(Weeks weeks) {
    return Weeks.isAnyKnown(weeks.of.loadWh) ? new Sums(weeks).compared() : null;
  }

  /** Mean load seen and expected, W, by hour of the day. */
  static double[][] byHour(Weeks weeks) {
    return new Sums(weeks).byHour();
  }

  private static final class Sums {
    private final Weeks weeks;
    private final double[][] seen;
    private final double[][] expected;
    private final int[][] count;
    private int hours;
    private int night;

    Sums(Weeks weeks) {
      this.weeks = weeks;
      int days = weeks.days();
      seen = new double[days][DAY];
      expected = new double[days][DAY];
      count = new int[days][DAY];
      for (int h = 0; h < weeks.hours; h++) {
        if (isUsed(h)) {
          int d = weeks.day(h), k = weeks.hourOfDay(h);
          seen[d][k] += weeks.of.loadWh[h];
          expected[d][k] += weeks.of.expectedLoadWh[h];
          count[d][k]++;
          hours++;
        }
      }
    }

    private boolean isUsed(int h) {
      return !Double.isNaN(weeks.of.loadWh[h]) && !weeks.isNearEmpty(h);
    }

    double[][] byHour() {
      var byHour = new double[DAY][];
      for (int k = 0; k < DAY; k++) {
        double sumSeen = 0.0, sumExpected = 0.0, n = 0.0;
        for (int d = 0; d < seen.length; d++) {
          sumSeen += seen[d][k];
          sumExpected += expected[d][k];
          n += count[d][k];
        }
        byHour[k] = new double[] {sumSeen / n, sumExpected / n};
      }
      return byHour;
    }

    LoadCompared compared() {
      int days = 0;
      for (int[] day : count) {
        days += Arrays.stream(day).sum() > 0 ? 1 : 0;
      }
      if (hours < FEWEST_HOURS) {
        var no =
            Estimate.unknown(
                hours + " hours of load; " + FEWEST_HOURS + " are needed", hours, days);
        return new LoadCompared(no, no, Double.NaN, true, 0, Double.NaN, Double.NaN);
      }
      night = quietest();
      var once = new int[seen.length];
      Arrays.fill(once, 1);
      double[] m = means(once);
      double whole = m[0] / m[1];
      boolean isFlat = m[1] - m[3] < LEAST_CONTRAST_SHARE * m[1];
      Estimate all = figure(days, n -> n[0] / n[1], whole, whole);
      if (isFlat) {
        Estimate no =
            Estimate.unknown("the load that is expected hardly changes over the day", hours, days);
        return told(all, no, whole, true, m);
      }
      Estimate beside = figure(days, n -> n[2] - factor(n) * n[3], m[2] - factor(m) * m[3], m[2]);
      Estimate nightW = figure(days, n -> n[2] - n[3], m[2] - m[3], m[2]);
      if (isNamed(beside) && !isNamed(nightW)) {
        return told(all, nightW, whole, true, m);
      }
      if (isNamed(beside) && beside.value() * nightW.value() < 0.0) {
        // the factor of the day does not hold at night: what the night shows is told
        double rest = (m[0] - nightW.value()) / m[1];
        Estimate factor = figure(days, n -> (n[0] - n[2] + n[3]) / n[1], rest, rest);
        return told(factor, nightW, whole, false, m);
      }
      return told(figure(days, Sums::factor, factor(m), factor(m)), beside, whole, false, m);
    }

    private static boolean isNamed(Estimate alwaysOnW) {
      return alwaysOnW.differsFrom(0.0, Finding.About.ALWAYS_ON_LOAD.worth());
    }

    private LoadCompared told(
        Estimate factor, Estimate alwaysOnW, double whole, boolean isNightAsExpected, double[] m) {
      return new LoadCompared(factor, alwaysOnW, whole, isNightAsExpected, night, m[2], m[3]);
    }

    /** A figure of the means with its range: days drawn anew, and the meter's share of a size. */
    private Estimate figure(int days, ToDoubleFunction<double[]> of, double value, double size) {
      double spread =
          DayDraws.spread(seen.length, SEED, (times, r) -> of.applyAsDouble(means(times)));
      return Estimate.of(value, Math.hypot(spread, METER_SHARE * size), hours, days);
    }

    private static double factor(double[] m) {
      return (m[0] - m[2]) / (m[1] - m[3]);
    }

    private int quietest() {
      double[][] byHour = byHour();
      int best = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < DAY; k++) {
        double sum = 0.0;
        for (int i = 0; i < NIGHT_HOURS; i++) {
          sum += byHour[(k + i) % DAY][1];
        }
        if (sum < least) {
          least = sum;
          best = k;
        }
      }
      return best;
    }

    /** Seen, expected, and both in the quiet hours. */
    private double[] means(int[] times) {
      var m = new double[4];
      double n = 0.0, nNight = 0.0;
      for (int d = 0; d < times.length; d++) {
        for (int k = 0; k < DAY && times[d] > 0; k++) {
          m[0] += times[d] * seen[d][k];
          m[1] += times[d] * expected[d][k];
          n += times[d] * count[d][k];
          if (Math.floorMod(k - night, DAY) < NIGHT_HOURS) {
            m[2] += times[d] * seen[d][k];
            m[3] += times[d] * expected[d][k];
            nNight += times[d] * count[d][k];
          }
        }
      }
      m[0] /= n;
      m[1] /= n;
      m[2] /= nNight;
      m[3] /= nNight;
      return m;
    }
  }
}
