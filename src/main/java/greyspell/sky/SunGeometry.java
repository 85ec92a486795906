package greyspell.sky;

/**
 * The direction to the sun, and the angle at which it meets a plane.
 *
 * <pre>
 * up    = sin(phi) sin(delta) + cos(phi) cos(delta) cos(w)      (cosine of the zenith angle)
 * north = cos(phi) sin(delta) - sin(phi) cos(delta) cos(w)
 * east  = -cos(delta) sin(w)
 * cos(incidence) = up cos(tilt) + sin(tilt) (east sin(azp) + north cos(azp))
 * cos(ws) = -tan(phi) tan(delta), held within -1 .. 1
 *
 * phi    latitude, south negative    rad   -pi/2 .. pi/2
 * delta  declination                 rad   -0.41 .. 0.41
 * w      hour angle, morning negative  rad
 * ws     hour angle of sunset        rad   0 = polar night, pi = midnight sun
 * azp    azimuth to which the plane looks, clockwise from north   rad
 * </pre>
 *
 * <p>Source: spherical trigonometry as in Duffie, Beckman and Blair (2020), Solar Engineering of
 * Thermal Processes, eq. 1.6.2, 1.6.5 and 1.6.10, here as a vector, so that a plane costs no
 * trigonometry. Held by SunPublishedTest against the book's examples.
 */
final class SunGeometry {
  private SunGeometry() {}

  static double up(double sinPhi, double cosPhi, double sinDelta, double cosDelta, double cosW) {
    return sinPhi * sinDelta + cosPhi * cosDelta * cosW;
  }

  static double north(double sinPhi, double cosPhi, double sinDelta, double cosDelta, double cosW) {
    return cosPhi * sinDelta - sinPhi * cosDelta * cosW;
  }

  static double east(double cosDelta, double sinW) {
    return -cosDelta * sinW;
  }

  static double azimuthDeg(double east, double north) {
    double degrees = Math.toDegrees(Math.atan2(east, north));
    return degrees < 0.0 ? degrees + 360.0 : degrees;
  }

  /** The cosine of the incidence angle is the product of this direction and the sun's. */
  static double planeUp(double tiltDeg) {
    return Math.cos(Math.toRadians(tiltDeg));
  }

  static double planeNorth(double tiltDeg, double azimuthDeg) {
    return Math.sin(Math.toRadians(tiltDeg)) * Math.cos(Math.toRadians(azimuthDeg));
  }

  static double planeEast(double tiltDeg, double azimuthDeg) {
    return Math.sin(Math.toRadians(tiltDeg)) * Math.sin(Math.toRadians(azimuthDeg));
  }

  /** Hour angle at which the sun sinks to a height whose sine is given. */
  static double sunsetHourAngleRad(
      double sinPhi, double cosPhi, double sinDelta, double cosDelta, double sinHeight) {
    double rise = sinHeight - sinPhi * sinDelta;
    double swing = cosPhi * cosDelta;
    if (rise >= swing) {
      return 0.0;
    }
    if (rise <= -swing) {
      return Math.PI;
    }
    return Math.acos(rise / swing);
  }
}
