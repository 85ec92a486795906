package greyspell.weather;

import greyspell.calendar.UtcOffset;
import greyspell.weather.MonitorColumn.Kind;
import greyspell.weather.MonitorColumn.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

  final MapLines form;
  final List<Mapped> columns = new ArrayList<>();
  @Nullable Double utcOffsetH;
  ColumnMap.Stamp stamp = ColumnMap.Stamp.START;
  MonitorLog.SolarAt solarAt = MonitorLog.SolarAt.BUS;
  MonitorLog.LoadAt loadAt = MonitorLog.LoadAt.SOCKETS;

  private final FaultList faults;

  private MonitorMap(FaultList faults) {
    this.faults = faults;
    form = new MapLines(KEYS, faults);
  }

  /** Reads a map, or refuses it with every fault. */
  public static MonitorMap read(Path file, String nameAsGiven) {
    var faults = new FaultList(nameAsGiven);
    return of(MapLines.of(file, faults), faults);
  }

  static MonitorMap of(List<String> lines, FaultList faults) {
    var map = new MonitorMap(faults);
    map.form.read(lines, map::take);
    map.refuseIncomplete();
    faults.throwIfAny();
    return map;
  }

  /** One without lines, for a file whose own names tell everything. */
  static MonitorMap empty(FaultList faults) {
    return new MonitorMap(faults);
  }

  private void take(String key, String value) {
    switch (key) {
      case "utc_offset" -> {
        utcOffsetH = UtcOffset.hours(value);
        if (utcOffsetH == null) {
          form.refused(key, value, UtcOffset.EXPECTED);
        }
      }
      case "stamp" -> stamp = word(key, value, ColumnMap.Stamp.values(), stamp);
      case "solar_at" -> solarAt = word(key, value, MonitorLog.SolarAt.values(), solarAt);
      case "load_at" -> loadAt = word(key, value, MonitorLog.LoadAt.values(), loadAt);
      default -> takeColumn(key, value);
    }
  }

  private <T extends Enum<T>> T word(String key, String value, T[] words, T instead) {
    T word = form.word(key, value, words);
    return word == null ? instead : word;
  }

  /** {@code NAME, [factor] unit}. */
  private void takeColumn(String key, String value) {
    MonitorColumn of = columnOf(key);
    int comma = value.lastIndexOf(',');
    String name = comma < 0 ? value : value.substring(0, comma).strip();
    String unitText = comma < 0 ? "" : value.substring(comma + 1).strip();
    MapLines.Amount amount = MapLines.Amount.of(unitText);
    double factor = amount.factorOrOne();
    var names = new ArrayList<String>();
    for (Unit unit : of.units()) {
      names.add(unit.text());
      if (unit.text().equals(amount.unit()) && !name.isBlank() && factor != 0.0) {
        columns.add(new Mapped(of, name, factor * unit.factor(), unit.kind()));
        return;
      }
    }
    form.refused(
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

  private void refuseIncomplete() {
    form.refuseWithout(List.of("time", "time_format"), "docs/compare.md");
    if (!form.has("solar") && !form.has("load") && !form.has("charge")) {
      faults.add("neither charge, solar nor load", "at least one of them is needed", "");
    }
  }

  /** From the names of our own plain form; null after a fault. */
  void takePlainName(String name, int atLine, int atColumn) {
    form.at(atLine, atColumn);
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
