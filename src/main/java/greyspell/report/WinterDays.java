package greyspell.report;

import greyspell.calendar.HourCalendar;

/** Days and hours of a winter's year of 365 days, which has no year number: "12-03". */
final class WinterDays {
  private static final HourCalendar CALENDAR = HourCalendar.typicalYear();

  private WinterDays() {}

  /** Month and day of the month, of a day counted from 0, 1 January. */
  static String day(int dayOfYear) {
    int hour = dayOfYear * 24;
    return two(CALENDAR.month(hour)) + "-" + two(CALENDAR.dayOfMonth(hour));
  }

  /** "12-03T17:00". */
  static String hour(int hourOfYear) {
    return day(hourOfYear / 24) + "T" + two(hourOfYear % 24) + ":00";
  }

  private static String two(int number) {
    return (number < 10 ? "0" : "") + number;
  }
}
