package greyspell.outcome;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * How often a size returns: the largest value of each winter, ranked, with a fitted tail.
 *
 * <pre>
 * T_i = (n + 0.12) / (i - 0.44)
 *
 * T_i   winters between two that reach the value of rank i, the largest 1
 * n     winters
 * </pre>
 *
 * Plotting positions of Gringorten 1963 (from memory), made for Gumbel's distribution. What so many
 * winters say by count alone is {@link #counted}; the plot and the tail only draw it.
 */
public final class ReturnCurve {
  private static final double SHIFT = 0.44;
  private static final double MOST_HALF_BANDS = 1.5;

  private final double[] falling;
  private final @Nullable ExtremeTail tail;

  private ReturnCurve(double[] falling, @Nullable ExtremeTail tail) {
    this.falling = falling;
    this.tail = tail;
  }

  /** Of at least one winter; infinite values are ranked but leave no tail to fit. */
  public static ReturnCurve of(double[] largest) {
    double[] rising = largest.clone();
    Arrays.sort(rising);
    int n = rising.length;
    var falling = new double[n];
    for (int i = 0; i < n; i++) {
      falling[i] = rising[n - 1 - i];
    }
    boolean isFit = n >= ExtremeTail.LEAST_WINTERS && falling[0] < Double.POSITIVE_INFINITY;
    return new ReturnCurve(falling, isFit && falling[0] > 0.0 ? ExtremeTail.of(largest) : null);
  }

  public int winters() {
    return falling.length;
  }

  /** Of a rank, from 0, the largest first. */
  public double value(int rank) {
    return falling[rank];
  }

  /** Where it is plotted: once in so many winters. */
  public double onceIn(int rank) {
    return (falling.length + 1.0 - 2.0 * SHIFT) / (rank + 1.0 - SHIFT);
  }

  /** Winters that may go beyond: the n over T that are passed once in T winters, rounded down. */
  public int mayPass(int onceIn) {
    return falling.length / onceIn;
  }

  /**
   * The least size that is passed by at most one winter in {@code onceIn} of those that were looked
   * at. Where there are fewer winters than that it is the largest of all.
   */
  public double counted(int onceIn) {
    return falling[Math.min(mayPass(onceIn), falling.length - 1)];
  }

  /**
   * True if the tail is not to be trusted: what is counted once in 2, 5 or 10 winters lies further
   * from it than luck would put it.
   */
  public boolean isTailDoubtful() {
    ExtremeTail fitted = tail;
    if (fitted == null) {
      return false;
    }
    for (int onceIn : SpellClimate.ONCE_IN) {
      double offBy = Math.abs(counted(onceIn) - fitted.value(onceIn));
      double halfBand = 0.5 * (fitted.high(onceIn) - fitted.low(onceIn));
      if (mayPass(onceIn) > 0 && offBy > MOST_HALF_BANDS * halfBand) {
        return true;
      }
    }
    return false;
  }

  /** Null where winters are too few, or one of them is beyond any size. */
  public @Nullable ExtremeTail tail() {
    return tail;
  }
}
