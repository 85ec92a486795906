package greyspell.load;

import greyspell.calendar.SiteClock;
import greyspell.calendar.WrittenTime;
import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.quantity.Place;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Reads a measured log of consumption: the one class of this room that opens a file.
 *
 * <pre>
 * local_start,load_wh
 * 2017-11-01 00:00,212
 * 2017-11-01 00:30,198
 * </pre>
 *
 * Comma-separated, UTF-8, one header line; empty lines and lines that begin with # are skipped, but
 * that a line {@code # utc_offset: 1} above the header must state the site's clock where times are
 * local; other columns ignored. One time column: {@code local_start}, {@code local_end} (local
 * standard time, or with {@link LogZone} a clock with daylight saving), {@code utc_start} or {@code
 * utc_end}; {@code 2017-11-01 00:30} or {@code 2017-11-01T00:30}, seconds 00 allowed, 24:00 is
 * midnight at the end of the day, a Z may end a UTC time. One value column: {@code load_wh} or
 * {@code load_kwh} (energy of the step) or {@code load_w} (mean power). The step is the smallest
 * distance between neighbouring rows, 1 to 60 minutes; times rise and lie on the step; an absent
 * row or an empty value is a hole, which {@link LoadLog} fills.
 */
public final class LoadLogReader {
  private static final List<String> TIME_COLUMNS =
      List.of("local_start", "local_end", "utc_start", "utc_end");
  private static final List<String> VALUE_COLUMNS = List.of("load_wh", "load_kwh", "load_w");

  private final String file;
  private final double utcOffsetH;
  private final @Nullable LogZone zone;
  private final List<Fault> faults = new ArrayList<>();
  private int timeColumn = -1;
  private int valueColumn = -1;
  private String timeName = "";
  private String valueName = "";
  private final SiteClock clock;

  private final LogRows rows;

  private LoadLogReader(String file, double utcOffsetH, @Nullable LogZone zone) {
    this.file = file;
    this.utcOffsetH = utcOffsetH;
    clock = new SiteClock(utcOffsetH);
    this.zone = zone;
    rows = new LogRows(file, faults);
  }

  /** As the plan describes it; its file is the path. */
  public static LoadLog read(LogSpec spec, double utcOffsetH) {
    return whole(readRecord(spec, utcOffsetH), spec.file());
  }

  /** What the meter wrote, holes left in. */
  public static LoadRecord readRecord(LogSpec spec, double utcOffsetH) {
    return readRecord(Path.of(spec.file()), spec.file(), utcOffsetH, zone(spec, utcOffsetH));
  }

  /** Null for standard time. */
  private static @Nullable LogZone zone(LogSpec spec, double utcOffsetH) {
    String zone = spec.zone();
    return spec.clock() == LogClock.LOCAL && zone != null ? LogZone.find(zone, utcOffsetH) : null;
  }

  /** Whether a clock with daylight saving is known by this name. */
  public static boolean isZone(String zone) {
    return LogZone.find(zone, 0.0) != null;
  }

  /**
   * Reads and makes whole.
   *
   * @param path of the file
   * @param shown name of the file in messages
   * @param utcOffsetH of the site's standard time, for UTC columns
   */
  public static LoadLog read(Path path, String shown, double utcOffsetH) {
    return whole(readRecord(path, shown, utcOffsetH), shown);
  }

  private static LoadLog whole(LoadRecord record, String shown) {
    String why = LoadLog.whyNot(record);
    if (!why.isEmpty()) {
      throw BadInput.of(
          Place.of(shown),
          why,
          "must hold at least 7 whole days, half of their hours measured",
          "Measure longer, or describe the house by its appliances.");
    }
    return LoadLog.of(record);
  }

  /** Reads what the meter wrote, holes left in. */
  public static LoadRecord readRecord(Path path, String shown, double utcOffsetH) {
    return readRecord(path, shown, utcOffsetH, null);
  }

  private static LoadRecord readRecord(
      Path path, String shown, double utcOffsetH, @Nullable LogZone zone) {
    var reader = new LoadLogReader(shown, utcOffsetH, zone);
    try (BufferedReader text = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
      return reader.parse(text);
    } catch (NoSuchFileException e) {
      throw unreadable(shown, "no such file", e);
    } catch (CharacterCodingException e) {
      throw unreadable(shown, "not UTF-8 text", e);
    } catch (IOException e) {
      throw unreadable(shown, "cannot be read", e);
    }
  }

  static LoadRecord parse(String text, String shown, double utcOffsetH) {
    try {
      return new LoadLogReader(shown, utcOffsetH, null).parse(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static LoadRecord parse(String text, String shown, double utcOffsetH, String zone) {
    try {
      return new LoadLogReader(shown, utcOffsetH, LogZone.find(zone, utcOffsetH))
          .parse(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BadInput unreadable(String shown, String what, IOException cause) {
    BadInput bad =
        BadInput.of(
            Place.of(shown),
            what,
            "must be a readable CSV file of consumption",
            "Check the path; it is taken from the scenario file's folder.");
    bad.initCause(cause);
    return bad;
  }

  private LoadRecord parse(Reader text) throws IOException {
    var cells = new ArrayList<String>();
    var columns = new ArrayList<Integer>();
    boolean hasHeader = false;
    int number = 0;
    var lines = new LogLines(text);
    while (lines.next()) {
      number++;
      if (lines.isTooLong()) {
        faults.add(
            new Fault(
                new Place(file, number, 1),
                "a line of more than " + LogLines.LONGEST + " characters",
                "must be a CSV file with one row a line",
                ""));
        break;
      }
      if (lines.isBlankOrComment()) {
        if (!hasHeader) {
          clock.remark(lines.text(), file, number, faults);
        }
        continue;
      }
      lines.split(cells, columns);
      if (!hasHeader) {
        hasHeader = true;
        header(cells, number);
      } else {
        row(cells, columns, number);
      }
      if (faults.size() >= LogRows.MOST_FAULTS || timeColumn < 0 || valueColumn < 0) {
        break;
      }
    }
    if (faults.isEmpty() && !hasHeader) {
      throw BadInput.of(
          Place.of(file), "an empty file", "must begin with a header line", headerExample());
    }
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    return rows.record(timeName, valueName, utcOffsetH);
  }

  private void header(List<String> cells, int number) {
    for (int i = 0; i < cells.size(); i++) {
      String name = cells.get(i).toLowerCase(Locale.ROOT);
      if (TIME_COLUMNS.contains(name) && timeColumn < 0) {
        timeColumn = i;
        timeName = name;
      } else if (VALUE_COLUMNS.contains(name) && valueColumn < 0) {
        valueColumn = i;
        valueName = name;
      }
    }
    clock.header(timeName.startsWith("local"), faults);
    String found = "found the columns \"" + shorten(String.join(", ", cells)) + "\"";
    if (timeColumn < 0) {
      faults.add(
          new Fault(
              new Place(file, number, 1),
              found,
              "one must be " + String.join(", ", TIME_COLUMNS),
              headerExample()));
    }
    if (valueColumn < 0) {
      faults.add(
          new Fault(
              new Place(file, number, 1),
              found,
              "one must be " + String.join(", ", VALUE_COLUMNS),
              headerExample()));
    }
  }

  private static String headerExample() {
    return "Write for example \"local_start,load_wh\", cells parted by commas.";
  }

  private void row(List<String> cells, List<Integer> columns, int number) {
    int needed = Math.max(timeColumn, valueColumn) + 1;
    if (cells.size() < needed) {
      faults.add(
          new Fault(
              new Place(file, number, 1),
              "found " + cells.size() + " cells",
              "must have at least " + needed,
              "Was the file cut off?"));
      return;
    }
    String timeText = cells.get(timeColumn);
    long at = WrittenTime.minute(timeText, timeName.startsWith("utc"));
    if (at == WrittenTime.WRONG) {
      faults.add(
          new Fault(
              new Place(file, number, columns.get(timeColumn)),
              timeName + ": found \"" + shorten(timeText) + "\"",
              "must be a time such as 2017-11-01 00:30",
              ""));
      return;
    }
    String valueText = cells.get(valueColumn);
    if (zone != null && !timeName.startsWith("utc")) {
      at = zone.standardMinute(at, rows.lastMinute());
      if (at == LogZone.SKIPPED) {
        refuseSkipped(timeText, valueText, columns.get(timeColumn), number);
        return;
      }
    }
    if (at <= rows.lastMinute()) {
      faults.add(
          new Fault(
              new Place(file, number, columns.get(timeColumn)),
              timeName + ": found \"" + shorten(timeText) + "\" after a later or equal time",
              "times must rise",
              "A clock with daylight saving repeats an hour in autumn: write \"clock: local\" and its zone."));
      return;
    }
    double amount = Double.NaN;
    if (!valueText.isEmpty()) {
      amount = number(valueText);
      if (!(amount >= 0.0 && amount <= 1e12)) {
        faults.add(
            new Fault(
                new Place(file, number, columns.get(valueColumn)),
                valueName + ": found \"" + shorten(valueText) + "\"",
                "must be a number, 0 or more",
                "Leave the cell empty where nothing was measured."));
        return;
      }
    }
    rows.add(at, amount, number);
  }

  /** Rows without a value or with 0 in the hour that is left out are a meter's own filling. */
  private void refuseSkipped(String timeText, String valueText, int column, int number) {
    if (valueText.isEmpty() || number(valueText) == 0.0) {
      return;
    }
    faults.add(
        new Fault(
            new Place(file, number, column),
            timeName + ": found \"" + shorten(timeText) + "\"",
            "must be a time that the clock shows: in spring it leaves this hour out",
            "The log seems to run on standard time the whole year: leave \"clock: local\" out."));
  }

  private static double number(String text) {
    char last = text.charAt(text.length() - 1);
    if (!(last >= '0' && last <= '9') && last != '.') {
      return Double.NaN; // parseDouble would take "1d" and "NaN"
    }
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  private static String shorten(String text) {
    return text.length() <= 60 ? text : text.substring(0, 57) + "...";
  }
}
