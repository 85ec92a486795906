package greyspell.weather;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.published.ValidationData;
import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * USCRN, SURFRAD and NASA POWER: invented files in their layouts; a true fragment where there is
 * one.
 */
class NetworkReadersTest {
  private static final LocalDateTime YEAR = LocalDateTime.of(2019, 1, 1, 0, 0);

  @TempDir private Path folder = Path.of("");

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static String refusal(Path... files) {
    List<String> names = List.of(files).stream().map(f -> String.valueOf(f.getFileName())).toList();
    String message =
        assertThrows(BadInput.class, () -> WeatherReader.readAll(List.of(files), names, null, null))
            .getMessage();
    return message == null ? "" : message;
  }

  // ---- USCRN ------------------------------------------------------------------------------------

  /** A row that ends at this UTC time, six hours behind it local. */
  private static String uscrn(LocalDateTime end, double airC, int solarWm2, int flag) {
    LocalDateTime local = end.minusHours(6);
    return String.format(
        Locale.ROOT,
        "99001 %tY%<tm%<td %<tH%<tM %tY%<tm%<td %<tH%<tM  1.000  -93.80   46.30 %7.1f %7.1f %7.1f"
            + " %7.1f %7.1f %6d %d %6d 0 %6d 0 C %7.1f 0 %7.1f 0 %7.1f 0 %5d 0 %7.3f %7.3f %7.3f"
            + " %7.3f %7.3f %7.1f %7.1f %7.1f %7.1f %7.1f%n",
        end,
        local,
        99.0,
        airC,
        99.0,
        99.0,
        0.0,
        solarWm2,
        flag,
        solarWm2,
        solarWm2,
        1.0,
        1.0,
        1.0,
        -9999,
        -99.0,
        0.2,
        0.2,
        0.2,
        0.2,
        1.0,
        1.0,
        1.0,
        1.0,
        1.0);
  }

  private static String uscrnYear(UnaryOperator<String> change) {
    var text = new StringBuilder();
    for (int h = 1; h <= 8760; h++) {
      LocalDateTime end = YEAR.plusHours(h);
      text.append(change.apply(uscrn(end, 0.1 * (h % 24), end.getHour() == 18 ? 500 : 0, 0)));
    }
    return text.toString();
  }

  @Test
  void uscrnHoursEndAtTheirStampOnStandardTime() throws IOException {
    Path file = file("CRNH0203-2019.txt", uscrnYear(row -> row));
    WeatherSeries series = WeatherReader.readOnItsOwnClock(file, "CRNH0203-2019.txt");
    assertEquals(-6.0, series.source().utcOffsetH(), 0.0);
    assertEquals("USCRN hourly", series.source().format());
    assertEquals(-93.8, requireNonNull(series.source().longitudeDeg()), 0.0);
    assertEquals(46.3, requireNonNull(series.source().latitudeDeg()), 0.0);
    assertNull(series.directNormalWm2());
    int elevenToTwelve = series.calendar().hourOf(2019, 7, 1, 11);
    assertEquals(
        500.0, requireNonNull(series.globalHorizontalWm2())[elevenToTwelve], 0.0, "ends 18 UTC");
    assertEquals(1.8, series.airTemperatureC()[elevenToTwelve], 1e-9, "the hour's mean");
    // a UTC year ends six hours before the local one
    assertEquals(6, series.gaps().missingHours());
  }

  @Test
  void uscrnFlagsAndCodesAreGaps() throws IOException {
    int[] count = new int[1];
    Path file =
        file(
            "f.txt",
            uscrnYear(
                row -> {
                  int h = ++count[0];
                  LocalDateTime end = YEAR.plusHours(h);
                  return h == 5010
                      ? uscrn(end, 1.0, 700, 3)
                      : h == 5034 ? uscrn(end, -9999.0, -99999, 0) : row;
                }));
    WeatherSeries series = WeatherReader.readOnItsOwnClock(file, "f.txt");
    assertEquals(8, series.gaps().missingHours());
    assertTrue(
        series.gaps().notes().toString().contains("1 value flagged as erroneous"),
        series.gaps().toString());
  }

  @Test
  void uscrnFaultsHaveTheirPlace() throws IOException {
    String text = uscrnYear(row -> row);
    int second = text.indexOf('\n') + 1;
    int third = text.indexOf('\n', second) + 1;
    String bad =
        text.substring(0, second)
            + text.substring(second, third).replace("-93.80", "-93.80 7")
            + text.substring(third)
                .replaceFirst(" 2100 ", " 2200 ")
                .replaceFirst("    0\\.4", "    x.4");
    String message = refusal(file("f.txt", bad));
    assertTrue(message.contains("f.txt:2:1  39 fields"), message);
    int column = bad.lines().toList().get(3).indexOf("x.4") + 1;
    assertTrue(message.contains("f.txt:4:" + column + "  air temperature: found \"x.4\""), message);
    assertTrue(message.contains("local time is -300 minutes ahead of UTC"), message);
    assertTrue(
        refusal(file("h.txt", text.replaceFirst(" 0200 ", " 0261 ")))
            .contains("h.txt:2:16  time: found \"0261\""));
    assertTrue(
        refusal(file("g.txt", text.replace(" 1.0     1.0     1.0     1.0     1.0\n", "\n")))
            .contains("must be 38 fields, as in files named CRNH0203-..."));
  }

  /** A true fragment (validation data, not shipped): a day, from 18:00 the evening before. */
  @Test
  void uscrnFragmentIsReadOnItsClock() {
    String name = "samples/uscrn_CRNH0203-2023-NE_Lincoln_11_SW_first24h.txt";
    assertTrue(
        refusal(ValidationData.file(name))
            .contains("the rows run from 2022-12-31 18:00 to 2023-01-01 18:00 (UTC-6)"));
  }

  // ---- SURFRAD ----------------------------------------------------------------------------------

  private static String surfradRow(LocalDateTime end, String global, String airC) {
    return String.format(
        Locale.ROOT,
        " %d %3d %2d %2d %2d %2d %6.3f  90.00 %s  50.0 0 900.0 0 100.0 0"
            + " 300.0 0 280.0 0 280.0 0 350.0 0 290.0 0 290.0 0 40.0 0 90.0 0 100.0 0 -50.0 0 50.0 0"
            + " %s 80.0 0 3.0 0 180.0 0 990.0 0%n",
        end.getYear(),
        end.getDayOfYear(),
        end.getMonthValue(),
        end.getDayOfMonth(),
        end.getHour(),
        end.getMinute(),
        end.getHour() + end.getMinute() / 60.0,
        global,
        airC);
  }

  private static String surfrad(LocalDateTime first, int rows, UnaryOperator<String> change) {
    var text = new StringBuilder(" Otter Narrows\n  46.30  -93.80  390 m version 1\n");
    for (int i = 0; i < rows; i++) {
      LocalDateTime end = first.plusMinutes(30L * i);
      // the half hours that end at 18:00 and 18:30 differ
      boolean isNoon = end.getHour() == 18 && end.getMinute() == 0;
      text.append(change.apply(surfradRow(end, isNoon ? "600.0 0" : "-1.5 0", "4.0 0")));
    }
    return text.toString();
  }

  @Test
  void surfradFilesFollowEachOther() throws IOException {
    Path one = file("a.dat", surfrad(YEAR, 48 * 100, row -> row));
    Path two = file("b.dat", surfrad(YEAR.plusDays(100), 48 * 265 + 1, row -> row));
    WeatherSeries series = WeatherReader.readAll(List.of(one, two), 0.0);
    assertEquals("SURFRAD", series.source().format());
    assertEquals("Otter Narrows", series.source().place());
    assertTrue(series.source().file().endsWith("a.dat and 1 more"), series.source().file());
    assertEquals(0, series.gaps().missingHours());
    int hour = series.calendar().hourOf(2019, 5, 1, 17);
    assertEquals(
        300.0, requireNonNull(series.globalHorizontalWm2())[hour], 1e-9, "17:30 and 18:00");
    assertEquals(
        0.0, requireNonNull(series.globalHorizontalWm2())[hour + 1], 0.0, "negative is none");
    // all rows but one a day, told once for both files
    assertEquals(
        1, series.gaps().notes().stream().filter(note -> note.contains("below zero")).count());
    assertTrue(
        series
            .gaps()
            .notes()
            .contains(
                "global horizontal irradiance: "
                    + (48 * 365 + 1 - 365)
                    + " values below zero set to zero"),
        series.gaps().toString());
    assertEquals(900.0, requireNonNull(series.directNormalWm2())[hour], 0.0);
    assertEquals(100.0, requireNonNull(series.diffuseHorizontalWm2())[hour], 0.0);
    assertEquals(4.0, series.airTemperatureC()[hour], 0.0);
    assertEquals(3.0, requireNonNull(series.windMs())[hour], 0.0);
    String swapped = refusal(two, one);
    assertTrue(swapped.contains("a.dat:3:1  time goes back"), swapped);
    assertTrue(swapped.contains("Name the files in the order of their times"), swapped);
    assertTrue(refusal(one, one).contains("against the end of the file before"));
  }

  @Test
  void whatManyFilesHaveInCommonIsToldOnce() throws IOException {
    UnaryOperator<String> old = text -> text.replace("-93.80", "93.80");
    Path one = file("a.dat", old.apply(surfrad(YEAR, 48 * 100, row -> row)));
    Path two = file("b.dat", old.apply(surfrad(YEAR.plusDays(100), 48 * 265 + 1, row -> row)));
    List<String> told =
        WeatherReader.readAll(List.of(one, two), 0.0).gaps().notes().stream()
            .filter(note -> note.contains("read as west"))
            .toList();
    assertEquals(1, told.size(), told.toString());
    assertTrue(told.get(0).startsWith("2 of 2 files, the first "), told.toString());
  }

  @Test
  void surfradFlagsAndCodesAreGaps() throws IOException {
    Path file =
        file(
            "a.dat",
            surfrad(
                YEAR,
                48 * 365 + 1,
                row ->
                    row.startsWith(" 2019 150")
                        ? row.replace("600.0 0", "600.0 1").replace(" 4.0 0", " -9999.9 0")
                        : row));
    WeatherSeries series = WeatherReader.readOnItsOwnClock(file, "a.dat");
    int hour = series.calendar().hourOf(2019, 5, 30, 17);
    assertEquals(
        0.0,
        requireNonNull(series.globalHorizontalWm2())[hour],
        0.0,
        "half of it is known: a line between its neighbours");
    assertTrue(
        series
            .gaps()
            .notes()
            .contains(
                "global horizontal irradiance: 1 value flagged as erroneous taken as missing"),
        series.gaps().toString());
    // a day of temperature and the hour before, whose second half the first row is
    assertEquals(25, series.gaps().missingHours());
  }

  @Test
  void surfradFaultsHaveTheirPlace() throws IOException {
    String text = surfrad(YEAR, 60, row -> row);
    String message =
        refusal(
            file(
                "a.dat",
                text.replaceFirst(" 990.0 0", "").replaceFirst("900.0 0 100.0", "90o.0 0 100.0")));
    assertTrue(message.contains("a.dat:3:1  46 fields"), message);
    String one = text.replaceFirst("900.0 0 100.0", "90o.0 0 100.0");
    int column = one.lines().toList().get(2).indexOf("90o.0") + 1;
    String number = refusal(file("a.dat", one));
    assertTrue(
        number.contains("a.dat:3:" + column + "  direct normal irradiance: found \"90o.0\""),
        number);
  }

  // ---- NASA POWER -------------------------------------------------------------------------------

  private static String power(String clock, String unit, UnaryOperator<String> change) {
    var text =
        new StringBuilder(
            """
            -BEGIN HEADER-
            NASA/POWER Source Native Resolution Hourly Data
            Dates (month/day/year): 01/01/2019 through 12/31/2019 in CLOCK
            Location: Latitude  46.3000   Longitude -93.8000
            Elevation from MERRA-2: Average for 0.5 x 0.625 degree lat/lon region = 390.25 meters
            The value for missing source data that cannot be computed or is outside of the sources availability range: -999
            Parameter(s):
            T2M                   MERRA-2 Temperature at 2 Meters (C)
            ALLSKY_SFC_SW_DWN     CERES SYN1deg All Sky Surface Shortwave Downward Irradiance (UNIT)
            WS10M                 MERRA-2 Wind Speed at 10 Meters (m/s)
            -END HEADER-
            YEAR,MO,DY,HR,T2M,ALLSKY_SFC_SW_DWN,WS10M
            """
                .replace("CLOCK", clock)
                .replace("UNIT", unit));
    for (int h = 0; h < 8760; h++) {
      LocalDateTime start = YEAR.plusHours(h);
      text.append(
          change.apply(
              String.format(
                  Locale.ROOT,
                  "%d,%d,%d,%d,%.2f,%.2f,4.5%n",
                  start.getYear(),
                  start.getMonthValue(),
                  start.getDayOfMonth(),
                  start.getHour(),
                  -0.1 * start.getHour(),
                  start.getHour() == 12 ? 1.8 : 0.0)));
    }
    return text.toString();
  }

  @Test
  void powerHoursBeginAtTheirStampOnTheClockOfTheHead() throws IOException {
    Path local = file("l.csv", power("LST", "MJ/hr", row -> row));
    WeatherSeries series = WeatherReader.readOnItsOwnClock(local, "l.csv");
    assertEquals(-6.0, series.source().utcOffsetH(), 0.0, "93.8 degrees west: six swaths");
    assertEquals(390.25, requireNonNull(series.source().elevationM()), 0.0);
    assertEquals(
        500.0, requireNonNull(series.globalHorizontalWm2())[12], 1e-9, "1.8 MJ in the hour");
    assertEquals(-1.2, series.airTemperatureC()[12], 1e-9);
    assertEquals(4.5, requireNonNull(series.windMs())[12], 0.0);
    assertTrue(
        series.gaps().notes().toString().contains("read as UTC-6"), series.gaps().toString());
    Path utc = file("u.csv", power("UTC", "Wh/m^2", row -> row));
    WeatherSeries onSite = WeatherReader.read(utc, "u.csv", -6.0);
    assertEquals(1.8, requireNonNull(onSite.globalHorizontalWm2())[6], 1e-9, "12 UTC is 6 local");
  }

  /** Newer heads of the service begin these lines in small letters. */
  @Test
  void powerHeadsInSmallLettersAreReadAlike() throws IOException {
    String text =
        power("LST", "Wh/m^2", row -> row)
            .replace("Latitude", "latitude")
            .replace("Longitude", "longitude")
            .replace("Elevation", "elevation")
            .replace("Parameter(s)", "parameter(s)");
    WeatherSeries series = WeatherReader.readOnItsOwnClock(file("s.csv", text), "s.csv");
    assertEquals(-6.0, series.source().utcOffsetH(), 0.0);
    assertEquals(46.3, requireNonNull(series.source().latitudeDeg()), 0.0);
    assertEquals(-93.8, requireNonNull(series.source().longitudeDeg()), 0.0);
    assertEquals(390.25, requireNonNull(series.source().elevationM()), 0.0);
    assertEquals(
        1,
        refusal(file("n.csv", text.replace("longitude -93.8000", "")))
                .split("s\\.csv|n\\.csv")
                .length
            - 1);
  }

  @Test
  void powerCodesAreGapsAndAFileThatEndsInThemIsRefused() throws IOException {
    Path file =
        file(
            "p.csv",
            power(
                "UTC",
                "Wh/m^2",
                row -> row.startsWith("2019,3,4,5,") ? "2019,3,4,5,-999,-999,-999\n" : row));
    assertEquals(1, WeatherReader.readOnItsOwnClock(file, "p.csv").gaps().missingHours());
    String message =
        refusal(
            file(
                "q.csv",
                power(
                    "UTC",
                    "Wh/m^2",
                    row ->
                        row.startsWith("2019,12,")
                            ? row.replaceFirst(",0.00,4.5|,1.80,4.5", ",-999,4.5")
                            : row)));
    assertTrue(message.contains("global horizontal irradiance: no value for 744 hours"), message);
  }

  @Test
  void powerFaultsHaveTheirPlace() throws IOException {
    String good = power("UTC", "Wh/m^2", row -> row);
    assertTrue(
        refusal(file("p.csv", good.replace("(Wh/m^2)", "(furlongs)")))
            .contains("p.csv:12:19  ALLSKY_SFC_SW_DWN: unit \"furlongs\" in the head"));
    assertTrue(refusal(file("p.csv", good.replace(" in UTC", ""))).contains("tells no clock"));
    assertTrue(
        refusal(file("p.csv", good.replace("-END HEADER-", ""))).contains("no line -END HEADER-"));
    assertTrue(
        refusal(file("p.csv", good.replace("2019,1,1,0,-0.00", "2019,1,1,24,cold")))
            .contains("p.csv:13:10  hour: found \"24\""));
    assertTrue(refusal(file("p.csv", good.replace(",T2M,", ",T10M,"))).contains("no column T2M"));
  }
}
