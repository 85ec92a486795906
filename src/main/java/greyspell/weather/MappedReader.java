package greyspell.weather;

import greyspell.quantity.PlainNumber;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Reads any table of weather as a {@link ColumnMap} says: a national service's hourly file, a
 * logger's export. A reading at the stamp counts half for the interval that it ends and half for
 * the next, as in the typical-year formats.
 */
final class MappedReader implements RowFormat {
  private final Lines lines;
  private final String file;
  private final ColumnMap map;
  private final TimePattern pattern;
  private final FaultList faults;
  private final List<String> notes = new ArrayList<>();
  private final Readings readings;
  private final List<Readings.Column> told = new ArrayList<>();
  private final int[] timeField;
  private final int[] fieldOf;
  private final double[] row;
  private final double[] reading;
  private final double[] readingBefore;
  private long stampBefore = Dates.NO_TIME;
  private int mostField;
  private int rowsRead;

  MappedReader(Lines lines, String file, ColumnMap map, FaultList faults, Tally tally) {
    this.lines = lines;
    this.file = file;
    this.map = map;
    this.faults = faults;
    TimePattern time = map.form.time;
    if (time == null) {
      throw new IllegalArgumentException("checked when the map was read");
    }
    pattern = time;
    readings =
        new Readings(
            lines,
            faults,
            tally,
            map.isCloudNeeded(),
            map.form.missing,
            "Is the unit the right one?",
            "If it is a code for a missing value, write it under missing in the map.");
    for (ColumnMap.Mapped mapped : map.columns) {
      told.add(told(mapped));
    }
    int count = map.columns.size();
    timeField = new int[map.form.timeNames.size()];
    fieldOf = new int[count];
    row = new double[count];
    reading = new double[count];
    readingBefore = new double[count];
    lines.separateBy(map.form.separator);
    lines.decimal(map.form.decimal);
  }

  @Override
  public RowHead readHead() throws IOException {
    findNames();
    for (int t = 0; t < timeField.length; t++) {
      timeField[t] = find(map.form.timeNames.get(t), "time");
    }
    var used = new ArrayList<WeatherColumn>();
    for (int k = 0; k < fieldOf.length; k++) {
      fieldOf[k] = find(map.columns.get(k).name(), map.columns.get(k).column().words);
      used.add(map.columns.get(k).column());
    }
    for (int field : timeField) {
      mostField = Math.max(mostField, field);
    }
    for (int field : fieldOf) {
      mostField = Math.max(mostField, field);
    }
    faults.throwIfAny();
    PlainHeader header = map.header;
    return new RowHead(
        used,
        map.stamp == ColumnMap.Stamp.END,
        new WeatherSource(
            file,
            "CSV by a column map",
            header.place,
            header.latitudeDeg,
            header.longitudeDeg,
            header.elevationM,
            offsetH()),
        false);
  }

  private double offsetH() {
    Double offsetH = map.header.utcOffsetH;
    return offsetH == null ? 0.0 : offsetH;
  }

  private void findNames() throws IOException {
    for (int i = 0; i < map.form.skipLines; i++) {
      lines.next();
    }
    if (!map.hasNames) {
      return;
    }
    while (lines.next()) {
      boolean isNames =
          map.form.namesBegin.isEmpty() ? !isPassedOver() : map.form.beginsNames(lines.text());
      if (isNames) {
        lines.split();
        return;
      }
    }
    throw faults.alone(
        lines.number(),
        1,
        map.form.namesBegin.isEmpty()
            ? "no row of names"
            : "no line begins \"" + map.form.namesBegin + '"',
        "the row with the columns' names must begin so, as the map says in names_begin",
        "Look at the file's first lines and change the map.");
  }

  private boolean isPassedOver() {
    return lines.isBlank()
        || (!map.form.remarks.isEmpty() && lines.text().startsWith(map.form.remarks));
  }

  /** By name, or by number where the name is {@code #3} or there are none; -1 after a fault. */
  private int find(String name, String what) {
    Double number = PlainNumber.of(name.startsWith("#") ? name.substring(1) : name);
    boolean mayBeNumber = name.startsWith("#") || !map.hasNames;
    if (mayBeNumber
        && number != null
        && number >= 1.0
        && number <= 250.0
        && number == Math.rint(number)) {
      return number.intValue() - 1;
    }
    if (map.hasNames) {
      for (int f = 0; f < lines.fields(); f++) {
        if (lines.text(f).equals(name)) {
          return f;
        }
      }
    }
    faults.add(
        map.hasNames ? lines.number() : 0,
        map.hasNames ? 1 : 0,
        "no column \"" + name + "\" (" + what + ")",
        map.hasNames ? "the columns are " + names() : "must be a column's number, from 1",
        map.hasNames
            ? "Change the map; a column may also be named by number, in quotes: \"#3, UNIT\"."
            : "Count the columns from 1.");
    return 0;
  }

  private String names() {
    var names = new StringBuilder();
    for (int f = 0; f < lines.fields() && names.length() < 200; f++) {
      names.append(f == 0 ? "" : ", ").append(lines.text(f));
    }
    return names.toString();
  }

  @Override
  public void readRows(HourGrid grid) throws IOException {
    int clockMin = (int) Math.round(offsetH() * Dates.MINUTES_PER_HOUR);
    Arrays.fill(readingBefore, Double.NaN);
    grid.expectMinutes(map.minutes);
    while (lines.next()) {
      if (isPassedOver()) {
        continue;
      }
      rowsRead++;
      int count = lines.split();
      if (count <= mostField) {
        faults.add(
            lines.number(),
            1,
            count + (count == 1 ? " field" : " fields"),
            "must be at least " + (mostField + 1) + ": the map names the " + (mostField + 1) + "th",
            lines.isLast()
                ? "The last line looks cut off: download or copy the file again."
                : "Is the separator the right one?");
        continue;
      }
      long stampMin = time();
      if (stampMin == Dates.NO_TIME) {
        refuseTime();
        continue;
      }
      readRow(stampMin);
      long middleMin = map.stamp == ColumnMap.Stamp.MIDDLE ? map.minutes / 2 : 0;
      grid.add(lines.number(), stampMin - clockMin - middleMin, row);
    }
    if (lines.isTooLong()) {
      faults.add(lines.number(), 1, "a line without end", "must be a row of a table", "");
    }
    readings.judge(told, rowsRead, notes);
  }

  private long time() {
    String text = lines.text(timeField[0]);
    for (int t = 1; t < timeField.length; t++) {
      text += " " + lines.text(timeField[t]);
    }
    return pattern.epochMinute(text);
  }

  private void refuseTime() {
    var text = new StringBuilder();
    for (int field : timeField) {
      text.append(text.length() == 0 ? "" : " ").append(lines.text(field));
    }
    faults.add(
        lines.number(),
        lines.column(timeField[0]),
        "time: found \"" + text + '"',
        "must be like " + pattern + ", as the map says",
        "Change time_format in the map.");
  }

  private void readRow(long stampMin) {
    boolean isNext = stampBefore != Dates.NO_TIME && stampMin - stampBefore == map.minutes;
    for (int k = 0; k < row.length; k++) {
      reading[k] = readings.value(fieldOf[k], told.get(k));
      boolean isMean = map.columns.get(k).isAtStamp() && isNext && !Double.isNaN(readingBefore[k]);
      row[k] = isMean ? (readingBefore[k] + reading[k]) / 2.0 : reading[k];
    }
    System.arraycopy(reading, 0, readingBefore, 0, reading.length);
    stampBefore = stampMin;
  }

  private Readings.Column told(ColumnMap.Mapped mapped) {
    WeatherColumn column = mapped.column();
    MapUnit unit = mapped.unit();
    double perHour =
        unit.kind == MapUnit.Kind.ENERGY ? Dates.MINUTES_PER_HOUR / (double) map.minutes : 1.0;
    return new Readings.Column(
        column,
        mapped.name(),
        1.0 / (mapped.factor() * unit.size * perHour),
        unit.zero(),
        unit == MapUnit.OKTA ? mapped.factor() : 0.0,
        "must be "
            + (long) column.lowest
            + " to "
            + (long) column.highest
            + (column == WeatherColumn.CLOUD ? " as a share of the sky" : " " + column.unit)
            + " in the unit that the map gives");
  }

  @Override
  public List<String> notes() {
    return notes;
  }
}
