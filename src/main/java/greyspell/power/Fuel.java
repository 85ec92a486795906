package greyspell.power;

import greyspell.quantity.Unit;

/**
 * What a generator burns; propane is counted as liquid.
 *
 * <pre>
 *          kg CO2 a US gallon    kg CO2 a million Btu (gross heat)
 * petrol   8.89                  71.30
 * diesel   10.16                 73.16
 * propane  5.76                  63.07
 * </pre>
 *
 * Only what leaves the exhaust: not refining, carting, methane or nitrous oxide, and nothing taken
 * off for what grew as a plant. Another agency's factors (8.78 petrol, 10.21 diesel, seen
 * second-hand) lie within 1.3 %. The gross heat of a litre is the quotient of the two columns; it
 * is used only to ask whether a stated fuel use can be true.
 *
 * <p>Source: US Energy Information Administration, Carbon Dioxide Emissions Coefficients, 2
 * February 2016 (archived page opened). Held by FuelPublishedTest.
 */
public enum Fuel {
  PETROL(8.89, 71.30),
  DIESEL(10.16, 73.16),
  PROPANE(5.76, 63.07);

  private static final double BTU_PER_MILLION = 1e6;

  private final double co2KgPerGallon;
  private final double co2KgPerMillionBtu;

  Fuel(double co2KgPerGallon, double co2KgPerMillionBtu) {
    this.co2KgPerGallon = co2KgPerGallon;
    this.co2KgPerMillionBtu = co2KgPerMillionBtu;
  }

  /** Carbon dioxide from burning a litre. */
  public double co2KgPerL() {
    return co2KgPerGallon / Unit.GALLON.toInside(1.0);
  }

  /** Gross heat of a litre. */
  public double heatWhPerL() {
    double millionBtuPerGallon = co2KgPerGallon / co2KgPerMillionBtu;
    double whPerBtu = Unit.BTU_PER_HOUR.toInside(1.0); // W for Btu/h is Wh for Btu
    return millionBtuPerGallon * BTU_PER_MILLION * whPerBtu / Unit.GALLON.toInside(1.0);
  }
}
