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
 * <p><b>Other days.</b> A day of a real year that the log holds is taken as measured. For any other
 * day the log's day of the same weekday is taken whose day of the year is nearest, round the turn
 * of the year (29 February counts as 28 February); of several equally near, the earliest. Holidays,
 * growth and temperature are not looked at. Only whole days of the log are used; at least seven in
 * a row are needed, so that each weekday is there, and half of the log's hours must have been
 * measured.
 */
public final class LoadLog {
  private static final long MINUTES_IN_DAY = 1440;
  private static final int MINUTES_IN_HOUR = 60;
  private static final int DAYS_IN_WEEK = 7;
  private static final int HOURS_IN_WEEK = 168;
  private static final int LONGEST_LINE_H = 3;
  private static final int FARTHEST_WEEKS = 8;
  private static final int COMMON_YEAR_DAYS = 365;

  private final long firstDay; // days since 1970-01-01
  private final double[] wh; // whole days
  private final int filledHours;

  private LoadLog(long firstDay, double[] wh, int filledHours) {
    this.firstDay = firstDay;
    this.wh = wh;
    this.filledHours = filledHours;
  }

  /** Why a record cannot be used, in words for the user; empty if it can. */
  public static String whyNot(LoadRecord record) {
    double[] hours = hours(record);
    if (hours.length < HOURS_IN_WEEK) {
      return "the log holds " + hours.length / 24 + " whole days, at least 7 are needed";
    }
    int missing = missing(hours);
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
    int missing = missing(hours);
    fillShort(hours);
    fillLong(hours);
    return new LoadLog(firstDay(record), hours, missing);
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

  /** Energy in each hour of the calendar. */
  public double[] over(HourCalendar calendar) {
    var out = new double[calendar.hours()];
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
    for (int d = 0; d < calendar.days(); d++) {
      long day = calendarFirstDay + d;
      int from;
      if (!calendar.isTypical() && day >= firstDay && day < firstDay + days) {
        from = (int) (day - firstDay);
      } else {
        int weekday = weekday(day);
        int dayOfYear = commonDayOfYear(calendar.date(d * 24));
        if (chosen[weekday][dayOfYear] < 0) {
          int first = (weekday - firstWeekday + DAYS_IN_WEEK) % DAYS_IN_WEEK;
          chosen[weekday][dayOfYear] = nearest(logDayOfYear, first, dayOfYear);
        }
        from = chosen[weekday][dayOfYear];
      }
      System.arraycopy(wh, from * 24, out, d * 24, 24);
    }
    return out;
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

  private static int missing(double[] hours) {
    int missing = 0;
    for (double wh : hours) {
      if (Double.isNaN(wh)) {
        missing++;
      }
    }
    return missing;
  }

  private static void fillShort(double[] hours) {
    int h = 0;
    while (h < hours.length) {
      if (!Double.isNaN(hours[h])) {
        h++;
        continue;
      }
      int end = h;
      while (end < hours.length && Double.isNaN(hours[end])) {
        end++;
      }
      if (h > 0 && end < hours.length && end - h <= LONGEST_LINE_H) {
        double before = hours[h - 1];
        double perHour = (hours[end] - before) / (end - h + 1);
        for (int i = h; i < end; i++) {
          hours[i] = before + perHour * (i - h + 1);
        }
      }
      h = end;
    }
  }

  private static void fillLong(double[] hours) {
    double[] measured = hours.clone();
    for (int h = 0; h < hours.length; h++) {
      if (Double.isNaN(hours[h])) {
        hours[h] = likely(measured, h);
      }
    }
  }

  private static double likely(double[] measured, int hour) {
    for (int weeks = 1; weeks <= FARTHEST_WEEKS; weeks++) {
      double before = at(measured, hour - weeks * HOURS_IN_WEEK);
      double after = at(measured, hour + weeks * HOURS_IN_WEEK);
      if (!Double.isNaN(before) && !Double.isNaN(after)) {
        return 0.5 * (before + after);
      }
      if (!Double.isNaN(before) || !Double.isNaN(after)) {
        return Double.isNaN(before) ? after : before;
      }
    }
    double sameWeekday = mean(measured, hour % HOURS_IN_WEEK, HOURS_IN_WEEK);
    if (!Double.isNaN(sameWeekday)) {
      return sameWeekday;
    }
    double sameHour = mean(measured, hour % 24, 24);
    return Double.isNaN(sameHour) ? mean(measured, 0, 1) : sameHour;
  }

  private static double at(double[] values, int index) {
    return index >= 0 && index < values.length ? values[index] : Double.NaN;
  }

  private static double mean(double[] values, int first, int step) {
    double sum = 0.0;
    int count = 0;
    for (int i = first; i < values.length; i += step) {
      if (!Double.isNaN(values[i])) {
        sum += values[i];
        count++;
      }
    }
    return count == 0 ? Double.NaN : sum / count;
  }
}
