package greyspell.sky;

/**
 * Sunlight above the air, square to the beam: it swings by seven percent over the year with the
 * distance of the sun.
 *
 * <pre>
 * I0n = Gsc E0
 * E0  = 1.000110 + 0.034221 cos B + 0.001280 sin B + 0.000719 cos 2B + 0.000077 sin 2B
 * B   = 2 pi (n - 1) / 365
 *
 * n    day of the year        1      1 .. 366
 * Gsc  solar constant 1367    W/m2   (World Radiation Centre; later measurements give 1361)
 * I0n  result                 W/m2   1321 .. 1415
 * </pre>
 *
 * <p>Source: Spencer (1971), as printed in Duffie, Beckman and Blair (2020), eq. 1.4.1b (from
 * memory). Held by SunPublishedTest.
 */
final class Extraterrestrial {
  static final double SOLAR_CONSTANT_WM2 = 1367.0;

  private Extraterrestrial() {}

  static double normalWm2(int dayOfYear) {
    double b = 2.0 * Math.PI * (dayOfYear - 1) / 365.0;
    return SOLAR_CONSTANT_WM2
        * (1.000110
            + 0.034221 * Math.cos(b)
            + 0.001280 * Math.sin(b)
            + 0.000719 * Math.cos(2.0 * b)
            + 0.000077 * Math.sin(2.0 * b));
  }
}
