package greyspell.scenario;

import greyspell.array.DataSheetLint;
import greyspell.quantity.Show;

/** Which unit a bare number was probably meant in. Only said, never taken. */
final class UnitGuess {
  private static final double PERCENT = 100.0;

  private UnitGuess() {}

  /**
   * Of a voltage coefficient without its unit; empty if it is as likely to be in %/K.
   *
   * @param perV one over the open-circuit voltage
   */
  static String voltage(String text, double perV) {
    String number = text.strip().replace('\u2212', '-');
    double value;
    try {
      value = Double.parseDouble(number);
    } catch (NumberFormatException e) {
      return "";
    }
    boolean isPercent = DataSheetLint.isUsualVoltageCoefficient(value / PERCENT);
    if (isPercent || !DataSheetLint.isUsualVoltageCoefficient(value * perV)) {
      return "";
    }
    return "It looks like V/K: "
        + number
        + " V/K on "
        + Show.voltage(1.0 / perV)
        + " is "
        + Show.trimmed(value * perV * PERCENT, 2)
        + " %/K. Write \""
        + number
        + " V/K\" if that is meant.";
  }
}
