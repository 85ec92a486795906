package greyspell.sky;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/** Where the sun stands, held against the algorithm's own example and a textbook's. */
class SunPublishedTest implements PublishedChecks {
  private static final String SPA =
      "Reda and Andreas (2004), NREL/TP-560-34302, appendix A.5 (quoted in public test files)";
  private static final String SAMPA =
      "Reda (2010), sun and moon position algorithm, tester listing of the laboratory";
  private static final String BOOK =
      "Duffie, Beckman and Blair (2020), Solar Engineering of Thermal Processes, ";
  private static final String FROM_MEMORY = " (printed answer from memory)";
  private static final int[] MONTH_MEAN_DAY = {
    17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344
  };

  private final List<PublishedCheck> checks = new ArrayList<>();

  @Override
  public List<PublishedCheck> checks() {
    algorithm();
    textbook();
    dailyTable();
    return checks;
  }

  private void add(
      String source, String what, String unit, double expected, double tol, DoubleSupplier got) {
    checks.add(new PublishedCheck("sky", source, what, unit, expected, tol, got));
  }

  private void algorithm() {
    Instant example = Instant.parse("2003-10-17T19:30:30Z");
    SunPosition direct = SunPosition.at(example, 39.742476, -105.1786, 1830.14);
    // the example's zenith of 50.11162 holds a refraction of 0.016332, printed beside it
    double zenithDeg = 50.11162 + 0.016332;
    String place = "2003-10-17 12:30:30 UTC-7, 39.742476 N 105.1786 W, no refraction: ";
    add(SPA, place + "zenith", "deg", zenithDeg, 1e-4, direct::zenithDeg);
    add(SPA, place + "azimuth", "deg", 194.34024, 1e-4, direct::azimuthDeg);
    double utcDays = example.getEpochSecond() / 86_400.0;
    SunTable table = SunTable.of((long) utcDays, 1);
    Direction fast = Direction.of(table, utcDays, 39.742476, -105.1786);
    add(SPA, place + "zenith, from our table", "deg", zenithDeg, 0.003, fast::zenithDeg);
    add(SPA, place + "azimuth, from our table", "deg", 194.34024, 0.003, fast::azimuthDeg);
    add(
        SPA,
        "same, slope 30 deg, rotation -10 deg: incidence",
        "deg",
        25.18700,
        // the refraction that we leave out moves the incidence by less than itself
        0.017,
        () -> fast.incidenceDeg(30.0, 170.0));
    add(
        SPA,
        "same: geocentric declination, from our table",
        "deg",
        -9.31434,
        1e-4,
        () -> Math.toDegrees(table.declinationRad(utcDays)));
    add(
        SPA,
        "same: geocentric local hour angle, from our table",
        "deg",
        11.10590,
        1e-4,
        () ->
            15.0 * (19.0 + 30.5 / 60.0 - 12.0)
                + Math.toDegrees(table.equationOfTimeRad(utcDays))
                - 105.1786);
    add(
        SPA,
        "same: distance of the sun by Spencer, 1/R^2",
        "1",
        1.0 / (0.9965422974 * 0.9965422974),
        // Spencer's own stated error
        1e-3,
        () -> Extraterrestrial.normalWm2(290) / Extraterrestrial.SOLAR_CONSTANT_WM2);
    SunPosition pacific =
        SunPosition.at(Instant.parse("2009-07-22T01:33:00Z"), 24.61167, 143.36167, 0.0);
    String sea = "2009-07-22 01:33 UT, 24.61167 N 143.36167 E: ";
    // printed with a refraction of 0.0042 deg at this height
    add(SAMPA, sea + "zenith", "deg", 14.512686, 0.0045, pacific::zenithDeg);
    add(SAMPA, sea + "azimuth", "deg", 104.387917, 1e-3, pacific::azimuthDeg);
    SunPosition tropic =
        SunPosition.at(Instant.parse("2015-06-12T13:34:11Z"), -3.107, -60.025, 100.0);
    String manaus = "2015-06-12 09:34:11 UTC-4, 3.107 S 60.025 W: ";
    String javaTest = "public test of a position library (refraction 0.016 deg in it)";
    add(javaTest, manaus + "zenith", "deg", 44.1425, 0.017, tropic::zenithDeg);
    add(javaTest, manaus + "azimuth, north of east", "deg", 51.608, 1e-3, tropic::azimuthDeg);
  }

  private void textbook() {
    Direction ten = Direction.ofBook(43.0, 44, 10.5);
    String ex161 = BOOK + "ex. 1.6.1" + FROM_MEMORY;
    add(
        ex161,
        "43 N, 13 Feb 10:30 solar, tilt 45, 15 deg west of south: incidence",
        "deg",
        35.0,
        0.5,
        () -> ten.incidenceDeg(45.0, 195.0));
    String ex162 = BOOK + "ex. 1.6.2 (from memory)";
    Direction nine = Direction.ofBook(43.0, 44, 9.5);
    add(ex162, "43 N, 13 Feb 9:30 solar: zenith", "deg", 66.5, 0.2, nine::zenithDeg);
    add(ex162, "43 N, 13 Feb 9:30 solar: azimuth", "deg", 140.0, 0.2, nine::azimuthDeg);
    Direction evening = Direction.ofBook(43.0, 182, 18.5);
    add(ex162, "43 N, 1 Jul 18:30 solar: zenith", "deg", 79.6, 0.2, evening::zenithDeg);
    add(ex162, "43 N, 1 Jul 18:30 solar: azimuth", "deg", 292.0, 0.2, evening::azimuthDeg);
    String ex163 = BOOK + "ex. 1.6.3" + FROM_MEMORY;
    Direction march = Direction.ofBook(43.0, 75, 16.0);
    add(ex163, "43 N, 16 Mar 16:00 solar: zenith", "deg", 70.3, 0.2, march::zenithDeg);
    add(ex163, "43 N, 16 Mar 16:00 solar: azimuth", "deg", 246.8, 0.2, march::azimuthDeg);
    add(
        ex163,
        "43 N, 16 Mar: sunset 17:51 solar",
        "h",
        17.85,
        1.0 / 60.0,
        () -> 12.0 + sunsetDeg(43.0, declinationDeg(75)) / 15.0);
    add(
        BOOK + "ex. 1.8.1" + FROM_MEMORY,
        "43 N, 13 Feb 10:30, tilt 45, 15 deg west: slanted over level beam",
        "1",
        1.66,
        0.01,
        () -> ten.beamRatio(45.0, 195.0));
    Direction feb16 = Direction.ofBook(40.0, 47, 9.5);
    String ex182 = BOOK + "ex. 1.8.2 and 1.8.3" + FROM_MEMORY;
    add(
        ex182,
        "40 N, 16 Feb 9 to 10 h, tilt 30: slanted over level beam",
        "1",
        1.61,
        0.01,
        () -> feb16.beamRatio(30.0, 180.0));
    add(
        ex182,
        "40 N, 16 Feb 9 to 10 h, tilt 50: slanted over level beam",
        "1",
        1.79,
        0.01,
        () -> feb16.beamRatio(50.0, 180.0));
    add(
        BOOK + "ex. 1.10.1" + FROM_MEMORY,
        "43 N, 15 Apr: light above the air on the level",
        "MJ/m2",
        33.8,
        0.05,
        () -> dailyAboveAirMJm2(43.0, 105));
    add(
        BOOK + "ex. 1.10.2" + FROM_MEMORY,
        "43 N, 15 Apr 10 to 11 h: light above the air on the level",
        "MJ/m2",
        3.79,
        0.01,
        () -> aboveAirMJm2(43.0, 105, 10.0, 11.0));
    add(
        BOOK + "ex. 1.5.1 (from memory)",
        "89.4 W, 3 Feb 10:30 UTC-6: solar time 10:19",
        "min after 10 h",
        19.0,
        0.5,
        () -> {
          LocalDate day = LocalDate.of(2001, 2, 3);
          SunTable table = SunTable.of(day.toEpochDay(), 1);
          double off = table.equationOfTimeRad(day.toEpochDay() + 16.5 / 24.0);
          return 30.0 + 4.0 * (90.0 - 89.4) + 4.0 * Math.toDegrees(off);
        });
    String fao = "Allen et al. (1998), FAO Irrigation and Drainage Paper 56, ex. 8 and 9";
    add(
        fao,
        "20 S, declination 0.120 rad: sunset hour angle",
        "rad",
        1.527,
        0.0005,
        () -> Math.toRadians(sunsetDeg(-20.0, Math.toDegrees(0.120))));
    add(
        fao,
        "20 S, 3 Sep: hours of day",
        "h",
        11.7,
        0.05,
        () -> 2.0 / 15.0 * sunsetDeg(-20.0, Math.toDegrees(0.120)));
  }

  /**
   * Printed for the mean day of each month, with the textbook's declination, which strays up to a
   * degree from the sun's.
   */
  private void dailyTable() {
    String table = BOOK + "table 1.10.1 (from memory)";
    daily(table, 45, 12.1, 17.6, 25.0, 33.2, 39.2, 41.8, 40.4, 35.5, 27.9, 19.8, 13.4, 10.7);
    daily(table, 40, 15.2, 20.5, 27.4, 34.6, 39.7, 41.8, 40.7, 36.5, 30.0, 22.5, 16.4, 13.8);
    daily(table, 0, 36.2, 37.5, 37.9, 36.8, 34.8, 33.5, 33.9, 35.7, 37.2, 37.4, 36.4, 35.7);
    daily(table, -35, 43.2, 38.9, 32.5, 24.9, 18.6, 15.8, 17.0, 22.0, 29.2, 36.5, 41.9, 44.2);
  }

  private void daily(String source, double latitudeDeg, double... printed) {
    for (int month = 0; month < 12; month++) {
      int day = MONTH_MEAN_DAY[month];
      add(
          source,
          String.format(
              Locale.ROOT, "%.0f deg, day %d: light above the air on the level", latitudeDeg, day),
          "MJ/m2",
          printed[month],
          0.3,
          () -> dailyAboveAirMJm2(latitudeDeg, day));
    }
  }

  /** The textbook's declination (Cooper). */
  static double declinationDeg(int dayOfYear) {
    return 23.45 * Math.sin(Math.toRadians(360.0 * (284 + dayOfYear) / 365.0));
  }

  static double sunsetDeg(double latitudeDeg, double declinationDeg) {
    double phi = Math.toRadians(latitudeDeg);
    double delta = Math.toRadians(declinationDeg);
    return Math.toDegrees(
        SunGeometry.sunsetHourAngleRad(
            Math.sin(phi), Math.cos(phi), Math.sin(delta), Math.cos(delta), 0.0));
  }

  static double dailyAboveAirMJm2(double latitudeDeg, int dayOfYear) {
    double half = sunsetDeg(latitudeDeg, declinationDeg(dayOfYear)) / 15.0;
    return aboveAirMJm2(latitudeDeg, dayOfYear, 12.0 - half, 12.0 + half);
  }

  /** Between two solar hours, in small steps. */
  static double aboveAirMJm2(double latitudeDeg, int dayOfYear, double from, double to) {
    int steps = 2000;
    double sum = 0.0;
    for (int i = 0; i < steps; i++) {
      double solarHour = from + (to - from) * (i + 0.5) / steps;
      sum += Direction.ofBook(latitudeDeg, dayOfYear, solarHour).up();
    }
    return 0.0036 * Extraterrestrial.normalWm2(dayOfYear) * sum / steps * (to - from);
  }
}
