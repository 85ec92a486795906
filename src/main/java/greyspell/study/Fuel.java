package greyspell.study;

import org.jspecify.annotations.Nullable;

/**
 * What a generator burnt over a stretch of hours.
 *
 * @param fuelCost in the scenario's currency, null without a price
 */
public record Fuel(double fuelL, double co2Kg, @Nullable Double fuelCost) {
  public static final Fuel NONE = new Fuel(0.0, 0.0, null);
}
