package greyspell.outcome;

import java.util.Arrays;

/**
 * What one winter in ten stays below, the middling winter, and what nine in ten stay below. Between
 * two winters a straight line is drawn (definition 7 of Hyndman and Fan 1996, from memory), so that
 * of few winters the outer two are near the lowest and the highest seen.
 *
 * @param low of all values a tenth lies below
 * @param middle half of them
 * @param high nine tenths
 */
public record Band(double low, double middle, double high) {
  private static final double LOW = 0.1;
  private static final double MIDDLE = 0.5;
  private static final double HIGH = 0.9;

  /** Of at least one value; the array is left as it is. */
  public static Band of(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return new Band(share(sorted, LOW), share(sorted, MIDDLE), share(sorted, HIGH));
  }

  /**
   * The value below which a share of a sorted array lies.
   *
   * @param share 0 to 1
   */
  public static double share(double[] sorted, double share) {
    double rank = share * (sorted.length - 1);
    int below = (int) rank;
    double part = rank - below;
    double next = part > 0.0 ? sorted[below + 1] : 0.0;
    // a rank that is met exactly must not multiply an infinite neighbour by nothing
    return part > 0.0 ? sorted[below] + part * (next - sorted[below]) : sorted[below];
  }
}
