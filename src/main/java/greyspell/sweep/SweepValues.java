package greyspell.sweep;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The values of one key: parted by commas, each a value as it stands in the file or a range {@code
 * 30..70 deg step 10}. Commas in quotes, braces and brackets part nothing. Decimal signs are
 * points.
 */
public final class SweepValues {
  static final int MOST = 100_000;

  private static final String NUMBER = "([-+]?[0-9]*\\.?[0-9]+)";
  private static final String UNIT = "\\s*([^0-9\\s.][^0-9]*?)?\\s*";
  private static final Pattern RANGE =
      Pattern.compile(
          NUMBER + UNIT + "\\.\\.\\s*" + NUMBER + UNIT + "(?:step\\s*" + NUMBER + UNIT + ")?");

  private static final Pattern VALUE =
      Pattern.compile(NUMBER + "\\s*([^0-9\\s.,:{\\[\"-][^0-9,:]*)?");

  private SweepValues() {}

  static List<String> of(String text, String path) {
    var values = new ArrayList<String>();
    for (String part : parts(text)) {
      if (part.isEmpty()) {
        throw refused(path, "found nothing between two commas, or no value", "must be values");
      }
      Matcher range = RANGE.matcher(part);
      if (range.matches()) {
        values.addAll(range(range, part, path));
      } else {
        values.add(part);
      }
    }
    return values;
  }

  private static List<String> parts(String text) {
    var parts = new ArrayList<String>();
    int from = 0;
    int depth = 0;
    char quote = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || (c == '\'' && text.substring(from, i).isBlank())) {
        quote = c;
      } else if (c == ',' && depth <= 0) {
        parts.add(text.substring(from, i).strip());
        from = i + 1;
      } else {
        depth += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
      }
    }
    parts.add(text.substring(from).strip());
    return parts;
  }

  /** Both ends included where the steps meet the far one; downwards if the second end is lower. */
  private static List<String> range(Matcher m, String part, String path) {
    var from = new BigDecimal(m.group(1));
    var to = new BigDecimal(m.group(3));
    String unit = unit(m, part, path);
    if (m.group(5) == null) {
      throw refused(path, "found \"" + part + "\" without a step", "must be such as 4..12 step 2");
    }
    BigDecimal step = new BigDecimal(m.group(5)).abs();
    if (step.signum() == 0) {
      throw refused(path, "found a step of 0 in \"" + part + "\"", "must lead from end to end");
    }
    BigDecimal count = to.subtract(from).abs().divide(step, 0, RoundingMode.DOWN);
    if (count.compareTo(BigDecimal.valueOf(MOST)) >= 0) {
      throw refused(
          path, "found " + count.toPlainString() + " steps", "at most " + MOST + " values");
    }
    var values = new ArrayList<String>();
    for (int i = 0; i <= count.intValue(); i++) {
      BigDecimal moved = step.multiply(BigDecimal.valueOf(i));
      BigDecimal at = to.compareTo(from) < 0 ? from.subtract(moved) : from.add(moved);
      values.add(at.toPlainString() + (unit.isEmpty() ? "" : " " + unit));
    }
    return values;
  }

  /** Stated at any of the three numbers, and the same wherever it is stated. */
  private static String unit(Matcher m, String part, String path) {
    String unit = "";
    for (int group : new int[] {2, 4, 6}) {
      String stated = m.group(group) == null ? "" : m.group(group).strip();
      if (!stated.isEmpty() && !unit.isEmpty() && !stated.equals(unit)) {
        throw refused(path, "found two units in \"" + part + "\"", "must be of one unit");
      }
      unit = stated.isEmpty() ? unit : stated;
    }
    return unit;
  }

  /** The number of a value that has one in front. */
  public static String number(String value) {
    Matcher m = VALUE.matcher(value);
    return m.matches() ? m.group(1) : value;
  }

  /** The unit that all of these values share behind a number; null if they are of another kind. */
  public static @Nullable String sharedUnit(List<String> values) {
    String shared = null;
    for (String value : values) {
      Matcher m = VALUE.matcher(value);
      String unit = m.matches() ? (m.group(2) == null ? "" : m.group(2).strip()) : null;
      if (unit == null || (shared != null && !shared.equals(unit))) {
        return null;
      }
      shared = unit;
    }
    return shared;
  }

  private static BadInput refused(String path, String found, String expected) {
    return BadInput.of(
        Place.of("--vary " + path),
        found,
        expected,
        "Values are parted by commas; one that has a comma stands in quotes.");
  }
}
