package greyspell.sky;

/**
 * How much of the light on the level ground comes from the sky and not from the sun's disc.
 *
 * <pre>
 * hour: kt = GHI / (I0n cos z)
 *   kt <= 0.22         DHI/GHI = 1 - 0.09 kt
 *   0.22 < kt <= 0.80  DHI/GHI = 0.9511 - 0.1604 kt + 4.388 kt^2 - 16.638 kt^3 + 12.336 kt^4
 *   kt > 0.80          DHI/GHI = 0.165
 * day: K = H / H0, ws the hour angle of sunset
 *   ws <= 81.4 deg     1 - 0.2727 K + 2.4495 K^2 - 11.9514 K^3 + 9.3879 K^4 (K < 0.715), else 0.143
 *   ws >  81.4 deg     1 + 0.2832 K - 2.5557 K^2 + 0.8448 K^3               (K < 0.722), else 0.175
 *
 * kt, K   clearness: share of the light above the air that reaches the ground   1   0 .. 1
 * </pre>
 *
 * <p>kt above 1 (cloud edges, a low sun) is taken as 1. Fitted to hours of four stations in the
 * United States: single hours scatter by a third, the yearly sum of diffuse light is good to about
 * 8 percent.
 *
 * <p>Source: Erbs, Klein and Duffie (1982), Estimation of the diffuse radiation fraction for
 * hourly, daily and monthly-average global radiation, Solar Energy 28, 293, as quoted in Duffie,
 * Beckman and Blair (2020), eq. 2.10.1 and 2.11.1. Held by SplitPublishedTest.
 */
final class ErbsSplit {
  private ErbsSplit() {}

  static double diffuseShare(double kt) {
    if (kt <= 0.22) {
      return kt <= 0.0 ? 1.0 : 1.0 - 0.09 * kt;
    }
    if (kt <= 0.80) {
      return 0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336)));
    }
    return 0.165;
  }

  static double dailyDiffuseShare(double clearness, double sunsetHourAngleDeg) {
    double k = clearness;
    if (sunsetHourAngleDeg <= 81.4) {
      return k < 0.715 ? 1.0 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879))) : 0.143;
    }
    return k < 0.722 ? 1.0 + k * (0.2832 + k * (-2.5557 + k * 0.8448)) : 0.175;
  }
}
