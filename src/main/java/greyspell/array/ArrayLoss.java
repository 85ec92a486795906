package greyspell.array;

import java.util.Locale;

/** What is lost between nominal solar energy and the controller's input, in this order. */
public enum ArrayLoss {
  INCIDENCE("light reflected off the glass at a slant"),
  SHADE("shade of near objects"),
  SOILING("dirt on the glass"),
  SNOW("snow on the panels"),
  TEMPERATURE_AND_LOW_LIGHT_DELTA("warm cells and weak light; negative where cold cells gain"),
  MISMATCH("modules that differ"),
  AGEING("age so far"),
  ARRAY_WIRING("heat in the cables to the controller"),
  OUTSIDE_WINDOW("panel voltage outside what the controller tracks"),
  HELD_AT_BANK_VOLTAGE("panels held at the bank's voltage by a controller that does not track");

  private final String meaning;

  ArrayLoss(String meaning) {
    this.meaning = meaning;
  }

  /** As in ledger headers: lower case, underscores. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public String meaning() {
    return meaning;
  }
}
