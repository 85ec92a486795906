package greyspell.array;

import greyspell.quantity.Check;

/**
 * Efficiency at one load.
 *
 * @param loadShare output over the rated output, above 0 to 1
 * @param efficiency output over input, above 0 to 1
 */
public record EfficiencyPoint(double loadShare, double efficiency) {
  public EfficiencyPoint {
    Check.within("loadShare", loadShare, Double.MIN_VALUE, 1.0);
    Check.within("efficiency", efficiency, Double.MIN_VALUE, 1.0);
  }

  /** Input over the rated output. */
  double inputShare() {
    return loadShare / efficiency;
  }
}
