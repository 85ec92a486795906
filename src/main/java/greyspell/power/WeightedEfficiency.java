package greyspell.power;

/**
 * One number for an inverter's efficiency over a usual spread of loads.
 *
 * <pre>
 * European    0.03 eta5 + 0.06 eta10 + 0.13 eta20 + 0.10 eta30 + 0.48 eta50 + 0.20 eta100
 * Californian 0.04 eta10 + 0.05 eta20 + 0.12 eta30 + 0.21 eta50 + 0.53 eta75 + 0.05 eta100
 *
 * eta5  efficiency at 5 % of the continuous power, and so on
 * </pre>
 *
 * Made for grid inverters; for comparing data sheets only, the hourly loop uses the curve. Source:
 * the European and the California Energy Commission's weightings, seen second-hand in an
 * encyclopaedia. Held by PowerPublishedTest.
 */
public enum WeightedEfficiency {
  EUROPEAN(
      new double[] {0.05, 0.10, 0.20, 0.30, 0.50, 1.00},
      new double[] {0.03, 0.06, 0.13, 0.10, 0.48, 0.20}),
  CALIFORNIAN(
      new double[] {0.10, 0.20, 0.30, 0.50, 0.75, 1.00},
      new double[] {0.04, 0.05, 0.12, 0.21, 0.53, 0.05});

  private final double[] loadShares;
  private final double[] weights;

  WeightedEfficiency(double[] loadShares, double[] weights) {
    this.loadShares = loadShares;
    this.weights = weights;
  }

  public double of(InverterCurve curve) {
    var efficiencies = new double[loadShares.length];
    for (int i = 0; i < efficiencies.length; i++) {
      efficiencies[i] = curve.efficiency(loadShares[i]);
    }
    return of(efficiencies);
  }

  /** Of efficiencies read at the weighting's own loads, lowest load first. */
  public double of(double... efficiencies) {
    if (efficiencies.length != weights.length) {
      throw new IllegalArgumentException(
          weights.length + " efficiencies needed, not " + efficiencies.length);
    }
    double sum = 0.0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * efficiencies[i];
    }
    return sum;
  }
}
