package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The traps of EPW files, one each. */
class EpwReaderTest {
  private static final double FILE_CLOCK = -6.0;
  private static final double EXACT = 0.0;
  private static final double ROUNDING = 1e-12;

  @TempDir Path folder;
  SmallFiles files = new SmallFiles(Path.of("."));

  @BeforeEach
  void useTheFolder() {
    files = new SmallFiles(folder);
  }

  private static double[] global(WeatherSeries series) {
    double[] column = series.globalHorizontalWm2();
    assertNotNull(column);
    return column;
  }

  private static double[] cloud(WeatherSeries series) {
    double[] column = series.cloudShare();
    assertNotNull(column);
    return column;
  }

  private static SmallFiles.EpwRow sun(SmallFiles.EpwRow row, int hour, String wm2) {
    if (row.is(7, 4, hour)) {
      row.globalWm2 = wm2;
    }
    return row;
  }

  @Test
  void hourThirteenIsTheHourFromNoonToOne() throws IOException {
    WeatherSeries series = files.read(SmallFiles.epw(r -> sun(r, 13, "640")), FILE_CLOCK);
    assertEquals(640.0, global(series)[series.calendar().hourOf(2019, 7, 4, 12)], EXACT);
    assertEquals(8760, series.hours());
    assertEquals(-6.0, series.source().utcOffsetH(), EXACT);
    assertEquals("Otter Narrows", series.source().place());
    assertEquals(Double.valueOf(-93.8), series.source().longitudeDeg());
  }

  @Test
  void hourTwentyFourBelongsToItsOwnDate() throws IOException {
    String text =
        SmallFiles.epw(
            r -> {
              r.globalWm2 = r.is(12, 31, 24) ? "7" : "0";
              return r;
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertEquals(7.0, global(series)[8759], EXACT);
  }

  @Test
  void theMinuteFieldIsIgnored() throws IOException {
    WeatherSeries sixty = files.read(SmallFiles.epw(r -> sun(r, 13, "640")), FILE_CLOCK);
    WeatherSeries zero =
        files.read(
            SmallFiles.epw(
                r -> {
                  r.minute = 0;
                  return sun(r, 13, "640");
                }),
            FILE_CLOCK);
    assertEquals(
        global(sixty)[sixty.calendar().hourOf(2019, 7, 4, 12)],
        global(zero)[zero.calendar().hourOf(2019, 7, 4, 12)],
        EXACT);
  }

  @Test
  void yearsThatDifferByMonthMakeOneTypicalYear() throws IOException {
    String text =
        SmallFiles.epw(
            r -> {
              r.year = r.month == 1 ? 2004 : r.month == 2 ? 1980 : 1999;
              return sun(r, 13, "640");
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertTrue(series.calendar().isTypical());
    assertEquals(365, series.calendar().days());
    assertEquals(640.0, global(series)[(31 + 28 + 31 + 30 + 31 + 30 + 3) * 24 + 12], EXACT);
    assertTrue(
        series.gaps().notes().get(0).startsWith("one typical year, pieced together from months of"),
        series.gaps().toString());
  }

  @Test
  void oneRealLeapYearKeepsItsLeapDay() throws IOException {
    String text =
        SmallFiles.epw(
            SmallFiles.EPW_HEAD,
            LocalDateTime.of(2020, 1, 1, 0, 0),
            8784,
            1,
            r -> {
              r.globalWm2 = r.is(2, 29, 12) ? "333" : "0";
              return r;
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertEquals(8784, series.hours());
    assertEquals(2020, series.calendar().firstYear());
    assertEquals(333.0, global(series)[series.calendar().hourOf(2020, 2, 29, 11)], EXACT);
  }

  @Test
  void aLeapYearWithoutLeapDayIsTakenAsTypical() throws IOException {
    String text =
        SmallFiles.epw(
            r -> {
              r.year = 2020;
              return r;
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertTrue(series.calendar().isTypical());
    assertEquals(0, series.gaps().missingHours());
    assertEquals(
        "2020 is a leap year, but the file has no 29 February: taken as a typical year",
        series.gaps().notes().get(0));
  }

  @Test
  void aTypicalYearHasNoLeapDay() throws IOException {
    String text =
        SmallFiles.epw(
            SmallFiles.EPW_HEAD,
            LocalDateTime.of(2020, 1, 1, 0, 0),
            8784,
            1,
            r -> {
              r.year = r.month == 2 ? 2004 : 1998;
              r.globalWm2 = r.is(3, 1, 12) ? "333" : "0";
              return r;
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertEquals(8760, series.hours());
    assertEquals(333.0, global(series)[59 * 24 + 11], EXACT);
    assertTrue(
        series
            .gaps()
            .notes()
            .contains("29 February left out (24 rows): a typical year has 365 days"));
  }

  @Test
  void temperatureIsTheMeanOfBothEndsOfTheHour() throws IOException {
    String text =
        SmallFiles.epw(
            r -> {
              r.temperatureC = r.is(7, 4, 13) ? "20.0" : r.is(12, 31, 24) ? "-6.0" : "10.0";
              return r;
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    int noon = series.calendar().hourOf(2019, 7, 4, 12);
    assertEquals(15.0, series.airTemperatureC()[noon], ROUNDING);
    assertEquals(15.0, series.airTemperatureC()[noon + 1], ROUNDING);
    assertEquals(2.0, series.airTemperatureC()[0], ROUNDING, "before the first row comes the last");
  }

  @Test
  void knowsTheCodesOfMissingValues() throws IOException {
    String text =
        SmallFiles.epw(
            r -> {
              if (r.is(7, 4, 13)) {
                r.globalWm2 = "9999";
                r.directWm2 = "-9999";
                r.temperatureC = "99.9";
                r.windMs = "999";
                r.opaqueTenths = "99";
                r.totalTenths = "99";
              }
              return r;
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertEquals(1, series.gaps().missingHours());
    assertEquals(10.0, series.airTemperatureC()[series.calendar().hourOf(2019, 7, 4, 12)], EXACT);
    assertTrue(
        series
            .gaps()
            .notes()
            .contains("global horizontal irradiance: 1 hour filled by a straight line"),
        series.gaps().toString());
  }

  @Test
  void takesOpaqueCloudBeforeTotalCloud() throws IOException {
    String text =
        SmallFiles.epw(
            r -> {
              r.totalTenths = "9";
              r.opaqueTenths = r.month == 1 ? "4" : "99";
              return r;
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertEquals(0.4, cloud(series)[100], ROUNDING);
    assertEquals(0.9, cloud(series)[5000], ROUNDING);
  }

  @Test
  void snowThatNeverChangesIsACode() throws IOException {
    String code =
        SmallFiles.epw(
            r -> {
              r.snowCm = "99";
              return r;
            });
    WeatherSeries without = files.read(code, FILE_CLOCK);
    assertNull(without.snowDepthM());
    assertTrue(
        without
            .gaps()
            .notes()
            .contains("snow depth: the same all year, taken for a code and left out"));
    String missing =
        SmallFiles.epw(
            r -> {
              r.snowCm = "999";
              return r;
            });
    assertNull(files.read(missing, FILE_CLOCK).snowDepthM());
    String real =
        SmallFiles.epw(
            r -> {
              r.snowCm = r.month == 1 ? "30" : "0";
              return r;
            });
    double[] snow = files.read(real, FILE_CLOCK).snowDepthM();
    assertNotNull(snow);
    assertEquals(0.3, snow[100], ROUNDING);
  }

  @Test
  void severalRecordsAnHourAreAveraged() throws IOException {
    String head = SmallFiles.EPW_HEAD.replace("PERIODS,1,1,", "PERIODS,1,4,");
    String text =
        SmallFiles.epw(
            head,
            LocalDateTime.of(2019, 1, 1, 0, 0),
            8760,
            4,
            r -> {
              r.globalWm2 = r.is(7, 4, 13) ? Integer.toString(r.minute * 10) : "0";
              return r;
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertEquals(375.0, global(series)[series.calendar().hourOf(2019, 7, 4, 12)], EXACT);
  }

  @Test
  void readsWindowsLinesLatinNamesQuotedCommasAndPaddedHeads() throws IOException {
    String head =
        SmallFiles.EPW_HEAD
            .replace("Otter Narrows", "\"Sk\u00e5ne, \u00d6\"")
            .replace("390.0\n", "390.0,,,,,,\n")
            .replace(",12/31", ",12/31,,,,,");
    String text =
        SmallFiles.epw(head, LocalDateTime.of(2019, 1, 1, 0, 0), 8760, 1, r -> r)
            .replace("\n", "\r\n");
    assertEquals(
        "Sk\u00e5ne, \u00d6",
        files.read(text, StandardCharsets.ISO_8859_1, FILE_CLOCK).source().place());
    assertEquals(
        "Sk\u00e5ne, \u00d6",
        files.read(text, StandardCharsets.UTF_8, FILE_CLOCK).source().place());
  }

  @Test
  void movesToTheSitesClockByWholeHours() throws IOException {
    WeatherSeries series = files.read(SmallFiles.epw(r -> sun(r, 13, "640")), -5.0);
    assertEquals(640.0, global(series)[series.calendar().hourOf(2019, 7, 4, 13)], EXACT);
    assertEquals(-5.0, series.source().utcOffsetH(), EXACT);
    assertEquals(
        "clock: moved from UTC-6 to UTC-5; what left the year at one end (1 hour) comes in at the"
            + " other",
        series.gaps().notes().get(0));
  }

  @Test
  void keepsAHalfHourThatTheSiteDoesNotHave() throws IOException {
    String head = SmallFiles.EPW_HEAD.replace(",-6.0,", ",5.5,");
    String text =
        SmallFiles.epw(head, LocalDateTime.of(2019, 1, 1, 0, 0), 8760, 1, r -> sun(r, 13, "640"));
    WeatherSeries own = files.read(text, 5.5);
    assertEquals(5.5, own.source().utcOffsetH(), EXACT);
    assertTrue(own.gaps().notes().isEmpty());
    WeatherSeries moved = files.read(text, 8.0);
    assertEquals(8.5, moved.source().utcOffsetH(), EXACT);
    assertEquals(640.0, global(moved)[moved.calendar().hourOf(2019, 7, 4, 15)], EXACT);
    assertTrue(
        moved.gaps().notes().get(1).startsWith("clock: the hours of the file begin at other"),
        moved.gaps().toString());
  }

  @Test
  void refusesAMissingMonth() {
    String text =
        SmallFiles.epw(
            r -> {
              r.isLeftOut = r.month == 7;
              return r;
            });
    String message = files.refusal(text, FILE_CLOCK);
    assertTrue(
        message.contains(
            "air temperature: no value for 744 hours, from 2019-07-01 00:00 to 2019-08-01 00:00"
                + " (UTC-6)\n    at most 120 missing hours in one run can be filled"),
        message);
    assertTrue(message.startsWith("w.csv:4352:1  global horizontal irradiance"), message);
  }

  @Test
  void refusesRowsOutOfOrderAndTwice() {
    String text =
        SmallFiles.epw(
            r -> {
              r.hour = r.is(7, 4, 13) ? 12 : r.is(7, 5, 13) ? 11 : r.hour;
              return r;
            });
    String message = files.refusal(text, FILE_CLOCK);
    assertTrue(message.contains("a second row for month 7, day 4, hour 12"), message);
    assertTrue(message.contains("time goes back to month 7, day 5, hour 11"), message);
  }

  @Test
  void refusesAFileThatIsCutOffWithinALine() {
    String whole = SmallFiles.epw(r -> r);
    String message = files.refusal(whole.substring(0, 100_000), FILE_CLOCK);
    assertTrue(message.contains("fields\n    must be 35 fields in each row"), message);
    assertTrue(message.contains("The last line looks cut off"), message);
  }

  @Test
  void refusesWordsAndNonNumbers() {
    String text =
        SmallFiles.epw(
            r -> {
              r.globalWm2 = r.is(7, 4, 13) ? "NaN" : "0";
              r.temperatureC = r.is(7, 4, 14) ? "inf" : "10.0";
              return r;
            });
    String message = files.refusal(text, FILE_CLOCK);
    assertTrue(message.contains("global horizontal irradiance: found \"NaN\""), message);
    assertTrue(message.contains("air temperature: found \"inf\""), message);
  }

  @Test
  void refusesTwoYearsInOneFile() {
    String text =
        SmallFiles.epw(
            SmallFiles.EPW_HEAD, LocalDateTime.of(2018, 1, 1, 0, 0), 2 * 8760, 1, r -> r);
    assertTrue(
        files.refusal(text, FILE_CLOCK).contains("more than 8784 rows\n    must be one year"));
  }

  @Test
  void refusesAHeadWithoutItsParts() {
    assertTrue(
        files
            .refusal("LOCATION,a,b,c,d,0,46.3,-93.8,-6.0,390\nDESIGN CONDITIONS,0\n", FILE_CLOCK)
            .contains("no DATA PERIODS line"));
    assertTrue(files.refusal("LOCATION,a,b\n", FILE_CLOCK).contains("LOCATION with 3 fields"));
    String text =
        SmallFiles.epw(
            SmallFiles.EPW_HEAD.replace("46.3", "N46"),
            LocalDateTime.of(2019, 1, 1, 0, 0),
            8760,
            1,
            r -> r);
    assertTrue(
        files.refusal(text, FILE_CLOCK).startsWith("w.csv:1:37  latitude: found \"N46\""),
        files.refusal(text, FILE_CLOCK));
  }
}
