package greyspell.weather;

import greyspell.quantity.PlainNumber;
import greyspell.weather.Fields.Missing;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads the hourly CSV of NASA POWER: a head between two marks that tells place, clock and the unit
 * of each parameter, then {@code YEAR,MO,DY,HR} and the parameters in any order. What the file is
 * is the mean of a cell some 100 km wide, modelled from satellites: coasts, valleys and fog are
 * smoothed.
 *
 * <p>The clock is UTC or, as the service calls it, local solar time: UTC moved by whole hours, one
 * for each 15 degrees of longitude. HR names the hour's start: from memory, and looked at on one
 * published day, whose light has its middle 31 minutes after the stamp that the sun's noon asks
 * for. Units and codes as in heads of public files; newer heads write in small letters what older
 * ones write with a capital.
 */
final class PowerReader implements RowFormat {
  static final String BEGIN = "-BEGIN HEADER-";
  private static final String END = "-END HEADER-";
  private static final int MOST_HEAD_LINES = 200;
  private static final double DEG_PER_H = 15.0;
  private static final List<String> TIMES = List.of("YEAR", "MO", "DY", "HR");
  private static final Missing MISSING = new Missing(-990.0, Double.POSITIVE_INFINITY, "-999");

  /** Names by slot of {@link WeatherColumn}. */
  private static final String[] NAMES = {
    "ALLSKY_SFC_SW_DWN", "ALLSKY_SFC_SW_DNI", "ALLSKY_SFC_SW_DIFF", "T2M", "WS10M", "CLOUD_AMT", ""
  };

  private final Lines lines;
  private final String file;
  private final FaultList faults;
  private final Fields fields;
  private final List<String> notes = new ArrayList<>();
  private final Map<String, String> unitOf = new HashMap<>();
  private final int[] timeField = new int[4];
  private final List<WeatherColumn> columns = new ArrayList<>();
  private int[] fieldOf = new int[0];
  private double[] perUnit = new double[0];
  private @Nullable Double latitudeDeg;
  private @Nullable Double longitudeDeg;
  private @Nullable Double elevationM;
  private boolean isPlaceTold;
  private boolean isUtc;
  private boolean isSolar;
  private int names;
  private int clockMin;

  PowerReader(Lines lines, String file, FaultList faults, Tally tally) {
    this.lines = lines;
    this.file = file;
    this.faults = faults;
    fields = new Fields(lines, faults, tally);
  }

  @Override
  public RowHead readHead() throws IOException {
    boolean isEnded = false;
    for (int i = 0; i < MOST_HEAD_LINES && !isEnded && lines.next(); i++) {
      String text = lines.text().strip();
      isEnded = text.startsWith(END);
      takeHeadLine(text);
    }
    if (!isEnded || !lines.next()) {
      throw faults.alone(
          lines.number(),
          1,
          "no line " + END,
          "must stand above the rows",
          "The file may be cut off: download it again.");
    }
    takeNames();
    Double east = longitudeDeg;
    if (!isUtc && (!isSolar || !isPlaceTold)) {
      faults.add(
          isSolar ? "no location in the head" : "the head tells no clock",
          "needed: \"in UTC\" or \"in LST\" in the line of dates, and the location",
          "Use the file as it was downloaded, with its head.");
    }
    faults.throwIfAny();
    double offsetH = isUtc || east == null ? 0.0 : Math.rint(east / DEG_PER_H);
    clockMin = (int) (offsetH * Dates.MINUTES_PER_HOUR);
    if (!isUtc) {
      notes.add(
          "local solar time by swaths of 15 degrees: read as "
              + Dates.clock(offsetH)
              + ", whatever the country's clock is");
    }
    return new RowHead(
        List.copyOf(columns),
        false,
        new WeatherSource(file, "NASA POWER", "", latitudeDeg, east, elevationM, offsetH),
        false);
  }

  private void takeHeadLine(String text) {
    String low = text.toLowerCase(Locale.ROOT);
    if (low.startsWith("dates")) {
      isUtc = low.endsWith("utc");
      isSolar = low.endsWith("lst");
    } else if (low.startsWith("location")) {
      isPlaceTold = true;
      latitudeDeg = numberAfter(text, "latitude", 90.0);
      longitudeDeg = numberAfter(text, "longitude", 180.0);
    } else if (low.startsWith("elevation")) {
      elevationM = numberAfter(text, "=", 9000.0);
    } else {
      int blank = text.indexOf(' ');
      int open = text.lastIndexOf('(');
      int close = text.lastIndexOf(')');
      if (blank > 0 && open > blank && close > open) {
        unitOf.put(text.substring(0, blank), text.substring(open + 1, close).strip());
      }
    }
  }

  private @Nullable Double numberAfter(String text, String word, double most) {
    int at = text.toLowerCase(Locale.ROOT).indexOf(word);
    String rest = at < 0 ? "" : text.substring(at + word.length()).strip();
    int end = rest.indexOf(' ');
    Double number = PlainNumber.of(end < 0 ? rest : rest.substring(0, end));
    if (number == null || Math.abs(number) > most) {
      faults.add(
          lines.number(),
          1,
          "found \"" + text + "\"",
          "must hold a number after " + word + ", at most " + (long) most,
          "Use the file as it was downloaded.");
      return null;
    }
    return number;
  }

  private void takeNames() {
    int count = lines.split();
    names = count;
    Arrays.fill(timeField, -1);
    var found = new int[WeatherColumn.COUNT];
    Arrays.fill(found, -1);
    for (int f = 0; f < count; f++) {
      String name = lines.text(f);
      int time = TIMES.indexOf(name);
      if (time >= 0) {
        timeField[time] = f;
      }
      for (int c = 0; c < NAMES.length; c++) {
        if (!name.isEmpty() && name.equals(NAMES[c])) {
          found[c] = f;
        }
      }
    }
    for (int t = 0; t < timeField.length; t++) {
      refuseMissing(timeField[t], TIMES.get(t));
    }
    refuseMissing(found[WeatherColumn.TEMPERATURE.slot], NAMES[WeatherColumn.TEMPERATURE.slot]);
    if (found[WeatherColumn.CLOUD.slot] < 0) {
      refuseMissing(found[WeatherColumn.GLOBAL.slot], NAMES[WeatherColumn.GLOBAL.slot]);
    }
    fieldOf = new int[WeatherColumn.COUNT];
    perUnit = new double[WeatherColumn.COUNT];
    for (WeatherColumn column : WeatherColumn.values()) {
      if (found[column.slot] >= 0) {
        fieldOf[columns.size()] = found[column.slot];
        perUnit[columns.size()] = perUnit(column, found[column.slot]);
        columns.add(column);
      }
    }
  }

  private void refuseMissing(int field, String name) {
    if (field < 0) {
      faults.add(
          lines.number(),
          1,
          "no column " + name,
          "needed in an hourly file of NASA POWER",
          "Download it again with this parameter.");
    }
  }

  private double perUnit(WeatherColumn column, int field) {
    String name = lines.text(field);
    String unit = unitOf.getOrDefault(name, "");
    double factor = factor(column, unit.toLowerCase(Locale.ROOT).replace(" ", ""));
    if (Double.isNaN(factor)) {
      faults.add(
          lines.number(),
          lines.column(field),
          unit.isEmpty()
              ? name + ": the head tells no unit"
              : name + ": unit \"" + unit + "\" in the head",
          "must be "
              + (column.isIrradiance() ? "Wh/m^2, W/m^2, kW-hr/m^2 or MJ/hr" : "a known one")
              + " in parentheses after the parameter's name",
          "Download the file for renewable energy, with its head.");
      return 1.0;
    }
    return factor;
  }

  private static double factor(WeatherColumn column, String unit) {
    if (column.isIrradiance()) {
      return switch (unit) {
        case "wh/m^2", "w/m^2" -> 1.0;
        case "kw-hr/m^2", "kwh/m^2", "kw-hr/m^2/hour", "kwh/m^2/hour" -> 0.001;
        case "mj/hr", "mj/m^2", "mj/m^2/hr", "mj/m^2/hour" -> 0.0036;
        default -> Double.NaN;
      };
    }
    return switch (column) {
      case TEMPERATURE -> unit.equals("c") ? 1.0 : Double.NaN;
      case WIND -> unit.equals("m/s") ? 1.0 : Double.NaN;
      case CLOUD -> unit.equals("%") ? 100.0 : Double.NaN;
      default -> Double.NaN;
    };
  }

  @Override
  public void readRows(HourGrid grid) throws IOException {
    var row = new double[columns.size()];
    while (lines.next()) {
      if (lines.isBlank()) {
        continue;
      }
      if (lines.split() != names) {
        fields.refuseCount("must be " + names + ", as many as the row of names has");
        continue;
      }
      int year = fields.whole(timeField[0], "year", Dates.FIRST_YEAR, Dates.LAST_YEAR);
      int month = fields.whole(timeField[1], "month", 1, 12);
      int day = fields.whole(timeField[2], "day", 1, 31);
      int hour = fields.whole(timeField[3], "hour", 0, 23);
      if (hour < 0 || !fields.isDate(timeField[2], year, month, day)) {
        continue;
      }
      for (int k = 0; k < row.length; k++) {
        row[k] = fields.value(fieldOf[k], columns.get(k), perUnit[k], MISSING);
      }
      grid.add(lines.number(), Dates.epochMinute(year, month, day, hour, 0) - clockMin, row);
    }
    fields.refuseTooLong("must be a row of " + names + " fields");
  }

  @Override
  public List<String> notes() {
    return notes;
  }
}
