package greyspell.weather;

import greyspell.calendar.UtcOffset;
import greyspell.quantity.PlainNumber;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The leading {@code # key: value} lines of our plain CSV. */
final class PlainHeader {
  private static final List<String> KEYS =
      List.of("place", "latitude", "longitude", "elevation", "utc_offset", "typical_year");

  /** A word this near to a key is a misspelt key, anything else is a remark. */
  static final int MISSPELT = 2;

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
    Double number = PlainNumber.of(digits.strip());
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

  static @Nullable Double offset(int line, int column, String value, FaultList faults) {
    Double hours = UtcOffset.hours(value);
    if (hours == null) {
      faults.add(
          line, column, "utc_offset: found \"" + value + '"', UtcOffset.EXPECTED, UtcOffset.MEND);
    }
    return hours;
  }
}
