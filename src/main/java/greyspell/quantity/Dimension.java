package greyspell.quantity;

/** Kinds of quantity that a file may name; the inside unit is the first of each. */
public enum Dimension {
  POWER("a power", "410 W"),
  ENERGY("an energy", "5.12 kWh"),
  VOLTAGE("a voltage", "51.2 V"),
  CURRENT("a current", "9.8 A"),
  CHARGE("a charge", "280 Ah"),
  RESISTANCE("a resistance", "4 mΩ"),
  TEMPERATURE("a temperature", "-16 °C"),
  TEMPERATURE_DIFFERENCE("a temperature difference", "3 K"),
  SHARE_PER_KELVIN("a temperature coefficient", "-0.29 %/K"),
  VOLTAGE_PER_KELVIN("a voltage coefficient", "-120 mV/K"),
  CURRENT_PER_KELVIN("a current coefficient", "5 mA/K"),
  POWER_PER_KELVIN("a heat loss", "1.5 W/K"),
  HEAT_TRANSFER("a heat transfer", "25 W/m2K"),
  WIND_HEAT_TRANSFER("a heat transfer by wind", "6.84 Ws/m3K"),
  ANGLE("an angle", "30 deg"),
  LENGTH("a length", "12 m"),
  AREA("an area", "1.95 m2"),
  VOLUME("a volume", "20 l"),
  FUEL_RATE("a fuel rate", "1.2 l/h"),
  FLOW("a flow of water", "20 l/min"),
  SHARE("a share", "15 %"),
  SHARE_PER_MONTH("a share per month", "2 %/month"),
  DURATION("a duration", "2.5 h"),
  IRRADIANCE("an irradiance", "800 W/m2"),
  SPEED("a speed", "3 m/s"),
  PRESSURE("a pressure", "1013 hPa"),
  NUMBER("a plain number", "0.2");

  private final String words;
  private final String example;

  Dimension(String words, String example) {
    this.words = words;
    this.example = example;
  }

  /** With its article: {@code a power}. */
  public String words() {
    return words;
  }

  /** As a user would write one: {@code 410 W}. */
  public String example() {
    return example;
  }

  /** The unit that numbers are held in. */
  public Unit insideUnit() {
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == this) {
        return unit;
      }
    }
    throw new IllegalStateException(name());
  }
}
