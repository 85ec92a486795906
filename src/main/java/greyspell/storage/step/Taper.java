package greyspell.storage.step;

/**
 * What a bank still takes as it fills: the charge limit up to a knee, then less and less.
 *
 * <pre>
 * accepted = most                                        s below s0
 *          = most [tail + (1 - tail) (1 - s) / (1 - s0)] s above s0
 *
 * most   charge limit at the bus                     W
 * s, s0  charge and knee, as shares of the full bank 1
 * tail   share still accepted when full              1   above 0, so that full is reached
 * </pre>
 *
 * Exact over the hour: ds/dt = efficiency × accepted / full is a straight line above the knee.
 * Source: common practice, no source; held by TaperTest against small steps.
 *
 * @param kneeShare s0, 0 to below 1
 * @param tailShare tail, above 0 to 1
 */
public record Taper(double kneeShare, double tailShare) {
  /**
   * Most that the bus can put in within the hour.
   *
   * @param share charge at its start, of the full bank
   * @param fullWh the full bank
   * @param mostInWh charge limit of an hour
   * @param chargeEfficiency bus to cells
   */
  public double mostInWh(double share, double fullWh, double mostInWh, double chargeEfficiency) {
    double gainPerH = chargeEfficiency * mostInWh / fullWh;
    double flatH = share < kneeShare ? (kneeShare - share) / gainPerH : 0.0;
    if (flatH >= 1.0) {
      return mostInWh;
    }
    double start = share < kneeShare ? kneeShare : share;
    double steepness = (1.0 - tailShare) / (1.0 - kneeShare);
    double accepted = tailShare + (1.0 - start) * steepness;
    double falls = gainPerH * steepness;
    double taperedH = 1.0 - flatH;
    double mean = falls * taperedH > 1e-9 ? -Math.expm1(-falls * taperedH) / falls : taperedH;
    return mostInWh * (flatH + accepted * mean);
  }
}
