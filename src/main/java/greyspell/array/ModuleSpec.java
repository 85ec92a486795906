package greyspell.array;

import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * A module's data sheet at standard test conditions (1000 W/m², 25 °C cell).
 *
 * <p>Refused are values that no module can have (a maximum-power point outside the open-circuit
 * voltage or the short-circuit current, a voltage that rises with temperature). Whether the figures
 * fit each other is not judged here: {@link DataSheetFit} says so.
 *
 * @param powerPerK relative change of maximum power, negative, 1/K
 * @param openCircuitPerK relative change of open-circuit voltage, negative, 1/K
 * @param shortCircuitPerK relative change of short-circuit current, 1/K
 * @param nominalCellC cell temperature at 800 W/m², 20 °C air, 1 m/s wind
 * @param cellsInSeries cells in one series path (half-cut modules: half of all)
 * @param maxSystemV highest system voltage, null if not on the sticker
 * @param areaM2 frame area, null if not on the sticker
 */
public record ModuleSpec(
    String name,
    double ratedPowerW,
    double openCircuitV,
    double shortCircuitA,
    double maxPowerV,
    double maxPowerA,
    double powerPerK,
    double openCircuitPerK,
    double shortCircuitPerK,
    double nominalCellC,
    int cellsInSeries,
    @Nullable Double maxSystemV,
    @Nullable Double areaM2) {
  public ModuleSpec {
    Check.positive("ratedPowerW", ratedPowerW);
    Check.positive("openCircuitV", openCircuitV);
    Check.positive("shortCircuitA", shortCircuitA);
    Check.within("maxPowerV", maxPowerV, Double.MIN_VALUE, Math.nextDown(openCircuitV));
    Check.within("maxPowerA", maxPowerA, Double.MIN_VALUE, Math.nextDown(shortCircuitA));
    Check.within("powerPerK", powerPerK, -0.02, 0.0);
    Check.within("openCircuitPerK", openCircuitPerK, -0.02, 0.0);
    Check.within("shortCircuitPerK", shortCircuitPerK, -0.005, 0.005);
    Check.within("nominalCellC", nominalCellC, 20.0, 90.0);
    Check.within("cellsInSeries", cellsInSeries, 1, 1000);
    if (maxSystemV != null) {
      Check.positive("maxSystemV", maxSystemV);
    }
    if (areaM2 != null) {
      Check.positive("areaM2", areaM2);
    }
  }

  /**
   * How square the curve is: power at the maximum-power point over open-circuit voltage times
   * short-circuit current. 0.70 to 0.85 for silicon.
   */
  public double fillFactor() {
    return maxPowerV * maxPowerA / (openCircuitV * shortCircuitA);
  }

  /** Rated power over the light on the frame at test conditions; null if the area is not known. */
  public @Nullable Double efficiency() {
    return areaM2 == null ? null : ratedPowerW / (areaM2 * TestConditions.IRRADIANCE_WM2);
  }
}
