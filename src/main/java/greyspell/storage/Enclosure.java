package greyspell.storage;

import greyspell.quantity.Check;

/** Where the bank stands, which decides its temperature. */
public sealed interface Enclosure {
  /** Its temperature hour by hour in this air, and what heating it takes. */
  BankTemperature follow(double[] airC);

  /**
   * How slowly a body follows the air: its heat capacity over the heat loss of what it stands in.
   *
   * @param massKg of the batteries and whatever else warms and cools with them
   */
  static double lagH(double massKg, double specificHeatJPerKgK, double heatLossWPerK) {
    return massKg * specificHeatJPerKgK / heatLossWPerK / 3600.0;
  }

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

  /** What the ground is made of; typical thermal diffusivities from memory. */
  enum Soil {
    DRY(0.25e-6),
    DAMP(0.5e-6),
    WET(0.8e-6);

    private final double diffusivityM2PerS;

    Soil(double diffusivityM2PerS) {
      this.diffusivityM2PerS = diffusivityM2PerS;
    }

    public double diffusivityM2PerS() {
      return diffusivityM2PerS;
    }
  }

  /** In the ground, a root cellar or a buried box, its middle this deep. */
  record InGround(double depthM, Soil soil) implements Enclosure {
    public InGround {
      Check.within("depthM", depthM, 0.0, 30.0);
    }

    @Override
    public BankTemperature follow(double[] airC) {
      return BankTemperature.given(GroundTemperature.of(airC, depthM, soil.diffusivityM2PerS()));
    }
  }
}
