package greyspell.load;

import greyspell.calendar.HourCalendar;
import java.util.Arrays;

/** Weather for loads that do not look at it: 15 °C, sun from 6 to 18. */
final class Mild {
  private Mild() {}

  static LoadWeather of(HourCalendar calendar) {
    var airC = new double[calendar.hours()];
    Arrays.fill(airC, 15.0);
    return of(calendar, airC);
  }

  static LoadWeather of(HourCalendar calendar, double[] airC) {
    var sunlit = new double[calendar.hours()];
    for (int h = 0; h < sunlit.length; h++) {
      sunlit[h] = h % 24 >= 6 && h % 24 < 18 ? 1.0 : 0.0;
    }
    return LoadWeather.of(calendar, airC, sunlit);
  }
}
