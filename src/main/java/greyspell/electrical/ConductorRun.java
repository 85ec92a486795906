package greyspell.electrical;

import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * A pair of wires as the user states it.
 *
 * @param name where it runs: "array to controller"
 * @param lengthM one way
 * @param inParallel wires side by side in each direction
 * @param ambientC hottest air around it
 * @param statedAmpacityA what the cable's own table allows as it is laid, all wires together,
 *     already corrected for air and laying; null to use the program's table where it has the size
 */
public record ConductorRun(
    Kind kind,
    String name,
    double lengthM,
    WireSize size,
    WireSize.Strands strands,
    WireResistance.Metal metal,
    int inParallel,
    double ambientC,
    Ampacity.Insulation insulation,
    @Nullable Double statedAmpacityA) {
  public ConductorRun {
    Check.within("lengthM", lengthM, Double.MIN_VALUE, 10_000.0);
    Check.within("inParallel", inParallel, 1, 20);
    Check.within("ambientC", ambientC, -60.0, 85.0);
    if (statedAmpacityA != null) {
      Check.positive("statedAmpacityA", statedAmpacityA);
    }
  }

  /** Which part of the way from the sun to the inverter. */
  public enum Kind {
    ARRAY_TO_CONTROLLER("array to controller"),
    CONTROLLER_TO_BANK("controller to bank"),
    BANK_TO_INVERTER("bank to inverter");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  ConductorRun withSize(WireSize other) {
    return new ConductorRun(
        kind, name, lengthM, other, strands, metal, inParallel, ambientC, insulation, null);
  }
}
