package greyspell.cause.log;

import org.jspecify.annotations.Nullable;

/**
 * By how much a log's clock misses that of the weather, from the light that came and the power that
 * was seen.
 *
 * <pre>
 * S(L)   = sum over free hours of [y(t) - a x(t + L)]^2,  a by least squares,  L = -13 .. 13 h
 * shift  = lowest point of the parabola through the least S and its neighbours
 *
 * y   solar power seen              Wh      x   expected, one hour after the other      Wh
 * </pre>
 *
 * Clouds that came at a certain hour, not only noon, fix the lag. A shift of half an hour or more
 * is told and put right, in steps of half an hour; less moves nothing that is told here. Own
 * method, no source.
 *
 * @param shiftH to be added to the log's times
 * @param firstHalfH the same from the first half of the days alone, NaN if that is too little
 * @param secondHalfH from the second half
 * @param matchCorrelation between seen and expected at the best lag
 */
public record ClockFit(
    Estimate shiftH, double firstHalfH, double secondHalfH, double matchCorrelation) {
  private static final int LAGS = Weeks.WIDER_H - 1;
  private static final int FEWEST_HOURS = 60;
  private static final int FEWEST_DAYS = 6;
  private static final double WORTH_H = 0.4;
  private static final double JUMP_H = 0.75;

  /** Null where there is too little sun to say anything. */
  static @Nullable ClockFit find(Weeks weeks) {
    return new Sums(weeks).fit();
  }

  /** In whole half hours: what is put right before anything else is read. */
  public long shiftMinutes() {
    return isWrong() ? Math.round(shiftH.value() * 2.0) * 30L : 0L;
  }

  /** Whether it is off by so much that hours of the day mean something else. */
  public boolean isWrong() {
    return shiftH.differsFrom(0.0, WORTH_H);
  }

  /** Whether the clock seems to change within the log, as daylight saving does. */
  public boolean jumps() {
    return Math.abs(firstHalfH - secondHalfH) > JUMP_H;
  }

  /** Sums by day and lag, so that days can be drawn anew. */
  private static final class Sums {
    private final Weeks weeks;
    private final double[] yy;
    private final double[][] xy;
    private final double[][] xx;
    private final int[] count;
    private int hours;

    Sums(Weeks weeks) {
      this.weeks = weeks;
      int days = weeks.days();
      yy = new double[days];
      xy = new double[days][2 * LAGS + 1];
      xx = new double[days][2 * LAGS + 1];
      count = new int[days];
      for (int h = 0; h < weeks.hours; h++) {
        if (isUsed(h)) {
          add(h);
        }
      }
    }

    private boolean isUsed(int h) {
      Weeks.Columns of = weeks.of;
      return !Double.isNaN(of.solarWh[h])
          && weeks.isChargeKnown(h)
          && weeks.isGeneratorOff(h)
          && Math.max(of.chargeShare[h], of.chargeShare[h + 1]) < of.freeBelowShare;
    }

    private void add(int h) {
      int day = weeks.day(h);
      double y = weeks.of.solarWh[h];
      yy[day] += y * y;
      for (int l = 0; l <= 2 * LAGS; l++) {
        double x = weeks.of.widerSolarWh[h + Weeks.WIDER_H + l - LAGS];
        xy[day][l] += x * y;
        xx[day][l] += x * x;
      }
      if (y > 0.0) {
        count[day]++;
        hours++;
      }
    }

    @Nullable ClockFit fit() {
      int days = 0;
      for (int n : count) {
        days += n > 0 ? 1 : 0;
      }
      if (hours < FEWEST_HOURS || days < FEWEST_DAYS) {
        return null;
      }
      var all = new int[count.length];
      java.util.Arrays.fill(all, 1);
      double shift = shiftH(all);
      double spread = DayDraws.spread(count.length, 11L, (times, random) -> shiftH(times));
      int best = (int) Math.rint(shift) + LAGS;
      return new ClockFit(
          Estimate.of(shift, Math.max(spread, 0.05), hours, days),
          shiftH(half(true)),
          shiftH(half(false)),
          Math.sqrt(Math.max(0.0, 1.0 - misfit(all, Math.max(0, Math.min(2 * LAGS, best))))));
    }

    private int[] half(boolean isFirst) {
      var times = new int[count.length];
      int seen = 0;
      for (int d = 0; d < times.length; d++) {
        times[d] = (seen < hours / 2) == isFirst ? 1 : 0;
        seen += count[d];
      }
      return times;
    }

    private double shiftH(int[] times) {
      int best = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int l = 0; l <= 2 * LAGS; l++) {
        double misfit = misfit(times, l);
        if (misfit < least) {
          least = misfit;
          best = l;
        }
      }
      if (best == 0 || best == 2 * LAGS || !Double.isFinite(least)) {
        return Double.NaN;
      }
      double before = misfit(times, best - 1);
      double after = misfit(times, best + 1);
      double bend = before - 2.0 * least + after;
      return best - LAGS + (bend > 0.0 ? 0.5 * (before - after) / bend : 0.0);
    }

    /** Rest over the whole, 0 to 1. */
    private double misfit(int[] times, int l) {
      double sumYy = 0.0, sumXy = 0.0, sumXx = 0.0;
      for (int d = 0; d < times.length; d++) {
        sumYy += times[d] * yy[d];
        sumXy += times[d] * xy[d][l];
        sumXx += times[d] * xx[d][l];
      }
      return sumXx > 0.0 && sumYy > 0.0 ? 1.0 - sumXy * sumXy / (sumXx * sumYy) : Double.NaN;
    }
  }
}
