package greyspell.weather;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * How a file writes its times: letters for the parts, anything else stands for itself.
 *
 * <pre>
 * yyyy  year     MM  month     dd  day     DDD  day of the year     HH  hour 0 to 24     mm  minute     ss  second
 * </pre>
 *
 * A part is read with fewer digits than letters too ({@code 1/5/2021} by {@code MM/dd/yyyy}),
 * unless another part follows without a mark between.
 */
final class TimePattern {
  private static final String LETTERS = "yMdDHms";

  private final String pattern;
  private final int[] part = new int[LETTERS.length()];
  private boolean isSecondFree;

  private TimePattern(String pattern) {
    this.pattern = pattern;
  }

  /** Null if the pattern does not tell year, day and hour. */
  static @Nullable TimePattern find(String pattern) {
    boolean hasDay = pattern.contains("D") || (pattern.contains("M") && pattern.contains("d"));
    return pattern.contains("yyyy") && hasDay && pattern.contains("H")
        ? new TimePattern(pattern)
        : null;
  }

  /** As {@link #epochMinute}, but a time between two minutes is the earlier one. */
  long epochMinuteBegun(String text) {
    isSecondFree = true;
    long minute = epochMinute(text);
    isSecondFree = false;
    return minute;
  }

  /** Minutes since 1970 on the file's clock, or {@link Dates#NO_TIME}. */
  long epochMinute(String text) {
    Arrays.fill(part, 0);
    int at = 0;
    for (int i = 0; i < pattern.length(); ) {
      char c = pattern.charAt(i);
      int letter = LETTERS.indexOf(c);
      if (letter < 0) {
        if (at >= text.length() || text.charAt(at) != c) {
          return Dates.NO_TIME;
        }
        at++;
        i++;
        continue;
      }
      int end = i;
      while (end < pattern.length() && pattern.charAt(end) == c) {
        end++;
      }
      boolean isFixed = end < pattern.length() && LETTERS.indexOf(pattern.charAt(end)) >= 0;
      int digits = 0;
      int number = 0;
      while (digits < end - i && at < text.length() && isDigit(text.charAt(at))) {
        number = number * 10 + text.charAt(at) - '0';
        at++;
        digits++;
      }
      if (digits == 0 || (isFixed && digits < end - i)) {
        return Dates.NO_TIME;
      }
      part[letter] = number;
      i = end;
    }
    return at == text.length() ? epochMinute() : Dates.NO_TIME;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private long epochMinute() {
    int year = part[0];
    int month = part[1];
    int day = part[2];
    int dayOfYear = part[3];
    int hour = part[4];
    int minute = part[5];
    if (year < Dates.FIRST_YEAR
        || year > Dates.LAST_YEAR
        || hour > Dates.HOURS_PER_DAY
        || minute > 59
        || (part[6] != 0 && !(isSecondFree && part[6] < 60))
        || (hour == Dates.HOURS_PER_DAY && minute > 0)) {
      return Dates.NO_TIME;
    }
    if (pattern.indexOf('D') >= 0) {
      boolean isDay = dayOfYear >= 1 && dayOfYear <= (Dates.isLeap(year) ? 366 : 365);
      return isDay
          ? Dates.epochMinute(year, 1, 1, hour, minute)
              + (dayOfYear - 1L) * Dates.HOURS_PER_DAY * Dates.MINUTES_PER_HOUR
          : Dates.NO_TIME;
    }
    return Dates.isDate(year, month, day)
        ? Dates.epochMinute(year, month, day, hour, minute)
        : Dates.NO_TIME;
  }

  @Override
  public String toString() {
    return pattern;
  }
}
