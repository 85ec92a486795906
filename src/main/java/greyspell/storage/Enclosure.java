package greyspell.storage;

/** Where the bank stands, which decides its temperature. */
public sealed interface Enclosure {
  /** In a heated room. */
  record Indoors(double temperatureC) implements Enclosure {}

  /** Outside or in a shed: follows the air with a lag. */
  record Outdoors(double lagH) implements Enclosure {}

  /** Outside in a box that is kept at least this warm by a heater on the bus. */
  record Heated(double lagH, double atLeastC, double heatLossWPerK) implements Enclosure {}
}
