package greyspell.sky;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Signs that the clock or the unit of measured irradiance is wrong.
 *
 * <pre>
 * night light   hours with the sun down all hour and GHI above 8 W/m2: a few are twilight, dozens are a
 *               wrong clock
 * too bright    hours with GHI above 1.1 I0 + 20 W/m2: a few are cloud edges, hundreds are a wrong unit
 * clock         the shift s for which GHI(t) follows I0(t + s) best, on the clearest days
 *
 * I0   light above the air on the level, W/m2
 * </pre>
 *
 * <p>The clearest days are up to 40 days on which GHI follows I0 best after any one shift of -12 to
 * +12 h, so that a wrong clock does not hide them; a day more or less cannot be told apart. Each
 * shift is a quarter of an hour; the best is refined by a parabola. Afternoon cloud moves it by
 * some minutes, a mountain horizon by up to a third of an hour: beyond that a warning is due. Our
 * own method, no source.
 *
 * @param nightHours hours of night light
 * @param tooBrightHours hours brighter than the sun allows
 * @param clockShiftH hours to be added to the file's times to fit the sun; empty with fewer than 5
 *     usable days
 * @param clockDays days that the clock was read from
 */
public record SkyChecks(
    int nightHours, int tooBrightHours, OptionalDouble clockShiftH, int clockDays) {
  public static final double CLOCK_WARNING_H = 0.4;

  private static final double NIGHT_WM2 = 8.0;
  private static final double BRIGHT_FACTOR = 1.1;
  private static final double BRIGHT_WM2 = 20.0;
  private static final int MOST_DAYS = 40;
  private static final int FEWEST_DAYS = 5;
  private static final double DIM_DAY_WHM2 = 1000.0;
  private static final int QUARTERS = 4;
  private static final int REACH = 12 * QUARTERS;
  private static final int SHIFTS = 2 * REACH + 1;

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
    double[][] fits = dailyFits(globalHorizontalWm2, sun);
    if (fits.length < FEWEST_DAYS) {
      return new SkyChecks(night, bright, OptionalDouble.empty(), fits.length);
    }
    return new SkyChecks(night, bright, OptionalDouble.of(bestShiftH(fits)), fits.length);
  }

  /** Of the clearest days: correlation of the day's GHI with I0 at each shift. */
  private static double[][] dailyFits(double[] global, SunPath sun) {
    int hours = global.length;
    var above = new double[QUARTERS][hours];
    for (int q = 0; q < QUARTERS; q++) {
      SunPath later = sun.later(q / (double) QUARTERS);
      for (int h = 0; h < hours; h++) {
        above[q][h] = later.extraterrestrialHorizontalWm2(h);
      }
    }
    int days = hours / 24;
    var fits = new double[days][];
    int usable = 0;
    for (int day = 1; day < days - 1; day++) {
      int from = day * 24;
      double sum = 0.0;
      for (int h = from; h < from + 24; h++) {
        sum += global[h];
      }
      if (sum < DIM_DAY_WHM2) {
        continue;
      }
      var fit = new double[SHIFTS + 1];
      for (int s = 0; s < SHIFTS; s++) {
        int quarters = s - REACH;
        int whole = Math.floorDiv(quarters, QUARTERS);
        fit[s] = correlation(global, from, above[quarters - whole * QUARTERS], from + whole);
        fit[SHIFTS] = Math.max(fit[SHIFTS], fit[s]); // the day's best stands last
      }
      fits[usable++] = fit;
    }
    double[][] sorted = Arrays.copyOf(fits, usable);
    Arrays.sort(sorted, (a, b) -> Double.compare(b[SHIFTS], a[SHIFTS]));
    return Arrays.copyOf(sorted, Math.min(usable, MOST_DAYS));
  }

  private static double bestShiftH(double[][] fits) {
    var sum = new double[SHIFTS];
    int best = 0;
    for (int s = 0; s < SHIFTS; s++) {
      for (double[] fit : fits) {
        sum[s] += fit[s];
      }
      best = sum[s] > sum[best] ? s : best;
    }
    double refined = best;
    if (best > 0 && best < SHIFTS - 1) {
      double bend = sum[best - 1] - 2.0 * sum[best] + sum[best + 1];
      if (bend < 0.0) {
        refined += 0.5 * (sum[best - 1] - sum[best + 1]) / bend;
      }
    }
    return (refined - REACH) / QUARTERS;
  }

  private static double correlation(double[] x, int xFrom, double[] y, int yFrom) {
    double sx = 0.0;
    double sy = 0.0;
    double sxx = 0.0;
    double syy = 0.0;
    double sxy = 0.0;
    for (int i = 0; i < 24; i++) {
      double a = x[xFrom + i];
      double b = y[yFrom + i];
      sx += a;
      sy += b;
      sxx += a * a;
      syy += b * b;
      sxy += a * b;
    }
    double varX = sxx - sx * sx / 24.0;
    double varY = syy - sy * sy / 24.0;
    if (varX <= 0.0 || varY <= 0.0) {
      return 0.0;
    }
    return (sxy - sx * sy / 24.0) / Math.sqrt(varX * varY);
  }
}
