package greyspell.array;

/**
 * What the controllers make of the solar energy, hour by hour: available is clipped plus loss plus
 * bus. The arrays are not written.
 */
public final class ControllerHours {
  private final double[] clippedWh;
  private final double[] lossWh;
  private final double[] busWh;

  /** For {@link ControllerChain#fill}. */
  public static ControllerHours empty(int hours) {
    return new ControllerHours(hours);
  }

  ControllerHours(int hours) {
    clippedWh = new double[hours];
    lossWh = new double[hours];
    busWh = new double[hours];
  }

  /** Left on the roof because the output limit was reached. */
  public double[] clippedWh() {
    return clippedWh;
  }

  /** Heat in the controllers if all of the bus energy is used. */
  public double[] lossWh() {
    return lossWh;
  }

  /** What they can put on the bus. */
  public double[] busWh() {
    return busWh;
  }
}
