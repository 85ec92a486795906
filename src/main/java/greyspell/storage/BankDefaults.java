package greyspell.storage;

/**
 * What a bank of a chemistry is taken to be where nothing is stated. All from memory, as guidance;
 * the scenario lists each one that was used.
 *
 * @param chargeEfficiency bus to cells
 * @param dischargeEfficiency cells to bus
 * @param selfDischargePerMonthFraction in 30 days of rest
 * @param coldestChargeC no charging below
 * @param efficiencyWhy where the efficiencies come from
 * @param selfDischargeWhy where the self-discharge comes from
 * @param coldestChargeWhy where the temperature comes from
 */
public record BankDefaults(
    double chargeEfficiency,
    double dischargeEfficiency,
    double selfDischargePerMonthFraction,
    double coldestChargeC,
    String efficiencyWhy,
    String selfDischargeWhy,
    String coldestChargeWhy) {
  private static final String LEAD_ACID_COLD =
      "common practice, no source; a flat lead-acid battery freezes near -10 °C";

  public static BankDefaults of(Chemistry chemistry) {
    return switch (chemistry) {
      case LITHIUM_IRON_PHOSPHATE ->
          new BankDefaults(
              0.97,
              0.97,
              0.02,
              0.0,
              "middle of the usual 92 to 96 % there and back (from memory, guidance)",
              "middle of the usual 1 to 3 % a month (from memory, guidance)",
              "cell data sheets allow charging from 0 °C: metal plates out below");
      case LEAD_ACID_FLOODED ->
          new BankDefaults(
              0.88,
              0.90,
              0.04,
              -20.0,
              "within the usual 70 to 85 % there and back (from memory, guidance)",
              "within the usual 2 to 5 % a month (from memory, guidance)",
              LEAD_ACID_COLD);
      case LEAD_ACID_SEALED ->
          new BankDefaults(
              0.91,
              0.92,
              0.03,
              -20.0,
              "upper part of the usual 70 to 85 % there and back (from memory, guidance)",
              "within the usual 2 to 5 % a month (from memory, guidance)",
              LEAD_ACID_COLD);
    };
  }
}
