package greyspell.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The hours of one or more whole calendar years in local standard time, numbered from 0; an hour is
 * named by its start. Leap days are in. A typical year, pieced together from months of different
 * years, has 365 days and no year number of its own; it is dated {@value #TYPICAL_YEAR} where a
 * date is needed (a common year that begins on a Monday).
 */
public final class HourCalendar {
  public static final int TYPICAL_YEAR = 2001;

  private final int firstYear;
  private final int years;
  private final Kind kind;
  private final String oneName;
  private final int days;
  private final byte[] monthOfDay;
  private final byte[] dayOfMonthOfDay;
  private final short[] dayOfYearOfDay;
  private final short[] yearOfDay;
  private final int[] firstDayOfYear;

  private enum Kind {
    YEARS,
    TYPICAL,
    ONE_WINTER
  }

  private HourCalendar(int firstYear, int years, Kind kind, String oneName) {
    this.oneName = oneName;
    this.firstYear = firstYear;
    this.years = years;
    this.kind = kind;
    firstDayOfYear = new int[years + 1];
    for (int y = 0; y < years; y++) {
      firstDayOfYear[y + 1] =
          firstDayOfYear[y] + LocalDate.ofYearDay(firstYear + y, 1).lengthOfYear();
    }
    days = firstDayOfYear[years];
    monthOfDay = new byte[days];
    dayOfMonthOfDay = new byte[days];
    dayOfYearOfDay = new short[days];
    yearOfDay = new short[days];
    int day = 0;
    for (int y = 0; y < years; y++) {
      int dayOfYear = 1;
      for (int m = 1; m <= 12; m++) {
        int length = LocalDate.of(firstYear + y, m, 1).lengthOfMonth();
        for (int d = 1; d <= length; d++, day++, dayOfYear++) {
          monthOfDay[day] = (byte) m;
          dayOfMonthOfDay[day] = (byte) d;
          dayOfYearOfDay[day] = (short) dayOfYear;
          yearOfDay[day] = (short) (firstYear + y);
        }
      }
    }
  }

  /** Whole years, 1 January to 31 December. */
  public static HourCalendar of(int firstYear, int years) {
    if (years < 1 || years > 2000 || firstYear < 1 || firstYear > 9000) {
      throw new IllegalArgumentException("years " + firstYear + " + " + years);
    }
    return new HourCalendar(firstYear, years, Kind.YEARS, Integer.toString(firstYear));
  }

  /** A typical year: 365 days, no real year. */
  public static HourCalendar typicalYear() {
    return new HourCalendar(TYPICAL_YEAR, 1, Kind.TYPICAL, "typical year");
  }

  /**
   * One winter with the half years around it, read as a ring from 1 January: 365 days, dated as a
   * typical year.
   *
   * @param name of the winter
   */
  public static HourCalendar oneWinter(String name) {
    return new HourCalendar(TYPICAL_YEAR, 1, Kind.ONE_WINTER, name);
  }

  public int hours() {
    return days * 24;
  }

  public int days() {
    return days;
  }

  public int years() {
    return years;
  }

  public int firstYear() {
    return firstYear;
  }

  public boolean isTypical() {
    return kind == Kind.TYPICAL;
  }

  /** One winter by itself, drawn or measured, with a name instead of a year: see oneWinter. */
  public boolean isOneWinter() {
    return kind == Kind.ONE_WINTER;
  }

  /** "typical year", "2018" of a single year, or the name that one winter was given. */
  public String name() {
    return oneName;
  }

  public int year(int hour) {
    return yearOfDay[hour / 24];
  }

  /** 1 to 12. */
  public int month(int hour) {
    return monthOfDay[hour / 24];
  }

  /** 1 to 31. */
  public int dayOfMonth(int hour) {
    return dayOfMonthOfDay[hour / 24];
  }

  /** 1 to 366. */
  public int dayOfYear(int hour) {
    return dayOfYearOfDay[hour / 24];
  }

  /** 0 to 23. */
  public int hourOfDay(int hour) {
    return hour % 24;
  }

  public DayOfWeek dayOfWeek(int hour) {
    int first = LocalDate.of(firstYear, 1, 1).getDayOfWeek().getValue() - 1;
    return DayOfWeek.of((first + hour / 24) % 7 + 1);
  }

  public LocalDate date(int hour) {
    int day = hour / 24;
    return LocalDate.of(yearOfDay[day], monthOfDay[day], dayOfMonthOfDay[day]);
  }

  public LocalDateTime start(int hour) {
    return date(hour).atTime(hour % 24, 0);
  }

  /** Index of the hour that starts at this time, or -1 outside the calendar. */
  public int hourOf(int year, int month, int dayOfMonth, int hourOfDay) {
    if (year < firstYear || year >= firstYear + years) {
      return -1;
    }
    int day =
        firstDayOfYear[year - firstYear] + LocalDate.of(year, month, dayOfMonth).getDayOfYear() - 1;
    return day * 24 + hourOfDay;
  }

  /**
   * First hour of a year, counted 0 for the first one; {@code firstHourOfYear(years())} is one past
   * the last hour.
   */
  public int firstHourOfYear(int yearIndex) {
    return firstDayOfYear[yearIndex] * 24;
  }

  /**
   * The winters in these years. One year alone is one winter, "typical year", "2018" or by the name
   * that it was given. Of several years the north's winters run from 1 July ("2017/18"), the
   * south's are calendar years ("2018"). Half winters at either end are marked as parts.
   */
  public List<Winter> winters(boolean isNorthern) {
    var winters = new ArrayList<Winter>();
    if (years == 1) {
      winters.add(new Winter(oneName, 0, hours(), true));
      return winters;
    }
    if (!isNorthern) {
      for (int y = 0; y < years; y++) {
        winters.add(
            new Winter(
                Integer.toString(firstYear + y), firstHourOfYear(y), firstHourOfYear(y + 1), true));
      }
      return winters;
    }
    for (int y = -1; y < years; y++) {
      int from = y < 0 ? 0 : hourOf(firstYear + y, 7, 1, 0);
      int to = y + 1 >= years ? hours() : hourOf(firstYear + y + 1, 7, 1, 0);
      winters.add(
          new Winter(Winter.northernName(firstYear + y), from, to, y >= 0 && y + 1 < years));
    }
    return winters;
  }
}
