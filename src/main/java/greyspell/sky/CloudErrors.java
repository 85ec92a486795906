package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.weather.WeatherSeries;

/**
 * How far light that was worked out from cloud cover lies from measured light.
 *
 * @param yearShare sum of all light over the measured sum, less 1
 * @param winterShare the same for the dark four months ({@link CloudTable})
 * @param monthsShare root mean square over the months of all years of (worked out less measured),
 *     over the mean month
 * @param winterMonthsShare the same over the months of the dark four
 * @param daysShare the same over days
 * @param hoursShare the same over daylight hours
 */
public record CloudErrors(
    double yearShare,
    double winterShare,
    double monthsShare,
    double winterMonthsShare,
    double daysShare,
    double hoursShare) {

  /** Of the models that are chosen, on weather that has irradiance and cloud cover. */
  public static CloudErrors of(WeatherSeries weather, SunPath sun, Site site, SkyChoices choices) {
    double[] global = weather.globalHorizontalWm2();
    if (global == null) {
      throw new IllegalArgumentException("weather without irradiance");
    }
    return of(global, Radiation.fromCloud(weather, sun, site, choices), sun, site.isNorthern());
  }

  static CloudErrors of(double[] measured, double[] told, SunPath sun, boolean isNorthern) {
    HourCalendar calendar = sun.calendar();
    var hours = new Sums();
    var days = new Sums();
    var months = new Sums();
    var winterMonths = new Sums();
    double winterMeasured = 0.0;
    double winterTold = 0.0;
    double dayMeasured = 0.0;
    double dayTold = 0.0;
    double monthMeasured = 0.0;
    double monthTold = 0.0;
    for (int h = 0; h < measured.length; h++) {
      if (sun.sunlitShare()[h] > 0.0) {
        hours.add(measured[h], told[h]);
      }
      dayMeasured += measured[h];
      dayTold += told[h];
      monthMeasured += measured[h];
      monthTold += told[h];
      boolean isLast = h + 1 == measured.length;
      boolean isWinter = CloudTable.isWinter(calendar.month(h), isNorthern);
      if (isWinter) {
        winterMeasured += measured[h];
        winterTold += told[h];
      }
      if (isLast || h % 24 == 23) {
        days.add(dayMeasured, dayTold);
        dayMeasured = 0.0;
        dayTold = 0.0;
      }
      if (isLast || calendar.month(h + 1) != calendar.month(h)) {
        months.add(monthMeasured, monthTold);
        if (isWinter) {
          winterMonths.add(monthMeasured, monthTold);
        }
        monthMeasured = 0.0;
        monthTold = 0.0;
      }
    }
    return new CloudErrors(
        hours.bias(),
        winterTold / winterMeasured - 1.0,
        months.scatter(),
        winterMonths.scatter(),
        days.scatter(),
        hours.scatter());
  }

  private static final class Sums {
    private double measured;
    private double told;
    private double squares;
    private int count;

    void add(double one, double other) {
      measured += one;
      told += other;
      squares += (other - one) * (other - one);
      count++;
    }

    double bias() {
      return told / measured - 1.0;
    }

    double scatter() {
      return Math.sqrt(squares / count) / (measured / count);
    }
  }
}
