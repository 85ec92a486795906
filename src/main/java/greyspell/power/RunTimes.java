package greyspell.power;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Check;
import java.time.DayOfWeek;
import java.time.Month;
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

  /** True for each hour of the day that is whole within the spans that begin on that day. */
  private boolean[] today() {
    var whole = new boolean[24];
    for (int h = 0; h < 24; h++) {
      for (Span span : spans) {
        double toH = span.toH() > span.fromH() ? span.toH() : 24.0;
        whole[h] |= h >= span.fromH() && h + 1 <= toH;
      }
    }
    return whole;
  }

  /** True for each hour of the day that is whole within what began the day before. */
  private boolean[] tail() {
    var whole = new boolean[24];
    for (int h = 0; h < 24; h++) {
      for (Span span : spans) {
        whole[h] |= span.toH() < span.fromH() && h + 1 <= span.toH();
      }
    }
    return whole;
  }

  /** For each hour of the calendar whether it lies within. */
  public boolean[] hours(HourCalendar calendar) {
    boolean[] today = today();
    boolean[] tail = tail();
    var within = new boolean[calendar.hours()];
    for (int day = 0; day < calendar.days(); day++) {
      int first = day * 24;
      DayOfWeek name = calendar.dayOfWeek(first);
      boolean isMonth = months.contains(Month.of(calendar.month(first)));
      boolean isDay = isMonth && days.contains(name);
      boolean isDayAfter = isMonth && days.contains(name.minus(1));
      for (int h = 0; h < 24; h++) {
        within[first + h] = (isDay && today[h]) || (isDayAfter && tail[h]);
      }
    }
    return within;
  }

  /** Whole hours in the longest unbroken stretch of a day on which it applies; 24 for all day. */
  public int longestH() {
    boolean[] today = today();
    boolean[] tail = tail();
    int longest = 0;
    int run = 0;
    for (int h = 0; h < 48; h++) {
      run = today[h % 24] || tail[h % 24] ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return Math.min(longest, 24);
  }
}
