package greyspell.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.published.ValidationData;
import greyspell.quantity.BadInput;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Real household logs, from the validation data (not shipped): seven Australian homes in half
 * hours, and one French house in hours. What they must give back was summed apart from this
 * program.
 */
class RealLoadLogTest {
  @TempDir private Path folder = Path.of("");

  /** Our format from one column; rows that the source marks as filled are left out. */
  private Path log(String data, int column, String header, int filledColumn) throws IOException {
    Path source = ValidationData.file(data);
    var out = new StringBuilder(header).append('\n');
    try (var text =
        new BufferedReader(
            new InputStreamReader(
                new GZIPInputStream(Files.newInputStream(source)), StandardCharsets.UTF_8))) {
      text.readLine();
      for (String line = text.readLine(); line != null; line = text.readLine()) {
        String[] cells = line.split(",", -1);
        boolean isFilled = filledColumn >= 0 && !cells[filledColumn].equals("0");
        out.append(cells[0]).append(',').append(isFilled ? "" : cells[column]).append('\n');
      }
    }
    return Files.writeString(folder.resolve("log" + column + ".csv"), out);
  }

  private static LogSpec spec(Path file, LogClock clock, String zone, LogExtension extension) {
    return new LogSpec(file.toString(), 1.0, Priority.MUST_RUN, clock, zone, extension, false);
  }

  /** Home 1 uses 8.9 kWh a day, home 7 4.3: sums of the file divided by its days. */
  @Test
  void halfHoursOfHomes() throws IOException {
    double[] meanKwh = {8.91, 4.30};
    int[] columns = {1, 7};
    for (int k = 0; k < 2; k++) {
      Path file =
          log("loads/households-halfhour-kwh.csv.gz", columns[k], "local_start,load_kwh", -1);
      LoadLog log = LoadLogReader.read(spec(file, LogClock.STANDARD, "eu", LogExtension.FIT), 10.0);
      LoadWeather weather = Mild.of(HourCalendar.of(2013, 1));
      var plan =
          new LoadPlan(List.of(), spec(file, LogClock.STANDARD, "eu", LogExtension.FIT), 0.0);
      LoadHours got = LoadHours.of(plan, log, weather, 1L);
      double dayKwh = Arrays.stream(got.acWh()).sum() / 365 / 1000;
      assertEquals(meanKwh[k], dayKwh, 0.12 * meanKwh[k], "home " + columns[k]);
      double[] peakW = got.peakW();
      boolean isHigher = false;
      for (int h = 0; h < peakW.length; h++) {
        assertTrue(peakW[h] >= got.acWh()[h]);
        isHigher |= peakW[h] > 1.5 * got.acWh()[h];
      }
      assertTrue(isHigher, "half hours know peaks");
    }
  }

  /**
   * The file calls its clock local, yet holds values in the hour that Sydney's clock leaves out on
   * 7 October 2012: it ran on standard time, and is found out.
   */
  @Test
  void aClockThatIsNotWhatItSays() throws IOException {
    Path file = log("loads/households-halfhour-kwh.csv.gz", 1, "local_start,load_kwh", -1);
    BadInput bad =
        assertThrows(
            BadInput.class,
            () ->
                LoadLogReader.read(
                    spec(file, LogClock.LOCAL, "Australia/Sydney", LogExtension.FIT), 10.0));
    assertTrue(String.valueOf(bad.getMessage()).contains("2012-10-07T02:00"));
  }

  /** A house with electric heating: more in winter than in summer, and the fit says so. */
  @Test
  void anElectricallyHeatedHouse() throws IOException {
    Path file = log("loads/uci_sceaux_household_hourly.csv.gz", 1, "local_start,load_kwh", 5);
    LogSpec spec = spec(file, LogClock.STANDARD, "eu", LogExtension.FIT);
    LoadLog log = LoadLogReader.read(spec, 1.0);
    var plan = new LoadPlan(List.of(), spec, 0.0);
    LoadHours got = LoadHours.of(plan, log, Mild.of(HourCalendar.of(2016, 1)), 1L);
    LogFit fit = Objects.requireNonNull(got.logFit());
    assertTrue(fit.isUsable());
    double cosineWh =
        fit.coefficients().stream()
            .filter(c -> c.term() == LogFit.Term.COSINE)
            .mapToDouble(LogFit.Coefficient::valueWh)
            .sum();
    assertTrue(cosineWh > 4000, "winters take more: " + cosineWh);
    assertEquals(26.0, Arrays.stream(got.acWh()).sum() / 366 / 1000, 1.5, "kWh a day");
    assertTrue(fit.rSquaredShare() > 0.2 && fit.rSquaredShare() < 0.9);
  }
}
