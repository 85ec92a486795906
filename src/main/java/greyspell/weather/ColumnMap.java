package greyspell.weather;

import greyspell.quantity.FileTrouble;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * How any table of weather is to be read: which column is what, in which unit, and what its times
 * mean. Written as a small file of {@code key: value} lines, a flat piece of YAML
 * (docs/weather-files.md).
 */
public final class ColumnMap {
  /** Where in its interval a row's time stands. */
  enum Stamp {
    START,
    MIDDLE,
    END
  }

  /**
   * One column of values.
   *
   * @param name in the row of names; or {@code #3}, counted from 1
   * @param factor how many of the unit one of the file's counts
   * @param isAtStamp a reading at the row's time rather than a mean of its interval
   */
  record Mapped(
      WeatherColumn column, String name, double factor, MapUnit unit, boolean isAtStamp) {}

  private static final List<String> KEYS =
      List.of(
          "place",
          "latitude",
          "longitude",
          "elevation",
          "utc_offset",
          "separator",
          "decimal",
          "names_begin",
          "skip_lines",
          "names",
          "remarks",
          "time",
          "time_format",
          "stamp",
          "minutes",
          "missing",
          "ghi",
          "dni",
          "dhi",
          "tair",
          "wind",
          "cloud",
          "snow");

  private static final int FIRST_COLUMN_KEY = KEYS.indexOf("ghi");

  final PlainHeader header = new PlainHeader();
  final List<Mapped> columns = new ArrayList<>();
  final List<String> timeNames = new ArrayList<>();
  char separator = ',';
  char decimal = '.';
  String namesBegin = "";
  int skipLines;
  boolean hasNames = true;
  String remarks = "";
  @Nullable TimePattern time;
  @Nullable Stamp stamp;
  int minutes = Dates.MINUTES_PER_HOUR;
  double[] missing = new double[0];

  private final FaultList faults;
  private final List<String> seen = new ArrayList<>();
  private int line;
  private int column;

  private ColumnMap(FaultList faults) {
    this.faults = faults;
  }

  /** Reads a map, or refuses it with every fault. */
  public static ColumnMap read(Path file, String nameAsGiven) {
    var faults = new FaultList(nameAsGiven);
    List<String> lines;
    try {
      lines = List.of(Files.readString(file, StandardCharsets.UTF_8).split("\\R", -1));
    } catch (NoSuchFileException e) {
      throw faults.alone(0, 0, "no such file", "must be a column map", "Check the spelling.");
    } catch (IOException e) {
      throw faults.alone(
          0, 0, "could not be read: " + FileTrouble.words(e), "must be a text file", "");
    }
    return of(lines, faults);
  }

  static ColumnMap of(List<String> lines, FaultList faults) {
    var map = new ColumnMap(faults);
    for (String text : lines) {
      map.line++;
      map.takeLine(text);
    }
    map.refuseIncomplete();
    faults.throwIfAny();
    return map;
  }

  private void takeLine(String text) {
    String bare = withoutRemark(text);
    if (bare.isBlank()) {
      return;
    }
    int colon = bare.indexOf(':');
    String key = colon < 0 ? bare.strip() : bare.substring(0, colon).strip();
    column = bare.indexOf(key) + 1;
    if (colon < 0 || !KEYS.contains(key)) {
      fault(
          colon < 0 ? "found \"" + key + '"' : "unknown key \"" + key + '"',
          "must be lines of key: value; the keys are " + String.join(", ", KEYS),
          "Did you mean " + NearName.of(key, KEYS) + "?");
      return;
    }
    if (seen.contains(key)) {
      fault(key + " a second time", "each key once", "Take one of the two out.");
      return;
    }
    seen.add(key);
    String value = bare.substring(colon + 1).strip();
    column = value.isEmpty() ? colon + 1 : bare.indexOf(value, colon + 1) + 1;
    take(key, unquoted(value));
  }

  /** YAML's remark: a # at the beginning or after a blank, outside quotes. */
  static String withoutRemark(String text) {
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

  static String unquoted(String value) {
    boolean isQuoted =
        value.length() > 1
            && (value.charAt(0) == '"' || value.charAt(0) == '\'')
            && value.charAt(value.length() - 1) == value.charAt(0);
    return isQuoted ? value.substring(1, value.length() - 1) : value;
  }

  private void take(String key, String value) {
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
      case "names" -> {
        hasNames = value.equals("yes");
        if (!hasNames && !value.equals("no")) {
          refused(key, value, "must be yes, or no where the file has no row of names", ' ');
        }
      }
      case "skip_lines" -> skipLines = whole(key, value, 0, 10_000);
      case "remarks" -> remarks = value;
      case "time" -> {
        for (String name : value.split(" \\+ ", -1)) {
          timeNames.add(name.strip());
        }
      }
      case "time_format" -> takePattern(value);
      case "stamp" -> takeStamp(value);
      case "minutes" -> {
        minutes = whole(key, value, 1, Dates.MINUTES_PER_HOUR);
        if (Dates.MINUTES_PER_HOUR % minutes != 0) {
          refused(key, value, "must be a whole part of 60", ' ');
        }
      }
      case "missing" -> takeMissing(value);
      default -> {
        int index = KEYS.indexOf(key);
        if (index >= FIRST_COLUMN_KEY) {
          takeColumn(columnOf(key), key, value);
        } else {
          header.set(line, column, key, value, faults);
        }
      }
    }
  }

  private static WeatherColumn columnOf(String key) {
    return switch (key) {
      case "ghi" -> WeatherColumn.GLOBAL;
      case "dni" -> WeatherColumn.DIRECT;
      case "dhi" -> WeatherColumn.DIFFUSE;
      case "tair" -> WeatherColumn.TEMPERATURE;
      case "wind" -> WeatherColumn.WIND;
      case "cloud" -> WeatherColumn.CLOUD;
      default -> WeatherColumn.SNOW;
    };
  }

  private void takePattern(String value) {
    time = TimePattern.find(value.replace(" + ", " "));
    if (time == null) {
      refused(
          "time_format",
          value,
          "must hold yyyy, HH and either MM and dd or DDD, such as yyyy-MM-dd HH:mm",
          ' ');
    }
  }

  private void takeStamp(String value) {
    for (Stamp one : Stamp.values()) {
      if (one.name().toLowerCase(Locale.ROOT).equals(value)) {
        stamp = one;
        return;
      }
    }
    refused("stamp", value, "must be start, middle or end of the row's interval", ' ');
  }

  private void takeMissing(String value) {
    String[] codes = value.split(",", -1);
    missing = new double[codes.length];
    for (int i = 0; i < codes.length; i++) {
      Double code = PlainHeader.plainNumber(codes[i].strip());
      if (code == null) {
        refused("missing", value, "must be numbers parted by commas, such as -999, 9999", ' ');
      }
      missing[i] = code == null ? Double.NaN : code;
    }
  }

  /** {@code NAME, [factor] unit[, at stamp]}. */
  private void takeColumn(WeatherColumn of, String key, String value) {
    String[] parts = value.split(",", -1);
    String unitText = parts.length > 1 ? parts[1].strip() : "";
    boolean isAtStamp = parts.length == 3 && parts[2].strip().equals("at stamp");
    int blank = unitText.indexOf(' ');
    Double factor = blank > 0 ? PlainHeader.plainNumber(unitText.substring(0, blank)) : null;
    String unitName = factor == null ? unitText : unitText.substring(blank + 1).strip();
    MapUnit unit = null;
    for (MapUnit one : MapUnit.values()) {
      if (one.text.equals(unitName) && one.suits(of)) {
        unit = one;
      }
    }
    boolean isWhole = parts.length == 2 || isAtStamp;
    boolean isFactor = factor == null || factor > 0.0;
    if (unit == null || !isWhole || parts[0].isBlank() || !isFactor) {
      refused(
          key,
          value,
          "must be the column's name, a comma and its unit ("
              + String.join(", ", MapUnit.suiting(of))
              + "; with a factor before it if need be, such as \"0.1 C\"), then \", at stamp\" if it"
              + " is a reading at the row's time",
          ' ');
      return;
    }
    columns.add(new Mapped(of, parts[0].strip(), factor == null ? 1.0 : factor, unit, isAtStamp));
  }

  boolean isCloudNeeded() {
    return !seen.contains("ghi");
  }

  private int whole(String key, String value, int low, int high) {
    Double number = PlainHeader.plainNumber(value);
    if (number != null && number >= low && number <= high && number == Math.rint(number)) {
      return number.intValue();
    }
    refused(key, value, "must be a whole number from " + low + " to " + high, ' ');
    return low == 0 ? 0 : high;
  }

  private char refused(String key, String value, String mustBe, char instead) {
    fault(key + ": found \"" + value + '"', mustBe, "");
    return instead;
  }

  private void fault(String found, String expected, String mend) {
    faults.add(line, column, found, expected, mend);
  }

  private void refuseIncomplete() {
    for (String key : List.of("utc_offset", "time", "time_format", "stamp", "tair")) {
      if (!seen.contains(key)) {
        faults.add("no " + key, "needed in a column map", "docs/weather-files.md shows a map.");
      }
    }
    if (!seen.contains("ghi") && !seen.contains("cloud")) {
      faults.add("neither ghi nor cloud", "one of the two is needed", "");
    }
    for (Mapped one : columns) {
      if (one.isAtStamp() && stamp != null && stamp != Stamp.END) {
        faults.add(
            one.column().words + " at stamp",
            "readings at the stamp need stamp: end",
            "Take \"at stamp\" out: the reading then stands for its interval.");
      }
    }
    if (separator == decimal) {
      faults.add("separator and decimal mark are both commas", "must differ", "");
    }
  }
}
