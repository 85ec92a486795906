package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.weather.WeatherSeries;

/**
 * Wall time of the whole chain in a cold JVM, and warm: three years, two planes, a skyline. Run as
 * {@code java -cp target/classes:target/test-classes:LIBRARIES greyspell.sky.SkyColdMain}, any
 * argument puts the skyline up.
 */
final class SkyColdMain {
  private SkyColdMain() {}

  public static void main(String[] arguments) {
    var horizon =
        new Horizon(
            java.util.List.of(
                new Horizon.Point(135.0, 8.0),
                new Horizon.Point(180.0, 5.0),
                new Horizon.Point(225.0, 12.0)));
    Site open = SkyFixtures.site(47.6, -122.3, 100.0, -8.0);
    Site valley = SkyFixtures.over(open, horizon);
    HourCalendar calendar = HourCalendar.of(2015, 3);
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = new double[calendar.hours()];
    for (int h = 0; h < calendar.hours(); h++) {
      double hour = h % 24;
      columns.globalHorizontalWm2[h] =
          Math.max(0.0, 700.0 - 25.0 * (hour - 12.0) * (hour - 12.0)) * (0.2 + 0.8 * (h % 7) / 7.0);
    }
    WeatherSeries weather = SkyFixtures.weather(calendar, columns);
    SkyChoices choices = SkyChoices.usual();
    for (int run = 0; run < 30; run++) {
      Site site = arguments.length > 0 ? valley : open;
      long start = System.nanoTime();
      SunPath sun = SunPath.of(site, calendar);
      long sunDone = System.nanoTime();
      Radiation radiation = Radiation.of(weather, sun, site, choices);
      long splitDone = System.nanoTime();
      var south = PlaneIrradiance.of(radiation, sun, weather, site, choices, 60.0, 180.0);
      var west = PlaneIrradiance.of(radiation, sun, weather, site, choices, 30.0, 250.0);
      long done = System.nanoTime();
      if (run < 2 || run == 29) {
        System.out.println(
            "run "
                + run
                + ": sun "
                + (sunDone - start) / 1e6
                + " ms, split "
                + (splitDone - sunDone) / 1e6
                + " ms, two planes "
                + (done - splitDone) / 1e6
                + " ms, all "
                + (done - start) / 1e6
                + " ms; kWh/m2 "
                + SkyFixtures.sum(south.frontWm2()) / 1000.0
                + " "
                + SkyFixtures.sum(west.absorbedWm2()) / 1000.0);
      }
    }
  }
}
