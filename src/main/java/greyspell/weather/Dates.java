package greyspell.weather;

import java.time.LocalDateTime;
import java.time.ZoneOffset;

/** Calendar arithmetic on plain numbers, for readers that do it once a row. */
final class Dates {
  static final int MINUTES_PER_HOUR = 60;
  static final int HOURS_PER_DAY = 24;

  /** Years that a file is believed to be of. */
  static final int FIRST_YEAR = 1800;

  static final int LAST_YEAR = 2200;

  /** Stands for a time that could not be read. */
  static final long NO_TIME = Long.MIN_VALUE;

  private static final int[] DAYS_BEFORE_MONTH = {
    0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365
  };

  private Dates() {}

  static boolean isLeap(int year) {
    return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
  }

  static boolean isDate(int year, int month, int day) {
    return month >= 1 && month <= 12 && day >= 1 && day <= monthLength(year, month);
  }

  private static int monthLength(int year, int month) {
    int length = DAYS_BEFORE_MONTH[month] - DAYS_BEFORE_MONTH[month - 1];
    return month == 2 && isLeap(year) ? length + 1 : length;
  }

  /** Days since 1 January 1970; the date must be one. */
  static long epochDay(int year, int month, int day) {
    int before = year - 1;
    long days = 365L * before + before / 4 - before / 100 + before / 400;
    int leapDay = month > 2 && isLeap(year) ? 1 : 0;
    return days + DAYS_BEFORE_MONTH[month - 1] + leapDay + day - 1 - 719_162;
  }

  /** Minutes since 1970 on the date's own clock; hour 24 is the midnight that ends the day. */
  static long epochMinute(int year, int month, int day, int hour, int minute) {
    return (epochDay(year, month, day) * HOURS_PER_DAY + hour) * MINUTES_PER_HOUR + minute;
  }

  /** "2018-01-11 10:00" from hours since 1970 on some clock. */
  static String text(long epochHour) {
    return text(LocalDateTime.ofEpochSecond(epochHour * 3600, 0, ZoneOffset.UTC));
  }

  static String text(LocalDateTime time) {
    return time.toLocalDate() + " " + time.toLocalTime();
  }

  /** "UTC+5:30". */
  static String clock(double utcOffsetH) {
    long minutes = Math.round(Math.abs(utcOffsetH) * MINUTES_PER_HOUR);
    long rest = minutes % MINUTES_PER_HOUR;
    return "UTC"
        + (utcOffsetH < 0 ? "-" : "+")
        + minutes / MINUTES_PER_HOUR
        + (rest == 0 ? "" : ":" + (rest < 10 ? "0" : "") + rest);
  }
}
