package greyspell.outcome;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.special.Gamma;

/**
 * The distribution of extremes fitted to the largest value of each winter: what may come once in
 * more winters than there are.
 *
 * <pre>
 * x(T) = u + a y                          Gumbel, k = 0
 * x(T) = u + a (1 - exp(-k y)) / k        else;     y(T) = -ln(-ln(1 - 1/T))
 * b_r = 1/n sum of x_j (j-1)...(j-r) / ((n-1)...(n-r)),   x_j rising, j from 1
 * l1 = b0,  l2 = 2 b1 - b0,  l3 = 6 b2 - 6 b1 + b0,  t3 = l3 / l2
 * Gumbel   a = l2 / ln 2,                      u = l1 - 0.5772 a
 * else     k = 7.8590 c + 2.9554 c^2,          c = 2 / (3 + t3) - ln 2 / ln 3
 *          a = l2 k / ((1 - 2^-k) G(1 + k)),   u = l1 - a (1 - G(1 + k)) / k
 * Gumbel unless n >= 20 and |k| sqrt(n / 0.5633) > 1.96
 *
 * u, a   location and scale                              unit of x
 * k      shape; above 0 the values have an end u + a/k   1
 * T      once in so many winters                         above 1
 * G      gamma function
 * </pre>
 *
 * Generalized extreme values and the test of k: Hosking, Wallis and Wood 1985; by L-moments:
 * Hosking and Wallis 1997 (both from memory). The band is that of {@value #DRAWS} samples of n
 * winters drawn from the fit with a fixed seed and fitted again (parametric bootstrap, Efron and
 * Tibshirani 1993, from memory): it counts the luck of n winters, not whether the tail has this
 * shape. ExtremeTailTest holds how often it covers the truth.
 */
public final class ExtremeTail {
  /** A line through fewer points says nothing. */
  public static final int LEAST_WINTERS = 5;

  /** L-skewness of Gumbel's distribution, ln(9/8) / ln 2. */
  public static final double GUMBEL_SKEW = Math.log(9.0 / 8.0) / Math.log(2.0);

  private static final int DRAWS = 500;
  private static final long SEED = 20_259;
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  private final Shape fit;
  private final int winters;
  private final List<Shape> drawn = new ArrayList<>();

  private ExtremeTail(Shape fit, int winters) {
    this.fit = fit;
    this.winters = winters;
  }

  /** Only when a band is asked for: of a thousand winters it takes a while. */
  private void draw() {
    var random = new Random(SEED);
    var sample = new double[winters];
    for (int d = 0; d < DRAWS; d++) {
      for (int k = 0; k < winters; k++) {
        sample[k] = fit.at(-Math.log(-Math.log(1.0 - random.nextDouble())));
      }
      drawn.add(Shape.of(sample, fit.shape() == 0.0));
    }
  }

  /**
   * One fit.
   *
   * @param location u
   * @param scale a; 0 if all values are the same
   * @param shape k; 0 for Gumbel's
   * @param skew L-skewness t3 of the sample; 0 if all values are the same
   */
  record Shape(double location, double scale, double shape, double skew) {
    private static final double EULER = 0.577_215_664_901_532_9;
    private static final int LEAST_TO_BEND = 20;
    private static final double LN_2 = Math.log(2.0);

    /** Sorts the sample. */
    static Shape of(double[] sample, boolean isGumbel) {
      Arrays.sort(sample);
      int n = sample.length;
      double b0 = 0.0, b1 = 0.0, b2 = 0.0;
      for (int j = 0; j < n; j++) {
        b0 += sample[j] / n;
        b1 += sample[j] / n * j / (n - 1.0);
        b2 += sample[j] / n * j * (j - 1.0) / ((n - 1.0) * (n - 2.0));
      }
      double l2 = 2.0 * b1 - b0;
      if (!(l2 > 1e-12 * Math.abs(b0))) {
        return new Shape(b0, 0.0, 0.0, 0.0);
      }
      double skew = (6.0 * b2 - 6.0 * b1 + b0) / l2;
      return isGumbel ? gumbel(b0, l2, skew) : bent(b0, l2, skew);
    }

    private static Shape gumbel(double l1, double l2, double skew) {
      double scale = l2 / LN_2;
      return new Shape(l1 - EULER * scale, scale, 0.0, skew);
    }

    private static Shape bent(double l1, double l2, double skew) {
      double k = bend(skew);
      double gamma = Gamma.gamma(1.0 + k);
      double scale = l2 * k / ((1.0 - Math.exp(-k * LN_2)) * gamma);
      return new Shape(l1 - scale * (1.0 - gamma) / k, scale, k, skew);
    }

    static double bend(double skew) {
      double c = 2.0 / (3.0 + skew) - LN_2 / Math.log(3.0);
      return 7.8590 * c + 2.9554 * c * c;
    }

    static boolean isGumbelLike(double skew, int winters) {
      return winters < LEAST_TO_BEND || Math.abs(bend(skew)) * Math.sqrt(winters / 0.5633) <= 1.96;
    }

    double at(double y) {
      return shape == 0.0
          ? location + scale * y
          : location + scale * (1.0 - Math.exp(-shape * y)) / shape;
    }
  }

  /**
   * Fits the largest value of each winter.
   *
   * @param largest all finite, at least {@value #LEAST_WINTERS}; left as it is
   */
  public static ExtremeTail of(double[] largest) {
    int n = largest.length;
    if (n < LEAST_WINTERS) {
      throw new IllegalArgumentException(n + " winters are too few for a tail");
    }
    Shape gumbel = Shape.of(largest.clone(), true);
    boolean isStraight = gumbel.scale() == 0.0 || Shape.isGumbelLike(gumbel.skew(), n);
    return new ExtremeTail(isStraight ? gumbel : Shape.of(largest.clone(), false), n);
  }

  /** y(T). */
  public static double reduced(double onceIn) {
    return -Math.log(-Math.log1p(-1.0 / onceIn));
  }

  /** k; 0 where Gumbel's distribution was not refused. */
  public double shape() {
    return fit.shape();
  }

  public double location() {
    return fit.location();
  }

  public double scale() {
    return fit.scale();
  }

  /** L-skewness of the sample. */
  public double skew() {
    return fit.skew();
  }

  /** What is reached or passed once in so many winters. */
  public double value(double onceIn) {
    return fit.at(reduced(onceIn));
  }

  /** Lower end of the 90 % band. */
  public double low(double onceIn) {
    return drawnShare(onceIn, LOW);
  }

  /** Upper end of the 90 % band. */
  public double high(double onceIn) {
    return drawnShare(onceIn, HIGH);
  }

  private synchronized double drawnShare(double onceIn, double share) {
    if (drawn.isEmpty()) {
      draw();
    }
    double y = reduced(onceIn);
    double[] values = drawn.stream().mapToDouble(shape -> shape.at(y)).sorted().toArray();
    return Band.share(values, share);
  }
}
