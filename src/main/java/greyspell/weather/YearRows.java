package greyspell.weather;

import greyspell.calendar.HourCalendar;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a file that holds one year by month, day and hour 1 to 24, each row ending at its
 * stamp (EPW, TMY3). The year number of a row is never used to order it: in a typical year it
 * changes from month to month.
 *
 * <p>Irradiance is the mean of the interval that ends at the stamp. Temperature, cloud cover, wind
 * and snow are readings at the stamp: the interval takes the mean of this row and the row before;
 * before the first row comes the last.
 */
final class YearRows {
  private static final int ENOUGH_PERCENT = HourGrid.ENOUGH_PERCENT;
  private static final int FEBRUARY = 2;
  private static final int LEAP_DAY = 29;

  private final FaultList faults;
  private final int rowsPerHour;
  private final int mostRows;
  private final int[] lines;
  private final short[] years;
  private final byte[] months;
  private final byte[] days;
  private final byte[] hours;
  private final double[][] values;
  private int rows;

  YearRows(int rowsPerHour, FaultList faults) {
    this.rowsPerHour = rowsPerHour;
    this.faults = faults;
    mostRows = 366 * Dates.HOURS_PER_DAY * rowsPerHour;
    lines = new int[mostRows];
    years = new short[mostRows];
    months = new byte[mostRows];
    days = new byte[mostRows];
    hours = new byte[mostRows];
    values = new double[WeatherColumn.COUNT][mostRows];
  }

  /** Takes a row whose date has been checked; values by slot, NaN where missing. */
  void add(int line, int year, int month, int day, int hour, double[] row) {
    if (rows == mostRows) {
      throw faults.alone(
          line,
          1,
          "more than " + mostRows + " rows",
          "must be one year",
          "Cut the file into single years, or use our plain CSV for several.");
    }
    lines[rows] = line;
    years[rows] = (short) year;
    months[rows] = (byte) month;
    days[rows] = (byte) day;
    hours[rows] = (byte) hour;
    for (int c = 0; c < row.length; c++) {
      values[c][rows] = row[c];
    }
    rows++;
  }

  boolean isEmpty() {
    return rows == 0;
  }

  double[] column(WeatherColumn column) {
    return Arrays.copyOf(values[column.slot], rows);
  }

  void forget(WeatherColumn column) {
    Arrays.fill(values[column.slot], Double.NaN);
  }

  /**
   * Ends the reading: hours in place, gaps filled.
   *
   * @param isAlwaysTypical the format is one of typical years, whatever the year numbers say
   * @param told the source as the file's head tells it, on the file's own clock
   */
  WeatherSeries series(
      boolean isAlwaysTypical,
      WeatherSource told,
      @Nullable Double siteUtcOffsetH,
      List<String> notes) {
    if (rows == 0) {
      faults.add("no rows under the header", "must hold the hours of one year", "");
    }
    faults.throwIfAny();
    HourCalendar calendar = calendar(isAlwaysTypical, notes);
    int[] hourOfRow = hoursInPlace(calendar, notes);
    faults.throwIfAny();
    int shiftH = 0;
    if (siteUtcOffsetH != null) {
      shiftH = (int) Math.floor(siteUtcOffsetH - told.utcOffsetH() + 0.5);
    }
    double offsetH = told.utcOffsetH() + shiftH;
    tellClock(shiftH, offsetH, siteUtcOffsetH, told, notes);
    var columns = new double[WeatherColumn.COUNT][];
    for (WeatherColumn column : WeatherColumn.values()) {
      columns[column.slot] = hourly(column, calendar, hourOfRow, shiftH);
    }
    var lineOfHour = new int[calendar.hours()];
    for (int r = 0; r < rows; r++) {
      if (hourOfRow[r] >= 0) {
        lineOfHour[Math.floorMod(hourOfRow[r] + shiftH, calendar.hours())] = lines[r];
      }
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
    return new GapFiller(calendar, source, columns, lineOfHour, notes, faults).series();
  }

  private HourCalendar calendar(boolean isAlwaysTypical, List<String> notes) {
    int least = years[0];
    int most = years[0];
    boolean hasLeapDay = false;
    for (int r = 0; r < rows; r++) {
      least = Math.min(least, years[r]);
      most = Math.max(most, years[r]);
      hasLeapDay |= months[r] == FEBRUARY && days[r] == LEAP_DAY;
    }
    if (least != most) {
      notes.add(
          "one typical year, pieced together from months of "
              + least
              + " to "
              + most
              + ": near the long-term average, it hides the worst winter");
      return HourCalendar.typicalYear();
    }
    if (isAlwaysTypical) {
      notes.add("one typical year: near the long-term average, it hides the worst winter");
      return HourCalendar.typicalYear();
    }
    if (Dates.isLeap(least) && !hasLeapDay) {
      notes.add(
          least + " is a leap year, but the file has no 29 February: taken as a typical year");
      return HourCalendar.typicalYear();
    }
    return HourCalendar.of(least, 1);
  }

  /** Index of the hour that each row belongs to, -1 for a leap day that a typical year has not. */
  private int[] hoursInPlace(HourCalendar calendar, List<String> notes) {
    var hourOfRow = new int[rows];
    int leapRows = 0;
    int previous = -1;
    int inHour = 0;
    for (int r = 0; r < rows; r++) {
      if (months[r] == FEBRUARY && days[r] == LEAP_DAY && calendar.isTypical()) {
        hourOfRow[r] = -1;
        leapRows++;
        continue;
      }
      int hour = calendar.hourOf(calendar.firstYear(), months[r], days[r], hours[r] - 1);
      hourOfRow[r] = hour;
      inHour = hour == previous ? inHour + 1 : 1;
      if (hour < previous || inHour > rowsPerHour) {
        boolean isBack = hour < previous;
        faults.add(
            lines[r],
            1,
            (isBack ? "time goes back to " : "a second row for ")
                + "month "
                + months[r]
                + ", day "
                + days[r]
                + ", hour "
                + hours[r],
            "one year from 1 January to 31 December, each hour "
                + (rowsPerHour == 1 ? "once" : rowsPerHour + " times"),
            "Sort the rows by month, day and hour, not by year, and drop doubles.");
      }
      previous = hour;
    }
    if (leapRows > 0) {
      notes.add(
          "29 February left out ("
              + leapRows
              + (leapRows == 1 ? " row" : " rows")
              + "): a typical year has 365 days");
    }
    return hourOfRow;
  }

  private void tellClock(
      int shiftH,
      double offsetH,
      @Nullable Double siteUtcOffsetH,
      WeatherSource told,
      List<String> notes) {
    if (shiftH != 0) {
      notes.add(
          "clock: moved from "
              + Dates.clock(told.utcOffsetH())
              + " to "
              + Dates.clock(offsetH)
              + "; what left the year at one end ("
              + Math.abs(shiftH)
              + (Math.abs(shiftH) == 1 ? " hour" : " hours")
              + ") comes in at the other");
    }
    if (siteUtcOffsetH != null && Math.abs(siteUtcOffsetH - offsetH) > 1e-9) {
      notes.add(
          "clock: the hours of the file begin at other minutes than the site's ("
              + Dates.clock(siteUtcOffsetH)
              + "); the series keeps them, on "
              + Dates.clock(offsetH));
    }
  }

  private double[] hourly(
      WeatherColumn column, HourCalendar calendar, int[] hourOfRow, int shiftH) {
    double[] row = values[column.slot];
    boolean isInstant = !column.isIrradiance();
    int length = calendar.hours();
    var sum = new double[length];
    var count = new int[length];
    for (int r = 0; r < rows; r++) {
      int hour = hourOfRow[r];
      double value = isInstant ? intervalMean(row, hourOfRow, r, length) : row[r];
      if (hour >= 0 && !Double.isNaN(value)) {
        int at = Math.floorMod(hour + shiftH, length);
        sum[at] += value;
        count[at]++;
      }
    }
    for (int h = 0; h < length; h++) {
      sum[h] = count[h] * 100 >= rowsPerHour * ENOUGH_PERCENT ? sum[h] / count[h] : Double.NaN;
    }
    return sum;
  }

  /** A row whose forerunner is missing stands alone. */
  private double intervalMean(double[] row, int[] hourOfRow, int r, int length) {
    int before = r == 0 ? rows - 1 : r - 1;
    int apart = Math.floorMod(hourOfRow[r] - hourOfRow[before], length);
    boolean isNext = apart <= 1 && hourOfRow[before] >= 0;
    return isNext && !Double.isNaN(row[before]) ? (row[before] + row[r]) / 2.0 : row[r];
  }
}
