package greyspell.calendar;

import java.time.DateTimeException;
import java.time.LocalDate;

/** Times as logs write them, without a library's parser: a log may hold a million. */
public final class WrittenTime {
  /** For a text that is no time. */
  public static final long WRONG = Long.MIN_VALUE;

  private static final int MINUTES_IN_HOUR = 60;

  private WrittenTime() {}

  /**
   * Minutes since 1970-01-01 00:00 on the clock that wrote it, or {@link #WRONG}.
   *
   * @param text {@code 2021-03-04T05:06}, a blank for the T, seconds of 0, hour 24 for midnight
   * @param isUtc a Z may follow
   */
  public static long minute(String text, boolean isUtc) {
    int length = text.length();
    if (isUtc && length > 0 && (text.charAt(length - 1) == 'Z')) {
      length--;
    }
    boolean hasSeconds = length == 19 && text.charAt(16) == ':' && digits(text, 17, 19) == 0;
    if (!(length == 16 || hasSeconds)
        || text.charAt(4) != '-'
        || text.charAt(7) != '-'
        || (text.charAt(10) != ' ' && text.charAt(10) != 'T')
        || text.charAt(13) != ':') {
      return WRONG;
    }
    int year = digits(text, 0, 4);
    int month = digits(text, 5, 7);
    int day = digits(text, 8, 10);
    int hour = digits(text, 11, 13);
    int minute = digits(text, 14, 16);
    boolean isClock = hour >= 0 && hour < 24 && minute >= 0 && minute < MINUTES_IN_HOUR;
    if (!isClock && !(hour == 24 && minute == 0)) {
      return WRONG;
    }
    if (year < 0 || month < 0 || day < 0) {
      return WRONG;
    }
    try {
      return (LocalDate.of(year, month, day).toEpochDay() * 24 + hour) * MINUTES_IN_HOUR + minute;
    } catch (DateTimeException e) {
      return WRONG;
    }
  }

  private static int digits(String text, int from, int to) {
    int number = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') {
        return -1;
      }
      number = number * 10 + (c - '0');
    }
    return number;
  }
}
