package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import greyspell.weather.WeatherSeries;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlaneIrradianceTest {
  private static final HourCalendar YEAR = HourCalendar.typicalYear();

  private static WeatherSeries clearYear() {
    var columns = new WeatherSeries.Columns();
    columns.cloudShare = new double[YEAR.hours()];
    return SkyFixtures.weather(YEAR, columns);
  }

  private static double yearKWhm2(
      Site site, WeatherSeries weather, double tiltDeg, double azimuthDeg) {
    SunPath sun = SunPath.of(site, YEAR);
    SkyChoices usual = SkyChoices.usual();
    Radiation radiation = Radiation.of(weather, sun, site, usual);
    return SkyFixtures.sum(
            PlaneIrradiance.of(radiation, sun, weather, site, usual, tiltDeg, azimuthDeg)
                .frontWm2())
        / 1000.0;
  }

  @Test
  void theSouthernHemisphereLooksNorth() {
    Site north = SkyFixtures.site(43.0, 0.0, 0.0, 0.0);
    Site south = SkyFixtures.site(-43.0, 0.0, 0.0, 0.0);
    WeatherSeries weather = clearYear();
    double northToSouth = yearKWhm2(north, weather, 40.0, 180.0);
    double southToNorth = yearKWhm2(south, weather, 40.0, 0.0);
    // the southern summer is nearer to the sun and shorter
    assertEquals(northToSouth, southToNorth, 0.02 * northToSouth);
    assertTrue(yearKWhm2(south, weather, 40.0, 180.0) < 0.7 * southToNorth);
  }

  @Test
  void eastAndWestShareASymmetricYear() {
    Site site = SkyFixtures.site(47.0, 0.0, 0.0, 0.0);
    WeatherSeries weather = clearYear();
    double east = yearKWhm2(site, weather, 60.0, 90.0);
    assertEquals(east, yearKWhm2(site, weather, 60.0, 270.0), 0.01 * east);
  }

  @Test
  void polarNightIsDarkOnEveryPlane() {
    Site site = SkyFixtures.site(71.3, -156.8, 10.0, -9.0);
    SunPath sun = SunPath.of(site, YEAR);
    WeatherSeries weather = clearYear();
    Radiation radiation = Radiation.of(weather, sun, site, SkyChoices.usual());
    double[] wall =
        PlaneIrradiance.of(radiation, sun, weather, site, SkyChoices.usual(), 90.0, 180.0)
            .frontWm2();
    for (int h = 340 * 24; h < YEAR.hours(); h++) {
      assertEquals(0.0, wall[h]);
    }
    assertTrue(wall[172 * 24 + 12] > 100.0);
  }

  @Test
  void snowOnTheGroundLightsAWall() {
    Site bare =
        new Site(
            "test",
            47.0,
            0.0,
            0.0,
            0.0,
            Monthly.of(0.1, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.3),
            Horizon.OPEN,
            null,
            null);
    SunPath sun = SunPath.of(bare, YEAR);
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = new double[YEAR.hours()];
    columns.snowDepthM = new double[YEAR.hours()];
    int january = 12;
    int december = 350 * 24 + 12;
    int snowy = 36;
    int dusted = 60;
    for (int h : new int[] {january, december, snowy, dusted}) {
      columns.globalHorizontalWm2[h] = 100.0;
    }
    columns.snowDepthM[snowy] = 0.02;
    columns.snowDepthM[dusted] = 0.01;
    WeatherSeries weather = SkyFixtures.weather(YEAR, columns);
    SkyChoices isotropic = SkyFixtures.choices(SkyChoices.Tilt.ISOTROPIC);
    Radiation radiation = Radiation.of(weather, sun, bare, isotropic);
    // a wall to the north has no beam here: half the sky and half the ground
    double[] wall =
        PlaneIrradiance.of(radiation, sun, weather, bare, isotropic, 90.0, 0.0).frontWm2();
    double[] sky = radiation.diffuseHorizontalWm2();
    assertEquals(0.5 * sky[january] + 0.5 * 0.1 * 100.0, wall[january], 1e-9);
    assertEquals(0.5 * sky[december] + 0.5 * 0.3 * 100.0, wall[december], 1e-9);
    assertEquals(0.5 * sky[snowy] + 0.5 * 0.6 * 100.0, wall[snowy], 1e-9);
    assertEquals(0.5 * sky[dusted] + 0.5 * 0.1 * 100.0, wall[dusted], 1e-9);
  }

  /** A wall of 90 degrees all around leaves nothing at all. */
  @Test
  void inAWellItIsDark() {
    Site site =
        SkyFixtures.site(47.0, 0.0, 0.0, 0.0, new Horizon(List.of(new Horizon.Point(0.0, 90.0))));
    assertEquals(0.0, yearKWhm2(site, clearYear(), 45.0, 180.0), 1e-9);
  }

  @Test
  void refusesPlanesThatAreNone() {
    Site site = SkyFixtures.site(47.0, 0.0, 0.0, 0.0);
    WeatherSeries weather = clearYear();
    assertThrows(IllegalArgumentException.class, () -> yearKWhm2(site, weather, 91.0, 180.0));
    assertThrows(IllegalArgumentException.class, () -> yearKWhm2(site, weather, 30.0, Double.NaN));
  }

  /** A plane's year allocates its two results and nothing by the hour. */
  @Test
  void allocatesNothingByTheHour() {
    Site site = SkyFixtures.site(47.0, 0.0, 0.0, 0.0);
    SunPath sun = SunPath.of(site, YEAR);
    WeatherSeries weather = clearYear();
    SkyChoices usual = SkyChoices.usual();
    Radiation radiation = Radiation.of(weather, sun, site, usual);
    var threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    double sum = 0.0;
    for (int run = 0; run < 20; run++) {
      sum += PlaneIrradiance.of(radiation, sun, weather, site, usual, 30.0, 180.0).frontWm2()[12];
    }
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int run = 0; run < 100; run++) {
      sum += PlaneIrradiance.of(radiation, sun, weather, site, usual, 30.0, 180.0).frontWm2()[12];
    }
    long each = (threads.getCurrentThreadAllocatedBytes() - before) / 100;
    assertTrue(sum > 0.0);
    assertTrue(each < 2 * 8 * YEAR.hours() + 1000, "bytes a plane and year: " + each);
  }
}
