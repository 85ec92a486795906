package greyspell.sky;

/**
 * What the glass of a module lets through at a slant, compared with light that falls in square.
 *
 * <pre>
 * ASHRAE       f = 1 - b0 (1/cos T - 1), held at 0 from below        b0 = 0.05
 * MARTIN_RUIZ  f = (1 - exp(-cos T / ar)) / (1 - exp(-1 / ar))       ar = 0.16
 * PHYSICAL     f = tau(T) / tau(0)
 *              tau = exp(-K L / cos Tr) (1 - (rs + rp) / 2)
 *              sin Tr = sin T / n
 *              rs = ((cos T - n cos Tr)/(cos T + n cos Tr))^2, rp = ((n cos T - cos Tr)/(n cos T + cos Tr))^2
 *              n = 1.526, K = 4 per m, L = 0.002 m (glass)
 * sky light    enters as if at  59.7 - 0.1388 b + 0.001497 b^2 deg
 * ground light enters as if at  90 - 0.5788 b + 0.002693 b^2 deg
 *
 * T   angle between beam and the normal of the plane   deg   0 .. 90; from 90 on f = 0
 * b   tilt of the plane                                deg   0 .. 90
 * f   result                                           1     0 .. 1
 * </pre>
 *
 * <p>PHYSICAL is used unless another is asked for: bare glass, the darkest of the three at a slant;
 * a glass with an anti-reflection coat loses less.
 *
 * <p>Sources: ASHRAE 93 (form of the loss, b0 common for glass); Martin and Ruiz (2001), Solar
 * Energy Materials and Solar Cells 70, 25; De Soto, Klein and Beckman (2006), Solar Energy 80, 78;
 * effective angles Brandemuehl and Beckman (1980), Solar Energy 24, 511 (all from memory). Held by
 * IncidenceLossPublishedTest.
 */
public enum IncidenceLoss {
  ASHRAE,
  MARTIN_RUIZ,
  PHYSICAL;

  private static final double B0 = 0.05;
  private static final double AR = 0.16;
  private static final double MARTIN_RUIZ_SQUARE = 1.0 - Math.exp(-1.0 / AR);
  private static final double GLASS_INDEX = 1.526;
  private static final double GLASS_DEPTH = 4.0 * 0.002;
  private static final double PHYSICAL_SQUARE = transmittance(1.0);

  /** From the cosine of the incidence angle; 0 behind the plane. */
  double factor(double cosIncidence) {
    if (cosIncidence <= 0.0) {
      return 0.0;
    }
    if (cosIncidence >= 1.0) {
      return 1.0;
    }
    return switch (this) {
      case ASHRAE -> {
        double factor = 1.0 - B0 * (1.0 / cosIncidence - 1.0);
        yield factor > 0.0 ? factor : 0.0;
      }
      case MARTIN_RUIZ -> (1.0 - Math.exp(-cosIncidence / AR)) / MARTIN_RUIZ_SQUARE;
      case PHYSICAL -> transmittance(cosIncidence) / PHYSICAL_SQUARE;
    };
  }

  double skyFactor(double tiltDeg) {
    return factor(Math.cos(Math.toRadians(skyAngleDeg(tiltDeg))));
  }

  double groundFactor(double tiltDeg) {
    return factor(Math.cos(Math.toRadians(groundAngleDeg(tiltDeg))));
  }

  static double skyAngleDeg(double tiltDeg) {
    return 59.7 - 0.1388 * tiltDeg + 0.001497 * tiltDeg * tiltDeg;
  }

  static double groundAngleDeg(double tiltDeg) {
    return 90.0 - 0.5788 * tiltDeg + 0.002693 * tiltDeg * tiltDeg;
  }

  private static double transmittance(double cosT) {
    double sinTr = Math.sqrt(1.0 - cosT * cosT) / GLASS_INDEX;
    double cosTr = Math.sqrt(1.0 - sinTr * sinTr);
    double s = (cosT - GLASS_INDEX * cosTr) / (cosT + GLASS_INDEX * cosTr);
    double p = (GLASS_INDEX * cosT - cosTr) / (GLASS_INDEX * cosT + cosTr);
    return Math.exp(-GLASS_DEPTH / cosTr) * (1.0 - 0.5 * (s * s + p * p));
  }
}
