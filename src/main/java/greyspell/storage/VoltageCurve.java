package greyspell.storage;

import greyspell.quantity.Check;
import java.util.ArrayList;
import java.util.List;

/**
 * Voltage of a bank with nothing drawn, against its charge.
 *
 * <pre>
 * E(s) = straight lines between points, level outside them
 *
 * s  charge over all that the cells hold    1    0 .. 1
 * E  open-circuit voltage, rested           V    above 0, never falling
 * </pre>
 *
 * One curve for charging and discharging: the small difference between the two that lithium iron
 * phosphate shows is left out, and so is the small effect of temperature. Where no points are
 * stated they are typical of the chemistry, per cell: lithium iron phosphate and sealed lead-acid
 * from memory; flooded lead-acid by the rule of thumb that a cell's voltage is the specific gravity
 * of its acid plus 0.845 (from memory), with the middle of the gravities that battery makers print
 * for full, three quarters, half, a quarter and empty.
 *
 * <p>Source: none for the lines, a data sheet for its points. Held by DetailedBankTest.
 */
public final class VoltageCurve {
  /** So that points at whole percents are kept exactly. */
  private static final int STEPS = 100;

  private static final double[][] LITHIUM_CELL = {
    {0.0, 2.90},
    {0.05, 3.12},
    {0.1, 3.20},
    {0.2, 3.245},
    {0.3, 3.275},
    {0.4, 3.29},
    {0.5, 3.295},
    {0.6, 3.305},
    {0.7, 3.325},
    {0.9, 3.33},
    {0.95, 3.34},
    {1.0, 3.40}
  };
  private static final double[][] FLOODED_CELL = {
    {0.0, 1.965}, {0.25, 2.005}, {0.5, 2.035}, {0.75, 2.07}, {1.0, 2.11}
  };
  private static final double[][] SEALED_CELL = {
    {0.0, 1.95}, {0.25, 2.00}, {0.5, 2.045}, {0.75, 2.095}, {1.0, 2.14}
  };

  private final Line line;

  /** A point of the curve. */
  public record VoltageAt(double chargeShare, double openV) {
    public VoltageAt {
      Check.share("chargeShare", chargeShare);
      Check.positive("openV", openV);
    }
  }

  /** From points, rising in charge. */
  public VoltageCurve(List<VoltageAt> points) {
    var share = new double[points.size()];
    var volt = new double[points.size()];
    for (int i = 0; i < share.length; i++) {
      share[i] = points.get(i).chargeShare();
      volt[i] = points.get(i).openV();
    }
    line = new Line(share, volt);
  }

  /** Typical of the chemistry, for so many cells in series. */
  public static List<VoltageAt> usual(Chemistry chemistry, double cells) {
    double[][] cell =
        switch (chemistry) {
          case LITHIUM_IRON_PHOSPHATE -> LITHIUM_CELL;
          case LEAD_ACID_FLOODED -> FLOODED_CELL;
          case LEAD_ACID_SEALED -> SEALED_CELL;
        };
    var points = new ArrayList<VoltageAt>();
    for (double[] at : cell) {
      points.add(new VoltageAt(at[0], at[1] * cells));
    }
    return List.copyOf(points);
  }

  public double openV(double chargeShare) {
    return line.at(chargeShare);
  }

  /** At equal steps from empty to full. */
  public double[] table() {
    var table = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      table[i] = line.at((double) i / STEPS);
    }
    return table;
  }
}
