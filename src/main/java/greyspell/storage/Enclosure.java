package greyspell.storage;

import greyspell.quantity.Check;

/** Where the bank stands, which decides its temperature. */
public sealed interface Enclosure {
  /** Its temperature hour by hour in this air, and what heating it takes. */
  BankTemperature follow(double[] airC);

  /** In a heated room. */
  record Indoors(double temperatureC) implements Enclosure {
    public Indoors {
      Check.within("temperatureC", temperatureC, -60.0, 80.0);
    }

    @Override
    public BankTemperature follow(double[] airC) {
      return BankTemperature.constant(airC.length, temperatureC);
    }
  }

  /** Outside or in a shed: follows the air with a lag. */
  record Outdoors(double lagH) implements Enclosure {
    public Outdoors {
      Check.notNegative("lagH", lagH);
    }

    @Override
    public BankTemperature follow(double[] airC) {
      return BankTemperature.lagging(airC, lagH);
    }
  }

  /** Outside in a box that is kept at least this warm by a heater on the bus. */
  record Heated(double lagH, double atLeastC, double heatLossWPerK) implements Enclosure {
    public Heated {
      Check.notNegative("lagH", lagH);
      Check.within("atLeastC", atLeastC, -60.0, 80.0);
      Check.notNegative("heatLossWPerK", heatLossWPerK);
    }

    @Override
    public BankTemperature follow(double[] airC) {
      return BankTemperature.heated(airC, lagH, atLeastC, heatLossWPerK);
    }
  }
}
