package greyspell.storage;

import greyspell.storage.BankSpec.CapacityAt;
import java.util.List;

/**
 * How much of the bank's energy can be drawn at a temperature: straight lines between the stated
 * points, level outside them.
 */
public final class CapacityCurve {
  private final double[] temperatureC;
  private final double[] share;

  /**
   * From points.
   *
   * @param points at least one, rising in temperature
   */
  public CapacityCurve(List<CapacityAt> points) {
    temperatureC = new double[points.size()];
    share = new double[points.size()];
    for (int i = 0; i < temperatureC.length; i++) {
      temperatureC[i] = points.get(i).temperatureC();
      share[i] = points.get(i).capacityShare();
    }
  }

  /** Share of the nominal energy; may be above 1 where the points are. */
  public double capacityShare(double atC) {
    int last = temperatureC.length - 1;
    if (!(atC > temperatureC[0])) {
      return share[0];
    }
    for (int i = 1; i <= last; i++) {
      if (atC < temperatureC[i]) {
        double along = (atC - temperatureC[i - 1]) / (temperatureC[i] - temperatureC[i - 1]);
        return share[i - 1] + along * (share[i] - share[i - 1]);
      }
    }
    return share[last];
  }
}
