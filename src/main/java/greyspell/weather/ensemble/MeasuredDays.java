package greyspell.weather.ensemble;

import greyspell.calendar.HourCalendar;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import org.jspecify.annotations.Nullable;

/**
 * Measured years as days of 365-day years, each with the state of its sky and air: what a bank
 * feels of the days before. 29 February is left out.
 *
 * <pre>
 * r = r' + (K/Kbar - r') / 10        running clearness, relative to the month
 * a = a' + (T - a') / 3              running temperature, C
 *
 * K, T  of the day        Kbar  of the month over all years        '  one day before
 * </pre>
 */
final class MeasuredDays {
  private static final double CLEARNESS_MEMORY_D = 10.0;
  private static final double TEMPERATURE_MEMORY_D = 3.0;

  /** Columns that a file may have beside sunshine and temperature. */
  static final int MORE = 3;

  static final double[] NONE = {};

  static final int WIND = 0;
  static final int SNOW = 1;
  static final int DIFFUSE = 2;

  final int years;
  final double[] globalWm2;
  final double[] airTemperatureC;

  /** By column; empty where the file has none. */
  final double[][] more = new double[MORE][];

  /** Running values at the end of each day. */
  final double[] skyState;

  final double[] airStateC;
  final SunYear sun;

  MeasuredDays(WeatherSeries series, ClimateSite site) {
    double[] global = series.globalHorizontalWm2();
    if (global == null) {
      throw new IllegalArgumentException("the series has no global irradiance");
    }
    HourCalendar calendar = series.calendar();
    years = calendar.years();
    globalWm2 = withoutLeapDays(calendar, global);
    airTemperatureC = withoutLeapDays(calendar, series.airTemperatureC());
    more[WIND] = orNone(calendar, series.windMs());
    more[SNOW] = orNone(calendar, series.snowDepthM());
    more[DIFFUSE] = orNone(calendar, series.diffuseHorizontalWm2());
    sun = new SunYear(site);
    skyState = new double[days()];
    airStateC = new double[days()];
    fillStates();
  }

  private static double[] orNone(HourCalendar calendar, double @Nullable [] column) {
    return column == null ? NONE : withoutLeapDays(calendar, column);
  }

  private static double[] withoutLeapDays(HourCalendar calendar, double[] column) {
    var kept = new double[calendar.years() * WeatherYear.HOURS];
    int to = 0;
    for (int from = 0; from < calendar.hours(); from += YearDays.HOURS_PER_DAY) {
      if (calendar.month(from) != 2 || calendar.dayOfMonth(from) != 29) {
        System.arraycopy(column, from, kept, to, YearDays.HOURS_PER_DAY);
        to += YearDays.HOURS_PER_DAY;
      }
    }
    return kept;
  }

  /** "wind, snow and diffuse light", what the file has of these; empty for none. */
  String moreWords() {
    var words = new ArrayList<String>();
    String[] names = {"wind", "snow depth", "diffuse light"};
    for (int k = 0; k < MORE; k++) {
      if (more[k].length > 0) {
        words.add(names[k]);
      }
    }
    return String.join(", ", words);
  }

  int days() {
    return years * WeatherYear.DAYS;
  }

  private void fillStates() {
    int[] month = YearDays.monthOfDay();
    var sumWhm2 = new double[YearDays.MONTHS];
    var dayWhm2 = new double[days()];
    for (int day = 0; day < days(); day++) {
      dayWhm2[day] = sum(globalWm2, day);
      sumWhm2[month[day % WeatherYear.DAYS]] += dayWhm2[day];
    }
    var aboveWhm2 = new double[YearDays.MONTHS];
    for (int day = 0; day < WeatherYear.DAYS; day++) {
      aboveWhm2[month[day]] += years * sun.dayWhm2[day];
    }
    double sky = 1.0;
    double airC = sum(airTemperatureC, 0) / YearDays.HOURS_PER_DAY;
    for (int day = 0; day < days(); day++) {
      int ofYear = day % WeatherYear.DAYS;
      int m = month[ofYear];
      double usualWhm2 = sun.dayWhm2[ofYear] * sumWhm2[m] / aboveWhm2[m];
      double relative = usualWhm2 > 0.0 ? dayWhm2[day] / usualWhm2 : 1.0;
      sky += (relative - sky) / CLEARNESS_MEMORY_D;
      double meanC = sum(airTemperatureC, day) / YearDays.HOURS_PER_DAY;
      airC += (meanC - airC) / TEMPERATURE_MEMORY_D;
      skyState[day] = sky;
      airStateC[day] = airC;
    }
  }

  private static double sum(double[] hours, int day) {
    double sum = 0.0;
    int first = day * YearDays.HOURS_PER_DAY;
    for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
      sum += hours[first + h];
    }
    return sum;
  }
}
