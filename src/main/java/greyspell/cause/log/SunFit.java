package greyspell.cause.log;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What part of the expected sun the panels gave, and whether some hours of the day fall short.
 *
 * <pre>
 * y = a x (1 - b d W)          over the {@link FreeHours}, weights 1 / s^2,  s^2 = (0.2 x)^2 + (0.01 most)^2
 *
 * y   solar power seen         Wh     a   array factor: dirt, age, fewer modules       1
 * x   expected                 Wh     b   share of the direct light that is shaded     1
 * d   part of the light that comes straight from the sun        1     0 .. 1
 * W   1 in a run of hours of the day, else 0
 * </pre>
 *
 * Grey light comes from everywhere and tells a from b. Every run of hours of at least two that
 * leaves a quarter of the direct light outside is tried; the one with the least rest is kept if b
 * is above {@value #LEAST_SHADE}, above four of its standard deviations, and rests on six hours of
 * sun. Spread by {@link DayDraws}, with 1 % for the meter. Own method, no source. Held by
 * LogStudyTest.
 *
 * @param factor a
 * @param shade null where no hours fall short
 */
public record SunFit(Estimate factor, @Nullable Shade shade, Left left) {
  private static final double LEAST_SHADE = 0.15;
  private static final double SURE = 4.0;
  private static final double METER_SHARE = 0.01;
  private static final double SHINES_SHARE = 0.4;
  private static final int FEWEST_HOURS = 40;
  private static final int FEWEST_DAYS = 7;
  private static final int FEWEST_CLEAR = 6;
  private static final int DAY = 24;

  /**
   * Sunlit hours that were not read, and why.
   *
   * @param full the bank was nearly full
   * @param atLimit the controller or the bank's charging limit
   * @param heldBack nothing went into a bank that was not shown as full
   * @param unknown not in the log, or a generator ran
   * @param coveredDays days on which the panels gave next to nothing: snow
   */
  public record Left(int read, int full, int atLimit, int heldBack, int unknown, int coveredDays) {}

  static SunFit of(Weeks weeks) {
    FreeHours free = FreeHours.of(weeks);
    var left =
        new Left(free.free, free.full, free.atLimit, free.heldBack, free.unknown, free.coveredDays);
    var sums = new Sums(weeks, free);
    int days = sums.daysRead();
    if (free.free < FEWEST_HOURS || days < FEWEST_DAYS) {
      String why =
          free.free
              + " sunlit hours on "
              + days
              + " days were not held back by a full bank, a limit or a gap; "
              + FEWEST_HOURS
              + " on "
              + FEWEST_DAYS
              + " are needed";
      return new SunFit(Estimate.unknown(why, free.free, days), null, left);
    }
    Shade shade = sums.shade();
    int from = shade == null ? 0 : shade.fromHour();
    int to = shade == null ? 0 : shade.toHour();
    double spread =
        DayDraws.spread(weeks.days(), 21L, (times, r) -> sums.fit(times, from, to).factor);
    double factor = sums.fit(sums.once(), from, to).factor;
    return new SunFit(
        Estimate.of(factor, Math.hypot(spread, METER_SHARE * factor), free.free, days),
        shade,
        left);
  }

  /** Seen over expected where the sun shines, by hour of the day; NaN and 0 where it never did. */
  static double[][] clearByHour(Weeks weeks) {
    var sums = new Sums(weeks, FreeHours.of(weeks));
    var byHour = new double[DAY][];
    for (int hour = 0; hour < DAY; hour++) {
      byHour[hour] = sums.clear(hour, hour + 1);
    }
    return byHour;
  }

  private record Fit(double factor, double lostShare, double restShare) {}

  /** Weighted sums by day and hour of the day. */
  private static final class Sums {
    private final Weeks weeks;
    private final FreeHours free;
    private final double[][] yy;
    private final double[][] xy;
    private final double[][] xx;
    private final double[][] zy;
    private final double[][] xz;
    private final double[][] zz;
    private final double[] directWh = new double[DAY];

    Sums(Weeks weeks, FreeHours free) {
      this.weeks = weeks;
      this.free = free;
      int days = weeks.days();
      yy = new double[days][DAY];
      xy = new double[days][DAY];
      xx = new double[days][DAY];
      zy = new double[days][DAY];
      xz = new double[days][DAY];
      zz = new double[days][DAY];
      for (int h = 0; h < weeks.hours; h++) {
        if (free.isFree[h]) {
          add(h);
        }
      }
    }

    private void add(int h) {
      int d = weeks.day(h), k = weeks.hourOfDay(h);
      double x = weeks.of.expectedSolarWh[h];
      double y = weeks.of.solarWh[h];
      double z = x * weeks.of.directShare[h];
      double s = Math.hypot(0.2 * x, 0.01 * free.mostWh);
      double weight = 1.0 / (s * s);
      yy[d][k] += weight * y * y;
      xy[d][k] += weight * x * y;
      xx[d][k] += weight * x * x;
      zy[d][k] += weight * z * y;
      xz[d][k] += weight * x * z;
      zz[d][k] += weight * z * z;
      directWh[k] += z;
    }

    int[] once() {
      var times = new int[weeks.days()];
      Arrays.fill(times, 1);
      return times;
    }

    int daysRead() {
      int days = 0;
      for (double[] day : xx) {
        days += Arrays.stream(day).sum() > 0.0 ? 1 : 0;
      }
      return days;
    }

    /** With shade from one hour of the day to another; without where both are the same. */
    Fit fit(int[] times, int from, int to) {
      double sumYy = 0.0, sumXy = 0.0, sumXx = 0.0, sumZy = 0.0, sumXz = 0.0, sumZz = 0.0;
      for (int d = 0; d < times.length; d++) {
        if (times[d] == 0) {
          continue;
        }
        for (int k = 0; k < DAY; k++) {
          sumYy += times[d] * yy[d][k];
          sumXy += times[d] * xy[d][k];
          sumXx += times[d] * xx[d][k];
          if (k >= from && k < to) {
            sumZy += times[d] * zy[d][k];
            sumXz += times[d] * xz[d][k];
            sumZz += times[d] * zz[d][k];
          }
        }
      }
      double determinant = sumXx * sumZz - sumXz * sumXz;
      if (from == to || !(determinant > 1e-9 * sumXx * sumZz)) {
        double a = sumXy / sumXx;
        return new Fit(a, 0.0, sumYy - a * sumXy);
      }
      double a = (sumXy * sumZz - sumZy * sumXz) / determinant;
      double c = (sumXy * sumXz - sumZy * sumXx) / determinant;
      return new Fit(a, c / a, sumYy - a * sumXy + c * sumZy);
    }

    @Nullable Shade shade() {
      double allWh = Arrays.stream(directWh).sum();
      int bestFrom = 0, bestTo = 0;
      double least = Double.POSITIVE_INFINITY;
      int[] once = once();
      for (int from = 0; from < DAY; from++) {
        double inWh = directWh[from];
        for (int to = from + 2; to <= DAY; to++) {
          inWh += directWh[to - 1];
          if (inWh > 0.75 * allWh || !(directWh[from] > 0.0) || !(directWh[to - 1] > 0.0)) {
            continue;
          }
          Fit fit = fit(once, from, to);
          if (fit.lostShare > LEAST_SHADE && fit.restShare < least) {
            least = fit.restShare;
            bestFrom = from;
            bestTo = to;
          }
        }
      }
      return bestTo == 0 ? null : sure(bestFrom, bestTo);
    }

    private @Nullable Shade sure(int from, int to) {
      double lost = fit(once(), from, to).lostShare;
      double spread =
          DayDraws.spread(weeks.days(), 22L, (times, r) -> fit(times, from, to).lostShare);
      double[] clear = clear(from, to);
      if (!(lost > SURE * spread) || clear[1] < FEWEST_CLEAR) {
        return null;
      }
      int hours = 0;
      for (int h = 0; h < weeks.hours; h++) {
        boolean isIn = weeks.hourOfDay(h) >= from && weeks.hourOfDay(h) < to;
        hours += free.isFree[h] && isIn ? 1 : 0;
      }
      // the split of light into direct and grey is a model: more than all of it cannot be lost
      Estimate share = Estimate.of(Math.min(1.0, lost), spread, hours, daysRead());
      return new Shade(from, to, share, clear[0], (int) clear[1]);
    }

    /** Seen over expected, and of how many hours. */
    double[] clear(int from, int to) {
      double seen = 0.0, expected = 0.0;
      int count = 0;
      for (int h = 0; h < weeks.hours; h++) {
        int k = weeks.hourOfDay(h);
        if (free.isFree[h] && k >= from && k < to && weeks.of.directShare[h] > SHINES_SHARE) {
          seen += weeks.of.solarWh[h];
          expected += weeks.of.expectedSolarWh[h];
          count++;
        }
      }
      return new double[] {expected > 0.0 ? seen / expected : Double.NaN, count};
    }
  }
}
