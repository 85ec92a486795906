package greyspell.array;

/**
 * How hot a module gets under light, from the one figure on its data sheet.
 *
 * <pre>
 * Tc = Ta + (Tn - 20) G / 800
 *
 * Ta  air temperature                                          °C
 * G   light on the module's plane                              W/m²   0 .. 1500
 * Tn  nominal cell temperature (800 W/m², 20 °C air, 1 m/s)    °C     about 40 .. 50
 * Tc  result                                                   °C
 * </pre>
 *
 * Knows nothing of wind beyond the 1 m/s of the data sheet, so it runs hot on windy sites. Nothing
 * is clamped.
 *
 * <p>Source: the definition of nominal operating cell temperature in module standards, scaled in
 * proportion to light (from memory). Held by ArrayPublishedTest.
 *
 * @param nominalCellC Tn
 */
public record NominalCell(double nominalCellC) implements CellTemperature {
  private static final double NOMINAL_AIR_C = 20.0;
  private static final double NOMINAL_IRRADIANCE_WM2 = 800.0;

  @Override
  public double cellC(double irradianceWm2, double airC, double windMs) {
    return airC + (nominalCellC - NOMINAL_AIR_C) * irradianceWm2 / NOMINAL_IRRADIANCE_WM2;
  }
}
