package greyspell.weather.ensemble;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Check;
import greyspell.weather.GapReport;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;

/**
 * The first years of a source as one series with real dates, for writing out. Holds all of them in
 * memory; who only runs through winters asks the source.
 *
 * <p>Winters stay whole: in the north the file's autumn and the spring after it are of one winter,
 * and the spring of the first year is the end of the last winter. 29 February is the mean of the
 * days beside it. Where one winter's June meets the next one's July a step of temperature is run
 * out over two days.
 */
public final class EnsembleSeries {
  private EnsembleSeries() {}

  public static WeatherSeries of(WinterSource source, int firstYear, int years) {
    Check.within("years", years, 1, Math.min(source.years(), 1000));
    HourCalendar calendar = HourCalendar.of(firstYear, years);
    var columns = new WeatherSeries.Columns();
    var globalWm2 = new double[calendar.hours()];
    var temperatureC = new double[calendar.hours()];
    columns.globalHorizontalWm2 = globalWm2;
    columns.airTemperatureC = temperatureC;
    var year = new WeatherYear();
    for (int y = 0; y < years; y++) {
      source.fill(y, year);
      copy(calendar, y, year, globalWm2, temperatureC);
    }
    smoothSeams(calendar, year.seamHour(), temperatureC);
    var notes = new ArrayList<>(source.notes());
    notes.add("29 February, where there is one, is the mean of the days beside it");
    return new WeatherSeries(
        calendar,
        source.site().source(source.describe(), "made weather"),
        new GapReport(0, 0, notes),
        columns);
  }

  /** One winter alone, as a ring from 1 January; it keeps its name. */
  public static WeatherSeries oneWinter(WinterSource source, int year) {
    var drawn = new WeatherYear();
    source.fill(year, drawn);
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = drawn.globalHorizontalWm2();
    columns.airTemperatureC = drawn.airTemperatureC();
    return new WeatherSeries(
        HourCalendar.oneWinter(source.name(year)),
        source.site().source(source.describe(), "made weather"),
        new GapReport(0, 0, source.notes()),
        columns);
  }

  /** From the seam on into its own year, before it into the next. */
  private static void copy(
      HourCalendar calendar, int y, WeatherYear year, double[] globalWm2, double[] temperatureC) {
    int seam = year.seamHour();
    copy(calendar, y, seam, WeatherYear.HOURS, year, globalWm2, temperatureC);
    copy(calendar, (y + 1) % calendar.years(), 0, seam, year, globalWm2, temperatureC);
  }

  private static void copy(
      HourCalendar calendar,
      int toYear,
      int from,
      int to,
      WeatherYear year,
      double[] globalWm2,
      double[] temperatureC) {
    int end = calendar.firstHourOfYear(toYear + 1);
    int source = 0;
    for (int hour = calendar.firstHourOfYear(toYear); hour < end; hour += YearDays.HOURS_PER_DAY) {
      boolean isLeapDay = calendar.month(hour) == 2 && calendar.dayOfMonth(hour) == 29;
      if (source >= from && source < to) {
        copyDay(year.globalHorizontalWm2(), source, isLeapDay, globalWm2, hour);
        copyDay(year.airTemperatureC(), source, isLeapDay, temperatureC, hour);
      }
      source += isLeapDay ? 0 : YearDays.HOURS_PER_DAY;
    }
  }

  /** A leap day is the mean of the days beside it, hour by hour. */
  private static void copyDay(double[] from, int source, boolean isLeapDay, double[] to, int hour) {
    System.arraycopy(from, source, to, hour, YearDays.HOURS_PER_DAY);
    for (int h = 0; isLeapDay && h < YearDays.HOURS_PER_DAY; h++) {
      to[hour + h] = 0.5 * (from[source - YearDays.HOURS_PER_DAY + h] + from[source + h]);
    }
  }

  private static void smoothSeams(HourCalendar calendar, int seamHour, double[] temperatureC) {
    for (int y = 0; y < calendar.years(); y++) {
      int seam =
          seamHour == 0
              ? calendar.firstHourOfYear(y)
              : calendar.hourOf(calendar.firstYear() + y, 7, 1, 0);
      if (seam == 0) {
        continue;
      }
      double stepK = temperatureC[seam] - temperatureC[seam - 1];
      for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
        double share = 0.5 * (1.0 - (h + 0.5) / YearDays.HOURS_PER_DAY);
        temperatureC[seam + h] -= stepK * share;
        temperatureC[seam - 1 - h] += stepK * share;
      }
    }
  }
}
