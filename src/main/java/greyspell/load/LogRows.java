package greyspell.load;

import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.quantity.Place;
import java.util.Arrays;
import java.util.List;

/** The rows of a log as they are read, and the steps that they make. */
final class LogRows {
  static final int MOST_FAULTS = 20;
  private static final int MINUTES_IN_HOUR = 60;
  private static final long LONGEST_SPAN_MINUTES = 100L * 366 * 24 * MINUTES_IN_HOUR;
  private static final double WH_PER_KWH = 1000.0;

  private final String file;
  private final List<Fault> faults;
  private int rows;
  private long[] minute = new long[1024];
  private double[] value = new double[1024];
  private int[] line = new int[1024];

  LogRows(String file, List<Fault> faults) {
    this.file = file;
    this.faults = faults;
  }

  /** Of the last row; before every time if there is none. */
  long lastMinute() {
    return rows == 0 ? Long.MIN_VALUE : minute[rows - 1];
  }

  void add(long at, double amount, int number) {
    if (rows == minute.length) {
      minute = Arrays.copyOf(minute, 2 * rows);
      value = Arrays.copyOf(value, 2 * rows);
      line = Arrays.copyOf(line, 2 * rows);
    }
    minute[rows] = at;
    value[rows] = amount;
    line[rows] = number;
    rows++;
  }

  /** Checks the steps and counts them in Wh of standard time. */
  LoadRecord record(String timeName, String valueName, double utcOffsetH) {
    if (rows < 2) {
      throw BadInput.of(
          Place.of(file),
          rows + " rows of values",
          "must be at least two",
          "Was the file cut off?");
    }
    long step = Long.MAX_VALUE;
    for (int i = 1; i < rows; i++) {
      step = Math.min(step, minute[i] - minute[i - 1]);
    }
    if (step > MINUTES_IN_HOUR) {
      throw BadInput.of(
          new Place(file, line[1], 1),
          "rows " + step + " minutes apart",
          "must be 1 to 60 minutes apart",
          "Daily or monthly meter readings do not say when the power was used.");
    }
    if (minute[rows - 1] - minute[0] > LONGEST_SPAN_MINUTES) {
      throw BadInput.of(
          new Place(file, line[rows - 1], 1),
          "times more than 100 years apart",
          "must be within 100 years",
          "Is a year mistyped?");
    }
    for (int i = 1; i < rows && faults.size() < MOST_FAULTS; i++) {
      if ((minute[i] - minute[i - 1]) % step != 0) {
        faults.add(
            new Fault(
                new Place(file, line[i], 1),
                minute[i] - minute[i - 1] + " minutes after the row before",
                "must be a multiple of the step, which is " + step + " minutes",
                ""));
      }
    }
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    return measured((int) step, timeName, valueName, utcOffsetH);
  }

  private LoadRecord measured(int step, String timeName, String valueName, double utcOffsetH) {
    long shift = timeName.endsWith("_end") ? -step : 0;
    if (timeName.startsWith("utc")) {
      shift += Math.round(utcOffsetH * MINUTES_IN_HOUR);
    }
    double whPerUnit =
        switch (valueName) {
          case "load_kwh" -> WH_PER_KWH;
          case "load_w" -> (double) step / MINUTES_IN_HOUR;
          default -> 1.0;
        };
    var starts = new long[rows];
    var wh = new double[rows];
    int kept = 0;
    for (int i = 0; i < rows; i++) {
      if (!Double.isNaN(value[i])) {
        starts[kept] = minute[i] + shift;
        wh[kept] = value[i] * whPerUnit;
        kept++;
      }
    }
    if (kept == 0) {
      throw BadInput.of(
          Place.of(file), "no value in " + rows + " rows", valueName + " must hold values", "");
    }
    return new LoadRecord(Arrays.copyOf(starts, kept), Arrays.copyOf(wh, kept), step);
  }
}
