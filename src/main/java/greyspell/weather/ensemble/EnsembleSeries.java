package greyspell.weather.ensemble;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Check;
import greyspell.weather.GapReport;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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
    var year = new WeatherYear();
    for (int y = 0; y < years; y++) {
      source.fill(y, year);
      if (y == 0) {
        make(columns, year, calendar.hours());
      }
      copy(calendar, y, year, columns);
    }
    smoothSeams(calendar, year.seamHour(), Objects.requireNonNull(columns.airTemperatureC));
    var notes = new ArrayList<>(source.notes());
    notes.add("29 February, where there is one, is the mean of the days beside it");
    return new WeatherSeries(
        calendar,
        source.site().source(source.describe(), source.format()),
        new GapReport(0, 0, notes),
        columns);
  }

  /** One winter alone, as a ring from 1 January; it keeps its name. */
  public static WeatherSeries oneWinter(WinterSource source, int year) {
    var drawn = new WeatherYear();
    source.fill(year, drawn);
    return ring(source, drawn, HourCalendar.oneWinter(source.name(year)));
  }

  /**
   * A year as a series that shares its arrays: what the next fill writes stands in the series too.
   */
  public static WeatherSeries ring(WinterSource source, WeatherYear year, HourCalendar calendar) {
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = year.globalHorizontalWm2();
    columns.airTemperatureC = year.airTemperatureC();
    columns.windMs = year.windMs();
    columns.snowDepthM = year.snowDepthM();
    columns.diffuseHorizontalWm2 = year.diffuseHorizontalWm2();
    return new WeatherSeries(
        calendar,
        source.site().source(source.describe(), source.format()),
        new GapReport(0, 0, source.notes()),
        columns);
  }

  private static void make(WeatherSeries.Columns columns, WeatherYear year, int hours) {
    columns.globalHorizontalWm2 = new double[hours];
    columns.airTemperatureC = new double[hours];
    columns.windMs = year.windMs() == null ? null : new double[hours];
    columns.snowDepthM = year.snowDepthM() == null ? null : new double[hours];
    columns.diffuseHorizontalWm2 = year.diffuseHorizontalWm2() == null ? null : new double[hours];
  }

  private static void copy(
      HourCalendar calendar, int y, WeatherYear year, WeatherSeries.Columns columns) {
    copy(calendar, y, year, year.globalHorizontalWm2(), columns.globalHorizontalWm2);
    copy(calendar, y, year, year.airTemperatureC(), columns.airTemperatureC);
    copy(calendar, y, year, year.windMs(), columns.windMs);
    copy(calendar, y, year, year.snowDepthM(), columns.snowDepthM);
    copy(calendar, y, year, year.diffuseHorizontalWm2(), columns.diffuseHorizontalWm2);
  }

  /** From the seam on into its own year, before it into the next. */
  private static void copy(
      HourCalendar calendar,
      int y,
      WeatherYear year,
      double @Nullable [] from,
      double @Nullable [] to) {
    if (from != null && to != null) {
      int seam = year.seamHour();
      copy(calendar, y, seam, WeatherYear.HOURS, from, to);
      copy(calendar, (y + 1) % calendar.years(), 0, seam, from, to);
    }
  }

  private static void copy(
      HourCalendar calendar, int toYear, int fromHour, int toHour, double[] from, double[] to) {
    int end = calendar.firstHourOfYear(toYear + 1);
    int source = 0;
    for (int hour = calendar.firstHourOfYear(toYear); hour < end; hour += YearDays.HOURS_PER_DAY) {
      boolean isLeapDay = calendar.month(hour) == 2 && calendar.dayOfMonth(hour) == 29;
      if (source >= fromHour && source < toHour) {
        copyDay(from, source, isLeapDay, to, hour);
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
