package greyspell.load;

import greyspell.calendar.HourCalendar;
import java.util.Random;

/**
 * How much more or less than usual the household uses on each day, drawn from a seed.
 *
 * <pre>
 * f = exp(s z - s²/2),   s² = ln(1 + sd²),   z standard normal        mean 1, standard deviation sd
 *
 * sd  wanted standard deviation of the day's energy, as a share of it     1     0 .. 2
 * f   factor of the day                                                   1     above 0
 * </pre>
 *
 * Days are independent. Then each calendar year's factors are scaled by one number so that the
 * year's energy is exactly that of the unvaried plan: variation moves energy between days and adds
 * none. Each year has its own seed made of the scenario's and the year's number, so a year keeps
 * its days whatever years stand around it.
 *
 * <p>Source: own choice; a lognormal factor is never negative. Held by LoadHoursTest.
 */
final class DailyVariation {
  private static final long OWN_STREAM = 0L; // the first one

  private DailyVariation() {}

  /** One factor a day; {@code dayWh} is the unvaried energy of each. */
  static double[] factors(HourCalendar calendar, double[] dayWh, double sdShare, long seed) {
    var factor = new double[calendar.days()];
    double s = Math.sqrt(Math.log1p(sdShare * sdShare));
    for (int y = 0; y < calendar.years(); y++) {
      int fromDay = calendar.firstHourOfYear(y) / 24;
      int toDay = calendar.firstHourOfYear(y + 1) / 24;
      var random = new Random(YearSeed.of(seed, OWN_STREAM, calendar.firstYear() + y));
      double plainWh = 0.0;
      double variedWh = 0.0;
      for (int d = fromDay; d < toDay; d++) {
        factor[d] = Math.exp(s * random.nextGaussian() - 0.5 * s * s);
        plainWh += dayWh[d];
        variedWh += factor[d] * dayWh[d];
      }
      double scale = variedWh > 0.0 ? plainWh / variedWh : 1.0;
      for (int d = fromDay; d < toDay; d++) {
        factor[d] *= scale;
      }
    }
    return factor;
  }
}
