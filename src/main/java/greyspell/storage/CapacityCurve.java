package greyspell.storage;

import greyspell.storage.BankSpec.CapacityAt;
import java.util.List;

/**
 * How much of the bank's energy can be drawn at a temperature: straight lines between the stated
 * points, level outside them.
 */
public final class CapacityCurve {
  private final Line line;

  /**
   * From points.
   *
   * @param points at least one, rising in temperature
   */
  public CapacityCurve(List<CapacityAt> points) {
    var temperatureC = new double[points.size()];
    var share = new double[points.size()];
    for (int i = 0; i < share.length; i++) {
      temperatureC[i] = points.get(i).temperatureC();
      share[i] = points.get(i).capacityShare();
    }
    line = new Line(temperatureC, share);
  }

  /** Share of the nominal energy; may be above 1 where the points are. */
  public double capacityShare(double atC) {
    return line.at(atC);
  }
}
