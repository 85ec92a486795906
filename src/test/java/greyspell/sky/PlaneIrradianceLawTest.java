package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.weather.WeatherSeries;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Laws that hold for every place, sky and plane. */
class PlaneIrradianceLawTest {
  private static final HourCalendar YEAR = HourCalendar.typicalYear();

  /** A year of random skies at a place, so that DNI cos z + DHI is GHI. */
  private record Case(Site site, SunPath sun, WeatherSeries weather, Radiation radiation) {
    static Case of(double latitudeDeg, long seed) {
      Site site = SkyFixtures.site(latitudeDeg, 10.0, 300.0, 1.0);
      SunPath sun = SunPath.of(site, YEAR);
      var random = new Random(seed);
      var columns = new WeatherSeries.Columns();
      columns.globalHorizontalWm2 = new double[YEAR.hours()];
      columns.snowDepthM = new double[YEAR.hours()];
      for (int h = 0; h < YEAR.hours(); h++) {
        columns.globalHorizontalWm2[h] =
            sun.extraterrestrialHorizontalWm2(h) * 1.1 * random.nextDouble();
        columns.snowDepthM[h] = random.nextInt(3) == 0 ? 0.1 : 0.0;
      }
      WeatherSeries weather = SkyFixtures.weather(YEAR, columns);
      return new Case(site, sun, weather, Radiation.of(weather, sun, site, SkyChoices.usual()));
    }

    PlaneIrradiance on(Horizon horizon, SkyChoices.Tilt tilt, double tiltDeg, double azimuthDeg) {
      return PlaneIrradiance.of(
          radiation,
          sun,
          weather,
          SkyFixtures.over(site, horizon),
          SkyFixtures.choices(tilt),
          tiltDeg,
          azimuthDeg);
    }
  }

  @Property(tries = 40)
  void lightIsFiniteAndNeverBelowZero(
      @ForAll @DoubleRange(min = -90.0, max = 90.0) double latitudeDeg,
      @ForAll @DoubleRange(min = 0.0, max = 90.0) double tiltDeg,
      @ForAll @DoubleRange(min = 0.0, max = 360.0) double azimuthDeg,
      @ForAll @DoubleRange(min = 0.0, max = 90.0) double heightDeg,
      @ForAll SkyChoices.Tilt tilt,
      @ForAll long seed) {
    Case at = Case.of(latitudeDeg, seed);
    var horizon =
        new Horizon(List.of(new Horizon.Point(100.0, heightDeg), new Horizon.Point(270.0, 0.0)));
    PlaneIrradiance plane = at.on(horizon, tilt, tiltDeg, azimuthDeg);
    for (int h = 0; h < YEAR.hours(); h++) {
      double front = plane.frontWm2()[h];
      double absorbed = plane.absorbedWm2()[h];
      assertTrue(front >= 0.0 && front < 2500.0, () -> "front " + front);
      assertTrue(absorbed >= 0.0 && absorbed <= front + 1e-9, () -> absorbed + " of " + front);
      if (at.sun.sunlitShare()[h] == 0.0) {
        assertEquals(0.0, front);
      }
    }
  }

  @Property(tries = 25)
  void aLevelPlaneReceivesTheGlobalLight(
      @ForAll @DoubleRange(min = -80.0, max = 80.0) double latitudeDeg,
      @ForAll @DoubleRange(min = 0.0, max = 360.0) double azimuthDeg,
      @ForAll SkyChoices.Tilt tilt,
      @ForAll long seed) {
    Case at = Case.of(latitudeDeg, seed);
    PlaneIrradiance plane = at.on(Horizon.OPEN, tilt, 0.0, azimuthDeg);
    for (int h = 0; h < YEAR.hours(); h++) {
      assertEquals(at.radiation.globalHorizontalWm2()[h], plane.frontWm2()[h], 1e-9);
    }
  }

  @Property(tries = 25)
  void higherLandNeverGivesMore(
      @ForAll @DoubleRange(min = -70.0, max = 70.0) double latitudeDeg,
      @ForAll @DoubleRange(min = 0.0, max = 90.0) double tiltDeg,
      @ForAll @DoubleRange(min = 0.0, max = 360.0) double azimuthDeg,
      @ForAll @DoubleRange(min = 0.0, max = 40.0) double lowDeg,
      @ForAll @DoubleRange(min = 0.0, max = 40.0) double moreDeg,
      @ForAll @IntRange(min = 0, max = 359) int towardsDeg,
      @ForAll SkyChoices.Tilt tilt,
      @ForAll long seed) {
    Case at = Case.of(latitudeDeg, seed);
    PlaneIrradiance low = at.on(land(towardsDeg, lowDeg), tilt, tiltDeg, azimuthDeg);
    PlaneIrradiance high = at.on(land(towardsDeg, lowDeg + moreDeg), tilt, tiltDeg, azimuthDeg);
    for (int h = 0; h < YEAR.hours(); h++) {
      assertTrue(high.frontWm2()[h] <= low.frontWm2()[h] + 1e-9);
      assertTrue(high.absorbedWm2()[h] <= low.absorbedWm2()[h] + 1e-9);
    }
  }

  private static Horizon land(int towardsDeg, double heightDeg) {
    return new Horizon(
        List.of(
            new Horizon.Point(towardsDeg, heightDeg),
            new Horizon.Point((towardsDeg + 120) % 360, 0.3 * heightDeg)));
  }

  /** The hour before and after noon as mirror images: a plane to the east and one to the west. */
  @Property(tries = 200)
  void eastAndWestAreMirrorImages(
      @ForAll @DoubleRange(min = 1.0, max = 89.9) double zenithDeg,
      @ForAll @DoubleRange(min = 0.0, max = 360.0) double sunAzimuthDeg,
      @ForAll @DoubleRange(min = 0.0, max = 90.0) double tiltDeg,
      @ForAll @DoubleRange(min = 0.0, max = 360.0) double azimuthDeg,
      @ForAll @DoubleRange(min = 0.0, max = 1000.0) double direct,
      @ForAll @DoubleRange(min = 0.0, max = 500.0) double diffuse,
      @ForAll SkyChoices.Tilt tilt) {
    double here = light(zenithDeg, sunAzimuthDeg, tiltDeg, azimuthDeg, direct, diffuse, tilt);
    double mirror =
        light(zenithDeg, 360.0 - sunAzimuthDeg, tiltDeg, 360.0 - azimuthDeg, direct, diffuse, tilt);
    assertEquals(here, mirror, 1e-9);
    // the other half of the world: north and south exchanged
    double south =
        light(
            zenithDeg,
            (540.0 - sunAzimuthDeg) % 360.0,
            tiltDeg,
            (540.0 - azimuthDeg) % 360.0,
            direct,
            diffuse,
            tilt);
    assertEquals(here, south, 1e-9);
  }

  private static double light(
      double zenithDeg,
      double sunAzimuthDeg,
      double tiltDeg,
      double azimuthDeg,
      double direct,
      double diffuse,
      SkyChoices.Tilt tilt) {
    Direction sun = Direction.ofAngles(zenithDeg, sunAzimuthDeg);
    var plane = new TiltedPlane(tilt, IncidenceLoss.PHYSICAL, Horizon.OPEN, tiltDeg, azimuthDeg);
    plane.sunStands(
        sun.east(), sun.north(), sun.up(), zenithDeg, AirMass.relative(sun.up(), zenithDeg), 1.0);
    plane.fall(direct * sun.up() + diffuse, direct, diffuse, 1367.0, 0.2);
    return plane.frontWm2() + plane.absorbedWm2();
  }
}
