package greyspell.storage;

import greyspell.storage.LifeSheet.CyclesAt;
import java.util.List;

/**
 * Wear by cycles: deep ones wear more than their share.
 *
 * <pre>
 * damage = sum n(d) / N(d)
 *
 * d     depth of a cycle                                1    0 .. 1
 * n(d)  cycles of this depth, halves counted
 * N(d)  cycles of this depth until it is worn           straight lines between the sheet's points on logarithmic axes
 * </pre>
 *
 * Below the first and above the last point the nearest line goes on; a single point wears in
 * proportion to depth. Cycles shallower than a thousandth are left out, as noise. The order of
 * cycles, their current and the charge about which they swing do not tell.
 *
 * <p>Source: Palmgren (1924) and Miner (1945), linear damage (from memory); a data sheet for its
 * points. Held by AgeingTest.
 */
public final class CycleLife implements Rainflow.Sink {
  private static final double SHALLOWEST = 1e-3;

  private final double[] logDepth;
  private final double[] logLife;
  private double damage;

  /** Rising in depth. */
  public CycleLife(List<CyclesAt> points) {
    logDepth = new double[points.size()];
    logLife = new double[points.size()];
    for (int i = 0; i < logDepth.length; i++) {
      logDepth[i] = Math.log(points.get(i).depthShare());
      logLife[i] = Math.log(points.get(i).lifeCycles());
    }
  }

  /** Until it is worn. */
  public double cycles(double depthShare) {
    double x = Math.log(depthShare);
    int last = logDepth.length - 1;
    if (last == 0) {
      return Math.exp(logLife[0] + logDepth[0] - x);
    }
    int i = 1;
    while (i < last && x > logDepth[i]) {
      i++;
    }
    double slope = (logLife[i] - logLife[i - 1]) / (logDepth[i] - logDepth[i - 1]);
    return Math.exp(logLife[i - 1] + slope * (x - logDepth[i - 1]));
  }

  /** Wears by cycles of this depth. */
  @Override
  public void cycle(double range, double mean, double count) {
    if (range >= SHALLOWEST) {
      damage += count / cycles(range);
    }
  }

  /** So far; 1 is worn. */
  public double damageShare() {
    return damage;
  }
}
