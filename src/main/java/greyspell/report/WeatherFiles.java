package greyspell.report;

import greyspell.chart.WeatherPictures;
import greyspell.weather.WeatherSeries;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Writes tables and, if asked for, pictures of a weather series into a folder. */
public final class WeatherFiles {
  private WeatherFiles() {}

  public static List<Path> write(WeatherSeries weather, Path dir, boolean pictures) {
    try (var deliver = new Deliver(dir)) {
      var tables = WeatherTables.of(weather);
      deliver.write("weather-months.csv", tables.monthsCsv().getBytes(StandardCharsets.UTF_8));
      deliver.write("weather-years.csv", tables.yearsCsv().getBytes(StandardCharsets.UTF_8));
      if (pictures) {
        for (var drawn : WeatherPictures.draw(weather)) {
          deliver.write(drawn.name() + ".png", drawn.png());
        }
      }
      return deliver.done();
    }
  }
}
