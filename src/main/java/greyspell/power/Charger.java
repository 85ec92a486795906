package greyspell.power;

import greyspell.quantity.Check;

/**
 * What turns a generator's alternating current into charge: a device of its own, or the charger
 * side of an inverter.
 *
 * @param mostAcW most that it takes from the generator
 * @param efficiency from there to the bus
 */
public record Charger(double mostAcW, double efficiency) {
  public Charger {
    Check.positive("mostAcW", mostAcW);
    Check.within("efficiency", efficiency, Double.MIN_VALUE, 1.0);
  }

  /** Several alike. */
  public Charger times(int count) {
    return new Charger(mostAcW * count, efficiency);
  }
}
