package greyspell.weather;

import java.util.List;

/** What a home's monitor may have written, by the key that names it in a map. */
public enum MonitorColumn {
  CHARGE("charge", "charge of the bank"),
  SOLAR("solar", "what the panels give"),
  LOAD("load", "what the house takes"),
  BATTERY("battery", "power into the bank"),
  VOLTAGE("battery_voltage", "voltage of the bank"),
  CURRENT("battery_current", "current into the bank"),
  GENERATOR("generator", "what the generator gives");

  final String key;
  final String words;

  MonitorColumn(String key, String words) {
    this.key = key;
    this.words = words;
  }

  /** Units that a map may give it, each with how many of our own (W, Wh, share, V, A) it is. */
  List<Unit> units() {
    return switch (this) {
      case CHARGE ->
          List.of(
              new Unit("%", 0.01, Kind.SHARE),
              new Unit("share", 1.0, Kind.SHARE),
              new Unit("kWh", 1000.0, Kind.STORED),
              new Unit("Wh", 1.0, Kind.STORED));
      case VOLTAGE -> List.of(new Unit("V", 1.0, Kind.READING));
      case CURRENT -> List.of(new Unit("A", 1.0, Kind.READING));
      default ->
          List.of(
              new Unit("W", 1.0, Kind.POWER),
              new Unit("kW", 1000.0, Kind.POWER),
              new Unit("Wh", 1.0, Kind.ENERGY),
              new Unit("kWh", 1000.0, Kind.ENERGY));
    };
  }

  enum Kind {
    POWER,
    /** Of one row: mean power depends on its length. */
    ENERGY,
    SHARE,
    /** Energy in the bank. */
    STORED,
    READING
  }

  record Unit(String text, double factor, Kind kind) {}
}
