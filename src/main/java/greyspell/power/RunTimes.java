package greyspell.power;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Check;
import java.time.DayOfWeek;
import java.time.Month;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Hours of the year in which something may happen: spans of the day, days of the week, months. Only
 * whole hours count, so that a quiet hour is quiet from its first minute: of 07:30-21:30 the hours
 * from 08:00 to 21:00 remain. A span past midnight belongs to the day on which it starts.
 *
 * @param spans of the day, local standard time
 * @param days of the week
 * @param months of the year
 */
public record RunTimes(List<Span> spans, Set<DayOfWeek> days, Set<Month> months) {
  public static final RunTimes ALWAYS =
      new RunTimes(
          List.of(new Span(0.0, 24.0)), EnumSet.allOf(DayOfWeek.class), EnumSet.allOf(Month.class));

  private static final int MINUTES_IN_HOUR = 60;

  public RunTimes {
    spans = List.copyOf(spans);
    days =
        Collections.unmodifiableSet(
            days.isEmpty() ? EnumSet.noneOf(DayOfWeek.class) : EnumSet.copyOf(days));
    months =
        Collections.unmodifiableSet(
            months.isEmpty() ? EnumSet.noneOf(Month.class) : EnumSet.copyOf(months));
  }

  /**
   * From one time of day to another; {@code toH} below {@code fromH} runs past midnight.
   *
   * @param fromH hours after midnight, 0 to below 24
   * @param toH hours after midnight, 0 to 24
   */
  public record Span(double fromH, double toH) {
    public Span {
      Check.within("fromH", fromH, 0.0, Math.nextDown(24.0));
      Check.within("toH", toH, 0.0, 24.0);
      if (fromH == toH) {
        throw new IllegalArgumentException("a span of no length at " + fromH + " h");
      }
    }
  }

  private static int minute(double timeH) {
    return (int) Math.round(timeH * MINUTES_IN_HOUR);
  }

  /**
   * Which hours of a day are whole within the spans.
   *
   * @param isDay whether what begins on this day counts
   * @param isDayAfter whether what began the day before counts
   */
  private boolean[] whole(boolean isDay, boolean isDayAfter) {
    var inside = new boolean[24 * MINUTES_IN_HOUR];
    for (Span span : spans) {
      boolean isPastMidnight = span.toH() < span.fromH();
      if (isDay) {
        int to = isPastMidnight ? inside.length : minute(span.toH());
        Arrays.fill(inside, minute(span.fromH()), to, true);
      }
      if (isDayAfter && isPastMidnight) {
        Arrays.fill(inside, 0, minute(span.toH()), true);
      }
    }
    var whole = new boolean[24];
    for (int h = 0; h < 24; h++) {
      whole[h] = true;
      for (int m = h * MINUTES_IN_HOUR; m < (h + 1) * MINUTES_IN_HOUR; m++) {
        whole[h] &= inside[m];
      }
    }
    return whole;
  }

  /** For each hour of the calendar whether it lies within; a month is that of the hour itself. */
  public boolean[] hours(HourCalendar calendar) {
    boolean[] both = whole(true, true);
    boolean[] day = whole(true, false);
    boolean[] dayAfter = whole(false, true);
    var within = new boolean[calendar.hours()];
    for (int d = 0; d < calendar.days(); d++) {
      int first = d * 24;
      DayOfWeek name = calendar.dayOfWeek(first);
      boolean isDay = days.contains(name);
      boolean isDayAfter = days.contains(name.minus(1));
      if (months.contains(Month.of(calendar.month(first))) && (isDay || isDayAfter)) {
        boolean[] whole = isDay && isDayAfter ? both : isDay ? day : dayAfter;
        System.arraycopy(whole, 0, within, first, 24);
      }
    }
    return within;
  }

  /** Whole hours in the longest unbroken stretch, every day being one of its days; at most 24. */
  public int longestH() {
    boolean[] whole = whole(true, true);
    int longest = 0;
    int run = 0;
    for (int h = 0; h < 48; h++) {
      run = whole[h % 24] ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return Math.min(longest, 24);
  }
}
