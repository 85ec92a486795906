package greyspell.outcome;

import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * How likely a winter goes by in which nothing asked for is left unserved, as far as so many
 * winters can tell.
 *
 * <pre>
 * share = k / n,   low: P(K >= k | low) = a/2,   high: P(K <= k | high) = a/2
 * low = B(a/2; k, n - k + 1),   high = B(1 - a/2; k + 1, n - k)
 * all alike: a one-sided bound, a^(1/n) from the certain end
 *
 * k, n   dark-free winters, all winters
 * a      1 - 0.95
 * B      quantile of the beta distribution
 * </pre>
 *
 * Clopper and Pearson 1934 (from memory): never narrower than it should be, however few the
 * winters. Years are the sample, not hours: hours without power come in runs.
 *
 * @param darkFree winters of all that were dark-free
 * @param winters at least one
 * @param share 0 to 1
 * @param lowShare lower end at 95 % confidence
 * @param highShare upper end
 */
public record Odds(int darkFree, int winters, double share, double lowShare, double highShare) {
  private static final double LEFT_OUT = 0.05;

  /** Of so many winters. */
  public static Odds of(int darkFree, int winters) {
    if (winters < 1 || darkFree < 0 || darkFree > winters) {
      throw new IllegalArgumentException(darkFree + " of " + winters);
    }
    return new Odds(
        darkFree,
        winters,
        (double) darkFree / winters,
        low(darkFree, winters),
        high(darkFree, winters));
  }

  public static Odds of(WinterBook book) {
    return of(book.count() - book.darkCount(), book.count());
  }

  /** True where all winters went alike and only one end can be told. */
  public boolean isOneSided() {
    return darkFree == 0 || darkFree == winters;
  }

  private static double low(int k, int n) {
    if (k == 0) {
      return 0.0;
    }
    return k == n
        ? Math.pow(LEFT_OUT, 1.0 / n)
        : new BetaDistribution(k, n - k + 1.0).inverseCumulativeProbability(LEFT_OUT / 2.0);
  }

  private static double high(int k, int n) {
    if (k == n) {
      return 1.0;
    }
    return k == 0
        ? 1.0 - Math.pow(LEFT_OUT, 1.0 / n)
        : new BetaDistribution(k + 1.0, n - k).inverseCumulativeProbability(1.0 - LEFT_OUT / 2.0);
  }
}
