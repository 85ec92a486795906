package greyspell.power.step;

/**
 * What the hourly loop needs to know of a generator. Whoever receives an array only reads it.
 *
 * <pre>
 * bus = chargerEfficiency * AC to the charger, at most chargerMostAc
 *
 * charge, startBelow, stopAbove   over the usable window   1   0 .. 1
 * </pre>
 *
 * It starts below startBelow, or where the bank cannot give what the house lacks, and stops from
 * stopAbove on; the rule in full stands with the loop that follows it, in the room balance.
 */
public final class GeneratorLimits {
  private final double[] mostW;
  private final boolean[] permitted;
  private final double chargerMostAcW;
  private final double chargerEfficiency;
  private final double startBelowShare;
  private final double stopAboveShare;
  private final int minimumRunH;

  /**
   * The arrays are taken over, not copied.
   *
   * @param mostW most AC power in each hour, thin and hot air taken off
   * @param permitted whether it may run in each hour
   * @param chargerMostAcW most that the charger takes from it
   * @param chargerEfficiency AC to bus, above 0 to 1
   * @param startBelowShare of the usable window
   * @param stopAboveShare of the usable window, above the start
   * @param minimumRunH whole hours
   */
  public GeneratorLimits(
      double[] mostW,
      boolean[] permitted,
      double chargerMostAcW,
      double chargerEfficiency,
      double startBelowShare,
      double stopAboveShare,
      int minimumRunH) {
    if (mostW.length != permitted.length) {
      throw new IllegalArgumentException(mostW.length + " hours and " + permitted.length);
    }
    this.mostW = mostW;
    this.permitted = permitted;
    this.chargerMostAcW = chargerMostAcW;
    this.chargerEfficiency = chargerEfficiency;
    this.startBelowShare = startBelowShare;
    this.stopAboveShare = stopAboveShare;
    this.minimumRunH = minimumRunH;
  }

  public int hours() {
    return mostW.length;
  }

  public double[] mostW() {
    return mostW;
  }

  public boolean[] permitted() {
    return permitted;
  }

  public double chargerMostAcW() {
    return chargerMostAcW;
  }

  public double chargerEfficiency() {
    return chargerEfficiency;
  }

  public double startBelowShare() {
    return startBelowShare;
  }

  public double stopAboveShare() {
    return stopAboveShare;
  }

  public int minimumRunH() {
    return minimumRunH;
  }
}
