package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import greyspell.weather.GapReport;
import greyspell.weather.WeatherSeries;
import greyspell.weather.WeatherSource;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small real objects for the tests of this room. */
final class SkyFixtures {
  static final Monthly USUAL_ALBEDO = Monthly.constant(0.2);
  static final WeatherSource TEST_SOURCE =
      new WeatherSource("test", "test", "", null, null, null, 0.0);

  private SkyFixtures() {}

  static Site site(double latitudeDeg, double longitudeDeg, double elevationM, double utcOffsetH) {
    return site(latitudeDeg, longitudeDeg, elevationM, utcOffsetH, Horizon.OPEN);
  }

  static Site site(
      double latitudeDeg,
      double longitudeDeg,
      double elevationM,
      double utcOffsetH,
      Horizon horizon) {
    return new Site(
        "test",
        latitudeDeg,
        longitudeDeg,
        elevationM,
        utcOffsetH,
        USUAL_ALBEDO,
        horizon,
        null,
        null);
  }

  static Site over(Site site, Horizon horizon) {
    return site(
        site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), site.utcOffsetH(), horizon);
  }

  static SkyChoices choices(SkyChoices.Tilt tilt) {
    SkyChoices usual = SkyChoices.usual();
    return new SkyChoices(
        usual.clearSky(),
        usual.cloudDepth(),
        usual.cloudExponent(),
        tilt,
        usual.linkeTurbidity(),
        usual.snowAlbedo());
  }

  static WeatherSeries weather(HourCalendar calendar, WeatherSeries.Columns columns) {
    if (columns.airTemperatureC == null) {
      columns.airTemperatureC = new double[calendar.hours()];
    }
    return new WeatherSeries(calendar, TEST_SOURCE, GapReport.NONE, columns);
  }

  static double sum(double[] values) {
    double sum = 0.0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /**
   * The plain minimum of an EPW reader: one year, rows in order, each row the hour that ends there,
   * so that row i is hour i named by its start. Cover columns are kept beside.
   */
  static final class Epw {
    final Site site;
    final WeatherSeries weather;
    final double[] totalCover;
    final double[] opaqueCover;

    private Epw(Site site, WeatherSeries weather, double[] totalCover, double[] opaqueCover) {
      this.site = site;
      this.weather = weather;
      this.totalCover = totalCover;
      this.opaqueCover = opaqueCover;
    }

    static Epw read(Path file) throws IOException {
      var lines = Files.readAllLines(file, StandardCharsets.ISO_8859_1);
      String[] place = lines.get(0).split(",", -1);
      var calendar = HourCalendar.typicalYear();
      var columns = new WeatherSeries.Columns();
      columns.globalHorizontalWm2 = column(lines, 13, 1.0);
      columns.directNormalWm2 = column(lines, 14, 1.0);
      columns.diffuseHorizontalWm2 = column(lines, 15, 1.0);
      columns.airTemperatureC = column(lines, 6, 1.0);
      Site site =
          SkyFixtures.site(
              Double.parseDouble(place[6]),
              Double.parseDouble(place[7]),
              Double.parseDouble(place[9]),
              Double.parseDouble(place[8]));
      return new Epw(
          site,
          SkyFixtures.weather(calendar, columns),
          column(lines, 22, 0.1),
          column(lines, 23, 0.1));
    }

    private static double[] column(java.util.List<String> lines, int column, double scale) {
      var values = new double[8760];
      for (int h = 0; h < values.length; h++) {
        values[h] = Double.parseDouble(lines.get(8 + h).split(",", -1)[column]) * scale;
      }
      return values;
    }

    /** The same year with cloud cover and nothing else. */
    WeatherSeries cloudOnly(double[] cover) {
      var columns = new WeatherSeries.Columns();
      columns.cloudShare = cover;
      return SkyFixtures.weather(weather.calendar(), columns);
    }

    /** The same year with global light and nothing else. */
    WeatherSeries globalOnly() {
      var columns = new WeatherSeries.Columns();
      columns.globalHorizontalWm2 = weather.globalHorizontalWm2();
      return SkyFixtures.weather(weather.calendar(), columns);
    }
  }
}
