package greyspell.weather;

import greyspell.quantity.FileTrouble;
import greyspell.weather.MonitorColumn.Kind;
import greyspell.weather.MonitorColumn.Unit;
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
import org.jspecify.annotations.Nullable;

/**
 * How a monitor's table is to be read: which column is what, in which unit, on which clock, and at
 * which point of the system solar power and load were measured. Written as lines of {@code key:
 * value}, as the maps of weather tables are (docs/compare.md).
 */
public final class MonitorMap {
  private static final List<String> KEYS =
      List.of(
          "utc_offset",
          "separator",
          "decimal",
          "names_begin",
          "skip_lines",
          "remarks",
          "time",
          "time_format",
          "stamp",
          "missing",
          "solar_at",
          "load_at",
          "charge",
          "solar",
          "load",
          "battery",
          "battery_voltage",
          "battery_current",
          "generator");

  /**
   * One column of values.
   *
   * @param name in the row of names
   * @param factor how many of our own unit one of the file's counts; below zero where the sign is
   *     the other way round
   */
  record Mapped(MonitorColumn column, String name, double factor, Kind kind) {}

  final List<Mapped> columns = new ArrayList<>();
  final List<String> timeNames = new ArrayList<>();
  char separator = ',';
  char decimal = '.';
  String namesBegin = "";
  int skipLines;
  String remarks = "";
  @Nullable Double utcOffsetH;
  @Nullable TimePattern time;
  ColumnMap.Stamp stamp = ColumnMap.Stamp.START;
  double[] missing = new double[0];
  MonitorLog.SolarAt solarAt = MonitorLog.SolarAt.BUS;
  MonitorLog.LoadAt loadAt = MonitorLog.LoadAt.SOCKETS;

  private final FaultList faults;
  private final Set<String> seen = new HashSet<>();
  private int line;
  private int column;

  private MonitorMap(FaultList faults) {
    this.faults = faults;
  }

  /** Reads a map, or refuses it with every fault. */
  public static MonitorMap read(Path file, String nameAsGiven) {
    var faults = new FaultList(nameAsGiven);
    try {
      return of(List.of(Files.readString(file, StandardCharsets.UTF_8).split("\\R", -1)), faults);
    } catch (NoSuchFileException e) {
      throw faults.alone(0, 0, "no such file", "must be a column map", "Check the spelling.");
    } catch (IOException e) {
      throw faults.alone(
          0, 0, "could not be read: " + FileTrouble.words(e), "must be a text file", "");
    }
  }

  static MonitorMap of(List<String> lines, FaultList faults) {
    var map = new MonitorMap(faults);
    for (String text : lines) {
      map.line++;
      map.takeLine(text);
    }
    map.refuseIncomplete();
    faults.throwIfAny();
    return map;
  }

  /** One without lines, for a file whose own names tell everything. */
  static MonitorMap empty(FaultList faults) {
    return new MonitorMap(faults);
  }

  private void takeLine(String text) {
    String bare = ColumnMap.withoutRemark(text);
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
    if (!seen.add(key)) {
      fault(key + " a second time", "each key once", "Take one of the two out.");
      return;
    }
    String value = bare.substring(colon + 1).strip();
    column = value.isEmpty() ? colon + 1 : bare.indexOf(value, colon + 1) + 1;
    take(key, ColumnMap.unquoted(value));
  }

  private void take(String key, String value) {
    switch (key) {
      case "utc_offset" -> {
        utcOffsetH = PlainHeader.utcOffset(value);
        if (utcOffsetH == null) {
          refused(key, value, "must be hours from -14 to +14, such as -6, 5.5 or +05:30");
        }
      }
      case "separator" -> {
        separator =
            switch (value) {
              case "comma" -> ',';
              case "semicolon" -> ';';
              case "tab" -> '\t';
              case "blank" -> ' ';
              default -> 0;
            };
        if (separator == 0) {
          refused(key, value, "must be comma, semicolon, tab or blank");
        }
      }
      case "decimal" -> {
        decimal = value.equals("comma") ? ',' : '.';
        if (!value.equals("comma") && !value.equals("point")) {
          refused(key, value, "must be point or comma");
        }
      }
      case "names_begin" -> namesBegin = value;
      case "skip_lines" -> {
        Double number = PlainHeader.plainNumber(value);
        skipLines = number == null ? -1 : number.intValue();
        if (skipLines < 0 || skipLines > 10_000) {
          refused(key, value, "must be a whole number from 0 to 10000");
        }
      }
      case "remarks" -> remarks = value;
      case "time" -> {
        for (String name : value.split(" \\+ ", -1)) {
          timeNames.add(name.strip());
        }
      }
      case "time_format" -> {
        time = TimePattern.find(value.replace(" + ", " "));
        if (time == null) {
          refused(
              key,
              value,
              "must hold yyyy, HH and either MM and dd or DDD, such as yyyy-MM-dd HH:mm:ss");
        }
      }
      case "stamp" -> stamp = word(key, value, ColumnMap.Stamp.values(), stamp);
      case "solar_at" -> solarAt = word(key, value, MonitorLog.SolarAt.values(), solarAt);
      case "load_at" -> loadAt = word(key, value, MonitorLog.LoadAt.values(), loadAt);
      case "missing" -> takeMissing(value);
      default -> takeColumn(key, value);
    }
  }

  private <T extends Enum<T>> T word(String key, String value, T[] words, T instead) {
    var all = new ArrayList<String>();
    for (T one : words) {
      String text = one.name().toLowerCase(Locale.ROOT);
      if (text.equals(value)) {
        return one;
      }
      all.add(text);
    }
    refused(key, value, "must be one of " + String.join(", ", all));
    return instead;
  }

  private void takeMissing(String value) {
    String[] codes = value.split(",", -1);
    missing = new double[codes.length];
    for (int i = 0; i < codes.length; i++) {
      Double code = PlainHeader.plainNumber(codes[i].strip());
      if (code == null) {
        refused("missing", value, "must be numbers parted by commas, such as -999, 9999");
      }
      missing[i] = code == null ? Double.NaN : code;
    }
  }

  /** {@code NAME, [factor] unit}. */
  private void takeColumn(String key, String value) {
    MonitorColumn of = columnOf(key);
    int comma = value.lastIndexOf(',');
    String name = comma < 0 ? value : value.substring(0, comma).strip();
    String unitText = comma < 0 ? "" : value.substring(comma + 1).strip();
    int blank = unitText.indexOf(' ');
    Double factor = blank > 0 ? PlainHeader.plainNumber(unitText.substring(0, blank)) : null;
    String unitName = factor == null ? unitText : unitText.substring(blank + 1).strip();
    var names = new ArrayList<String>();
    for (Unit unit : of.units()) {
      names.add(unit.text());
      if (unit.text().equals(unitName) && !name.isBlank() && (factor == null || factor != 0.0)) {
        columns.add(
            new Mapped(of, name, (factor == null ? 1.0 : factor) * unit.factor(), unit.kind()));
        return;
      }
    }
    refused(
        key,
        value,
        "must be the column's name, a comma and its unit ("
            + String.join(", ", names)
            + "), with a factor before it if need be, such as \"-1 W\" to turn the sign");
  }

  private static MonitorColumn columnOf(String key) {
    for (MonitorColumn one : MonitorColumn.values()) {
      if (one.key.equals(key)) {
        return one;
      }
    }
    throw new IllegalArgumentException(key);
  }

  private void refused(String key, String value, String mustBe) {
    fault(key + ": found \"" + value + '"', mustBe, "");
  }

  private void fault(String found, String expected, String mend) {
    faults.add(line, column, found, expected, mend);
  }

  private void refuseIncomplete() {
    for (String key : List.of("time", "time_format")) {
      if (!seen.contains(key)) {
        faults.add("no " + key, "needed in a column map", "docs/compare.md shows a map.");
      }
    }
    if (!seen.contains("solar") && !seen.contains("load") && !seen.contains("charge")) {
      faults.add("neither charge, solar nor load", "at least one of them is needed", "");
    }
    if (separator == decimal) {
      faults.add("separator and decimal mark are both commas", "must differ", "");
    }
  }

  /** From the names of our own plain form; null after a fault. */
  void takePlainName(String name, int atLine, int atColumn) {
    line = atLine;
    column = atColumn;
    String unit = name.substring(name.lastIndexOf('_') + 1);
    String key = name.lastIndexOf('_') < 0 ? name : name.substring(0, name.lastIndexOf('_'));
    String as =
        switch (unit) {
          case "pct" -> "%";
          case "w" -> "W";
          case "kw" -> "kW";
          case "wh" -> "Wh";
          case "kwh" -> "kWh";
          case "v" -> "V";
          case "a" -> "A";
          default -> "";
        };
    if (unit.equals("v") && key.equals("battery")) {
      key = MonitorColumn.VOLTAGE.key;
    } else if (unit.equals("a") && key.equals("battery")) {
      key = MonitorColumn.CURRENT.key;
    }
    if (KEYS.indexOf(key) >= KEYS.indexOf("charge") && !as.isEmpty()) {
      takeColumn(key, name + ", " + as);
    }
  }
}
