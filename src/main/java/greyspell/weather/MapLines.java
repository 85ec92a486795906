package greyspell.weather;

import greyspell.quantity.FileTrouble;
import greyspell.quantity.PlainNumber;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * The lines of a column map, a flat piece of YAML, and what every such map tells of its table:
 * marks, the row of names, times, codes of missing values.
 */
final class MapLines {
  final List<String> timeNames = new ArrayList<>();
  char separator = ',';
  char decimal = '.';
  String namesBegin = "";
  int skipLines;
  String remarks = "";
  @Nullable TimePattern time;
  double[] missing = new double[0];

  private final List<String> keys;
  private final FaultList faults;
  private final Set<String> seen = new HashSet<>();
  private int line;
  private int column;

  /**
   * @param keys all that the map may have, in the order in which they are told
   */
  MapLines(List<String> keys, FaultList faults) {
    this.keys = keys;
    this.faults = faults;
  }

  /** The text of a map, line by line. */
  static List<String> of(Path file, FaultList faults) {
    try {
      return List.of(Files.readString(file, StandardCharsets.UTF_8).split("\\R", -1));
    } catch (NoSuchFileException e) {
      throw faults.alone(0, 0, "no such file", "must be a column map", "Check the spelling.");
    } catch (IOException e) {
      throw faults.alone(
          0, 0, "could not be read: " + FileTrouble.words(e), "must be a text file", "");
    }
  }

  /**
   * Takes every line.
   *
   * @param other gets key and value of what is not told of every table
   */
  void read(List<String> lines, BiConsumer<String, String> other) {
    for (String text : lines) {
      line++;
      takeLine(text, other);
    }
  }

  private void takeLine(String text, BiConsumer<String, String> other) {
    String bare = withoutRemark(text);
    if (bare.isBlank()) {
      return;
    }
    int colon = bare.indexOf(':');
    String key = colon < 0 ? bare.strip() : bare.substring(0, colon).strip();
    column = bare.indexOf(key) + 1;
    if (colon < 0 || !keys.contains(key)) {
      fault(
          colon < 0 ? "found \"" + key + '"' : "unknown key \"" + key + '"',
          "must be lines of key: value; the keys are " + String.join(", ", keys),
          "Did you mean " + NearName.of(key, keys) + "?");
      return;
    }
    if (!seen.add(key)) {
      fault(key + " a second time", "each key once", "Take one of the two out.");
      return;
    }
    String value = bare.substring(colon + 1).strip();
    column = value.isEmpty() ? colon + 1 : bare.indexOf(value, colon + 1) + 1;
    take(key, unquoted(value), other);
  }

  /** YAML's remark: a # at the beginning or after a blank, outside quotes. */
  private static String withoutRemark(String text) {
    char quote = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '#' && (i == 0 || Character.isWhitespace(text.charAt(i - 1)))) {
        return text.substring(0, i);
      }
    }
    return text;
  }

  /** Whether a line is the row of names, in quotes or not. */
  boolean beginsNames(String line) {
    return line.startsWith(namesBegin) || line.startsWith('"' + namesBegin);
  }

  private static String unquoted(String value) {
    boolean isQuoted =
        value.length() > 1
            && (value.charAt(0) == '"' || value.charAt(0) == '\'')
            && value.charAt(value.length() - 1) == value.charAt(0);
    return isQuoted ? value.substring(1, value.length() - 1) : value;
  }

  private void take(String key, String value, BiConsumer<String, String> other) {
    switch (key) {
      case "separator" ->
          separator =
              switch (value) {
                case "comma" -> ',';
                case "semicolon" -> ';';
                case "tab" -> '\t';
                case "blank" -> ' ';
                default -> refused(key, value, "must be comma, semicolon, tab or blank", ',');
              };
      case "decimal" ->
          decimal =
              switch (value) {
                case "point" -> '.';
                case "comma" -> ',';
                default -> refused(key, value, "must be point or comma", '.');
              };
      case "names_begin" -> namesBegin = value;
      case "skip_lines" -> skipLines = whole(key, value, 0, 10_000);
      case "remarks" -> remarks = value;
      case "time" -> {
        for (String name : value.split(" \\+ ", -1)) {
          timeNames.add(name.strip());
        }
      }
      case "time_format" -> takePattern(value);
      case "missing" -> takeMissing(value);
      default -> other.accept(key, value);
    }
  }

  private void takePattern(String value) {
    time = TimePattern.find(value.replace(" + ", " "));
    if (time == null) {
      refused(
          "time_format",
          value,
          "must hold yyyy, HH and either MM and dd or DDD, such as yyyy-MM-dd HH:mm");
    }
  }

  private void takeMissing(String value) {
    String[] codes = value.split(",", -1);
    missing = new double[codes.length];
    for (int i = 0; i < codes.length; i++) {
      Double code = PlainNumber.of(codes[i].strip());
      if (code == null) {
        refused("missing", value, "must be numbers parted by commas, such as -999, 9999");
      }
      missing[i] = code == null ? Double.NaN : code;
    }
  }

  /**
   * Of "0.1 C" both parts, of "C" the unit alone.
   *
   * @param factor null where none is stated
   */
  record Amount(@Nullable Double factor, String unit) {
    static Amount of(String text) {
      int blank = text.indexOf(' ');
      Double factor = blank > 0 ? PlainNumber.of(text.substring(0, blank)) : null;
      return new Amount(factor, factor == null ? text : text.substring(blank + 1).strip());
    }

    double factorOrOne() {
      return factor == null ? 1.0 : factor;
    }
  }

  /** One of an enum's names in small letters; null after a fault. */
  <T extends Enum<T>> @Nullable T word(String key, String value, T[] words) {
    var all = new ArrayList<String>();
    for (T one : words) {
      String text = one.name().toLowerCase(Locale.ROOT);
      if (text.equals(value)) {
        return one;
      }
      all.add(text);
    }
    refused(key, value, "must be one of " + String.join(", ", all));
    return null;
  }

  int whole(String key, String value, int low, int high) {
    Double number = PlainNumber.of(value);
    if (number != null && number >= low && number <= high && number == Math.rint(number)) {
      return number.intValue();
    }
    refused(key, value, "must be a whole number from " + low + " to " + high);
    return low == 0 ? 0 : high;
  }

  boolean has(String key) {
    return seen.contains(key);
  }

  /** Where the next fault is told, for names that stand in the table itself. */
  void at(int tableLine, int tableColumn) {
    line = tableLine;
    column = tableColumn;
  }

  int line() {
    return line;
  }

  int column() {
    return column;
  }

  void refused(String key, String value, String mustBe) {
    fault(key + ": found \"" + value + '"', mustBe, "");
  }

  private char refused(String key, String value, String mustBe, char instead) {
    refused(key, value, mustBe);
    return instead;
  }

  private void fault(String found, String expected, String mend) {
    faults.add(line, column, found, expected, mend);
  }

  /**
   * Once all lines are read.
   *
   * @param shownIn the page that shows a map
   */
  void refuseWithout(List<String> needed, String shownIn) {
    for (String key : needed) {
      if (!has(key)) {
        faults.add("no " + key, "needed in a column map", shownIn + " shows a map.");
      }
    }
    if (separator == decimal) {
      faults.add("separator and decimal mark are both commas", "must differ", "");
    }
  }
}
