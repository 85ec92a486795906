package greyspell.array;

import greyspell.quantity.Check;

/**
 * How much of a plane lies under snow, hour by hour.
 *
 * <pre>
 * new snow of an hour >= s          cover = 1
 * else, where T > E / m             cover falls by a sin(tilt)
 *
 * new snow  rise of the snow depth within the hour          m      s = 0.01 m
 * T         air temperature                                 °C
 * E         light on the plane                              W/m²   m = -80 W/m²/K
 * a         share of the slope that slides off in an hour   1/h    0.197
 * cover     share of the plane                              1      0 .. 1
 * </pre>
 *
 * What lies keeps all light from the cells under it. A plane that lies flat keeps its snow until
 * the depth beside it is gone: no snow on the ground, none on the plane (own choice, no source). A
 * fall of less than a centimetre an hour is not seen, however long it goes on; drift and hand
 * sweeping are left out; a frame whose foot stands in the snow may keep it longer. The series
 * starts bare.
 *
 * <p>Source: Marion, Schaefer, Caine, Sanchez (2013), Measured and modeled photovoltaic system
 * energy losses from snow for Colorado and Wisconsin locations, Solar Energy 97 (from memory,
 * constants too). Held by SnowCoverTest.
 */
public final class SnowCover {
  private static final double FALL_M = 0.01;
  private static final double SLIDE_WM2_PER_K = -80.0;
  private static final double SLIDE_SHARE_PER_H = 0.197;

  private SnowCover() {}

  /**
   * Covered share of each hour.
   *
   * @param depthM of the snow on the ground
   * @param frontWm2 light on the plane
   */
  public static double[] coveredShare(
      double[] depthM, double[] airC, double[] frontWm2, double tiltDeg) {
    int hours = Check.within("hours of depthM", depthM.length, airC.length, frontWm2.length);
    double slides = SLIDE_SHARE_PER_H * Math.sin(Math.toRadians(tiltDeg));
    var covered = new double[hours];
    double cover = 0.0;
    for (int h = 0; h < hours; h++) {
      double newM = h > 0 ? depthM[h] - depthM[h - 1] : 0.0;
      if (newM >= FALL_M) {
        cover = 1.0;
      } else if (airC[h] > frontWm2[h] / SLIDE_WM2_PER_K) {
        cover = cover > slides ? cover - slides : 0.0;
      }
      if (depthM[h] <= 0.0) {
        cover = 0.0;
      }
      covered[h] = cover;
    }
    return covered;
  }
}
