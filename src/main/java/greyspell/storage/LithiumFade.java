package greyspell.storage;

/**
 * Published cycle ageing of lithium iron phosphate cells, as it was measured in laboratories. For
 * comparison with what {@link Ageing} reckons; a house is neither, so the shape counts and not the
 * number.
 *
 * <pre>
 * by charge moved      Q = 30330 exp(-31500 / (R T)) Ah^0.552
 * by full cycles       Q = (0.0630 r + 0.0971) [4.0253 (d - 0.6)^3 + 1.0923] sqrt(n)
 *
 * Q   capacity lost                                 %      0 .. about 30
 * T   temperature                                   K      288 .. 333
 * R   gas constant, 8.314                           J/(mol K)
 * Ah  charge moved through a cell of 2.2 Ah, at half its capacity an hour     Ah
 * r   current over capacity                         1/h    0.2 .. 1
 * d   depth of the cycles                           1      0.2 .. 1
 * n   equivalent full cycles
 * </pre>
 *
 * Neither knows calendar ageing. The first has its charge scaled from a larger cell to one of 2.2
 * Ah. Ranges from memory.
 *
 * <p>Source: Wang et al. (2011), Journal of Power Sources 196; Naumann et al. (2020), Journal of
 * Power Sources 451; constants seen in code that cites them. Held by StoragePublishedTest.
 */
public final class LithiumFade {
  static final double GAS_J_PER_MOL_K = 8.314;
  static final double ACTIVATION_J_PER_MOL = 31_500.0;
  private static final double TESTED_CELL_AH = 2.2;
  static final double KELVIN_AT_ZERO_C = 273.15;

  private LithiumFade() {}

  /**
   * By charge moved at half the capacity an hour.
   *
   * @param movedAh in and out together, through a cell of {@code cellAh}
   */
  public static double byChargeMovedShare(double temperatureC, double movedAh, double cellAh) {
    double kelvin = temperatureC + KELVIN_AT_ZERO_C;
    double testedAh = movedAh * TESTED_CELL_AH / cellAh;
    return 0.01
        * 30_330.0
        * Math.exp(-ACTIVATION_J_PER_MOL / (GAS_J_PER_MOL_K * kelvin))
        * Math.pow(testedAh, 0.552);
  }

  /** By equivalent full cycles of one depth and current. */
  public static double byFullCyclesShare(double ratePerH, double depthShare, double fullCycles) {
    double off = depthShare - 0.6;
    return 0.01
        * (0.0630 * ratePerH + 0.0971)
        * (4.0253 * off * off * off + 1.0923)
        * Math.sqrt(fullCycles);
  }

  /** Cycles until this much is lost. */
  public static double fullCycles(double ratePerH, double depthShare, double lostShare) {
    double one = byFullCyclesShare(ratePerH, depthShare, 1.0);
    return lostShare * lostShare / (one * one);
  }
}
