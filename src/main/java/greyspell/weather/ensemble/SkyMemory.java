package greyspell.weather.ensemble;

import greyspell.quantity.Check;

/**
 * How long skies last. A hidden normal number is the sum of two: one that a day hands to the next,
 * and a slow one under which it turns grey, or bright, for weeks.
 *
 * <pre>
 * x = sqrt(1 - s - m) f + sqrt(s) u + sqrt(m) z
 * f = d f' + sqrt(1 - d^2) N        u = e u' + sqrt(1 - e^2) N,   e = exp(-1 / T)        z = N, one for each month
 *
 * d   dayCorrelation   of the fast part from one day to the next    1     0 .. 0.95
 * s   spellShare       of the slow part in the variance             1     0 .. 0.9
 * T   spellDays        how long the slow part lasts                 days  2 .. 60
 * m   of a month's own colour, from the stated spread of months; 0 where none is stated
 * N   standard normal, new each time                                '     one day before
 * </pre>
 *
 * @param dayCorrelation d
 * @param spellShare s; 0 leaves one memory alone
 * @param spellDays T
 */
public record SkyMemory(double dayCorrelation, double spellShare, double spellDays) {
  /**
   * One lag. Graham, Hollands and Suthers (1988), A time series model for Kt with application to
   * global synthetic weather generation: 0.29 (from memory).
   */
  public static final SkyMemory ONE_LAG = new SkyMemory(0.29, 0.0, 10.0);

  /**
   * Grey and bright spells: runs of forty dull days come. Own fit, no source: chosen on ten
   * measured years at one maritime lowland station, so that longest runs, December sums and the
   * deepest deficits stand as they were measured; the error at a second station is told in
   * docs/weather-files.md.
   */
  public static final SkyMemory GREY_SPELLS = new SkyMemory(0.15, 0.10, 10.0);

  public SkyMemory {
    Check.within("dayCorrelation", dayCorrelation, 0.0, 0.95);
    Check.within("spellShare", spellShare, 0.0, 0.9);
    Check.within("spellDays", spellDays, 2.0, 60.0);
  }

  /** e: of the slow part from one day to the next. */
  double spellCorrelation() {
    return StrictMath.exp(-1.0 / spellDays);
  }
}
