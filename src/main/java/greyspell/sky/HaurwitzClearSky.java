package greyspell.sky;

/**
 * Light on the level ground under a cloudless sky, from the height of the sun alone.
 *
 * <pre>
 * GHI = 1098 cos z exp(-0.059 / cos z)
 *
 * cos z  cosine of the zenith angle   1      0 .. 1; 0 or less gives 0
 * GHI    result                       W/m2   0 .. 1035
 * </pre>
 *
 * <p>Knows nothing of elevation or haze: too dark high up, too bright in dirty air. The exponent is
 * the original 0.059; a later report prints 0.057, two W/m2 brighter.
 *
 * <p>Source: Haurwitz (1945, 1946), Insolation in relation to cloudiness and cloud density, Journal
 * of Meteorology (from memory). Held by ClearSkyPublishedTest.
 */
final class HaurwitzClearSky {
  private HaurwitzClearSky() {}

  static double globalWm2(double cosZenith) {
    if (cosZenith <= 0.0) {
      return 0.0;
    }
    return 1098.0 * cosZenith * Math.exp(-0.059 / cosZenith);
  }
}
