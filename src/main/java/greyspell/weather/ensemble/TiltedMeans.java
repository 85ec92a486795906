package greyspell.weather.ensemble;

import greyspell.quantity.Check;

/**
 * Turns "peak sun hours" on a tilted plane back into sunshine on level ground, month by month: the
 * mean that brings what is stated on that plane.
 *
 * <pre>
 * HT    = (H - Hd) Rb + Hd (1 + cos beta) / 2 + H rho (1 - cos beta) / 2
 * Rb    = sum over the day of rd cosT / cosZ                                       by degrees of hour angle, rd see DayProfile
 * Hd/H  = 1.391 - 3.560 K + 4.189 K^2 - 2.137 K^3,   ws at most 81.4 deg           K held within 0.3 .. 0.8
 *       = 1.311 - 3.022 K + 3.427 K^2 - 1.821 K^3,   ws above
 * delta = 23.45 deg sin(360 deg (284 + n) / 365),    n the month's mean day         K = H / H0
 *
 * H, Hd  global and diffuse on level ground    Wh/m2 a day     beta  tilt from level   deg   0 .. 90
 * HT     on the plane                          Wh/m2 a day     rho   of the ground     1     0 .. 1
 * T, Z   of the sun from the plane's normal, from overhead     n     17 47 75 105 135 162 198 228 258 288 318 344
 * </pre>
 *
 * H is found by halving an interval. A plane that a month's sun hardly strikes tells little about
 * level ground: such months are better stated level.
 *
 * <p>Source: isotropic sky and Rb, Liu and Jordan (1962), Klein (1977), Rb summed here so that any
 * azimuth goes; monthly diffuse share, Erbs, Klein and Duffie (1982); mean days, Klein (1977).
 * Formulas seen second-hand, mean days from memory. Held by SynthesisPublishedTest.
 */
public final class TiltedMeans {
  private static final int[] MEAN_DAY = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};
  private static final double SOLAR_CONSTANT_WM2 = 1367.0;
  private static final double SHORT_DAY = StrictMath.toRadians(81.4);
  private static final double STEP = StrictMath.toRadians(1.0);
  private static final double STEPS_PER_HOUR = 15.0;

  private final double sinTilt;
  private final double cosTilt;
  private final double sinAzimuth;
  private final double cosAzimuth;
  private final double sinLatitude;
  private final double cosLatitude;
  private final double groundAlbedo;

  /**
   * @param azimuthDeg clockwise from north: 180 faces south
   */
  public TiltedMeans(double latitudeDeg, double tiltDeg, double azimuthDeg, double groundAlbedo) {
    Check.within("latitudeDeg", latitudeDeg, -ClimateSite.FARTHEST_DEG, ClimateSite.FARTHEST_DEG);
    double beta = StrictMath.toRadians(Check.within("tiltDeg", tiltDeg, 0.0, 90.0));
    double azimuth = StrictMath.toRadians(Check.within("azimuthDeg", azimuthDeg, 0.0, 360.0));
    double phi = StrictMath.toRadians(latitudeDeg);
    sinTilt = StrictMath.sin(beta);
    cosTilt = StrictMath.cos(beta);
    sinAzimuth = StrictMath.sin(azimuth);
    cosAzimuth = StrictMath.cos(azimuth);
    sinLatitude = StrictMath.sin(phi);
    cosLatitude = StrictMath.cos(phi);
    this.groundAlbedo = Check.share("groundAlbedo", groundAlbedo);
  }

  private static double declination(int month) {
    return StrictMath.toRadians(23.45)
        * StrictMath.sin(2.0 * Math.PI * (284 + MEAN_DAY[month - 1]) / 365.0);
  }

  private double sunset(double declination) {
    double cosine = -sinLatitude / cosLatitude * StrictMath.tan(declination);
    return StrictMath.acos(Math.max(-1.0, Math.min(1.0, cosine)));
  }

  /** On level ground above the air, on the month's mean day. */
  double aboveWhm2(int month) {
    double delta = declination(month);
    double ws = sunset(delta);
    double dr = 1.0 + 0.033 * StrictMath.cos(2.0 * Math.PI * MEAN_DAY[month - 1] / 365.0);
    return 24.0
        / Math.PI
        * SOLAR_CONSTANT_WM2
        * dr
        * (cosLatitude * StrictMath.cos(delta) * StrictMath.sin(ws)
            + ws * sinLatitude * StrictMath.sin(delta));
  }

  static double diffuseShare(double clearness, double sunset) {
    double k = Math.max(0.3, Math.min(0.8, clearness));
    return sunset <= SHORT_DAY
        ? 1.391 + k * (-3.560 + k * (4.189 - 2.137 * k))
        : 1.311 + k * (-3.022 + k * (3.427 - 1.821 * k));
  }

  /** What a month of this sunshine on level ground brings on the plane. */
  public double tiltedWhm2(int month, double globalWhm2) {
    double delta = declination(month);
    double ws = sunset(delta);
    double diffuse = diffuseShare(globalWhm2 / aboveWhm2(month), ws);
    double sky = diffuse * 0.5 * (1.0 + cosTilt) + groundAlbedo * 0.5 * (1.0 - cosTilt);
    double beam = 0.0;
    for (double w = -Math.PI + 0.5 * STEP; w < Math.PI; w += STEP) {
      double rd = DayProfile.diffuseShare(ws, w);
      if (rd > 0.0) {
        double up = sinLatitude * StrictMath.sin(delta);
        up += cosLatitude * StrictMath.cos(delta) * StrictMath.cos(w);
        beam +=
            (1.0 - diffuse) * rd * Math.max(0.0, cosIncidence(delta, w, up)) / up / STEPS_PER_HOUR;
      }
    }
    return globalWhm2 * (beam + sky);
  }

  private double cosIncidence(double delta, double w, double up) {
    double east = -StrictMath.cos(delta) * StrictMath.sin(w);
    double north =
        StrictMath.sin(delta) * cosLatitude
            - StrictMath.cos(delta) * sinLatitude * StrictMath.cos(w);
    return sinTilt * (sinAzimuth * east + cosAzimuth * north) + cosTilt * up;
  }

  /** Most that a month can bring on the plane by this model. */
  public double mostTiltedWhm2(int month) {
    return tiltedWhm2(month, DailyClearness.MOST_MEAN * aboveWhm2(month));
  }

  /** Sunshine on level ground that brings this on the plane. */
  public double levelWhm2(int month, double tiltedWhm2) {
    double low = 0.0;
    double high = DailyClearness.MOST_MEAN * aboveWhm2(month);
    for (int round = 0; round < 60; round++) {
      double middle = 0.5 * (low + high);
      if (tiltedWhm2(month, middle) < tiltedWhm2) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
