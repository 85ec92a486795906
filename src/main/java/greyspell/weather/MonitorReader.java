package greyspell.weather;

import greyspell.calendar.UtcOffset;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.PlainNumber;
import greyspell.weather.MonitorMap.Mapped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Reads a monitor's CSV, by a {@link MonitorMap} or, without one, in our own plain form:
 *
 * <pre>
 * local_start,charge_pct,solar_w,load_w
 * 2024-11-03T00:00,71.5,0,148
 * </pre>
 *
 * One time column ({@code local_start}, {@code local_end}, {@code utc_start}, {@code utc_end}); any
 * of {@code charge_pct}, {@code charge_kwh}, {@code solar_w}, {@code load_w}, {@code battery_w}
 * (positive into the bank), {@code battery_v}, {@code battery_a}, {@code generator_w}, power also
 * as {@code _kw}, {@code _wh}, {@code _kwh}. Rows are 1 to 60 minutes apart, times rise; a blank is
 * a hole. The usual distance of two rows is the length of each.
 */
public final class MonitorReader {
  private static final String PLAIN_TIME = "yyyy-MM-dd HH:mm:ss";
  private static final double MOST_W = 1e6;

  /** In a log of a day or more no bank stays there. */
  private static final double NO_CHARGE_SHARE = 0.0101;

  private static final int LEAST_ROWS_OF_NO_CHARGE = 24;

  private final Lines lines;
  private final FaultList faults;
  private final double siteUtcOffsetH;
  private final List<String> notes = new ArrayList<>();
  private MonitorMap map;
  private TimePattern pattern = plainPattern();
  private boolean isPlain;
  private boolean isUtc;
  private int[] timeField = new int[0];
  private int[] fieldOf = new int[0];
  private int mostField;
  private MonitorRows rows;
  private int strays;
  private final List<String> notRead = new ArrayList<>();
  private double highestShare = Double.NaN;

  private MonitorReader(Lines lines, FaultList faults, MonitorMap map, double siteUtcOffsetH) {
    this.lines = lines;
    this.faults = faults;
    this.map = map;
    rows = new MonitorRows(0, faults);
    this.siteUtcOffsetH = siteUtcOffsetH;
  }

  private static TimePattern plainPattern() {
    TimePattern pattern = TimePattern.find(PLAIN_TIME);
    if (pattern == null) {
      throw new IllegalStateException(PLAIN_TIME);
    }
    return pattern;
  }

  /**
   * Reads a log, or refuses it with every fault.
   *
   * @param nameAsGiven the file as the user wrote it, for messages
   * @param map null for our own plain form
   * @param siteUtcOffsetH standard time of the site, for local times of a clock that is not stated
   */
  public static MonitorLog read(
      Path file, String nameAsGiven, @Nullable MonitorMap map, double siteUtcOffsetH) {
    var faults = new FaultList(nameAsGiven);
    if (Files.isDirectory(file)) {
      throw faults.alone(
          0, 0, "is a folder", "must be a monitor's CSV", "Name the file inside the folder.");
    }
    try (var lines = new Lines(Files.newInputStream(file))) {
      String head = lines.head();
      if (head.isBlank()) {
        throw faults.alone(
            0, 0, "the file is empty", "must be a monitor's CSV", "Export it again.");
      }
      if (head.indexOf('\0') >= 0 || head.startsWith("PK")) {
        throw faults.alone(
            0, 0, "is no text file", "must be a monitor's CSV", "Unpack it, or save it as CSV.");
      }
      if (head.startsWith("\u00ef\u00bb\u00bf")) {
        lines.skip(3);
      }
      var reader =
          new MonitorReader(
              lines, faults, map == null ? MonitorMap.empty(faults) : map, siteUtcOffsetH);
      reader.isPlain = map == null;
      return reader.read();
    } catch (NoSuchFileException e) {
      throw faults.alone(0, 0, "no such file", "must be a monitor's CSV", "Check the spelling.");
    } catch (IOException e) {
      throw faults.alone(
          0, 0, "could not be read: " + FileTrouble.words(e), "must be readable", "");
    }
  }

  private MonitorLog read() throws IOException {
    lines.separateBy(map.form.separator);
    lines.decimal(map.form.decimal);
    findNames();
    if (isPlain) {
      takePlainNames();
    } else {
      takeMappedNames();
    }
    faults.throwIfAny();
    rows = new MonitorRows(map.columns.size(), faults);
    readRows();
    faults.throwIfAny();
    return log();
  }

  private void findNames() throws IOException {
    for (int i = 0; i < map.form.skipLines; i++) {
      lines.next();
    }
    while (lines.next()) {
      if (isPlain && lines.startsWith('#')) {
        takeHeadLine();
        continue;
      }
      boolean isNames =
          map.form.namesBegin.isEmpty() ? !isPassedOver() : map.form.beginsNames(lines.text());
      if (isNames) {
        lines.split();
        return;
      }
    }
    boolean isSought = !map.form.namesBegin.isEmpty();
    throw faults.alone(
        lines.number(),
        1,
        isSought ? "no line begins \"" + map.form.namesBegin + '"' : "no row of names",
        isSought
            ? "the row with the columns' names must begin so, as the map says in names_begin"
            : "must hold a row with the columns' names",
        isSought
            ? "Look at the file's first lines and change the map."
            : "Only remarks were found: export it again.");
  }

  private void takeHeadLine() {
    String text = lines.text();
    UtcOffset.Stated stated = UtcOffset.stated(text);
    if (stated != null) {
      map.utcOffsetH = PlainHeader.offset(lines.number(), stated.column(), stated.value(), faults);
      return;
    }
    int colon = text.indexOf(':');
    String key = colon < 1 ? "" : text.substring(1, colon).strip();
    if (NearName.distance(key, UtcOffset.KEY) <= PlainHeader.MISSPELT) {
      faults.add(
          lines.number(),
          text.indexOf(key, 1) + 1,
          "unknown key \"" + key + '"',
          "the key is " + UtcOffset.KEY,
          "Did you mean " + UtcOffset.KEY + "?");
    }
  }

  private boolean isPassedOver() {
    return lines.isBlank()
        || (isPlain && lines.startsWith('#'))
        || (!map.form.remarks.isEmpty() && lines.text().startsWith(map.form.remarks));
  }

  private void takePlainNames() {
    int times = 0;
    for (int f = 0; f < lines.fields(); f++) {
      String name = lines.text(f).toLowerCase(Locale.ROOT);
      if (List.of("local_start", "local_end", "utc_start", "utc_end").contains(name)) {
        timeField = new int[] {f};
        times++;
        isUtc = name.startsWith("utc");
        map.stamp = name.endsWith("end") ? ColumnMap.Stamp.END : ColumnMap.Stamp.START;
      } else {
        int before = map.columns.size();
        map.takePlainName(name, lines.number(), lines.column(f));
        if (map.columns.size() > before) {
          fieldOf = Arrays.copyOf(fieldOf, before + 1);
          fieldOf[before] = f;
          refuseSecond(f);
        } else if (!name.isEmpty()) {
          notRead.add(lines.text(f));
        }
      }
    }
    if (times != 1 || map.columns.isEmpty()) {
      faults.add(
          lines.number(),
          1,
          "found the columns " + names(),
          "needed are one of local_start, local_end, utc_start, utc_end, and some of charge_pct,"
              + " solar_w, load_w",
          "Any other table is read with --columns MAP: docs/compare.md shows one.");
    }
    settleFields();
  }

  /** The last of two would be taken, and nobody knows which of them is right. */
  private void refuseSecond(int field) {
    Mapped last = map.columns.get(map.columns.size() - 1);
    for (Mapped other : map.columns) {
      if (other != last && other.column() == last.column()) {
        faults.add(
            lines.number(),
            lines.column(field),
            "a second column of the same: " + other.name() + " and " + last.name(),
            "must be one column of " + last.column().words,
            "Take one of them out, or name the right one in a map with --columns MAP.");
        return;
      }
    }
  }

  private void takeMappedNames() {
    TimePattern mapped = map.form.time;
    pattern = mapped == null ? pattern : mapped;
    timeField = new int[map.form.timeNames.size()];
    for (int t = 0; t < timeField.length; t++) {
      timeField[t] = find(map.form.timeNames.get(t), "time");
    }
    fieldOf = new int[map.columns.size()];
    for (int k = 0; k < fieldOf.length; k++) {
      fieldOf[k] = find(map.columns.get(k).name(), map.columns.get(k).column().words);
    }
    settleFields();
  }

  private void settleFields() {
    for (int field : timeField) {
      mostField = Math.max(mostField, field);
    }
    for (int field : fieldOf) {
      mostField = Math.max(mostField, field);
    }
  }

  private int find(String name, String what) {
    Double number = name.startsWith("#") ? PlainNumber.of(name.substring(1)) : null;
    if (number != null && number >= 1.0 && number <= 250.0 && number == Math.rint(number)) {
      return number.intValue() - 1;
    }
    for (int f = 0; f < lines.fields(); f++) {
      if (lines.text(f).equals(name)) {
        return f;
      }
    }
    faults.add(
        lines.number(),
        1,
        "no column \"" + name + "\" (" + what + ")",
        "the columns are " + names(),
        "Change the map; a column may also be named by number, in quotes: \"#3, UNIT\".");
    return 0;
  }

  private String names() {
    var names = new StringBuilder();
    for (int f = 0; f < lines.fields() && names.length() < 200; f++) {
      names.append(f == 0 ? "" : ", ").append(lines.text(f));
    }
    return names.toString();
  }

  private void readRows() throws IOException {
    while (lines.next()) {
      if (isPassedOver()) {
        continue;
      }
      int count = lines.split();
      if (count <= mostField) {
        faults.add(
            lines.number(),
            1,
            count + (count == 1 ? " field" : " fields"),
            "must be at least " + (mostField + 1),
            lines.isLast()
                ? "The last line looks cut off: export it again."
                : "Leave a field empty where there is no value, with its separator.");
        continue;
      }
      long at = time();
      if (at == Dates.NO_TIME) {
        faults.add(
            lines.number(),
            lines.column(timeField[0]),
            "time: found " + lines.quoted(timeField[0]),
            "must be like " + (isPlain ? "2024-11-03T00:00" : pattern.toString()),
            isPlain ? "" : "Change time_format in the map.");
      } else if (rows.begin(at, lines.number(), lines.column(timeField[0]))) {
        for (int k = 0; k < fieldOf.length; k++) {
          rows.put(k, value(fieldOf[k], map.columns.get(k)));
        }
      }
    }
    if (lines.isTooLong()) {
      faults.add(lines.number(), 1, "a line without end", "must be a row of a table", "");
    }
  }

  private long time() {
    var text = new StringBuilder(lines.text(timeField[0]));
    for (int t = 1; t < timeField.length; t++) {
      text.append(' ').append(lines.text(timeField[t]));
    }
    if (!isPlain) {
      return pattern.epochMinuteBegun(text.toString());
    }
    int length = text.length();
    if (length > 0 && text.charAt(length - 1) == 'Z') {
      text.setLength(length - 1);
    }
    if (text.length() > 10 && text.charAt(10) == 'T') {
      text.setCharAt(10, ' ');
    }
    if (text.length() == 16) {
      text.append(":00");
    }
    return pattern.epochMinuteBegun(text.toString());
  }

  private double value(int field, Mapped mapped) {
    if (!lines.isNumber(field)) {
      faults.add(
          lines.number(),
          lines.column(field),
          mapped.name() + ": found " + lines.quoted(field),
          "must be a number; blank means missing",
          "Leave the field empty where there is no value.");
      return Double.NaN;
    }
    double read = lines.value();
    if (Double.isNaN(read)) {
      return Double.NaN; // blank
    }
    for (double code : map.form.missing) {
      if (read == code) {
        return Double.NaN;
      }
    }
    double value = read * mapped.factor();
    boolean isBelieved =
        switch (mapped.kind()) {
          case SHARE -> value >= -0.02 && value <= 1.1;
          case STORED -> value >= -1.0;
          default -> Math.abs(value) <= MOST_W;
        };
    if (!isBelieved) {
      strays++;
      return Double.NaN;
    }
    if (mapped.kind() == MonitorColumn.Kind.SHARE && !(value <= highestShare)) {
      highestShare = value;
    }
    return value;
  }

  private MonitorLog log() {
    int count = rows.rows();
    if (count < 2) {
      throw faults.alone(
          0,
          0,
          count + (count == 1 ? " row" : " rows") + " of values",
          "must be at least two",
          "Was the file cut off?");
    }
    int step = rows.stepMinutes();
    if (step > Dates.MINUTES_PER_HOUR) {
      throw faults.alone(
          0,
          0,
          "rows " + step + " minutes apart",
          "must be 1 to 60 minutes apart",
          "Daily sums do not say when the sun was missing.");
    }
    if (strays > count / 100 + 1) {
      throw faults.alone(
          0,
          0,
          strays + " values that cannot be",
          "charge must be 0 to 100 % of the bank, power within 1000 kW",
          "Is a unit in the map the wrong one?");
    }
    if (count >= LEAST_ROWS_OF_NO_CHARGE && highestShare <= NO_CHARGE_SHARE) {
      throw faults.alone(
          0,
          0,
          "a charge that is never above 1 %",
          "must be in percent, or as the map says",
          "Is 62 % written as 0.62? Name the column in a map with --columns MAP, as charge: NAME,"
              + " share.");
    }
    tellReading(step);
    int lead =
        switch (map.stamp) {
          case START -> 0;
          case MIDDLE -> step / 2;
          case END -> step;
        };
    Double offsetH = map.utcOffsetH;
    double clockH = isUtc ? 0.0 : offsetH == null ? siteUtcOffsetH : offsetH;
    long clockMin = Math.round(clockH * Dates.MINUTES_PER_HOUR);
    return new MonitorLog(
        rows.startMinutes(clockMin + lead),
        rows.values(map.columns, step),
        step,
        lead,
        isChargeInWh(),
        map,
        notes);
  }

  private void tellReading(int step) {
    int doubled = rows.doubled();
    if (doubled > 0) {
      notes.add(doubled + " rows of a minute that already had one are left out");
    }
    if (strays > 0) {
      notes.add(strays + " values that cannot be count as missing");
    }
    if (!notRead.isEmpty()) {
      notes.add("not read, since their names say nothing here: " + String.join(", ", notRead));
    }
    if (!isUtc && map.utcOffsetH == null) {
      notes.add("the log's clock is taken as the site's standard time, " + clock());
    }
    notes.add("rows are " + step + (step == 1 ? " minute apart" : " minutes apart"));
  }

  private String clock() {
    return Dates.clock(siteUtcOffsetH);
  }

  private boolean isChargeInWh() {
    return map.columns.stream().anyMatch(m -> m.kind() == MonitorColumn.Kind.STORED);
  }
}
