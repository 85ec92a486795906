package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Check;
import greyspell.weather.WeatherSeries;
import org.jspecify.annotations.Nullable;

/**
 * The light that reaches one plane of panels in each hour, over the land around it, and what of it
 * enters the glass. The equations stand in {@link TiltedPlane}; here they are fed hour by hour.
 *
 * <p>The sun of a rising or setting hour stands in the middle of its sunlit part, so that the ratio
 * of slanted to level beam is the mean one and not the giant of a sun on the horizon. Light while
 * the sun is down is even sky. Where snow lies deeper than a centimetre the ground has the albedo
 * of snow, else that of the month.
 */
public final class PlaneIrradiance {
  private static final double SNOW_LIES_M = 0.01;

  private final TiltedPlane plane;
  private final SunPath sun;
  private final Site site;
  private final double snowAlbedo;
  private final double @Nullable [] clear;
  private final double[] frontWm2;
  private final double[] absorbedWm2;

  /** With the incidence loss of bare glass. */
  public static PlaneIrradiance of(
      Radiation radiation,
      SunPath sun,
      WeatherSeries weather,
      Site site,
      SkyChoices choices,
      double tiltDeg,
      double azimuthDeg) {
    return of(radiation, sun, weather, site, choices, IncidenceLoss.PHYSICAL, tiltDeg, azimuthDeg);
  }

  /**
   * With the incidence loss of a glass of one's choice.
   *
   * @param weather only its snow depth is read
   * @param tiltDeg 0 (level) to 90 (wall)
   * @param azimuthDeg to which the plane looks, clockwise from true north, 0 to 360
   */
  public static PlaneIrradiance of(
      Radiation radiation,
      SunPath sun,
      WeatherSeries weather,
      Site site,
      SkyChoices choices,
      IncidenceLoss glass,
      double tiltDeg,
      double azimuthDeg) {
    Check.within("tiltDeg", tiltDeg, 0.0, 90.0);
    Check.within("azimuthDeg", azimuthDeg, 0.0, 360.0);
    var plane = new TiltedPlane(choices.tilt(), glass, site.horizon(), tiltDeg, azimuthDeg);
    var result = new PlaneIrradiance(plane, sun, site, choices.snowAlbedo());
    result.again(radiation, weather);
    return result;
  }

  private PlaneIrradiance(TiltedPlane plane, SunPath sun, Site site, double snowAlbedo) {
    this.plane = plane;
    this.sun = sun;
    this.site = site;
    this.snowAlbedo = snowAlbedo;
    clear = site.horizon().isOpen() ? null : sun.clearOf(site.horizon());
    frontWm2 = new double[sun.hours()];
    absorbedWm2 = new double[sun.hours()];
  }

  /**
   * Works out all hours anew, over what it held; not by several threads at a time.
   *
   * @param weather only its snow depth is read
   */
  public void again(Radiation radiation, WeatherSeries weather) {
    double[] snowDepthM = weather.snowDepthM();
    HourCalendar calendar = sun.calendar();
    double[] global = radiation.globalHorizontalWm2();
    double[] direct = radiation.directNormalWm2();
    double[] diffuse = radiation.diffuseHorizontalWm2();
    double[] airMass = radiation.airMass();
    double[] sunlit = sun.sunlitShare();
    double[] cosZenith = sun.cosZenith();
    double[] zenithDeg = sun.zenithDeg();
    double[] east = sun.east();
    double[] north = sun.north();
    double[] aboveAir = sun.extraterrestrialNormalWm2();
    double[] clear = this.clear;
    for (int h = 0; h < global.length; h++) {
      if (diffuse[h] <= 0.0 && direct[h] <= 0.0 && global[h] <= 0.0) {
        frontWm2[h] = 0.0;
        absorbedWm2[h] = 0.0;
        continue;
      }
      if (sunlit[h] > 0.0) {
        plane.sunStands(
            east[h],
            north[h],
            cosZenith[h],
            zenithDeg[h],
            airMass[h],
            clear == null ? 1.0 : clear[h]);
      } else {
        plane.sunIsDown();
      }
      double albedo =
          snowDepthM != null && snowDepthM[h] > SNOW_LIES_M
              ? snowAlbedo
              : site.groundAlbedo().in(calendar.month(h));
      plane.fall(global[h], direct[h], diffuse[h], aboveAir[h] * sunlit[h], albedo);
      frontWm2[h] = plane.frontWm2();
      absorbedWm2[h] = plane.absorbedWm2();
    }
  }

  /** Light that reaches the plane over the land around it, before the glass takes its share. */
  public double[] frontWm2() {
    return frontWm2;
  }

  /** The same after the incidence loss, as if all of it fell in square. */
  public double[] absorbedWm2() {
    return absorbedWm2;
  }
}
