package greyspell.array;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Solar energy of one plane or of several, hour by hour: nominal minus all losses is available, to
 * rounding. The arrays are not written.
 */
public final class SolarHours {
  private final double[] nominalWh;
  private final Map<ArrayLoss, double[]> lossWh = new EnumMap<>(ArrayLoss.class);
  private final double[] cableHeatWh;
  private final double[] availableWh;

  SolarHours(int hours) {
    nominalWh = new double[hours];
    for (ArrayLoss loss : ArrayLoss.values()) {
      lossWh.put(loss, new double[hours]);
    }
    cableHeatWh = new double[hours];
    availableWh = new double[hours];
  }

  public int hours() {
    return nominalWh.length;
  }

  /** Rated power times light on the plane. */
  public double[] nominalWh() {
    return nominalWh;
  }

  public double[] lossWh(ArrayLoss loss) {
    return Objects.requireNonNull(lossWh.get(loss));
  }

  /**
   * Heat of the stated cable alone: the part of {@link ArrayLoss#ARRAY_WIRING} that is no flat
   * share.
   */
  public double[] cableHeatWh() {
    return cableHeatWh;
  }

  /** At the controller's input. */
  public double[] availableWh() {
    return availableWh;
  }

  /** Several planes on one controller input; at least one. */
  public static SolarHours sum(List<SolarHours> planes) {
    int hours = planes.get(0).hours();
    var sum = new SolarHours(hours);
    for (SolarHours plane : planes) {
      if (plane.hours() != hours) {
        throw new IllegalArgumentException(
            "planes of " + hours + " and " + plane.hours() + " hours");
      }
      add(plane.nominalWh, sum.nominalWh);
      add(plane.cableHeatWh, sum.cableHeatWh);
      add(plane.availableWh, sum.availableWh);
      for (ArrayLoss loss : ArrayLoss.values()) {
        add(plane.lossWh(loss), sum.lossWh(loss));
      }
    }
    return sum;
  }

  private static void add(double[] from, double[] to) {
    for (int h = 0; h < to.length; h++) {
      to[h] += from[h];
    }
  }
}
