package greyspell.load;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Check;

/** What loads need to know of the weather and the sun. The arrays are not written. */
public final class LoadWeather {
  private final HourCalendar calendar;
  private final double[] airTemperatureC;
  private final double[] meanAirC;
  private final double[] dayLengthH;

  private LoadWeather(
      HourCalendar calendar, double[] airTemperatureC, double[] meanAirC, double[] dayLengthH) {
    this.calendar = calendar;
    this.airTemperatureC = airTemperatureC;
    this.meanAirC = meanAirC;
    this.dayLengthH = dayLengthH;
  }

  /**
   * For a calendar.
   *
   * @param airTemperatureC of each hour
   * @param sunlitShare share of each hour that the sun is up
   */
  public static LoadWeather of(
      HourCalendar calendar, double[] airTemperatureC, double[] sunlitShare) {
    Check.within(
        "hours of temperature", airTemperatureC.length, calendar.hours(), calendar.hours());
    Check.within("hours of sun", sunlitShare.length, calendar.hours(), calendar.hours());
    var meanC = new double[calendar.days()];
    var lengthH = new double[calendar.days()];
    for (int d = 0; d < meanC.length; d++) {
      for (int h = d * 24; h < d * 24 + 24; h++) {
        meanC[d] += airTemperatureC[h] / 24.0;
        lengthH[d] += sunlitShare[h];
      }
    }
    return new LoadWeather(calendar, airTemperatureC, meanC, lengthH);
  }

  public HourCalendar calendar() {
    return calendar;
  }

  double airC(int hour) {
    return airTemperatureC[hour];
  }

  /** Mean outdoor temperature of a day. */
  public double meanAirC(int day) {
    return meanAirC[day];
  }

  /** Time that the sun is up on a day. */
  public double dayLengthH(int day) {
    return dayLengthH[day];
  }
}
