package greyspell.sky;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun stands at one moment, by the solar position algorithm (SPA): the only class that
 * sees the library. Slow (about 300 series terms a call): {@link SunTable} asks it every few days
 * and {@link SunPath} works from there.
 *
 * <pre>
 * zenith   angle from straight overhead, no refraction   deg   0 .. 180
 * azimuth  clockwise from true north                     deg   0 .. 360
 * delta T  terrestrial minus universal time, estimated by the library from the date   s
 *
 * seen from the north pole, where azimuth and height need no latitude:
 *   declination (geocentric) = 90 - zenith + parallax(zenith)
 *   Greenwich hour angle     = azimuth - 180, because the local meridian is Greenwich's
 *   equation of time         = Greenwich hour angle - 15 (UT - 12 h)
 * </pre>
 *
 * <p>Refraction is left out: it lifts a sun at the horizon by half a degree, where it brings next
 * to no energy, and half an arc minute at 60 degrees from overhead. Valid for the years -2000 to
 * 6000.
 *
 * <p>Source: Reda and Andreas (2004), Solar position algorithm for solar radiation applications,
 * NREL/TP-560-34302. Held by SunPublishedTest.
 */
public final class SunPosition {
  /** Of the sun at its mean distance: 8.794 seconds of arc. */
  static final double PARALLAX_RAD = Math.toRadians(8.794 / 3600.0);

  private final double zenithDeg;
  private final double azimuthDeg;

  private SunPosition(SolarPosition position) {
    zenithDeg = position.zenithAngle();
    azimuthDeg = position.azimuth();
  }

  /** Parts of a second are dropped by the library: the sun moves 0.004 degree in a second. */
  public static SunPosition at(
      Instant moment, double latitudeDeg, double longitudeDeg, double elevationM) {
    ZonedDateTime time = moment.atZone(ZoneOffset.UTC);
    double deltaT = DeltaT.estimate(time.toLocalDate());
    return new SunPosition(
        SPA.calculateSolarPosition(time, latitudeDeg, longitudeDeg, elevationM, deltaT));
  }

  /** At 12 h universal time of a day counted from 1 January 1970. */
  static SunPosition fromPoleAtNoon(long epochDay) {
    return at(Instant.ofEpochSecond(epochDay * 86_400L + 43_200L), 90.0, 0.0, 0.0);
  }

  public double zenithDeg() {
    return zenithDeg;
  }

  public double azimuthDeg() {
    return azimuthDeg;
  }

  /** Only of a position seen from the pole. */
  double declinationRad() {
    double zenith = Math.toRadians(zenithDeg);
    return 0.5 * Math.PI - zenith + PARALLAX_RAD * Math.sin(zenith);
  }

  /** Only of a position seen from the pole at 12 h: equation of time as an angle. */
  double equationOfTimeRad() {
    return Math.toRadians(azimuthDeg - 180.0);
  }
}
