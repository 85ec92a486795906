package greyspell.weather;

import greyspell.calendar.HourCalendar;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What a weather series says at a glance: months, dull spells, odd readings. Pure functions;
 * whatever needs the sun's position is not here.
 */
public final class WeatherFacts {
  private static final double WH_PER_KWH = 1000.0;

  /**
   * A run of days under a threshold.
   *
   * @param firstHour first hour of its first day
   */
  public record DullSpell(int firstHour, int days) {}

  /**
   * A step between neighbouring hours.
   *
   * @param hour the later one
   * @param stepK signed
   */
  public record TemperatureJump(int hour, double stepK) {}

  private WeatherFacts() {}

  /** Global irradiation of each day; the series must have global irradiance. */
  public static double[] dailyGlobalWhm2(WeatherSeries series) {
    double[] globalWm2 = global(series);
    var days = new double[series.calendar().days()];
    for (int hour = 0; hour < globalWm2.length; hour++) {
      days[hour / Dates.HOURS_PER_DAY] += globalWm2[hour];
    }
    return days;
  }

  /** Mean daily global irradiation, [year][month - 1], in kWh/m2: also the peak-sun hours a day. */
  public static double[][] monthlyDailyGlobalKwhm2(WeatherSeries series) {
    return monthlyMeans(series, global(series), Dates.HOURS_PER_DAY / WH_PER_KWH);
  }

  /** Mean air temperature, [year][month - 1]. */
  public static double[][] monthlyTemperatureC(WeatherSeries series) {
    return monthlyMeans(series, series.airTemperatureC(), 1.0);
  }

  /** Over all years: twelve means of the years' months, January first. */
  public static double[] overYears(double[][] byYear) {
    var means = new double[12];
    for (double[] year : byYear) {
      for (int month = 0; month < means.length; month++) {
        means[month] += year[month] / byYear.length;
      }
    }
    return means;
  }

  private static double[][] monthlyMeans(WeatherSeries series, double[] values, double scale) {
    HourCalendar calendar = series.calendar();
    var sums = new double[calendar.years()][12];
    var hours = new int[calendar.years()][12];
    for (int hour = 0; hour < values.length; hour++) {
      int year = calendar.year(hour) - calendar.firstYear();
      int month = calendar.month(hour) - 1;
      sums[year][month] += values[hour];
      hours[year][month]++;
    }
    for (int year = 0; year < sums.length; year++) {
      for (int month = 0; month < 12; month++) {
        sums[year][month] *= scale / hours[year][month];
      }
    }
    return sums;
  }

  /**
   * Runs of days with less global irradiation than the threshold, longest first, early before late.
   */
  public static List<DullSpell> dullSpells(WeatherSeries series, double thresholdWhm2) {
    double[] days = dailyGlobalWhm2(series);
    var spells = new ArrayList<DullSpell>();
    int length = 0;
    for (int day = 0; day <= days.length; day++) {
      if (day < days.length && days[day] < thresholdWhm2) {
        length++;
      } else if (length > 0) {
        spells.add(new DullSpell((day - length) * Dates.HOURS_PER_DAY, length));
        length = 0;
      }
    }
    spells.sort(Comparator.comparingInt(DullSpell::days).reversed());
    return spells;
  }

  /** Steps of more than this between one hour and the next. */
  public static List<TemperatureJump> temperatureJumps(WeatherSeries series, double limitK) {
    double[] temperatureC = series.airTemperatureC();
    var jumps = new ArrayList<TemperatureJump>();
    for (int hour = 1; hour < temperatureC.length; hour++) {
      double stepK = temperatureC[hour] - temperatureC[hour - 1];
      if (Math.abs(stepK) > limitK) {
        jumps.add(new TemperatureJump(hour, stepK));
      }
    }
    return jumps;
  }

  /**
   * Days whose temperatures repeat the day before hour by hour: a sign of filled data. Given by
   * their first hours.
   */
  public static List<Integer> repeatedDays(WeatherSeries series) {
    double[] temperatureC = series.airTemperatureC();
    var repeated = new ArrayList<Integer>();
    for (int first = Dates.HOURS_PER_DAY;
        first < temperatureC.length;
        first += Dates.HOURS_PER_DAY) {
      if (Arrays.equals(
          temperatureC,
          first - Dates.HOURS_PER_DAY,
          first,
          temperatureC,
          first,
          first + Dates.HOURS_PER_DAY)) {
        repeated.add(first);
      }
    }
    return repeated;
  }

  /** Hour of the lowest value. */
  public static int hourOfLeast(double[] values) {
    int least = 0;
    for (int hour = 1; hour < values.length; hour++) {
      least = values[hour] < values[least] ? hour : least;
    }
    return least;
  }

  /** Hour of the highest value. */
  public static int hourOfMost(double[] values) {
    int most = 0;
    for (int hour = 1; hour < values.length; hour++) {
      most = values[hour] > values[most] ? hour : most;
    }
    return most;
  }

  private static double[] global(WeatherSeries series) {
    double[] globalWm2 = series.globalHorizontalWm2();
    if (globalWm2 == null) {
      throw new IllegalArgumentException("the series has no global irradiance");
    }
    return globalWm2;
  }
}
