package greyspell.sky;

import org.jspecify.annotations.Nullable;

/**
 * Signs that the clock or the unit of measured irradiance is wrong.
 *
 * <pre>
 * night light   hours with the sun down all hour and GHI above 8 W/m2: a few are twilight, dozens are a
 *               wrong clock
 * too bright    hours with GHI above 1.1 I0 + 20 W/m2: a few are cloud edges, hundreds are a wrong unit
 * clock         {@link SunClock}
 *
 * I0   light above the air on the level, W/m2
 * </pre>
 *
 * <p>Our own bounds, no source.
 *
 * @param nightHours hours of night light
 * @param tooBrightHours hours brighter than the sun allows
 * @param clock null where too few days are clear
 */
public record SkyChecks(int nightHours, int tooBrightHours, @Nullable SunClock clock) {
  private static final double NIGHT_WM2 = 8.0;
  private static final double BRIGHT_FACTOR = 1.1;
  private static final double BRIGHT_WM2 = 20.0;

  public static SkyChecks of(double[] globalHorizontalWm2, SunPath sun) {
    int night = 0;
    int bright = 0;
    for (int h = 0; h < globalHorizontalWm2.length; h++) {
      double global = globalHorizontalWm2[h];
      if (sun.sunlitShare()[h] == 0.0) {
        if (global > NIGHT_WM2) {
          night++;
        }
      } else if (global > BRIGHT_FACTOR * sun.extraterrestrialHorizontalWm2(h) + BRIGHT_WM2) {
        bright++;
      }
    }
    return new SkyChecks(night, bright, SunClock.find(globalHorizontalWm2, sun));
  }
}
