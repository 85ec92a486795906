package greyspell.sky;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.Check;
import greyspell.weather.WeatherSeries;
import org.jspecify.annotations.Nullable;

/**
 * The light that reaches one plane of panels in each hour, over the land around it, and what of it
 * enters the glass.
 *
 * <pre>
 * beam   = DNI a v
 * sky    = DHI s max(0, (1 - F1)(1 + cos b)/2 + F2 sin b)  +  DHI F1 v a / cos z
 * ground = rho G (1 - cos b)/2
 * G      = GHI - DNI cos z (1 - v) - DHI (1 - s0), not below 0
 * front  = beam + sky + ground
 * absorbed: each part times its {@link IncidenceLoss}; the part of the sky around the sun as the beam
 *
 *              F1                              F2
 * ISOTROPIC    0                               0
 * HAY_DAVIES   DNI / I0n, at most 1            0
 * PEREZ        {@link PerezSky}                {@link PerezSky}
 *
 * a    max(0, cosine of the angle between beam and normal)
 * b    tilt, 0 .. 90 deg;  rho  albedo of the ground by month, of snow where it lies over 1 cm deep
 * v    share of the hour's sunlit part in which the sun stands above the land
 * s    share of the even sky that the plane sees above the land ({@link SkyView}); s0 of a level plane
 * I0n  light above the air in the sunlit part of the hour, as a mean of the whole hour
 * </pre>
 *
 * <p>Guards: while the sun is down, or where DHI is 0, F1 = F2 = 0; below 5 degrees of sun F1 is
 * lowered by cos z / cos 85 deg, which bounds the light around the sun as the source of Perez does
 * (its a / max(cos 85 deg, cos z)) and gives the rest back to the even sky, so that a level plane
 * receives DNI cos z + DHI exactly. The sun of a rising hour stands in the middle of its sunlit
 * part, so that the ratio of slanted to level beam is the mean one and not the giant of a sun on
 * the horizon.
 *
 * <p>Sources: Liu and Jordan (1963) for ISOTROPIC, Hay and Davies (1980), Perez et al. (1990); the
 * anisotropy form as in Duffie, Beckman and Blair (2020), ch. 2.15 and 2.16. Held by
 * TiltPublishedTest and, with real weather, by TransposedYearsTest.
 */
public final class PlaneIrradiance {
  private static final double LOWEST_COS_ZENITH = Math.cos(Math.toRadians(85.0));
  private static final double SNOW_LIES_M = 0.01;

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
    var plane = new PlaneIrradiance(sun.hours());
    plane.fill(radiation, sun, weather.snowDepthM(), site, choices, glass, tiltDeg, azimuthDeg);
    return plane;
  }

  private PlaneIrradiance(int hours) {
    frontWm2 = new double[hours];
    absorbedWm2 = new double[hours];
  }

  private void fill(
      Radiation radiation,
      SunPath sun,
      double @Nullable [] snowDepthM,
      Site site,
      SkyChoices choices,
      IncidenceLoss glass,
      double tiltDeg,
      double azimuthDeg) {
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
    Horizon horizon = site.horizon();
    double[] visible = horizon.isOpen() ? null : sun.clearOf(horizon);
    double skyShare = SkyView.clearShare(horizon, tiltDeg, azimuthDeg);
    double levelSkyShare = SkyView.clearShare(horizon, 0.0, 0.0);
    double planeUp = SunGeometry.planeUp(tiltDeg);
    double planeNorth = SunGeometry.planeNorth(tiltDeg, azimuthDeg);
    double planeEast = SunGeometry.planeEast(tiltDeg, azimuthDeg);
    double sinTilt = Math.sin(Math.toRadians(tiltDeg));
    double dome = 0.5 * (1.0 + planeUp);
    double floor = 0.5 * (1.0 - planeUp);
    double skyGlass = glass.skyFactor(tiltDeg);
    double groundGlass = glass.groundFactor(tiltDeg);
    boolean isPerez = choices.tilt() == SkyChoices.Tilt.PEREZ;
    boolean isHayDavies = choices.tilt() == SkyChoices.Tilt.HAY_DAVIES;
    double snowAlbedo = choices.snowAlbedo();

    for (int h = 0; h < global.length; h++) {
      double dhi = diffuse[h];
      double dni = direct[h];
      if (dhi <= 0.0 && dni <= 0.0 && global[h] <= 0.0) {
        continue;
      }
      double around = 0.0; // F1
      double band = 0.0; // F2
      double facing = 0.0; // a
      double clear = 0.0; // v
      double cosZ = cosZenith[h];
      if (sunlit[h] > 0.0) {
        clear = visible == null ? 1.0 : visible[h];
        facing = cosZ * planeUp + east[h] * planeEast + north[h] * planeNorth;
        facing = facing > 0.0 ? facing : 0.0;
        if (dhi > 0.0) {
          double light = aboveAir[h] * sunlit[h];
          if (isPerez) {
            double z = Math.toRadians(zenithDeg[h]);
            int row = PerezSky.row(PerezSky.clearness(dhi, dni, z));
            double brightness = dhi * airMass[h] / light;
            around = PerezSky.circumsolarShare(row, brightness, z);
            band = PerezSky.horizonShare(row, brightness, z);
          } else if (isHayDavies) {
            around = dni < light ? dni / light : 1.0;
          }
          if (cosZ < LOWEST_COS_ZENITH) {
            around *= cosZ / LOWEST_COS_ZENITH;
          }
        }
      }
      double beam = dni * facing * clear;
      double aureole = around > 0.0 ? dhi * around * clear * facing / cosZ : 0.0;
      double even = (1.0 - around) * dome + band * sinTilt;
      even = even > 0.0 ? dhi * skyShare * even : 0.0;
      double onGround = global[h] - dni * cosZ * (1.0 - clear) - dhi * (1.0 - levelSkyShare);
      double ground = 0.0;
      if (onGround > 0.0 && floor > 0.0) {
        double albedo =
            snowDepthM != null && snowDepthM[h] > SNOW_LIES_M
                ? snowAlbedo
                : site.groundAlbedo().in(calendar.month(h));
        ground = albedo * onGround * floor;
      }
      frontWm2[h] = beam + aureole + even + ground;
      absorbedWm2[h] =
          (beam + aureole) * glass.factor(facing) + even * skyGlass + ground * groundGlass;
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
