package greyspell.power;

import java.util.List;

/**
 * An engine with its generator, for the weeks in which the sun is not enough.
 *
 * @param ratedPowerW AC power that it can hold at sea level
 * @param fuelUse data-sheet points, rising with load; straight lines between, level outside
 */
public record GeneratorSpec(String name, double ratedPowerW, Fuel fuel, List<FuelAt> fuelUse) {
  /** What it burns; propane is counted as liquid. */
  public enum Fuel {
    PETROL,
    DIESEL,
    PROPANE
  }

  /** Fuel burnt in an hour at a share of the rated power. */
  public record FuelAt(double loadShare, double fuelLPerH) {}
}
