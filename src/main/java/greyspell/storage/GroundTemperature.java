package greyspell.storage;

import greyspell.quantity.Check;

/**
 * How warm the ground is at a depth, hour by hour: the year's wave of the air, flattened and late.
 *
 * <pre>
 * T(z, t) = Tm + A0 exp(-z / d) cos(w (t - t0) - z / d)        d = sqrt(2 a / w),   w = 2 pi / year
 *
 * z      depth below the surface                         m       0 or more
 * a      thermal diffusivity of the soil                 m2/s    0.1e-6 .. 2e-6
 * d      damping depth: the wave is 1/e of the surface's m
 * Tm     mean of the air                                 °C
 * A0, t0 size and crest of the yearly wave in the air    °C, h   least squares over all hours
 * </pre>
 *
 * The surface is taken to be as warm as the air in the mean; sun, snow cover and the house above
 * make a cellar a little warmer than this. What stands in the ground is taken to have its
 * temperature; heat from the bank itself is left out. Weather shorter than a year has no yearly
 * wave: its mean is taken.
 *
 * <p>Source: Hillel (1982), Introduction to Soil Physics, as quoted by the soil physics pages of
 * Oklahoma State University. Held by StoragePublishedTest and DetailedBankTest.
 */
public final class GroundTemperature {
  private static final double HOURS_IN_YEAR = 8765.82;
  private static final double SECONDS_IN_HOUR = 3600.0;
  private static final double SHORTEST_YEAR_H = 8700.0;

  private GroundTemperature() {}

  /** Depth at which a wave of this period is 1/e of the surface's. */
  public static double dampingDepthM(double diffusivityM2PerS, double periodH) {
    return Math.sqrt(diffusivityM2PerS * periodH * SECONDS_IN_HOUR / Math.PI);
  }

  /** Mean of each hour. */
  public static double[] of(double[] airC, double depthM, double diffusivityM2PerS) {
    Check.notNegative("depthM", depthM);
    int hours = airC.length;
    var groundC = new double[hours];
    if (hours == 0) {
      return groundC;
    }
    double meanC = 0.0;
    for (double c : airC) {
      meanC += c / hours;
    }
    double years = Math.max(1.0, Math.rint(hours / HOURS_IN_YEAR));
    double perHour = 2.0 * Math.PI * years / hours;
    double cosC = 0.0, sinC = 0.0;
    if (hours >= SHORTEST_YEAR_H) {
      for (int h = 0; h < hours; h++) {
        cosC += 2.0 * airC[h] * Math.cos(perHour * (h + 0.5)) / hours;
        sinC += 2.0 * airC[h] * Math.sin(perHour * (h + 0.5)) / hours;
      }
    }
    double lagRad = depthM / dampingDepthM(diffusivityM2PerS, hours / years);
    double kept = Math.exp(-lagRad);
    for (int h = 0; h < hours; h++) {
      double angle = perHour * (h + 0.5) - lagRad;
      groundC[h] = meanC + kept * (cosC * Math.cos(angle) + sinC * Math.sin(angle));
    }
    return groundC;
  }
}
