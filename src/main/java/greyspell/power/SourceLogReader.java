package greyspell.power;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.SiteClock;
import greyspell.calendar.WrittenTime;
import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.Place;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Reads the hours of a second source: the one class of this room that opens a file.
 *
 * <pre>
 * local_start,source_w
 * 2017-11-01 00:00,212
 * 2017-11-01 01:00,198
 * </pre>
 *
 * Comma-separated, UTF-8, one header line; empty lines and lines that begin with # are skipped, but
 * that a line {@code # utc_offset: 1} above the header must state the site's clock where times are
 * local; other columns ignored. {@code source_w} is the mean power of the hour in watts, 0 or more;
 * an empty value or an absent row is a gap. One time column: {@code local_start}, {@code local_end}
 * (local standard time, no daylight saving), {@code utc_start} or {@code utc_end}; a T may stand
 * between date and time, seconds 00 are allowed, 24:00 is midnight at the end of the day, a Z may
 * end a UTC time. Times rise and lie on whole local hours. Without a time column the rows are the
 * hours of a year from 1 January 00:00 and there are 8760 or 8784 of them.
 */
public final class SourceLogReader {
  private static final List<String> TIME_COLUMNS =
      List.of("local_start", "local_end", "utc_start", "utc_end");
  private static final String VALUE_COLUMN = "source_w";
  private static final int MOST_FAULTS = 20;
  private static final int MINUTES_IN_HOUR = 60;
  private static final long LARGEST_BYTES = 200_000_000L; // a hundred years of long lines
  private static final int MOST_HOURS = 100 * 366 * 24;
  private static final double MOST_W = 1e9;
  private static final int COMMON_YEAR_H = 365 * 24;
  private static final int LEAP_YEAR_H = 366 * 24;
  private static final int A_LEAP_YEAR = 2000;

  private final String file;
  private final double utcOffsetH;
  private final List<Fault> faults = new ArrayList<>();
  private final List<String> cells = new ArrayList<>();
  private final List<Integer> columns = new ArrayList<>();

  private int timeColumn = -1;
  private int valueColumn = -1;
  private String timeName = "";
  private final SiteClock clock;

  private int rows;
  private long[] hour = new long[1024];
  private double[] value = new double[1024];

  private SourceLogReader(String file, double utcOffsetH) {
    this.file = file;
    this.utcOffsetH = utcOffsetH;
    clock = new SiteClock(utcOffsetH);
  }

  /**
   * Reads a file.
   *
   * @param shown name of the file in messages
   * @param utcOffsetH of the site's standard time, for UTC columns
   * @throws BadInput with every fault's line and column
   */
  public static SourceLog read(Path path, String shown, double utcOffsetH) {
    try {
      if (Files.size(path) > LARGEST_BYTES) {
        throw BadInput.of(
            Place.of(shown),
            "a file of more than " + LARGEST_BYTES / 1_000_000 + " MB",
            "must be a CSV file with one row an hour",
            "");
      }
      try (BufferedReader text = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
        return new SourceLogReader(shown, utcOffsetH).parse(text);
      }
    } catch (IOException e) {
      BadInput bad =
          BadInput.of(
              Place.of(shown),
              FileTrouble.words(e),
              "must be a readable CSV file of hourly watts",
              "Check the path; it is taken from the scenario file's folder.");
      bad.initCause(e);
      throw bad;
    }
  }

  static SourceLog parse(String text, String shown, double utcOffsetH) {
    try {
      return new SourceLogReader(shown, utcOffsetH).parse(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private SourceLog parse(Reader source) throws IOException {
    var text = new BufferedReader(source);
    int number = 0;
    boolean hasHeader = false;
    for (String line = text.readLine(); line != null; line = text.readLine()) {
      number++;
      String plain = number == 1 && line.startsWith("\uFEFF") ? line.substring(1) : line;
      if (plain.isBlank() || plain.stripLeading().startsWith("#")) {
        if (!hasHeader) {
          clock.remark(plain, file, number, faults);
        }
        continue;
      }
      split(plain);
      if (hasHeader) {
        row(number);
      } else {
        hasHeader = true;
        header(number);
      }
      if (faults.size() >= MOST_FAULTS || valueColumn < 0) {
        break;
      }
    }
    if (!hasHeader) {
      fault(0, 0, "an empty file", "must begin with a header line", EXAMPLE);
    }
    throwIfAny();
    return log();
  }

  private static final String EXAMPLE =
      "Write for example \"local_start,source_w\", cells parted by commas.";

  private void split(String line) {
    cells.clear();
    columns.clear();
    int from = 0;
    while (from <= line.length()) {
      int to = line.indexOf(',', from);
      to = to < 0 ? line.length() : to;
      String cell = line.substring(from, to).strip();
      if (cell.length() >= 2 && cell.startsWith("\"") && cell.endsWith("\"")) {
        cell = cell.substring(1, cell.length() - 1).strip();
      }
      cells.add(cell);
      columns.add(from + 1);
      from = to + 1;
    }
  }

  private void header(int number) {
    for (int i = 0; i < cells.size(); i++) {
      String name = cells.get(i).toLowerCase(Locale.ROOT);
      if (TIME_COLUMNS.contains(name) && timeColumn < 0) {
        timeColumn = i;
        timeName = name;
      } else if (name.equals(VALUE_COLUMN) && valueColumn < 0) {
        valueColumn = i;
      }
    }
    clock.header(!timeName.startsWith("utc"), faults);
    if (valueColumn < 0) {
      fault(
          number,
          1,
          "found the columns \"" + shorten(String.join(", ", cells)) + "\"",
          "one must be " + VALUE_COLUMN + ", the mean power of the hour in watts",
          EXAMPLE);
    }
  }

  private void row(int number) {
    int needed = Math.max(timeColumn, valueColumn) + 1;
    if (cells.size() < needed) {
      fault(
          number,
          1,
          "found " + cells.size() + (cells.size() == 1 ? " cell" : " cells"),
          "must have at least " + needed,
          "Was the file cut off?");
      return;
    }
    long at = rows;
    if (timeColumn >= 0) {
      at = time(number);
      if (at == WrittenTime.WRONG) {
        return;
      }
    }
    double watts = watts(number);
    if (watts < 0.0) {
      return;
    }
    if (rows == hour.length) {
      hour = Arrays.copyOf(hour, 2 * rows);
      value = Arrays.copyOf(value, 2 * rows);
    }
    hour[rows] = at;
    value[rows++] = watts;
  }

  /** Hours since 1970 in local standard time, or {@link WrittenTime#WRONG} after a fault. */
  private long time(int number) {
    String text = cells.get(timeColumn);
    int column = columns.get(timeColumn);
    long minute = WrittenTime.minute(text, timeName.startsWith("utc"));
    if (minute == WrittenTime.WRONG) {
      fault(
          number,
          column,
          timeName + ": found \"" + shorten(text) + "\"",
          "must be a time such as 2017-11-01 00:00",
          "");
      return WrittenTime.WRONG;
    }
    if (timeName.startsWith("utc")) {
      minute += Math.round(utcOffsetH * MINUTES_IN_HOUR);
    }
    if (Math.floorMod(minute, (long) MINUTES_IN_HOUR) != 0) {
      fault(
          number,
          column,
          timeName + ": found \"" + shorten(text) + "\"",
          "must lie on a whole hour of local standard time",
          "Give the mean power of each hour, one row an hour.");
      return WrittenTime.WRONG;
    }
    long at = Math.floorDiv(minute, (long) MINUTES_IN_HOUR) - (timeName.endsWith("_end") ? 1 : 0);
    if (rows > 0 && at <= hour[rows - 1]) {
      fault(
          number,
          column,
          timeName + ": found \"" + shorten(text) + "\" after a later or equal time",
          "times must rise",
          "A clock with daylight saving repeats an hour in autumn: use standard time or UTC.");
      return WrittenTime.WRONG;
    }
    if (rows > 0 && at - hour[0] >= MOST_HOURS) {
      fault(
          number,
          column,
          timeName + ": found \"" + shorten(text) + "\", more than 100 years after the first",
          "must be within 100 years",
          "Is a year mistyped?");
      return WrittenTime.WRONG;
    }
    return at;
  }

  /** NaN for a gap, below zero after a fault. */
  private double watts(int number) {
    String text = cells.get(valueColumn);
    if (text.isEmpty()) {
      return Double.NaN;
    }
    double watts = number(text);
    if (watts >= 0.0 && watts <= MOST_W) {
      return watts;
    }
    fault(
        number,
        columns.get(valueColumn),
        VALUE_COLUMN + ": found \"" + shorten(text) + "\"",
        "must be watts, 0 or more",
        "Leave the cell empty where nothing was measured.");
    return -1.0;
  }

  private SourceLog log() {
    int known = 0;
    for (int i = 0; i < rows; i++) {
      known += Double.isNaN(value[i]) ? 0 : 1;
    }
    if (known == 0) {
      fault(0, 0, "no value in " + rows + " rows", VALUE_COLUMN + " must hold values", "");
    }
    if (timeColumn < 0 && rows != COMMON_YEAR_H && rows != LEAP_YEAR_H) {
      fault(
          0,
          0,
          rows + " rows without a time column",
          "must be the " + COMMON_YEAR_H + " or " + LEAP_YEAR_H + " hours of a year",
          "Or add a column local_start.");
    }
    throwIfAny();
    long first = hour[0];
    if (timeColumn < 0) {
      int year = rows == LEAP_YEAR_H ? A_LEAP_YEAR : HourCalendar.TYPICAL_YEAR;
      return SourceLog.of(LocalDate.of(year, 1, 1).toEpochDay() * 24L, Arrays.copyOf(value, rows));
    }
    var powerW = new double[(int) (hour[rows - 1] - first) + 1];
    Arrays.fill(powerW, Double.NaN);
    for (int i = 0; i < rows; i++) {
      powerW[(int) (hour[i] - first)] = value[i];
    }
    return SourceLog.of(first, powerW);
  }

  private void fault(int line, int column, String found, String expected, String mend) {
    faults.add(new Fault(new Place(file, line, column), found, expected, mend));
  }

  private void throwIfAny() {
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
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
