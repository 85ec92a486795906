package greyspell.weather;

import greyspell.weather.MonitorMap.Mapped;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The rows of a monitor's table as they come, their order watched. */
final class MonitorRows {
  private static final int MOST_VALUES = 20_000_000;
  private static final long LONG_LEAP_MIN = 2L * Dates.MINUTES_PER_HOUR;
  private static final long DAY_MIN = (long) Dates.HOURS_PER_DAY * Dates.MINUTES_PER_HOUR;

  private final FaultList faults;
  private final double[][] column;
  private long[] minute = new long[4096];
  private int rows;
  private int doubled;
  private int lastLine;
  private int lastColumn;

  MonitorRows(int columns, FaultList faults) {
    this.faults = faults;
    column = new double[columns][minute.length];
  }

  /**
   * A row's time, minutes on the file's clock. False for a minute that already has a row: the first
   * is kept. A time that goes back is told once, and the rows go on from it.
   *
   * @param atColumn of the time in its line
   */
  boolean begin(long at, int line, int atColumn) {
    if (rows > 0 && at == minute[rows - 1]) {
      doubled++;
      return false;
    }
    if (rows > 0 && at < minute[rows - 1]) {
      refuseOrder(at, line, atColumn);
    }
    if (rows == minute.length) {
      grow(line);
    }
    minute[rows++] = at;
    lastLine = line;
    lastColumn = atColumn;
    return true;
  }

  /** A value of the row that began last. */
  void put(int k, double value) {
    column[k][rows - 1] = value;
  }

  /** Blames the row before where this one would follow the one before that. */
  private void refuseOrder(long at, int line, int atColumn) {
    long backMin = minute[rows - 1] - at;
    String must = "each row must be later than the row before";
    if (rows > 1 && at > minute[rows - 2] && backMin > LONG_LEAP_MIN) {
      faults.add(
          lastLine,
          lastColumn,
          "time is " + HourGrid.back(backMin) + " ahead of line " + line + ", the next row",
          must,
          "Is its date wrong? Correct it, or take the row out.");
    } else {
      faults.add(
          line,
          atColumn,
          "time goes back " + HourGrid.back(backMin) + " against line " + lastLine,
          must,
          mendOrder(backMin, at));
    }
  }

  private static String mendOrder(long backMin, long at) {
    if (Math.floorMod(at, DAY_MIN) == 0 && backMin > 1200) {
      return "Midnight at the end of a day must bear the next day's date, or be 24:00 of its own.";
    }
    return backMin <= LONG_LEAP_MIN
        ? "An hour that comes twice in autumn is a sign of daylight saving: export in UTC or in"
            + " standard time."
        : "Sort the rows by time; is one of the two dates wrong?";
  }

  private void grow(int line) {
    if ((long) rows * 2 * (column.length + 1) > MOST_VALUES) {
      throw faults.alone(
          line,
          1,
          "more than " + rows + " rows",
          "must be a log of weeks or a few years",
          "Export with rows of five minutes or more.");
    }
    minute = Arrays.copyOf(minute, 2 * rows);
    for (int k = 0; k < column.length; k++) {
      column[k] = Arrays.copyOf(column[k], 2 * rows);
    }
  }

  int rows() {
    return rows;
  }

  /** Rows left out because their minute had one. */
  int doubled() {
    return doubled;
  }

  /** The middle one of the distances between rows; of at least two rows. */
  int stepMinutes() {
    var apart = new long[rows - 1];
    for (int i = 1; i < rows; i++) {
      apart[i - 1] = minute[i] - minute[i - 1];
    }
    Arrays.sort(apart);
    return (int) Math.min(apart[apart.length / 2], 1_000_000L);
  }

  /** Start of each row's interval, minutes since 1970 UTC. */
  long[] startMinutes(long aheadMinutes) {
    var start = new long[rows];
    for (int i = 0; i < rows; i++) {
      start[i] = minute[i] - aheadMinutes;
    }
    return start;
  }

  /** Energy of a row as mean power over it, all else as it was put. */
  Map<MonitorColumn, double[]> values(List<Mapped> columns, int stepMinutes) {
    var values = new EnumMap<MonitorColumn, double[]>(MonitorColumn.class);
    for (int k = 0; k < column.length; k++) {
      Mapped mapped = columns.get(k);
      double[] of = Arrays.copyOf(column[k], rows);
      if (mapped.kind() == MonitorColumn.Kind.ENERGY) {
        for (int i = 0; i < rows; i++) {
          of[i] *= Dates.MINUTES_PER_HOUR / (double) stepMinutes;
        }
      }
      values.put(mapped.column(), of);
    }
    return values;
  }
}
