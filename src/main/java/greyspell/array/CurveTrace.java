package greyspell.array;

import java.util.List;

/** A current-voltage curve as points, from short to open circuit. The arrays are not written. */
public final class CurveTrace {
  private final double[] voltageV;
  private final double[] currentA;
  private final List<CurvePoint> summits;

  CurveTrace(double[] voltageV, double[] currentA, List<CurvePoint> summits) {
    this.voltageV = voltageV;
    this.currentA = currentA;
    this.summits = List.copyOf(summits);
  }

  /** Rising. */
  public double[] voltageV() {
    return voltageV;
  }

  public double[] currentA() {
    return currentA;
  }

  /** Where the power has a summit, by rising voltage; several under partial shade. */
  public List<CurvePoint> summits() {
    return summits;
  }

  /** The highest summit; zeros without light. */
  public CurvePoint maxPower() {
    var best = new CurvePoint(0.0, 0.0);
    for (CurvePoint summit : summits) {
      best = summit.powerW() > best.powerW() ? summit : best;
    }
    return best;
  }

  /** Power at a voltage, a straight line between the traced points; 0 outside them. */
  public double powerW(double atV) {
    for (int k = 1; k < voltageV.length; k++) {
      double belowV = voltageV[k - 1], aboveV = voltageV[k];
      if (atV >= belowV && atV <= aboveV && aboveV > belowV) {
        double along = (atV - belowV) / (aboveV - belowV);
        return atV * (currentA[k - 1] + along * (currentA[k] - currentA[k - 1]));
      }
    }
    return 0.0;
  }

  public double openCircuitV() {
    return voltageV[voltageV.length - 1];
  }

  public double shortCircuitA() {
    return currentA[0];
  }
}
