package greyspell.weather;

import greyspell.calendar.HourCalendar;
import java.time.LocalDateTime;
import java.util.List;

/**
 * Fills missing hours by stated rules and says what it did; refuses what no rule can fill.
 *
 * <ol>
 *   <li>Up to {@value #LINE_H} hours in a run, known on both sides: a straight line.
 *   <li>Up to {@value #DAYS_H} hours: the mean of the same hour on the nearest days before and
 *       after that have a value, searched {@value #REACH_D} days far; at the ends of the series the
 *       one that exists.
 *   <li>Longer: the file is refused, if the column is needed. Needed are temperature and global
 *       irradiance, or cloud cover where no irradiance is known. Any other column is left out as a
 *       whole, with a note.
 * </ol>
 *
 * Only values of the file are used, never filled ones. Common practice, no source.
 */
final class GapFiller {
  static final int LINE_H = 3;
  static final int DAYS_H = 120;
  static final int REACH_D = 15;

  private final HourCalendar calendar;
  private final WeatherSource source;
  private final double[][] columns;
  private final int[] lineOfHour;
  private final List<String> notes;
  private final FaultList faults;
  private final boolean[] isMissing;

  /**
   * @param columns by slot of {@link WeatherColumn}, NaN where missing; empty where the source has
   *     no such column
   * @param lineOfHour line of the file in which an hour stands, 0 if in none
   * @param notes what the reader has to tell; the filling is added to it
   */
  GapFiller(
      HourCalendar calendar,
      WeatherSource source,
      double[][] columns,
      int[] lineOfHour,
      List<String> notes,
      FaultList faults) {
    this.calendar = calendar;
    this.source = source;
    this.columns = columns;
    this.lineOfHour = lineOfHour;
    this.notes = notes;
    this.faults = faults;
    isMissing = new boolean[calendar.hours()];
  }

  WeatherSeries series() {
    leaveOutEmptyColumns();
    refuseWithoutNeededColumns();
    for (WeatherColumn column : WeatherColumn.values()) {
      judgeRuns(column);
    }
    if (!faults.isEmpty()) {
      tellUsableYears();
      faults.throwIfAny();
    }
    for (WeatherColumn column : WeatherColumn.values()) {
      markMissing(columns[column.slot]);
    }
    for (WeatherColumn column : WeatherColumn.values()) {
      fill(column);
    }
    return new WeatherSeries(calendar, source, report(), WeatherColumn.columns(columns));
  }

  private void leaveOutEmptyColumns() {
    for (int c = 0; c < columns.length; c++) {
      if (isWithoutValue(columns[c], 0, columns[c].length)) {
        columns[c] = new double[0];
      }
    }
  }

  private void refuseWithoutNeededColumns() {
    if (isAbsent(WeatherColumn.TEMPERATURE)) {
      faults.add(
          "no air temperature",
          "needed: batteries and modules depend on it",
          "Add a column tair_c.");
    }
    if (isAbsent(WeatherColumn.GLOBAL) && isAbsent(WeatherColumn.CLOUD)) {
      faults.add(
          "neither global irradiance nor cloud cover",
          "one of the two is needed",
          "Add a column ghi_wm2, or cloud_okta, cloud_tenths or cloud_pct.");
    }
    faults.throwIfAny();
  }

  private boolean isAbsent(WeatherColumn column) {
    return columns[column.slot].length == 0;
  }

  private boolean isNeeded(WeatherColumn column) {
    return switch (column) {
      case TEMPERATURE, GLOBAL -> true;
      case CLOUD -> isAbsent(WeatherColumn.GLOBAL);
      default -> false;
    };
  }

  private void judgeRuns(WeatherColumn column) {
    double[] values = columns[column.slot];
    for (int from = nextMissing(values, 0); from < values.length; ) {
      int to = endOfRun(values, from);
      if (to - from > DAYS_H || hasUnreachableHour(values, from, to)) {
        if (!isNeeded(column)) {
          columns[column.slot] = new double[0];
          notes.add(
              column.words
                  + ": left out, it has no value for "
                  + run(from, to)
                  + ", more than can be filled");
          return;
        }
        faults.add(
            lineNear(from),
            lineNear(from) == 0 ? 0 : 1,
            column.words + ": no value for " + run(from, to),
            to - from > DAYS_H
                ? "at most " + DAYS_H + " missing hours in one run can be filled"
                : "no day within " + REACH_D + " days has a value at the same hour",
            to == values.length ? "The rows end early: the file may be cut off." : "");
      }
      from = nextMissing(values, to);
    }
  }

  private int lineNear(int hour) {
    int at = hour;
    while (at > 0 && lineOfHour[at] == 0) {
      at--;
    }
    return lineOfHour[at];
  }

  private boolean hasUnreachableHour(double[] values, int from, int to) {
    if (isShort(values, from, to)) {
      return false;
    }
    for (int hour = from; hour < to; hour++) {
      double fromDays = sameHour(values, values, hour);
      if (!(fromDays >= -Double.MAX_VALUE)) {
        return true;
      }
    }
    return false;
  }

  /** Which years a user could keep, so that the refusal tells a way out. */
  private void tellUsableYears() {
    if (calendar.isTypical()) {
      return;
    }
    var usable = new StringBuilder();
    for (int y = 0; y < calendar.years(); y++) {
      if (isUsable(calendar.firstHourOfYear(y), calendar.firstHourOfYear(y + 1))) {
        usable.append(usable.length() == 0 ? "" : ", ").append(calendar.firstYear() + y);
      }
    }
    faults.add(
        usable.length() == 0
            ? "no year of " + years() + " is free of such runs"
            : "free of such runs: " + usable,
        "whole years without a run of more than " + DAYS_H + " missing hours are needed",
        usable.length() == 0
            ? "Use another file, or a typical year of the place."
            : "Keep only rows of years that follow each other.");
  }

  private boolean isUsable(int from, int to) {
    for (WeatherColumn column : WeatherColumn.values()) {
      double[] values = columns[column.slot];
      if (isNeeded(column) && values.length > 0) {
        for (int hour = from; hour + DAYS_H < to; hour++) {
          if (isWithoutValue(values, hour, hour + DAYS_H + 1)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private String years() {
    return calendar.years() == 1
        ? Integer.toString(calendar.firstYear())
        : calendar.firstYear() + " to " + (calendar.firstYear() + calendar.years() - 1);
  }

  private void markMissing(double[] values) {
    for (int hour = nextMissing(values, 0);
        hour < values.length;
        hour = nextMissing(values, hour + 1)) {
      isMissing[hour] = true;
    }
  }

  private void fill(WeatherColumn column) {
    double[] values = columns[column.slot];
    int first = nextMissing(values, 0);
    if (first == values.length) {
      return;
    }
    double[] known = values.clone();
    int lineHours = 0;
    int daysHours = 0;
    int longestFrom = first;
    int longestTo = first;
    for (int from = first; from < known.length; ) {
      int to = endOfRun(known, from);
      if (isShort(known, from, to)) {
        for (int hour = from; hour < to; hour++) {
          double share = (hour - from + 1.0) / (to - from + 1.0);
          values[hour] = known[from - 1] + share * (known[to] - known[from - 1]);
        }
        lineHours += to - from;
      } else {
        for (int hour = from; hour < to; hour++) {
          values[hour] = sameHour(known, values, hour);
        }
        daysHours += to - from;
      }
      if (to - from > longestTo - longestFrom) {
        longestFrom = from;
        longestTo = to;
      }
      from = nextMissing(known, to);
    }
    if (lineHours > 0) {
      notes.add(column.words + ": " + hours(lineHours) + " filled by a straight line");
    }
    if (daysHours > 0) {
      notes.add(
          column.words
              + ": "
              + hours(daysHours)
              + " filled from the same hour of the days before and after; longest run "
              + run(longestFrom, longestTo));
    }
  }

  private static boolean isShort(double[] known, int from, int to) {
    return to - from <= LINE_H && from > 0 && to < known.length;
  }

  /** Mean of the nearest days before and after; NaN if there is none in reach. */
  private static double sameHour(double[] known, double[] whenNone, int hour) {
    double before = nearest(known, hour, -Dates.HOURS_PER_DAY);
    double after = nearest(known, hour, Dates.HOURS_PER_DAY);
    if (Double.isNaN(before)) {
      return Double.isNaN(after) ? whenNone[hour] : after;
    }
    return Double.isNaN(after) ? before : (before + after) / 2.0;
  }

  private static double nearest(double[] known, int hour, int stride) {
    int at = hour + stride;
    for (int day = 1; day <= REACH_D && at >= 0 && at < known.length; day++, at += stride) {
      if (!Double.isNaN(known[at])) {
        return known[at];
      }
    }
    return Double.NaN;
  }

  private GapReport report() {
    int missing = 0;
    int longest = 0;
    int run = 0;
    for (boolean is : isMissing) {
      run = is ? run + 1 : 0;
      missing += is ? 1 : 0;
      longest = Math.max(longest, run);
    }
    return new GapReport(missing, longest, List.copyOf(notes));
  }

  private static int nextMissing(double[] values, int from) {
    int hour = from;
    while (hour < values.length && !Double.isNaN(values[hour])) {
      hour++;
    }
    return hour;
  }

  private static int endOfRun(double[] values, int from) {
    int hour = from;
    while (hour < values.length && Double.isNaN(values[hour])) {
      hour++;
    }
    return hour;
  }

  private static boolean isWithoutValue(double[] values, int from, int to) {
    return endOfRun(values, from) >= to;
  }

  private static String hours(int count) {
    return count + (count == 1 ? " hour" : " hours");
  }

  private String run(int from, int to) {
    return hours(to - from)
        + ", from "
        + time(calendar.start(from))
        + " to "
        + time(calendar.start(to - 1).plusHours(1))
        + " ("
        + Dates.clock(source.utcOffsetH())
        + ")";
  }

  /** A typical year has no year number to show. */
  private String time(LocalDateTime time) {
    String text = Dates.text(time);
    return calendar.isTypical() ? text.substring(text.indexOf('-') + 1) : text;
  }
}
