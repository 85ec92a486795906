package greyspell.sky;

/**
 * How much air the beam crosses, compared with a sun straight overhead at sea level.
 *
 * <pre>
 * m  = 1 / (cos z + 0.50572 (96.07995 - z)^-1.6364)
 * p  = 101325 (1 - 2.25577e-5 h)^5.25588        (standard atmosphere)
 * ma = m p / 101325
 *
 * z   zenith angle                    deg  0 .. 90
 * h   elevation above the sea         m    -450 .. 6000
 * m   relative optical air mass       1    1 .. 38
 * ma  the same at the site's pressure 1
 * </pre>
 *
 * <p>Sources: Kasten and Young (1989), Revised optical air mass tables and approximation formula,
 * Applied Optics 28, 4735; pressure: standard atmosphere. Held by ClearSkyPublishedTest.
 */
final class AirMass {
  static final double SEA_LEVEL_PA = 101_325.0;

  private AirMass() {}

  /** Both the cosine and the angle are at hand where this is asked. */
  static double relative(double cosZenith, double zenithDeg) {
    return 1.0 / (cosZenith + 0.50572 * Math.pow(96.07995 - zenithDeg, -1.6364));
  }

  static double pressurePa(double elevationM) {
    return SEA_LEVEL_PA * Math.pow(1.0 - 2.25577e-5 * elevationM, 5.25588);
  }
}
