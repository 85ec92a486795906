package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.outcome.Outcome.MonthBooks;
import greyspell.published.ValidationData;
import greyspell.scenario.ScenarioReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A real household's log through the main job: one French house, 2006 to 2010, a fifth of what it
 * used, under ten measured years of weather at De Bilt. Both are the validation data (not shipped).
 */
class RealLoadRunTest {
  @TempDir private Path folder = Path.of("");

  private StudyResult run(String otherDays) throws IOException {
    Path weather = ValidationData.file("measured/de-bilt-2011-2020.csv.gz").toAbsolutePath();
    writeLog(ValidationData.file("loads/uci_sceaux_household_hourly.csv.gz"));
    String house;
    try (var in = RealLoadRunTest.class.getResourceAsStream("/real/house.yaml")) {
      house = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
    String text =
        house.substring(0, house.indexOf("  appliances:"))
            + "  log: {file: log.csv, factor: 0.2, priority: should_run, other_days: "
            + otherDays
            + "}\n";
    text =
        text.replace("WEATHER", weather.toString())
            .replace("NAME", "Test house")
            .replace("LAT", "52.1")
            .replace("LON", "5.18")
            .replace("ELEV", "2")
            .replace("UTC", "1")
            .replace("TILT", "60")
            .replace("FACES", "S")
            .replace("BANK", "30");
    Path file = Files.writeString(folder.resolve("house.yaml"), text);
    return Study.run(ScenarioReader.read(file, Path.of("shared")), (what, done) -> {});
  }

  /** Hours that the source marks as filled are left out. */
  private void writeLog(Path source) throws IOException {
    var out = new StringBuilder("local_start,load_kwh\n");
    try (var in =
        new BufferedReader(
            new InputStreamReader(
                new GZIPInputStream(Files.newInputStream(source)), StandardCharsets.UTF_8))) {
      in.readLine();
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        String[] cells = line.split(",", -1);
        out.append(cells[0]).append(',').append(cells[5].equals("0") ? cells[1] : "").append('\n');
      }
    }
    Files.writeString(folder.resolve("log.csv"), out);
  }

  private static double monthWh(StudyResult result, int month) {
    double sumWh = 0.0;
    for (MonthBooks books : result.outcome().months()) {
      sumWh += books.month() == month ? books.figures().loadWh() : 0.0;
    }
    return sumWh;
  }

  /** 26 kWh a day by the file's own mean, so 5.2 kWh a day here, and twice as much in winter. */
  @Test
  void aRealLogRunsThrough() throws IOException {
    for (String otherDays : new String[] {"nearest_day", "fit"}) {
      StudyResult result = run(otherDays);
      Ledgers.assertEveryHourCloses(result.ledger());
      double days = result.weather().hours() / 24.0;
      assertEquals(5.2, result.outcome().total().loadWh() / days / 1000.0, 0.3, otherDays);
      double ratio = monthWh(result, 12) / monthWh(result, 7);
      assertTrue(ratio > 1.4 && ratio < 3.0, otherDays + ": December over July " + ratio);
      assertTrue(result.outcome().total().unmetWh() > 0.0, otherDays);
      boolean isSaid =
          result.assumptions().stream()
              .anyMatch(a -> a.why().contains("temperature could not be fitted"));
      assertEquals(otherDays.equals("fit"), isSaid);
    }
  }
}
