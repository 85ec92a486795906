package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.LedgerColumn;
import greyspell.outcome.Figures;
import greyspell.outcome.Outcome.MonthBooks;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.published.ValidationData;
import greyspell.scenario.ScenarioReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole way from weather file to unmet hours on real weather: ten measured years at De Bilt,
 * and typical years of Seattle, Minneapolis, Denver, Chicago, San Francisco, Christchurch and
 * Barrow. The weather is the validation data (not shipped).
 *
 * <p>What the results stand beside was computed for this project with another, smaller hourly model
 * (Hay-Davies sky, Erbs split, flat 14 % array loss): own construction, not published. It differs
 * in detail (incidence loss, cell temperature), so the bounds are wide; they were chosen after the
 * results had been seen; they catch a wrong clock, a wrong hemisphere, a lost factor.
 */
class RealWeatherRunTest {
  @TempDir private Path folder = Path.of("");

  private record House(
      String weather,
      double latitudeDeg,
      double longitudeDeg,
      int elevationM,
      int utcOffsetH,
      double tiltDeg,
      String faces,
      int bankKwh,
      double dailyKwh) {}

  private static final House DE_BILT =
      new House("measured/de-bilt-2011-2020.csv.gz", 52.10, 5.18, 2, 1, 60.0, "S", 30, 5.0);
  private static final House SEATTLE =
      new House(
          "epw/USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3.epw",
          47.46,
          -122.31,
          130,
          -8,
          62.5,
          "S",
          15,
          12.0);
  private static final House MINNEAPOLIS =
      new House(
          "epw/USA_MN_Minneapolis-St.Paul.Intl.AP.726580_TMY3.epw",
          44.88,
          -93.23,
          254,
          -6,
          59.9,
          "S",
          30,
          20.0);
  private static final House CHRISTCHURCH =
      new House(
          "epw/NZL_Canterbury-Christchurch.CC.937800_NIWA.epw",
          -43.49,
          172.54,
          37,
          12,
          58.5,
          "N",
          30,
          12.0);
  private static final House BARROW =
      new House(
          "epw/USA_AK_Barrow-Post-Rogers.AP.700260_TMY3.epw",
          71.32,
          -156.62,
          10,
          -9,
          75.0,
          "S",
          30,
          5.0);

  private StudyResult run(House house) {
    String text = template("/real/house.yaml");
    double baseW = house.dailyKwh() * 1000.0 * 0.6 / 24.0;
    double eveningW = house.dailyKwh() * 1000.0 * 0.4 / 5.0;
    return run(
        text.replace("BASE", number(baseW))
            .replace("EVENING", number(eveningW))
            .replace("BANK", number(house.bankKwh())),
        house);
  }

  private StudyResult run(String text, House house) {
    Path weather = ValidationData.file(house.weather()).toAbsolutePath();
    String filled =
        text.replace("WEATHER", weather.toString())
            .replace("NAME", "Test house")
            .replace("LAT", number(house.latitudeDeg()))
            .replace("LON", number(house.longitudeDeg()))
            .replace("ELEV", number(house.elevationM()))
            .replace("UTC", number(house.utcOffsetH()))
            .replace("TILT", number(house.tiltDeg()))
            .replace("FACES", house.faces());
    try {
      Path file = Files.writeString(folder.resolve("house.yaml"), filled);
      return Study.run(ScenarioReader.read(file, Path.of("shared")), (what, done) -> {});
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String template(String name) {
    try (var in = RealWeatherRunTest.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
  }

  /** Unmet hours of the nine whole winters 2011/12 to 2019/20 beside those of the other model. */
  @Test
  void nineWintersAtDeBiltComeOutAsTheOtherModelHasThem() {
    int[] other = {125, 314, 0, 71, 33, 54, 308, 243, 66};
    List<WinterBooks> winters =
        run(DE_BILT).outcome().winters().stream().filter(w -> w.winter().isWhole()).toList();
    assertEquals(other.length, winters.size());
    int sum = 0, otherSum = 0;
    for (int i = 0; i < other.length; i++) {
      int hours = winters.get(i).figures().unmetHours();
      assertEquals(other[i], hours, 60, winters.get(i).winter().name());
      sum += hours;
      otherSum += other[i];
    }
    assertEquals(1.0, (double) sum / otherSum, 0.25, "all nine together");
  }

  /**
   * December yield of ten years swings between 0.45 and 1.15 kWh a day for each kW; December 2017
   * was the darkest.
   */
  @Test
  void decembersAtDeBiltSwingByMoreThanTwo() {
    double least = Double.MAX_VALUE, most = 0.0;
    int leastYear = 0;
    for (MonthBooks month : run(DE_BILT).outcome().months()) {
      if (month.month() == 12) {
        double perKw = month.figures().solarAvailableWh() / 31.0 / 10_000.0;
        leastYear = perKw < least ? month.year() : leastYear;
        least = Math.min(least, perKw);
        most = Math.max(most, perKw);
      }
    }
    assertEquals(2017, leastYear);
    assertEquals(0.45, least, 0.05);
    assertEquals(1.15, most, 0.06);
  }

  /** 367 and 202 kWh short in a year with 15 and 30 kWh of bank, by the other model. */
  @Test
  void seattleRunsShort() {
    assertEquals(367.0, run(SEATTLE).outcome().total().unmetWh() / 1000.0, 0.25 * 367.0);
    var larger = new House(SEATTLE.weather(), 47.46, -122.31, 130, -8, 62.5, "S", 30, 12.0);
    assertEquals(202.0, run(larger).outcome().total().unmetWh() / 1000.0, 0.25 * 202.0);
  }

  /** 386 kWh short by the other model, which had no loss at the glass. */
  @Test
  void minneapolisRunsShort() {
    assertEquals(386.0, run(MINNEAPOLIS).outcome().total().unmetWh() / 1000.0, 0.25 * 386.0);
  }

  /** In the south the panels face north, and June and July are the hard months. */
  @Test
  void christchurchIsSouthern() {
    StudyResult north = run(CHRISTCHURCH);
    var turned = new House(CHRISTCHURCH.weather(), -43.49, 172.54, 37, 12, 58.5, "S", 30, 12.0);
    assertTrue(run(turned).outcome().total().unmetWh() > 5.0 * north.outcome().total().unmetWh());
    double hard = 0.0;
    for (MonthBooks month : north.outcome().months()) {
      hard += month.month() >= 4 && month.month() <= 8 ? month.figures().unmetWh() : 0.0;
    }
    assertTrue(hard > 0.9 * north.outcome().total().unmetWh());
  }

  /**
   * At 71.3 degrees north the sun stays down while its declination is below -18.7 degrees, from
   * about 18 November to 23 January: 66 days, over the end of the year. The bank carries 4 of them;
   * low sun on both sides adds some, so the one long shortfall lasts 62 to 90 days.
   */
  @Test
  void barrowHasAPolarNight() {
    StudyResult result = run(BARROW);
    for (MonthBooks month : result.outcome().months()) {
      if (month.month() == 12) {
        assertEquals(0.0, month.figures().solarAvailableWh(), 1.0);
      }
    }
    int longest = result.outcome().shortfalls().stream().mapToInt(s -> s.hours()).max().orElse(0);
    assertTrue(longest > 62 * 24 && longest < 90 * 24, "longest shortfall " + longest + " h");
    assertEquals(4.0, result.outcome().autonomy().darkDays().in(12), 0.1);
  }

  /**
   * Yield of a plane at tilt = latitude, nominal cell temperature 45 °C, -0.38 %/K, no other loss:
   * 1889, 1540, 1855 kWh a year for each kW at Denver, Chicago and San Francisco, by an own check
   * (Perez sky) made before this program; within 3 %.
   */
  @Test
  void yearlyYieldsMeetTheOwnCheck() {
    assertYield("epw/USA_CO_Denver.Intl.AP.725650_TMY3.epw", 39.83, -104.65, 1650, -7, 1889.0);
    assertYield("epw/USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw", 41.98, -87.92, 201, -6, 1540.0);
    assertYield("epw/USA_CA_San.Francisco.Intl.AP.724940_TMY3.epw", 37.62, -122.40, 2, -8, 1855.0);
  }

  private void assertYield(
      String file, double lat, double lon, int elevationM, int utc, double expected) {
    var house = new House(file, lat, lon, elevationM, utc, lat, "S", 30, 5.0);
    StudyResult result = run(template("/real/bare-plane.yaml"), house);
    Figures total = result.outcome().total();
    double incidence =
        total.lossesWh().stream()
            .filter(l -> l.name().equals("incidence"))
            .findFirst()
            .orElseThrow()
            .wh();
    assertEquals(expected, (total.solarAvailableWh() + incidence) / 1000.0, 0.03 * expected, file);
  }

  @Test
  void booksCloseOnRealWeather() {
    for (House house : List.of(SEATTLE, BARROW)) {
      Ledgers.assertEveryHourCloses(run(house).ledger());
    }
  }

  @Test
  void nothingIsNegativeOnRealWeather() {
    var ledger = run(CHRISTCHURCH).ledger();
    for (LedgerColumn column : LedgerColumn.values()) {
      for (double wh : column.of(ledger)) {
        assertTrue(wh >= -1e-9, column.header());
      }
    }
  }
}
