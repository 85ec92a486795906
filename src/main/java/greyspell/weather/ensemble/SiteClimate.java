package greyspell.weather.ensemble;

import greyspell.calendar.Monthly;
import greyspell.quantity.Check;
import greyspell.weather.ExtraterrestrialHour;
import greyspell.weather.WeatherFacts;
import greyspell.weather.WeatherSeries;

/**
 * What people have in hand of a place's climate: twelve means of sunshine and of temperature over
 * many years.
 *
 * @param site where
 * @param dailyGlobalWhm2 mean irradiation of a day on level ground, month by month
 * @param meanTemperatureC month by month
 */
public record SiteClimate(ClimateSite site, Monthly dailyGlobalWhm2, Monthly meanTemperatureC) {
  private static final double WH_PER_KWH = 1000.0;

  public SiteClimate {
    for (int month = 1; month <= 12; month++) {
      Check.within(
          "clearness of month " + month,
          dailyGlobalWhm2.in(month) / aboveWhm2(site, month),
          DailyClearness.LEAST_MEAN,
          DailyClearness.MOST_MEAN);
      Check.within("meanTemperatureC", meanTemperatureC.in(month), -60.0, 50.0);
    }
  }

  /** The monthly means of measured years, or of a typical year, at a place. */
  public static SiteClimate of(WeatherSeries series, ClimateSite site) {
    double[] kwhm2 = WeatherFacts.overYears(WeatherFacts.monthlyDailyGlobalKwhm2(series));
    var dailyWhm2 = new double[kwhm2.length];
    for (int m = 0; m < dailyWhm2.length; m++) {
      dailyWhm2[m] = kwhm2[m] * WH_PER_KWH;
    }
    double[] temperatureC = WeatherFacts.overYears(WeatherFacts.monthlyTemperatureC(series));
    return new SiteClimate(site, Monthly.of(dailyWhm2), Monthly.of(temperatureC));
  }

  /** Least mean of a day that years can be made from. */
  public static double leastWhm2(ClimateSite site, int month) {
    return DailyClearness.LEAST_MEAN * aboveWhm2(site, month);
  }

  /** Most: sunnier months are known nowhere. */
  public static double mostWhm2(ClimateSite site, int month) {
    return DailyClearness.MOST_MEAN * aboveWhm2(site, month);
  }

  /** Mean irradiation of a day above the air, as the made hours count it. */
  static double aboveWhm2(ClimateSite site, int month) {
    int day = 1;
    for (int m = 0; m < month - 1; m++) {
      day += YearDays.length(m);
    }
    int days = YearDays.length(month - 1);
    double sumWhm2 = 0.0;
    for (int d = 0; d < days; d++) {
      var sun =
          new ExtraterrestrialHour(
              site.latitudeDeg(), site.longitudeDeg(), site.utcOffsetH(), day + d);
      for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
        sumWhm2 += sun.irradiationWhm2(h);
      }
    }
    return sumWhm2 / days;
  }
}
