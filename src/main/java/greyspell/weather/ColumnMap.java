package greyspell.weather;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

  final MapLines form;
  final PlainHeader header = new PlainHeader();
  final List<Mapped> columns = new ArrayList<>();
  boolean hasNames = true;
  @Nullable Stamp stamp;
  int minutes = Dates.MINUTES_PER_HOUR;

  private final FaultList faults;

  private ColumnMap(FaultList faults) {
    this.faults = faults;
    form = new MapLines(KEYS, faults);
  }

  /** Reads a map, or refuses it with every fault. */
  public static ColumnMap read(Path file, String nameAsGiven) {
    var faults = new FaultList(nameAsGiven);
    return of(MapLines.of(file, faults), faults);
  }

  static ColumnMap of(List<String> lines, FaultList faults) {
    var map = new ColumnMap(faults);
    map.form.read(lines, map::take);
    map.refuseIncomplete();
    faults.throwIfAny();
    return map;
  }

  private void take(String key, String value) {
    switch (key) {
      case "names" -> {
        hasNames = value.equals("yes");
        if (!hasNames && !value.equals("no")) {
          form.refused(key, value, "must be yes, or no where the file has no row of names");
        }
      }
      case "stamp" -> stamp = form.word(key, value, Stamp.values());
      case "minutes" -> {
        minutes = form.whole(key, value, 1, Dates.MINUTES_PER_HOUR);
        if (Dates.MINUTES_PER_HOUR % minutes != 0) {
          form.refused(key, value, "must be a whole part of 60");
        }
      }
      default -> {
        int index = KEYS.indexOf(key);
        if (index >= FIRST_COLUMN_KEY) {
          takeColumn(columnOf(key), key, value);
        } else {
          header.set(form.line(), form.column(), key, value, faults);
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

  /** {@code NAME, [factor] unit[, at stamp]}. */
  private void takeColumn(WeatherColumn of, String key, String value) {
    String[] parts = value.split(",", -1);
    String unitText = parts.length > 1 ? parts[1].strip() : "";
    boolean isAtStamp = parts.length == 3 && parts[2].strip().equals("at stamp");
    MapLines.Amount amount = MapLines.Amount.of(unitText);
    MapUnit unit = null;
    for (MapUnit one : MapUnit.values()) {
      if (one.text.equals(amount.unit()) && one.suits(of)) {
        unit = one;
      }
    }
    boolean isWhole = parts.length == 2 || isAtStamp;
    boolean isFactor = amount.factorOrOne() > 0.0;
    if (unit == null || !isWhole || parts[0].isBlank() || !isFactor) {
      form.refused(
          key,
          value,
          "must be the column's name, a comma and its unit ("
              + String.join(", ", MapUnit.suiting(of))
              + "; with a factor before it if need be, such as \"0.1 C\"), then \", at stamp\" if it"
              + " is a reading at the row's time");
      return;
    }
    columns.add(new Mapped(of, parts[0].strip(), amount.factorOrOne(), unit, isAtStamp));
  }

  boolean isCloudNeeded() {
    return !form.has("ghi");
  }

  private void refuseIncomplete() {
    form.refuseWithout(
        List.of("utc_offset", "time", "time_format", "stamp", "tair"), "docs/weather-files.md");
    if (!form.has("ghi") && !form.has("cloud")) {
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
  }
}
