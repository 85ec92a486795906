package greyspell.weather;

import greyspell.weather.Fields.Missing;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads TMY3 CSV: a line about the place, a line of column names, one row an hour. Columns are
 * found by name, since shortened copies circulate. Stamps run from 01:00 to 24:00 and end their
 * hour, in local standard time. Opaque cloud is taken before total cloud, as in {@link EpwReader}.
 */
final class Tmy3Reader {
  private static final Missing MISSING = Missing.upTo(-9000.0, "-9900");
  private static final double TENTHS = 10.0;
  private static final String DATE = "Date (MM/DD/YYYY)";
  private static final String TIME = "Time (HH:MM)";
  private static final String OPAQUE = "OpqCld (tenths)";

  /** Names by slot of {@link WeatherColumn}; snow depth is not in this format. */
  private static final String[] NAMES = {
    "GHI (W/m^2)", "DNI (W/m^2)", "DHI (W/m^2)", "Dry-bulb (C)", "Wspd (m/s)", "TotCld (tenths)", ""
  };

  private final Lines lines;
  private final String file;
  private final @Nullable Double siteUtcOffsetH;
  private final FaultList faults;
  private final Fields fields;
  private final List<String> notes = new ArrayList<>();
  private final Tally tally = new Tally();
  private final int[] fieldOf = new int[WeatherColumn.COUNT];
  private int opaqueField = -1;
  private int dateField = -1;
  private int timeField = -1;
  private int names;
  private int year;
  private int month;
  private int day;
  private int hour;

  Tmy3Reader(Lines lines, String file, @Nullable Double siteUtcOffsetH, FaultList faults) {
    this.lines = lines;
    this.file = file;
    this.siteUtcOffsetH = siteUtcOffsetH;
    this.faults = faults;
    fields = new Fields(lines, faults, tally);
  }

  WeatherSeries read() throws IOException {
    WeatherSource told = readPlace();
    readNames();
    faults.throwIfAny();
    var rows = new YearRows(1, faults);
    readRows(rows);
    tally.tell(notes);
    return rows.series(true, told, siteUtcOffsetH, notes);
  }

  private WeatherSource readPlace() throws IOException {
    if (!lines.next() || lines.split() < 7) {
      throw faults.alone(
          1,
          1,
          lines.fields() + " fields",
          "must be number,\"name\",state,UTC offset,latitude,longitude,elevation",
          "");
    }
    return new WeatherSource(
        file,
        "TMY3",
        lines.text(1),
        fields.inHead(4, "latitude", -90, 90, "deg"),
        fields.inHead(5, "longitude", -180, 180, "deg"),
        fields.inHead(6, "elevation", -500, 9000, "m"),
        fields.inHead(3, "UTC offset", -14, 14, "h"));
  }

  private void readNames() throws IOException {
    if (!lines.next()) {
      return;
    }
    Arrays.fill(fieldOf, -1);
    int count = lines.split();
    for (int f = 0; f < count; f++) {
      String name = lines.text(f);
      if (name.equals(DATE)) {
        dateField = f;
      } else if (name.equals(TIME)) {
        timeField = f;
      } else if (name.equals(OPAQUE)) {
        opaqueField = f;
      } else if (!name.isEmpty()) {
        for (int c = 0; c < NAMES.length; c++) {
          if (name.equals(NAMES[c])) {
            fieldOf[c] = f;
          }
        }
      }
      names = name.isEmpty() ? names : f + 1;
    }
    refuseMissing(dateField, DATE);
    refuseMissing(timeField, TIME);
    refuseMissing(fieldOf[WeatherColumn.GLOBAL.slot], NAMES[WeatherColumn.GLOBAL.slot]);
    refuseMissing(fieldOf[WeatherColumn.TEMPERATURE.slot], NAMES[WeatherColumn.TEMPERATURE.slot]);
  }

  private void refuseMissing(int field, String name) {
    if (field < 0) {
      faults.add(
          lines.number(),
          1,
          "no column \"" + name + '"',
          "needed in a TMY3 file",
          "Use the file as it was published.");
    }
  }

  private void readRows(YearRows rows) throws IOException {
    var row = new double[WeatherColumn.COUNT];
    while (lines.next()) {
      if (lines.isBlank()) {
        continue;
      }
      if (lines.split() < names) {
        fields.refuseCount("must be " + names + ", as many as the row of names has");
        continue;
      }
      if (readDate() && readTime()) {
        readValues(row);
        rows.add(lines.number(), year, month, day, hour, row);
      }
    }
    fields.refuseTooLong("must be a row of " + names + " fields");
  }

  /** MM/DD/YYYY; spreadsheets drop leading zeros. */
  private boolean readDate() {
    String text = lines.text(dateField);
    int first = text.indexOf('/');
    int second = text.indexOf('/', first + 1);
    if (first > 0 && second > first) {
      month = whole(text, 0, first);
      day = whole(text, first + 1, second);
      year = whole(text, second + 1, text.length());
      if (year >= Dates.FIRST_YEAR && year <= Dates.LAST_YEAR && Dates.isDate(year, month, day)) {
        return true;
      }
    }
    faults.add(
        lines.number(),
        lines.column(dateField),
        "date: found " + lines.quoted(dateField),
        "must be month/day/year such as 01/31/1998",
        "");
    return false;
  }

  private boolean readTime() {
    String text = lines.text(timeField);
    int colon = text.indexOf(':');
    if (colon > 0) {
      hour = whole(text, 0, colon);
      if (hour >= 1 && hour <= 24 && whole(text, colon + 1, text.length()) == 0) {
        return true;
      }
    }
    faults.add(
        lines.number(),
        lines.column(timeField),
        "time: found " + lines.quoted(timeField),
        "must be 01:00 to 24:00, the end of the hour",
        "A spreadsheet turns 24:00 into 0:00: use the file as it was published.");
    return false;
  }

  /** Digits as a number; -1 if there are none, or too many, or other characters. */
  private static int whole(String text, int from, int to) {
    int number = to > from && to - from <= 4 ? 0 : -1;
    for (int i = from; i < to && number >= 0; i++) {
      int digit = text.charAt(i) - '0';
      number = digit >= 0 && digit <= 9 ? number * 10 + digit : -1;
    }
    return number;
  }

  private void readValues(double[] row) {
    for (WeatherColumn column : WeatherColumn.values()) {
      row[column.slot] = value(fieldOf[column.slot], column);
    }
    double opaque = value(opaqueField, WeatherColumn.CLOUD);
    if (!Double.isNaN(opaque)) {
      row[WeatherColumn.CLOUD.slot] = opaque;
    }
  }

  private double value(int field, WeatherColumn column) {
    if (field < 0) {
      return Double.NaN;
    }
    double perUnit = column == WeatherColumn.CLOUD ? TENTHS : 1.0;
    return fields.value(field, column, perUnit, MISSING);
  }
}
