package greyspell.weather;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Reads our plain CSV (docs/weather-files.md): remarks and keys, a header row, rows of numbers. */
final class PlainCsvReader implements RowFormat {
  private final Lines lines;
  private final String file;
  private final String known;
  private final FaultList faults;
  private final Tally tally;
  private final PlainHeader header = new PlainHeader();
  private final List<String> notes = new ArrayList<>();

  private @Nullable CsvColumn[] columnOfField = new CsvColumn[0];
  private int timeField = -1;
  private String timeName = "";
  private boolean isUtc;
  private boolean stampsAreEnds;
  private boolean hasGlobal;
  private int rowsRead;

  /**
   * @param known what to tell the user of a file that is no weather file at all
   */
  PlainCsvReader(Lines lines, String file, String known, FaultList faults, Tally tally) {
    this.lines = lines;
    this.file = file;
    this.known = known;
    this.faults = faults;
    this.tally = tally;
  }

  @Override
  public RowHead readHead() throws IOException {
    readHeader(known);
    faults.throwIfAny();
    return new RowHead(
        used(),
        stampsAreEnds,
        new WeatherSource(
            file,
            "plain CSV",
            header.place,
            header.latitudeDeg,
            header.longitudeDeg,
            header.elevationM,
            header.utcOffsetH == null ? 0.0 : header.utcOffsetH),
        header.isTypicalYear);
  }

  @Override
  public void readRows(HourGrid grid) throws IOException {
    var told = new ArrayList<Readings.Column>();
    for (CsvColumn column : columnOfField) {
      if (column != null) {
        told.add(column.told());
      }
    }
    var readings =
        new Readings(
            lines,
            faults,
            tally,
            !hasGlobal,
            new double[0],
            "Check the unit of the column.",
            "Leave the field empty where there is no value; codes such as -999 are not known.");
    readAllRows(grid, readings, told);
    readings.judge(told, rowsRead, notes);
  }

  @Override
  public List<String> notes() {
    return notes;
  }

  private void readHeader(String known) throws IOException {
    while (lines.next()) {
      if (lines.startsWith('#')) {
        header.take(lines.number(), lines.text(), faults);
      } else if (!lines.isBlank()) {
        readNames(known);
        return;
      }
    }
    throw faults.alone(0, 0, "no header row", known, "");
  }

  private void readNames(String known) {
    int fields = lines.split();
    while (fields > 1 && lines.length(fields - 1) == 0) {
      fields--;
    }
    columnOfField = new CsvColumn[fields];
    refuseOtherFiles(fields, known);
    var taken = new CsvColumn[WeatherColumn.COUNT];
    for (int f = 0; f < fields; f++) {
      String name = lines.text(f).toLowerCase(Locale.ROOT);
      if (CsvColumn.TIMES.contains(name)) {
        takeTime(f, name);
        continue;
      }
      CsvColumn column = named(name);
      if (column == null) {
        faults.add(
            lines.number(),
            lines.column(f),
            "unknown column " + lines.quoted(f),
            "the columns are " + String.join(", ", CsvColumn.names()),
            "Did you mean "
                + NearName.of(name, CsvColumn.names())
                + "? Take out columns that are not needed.");
        continue;
      }
      CsvColumn other = taken[column.column.slot];
      if (other != null) {
        faults.add(
            lines.number(),
            lines.column(f),
            "column " + lines.quoted(f) + " beside " + other.csvName,
            "one column of " + column.column.words + " only",
            "Take out one of the two.");
      }
      taken[column.column.slot] = column;
      columnOfField[f] = column;
    }
    hasGlobal = taken[WeatherColumn.GLOBAL.slot] != null;
    refuseMissingNames(taken);
  }

  private void refuseOtherFiles(int fields, String known) {
    for (int f = 0; f < fields; f++) {
      String name = lines.text(f).toLowerCase(Locale.ROOT);
      if (CsvColumn.TIMES.contains(name) || named(name) != null) {
        return;
      }
    }
    for (int f = 0; f < fields; f++) {
      String name = lines.text(f).toLowerCase(Locale.ROOT);
      String near = NearName.of(name, CsvColumn.names());
      if (NearName.distance(name, near) * 3 <= near.length()) {
        return;
      }
    }
    String line = lines.text();
    if (line.indexOf(';') >= 0 && line.contains("tair_c")) {
      throw faults.alone(
          lines.number(),
          1,
          "the columns are separated by semicolons",
          "must be separated by commas, with a point in decimal numbers",
          "Export the table as CSV with commas.");
    }
    throw faults.alone(
        lines.number(),
        1,
        "no known weather format: the file begins \""
            + (line.length() > 50 ? line.substring(0, 50) + "..." : line)
            + '"',
        known,
        "Rename the columns of another CSV as docs/weather-files.md says.");
  }

  private static @Nullable CsvColumn named(String name) {
    for (CsvColumn column : CsvColumn.values()) {
      if (column.csvName.equals(name)) {
        return column;
      }
    }
    return null;
  }

  private void takeTime(int field, String name) {
    if (timeField >= 0) {
      faults.add(
          lines.number(),
          lines.column(field),
          "column \"" + name + "\" beside " + timeName,
          "one time column only",
          "Take out one of the two.");
    }
    timeField = field;
    timeName = name;
    isUtc = name.startsWith("utc");
    stampsAreEnds = name.endsWith("_end");
  }

  private void refuseMissingNames(@Nullable CsvColumn[] taken) {
    int line = lines.number();
    if (timeField < 0) {
      faults.add(
          line,
          1,
          "no time column",
          "must be one of " + String.join(", ", CsvColumn.TIMES),
          "Say whether a time is the start or the end of its hour, and whether it is UTC or local"
              + " standard time.");
    } else if (!isUtc && header.utcOffsetH == null) {
      faults.add(
          line,
          lines.column(timeField),
          "column \"" + timeName + "\" without a UTC offset",
          "local times need a line such as \"# utc_offset: -6\" above the header row",
          "Use the offset of standard time, also in summer.");
    }
    if (taken[WeatherColumn.TEMPERATURE.slot] == null) {
      faults.add(
          line,
          1,
          "no column tair_c",
          "air temperature is needed: batteries and modules depend on it",
          "Add a column tair_c.");
    }
    if (taken[WeatherColumn.GLOBAL.slot] == null && taken[WeatherColumn.CLOUD.slot] == null) {
      faults.add(
          line,
          1,
          "neither global irradiance nor cloud cover",
          "one of the two is needed",
          "Add a column ghi_wm2, or cloud_okta, cloud_tenths or cloud_pct.");
    }
  }

  private List<WeatherColumn> used() {
    var used = new ArrayList<WeatherColumn>();
    for (CsvColumn column : columnOfField) {
      if (column != null) {
        used.add(column.column);
      }
    }
    return used;
  }

  private void readAllRows(HourGrid grid, Readings readings, List<Readings.Column> told)
      throws IOException {
    int names = columnOfField.length;
    var values = new double[told.size()];
    int clockMin =
        isUtc || header.utcOffsetH == null
            ? 0
            : (int) Math.round(header.utcOffsetH * Dates.MINUTES_PER_HOUR);
    while (lines.next()) {
      if (lines.isBlank()) {
        continue;
      }
      rowsRead++;
      int fields = lines.split();
      while (fields > names && lines.length(fields - 1) == 0) {
        fields--;
      }
      if (fields != names) {
        refuseFieldCount(fields, names);
        continue;
      }
      long stampMin = time(timeField);
      if (stampMin == Dates.NO_TIME) {
        refuseTime();
        continue;
      }
      int k = 0;
      for (int f = 0; f < names; f++) {
        if (columnOfField[f] != null) {
          values[k] = readings.value(f, told.get(k));
          k++;
        }
      }
      grid.add(lines.number(), stampMin - clockMin, values);
    }
    if (lines.isTooLong()) {
      faults.add(
          lines.number(),
          1,
          "a line longer than " + Lines.LONGEST_LINE + " characters",
          "must be a row of " + names + " fields",
          "");
    }
  }

  private void refuseFieldCount(int fields, int names) throws IOException {
    faults.add(
        lines.number(),
        1,
        fields + (fields == 1 ? " field" : " fields"),
        "must be " + names + ", as many as the header row has",
        fields < names && lines.isLast()
            ? "The last line looks cut off: export or copy the file again."
            : "Write a blank field as two commas; use a point, not a comma, in numbers.");
  }

  private void refuseTime() {
    faults.add(
        lines.number(),
        lines.column(timeField),
        timeName + ": found " + lines.quoted(timeField),
        isUtc
            ? "must be UTC such as 2015-05-01T01:00Z"
            : "must be local standard time such as 2015-05-01T01:00, without Z or offset",
        isUtc
            ? "If the times are local, name the column local_start or local_end."
            : "If the times are UTC, name the column utc_start or utc_end.");
  }

  /** Minutes since 1970 on the file's clock; {@code 24:00} is the midnight that ends the day. */
  private long time(int field) {
    int length = lines.length(field);
    if (length > 0 && lines.at(field, length - 1) == 'Z') {
      length--;
      if (!isUtc) {
        return Dates.NO_TIME;
      }
    } else if (isUtc) {
      return Dates.NO_TIME;
    }
    if (length == 19) {
      if (lines.at(field, 16) != ':' || digits(field, 17, 2) != 0) {
        return Dates.NO_TIME;
      }
    } else if (length != 16) {
      return Dates.NO_TIME;
    }
    int separator = lines.at(field, 10);
    if (lines.at(field, 4) != '-'
        || lines.at(field, 7) != '-'
        || lines.at(field, 13) != ':'
        || (separator != 'T' && separator != ' ')) {
      return Dates.NO_TIME;
    }
    int year = digits(field, 0, 4);
    int month = digits(field, 5, 2);
    int day = digits(field, 8, 2);
    int hour = digits(field, 11, 2);
    int minute = digits(field, 14, 2);
    if (year < Dates.FIRST_YEAR
        || year > Dates.LAST_YEAR
        || !Dates.isDate(year, month, day)
        || hour < 0
        || hour > 24
        || minute < 0
        || minute > 59
        || (hour == 24 && minute > 0)) {
      return Dates.NO_TIME;
    }
    return Dates.epochMinute(year, month, day, hour, minute);
  }

  /** Digits as a number; negative if one is none. */
  private int digits(int field, int from, int count) {
    int number = 0;
    for (int i = from; i < from + count; i++) {
      int digit = lines.at(field, i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = number * 10 + digit;
    }
    return number;
  }
}
