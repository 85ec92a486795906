package greyspell.sky;

/**
 * How the light of the sky gathers around the sun and along the horizon.
 *
 * <pre>
 * eps   = ((DHI + DNI)/DHI + 1.041 z^3) / (1 + 1.041 z^3)      picks one of eight rows
 * Delta = DHI m / I0n
 * F1    = F11 + F12 Delta + F13 z, held within 0 .. 1          share around the sun
 * F2    = F21 + F22 Delta + F23 z                              band along the horizon, may be negative
 * sky   = DHI ((1 - F1)(1 + cos b)/2 + F1 a/c + F2 sin b)
 * a     = max(0, cos T), c = max(cos 85 deg, cos z)
 *
 * z     zenith angle               rad    0 .. pi/2
 * m     relative optical air mass  1      at sea-level pressure
 * b, T  tilt; angle between beam and normal of the plane
 * </pre>
 *
 * <p>The source does not hold F1 below 1; here it is, so that the rest of the sky never turns dark.
 * How {@link TiltedPlane} puts it on a plane with a horizon, and below 5 degrees of sun, stands
 * there. DHI of 0 has no sky.
 *
 * <p>Source: Perez, Ineichen, Seals, Michalsky and Stewart (1990), Modeling daylight availability
 * and irradiance components from direct and global irradiance, Solar Energy 44, 271; the
 * coefficients in the longer form of a private communication of 1999 that a building-energy
 * reference quotes. F23 of the fourth row is negative: copies with a plus sign circulate. Held by
 * TiltPublishedTest and PlaneIrradianceTest.
 */
final class PerezSky {
  private static final double[] UPPER_EPS = {1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2};
  private static final double[] F11 = {
    -0.0083117, 0.1299457, 0.3296958, 0.5682053, 0.8730280, 1.1326077, 1.0601591, 0.6777470
  };
  private static final double[] F12 = {
    0.5877285, 0.6825954, 0.4868735, 0.1874525, -0.3920403, -1.2367284, -1.5999137, -0.3272588
  };
  private static final double[] F13 = {
    -0.0620636, -0.1513752, -0.2210958, -0.2951290, -0.3616149, -0.4118494, -0.3589221, -0.2504286
  };
  private static final double[] F21 = {
    -0.0596012, -0.0189325, 0.0554140, 0.1088631, 0.2255647, 0.2877813, 0.2642124, 0.1561313
  };
  private static final double[] F22 = {
    0.0721249, 0.0659650, -0.0639588, -0.1519229, -0.4620442, -0.8230357, -1.1272340, -1.3765031
  };
  private static final double[] F23 = {
    -0.0220216, -0.0288748, -0.0260542, -0.0139754, 0.0012448, 0.0558651, 0.1310694, 0.2506212
  };

  private PerezSky() {}

  static double clearness(double diffuseWm2, double directNormalWm2, double zenithRad) {
    double k = 1.041 * zenithRad * zenithRad * zenithRad;
    return ((diffuseWm2 + directNormalWm2) / diffuseWm2 + k) / (1.0 + k);
  }

  static int row(double clearness) {
    int row = 0;
    while (row < 7 && clearness >= UPPER_EPS[row]) {
      row++;
    }
    return row;
  }

  static double circumsolarShare(int row, double brightness, double zenithRad) {
    double f1 = F11[row] + F12[row] * brightness + F13[row] * zenithRad;
    if (f1 <= 0.0) {
      return 0.0;
    }
    return f1 < 1.0 ? f1 : 1.0;
  }

  static double horizonShare(int row, double brightness, double zenithRad) {
    return F21[row] + F22[row] * brightness + F23[row] * zenithRad;
  }
}
