package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import greyspell.outcome.GreySpell;
import greyspell.outcome.WinterRecord;
import greyspell.published.ValidationData;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.weather.WeatherFacts;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.WinterKind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Houses at two maritime lowland stations through ten measured years (nine whole winters), and
 * through winters made from the monthly means of these years: the longest grey spell, unmet hours
 * and the bank that would have ridden through the winter that comes once in five years. Source:
 * validation data (not shipped).
 *
 * <p>The job's goal is 20 % on that bank. It is met where the means come with how far the months of
 * the years differed, and by splicing; not by twelve means alone, which cannot know that: their
 * bounds are the errors that were found, so that worse would be noticed.
 */
class RealManyWintersTest {
  private static final int MANY = 500;
  private static final double GOAL = 0.20;
  private static final double FOUND = 0.35;

  @TempDir private Path folder = Path.of("");

  private Scenario home(String station, double latitudeDeg, double longitudeDeg, double dailyKwh)
      throws IOException {
    Path weather =
        ValidationData.file("measured/" + station + "-2011-2020.csv.gz").toAbsolutePath();
    try (var in = RealManyWintersTest.class.getResourceAsStream("/real/house.yaml")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      String filled =
          text.replace("WEATHER", weather.toString())
              .replace("NAME", "Test house")
              .replace("LAT", number(latitudeDeg))
              .replace("LON", number(longitudeDeg))
              .replace("ELEV", "2")
              .replace("UTC", "1")
              .replace("TILT", "60")
              .replace("FACES", "S")
              .replace("BASE", number(dailyKwh * 1000.0 * 0.6 / 24.0))
              .replace("EVENING", number(dailyKwh * 1000.0 * 0.4 / 5.0))
              .replace("BANK", "30");
      return ScenarioReader.read(
          Files.writeString(folder.resolve("house.yaml"), filled), Path.of("shared"));
    }
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private static List<WinterRecord> winters(Scenario home, WinterKind kind) {
    Integer count = kind == WinterKind.MEASURED ? null : Integer.valueOf(MANY);
    WintersWanted wanted = WintersWanted.of(home, count).withHow(kind);
    return ManyWinters.run(home, wanted, 2, (what, done) -> {}).book().winters();
  }

  private static double mean(List<WinterRecord> winters, ToDoubleFunction<WinterRecord> of) {
    return winters.stream().mapToDouble(of).average().orElseThrow();
  }

  private static double quantile(
      List<WinterRecord> winters, double share, ToDoubleFunction<WinterRecord> of) {
    double[] sorted = winters.stream().mapToDouble(of).sorted().toArray();
    double at = share * (sorted.length - 1);
    int below = (int) at;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
  }

  private static double longestSpellDays(WinterRecord winter) {
    return winter.spells().stream().mapToInt(GreySpell::days).max().orElse(0);
  }

  @ParameterizedTest
  @CsvSource({
    "de-bilt, 52.10, 5.18",
    "maastricht, 50.91, 5.76",
  })
  void madeAndSplicedWintersStandBesideMeasuredOnes(
      String station, double latitudeDeg, double longitudeDeg) throws IOException {
    for (double dailyKwh : new double[] {3.0, 5.0, 7.0, 9.0}) {
      Scenario home = home(station, latitudeDeg, longitudeDeg, dailyKwh);
      String what = station + ", " + dailyKwh + " kWh a day";
      List<WinterRecord> real = winters(home, WinterKind.MEASURED);
      compare(what + ", spread known", real, winters(home, WinterKind.MADE), GOAL);
      compare(what + ", spliced", real, winters(home, WinterKind.SPLICED), GOAL);
      compare(what + ", means alone", real, winters(meansAlone(home), WinterKind.MADE), FOUND);
    }
  }

  private static void compare(
      String what, List<WinterRecord> real, List<WinterRecord> got, double allowed) {
    double wantedWh = quantile(real, 0.8, RealManyWintersTest::bankWh);
    double bankWh = quantile(got, 0.8, RealManyWintersTest::bankWh);
    double spellDays = mean(got, RealManyWintersTest::longestSpellDays);
    double realSpellDays = mean(real, RealManyWintersTest::longestSpellDays);
    double hours = mean(got, WinterRecord::unmetHours);
    double realHours = mean(real, WinterRecord::unmetHours);
    assertEquals(wantedWh, bankWh, allowed * wantedWh, what + ": 1-in-5 bank");
    assertEquals(realSpellDays, spellDays, 4.0, what + ": longest grey spell, mean");
    assertEquals(realHours, hours, 65.0, what + ": unmet hours a winter, mean");
  }

  private static double bankWh(WinterRecord winter) {
    return winter.ridingBank().leastWh();
  }

  /** The same house with nothing but the twelve means of its years. */
  private Scenario meansAlone(Scenario home) throws IOException {
    WeatherSeries years = Objects.requireNonNull(HomeWeather.years(home));
    double[] kwhm2 = WeatherFacts.overYears(WeatherFacts.monthlyDailyGlobalKwhm2(years));
    double[] airC = WeatherFacts.overYears(WeatherFacts.monthlyTemperatureC(years));
    var text = new StringBuilder("# utc_offset: 1\n");
    text.append("# latitude: ").append(home.site().latitudeDeg()).append('\n');
    text.append("# longitude: ").append(home.site().longitudeDeg()).append('\n');
    text.append("month,global_kwhm2_day,temperature_c\n");
    for (int m = 0; m < kwhm2.length; m++) {
      text.append(String.format(Locale.ROOT, "%d,%.4f,%.2f%n", m + 1, kwhm2[m], airC[m]));
    }
    Files.writeString(folder.resolve("means.csv"), text);
    String changed =
        Files.readString(folder.resolve("house.yaml"))
            .replaceFirst("(?m)^weather:.*$", "weather: {means: means.csv}");
    return ScenarioReader.read(
        Files.writeString(folder.resolve("alone.yaml"), changed), Path.of("shared"));
  }
}
