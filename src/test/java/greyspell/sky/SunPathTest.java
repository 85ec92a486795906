package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SunPathTest {
  /** What the table may lose against the algorithm itself. */
  private static final double TABLE_DEG = 0.003;

  /** How far the second library and the algorithm stand apart, about a minute and a half of arc. */
  private static final double SECOND_LIBRARY_DEG = 0.03;

  @ParameterizedTest(name = "{0} deg, {1}")
  @CsvSource({
    "-44, 1990",
    "-44, 2024",
    "0, 1999",
    "0, 2050",
    "52, 1990",
    "52, 2012",
    "71, 2005",
    "71, 2050"
  })
  void standsWhereTheAlgorithmSays(double latitudeDeg, int year) {
    double longitudeDeg = -0.4 * latitudeDeg + 11.0;
    double offsetH = 1.0;
    HourCalendar calendar = HourCalendar.of(year, 1);
    SunPath sun = SunPath.of(latitudeDeg, longitudeDeg, offsetH, calendar);
    double worst = 0.0;
    int up = 0;
    // every seventh hour comes past each hour of the day and all seasons
    for (int h = 0; h < calendar.hours(); h += 7) {
      if (sun.sunlitShare()[h] > 0.0) {
        up++;
        Direction direct = direct(moment(sun, h, offsetH), latitudeDeg, longitudeDeg);
        worst =
            Math.max(
                worst,
                direct.apartDeg(new Direction(sun.east()[h], sun.north()[h], sun.cosZenith()[h])));
      }
    }
    assertTrue(up > 500, "hours of sun looked at: " + up);
    assertEquals(0.0, worst, TABLE_DEG);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-44.0, 0.0, 52.0, 71.0})
  void agreesWithASecondLibrary(double latitudeDeg) {
    HourCalendar calendar = HourCalendar.of(2024, 1);
    SunPath sun = SunPath.of(latitudeDeg, 13.4, 1.0, calendar);
    double worst = 0.0;
    for (int h = 0; h < calendar.hours(); h += 5) {
      if (sun.sunlitShare()[h] > 0.0) {
        var other =
            org.shredzone.commons.suncalc.SunPosition.compute()
                .on(moment(sun, h, 1.0))
                .at(latitudeDeg, 13.4)
                .execute();
        worst =
            Math.max(
                worst,
                Direction.ofAngles(90.0 - other.getTrueAltitude(), other.getAzimuth())
                    .apartDeg(new Direction(sun.east()[h], sun.north()[h], sun.cosZenith()[h])));
      }
    }
    assertEquals(0.0, worst, SECOND_LIBRARY_DEG);
  }

  /** The library drops parts of a second, in which the sun moves by up to 0.004 degree. */
  private static Direction direct(Instant moment, double latitudeDeg, double longitudeDeg) {
    Instant second = moment.truncatedTo(ChronoUnit.SECONDS);
    double part = ChronoUnit.MILLIS.between(second, moment) / 1000.0;
    SunPosition before = SunPosition.at(second, latitudeDeg, longitudeDeg, 0.0);
    SunPosition after = SunPosition.at(second.plusSeconds(1), latitudeDeg, longitudeDeg, 0.0);
    Direction from = Direction.ofAngles(before.zenithDeg(), before.azimuthDeg());
    Direction to = Direction.ofAngles(after.zenithDeg(), after.azimuthDeg());
    return new Direction(
        from.east() + part * (to.east() - from.east()),
        from.north() + part * (to.north() - from.north()),
        from.up() + part * (to.up() - from.up()));
  }

  /** The middle of the sunlit part: rising hours are sunlit at their end, setting ones before. */
  private static Instant moment(SunPath sun, int h, double offsetH) {
    double share = sun.sunlitShare()[h];
    double intoHour = 0.5;
    if (share < 1.0) {
      boolean isMorning = sun.azimuthDeg(h) < 180.0;
      intoHour = isMorning ? 1.0 - 0.5 * share : 0.5 * share;
    }
    long start = LocalDate.of(sun.calendar().firstYear(), 1, 1).toEpochDay() * 86_400L;
    return Instant.ofEpochMilli(start * 1000L + Math.round((h + intoHour - offsetH) * 3_600_000.0));
  }

  /** check SOL-5: two independent programs agree to 1e-4 on these; our own construction. */
  @ParameterizedTest(name = "{0} {1} {3}")
  @CsvSource({
    "47.6062, -122.3321, -8, 2024-12-21T20:00:00Z, 71.0678, 178.1121",
    "47.6062, -122.3321, -8, 2024-06-20T20:00:00Z, 24.2704, 173.7926",
    "-33.8688, 151.2093, 10, 2024-03-19T23:00:00Z, 54.4814, 61.4862",
    "-33.8688, 151.2093, 10, 2024-06-21T02:00:00Z, 57.3133, 359.1809",
    "69.6492, 18.9553, 2, 2024-12-21T09:00:00Z, 94.8894, -1",
    "52.52, 13.405, 1, 2024-12-21T14:00:00Z, 85.0030, 219.6215",
    "28.567, 77.103, 5.5, 2024-09-01T09:30:00Z, 42.5638, 249.0397",
  })
  void regressesOnFivePlaces(
      double latitudeDeg,
      double longitudeDeg,
      double offsetH,
      String moment,
      double zenithDeg,
      double azimuthDeg) {
    SunPosition direct = SunPosition.at(Instant.parse(moment), latitudeDeg, longitudeDeg, 0.0);
    assertEquals(zenithDeg, direct.zenithDeg(), 1e-3);
    if (azimuthDeg >= 0.0) {
      assertEquals(azimuthDeg, direct.azimuthDeg(), 1e-3);
    }
    // a clock moved by half an hour puts these full hours into the middle of ours
    SunPath sun = SunPath.of(latitudeDeg, longitudeDeg, offsetH + 0.5, HourCalendar.of(2024, 1));
    int h =
        (int)
            ((Instant.parse(moment).getEpochSecond()
                        - LocalDate.of(2024, 1, 1).toEpochDay() * 86_400L)
                    / 3600.0
                + offsetH);
    if (zenithDeg < 90.0) {
      assertEquals(zenithDeg, sun.zenithDeg()[h], TABLE_DEG);
      assertEquals(azimuthDeg, sun.azimuthDeg(h), 2.0 * TABLE_DEG);
    } else {
      assertEquals(0.0, sun.sunlitShare()[h]);
    }
  }

  /** check SOL-4: transit at 11:46:04.96 UTC-7 on the day of the SPA example. */
  @Test
  void regressesOnTheTransit() {
    long day = LocalDate.of(2003, 10, 17).toEpochDay();
    SunTable table = SunTable.of(day, 2);
    double offMin = 4.0 * Math.toDegrees(table.equationOfTimeRad(day + 18.77 / 24.0));
    double transitMin = 12.0 * 60.0 - offMin + 4.0 * (105.1786 - 105.0);
    assertEquals(11.0 * 60.0 + 46.0 + 4.96 / 60.0, transitMin, 2.0 / 60.0);
  }

  /** check SOL-14: 9.15, 8.22 and 0 hours of day on 21 December. */
  @ParameterizedTest
  @CsvSource({"40.0, 9.15", "47.6, 8.22", "66.6, 0.0"})
  void regressesOnTheShortestDay(double latitudeDeg, double hours) {
    SunPath sun = SunPath.of(latitudeDeg, 0.0, 0.0, HourCalendar.typicalYear());
    double sum = 0.0;
    for (int h = 354 * 24; h < 355 * 24; h++) {
      sum += sun.sunlitShare()[h];
    }
    assertEquals(hours, sum, 0.02);
  }

  @Test
  void aDayOfTheSameLengthEveryDayOnTheEquator() {
    SunPath sun = SunPath.of(0.0, 0.0, 0.0, HourCalendar.typicalYear());
    for (int day = 1; day < 364; day++) {
      double sum = 0.0;
      for (int h = day * 24; h < day * 24 + 24; h++) {
        sum += sun.sunlitShare()[h];
      }
      assertEquals(12.0, sum, 0.01);
    }
  }

  @Test
  void polarNightAndMidnightSun() {
    // Barrow, and Tromso
    for (double[] place : List.of(new double[] {71.3, -156.8}, new double[] {69.65, 18.96})) {
      SunPath sun = SunPath.of(place[0], place[1], Math.rint(place[1] / 15.0), year());
      for (int h = 354 * 24; h < 355 * 24; h++) {
        assertEquals(0.0, sun.sunlitShare()[h]);
        assertEquals(0.0, sun.cosZenith()[h]);
        assertEquals(0.0, sun.extraterrestrialNormalWm2()[h]);
      }
      for (int h = 171 * 24; h < 172 * 24; h++) {
        assertEquals(1.0, sun.sunlitShare()[h]);
        assertTrue(sun.cosZenith()[h] > 0.0);
      }
    }
  }

  /** Near the end of the midnight sun an hour holds evening and morning sun. */
  @Test
  void theSunlitShareRunsSmoothlyIntoTheMidnightSun() {
    SunPath sun = SunPath.of(71.3, 0.0, 0.5, year());
    double before = 0.0;
    for (int day = 100; day < 160; day++) {
      double sum = 0.0;
      for (int h = day * 24; h < day * 24 + 24; h++) {
        assertTrue(sun.sunlitShare()[h] >= 0.0 && sun.sunlitShare()[h] <= 1.0);
        sum += sun.sunlitShare()[h];
      }
      assertTrue(sum >= before - 1e-9, "day " + day + ": " + sum + " after " + before);
      assertTrue(day == 100 || sum - before < 1.1, "day " + day + ": " + sum + " after " + before);
      before = sum;
    }
    assertEquals(24.0, before);
  }

  @Test
  void polesHaveHalfAYearOfDay() {
    for (double latitudeDeg : new double[] {90.0, -90.0}) {
      SunPath sun = SunPath.of(latitudeDeg, 0.0, 0.0, year());
      int up = 0;
      for (double share : sun.sunlitShare()) {
        assertTrue(share >= 0.0);
        up += share > 0.0 ? 1 : 0;
      }
      assertEquals(4380, up, 120);
    }
  }

  @Test
  void nightIsAllZero() {
    SunPath sun = SunPath.of(47.6, -122.3, -8.0, year());
    assertEquals(0.0, sun.sunlitShare()[0]);
    assertEquals(0.0, sun.cosZenith()[0]);
    assertEquals(0.0, sun.zenithDeg()[0]);
    assertEquals(0.0, sun.extraterrestrialNormalWm2()[0]);
  }

  @Test
  void runsOnOverYearEndsAndLeapDays() {
    SunPath three = SunPath.of(52.0, 5.0, 1.0, HourCalendar.of(2015, 3));
    SunPath leap = SunPath.of(52.0, 5.0, 1.0, HourCalendar.of(2016, 1));
    for (int h = 0; h < leap.hours(); h++) {
      assertEquals(leap.cosZenith()[h], three.cosZenith()[365 * 24 + h], 1e-6);
    }
  }

  @Test
  void laterIsTheSameSunLater() {
    SunPath sun = SunPath.of(40.0, 0.0, 0.0, year());
    SunPath anHourLater = sun.later(1.0);
    for (int h = 24; h < 8000; h++) {
      assertEquals(sun.cosZenith()[h + 1], anHourLater.cosZenith()[h], 1e-5);
    }
  }

  @Test
  void refusesPlacesThatAreNone() {
    assertThrows(IllegalArgumentException.class, () -> SunPath.of(91.0, 0.0, 0.0, year()));
    assertThrows(IllegalArgumentException.class, () -> SunPath.of(0.0, 181.0, 0.0, year()));
    assertThrows(IllegalArgumentException.class, () -> SunPath.of(Double.NaN, 0.0, 0.0, year()));
  }

  private static HourCalendar year() {
    return HourCalendar.typicalYear();
  }
}
