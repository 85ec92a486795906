package greyspell.weather.ensemble;

import greyspell.calendar.HourCalendar;
import greyspell.weather.GapReport;
import greyspell.weather.WeatherSeries;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.zip.GZIPInputStream;

/**
 * Reads the ten measured years of the validation data (not shipped): stamps in UTC, hours' ends.
 */
final class RealYears {
  private RealYears() {}

  static WeatherSeries read(Path file, ClimateSite site) {
    HourCalendar calendar = HourCalendar.of(2011, 10);
    var globalWm2 = new double[calendar.hours()];
    var temperatureC = new double[calendar.hours()];
    LocalDateTime begins = LocalDateTime.of(2011, 1, 1, 0, 0);
    try (var lines =
        new BufferedReader(
            new InputStreamReader(
                new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
      lines.readLine();
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        String[] fields = line.split(",", -1);
        LocalDateTime ends = LocalDateTime.parse(fields[0].replace(' ', 'T').replace("Z", ""));
        long hour = ChronoUnit.HOURS.between(begins, ends) - 1 + Math.round(site.utcOffsetH());
        if (hour >= 0 && hour < globalWm2.length) {
          int h = (int) hour;
          globalWm2[h] = fields[1].isEmpty() ? 0.0 : Double.parseDouble(fields[1]);
          temperatureC[h] =
              fields[4].isEmpty()
                  ? temperatureC[Math.max(0, h - 1)]
                  : Double.parseDouble(fields[4]);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = globalWm2;
    columns.airTemperatureC = temperatureC;
    return new WeatherSeries(
        calendar,
        site.source(file.getFileName().toString(), "measured"),
        new GapReport(0, 0, List.of()),
        columns);
  }
}
