package greyspell.weather;

import java.util.ArrayList;
import java.util.List;

/** Units that a column map may name, beside what they are of our own. */
enum MapUnit {
  W_M2("W/m2", Kind.POWER, 1.0),
  KW_M2("kW/m2", Kind.POWER, 1000.0),
  WH_M2("Wh/m2", Kind.ENERGY, 1.0),
  KWH_M2("kWh/m2", Kind.ENERGY, 1000.0),
  J_CM2("J/cm2", Kind.ENERGY, 1.0 / 0.36),
  J_M2("J/m2", Kind.ENERGY, 1.0 / 3600.0),
  KJ_M2("kJ/m2", Kind.ENERGY, 1.0 / 3.6),
  MJ_M2("MJ/m2", Kind.ENERGY, 1000.0 / 3.6),
  C("C", Kind.TEMPERATURE, 1.0),
  F("F", Kind.TEMPERATURE, 5.0 / 9.0),
  K("K", Kind.TEMPERATURE, 1.0),
  M_S("m/s", Kind.SPEED, 1.0),
  KM_H("km/h", Kind.SPEED, 1.0 / 3.6),
  KNOT("kn", Kind.SPEED, 1852.0 / 3600.0),
  MPH("mph", Kind.SPEED, 0.44704),
  OKTA("okta", Kind.COVER, 1.0 / 8.0),
  TENTHS("tenths", Kind.COVER, 0.1),
  PERCENT("%", Kind.COVER, 0.01),
  SHARE("share", Kind.COVER, 1.0),
  M("m", Kind.DEPTH, 1.0),
  CM("cm", Kind.DEPTH, 0.01),
  MM("mm", Kind.DEPTH, 0.001),
  IN("in", Kind.DEPTH, 0.0254);

  enum Kind {
    POWER,
    /** Over the interval of a row: mean power depends on its length. */
    ENERGY,
    TEMPERATURE,
    SPEED,
    COVER,
    DEPTH
  }

  final String text;
  final Kind kind;

  /** In the series' unit; for energies, Wh/m2. */
  final double size;

  MapUnit(String text, Kind kind, double size) {
    this.text = text;
    this.kind = kind;
    this.size = size;
  }

  /** What zero of this unit is in the series'. */
  double zero() {
    return switch (this) {
      case F -> -32.0 * 5.0 / 9.0;
      case K -> -273.15;
      default -> 0.0;
    };
  }

  boolean suits(WeatherColumn column) {
    return switch (column) {
      case GLOBAL, DIRECT, DIFFUSE -> kind == Kind.POWER || kind == Kind.ENERGY;
      case TEMPERATURE -> kind == Kind.TEMPERATURE;
      case WIND -> kind == Kind.SPEED;
      case CLOUD -> kind == Kind.COVER;
      case SNOW -> kind == Kind.DEPTH;
    };
  }

  static List<String> suiting(WeatherColumn column) {
    var names = new ArrayList<String>();
    for (MapUnit unit : values()) {
      if (unit.suits(column)) {
        names.add(unit.text);
      }
    }
    return names;
  }
}
