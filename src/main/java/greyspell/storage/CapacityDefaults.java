package greyspell.storage;

import greyspell.storage.BankSpec.CapacityAt;
import java.util.List;

/**
 * How much can be drawn at a temperature where the data sheet does not say. Guidance, not a
 * promise: sheets differ, and the maker's own curve should take its place.
 */
public final class CapacityDefaults {
  // Cell size factors by which the needed capacity is multiplied, at °C; a share is 1 over a
  // factor.
  private static final double[][] LEAD_ACID_SIZE_FACTORS = {
    {-3.9, 1.52}, {4.4, 1.30}, {10.0, 1.19}, {15.6, 1.11}, {21.1, 1.04}, {25.0, 1.00}
  };
  private static final List<CapacityAt> LITHIUM_IRON_PHOSPHATE =
      List.of(
          new CapacityAt(-30.0, 0.0),
          new CapacityAt(-20.0, 0.60),
          new CapacityAt(0.0, 0.85),
          new CapacityAt(25.0, 1.0));

  private CapacityDefaults() {}

  public static List<CapacityAt> of(Chemistry chemistry) {
    return switch (chemistry) {
      case LITHIUM_IRON_PHOSPHATE -> LITHIUM_IRON_PHOSPHATE;
      case LEAD_ACID_FLOODED, LEAD_ACID_SEALED -> leadAcid();
    };
  }

  public static String why(Chemistry chemistry) {
    return switch (chemistry) {
      case LITHIUM_IRON_PHOSPHATE ->
          "usual for lithium iron phosphate: 80 to 90 % at 0 °C, 50 to 70 % at -20 °C, nothing below"
              + " the -30 °C of cell data sheets (from memory, guidance)";
      case LEAD_ACID_FLOODED, LEAD_ACID_SEALED ->
          "cell size factors of IEEE 485 (from memory); 45 % at -20 °C is common practice, no source";
    };
  }

  private static List<CapacityAt> leadAcid() {
    var points = new CapacityAt[LEAD_ACID_SIZE_FACTORS.length + 1];
    points[0] = new CapacityAt(-20.0, 0.45);
    for (int i = 1; i < points.length; i++) {
      double[] at = LEAD_ACID_SIZE_FACTORS[i - 1];
      points[i] = new CapacityAt(at[0], 1.0 / at[1]);
    }
    return List.of(points);
  }
}
