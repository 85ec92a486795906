package greyspell.balance;

import java.util.function.DoubleUnaryOperator;

/**
 * Weather that is run round and round until its first hour starts as its last one ends, from a full
 * bank: what a home settles to.
 */
public final class SteadyState {
  /** A bank that still drifts after so many laps is told as it is then. */
  public static final int MOST_LAPS = 10;

  /** Charges this near are the same. */
  public static final double SAME_CHARGE_WH = 0.01;

  private SteadyState() {}

  /**
   * Laps until the charge settles.
   *
   * @param windowWh a full bank
   * @param lap runs all hours from a charge and returns the charge at their end; what it leaves
   *     behind is of the last lap
   * @return the charge at the end
   */
  public static double run(double windowWh, DoubleUnaryOperator lap) {
    double startWh = windowWh;
    for (int k = 1; k < MOST_LAPS; k++) {
      double endWh = lap.applyAsDouble(startWh);
      if (Math.abs(endWh - startWh) <= SAME_CHARGE_WH) {
        return endWh;
      }
      startWh = endWh;
    }
    return lap.applyAsDouble(startWh);
  }
}
