package greyspell.cause.log;

/**
 * A figure read from a log, and how well it is known.
 *
 * @param value most likely
 * @param low lower end of the range that holds the truth in 95 of 100 logs like this one
 * @param high its upper end
 * @param hours that it rests on
 * @param days that these hours lie in
 * @param whyNot empty, or why this log is not enough to tell
 */
public record Estimate(double value, double low, double high, int hours, int days, String whyNot) {
  private static final double SIDE = 1.96;

  /** Not to be told, for this reason. */
  static Estimate unknown(String whyNot, int hours, int days) {
    return new Estimate(Double.NaN, Double.NaN, Double.NaN, hours, days, whyNot);
  }

  /** From a value and one standard deviation. */
  static Estimate of(double value, double spread, int hours, int days) {
    return new Estimate(value, value - SIDE * spread, value + SIDE * spread, hours, days, "");
  }

  public boolean isKnown() {
    return whyNot.isEmpty();
  }

  /** Half the range. */
  public double plusMinus() {
    return 0.5 * (high - low);
  }

  /**
   * Whether it differs from what was assumed by more than is worth a word, and by more than chance
   * brings: one and a half times the half range, about three standard deviations.
   */
  boolean differsFrom(double assumed, double worth) {
    double by = Math.abs(value - assumed);
    return isKnown() && by >= worth && by > 1.5 * plusMinus();
  }
}
