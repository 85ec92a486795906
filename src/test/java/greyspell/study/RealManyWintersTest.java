package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import greyspell.outcome.GreySpell;
import greyspell.outcome.WinterRecord;
import greyspell.published.ValidationData;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
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

/** x. */
class RealManyWintersTest {
  private static final int MANY = 500;

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
    "de-bilt, 52.10, 5.18, 3", "de-bilt, 52.10, 5.18, 5", "de-bilt, 52.10, 5.18, 7", "de-bilt, 52.10, 5.18, 9",
    "maastricht, 50.91, 5.76, 3", "maastricht, 50.91, 5.76, 5", "maastricht, 50.91, 5.76, 7", "maastricht, 50.91, 5.76, 9"
  })
  void look(String station, double latitudeDeg, double longitudeDeg, double dailyKwh)
      throws IOException {
    Scenario home = home(station, latitudeDeg, longitudeDeg, dailyKwh);
    for (WinterKind kind : WinterKind.values()) {
      List<WinterRecord> w = winters(home, kind);
      System.out.printf("%s %.0f kWh %-8s n=%d spell %.1f d  unmet h mean %.0f  q80 %.0f bank q50 %.1f q80 %.1f q90 %.1f kWh lim %d%n",
        station, dailyKwh, kind, w.size(), mean(w, RealManyWintersTest::longestSpellDays), mean(w, WinterRecord::unmetHours), quantile(w, 0.8, WinterRecord::unmetHours),
        quantile(w, 0.5, x -> x.ridingBank().leastWh()) / 1000, quantile(w, 0.8, x -> x.ridingBank().leastWh()) / 1000, quantile(w, 0.9, x -> x.ridingBank().leastWh()) / 1000, w.stream().filter(x -> x.ridingBank().isLimited()).count());
    }
  }
}
