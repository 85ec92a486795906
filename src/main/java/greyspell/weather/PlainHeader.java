package greyspell.weather;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The leading {@code # key: value} lines of our plain CSV. */
final class PlainHeader {
  private static final List<String> KEYS =
      List.of("place", "latitude", "longitude", "elevation", "utc_offset", "typical_year");

  /** A word this near to a key is a misspelt key, anything else is a remark. */
  private static final int MISSPELT = 2;

  String place = "";
  @Nullable Double latitudeDeg;
  @Nullable Double longitudeDeg;
  @Nullable Double elevationM;
  @Nullable Double utcOffsetH;
  boolean isTypicalYear;

  void take(int line, String text, FaultList faults) {
    int colon = text.indexOf(':');
    if (colon < 0) {
      return;
    }
    String key = text.substring(1, colon).strip().toLowerCase(Locale.ROOT);
    String value = text.substring(colon + 1).strip();
    while (value.endsWith(",")) {
      value = value.substring(0, value.length() - 1).strip();
    }
    int column = text.indexOf(value, colon) + 1;
    if (!KEYS.contains(key)) {
      String near = NearName.of(key, KEYS);
      if (NearName.distance(key, near) <= MISSPELT) {
        faults.add(
            line,
            text.indexOf(key.substring(0, Math.min(1, key.length()))) + 1,
            "unknown key \"" + key + '"',
            "the keys are " + String.join(", ", KEYS),
            "Did you mean " + near + "?");
      }
      return;
    }
    set(line, column, key, value, faults);
  }

  void set(int line, int column, String key, String value, FaultList faults) {
    switch (key) {
      case "place" -> place = value;
      case "latitude" -> latitudeDeg = number(line, column, key, value, -90, 90, "deg", faults);
      case "longitude" -> longitudeDeg = number(line, column, key, value, -180, 180, "deg", faults);
      case "elevation" -> elevationM = number(line, column, key, value, -500, 9000, "m", faults);
      case "utc_offset" -> utcOffsetH = offset(line, column, value, faults);
      case "typical_year" -> {
        isTypicalYear = value.equals("yes");
        if (!isTypicalYear && !value.equals("no")) {
          faults.add(line, column, "typical_year: found \"" + value + '"', "must be yes or no", "");
        }
      }
      default -> throw new IllegalArgumentException(key);
    }
  }

  private static @Nullable Double number(
      int line,
      int column,
      String key,
      String value,
      double low,
      double high,
      String unit,
      FaultList faults) {
    String digits =
        value.endsWith(unit) ? value.substring(0, value.length() - unit.length()) : value;
    Double number = plainNumber(digits.strip());
    if (number != null && number >= low && number <= high) {
      return number;
    }
    faults.add(
        line,
        column,
        key + ": found \"" + value + '"',
        "must be a number from " + (int) low + " to " + (int) high + " " + unit,
        "South and west are negative; write 47.5, not 47 30.");
    return null;
  }

  private static @Nullable Double offset(int line, int column, String value, FaultList faults) {
    Double hours = utcOffset(value);
    if (hours == null) {
      faults.add(
          line,
          column,
          "utc_offset: found \"" + value + '"',
          "must be hours from -14 to +14, such as -6, 5.5 or +05:30",
          "Use standard time, not summer time.");
    }
    return hours;
  }

  /** Hours from "-6", "5.5", "+05:30" or "UTC+1"; null if it is none of these. */
  static @Nullable Double utcOffset(String given) {
    String text = given.startsWith("UTC") ? given.substring(3).strip() : given;
    int colon = text.indexOf(':');
    Double hours = plainNumber(colon < 0 ? text : text.substring(0, colon));
    Double minutes = colon < 0 ? Double.valueOf(0.0) : plainNumber(text.substring(colon + 1));
    if (hours == null || minutes == null || !(minutes >= 0.0 && minutes < 60.0)) {
      return null;
    }
    double rest = minutes / Dates.MINUTES_PER_HOUR;
    double offset = text.startsWith("-") ? hours - rest : hours + rest;
    return offset >= -14.0 && offset <= 14.0 ? Double.valueOf(offset) : null;
  }

  /** A finite decimal number, or null; no hexadecimal, no NaN. */
  static @Nullable Double plainNumber(String text) {
    if (text.isEmpty()) {
      return null;
    }
    for (int i = 0; i < text.length(); i++) {
      if ("0123456789+-.".indexOf(text.charAt(i)) < 0) {
        return null;
      }
    }
    try {
      return Double.valueOf(text);
    } catch (NumberFormatException e) {
      return null;
    }
  }
}
