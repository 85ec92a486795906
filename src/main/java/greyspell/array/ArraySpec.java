package greyspell.array;

import greyspell.calendar.Monthly;
import greyspell.quantity.Check;

/**
 * One plane of panels.
 *
 * @param tiltDeg from horizontal, 0 to 90
 * @param azimuthDeg clockwise from true north, 0 to 360
 * @param soilingFraction light lost to dirt, by month
 * @param shadeFraction light lost to near objects that the horizon does not hold, by month
 * @param mismatchFraction lost because modules differ
 * @param wiringFraction lost in the cables to the controller
 * @param ageingFraction lost to age so far
 * @param snow what becomes of snow on it; needs a weather file with snow depth
 */
public record ArraySpec(
    String name,
    double tiltDeg,
    double azimuthDeg,
    ModuleSpec module,
    int inSeries,
    int inParallel,
    Monthly soilingFraction,
    Monthly shadeFraction,
    double mismatchFraction,
    double wiringFraction,
    double ageingFraction,
    ModuleChoices choices,
    SnowRule snow) {
  public ArraySpec {
    Check.within("tiltDeg", tiltDeg, 0.0, 90.0);
    Check.within("azimuthDeg", azimuthDeg, 0.0, 360.0);
    Check.within("inSeries", inSeries, 1, 10_000);
    Check.within("inParallel", inParallel, 1, 10_000);
    for (int month = 1; month <= 12; month++) {
      Check.share("soilingFraction", soilingFraction.in(month));
      Check.share("shadeFraction", shadeFraction.in(month));
    }
    Check.share("mismatchFraction", mismatchFraction);
    Check.share("wiringFraction", wiringFraction);
    Check.share("ageingFraction", ageingFraction);
  }

  /** Without snow. */
  public ArraySpec(
      String name,
      double tiltDeg,
      double azimuthDeg,
      ModuleSpec module,
      int inSeries,
      int inParallel,
      Monthly soilingFraction,
      Monthly shadeFraction,
      double mismatchFraction,
      double wiringFraction,
      double ageingFraction,
      ModuleChoices choices) {
    this(
        name,
        tiltDeg,
        azimuthDeg,
        module,
        inSeries,
        inParallel,
        soilingFraction,
        shadeFraction,
        mismatchFraction,
        wiringFraction,
        ageingFraction,
        choices,
        SnowRule.NONE);
  }

  /** Other modules or other strings in the same place. */
  public ArraySpec withStrings(ModuleSpec of, int newInSeries, int newInParallel) {
    return new ArraySpec(
        name,
        tiltDeg,
        azimuthDeg,
        of,
        newInSeries,
        newInParallel,
        soilingFraction,
        shadeFraction,
        mismatchFraction,
        wiringFraction,
        ageingFraction,
        choices,
        snow);
  }

  public int modules() {
    return inSeries * inParallel;
  }

  public double ratedPowerW() {
    return modules() * module.ratedPowerW();
  }
}
