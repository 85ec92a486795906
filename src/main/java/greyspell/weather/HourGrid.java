package greyspell.weather;

import greyspell.calendar.HourCalendar;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Places the rows of a file, each the mean of an interval of real time, onto the hours of whole
 * calendar years on the site's clock.
 *
 * <p>The length of an interval is the smallest distance between the first rows; it must divide the
 * hour. Shorter ones are averaged; an hour is known when at least {@value #ENOUGH_PERCENT} % of it
 * is. The clock moves by whole intervals: what is then left of the site's UTC offset stays.
 */
final class HourGrid {
  static final int ENOUGH_PERCENT = 75;

  /** Rows looked at before the interval is believed: a missing second row must not mislead. */
  private static final long MINUTES_PER_DAY = 1440;

  private static final int ROWS_TO_SETTLE = 200;

  private static final int MOST_YEARS = 120;
  private static final int USUAL_HOURS = 3 * 366 * 24;

  private final FaultList faults;
  private final WeatherColumn[] used;
  private final boolean stampsAreEnds;
  private final int siteOffsetMin;

  private final long[] waitingStamps = new long[ROWS_TO_SETTLE];
  private final int[] waitingLines = new int[ROWS_TO_SETTLE];
  private final double[][] waitingValues;
  private int waiting;

  private long previousStamp = Long.MIN_VALUE;
  private int previousLine;
  private boolean isOneFile = true;
  private int statedMin;
  private int stepMin;
  private long firstStamp;
  private int clockMin;
  private long firstHour;
  private int hours;
  private int firstYear;
  private double[][] sums;
  private byte[][] counts;
  private int[] lineOfHour = new int[USUAL_HOURS];

  private boolean isFileOrderTold;

  HourGrid(List<WeatherColumn> used, boolean stampsAreEnds, int siteOffsetMin, FaultList faults) {
    this.used = used.toArray(new WeatherColumn[0]);
    this.stampsAreEnds = stampsAreEnds;
    this.siteOffsetMin = siteOffsetMin;
    this.faults = faults;
    waitingValues = new double[ROWS_TO_SETTLE][used.size()];
    sums = new double[used.size()][USUAL_HOURS];
    counts = new byte[used.size()][USUAL_HOURS];
  }

  /**
   * Takes a row.
   *
   * @param stampMin minutes since 1970 UTC
   * @param values in the order of the used columns, NaN where missing; not kept
   */
  void add(int line, long stampMin, double[] values) {
    if (stampMin <= previousStamp) {
      refuseOrder(line, stampMin);
      return;
    }
    if (stepMin > 0) {
      if (Math.floorMod(stampMin - firstStamp, (long) stepMin) != 0) {
        faults.add(
            line,
            1,
            "time " + (stampMin - previousStamp) + " minutes after the row before",
            "rows must be " + stepMin + " minutes apart, as at the beginning of the file",
            "Use one interval for the whole file.");
        return;
      }
      previousStamp = stampMin;
      previousLine = line;
      place(line, stampMin, values);
      return;
    }
    previousStamp = stampMin;
    previousLine = line;
    waitingStamps[waiting] = stampMin;
    waitingLines[waiting] = line;
    System.arraycopy(values, 0, waitingValues[waiting], 0, used.length);
    waiting++;
    if (waiting == ROWS_TO_SETTLE) {
      settle();
    }
  }

  private void refuseOrder(int line, long stampMin) {
    if (previousLine == 0) { // files in the wrong order: every row of this one would be told
      if (isFileOrderTold) {
        return;
      }
      isFileOrderTold = true;
    }
    boolean isSame = stampMin == previousStamp;
    String previous = previousLine == 0 ? "the end of the file before" : "line " + previousLine;
    faults.add(
        line,
        1,
        isSame
            ? "the same time as " + previous
            : "time goes back " + back(previousStamp - stampMin) + " against " + previous,
        "each row must be later than the row before",
        isSame || previousStamp - stampMin < 120
            ? "An hour that comes twice in autumn is a sign of daylight saving: export in UTC or in"
                + " standard time."
            : previousLine == 0
                ? "Name the files in the order of their times, each once."
                : "Sort the rows by time and drop doubles.");
  }

  /** A distance of two times in words. */
  static String back(long minutes) {
    return minutes < 60 * MINUTES_PER_DAY
        ? minutes + " minutes"
        : minutes / MINUTES_PER_DAY + " days";
  }

  /** The length of an interval where something outside the file states it. */
  void expectMinutes(int minutes) {
    statedMin = minutes;
  }

  private void settle() {
    int step = Dates.MINUTES_PER_HOUR;
    if (waiting > 1) {
      long least = Long.MAX_VALUE;
      int at = 1;
      for (int i = 1; i < waiting; i++) {
        if (waitingStamps[i] - waitingStamps[i - 1] < least) {
          least = waitingStamps[i] - waitingStamps[i - 1];
          at = i;
        }
      }
      if (least > Dates.MINUTES_PER_HOUR || Dates.MINUTES_PER_HOUR % least != 0) {
        throw faults.alone(
            waitingLines[at],
            1,
            "rows are " + least + " minutes apart",
            "must be 60 minutes, or 1, 2, 3, 4, 5, 6, 10, 12, 15, 20 or 30",
            "Daily or three-hourly values cannot be used as hours.");
      }
      step = (int) least;
      if (statedMin > 0 && step != statedMin) {
        throw faults.alone(
            waitingLines[at],
            1,
            "rows are " + step + " minutes apart",
            "must be " + statedMin + " minutes, as the column map says (60 if it says nothing)",
            "Write minutes: " + step + " in the map.");
      }
    }
    stepMin = step;
    firstStamp = waitingStamps[0];
    long start = stampsAreEnds ? firstStamp - stepMin : firstStamp;
    int rest = (int) Math.floorMod(start + siteOffsetMin, (long) stepMin);
    if (rest * 2 > stepMin) {
      rest -= stepMin;
    }
    clockMin = siteOffsetMin - rest;
    firstHour = Math.floorDiv(start + clockMin, (long) Dates.MINUTES_PER_HOUR);
    int settled = waiting;
    waiting = 0;
    for (int i = 0; i < settled; i++) {
      if (Math.floorMod(waitingStamps[i] - firstStamp, (long) stepMin) != 0) {
        faults.add(
            waitingLines[i],
            1,
            "time "
                + (waitingStamps[i] - waitingStamps[Math.max(0, i - 1)])
                + " minutes after the row before",
            "rows must be " + stepMin + " minutes apart",
            "Use one interval for the whole file.");
      } else {
        place(waitingLines[i], waitingStamps[i], waitingValues[i]);
      }
    }
  }

  private void place(int line, long stampMin, double[] values) {
    long start = stampsAreEnds ? stampMin - stepMin : stampMin;
    long hour = Math.floorDiv(start + clockMin, (long) Dates.MINUTES_PER_HOUR) - firstHour;
    if (hour >= (long) MOST_YEARS * 366 * Dates.HOURS_PER_DAY) {
      throw faults.alone(
          line,
          1,
          "time more than " + MOST_YEARS + " years after the first row",
          "a file may span " + MOST_YEARS + " years",
          "Correct the year.");
    }
    int at = (int) hour;
    if (at >= lineOfHour.length) {
      grow(at);
    }
    for (int k = 0; k < used.length; k++) {
      double value = values[k];
      if (!Double.isNaN(value)) {
        sums[k][at] += value;
        counts[k][at]++;
      }
    }
    lineOfHour[at] = line;
    hours = at + 1;
  }

  private void grow(int at) {
    int size = Math.max(at + 1, lineOfHour.length * 2);
    lineOfHour = Arrays.copyOf(lineOfHour, size);
    for (int k = 0; k < used.length; k++) {
      sums[k] = Arrays.copyOf(sums[k], size);
      counts[k] = Arrays.copyOf(counts[k], size);
    }
  }

  /** The rows that follow stand in another file. */
  void nextFile() {
    isOneFile = false;
    previousLine = 0;
  }

  /**
   * Ends the reading: whole years, gaps filled.
   *
   * @param told the source as the file's head tells it
   */
  WeatherSeries series(WeatherSource told, boolean isTypicalYear, List<String> notes) {
    if (stepMin == 0) {
      if (waiting == 0) {
        faults.add("no rows under the header", "must hold at least one whole year of hours", "");
        faults.throwIfAny();
      }
      settle();
    }
    faults.throwIfAny();
    double offsetH = clockMin / (double) Dates.MINUTES_PER_HOUR;
    tellClock(offsetH, notes);
    HourCalendar calendar = wholeYears(isTypicalYear, offsetH, notes);
    long start = yearStart(firstYear) - firstHour;
    double[][] columns = new double[WeatherColumn.COUNT][];
    Arrays.fill(columns, new double[0]);
    int enough = enough();
    for (int k = 0; k < used.length; k++) {
      columns[used[k].slot] = hourly(k, (int) start, calendar.hours(), enough);
    }
    int[] lines = new int[calendar.hours()];
    for (int h = 0; h < lines.length && isOneFile; h++) {
      long from = start + h;
      lines[h] = from >= 0 && from < hours ? lineOfHour[(int) from] : 0;
    }
    var source =
        new WeatherSource(
            told.file(),
            told.format(),
            told.place(),
            told.latitudeDeg(),
            told.longitudeDeg(),
            told.elevationM(),
            offsetH);
    return new GapFiller(calendar, source, columns, lines, notes, faults).series();
  }

  private int enough() {
    int steps = Dates.MINUTES_PER_HOUR / stepMin;
    return (steps * ENOUGH_PERCENT + 99) / 100;
  }

  private double[] hourly(int k, int start, int length, int enough) {
    var values = new double[length];
    double[] sum = sums[k];
    byte[] count = counts[k];
    for (int h = 0; h < length; h++) {
      int from = start + h;
      values[h] =
          from >= 0 && from < hours && count[from] >= enough ? sum[from] / count[from] : Double.NaN;
    }
    return values;
  }

  private void tellClock(double offsetH, List<String> notes) {
    if (clockMin != siteOffsetMin) {
      notes.add(
          "clock: the hours of the file begin at other minutes than the site's ("
              + Dates.clock(siteOffsetMin / (double) Dates.MINUTES_PER_HOUR)
              + "); the series keeps them, on "
              + Dates.clock(offsetH));
    }
    if (stepMin < Dates.MINUTES_PER_HOUR) {
      notes.add(
          "rows are "
              + stepMin
              + " minutes apart: averaged to hours, of which at least "
              + ENOUGH_PERCENT
              + " % must have a value");
    }
  }

  /**
   * The years that the file covers. A first or last year whose rows begin late or end early by more
   * than can be filled is left out.
   */
  private HourCalendar wholeYears(boolean isTypical, double offsetH, List<String> notes) {
    int first = firstHourWithValue();
    int last = lastHourWithValue();
    if (first > last) {
      throw faults.alone(0, 0, "no row has a value", "must hold at least one whole year", "");
    }
    long from = firstHour + first;
    long to = firstHour + last + 1;
    int fromYear = yearOf(from);
    int toYear = yearOf(to - 1);
    var leftOut = new ArrayList<String>();
    if (from - yearStart(fromYear) > GapFiller.DAYS_H) {
      leftOut.add(fromYear + " left out: not whole, the rows begin at " + Dates.text(from));
      fromYear++;
    }
    if (yearStart(toYear + 1) - to > GapFiller.DAYS_H && toYear >= fromYear) {
      leftOut.add(toYear + " left out: not whole, the rows end at " + Dates.text(to));
      toYear--;
    }
    if (toYear < fromYear) {
      throw faults.alone(
          0,
          0,
          "no whole calendar year: the rows run from "
              + Dates.text(from)
              + " to "
              + Dates.text(to)
              + " ("
              + Dates.clock(offsetH)
              + ")",
          "needed is at least one year from 1 January to 31 December",
          "Name all files that follow each other, or export again what is cut off.");
    }
    notes.addAll(leftOut);
    firstYear = fromYear;
    if (isTypical) {
      if (fromYear != toYear || Dates.isLeap(fromYear)) {
        throw faults.alone(
            0,
            0,
            "typical_year: yes, but rows of " + fromYear + " to " + toYear,
            "a typical year is one common year of 365 days",
            "Take the line out if these are real years.");
      }
      return HourCalendar.typicalYear();
    }
    return HourCalendar.of(fromYear, toYear - fromYear + 1);
  }

  private int firstHourWithValue() {
    int hour = 0;
    while (hour < hours && !hasValue(hour)) {
      hour++;
    }
    return hour;
  }

  private int lastHourWithValue() {
    int hour = hours - 1;
    while (hour >= 0 && !hasValue(hour)) {
      hour--;
    }
    return hour;
  }

  private boolean hasValue(int hour) {
    for (byte[] count : counts) {
      if (count[hour] > 0) {
        return true;
      }
    }
    return false;
  }

  private static int yearOf(long epochHour) {
    return LocalDate.ofEpochDay(Math.floorDiv(epochHour, (long) Dates.HOURS_PER_DAY)).getYear();
  }

  private static long yearStart(int year) {
    return Dates.epochDay(year, 1, 1) * Dates.HOURS_PER_DAY;
  }
}
