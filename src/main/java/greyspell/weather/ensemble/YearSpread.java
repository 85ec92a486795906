package greyspell.weather.ensemble;

import greyspell.calendar.Monthly;
import greyspell.weather.WeatherFacts;
import greyspell.weather.WeatherSeries;

/**
 * How far the months of measured years differed: by month, the standard deviation of the
 * irradiation over the years, over its mean.
 *
 * <pre>
 * spread = sqrt(sum (G - Gbar)^2 / (n - 1)) / Gbar        at most 0.6
 *
 * G, Gbar   of the month in one year, mean over the years    kWh/m2 a day        n   years, 5 or more
 * </pre>
 *
 * Of n years it is known to about one part in sqrt(2 n - 2): a quarter of itself of ten. Source:
 * own bookkeeping. Held by EnsembleSourceTest.
 */
public final class YearSpread {
  /** Of fewer years the figure is mostly luck. */
  public static final int LEAST_YEARS = 5;

  private static final double MOST = 0.6;

  private YearSpread() {}

  /** Of at least {@value #LEAST_YEARS} years. */
  public static Monthly of(WeatherSeries series) {
    if (series.calendar().years() < LEAST_YEARS) {
      throw new IllegalArgumentException(series.calendar().years() + " years");
    }
    double[][] kwhm2 = WeatherFacts.monthlyDailyGlobalKwhm2(series);
    double[] mean = WeatherFacts.overYears(kwhm2);
    var spread = new double[YearDays.MONTHS];
    for (int m = 0; m < spread.length; m++) {
      double square = 0.0;
      for (double[] year : kwhm2) {
        square += (year[m] - mean[m]) * (year[m] - mean[m]);
      }
      double deviation = Math.sqrt(square / (kwhm2.length - 1));
      spread[m] = mean[m] > 0.0 ? Math.min(MOST, deviation / mean[m]) : 0.0;
    }
    return Monthly.of(spread);
  }
}
