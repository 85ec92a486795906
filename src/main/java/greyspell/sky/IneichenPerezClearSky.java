package greyspell.sky;

/**
 * Light under a cloudless sky from the sun's height, the site's elevation and the haze.
 *
 * <pre>
 * GHI  = cg1 I0n cos z exp(-cg2 ma (fh1 + fh2 (TL - 1)))
 * DNI1 = (0.664 + 0.163/fh1) I0n exp(-0.09 ma (TL - 1))
 * DNI2 = GHI (1 - (0.1 - 0.2 exp(-TL)) / (0.1 + 0.882/fh1)) / cos z
 * DNI  = the smaller of both
 * fh1  = exp(-h/8000), fh2 = exp(-h/1250), cg1 = 5.09e-5 h + 0.868, cg2 = 3.92e-5 h + 0.0387
 *
 * I0n  light above the air, square to the beam    W/m2
 * ma   air mass at the site's pressure            1     1 .. 38
 * h    elevation above the sea                    m     -450 .. 6000
 * TL   Linke turbidity                            1     1 .. 10
 * z    zenith angle                               deg   0 .. 90; from 90 on the result is 0
 * </pre>
 *
 * <p>Later copies multiply GHI by exp(0.01 ma^1.8) ({@link #laterFactor}). It is not used here: the
 * paper's own form is the one that was held against whole years of cloud and irradiance, and the
 * factor, 1.9 with the sun at 5 degrees, has no source that was opened.
 *
 * <p>Source: Ineichen and Perez (2002), A new airmass independent formulation for the Linke
 * turbidity coefficient, Solar Energy 73, 151. Held by ClearSkyPublishedTest.
 */
final class IneichenPerezClearSky {
  private final double fh1;
  private final double fh2;
  private final double cg1;
  private final double cg2;

  IneichenPerezClearSky(double elevationM) {
    fh1 = Math.exp(-elevationM / 8000.0);
    fh2 = Math.exp(-elevationM / 1250.0);
    cg1 = 5.09e-5 * elevationM + 0.868;
    cg2 = 3.92e-5 * elevationM + 0.0387;
  }

  double globalWm2(
      double extraterrestrialNormalWm2, double cosZenith, double airMass, double linkeTurbidity) {
    if (cosZenith <= 0.0) {
      return 0.0;
    }
    return cg1
        * extraterrestrialNormalWm2
        * cosZenith
        * Math.exp(-cg2 * airMass * (fh1 + fh2 * (linkeTurbidity - 1.0)));
  }

  double directNormalWm2(
      double extraterrestrialNormalWm2, double cosZenith, double airMass, double linkeTurbidity) {
    if (cosZenith <= 0.0) {
      return 0.0;
    }
    double first = beamLimitWm2(extraterrestrialNormalWm2, airMass, linkeTurbidity);
    double global =
        globalWm2(extraterrestrialNormalWm2, cosZenith, airMass, linkeTurbidity) / cosZenith;
    double second = global * (1.0 - (0.1 - 0.2 * Math.exp(-linkeTurbidity)) / (0.1 + 0.882 / fh1));
    return first < second ? first : second;
  }

  /** DNI1 alone: what the haze lets through of the beam, whatever the sky gives. */
  double beamLimitWm2(double extraterrestrialNormalWm2, double airMass, double linkeTurbidity) {
    return (0.664 + 0.163 / fh1)
        * extraterrestrialNormalWm2
        * Math.exp(-0.09 * airMass * (linkeTurbidity - 1.0));
  }

  /** The factor of later copies, for comparison. */
  static double laterFactor(double airMass) {
    return Math.exp(0.01 * Math.pow(airMass, 1.8));
  }
}
