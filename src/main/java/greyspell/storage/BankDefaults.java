package greyspell.storage;

import greyspell.storage.BankSpec.CapacityAt;
import java.util.ArrayList;
import java.util.List;

/**
 * What a battery of a chemistry is taken to be where its data sheet does not say. All from memory,
 * as guidance: sheets differ, and the maker's own figures should take their place. The scenario
 * lists each one that was used.
 *
 * @param chargeEfficiency bus to cells
 * @param dischargeEfficiency cells to bus
 * @param fillingH hours in which the largest charging power would fill it
 * @param emptyingH hours in which the largest draw would empty it
 * @param selfDischargePerMonthFraction in 30 days of rest
 * @param capacityByTemperature share that can be drawn
 * @param coldestChargeC no charging below
 * @param standbyW of a battery's own electronics
 * @param reserveFraction kept for the battery's own good
 * @param efficiencyWhy where the efficiencies come from
 * @param selfDischargeWhy where the self-discharge comes from
 * @param capacityWhy where the curve comes from
 * @param coldestChargeWhy where the temperature comes from
 */
public record BankDefaults(
    double chargeEfficiency,
    double dischargeEfficiency,
    double fillingH,
    double emptyingH,
    double selfDischargePerMonthFraction,
    List<CapacityAt> capacityByTemperature,
    double coldestChargeC,
    double standbyW,
    double reserveFraction,
    String efficiencyWhy,
    String selfDischargeWhy,
    String capacityWhy,
    String coldestChargeWhy) {
  /** For limits, standby and reserve. */
  public static final String USUAL_WHY = "typical of this chemistry; common practice, no source";

  private static final String LEAD_ACID_COLD =
      "common practice, no source; a flat lead-acid battery freezes near -10 °C";
  private static final String LEAD_ACID_CAPACITY =
      "cell size factors of IEEE 485 (from memory); 45 % at -20 °C is common practice, no source";

  // Cell size factors by which the needed capacity is multiplied, at °C; a share is 1 over a
  // factor.
  private static final double[][] LEAD_ACID_SIZE_FACTORS = {
    {-3.9, 1.52}, {4.4, 1.30}, {10.0, 1.19}, {15.6, 1.11}, {21.1, 1.04}, {25.0, 1.00}
  };
  private static final List<CapacityAt> LITHIUM_CAPACITY =
      List.of(
          new CapacityAt(-30.0, 0.0),
          new CapacityAt(-20.0, 0.60),
          new CapacityAt(0.0, 0.85),
          new CapacityAt(10.0, 0.95),
          new CapacityAt(25.0, 1.0));

  public static BankDefaults of(Chemistry chemistry) {
    return switch (chemistry) {
      case LITHIUM_IRON_PHOSPHATE ->
          new BankDefaults(
              0.97,
              0.97,
              2.0,
              2.0,
              0.02,
              LITHIUM_CAPACITY,
              0.0,
              2.0,
              0.10,
              "middle of the usual 92 to 96 % there and back (from memory, guidance)",
              "middle of the usual 1 to 3 % a month (from memory, guidance)",
              "usual for lithium iron phosphate: 80 to 90 % at 0 °C, 50 to 70 % at -20 °C, nothing below the -30 °C of cell data sheets"
                  + " (from memory, guidance); 95 % at 10 °C is our own choice",
              "cell data sheets allow charging from 0 °C: metal plates out below");
      case LEAD_ACID_FLOODED ->
          new BankDefaults(
              0.88,
              0.90,
              8.0,
              5.0,
              0.04,
              leadAcidCapacity(),
              -20.0,
              0.0,
              0.50,
              "within the usual 70 to 85 % there and back (from memory, guidance)",
              "within the usual 2 to 5 % a month (from memory, guidance)",
              LEAD_ACID_CAPACITY,
              LEAD_ACID_COLD);
      case LEAD_ACID_SEALED ->
          new BankDefaults(
              0.91,
              0.92,
              5.0,
              4.0,
              0.03,
              leadAcidCapacity(),
              -20.0,
              0.0,
              0.50,
              "upper part of the usual 70 to 85 % there and back (from memory, guidance)",
              "within the usual 2 to 5 % a month (from memory, guidance)",
              LEAD_ACID_CAPACITY,
              LEAD_ACID_COLD);
    };
  }

  private static List<CapacityAt> leadAcidCapacity() {
    var points = new ArrayList<CapacityAt>();
    points.add(new CapacityAt(-20.0, 0.45));
    for (double[] at : LEAD_ACID_SIZE_FACTORS) {
      points.add(new CapacityAt(at[0], 1.0 / at[1]));
    }
    return List.copyOf(points);
  }
}
