package greyspell.calendar;

import greyspell.quantity.Fault;
import greyspell.quantity.Place;
import greyspell.quantity.PlainNumber;
import greyspell.quantity.Show;
import org.jspecify.annotations.Nullable;

/** A clock's hours ahead of UTC as they are written: {@code -6}, {@code 5.5}, {@code +05:30}. */
public final class UtcOffset {
  public static final String EXPECTED = "must be hours from -14 to +14, such as -6, 5.5 or +05:30";
  public static final String MEND = "Use standard time, not summer time.";

  public static final String KEY = "utc_offset";
  private static final double MOST_H = 14.0;
  private static final double MINUTES_IN_HOUR = 60.0;

  private UtcOffset() {}

  /**
   * What a remark of a table states.
   *
   * @param value as it is written
   * @param column at which it begins, from 1
   */
  public record Stated(String value, int column) {}

  /** Of a line {@code # utc_offset: 1}; null of any other. */
  public static @Nullable Stated stated(String line) {
    int mark = line.indexOf('#'), colon = line.indexOf(':');
    if (mark < 0
        || colon < mark
        || !line.substring(0, mark).isBlank()
        || !line.substring(mark + 1, colon).strip().equalsIgnoreCase(KEY)) {
      return null;
    }
    String value = line.substring(colon + 1).strip();
    while (value.endsWith(",")) {
      // a spreadsheet fills the row up
      value = value.substring(0, value.length() - 1).strip();
    }
    return new Stated(value, line.indexOf(value, colon + 1) + 1);
  }

  /** Hours from "-6", "5.5", "+05:30" or "UTC+1"; null if it is none of these. */
  public static @Nullable Double hours(String given) {
    String text = given.startsWith("UTC") ? given.substring(3).strip() : given;
    int colon = text.indexOf(':');
    Double hours = PlainNumber.of(colon < 0 ? text : text.substring(0, colon));
    Double minutes = colon < 0 ? Double.valueOf(0.0) : PlainNumber.of(text.substring(colon + 1));
    if (hours == null || minutes == null || !(minutes >= 0.0 && minutes < MINUTES_IN_HOUR)) {
      return null;
    }
    double rest = minutes / MINUTES_IN_HOUR;
    double offset = text.startsWith("-") ? hours - rest : hours + rest;
    return offset >= -MOST_H && offset <= MOST_H ? Double.valueOf(offset) : null;
  }

  /** Of a value that is no offset. */
  public static Fault unread(Place place, String value) {
    return new Fault(place, KEY + ": found \"" + value + '"', EXPECTED, MEND);
  }

  /** Of a clock that is not the one on which local times are read. */
  public static Fault otherClock(Place place, String value, double siteOffsetH) {
    return new Fault(
        place,
        KEY + ": found \"" + value + '"',
        "must be the site's, " + Show.trimmed(siteOffsetH, 2) + ": local times are read on it",
        "Write the times in the site's standard time, or as UTC in a column utc_start.");
  }
}
