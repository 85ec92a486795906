package greyspell.sky;

/**
 * How much of the clear-sky light a cover of cloud leaves.
 *
 * <pre>
 * GHI / GHIclear = 1 - a C^b        a = 0.75, b = 3.4 as published; both may be set
 * GHIclear       = 910 cos z - 30   the clear sky of the same paper, 0 where negative
 * DHI / GHI      = 0.3 + 0.7 C^2    the diffuse share of the same paper
 *
 * C   share of the sky that is covered (eighths / 8)   1   0 .. 1
 * z   zenith angle
 * </pre>
 *
 * <p>Mean over many hours: single hours scatter widely, and a cover of thin high cloud is taken for
 * a thick one. With observed total cover, winters of cloudy places come out 15 to 25 percent too
 * dark, with opaque cover about half of that. The other two formulas are companions for comparison:
 * the program multiplies its own clear sky and splits by {@link ErbsSplit}.
 *
 * <p>Source: Kasten and Czeplak (1980), Solar and terrestrial radiation dependent on the amount and
 * type of cloud, Solar Energy 24, 177 (Hamburg). Held by CloudPublishedTest.
 */
final class KastenCzeplak {
  private final double depth;
  private final double exponent;

  KastenCzeplak(double depth, double exponent) {
    this.depth = depth;
    this.exponent = exponent;
  }

  static KastenCzeplak asPublished() {
    return new KastenCzeplak(0.75, 3.4);
  }

  /** Share of the clear light that is left. */
  double clearShare(double cloudShare) {
    if (cloudShare <= 0.0) {
      return 1.0;
    }
    return 1.0 - depth * (cloudShare < 1.0 ? Math.pow(cloudShare, exponent) : 1.0);
  }

  static double clearSkyWm2(double cosZenith) {
    return Math.max(0.0, 910.0 * cosZenith - 30.0);
  }

  static double diffuseShare(double cloudShare) {
    return 0.3 + 0.7 * cloudShare * cloudShare;
  }
}
