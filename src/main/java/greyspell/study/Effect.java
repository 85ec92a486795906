package greyspell.study;

import greyspell.array.ArrayLoss;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What can be left out of a run, one at a time, to see how much it matters. Each stands for a model
 * that the run follows; without it the house is as if that part of nature, or of the equipment, did
 * not exist.
 */
public enum Effect {
  SHORT_DAYS("days shorter than midsummer's"),
  USUAL_CLOUD("the season's usual cloud"),
  MORE_CLOUD("cloud that differs from the usual"),
  INCIDENCE("light lost at the glass", ArrayLoss.INCIDENCE),
  SHADE("shade of near objects", ArrayLoss.SHADE),
  SOILING("dirt on the glass", ArrayLoss.SOILING),
  SNOW("snow on the panels", ArrayLoss.SNOW),
  CELL_TEMPERATURE("warm cells and weak light", ArrayLoss.TEMPERATURE_AND_LOW_LIGHT_DELTA),
  MISMATCH("modules that differ", ArrayLoss.MISMATCH),
  MODULE_AGE("age of the modules", ArrayLoss.AGEING),
  ARRAY_WIRING("wires from the panels", ArrayLoss.ARRAY_WIRING),
  BUS_WIRING("wires to and from the bank"),
  TRACKING_WINDOW("voltage outside the tracking window", ArrayLoss.OUTSIDE_WINDOW),
  HELD_AT_BANK_VOLTAGE("panels held at the bank's voltage", ArrayLoss.HELD_AT_BANK_VOLTAGE),
  CONTROLLER_LIMIT("the controller's limits"),
  CONTROLLER_LOSS("loss in the controller and its wires"),
  STANDBY("the system's own always-on draw"),
  INVERTER_LOSS("loss in the inverter and its wires"),
  INVERTER_LIMIT("the inverter's limit"),
  SEARCH("an inverter that sleeps"),
  COLD_CAPACITY("charge locked by cold"),
  COLD_CHARGING("no charging in the cold"),
  COLD_BANK("a bank that is not at 25 °C"),
  CELL_LOSS("loss into and out of the cells"),
  SELF_DISCHARGE("loss at rest"),
  BANK_RATE("the bank's charge and discharge limits"),
  ABSORPTION("less taken near full"),
  TWO_TANKS("charge that cannot be reached in time"),
  VOLTAGE("voltage that sags and rises"),
  BANK_HEALTH("a tired bank"),
  GENERATOR("the generator"),
  OTHER_SOURCE("the second source"),
  LOAD_RULES("loads let go or put off"),
  THAT_DAYS_LOAD("a load that differs from its month's mean"),
  LOAD_VARIATION("days and hours that differ by chance"),
  GROWTH("the growth margin");

  private final String words;
  private final @Nullable ArrayLoss arrayLoss;

  Effect(String words) {
    this(words, null);
  }

  Effect(String words, @Nullable ArrayLoss arrayLoss) {
    this.words = words;
    this.arrayLoss = arrayLoss;
  }

  /** In a few plain words. */
  public String words() {
    return words;
  }

  /** As in files: lower case, underscores. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The array loss that this is, null if it acts elsewhere. */
  @Nullable ArrayLoss arrayLoss() {
    return arrayLoss;
  }
}
