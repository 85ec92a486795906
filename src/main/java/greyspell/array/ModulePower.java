package greyspell.array;

/** Power of one module at its maximum-power point. */
public sealed interface ModulePower permits SingleDiodePower, TemperatureCoefficientPower {
  /**
   * Power under this light at this temperature.
   *
   * @param irradianceWm2 light that reaches the cells, 0 or more
   */
  double powerW(double irradianceWm2, double cellC);
}
