package greyspell.scenario;

import greyspell.storage.Chemistry;

/**
 * What is taken for a battery whose data sheet does not say, as a user would write it.
 *
 * @param fillingH hours in which the largest charging power would fill it
 * @param emptyingH hours in which the largest draw would empty it
 */
record ChemistryDefaults(
    String chargeEfficiency,
    String dischargeEfficiency,
    double fillingH,
    double emptyingH,
    String selfDischarge,
    String capacityByTemperature,
    String coldestCharge,
    String standby,
    String reserve) {
  static final String WHY = "typical of this chemistry; common practice, no source";

  private static final ChemistryDefaults LITHIUM =
      new ChemistryDefaults(
          "97.5 %",
          "97.5 %",
          2.0,
          2.0,
          "2 %/month",
          "-20 °C 60 %, 0 °C 85 %, 25 °C 100 %",
          "0 °C",
          "2 W",
          "10 %");
  private static final ChemistryDefaults FLOODED =
      new ChemistryDefaults(
          "87 %",
          "90 %",
          8.0,
          5.0,
          "4 %/month",
          "-20 °C 50 %, 0 °C 80 %, 25 °C 100 %",
          "-20 °C",
          "0 W",
          "50 %");
  private static final ChemistryDefaults SEALED =
      new ChemistryDefaults(
          "90 %",
          "92 %",
          5.0,
          4.0,
          "3 %/month",
          "-20 °C 55 %, 0 °C 82 %, 25 °C 100 %",
          "-20 °C",
          "0 W",
          "50 %");

  static ChemistryDefaults of(Chemistry chemistry) {
    return switch (chemistry) {
      case LITHIUM_IRON_PHOSPHATE -> LITHIUM;
      case LEAD_ACID_FLOODED -> FLOODED;
      case LEAD_ACID_SEALED -> SEALED;
    };
  }
}
