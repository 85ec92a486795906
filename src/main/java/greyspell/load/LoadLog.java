package greyspell.load;

import greyspell.calendar.HourCalendar;
import java.time.LocalDate;
import java.util.Arrays;

/**
 * A measured log made whole: hourly, without holes, and laid over any calendar.
 *
 * <p><b>Hours.</b> A step's energy is spread evenly over its minutes. An hour of which at least
 * half was measured is scaled up to the full hour; one with less is missing.
 *
 * <p><b>Holes.</b> Up to three hours in a row: a straight line between the hours on either side.
 * Longer ones, hour by hour: the mean of the same hour one week before and one week after, as far
 * as these were measured; then two weeks, and so on to eight; then the mean of that hour on that
 * weekday in the whole log; then the mean of that hour on all days. {@link #filledHours} counts
 * them.
 *
 * <p><b>Peaks.</b> The highest step of each hour, as mean power; a filled hour has the log's mean
 * ratio of peak to mean. Hourly logs do not know their peaks.
 *
 * <p><b>Other days.</b> A day of a real year that the log holds is taken as measured. For any other
 * day the log's day of the same weekday is taken whose day of the year is nearest, round the turn
 * of the year (29 February counts as 28 February); of several equally near, the earliest. Holidays,
 * growth and temperature are not looked at; {@link LogFit} does that on request. Only whole days of
 * the log are used; at least seven in a row are needed, so that each weekday is there, and half of
 * the log's hours must have been measured.
 */
public final class LoadLog {
  private static final long MINUTES_IN_DAY = 1440;
  private static final int MINUTES_IN_HOUR = 60;
  private static final int DAYS_IN_WEEK = 7;
  private static final int HOURS_IN_WEEK = 168;
  private static final int COMMON_YEAR_DAYS = 365;

  private final long firstDay; // days since 1970-01-01
  private final double[] wh; // whole days
  private final double[] peakW; // highest step of each hour
  private final int[] filledOfDay;
  private final int filledHours;

  private LoadLog(long firstDay, double[] wh, double[] peakW, int[] filledOfDay, int filledHours) {
    this.firstDay = firstDay;
    this.wh = wh;
    this.peakW = peakW;
    this.filledOfDay = filledOfDay;
    this.filledHours = filledHours;
  }

  /** Why a record cannot be used, in words for the user; empty if it can. */
  public static String whyNot(LoadRecord record) {
    double[] hours = hours(record);
    if (hours.length < HOURS_IN_WEEK) {
      return "the log holds " + hours.length / 24 + " whole days, at least 7 are needed";
    }
    int missing = LogGaps.missing(hours);
    if (2 * missing > hours.length) {
      return "of the log's "
          + hours.length
          + " hours "
          + missing
          + " are missing, at most half may be";
    }
    return "";
  }

  /** Makes a record whole; {@link #whyNot} must be empty. */
  public static LoadLog of(LoadRecord record) {
    String why = whyNot(record);
    if (!why.isEmpty()) {
      throw new IllegalArgumentException(why);
    }
    double[] hours = hours(record);
    double[] peakW = peaks(record, hours);
    int missing = LogGaps.missing(hours);
    var filledOfDay = new int[hours.length / 24];
    for (int h = 0; h < hours.length; h++) {
      if (Double.isNaN(hours[h])) {
        filledOfDay[h / 24]++;
      }
    }
    LogGaps.fill(hours);
    fillPeaks(hours, peakW);
    return new LoadLog(firstDay(record), hours, peakW, filledOfDay, missing);
  }

  public LocalDate firstDate() {
    return LocalDate.ofEpochDay(firstDay);
  }

  public int days() {
    return wh.length / 24;
  }

  /** How many hours were missing and are now filled. */
  public int filledHours() {
    return filledHours;
  }

  /** Energy in each hour of the calendar, other days from the nearest. */
  public double[] over(HourCalendar calendar) {
    var out = new double[calendar.hours()];
    int[] from = sources(calendar);
    for (int d = 0; d < from.length; d++) {
      System.arraycopy(wh, from[d] * 24, out, d * 24, 24);
    }
    return out;
  }

  /** Which of the log's days stands for each of the calendar's. */
  int[] sources(HourCalendar calendar) {
    int days = days();
    var logDayOfYear = new int[days];
    for (int d = 0; d < days; d++) {
      logDayOfYear[d] = commonDayOfYear(LocalDate.ofEpochDay(firstDay + d));
    }
    int firstWeekday = weekday(firstDay);
    var chosen = new int[DAYS_IN_WEEK][COMMON_YEAR_DAYS + 1];
    for (int[] row : chosen) {
      Arrays.fill(row, -1);
    }
    long calendarFirstDay = calendar.date(0).toEpochDay();
    var source = new int[calendar.days()];
    for (int d = 0; d < source.length; d++) {
      if (holds(calendar, d)) {
        source[d] = (int) (calendarFirstDay + d - firstDay);
        continue;
      }
      int weekday = weekday(calendarFirstDay + d);
      int dayOfYear = commonDayOfYear(calendar.date(d * 24));
      if (chosen[weekday][dayOfYear] < 0) {
        int first = (weekday - firstWeekday + DAYS_IN_WEEK) % DAYS_IN_WEEK;
        chosen[weekday][dayOfYear] = nearest(logDayOfYear, first, dayOfYear);
      }
      source[d] = chosen[weekday][dayOfYear];
    }
    return source;
  }

  /** Whether a day of the calendar is a real one that was measured. */
  boolean holds(HourCalendar calendar, int day) {
    long epochDay = calendar.date(0).toEpochDay() + day;
    return !calendar.isTypical() && epochDay >= firstDay && epochDay < firstDay + days();
  }

  double wh(int hour) {
    return wh[hour];
  }

  double peakW(int hour) {
    return peakW[hour];
  }

  double dayWh(int day) {
    double sumWh = 0.0;
    for (int h = day * 24; h < day * 24 + 24; h++) {
      sumWh += wh[h];
    }
    return sumWh;
  }

  int filledOfDay(int day) {
    return filledOfDay[day];
  }

  private static int nearest(int[] logDayOfYear, int first, int dayOfYear) {
    int best = first;
    int bestApart = COMMON_YEAR_DAYS;
    for (int d = first; d < logDayOfYear.length; d += DAYS_IN_WEEK) {
      int apart = Math.abs(logDayOfYear[d] - dayOfYear);
      apart = Math.min(apart, COMMON_YEAR_DAYS - apart);
      if (apart < bestApart) {
        bestApart = apart;
        best = d;
      }
    }
    return best;
  }

  /** 1 to 365 in every year, so that a date keeps its number. */
  private static int commonDayOfYear(LocalDate date) {
    int dayOfYear = date.getDayOfYear();
    boolean isPastLeapDay = date.isLeapYear() && dayOfYear >= 60;
    return isPastLeapDay ? dayOfYear - 1 : dayOfYear;
  }

  /** 0 is the weekday of 1970-01-01. */
  private static int weekday(long epochDay) {
    return (int) Math.floorMod(epochDay, (long) DAYS_IN_WEEK);
  }

  /** The first day whose 00:00 the record has reached. */
  private static long firstDay(LoadRecord record) {
    return Math.floorDiv(record.startMinute(0) + MINUTES_IN_DAY - 1, MINUTES_IN_DAY);
  }

  /** Whole days in hours; NaN is missing. */
  private static double[] hours(LoadRecord record) {
    long first = firstDay(record);
    long end = record.startMinute(record.steps() - 1) + record.stepMinutes();
    long days = Math.floorDiv(end, MINUTES_IN_DAY) - first;
    if (days <= 0) {
      return new double[0];
    }
    var wh = new double[Math.toIntExact(days * 24)];
    var minutes = new int[wh.length];
    for (int i = 0; i < record.steps(); i++) {
      long from = record.startMinute(i) - first * MINUTES_IN_DAY;
      long to = from + record.stepMinutes();
      while (from < to) {
        long hour = Math.floorDiv(from, (long) MINUTES_IN_HOUR);
        long cut = Math.min(to, (hour + 1) * MINUTES_IN_HOUR);
        if (hour >= 0 && hour < wh.length) {
          wh[(int) hour] += record.wh(i) * (cut - from) / record.stepMinutes();
          minutes[(int) hour] += (int) (cut - from);
        }
        from = cut;
      }
    }
    for (int h = 0; h < wh.length; h++) {
      boolean isMeasured = 2 * minutes[h] >= MINUTES_IN_HOUR;
      wh[h] = isMeasured ? wh[h] * MINUTES_IN_HOUR / minutes[h] : Double.NaN;
    }
    return wh;
  }

  /** Mean power of the highest step in each hour; NaN where the hour is. */
  private static double[] peaks(LoadRecord record, double[] hours) {
    var peakW = new double[hours.length];
    long first = firstDay(record) * MINUTES_IN_DAY;
    double whToW = (double) MINUTES_IN_HOUR / record.stepMinutes();
    for (int i = 0; i < record.steps(); i++) {
      long hour = Math.floorDiv(record.startMinute(i) - first, (long) MINUTES_IN_HOUR);
      if (hour >= 0 && hour < peakW.length) {
        peakW[(int) hour] = Math.max(peakW[(int) hour], record.wh(i) * whToW);
      }
    }
    for (int h = 0; h < hours.length; h++) {
      peakW[h] = Double.isNaN(hours[h]) ? Double.NaN : Math.max(hours[h], peakW[h]);
    }
    return peakW;
  }

  /** An hour that was filled has the log's usual ratio of peak to mean. */
  private static void fillPeaks(double[] hours, double[] peakW) {
    double sumPeakW = 0.0;
    double sumWh = 0.0;
    for (int h = 0; h < hours.length; h++) {
      if (!Double.isNaN(peakW[h])) {
        sumPeakW += peakW[h];
        sumWh += hours[h];
      }
    }
    double ratio = sumWh > 0.0 ? sumPeakW / sumWh : 1.0;
    for (int h = 0; h < hours.length; h++) {
      if (Double.isNaN(peakW[h])) {
        peakW[h] = ratio * hours[h];
      }
    }
  }
}
