package greyspell.ladder;

import greyspell.scenario.Scenario.Costs;

/**
 * Whether the winters can tell two steps apart.
 *
 * <pre>
 * v(w)   kWh that a step avoids in winter w, for each unit of money a year
 * d(w) = v(w) of the one - v(w) of the other
 * tie    |mean d| not above s / sqrt(n),   s standard deviation of d, n winters, 3 or more
 *        the sign of d differs,            two winters
 * </pre>
 *
 * One standard error is an own choice: who needs more certainty looks at more winters. One winter
 * has no spread, so nothing is a tie there.
 */
final class Ties {
  private Ties() {}

  static boolean isTie(Tried one, Tried other, Costs costs) {
    Double oneCost = one.yearlyCost(costs), otherCost = other.yearlyCost(costs);
    if (oneCost == null || otherCost == null || oneCost <= 0.0 || otherCost <= 0.0) {
      return false;
    }
    double[] a = one.avoidedByWinterWh(), b = other.avoidedByWinterWh();
    var d = new double[a.length];
    for (int w = 0; w < d.length; w++) {
      d[w] = a[w] / oneCost - b[w] / otherCost;
    }
    return isTie(d);
  }

  static boolean isTie(double[] d) {
    int n = d.length;
    if (n < 2) {
      return false;
    }
    if (n == 2) {
      return d[0] * d[1] <= 0.0;
    }
    double mean = 0.0, squares = 0.0;
    for (double x : d) {
      mean += x / n;
    }
    for (double x : d) {
      squares += (x - mean) * (x - mean);
    }
    return Math.abs(mean) <= Math.sqrt(squares / (n - 1) / n);
  }
}
