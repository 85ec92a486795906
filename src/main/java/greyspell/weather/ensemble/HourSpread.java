package greyspell.weather.ensemble;

/**
 * Shares a day's sunshine among its hours, livelier under broken cloud than under a shut or an open
 * sky; the day's sum is kept to the last digit.
 *
 * <pre>
 * k   = K rt'/rd' + sd y,   held within 0.15 K rt'/rd' .. cap
 * y   = c y' + sqrt(1 - c^2) N,   c = 0.54,   anew each day
 * sd  = 0.14 exp(-20 (K - 0.35)^2) exp{[3 (K - 0.45)^2 + 16 K^5] (1 - sin h)}
 * cap = 0.88 cos(pi (t - 12) / 30), or K rt'/rd' where that is more
 * G   = k G0, then scaled to K times the day's sum above the air; what the cap takes goes to the other hours
 *
 * k    clearness of the hour    1                       K   of the day   1   0.03 .. 0.85     rt'/rd'   profile of a smooth day, see DayProfile
 * h    sun height in the hour   rad   sin h 0 .. 1      t   solar time   h   0 .. 24          G0        above the air, W/m2
 * N    standard normal, new each hour                   '   one hour before
 * </pre>
 *
 * The lower bound 0.15 is our own choice: thick cloud by day still is not night.
 *
 * <p>Source: successive hours correlate by 0.54 +- 0.14 (Graham and Hollands 1990, A method to
 * generate synthetic hourly solar radiation globally, Solar Energy 44, 333-341; abstract seen; they
 * draw from a Beta distribution, we from a bounded normal one); sd and cap: Aguiar and
 * Collares-Pereira (1992), formulas seen second-hand. Held by SynthesisPublishedTest.
 */
final class HourSpread {
  static final double HOUR_CORRELATION = 0.54;
  private static final double NEW = Math.sqrt(1.0 - HOUR_CORRELATION * HOUR_CORRELATION);
  private static final double LEAST_OF_PROFILE = 0.15;

  private final SunYear sun;

  HourSpread(SunYear sun) {
    this.sun = sun;
  }

  /** Standard deviation of an hour's clearness. */
  static double deviation(double clearness, double sinHeight) {
    return 0.14 * ofDay(clearness) * StrictMath.exp(growth(clearness) * (1.0 - sinHeight));
  }

  private static double ofDay(double clearness) {
    double off = clearness - 0.35;
    return StrictMath.exp(-20.0 * off * off);
  }

  private static double growth(double clearness) {
    double off = clearness - 0.45;
    double square = clearness * clearness;
    return 3.0 * off * off + 16.0 * square * square * clearness;
  }

  /** Fills the 24 hours of a day; workspace takes the caps. */
  void fill(int day, double clearness, YearRandom random, double[] workspace, double[] globalWm2) {
    int first = day * YearDays.HOURS_PER_DAY;
    int from = sun.firstLit[day];
    int to = sun.afterLit[day];
    for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
      globalWm2[first + h] = 0.0;
    }
    double wantedWhm2 = clearness * sun.dayWhm2[day];
    double size = 0.14 * ofDay(clearness);
    double growth = growth(clearness);
    double y = random.normal();
    double sumWm2 = 0.0;
    for (int h = from; h < to; h++) {
      int hour = first + h;
      double smooth = wantedWhm2 * sun.dayShare[hour];
      double sd = size * StrictMath.exp(growth * (1.0 - sun.sinHeight[hour]));
      double lively = smooth + sd * y * sun.aboveWm2[hour];
      double least = LEAST_OF_PROFILE * smooth;
      workspace[h] = sun.capWm2[hour] > smooth ? sun.capWm2[hour] : smooth;
      globalWm2[hour] = lively > least ? lively : least;
      sumWm2 += globalWm2[hour];
      y = HOUR_CORRELATION * y + NEW * random.normal();
    }
    double factor = sumWm2 > 0.0 ? wantedWhm2 / sumWm2 : 0.0;
    for (int h = from; h < to; h++) {
      globalWm2[first + h] *= factor;
    }
    cap(first, from, to, wantedWhm2, workspace, globalWm2);
  }

  /**
   * What the caps take goes to the hours below theirs. The caps together hold the day's sum, as
   * none is below the smooth day's hour.
   */
  private static void cap(
      int first, int from, int to, double wantedWhm2, double[] capWm2, double[] globalWm2) {
    for (int round = 0; round < YearDays.HOURS_PER_DAY; round++) {
      double capped = 0.0;
      double free = 0.0;
      for (int h = from; h < to; h++) {
        double wm2 = globalWm2[first + h];
        if (wm2 >= capWm2[h]) {
          capped += capWm2[h];
        } else {
          free += wm2;
        }
      }
      if (!(free > 0.0)) {
        return;
      }
      double factor = (wantedWhm2 - capped) / free;
      boolean isOver = false;
      for (int h = from; h < to; h++) {
        double wm2 = globalWm2[first + h];
        if (wm2 >= capWm2[h]) {
          globalWm2[first + h] = capWm2[h];
        } else {
          double scaled = wm2 * factor;
          globalWm2[first + h] = scaled;
          isOver |= scaled > capWm2[h];
        }
      }
      if (!isOver) {
        return;
      }
    }
  }
}
