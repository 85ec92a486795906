package greyspell.array;

/**
 * Power of a module from its rating and one coefficient: the simple way, for sheets that hold
 * nothing else.
 *
 * <pre>
 * P = Pr (G / 1000) [1 + gamma (Tc - 25)] [1 + c log10(G / 1000)],  never below 0
 *
 * Pr     rated power                        W
 * G      light that reaches the cells       W/m²   0 .. 1500
 * Tc     cell temperature                   °C     -40 .. 90
 * gamma  relative change of power           1/K    -0.005 .. -0.002
 * c      low-light coefficient              1      0.043, which leaves 97 % of the efficiency at 200 W/m²
 * </pre>
 *
 * In very weak light, where the last factor would turn negative, the power is 0. Above 1000 W/m²
 * the last factor is slightly above 1.
 *
 * <p>Source: form by Evans (1981), Simplified method for predicting photovoltaic array output,
 * Solar Energy 27, 555-560 (from memory); the size of c is ours: data sheets usually promise 96 to
 * 98 % at 200 W/m² (common practice, no source). Held by ModulePowerTest.
 */
public final class TemperatureCoefficientPower implements ModulePower {
  private static final double EFFICIENCY_LEFT_AT_200_WM2_SHARE = 0.97;
  private static final double LOW_LIGHT_COEFFICIENT =
      (1.0 - EFFICIENCY_LEFT_AT_200_WM2_SHARE) / Math.log10(5.0);

  private final double ratedPowerW;
  private final double powerPerK;

  public TemperatureCoefficientPower(ModuleSpec module) {
    ratedPowerW = module.ratedPowerW();
    powerPerK = module.powerPerK();
  }

  @Override
  public double powerW(double irradianceWm2, double cellC) {
    if (!(irradianceWm2 > 0.0)) {
      return 0.0;
    }
    double light = irradianceWm2 / TestConditions.IRRADIANCE_WM2;
    double warmth = 1.0 + powerPerK * (cellC - TestConditions.CELL_C);
    double lowLight = 1.0 + LOW_LIGHT_COEFFICIENT * Math.log10(light);
    return warmth > 0.0 && lowLight > 0.0 ? ratedPowerW * light * warmth * lowLight : 0.0;
  }
}
