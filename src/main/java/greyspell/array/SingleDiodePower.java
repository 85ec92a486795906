package greyspell.array;

/**
 * Power of a module from its single-diode curve, scaled so that test conditions give the rated
 * power on the sticker (voltage times current on a sticker differ from it by their rounding). Every
 * hour is solved directly: a table of power by light and temperature was tried and dropped, because
 * a solve takes a fraction of a microsecond (docs/performance.md).
 */
public final class SingleDiodePower implements ModulePower {
  private final SingleDiode diode;
  private final double scaleFactor;

  public SingleDiodePower(ModuleSpec module, SingleDiode diode) {
    this.diode = diode;
    scaleFactor =
        module.ratedPowerW()
            / diode.maxPowerW(TestConditions.IRRADIANCE_WM2, TestConditions.CELL_C);
  }

  public SingleDiode diode() {
    return diode;
  }

  /** Rated power over that of the curve. */
  double scaleFactor() {
    return scaleFactor;
  }

  @Override
  public double powerW(double irradianceWm2, double cellC) {
    return scaleFactor * diode.maxPowerW(irradianceWm2, cellC);
  }
}
