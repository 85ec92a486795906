package greyspell.outcome;

import java.util.Arrays;

/**
 * The Gumbel distribution fitted to the largest value of each winter: what may come once in more
 * winters than there are.
 *
 * <pre>
 * F(x) = exp(-exp(-y)),   y = (x - u) / a
 * x(T) = u + a y(T),      y(T) = -ln(-ln(1 - 1/T))
 * a = l2 / ln 2,          u = l1 - 0.5772 a
 * l1 = b0,  l2 = 2 b1 - b0,  l3 = 6 b2 - 6 b1 + b0
 * b_r = 1/n sum of x_j (j-1)...(j-r) / ((n-1)...(n-r)),   x_j rising, j from 1
 * sd of x(T) = a sqrt((1.1128 + 0.4574 y + 0.8046 y^2) / n)
 *
 * u, a   location and scale                              unit of x
 * T      once in so many winters                         above 1
 * l      L-moments of the sample                         unit of x
 * </pre>
 *
 * Gumbel's distribution by L-moments: Hosking and Wallis 1997; unbiased b_r: Landwehr and others
 * 1979; sd for large n: Phien 1987 (all from memory; GumbelTailTest holds the sd against drawn
 * samples). The sd counts the drawing of n winters and not whether the tail has this shape: {@link
 * #isStrange} tells when the sample's skewness speaks against it.
 *
 * @param location u
 * @param scale a; 0 if all values are the same
 * @param winters n, at least {@value #LEAST_WINTERS}
 * @param skew L-skewness l3 / l2 of the sample; 0 if all values are the same
 */
public record GumbelTail(double location, double scale, int winters, double skew) {
  /** A line through fewer points says nothing. */
  public static final int LEAST_WINTERS = 5;

  /** L-skewness of the distribution, ln(9/8) / ln 2. */
  public static final double GUMBEL_SKEW = Math.log(9.0 / 8.0) / Math.log(2.0);

  private static final double EULER = 0.577_215_664_901_532_9;

  /** Of the 5 and 95 % point of the normal distribution. */
  private static final double NINETY_PERCENT = 1.6449;

  /** Sd of the L-skewness of a Gumbel sample times root n, by drawing: GumbelTailTest. */
  static final double SKEW_SD_ROOT_N = 0.54;

  /**
   * Fits the largest value of each winter.
   *
   * @param largest all finite, at least {@value #LEAST_WINTERS}; left as it is
   */
  public static GumbelTail of(double[] largest) {
    int n = largest.length;
    if (n < LEAST_WINTERS) {
      throw new IllegalArgumentException(n + " winters are too few for a tail");
    }
    double[] x = largest.clone();
    Arrays.sort(x);
    double b0 = 0.0, b1 = 0.0, b2 = 0.0;
    for (int j = 0; j < n; j++) {
      b0 += x[j];
      b1 += x[j] * j / (n - 1.0);
      b2 += x[j] * j * (j - 1.0) / ((n - 1.0) * (n - 2.0));
    }
    b0 /= n;
    b1 /= n;
    b2 /= n;
    double l2 = Math.max(0.0, 2.0 * b1 - b0), l3 = 6.0 * b2 - 6.0 * b1 + b0;
    double scale = l2 / Math.log(2.0);
    return new GumbelTail(b0 - EULER * scale, scale, n, l2 > 0.0 ? l3 / l2 : 0.0);
  }

  /** y(T). */
  public static double reduced(double onceIn) {
    return -Math.log(-Math.log1p(-1.0 / onceIn));
  }

  /** What is reached or passed once in so many winters. */
  public double value(double onceIn) {
    return location + scale * reduced(onceIn);
  }

  /** One standard deviation of {@link #value} by the luck of the draw. */
  public double deviation(double onceIn) {
    double y = reduced(onceIn);
    return scale * Math.sqrt((1.1128 + 0.4574 * y + 0.8046 * y * y) / winters);
  }

  /** Lower end of the 90 % band. */
  public double low(double onceIn) {
    return value(onceIn) - NINETY_PERCENT * deviation(onceIn);
  }

  /** Upper end of the 90 % band. */
  public double high(double onceIn) {
    return value(onceIn) + NINETY_PERCENT * deviation(onceIn);
  }

  /** True if a Gumbel sample of this size would seldom (about 1 in 20) be so skew or so little. */
  public boolean isStrange() {
    return Math.abs(skew - GUMBEL_SKEW) > 2.0 * SKEW_SD_ROOT_N / Math.sqrt(winters);
  }
}
