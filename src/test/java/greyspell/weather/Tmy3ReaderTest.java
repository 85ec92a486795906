package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.published.ValidationData;
import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The traps of TMY3 files, one each. */
class Tmy3ReaderTest {
  private static final double FILE_CLOCK = -8.0;
  private static final double EXACT = 0.0;
  private static final double ROUNDING = 1e-12;

  @TempDir Path folder;
  SmallFiles files = new SmallFiles(Path.of("."));

  @BeforeEach
  void useTheFolder() {
    files = new SmallFiles(folder);
  }

  private static String noonSun(SmallFiles.EpwRow row) {
    row.globalWm2 = row.is(7, 4, 13) ? "640" : "0";
    return SmallFiles.tmy3Line(row);
  }

  private static void holdsNoonSun(WeatherSeries series) {
    double[] globalWm2 = series.globalHorizontalWm2();
    assertNotNull(globalWm2);
    assertEquals(640.0, globalWm2[(31 + 28 + 31 + 30 + 31 + 30 + 3) * 24 + 12], EXACT);
  }

  @Test
  void theStampEndsTheHour() throws IOException {
    WeatherSeries series =
        files.read(SmallFiles.tmy3(SmallFiles.TMY3_HEAD, Tmy3ReaderTest::noonSun), FILE_CLOCK);
    holdsNoonSun(series);
    assertTrue(series.calendar().isTypical());
    assertEquals("TMY3", series.source().format());
    assertEquals("TAMARIND, PORT", series.source().place());
    assertEquals(Double.valueOf(12.0), series.source().elevationM());
    assertEquals(0, series.gaps().missingHours());
  }

  @Test
  void twentyFourOClockIsTheLastHourOfItsDate() throws IOException {
    String text =
        SmallFiles.tmy3(
            SmallFiles.TMY3_HEAD,
            r -> {
              r.globalWm2 = r.is(12, 31, 24) ? "5" : "0";
              return SmallFiles.tmy3Line(r);
            });
    double[] globalWm2 = files.read(text, FILE_CLOCK).globalHorizontalWm2();
    assertNotNull(globalWm2);
    assertEquals(5.0, globalWm2[8759], EXACT);
  }

  @Test
  void aTypicalYearStaysTypicalWithOneYearNumber() throws IOException {
    String text =
        SmallFiles.tmy3(
            SmallFiles.TMY3_HEAD,
            r -> {
              r.year = 2005;
              return SmallFiles.tmy3Line(r);
            });
    assertTrue(files.read(text, FILE_CLOCK).calendar().isTypical());
  }

  @Test
  void columnsAreFoundByName() throws IOException {
    String head =
        """
        999001,"PORT TAMARIND",XX,-8.0,37.100,-121.500,12
        Date (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),Pressure (mbar),GHI (W/m^2)
        """;
    String text =
        SmallFiles.tmy3(
            head,
            r ->
                r.month
                    + "/"
                    + r.day
                    + "/"
                    + r.year
                    + ","
                    + r.hour
                    + ":00,4.0,1013,"
                    + (r.is(7, 4, 13) ? "640" : "0"));
    WeatherSeries series = files.read(text, FILE_CLOCK);
    holdsNoonSun(series);
    assertNull(series.windMs());
    assertNull(series.cloudShare());
  }

  @Test
  void minusNineThousandNineHundredIsMissing() throws IOException {
    String text =
        SmallFiles.tmy3(
            SmallFiles.TMY3_HEAD,
            r -> {
              r.temperatureC = r.is(7, 4, 13) ? "-9900" : "10.0";
              return SmallFiles.tmy3Line(r);
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertEquals(1, series.gaps().missingHours());
    assertEquals(10.0, series.airTemperatureC()[4000], ROUNDING);
  }

  @Test
  void readsCopiesThatASpreadsheetWrappedAndPadded() throws IOException {
    String text = SmallFiles.tmy3(SmallFiles.TMY3_HEAD, r -> noonSun(r) + ",,,");
    var wrapped = new StringBuilder();
    for (String line : text.split("\n", -1)) {
      if (!line.isEmpty()) {
        wrapped.append('"').append(line.replace("\"", "\"\"")).append("\"\r\n");
      }
    }
    WeatherSeries series = files.read(wrapped.toString(), FILE_CLOCK);
    holdsNoonSun(series);
    assertEquals("TAMARIND, PORT", series.source().place());
  }

  @Test
  void refusesMidnightWrittenAsZero() {
    String text =
        SmallFiles.tmy3(SmallFiles.TMY3_HEAD, r -> noonSun(r).replace(",24:00,", ",0:00,"));
    String message = files.refusal(text, FILE_CLOCK);
    assertTrue(
        message.startsWith(
            "w.csv:26:12  time: found \"0:00\"\n    must be 01:00 to 24:00, the end of the hour"),
        message);
    assertTrue(message.endsWith("and 345 more\n    only the first 20 faults are shown"), message);
  }

  @Test
  void refusesWhatLacksAColumn() {
    String message =
        files.refusal(
            SmallFiles.tmy3(
                SmallFiles.TMY3_HEAD.replace("GHI (W/m^2)", "GHI"), Tmy3ReaderTest::noonSun),
            FILE_CLOCK);
    assertTrue(message.contains("no column \"GHI (W/m^2)\""), message);
  }

  @Test
  void refusesOlderFixedWidthFiles() {
    String text =
        """
         94846 PORT TAMARIND          XX  -6 N 41 59 W  87 54   205
         80010101000000000000?00000?00000?00000?00000?00000?010A700A7-078A7-128A7067A7
        """;
    String message = files.refusal(text, FILE_CLOCK);
    assertTrue(message.contains("looks like an older fixed-width typical-year file"), message);
  }

  /** A true fragment of a published file: 98 hours, so it must be refused for what is missing. */
  @Test
  void refusesATrueFragmentForWhatIsMissing() {
    Path file = ValidationData.file("samples/tmy3_745090_excerpt.csv");
    String message =
        assertThrows(BadInput.class, () -> WeatherReader.read(file, "excerpt.csv", FILE_CLOCK))
            .getMessage();
    assertNotNull(message);
    assertTrue(
        message.startsWith(
            "excerpt.csv:100:1  global horizontal irradiance: no value for 8662 hours, from 01-05"
                + " 02:00 to 01-01 00:00 (UTC-8)"),
        message);
    assertTrue(message.contains("The rows end early: the file may be cut off."), message);
  }

  /** The true fragment, repeated to fill a year, reads with all its codes. */
  @Test
  void readsATrueFragmentRepeatedToAYear() throws IOException {
    Path file = ValidationData.file("samples/tmy3_745090_excerpt.csv");
    var lines = Files.readAllLines(file);
    String text =
        SmallFiles.tmy3(
            lines.get(0) + "\n" + lines.get(1) + "\n",
            r -> {
              String real = lines.get(2 + (r.hour - 1) + 24 * (r.day % 4));
              int tail = real.indexOf(',', real.indexOf(',') + 1);
              return SmallFiles.tmy3Line(r).substring(0, 16) + real.substring(tail);
            });
    WeatherSeries series = files.read(text, FILE_CLOCK);
    assertEquals(0, series.gaps().missingHours());
    assertTrue(series.source().place().length() > 10);
    // 1 January 13:00 of the fragment is day 4 of each month here; its GHI is the fifth column
    String noon = lines.get(2 + 12);
    double[] globalWm2 = series.globalHorizontalWm2();
    assertNotNull(globalWm2);
    assertEquals(Double.parseDouble(noon.split(",", -1)[4]), globalWm2[3 * 24 + 12], EXACT);
  }
}
