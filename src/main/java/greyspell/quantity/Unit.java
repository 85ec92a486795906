package greyspell.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * A unit that a file may use, with every spelling that is understood; the first spelling is the one
 * printed. Factors are exact decimals or fractions, so that a printed value reads back as the same
 * number.
 */
public enum Unit {
  WATT(Dimension.POWER, "1", "W", "watt", "watts"),
  KILOWATT(Dimension.POWER, "1000", "kW"),
  HORSEPOWER(Dimension.POWER, "745.69987158227022", "hp"), // 550 ft lbf/s
  BTU_PER_HOUR(Dimension.POWER, "1055.05585262/3600", "Btu/h", "BTU/hr"),
  WATT_HOUR(Dimension.ENERGY, "1", "Wh"),
  KILOWATT_HOUR(Dimension.ENERGY, "1000", "kWh"),
  KILOJOULE(Dimension.ENERGY, "1/3.6", "kJ"),
  MEGAJOULE(Dimension.ENERGY, "1000/3.6", "MJ"),
  VOLT(Dimension.VOLTAGE, "1", "V", "volt", "volts", "Vdc", "VDC"),
  MILLIVOLT(Dimension.VOLTAGE, "0.001", "mV"),
  KILOVOLT(Dimension.VOLTAGE, "1000", "kV"),
  AMPERE(Dimension.CURRENT, "1", "A", "amp", "amps"),
  MILLIAMPERE(Dimension.CURRENT, "0.001", "mA"),
  AMPERE_HOUR(Dimension.CHARGE, "1", "Ah"),
  MILLIAMPERE_HOUR(Dimension.CHARGE, "0.001", "mAh"),
  OHM(Dimension.RESISTANCE, "1", "Ω", "ohm", "ohms", "\u2126"),
  MILLIOHM(Dimension.RESISTANCE, "0.001", "mΩ", "mohm", "m\u2126"),
  CELSIUS(Dimension.TEMPERATURE, "1", "°C", "C", "degC", "℃"),
  FAHRENHEIT(Dimension.TEMPERATURE, "5/9", "°F", "F", "degF", "℉"),
  ABSOLUTE_KELVIN(Dimension.TEMPERATURE, "1", "K"),
  KELVIN(Dimension.TEMPERATURE_DIFFERENCE, "1", "K", "°C", "C"),
  FAHRENHEIT_STEP(Dimension.TEMPERATURE_DIFFERENCE, "5/9", "°F", "F"),
  ONE_PER_KELVIN(Dimension.SHARE_PER_KELVIN, "1", "/K", "/°C"),
  PERCENT_PER_KELVIN(Dimension.SHARE_PER_KELVIN, "0.01", "%/K", "%/°C", "%/C", "% / K", "% / °C"),
  PERCENT_PER_FAHRENHEIT(Dimension.SHARE_PER_KELVIN, "0.018", "%/°F", "%/F"),
  VOLT_PER_KELVIN(Dimension.VOLTAGE_PER_KELVIN, "1", "V/K", "V/°C", "V/C"),
  MILLIVOLT_PER_KELVIN(Dimension.VOLTAGE_PER_KELVIN, "0.001", "mV/K", "mV/°C", "mV/C"),
  AMPERE_PER_KELVIN(Dimension.CURRENT_PER_KELVIN, "1", "A/K", "A/°C", "A/C"),
  MILLIAMPERE_PER_KELVIN(Dimension.CURRENT_PER_KELVIN, "0.001", "mA/K", "mA/°C", "mA/C"),
  WATT_PER_KELVIN(Dimension.POWER_PER_KELVIN, "1", "W/K", "W/°C"),
  WATT_PER_SQUARE_METRE_KELVIN(Dimension.HEAT_TRANSFER, "1", "W/m2K", "W/m²K", "W/(m²K)"),
  WATT_SECOND_PER_CUBIC_METRE_KELVIN(
      Dimension.WIND_HEAT_TRANSFER, "1", "Ws/m3K", "Ws/m³K", "W/m2K per m/s"),
  DEGREE(Dimension.ANGLE, "1", "deg", "°", "degree", "degrees"),
  METRE(Dimension.LENGTH, "1", "m", "metre", "metres", "meter", "meters"),
  CENTIMETRE(Dimension.LENGTH, "0.01", "cm"),
  MILLIMETRE(Dimension.LENGTH, "0.001", "mm"),
  KILOMETRE(Dimension.LENGTH, "1000", "km"),
  FOOT(Dimension.LENGTH, "0.3048", "ft", "feet", "foot"),
  INCH(Dimension.LENGTH, "0.0254", "in", "inch", "inches"),
  SQUARE_METRE(Dimension.AREA, "1", "m2", "m²"),
  SQUARE_MILLIMETRE(Dimension.AREA, "0.000001", "mm2", "mm²"),
  SQUARE_FOOT(Dimension.AREA, "0.09290304", "ft2", "ft²", "sq ft"),
  LITRE(Dimension.VOLUME, "1", "l", "L", "litre", "litres", "liter", "liters"),
  GALLON(Dimension.VOLUME, "3.785411784", "gal", "gallon", "gallons"), // US liquid
  LITRE_PER_HOUR(Dimension.FUEL_RATE, "1", "l/h", "L/h"),
  GALLON_PER_HOUR(Dimension.FUEL_RATE, "3.785411784", "gal/h"),
  LITRE_OF_WATER_PER_HOUR(Dimension.FLOW, "1", "l/h", "L/h"),
  LITRE_PER_MINUTE(Dimension.FLOW, "60", "l/min", "L/min"),
  GALLON_PER_MINUTE(Dimension.FLOW, "227.12470704", "gal/min", "gpm"), // US liquid
  WHOLE(Dimension.SHARE, "1", "of 1"),
  PERCENT(Dimension.SHARE, "0.01", "%", "percent"),
  SHARE_A_MONTH(Dimension.SHARE_PER_MONTH, "1", "of 1/month"),
  PERCENT_A_MONTH(Dimension.SHARE_PER_MONTH, "0.01", "%/month", "% a month", "% per month"),
  HOUR(Dimension.DURATION, "1", "h", "hour", "hours"),
  MINUTE(Dimension.DURATION, "1/60", "min", "minute", "minutes"),
  DAY(Dimension.DURATION, "24", "d", "day", "days"),
  WATT_PER_SQUARE_METRE(Dimension.IRRADIANCE, "1", "W/m2", "W/m²"),
  KILOWATT_PER_SQUARE_METRE(Dimension.IRRADIANCE, "1000", "kW/m2", "kW/m²"),
  METRE_PER_SECOND(Dimension.SPEED, "1", "m/s"),
  KILOMETRE_PER_HOUR(Dimension.SPEED, "1/3.6", "km/h"),
  MILE_PER_HOUR(Dimension.SPEED, "0.44704", "mph"),
  PASCAL(Dimension.PRESSURE, "1", "Pa"),
  HECTOPASCAL(Dimension.PRESSURE, "100", "hPa", "mbar"),
  INCH_OF_MERCURY(Dimension.PRESSURE, "3386.389", "inHg"),
  ONE(Dimension.NUMBER, "1", "");

  private static final BigDecimal FAHRENHEIT_AT_ZERO_C = new BigDecimal("32");
  private static final BigDecimal KELVIN_AT_ZERO_C = new BigDecimal("273.15");

  private final Dimension dimension;
  private final BigDecimal factor;
  private final BigDecimal divisor;
  private final List<String> spellings;

  Unit(Dimension dimension, String factor, String... spellings) {
    int slash = factor.indexOf('/');
    this.dimension = dimension;
    this.factor = new BigDecimal(slash < 0 ? factor : factor.substring(0, slash));
    this.divisor = slash < 0 ? BigDecimal.ONE : new BigDecimal(factor.substring(slash + 1));
    this.spellings = List.of(spellings);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** As printed. */
  public String symbol() {
    return spellings.get(0);
  }

  /** Every spelling that is understood. */
  public List<String> spellings() {
    return spellings;
  }

  /** In the inside unit; infinite if it is too large for a number. */
  double inside(BigDecimal value) {
    var scaled = value.subtract(zero()).multiply(factor);
    return divisor.compareTo(BigDecimal.ONE) == 0
        ? scaled.doubleValue()
        : scaled.divide(divisor, MathContext.DECIMAL128).doubleValue();
  }

  /** A value in this unit to the inside unit: 1 gal is 3.785 l. */
  public double toInside(double value) {
    return inside(BigDecimal.valueOf(value));
  }

  /** A value in the inside unit to this one: 3.785 l are 1 gal. */
  public double fromInside(double value) {
    return outside(value, 17).doubleValue();
  }

  /** From the inside unit to this one, with at most so many digits. */
  BigDecimal outside(double inside, int digits) {
    var mathContext = new MathContext(digits);
    return new BigDecimal(Double.toString(inside))
        .multiply(divisor)
        .divide(factor, MathContext.DECIMAL128)
        .add(zero())
        .round(mathContext);
  }

  private BigDecimal zero() {
    return switch (this) {
      case FAHRENHEIT -> FAHRENHEIT_AT_ZERO_C;
      case ABSOLUTE_KELVIN -> KELVIN_AT_ZERO_C;
      default -> BigDecimal.ZERO;
    };
  }

  /** An inside value in this unit, for messages: at most five digits. */
  public String text(double inside) {
    return text(inside, 5);
  }

  String text(double inside, int digits) {
    return join(outside(inside, digits));
  }

  /** An inside value in this unit, all its digits. */
  public String exactText(double inside) {
    return text(inside, 17);
  }

  private String join(BigDecimal value) {
    String number = value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    return symbol().isEmpty() ? number : number.concat(" ").concat(symbol());
  }
}
