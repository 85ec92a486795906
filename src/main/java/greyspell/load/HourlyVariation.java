package greyspell.load;

import greyspell.calendar.HourCalendar;
import java.util.SplittableRandom;

/**
 * How much more or less than usual the household uses in each hour of a day, drawn from a seed.
 *
 * <pre>
 * f = exp(s z - s²/2),   s² = ln(1 + sd²),   z standard normal
 *
 * sd  wanted standard deviation of the hour's energy, as a share of it    1     0 .. 2
 * f   factor of the hour                                                  1     above 0
 * </pre>
 *
 * Hours are independent. Then each day's factors are scaled by one number so that the day's energy
 * stays as it is: variation moves energy between hours and adds none. Each year has its own seed.
 *
 * <p>Source: own choice; a lognormal factor is never negative. Held by LoadHoursTest.
 */
final class HourlyVariation {
  private static final long OWN_STREAM = 0x2545F4914F6CDD1DL; // apart from the days' draws

  private HourlyVariation() {}

  /** One factor an hour; {@code hourWh} is the energy of each before. */
  static double[] factors(HourCalendar calendar, double[] hourWh, double sdShare, long seed) {
    var factor = new double[calendar.hours()];
    double s = Math.sqrt(Math.log1p(sdShare * sdShare));
    int year = 0;
    var random = new SplittableRandom(seed);
    for (int d = 0; d < calendar.days(); d++) {
      if (calendar.year(d * 24) != year) {
        year = calendar.year(d * 24);
        random = new SplittableRandom(YearSeed.of(seed, OWN_STREAM, year));
      }
      double plainWh = 0.0;
      double variedWh = 0.0;
      for (int h = d * 24; h < d * 24 + 24; h++) {
        factor[h] = Math.exp(s * normal(random) - 0.5 * s * s);
        plainWh += hourWh[h];
        variedWh += factor[h] * hourWh[h];
      }
      double scale = variedWh > 0.0 ? plainWh / variedWh : 1.0;
      for (int h = d * 24; h < d * 24 + 24; h++) {
        factor[h] *= scale;
      }
    }
    return factor;
  }

  /** By the cosine of Box and Muller (1958), from memory. */
  private static double normal(SplittableRandom random) {
    double u = 1.0 - random.nextDouble();
    return Math.sqrt(-2.0 * Math.log(u)) * Math.cos(2.0 * Math.PI * random.nextDouble());
  }
}
