package greyspell.weather;

import greyspell.quantity.FileTrouble;
import greyspell.weather.MonitorMap.Mapped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
  private static final double MOST_W = 1e6;

  /** In a log of a day or more no bank stays there. */
  private static final double NO_CHARGE_SHARE = 0.0101;

  private final Lines lines;
  private final FaultList faults;
  private final double siteUtcOffsetH;
  private final List<String> notes = new ArrayList<>();
  private final MonitorMap map;
  private final MonitorHead head;
  private MonitorRows rows;
  private int strays;
  private double highestShare = Double.NaN;

  private MonitorReader(
      Lines lines, FaultList faults, @Nullable MonitorMap stated, double siteUtcOffsetH) {
    this.lines = lines;
    this.faults = faults;
    map = stated == null ? MonitorMap.empty(faults) : stated;
    head = new MonitorHead(lines, faults, map, stated == null);
    rows = new MonitorRows(0, faults);
    this.siteUtcOffsetH = siteUtcOffsetH;
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
      var reader = new MonitorReader(lines, faults, map, siteUtcOffsetH);
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
    head.read();
    faults.throwIfAny();
    rows = new MonitorRows(map.columns.size(), faults);
    readRows();
    faults.throwIfAny();
    return log();
  }

  private void readRows() throws IOException {
    while (lines.next()) {
      if (head.isPassedOver()) {
        continue;
      }
      int count = lines.split();
      if (count <= head.mostField) {
        faults.add(
            lines.number(),
            1,
            count + (count == 1 ? " field" : " fields"),
            "must be at least " + (head.mostField + 1),
            lines.isLast()
                ? "The last line looks cut off: export it again."
                : "Leave a field empty where there is no value, with its separator.");
        continue;
      }
      long at = time();
      if (at == Dates.NO_TIME) {
        faults.add(
            lines.number(),
            lines.column(head.timeField[0]),
            "time: found " + lines.quoted(head.timeField[0]),
            "must be like " + (head.isPlain ? "2024-11-03T00:00" : head.pattern.toString()),
            head.isPlain ? "" : "Change time_format in the map.");
      } else if (rows.begin(at, lines.number(), lines.column(head.timeField[0]))) {
        for (int k = 0; k < head.fieldOf.length; k++) {
          rows.put(k, value(head.fieldOf[k], map.columns.get(k)));
        }
      }
    }
    if (lines.isTooLong()) {
      faults.add(lines.number(), 1, "a line without end", "must be a row of a table", "");
    }
  }

  private long time() {
    var text = new StringBuilder(lines.text(head.timeField[0]));
    for (int t = 1; t < head.timeField.length; t++) {
      text.append(' ').append(lines.text(head.timeField[t]));
    }
    if (!head.isPlain) {
      return head.pattern.epochMinuteBegun(text.toString());
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
    return head.pattern.epochMinuteBegun(text.toString());
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
    boolean isADay = (long) count * step >= Dates.HOURS_PER_DAY * Dates.MINUTES_PER_HOUR;
    if (isADay && highestShare <= NO_CHARGE_SHARE) {
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
    double clockH = head.isUtc ? 0.0 : offsetH == null ? siteUtcOffsetH : offsetH;
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
    if (!head.notRead.isEmpty()) {
      notes.add("not read, since their names say nothing here: " + String.join(", ", head.notRead));
    }
    if (!head.isUtc && map.utcOffsetH == null) {
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
