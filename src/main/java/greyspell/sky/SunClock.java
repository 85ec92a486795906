package greyspell.sky;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * By how much the times of measured light miss the sun, from the symmetry of morning and afternoon
 * on the clearest days.
 *
 * <pre>
 * whole hours L   that shift of -12 .. 12 h for which the sum of G(t) I0(t + L) is greatest
 * each day        G(t) = a C(t + L) + b C'(t + L), least squares over the 24 hours around noon
 *                 s = L + b / a,   misfit = rest / sum of G^2
 * clearest days   misfit below 0.01 and a within a third of the file's usual clear day; of these the
 *                 best {@value #MOST_DAYS_A_YEAR} a year
 * shift           median of s;   its scatter = 1.86 x median distance / sqrt(days)
 * uncertainty     scatter and {@value #SYSTEMATIC_MIN} minutes, squared and added
 *
 * G   global horizontal irradiance      W/m2      I0  light above the air on the level   W/m2
 * C   {@link HaurwitzClearSky}          W/m2      C'  its rate of change                 W/m2 an hour
 * </pre>
 *
 * <p>The rate of change is odd about noon and everything that dims both halves of a day alike is
 * even, so haze and cover fall out. What is left is what the sky does more often in the one half:
 * afternoon cloud that builds slowly, a mountain in the east. The systematic part stands for that.
 * Our own method, no source; held against real files by SunClockTest.
 *
 * @param shiftH to be added to the file's times to fit the sun
 * @param uncertaintyH one standard deviation of it
 * @param days clear days that it was read from
 */
public record SunClock(double shiftH, double uncertaintyH, int days) {
  /** A shift below this is not worth a word: it moves noon, not the day's energy. */
  static final double WORTH_TELLING_H = 0.25;

  /** So many standard deviations are no chance. */
  private static final double SURE = 3.0;

  static final double SYSTEMATIC_MIN = 4.0;
  static final int MOST_DAYS_A_YEAR = 40;

  private static final int FEWEST_DAYS = 8;
  private static final double MOST_MISFIT = 0.01;
  private static final double DIM_DAY_WHM2 = 1000.0;
  private static final double MIN_PER_H = 60.0;

  /** The clock of measured light, or null where too few days are clear. */
  public static @Nullable SunClock find(double[] globalHorizontalWm2, SunPath sun) {
    int hours = globalHorizontalWm2.length;
    var above = new double[hours];
    var clear = new double[hours];
    double[] sunlit = sun.sunlitShare();
    double[] cosZenith = sun.cosZenith();
    for (int h = 0; h < hours; h++) {
      if (sunlit[h] > 0.0) {
        above[h] = sun.extraterrestrialHorizontalWm2(h);
        clear[h] = HaurwitzClearSky.globalWm2(cosZenith[h]) * sunlit[h];
      }
    }
    int lag = wholeHours(globalHorizontalWm2, above);
    return ofDays(globalHorizontalWm2, clear, lag, firstHourOfDay(sun));
  }

  public double shiftMin() {
    return MIN_PER_H * shiftH;
  }

  public double uncertaintyMin() {
    return MIN_PER_H * uncertaintyH;
  }

  public boolean isWrong() {
    return Math.abs(shiftH) > WORTH_TELLING_H && Math.abs(shiftH) > SURE * uncertaintyH;
  }

  /** Hour of the file's clock, -12 to 11, that begins half a day before the sun's noon. */
  private static int firstHourOfDay(SunPath sun) {
    return (int) Math.rint(sun.clockMinusSunH());
  }

  private static int wholeHours(double[] global, double[] above) {
    int best = 0;
    double most = -1.0;
    for (int lag = -12; lag <= 12; lag++) {
      double sum = 0.0;
      for (int h = 12; h < global.length - 12; h++) {
        sum += global[h] * above[h + lag];
      }
      if (sum > most) {
        most = sum;
        best = lag;
      }
    }
    return best;
  }

  private static @Nullable SunClock ofDays(double[] global, double[] clear, int lag, int begin) {
    int days = global.length / 24;
    var shiftH = new double[days];
    var misfit = new double[days];
    var height = new double[days];
    int usable = 0;
    for (int day = 1; day < days - 1; day++) {
      int from = day * 24 + begin;
      double sum = 0.0;
      double gg = 0.0;
      double gc = 0.0;
      double gd = 0.0;
      double cc = 0.0;
      double cd = 0.0;
      double dd = 0.0;
      for (int t = from; t < from + 24; t++) {
        if (t - lag < 0 || t - lag >= global.length || t < 1 || t + 1 >= clear.length) {
          continue;
        }
        double g = global[t - lag];
        double c = clear[t];
        double d = 0.5 * (clear[t + 1] - clear[t - 1]);
        sum += g;
        gg += g * g;
        gc += g * c;
        gd += g * d;
        cc += c * c;
        cd += c * d;
        dd += d * d;
      }
      double determinant = cc * dd - cd * cd;
      if (sum < DIM_DAY_WHM2 || !(determinant > 0.0)) {
        continue;
      }
      double a = (gc * dd - gd * cd) / determinant;
      double b = (gd * cc - gc * cd) / determinant;
      double rest = 1.0 - (a * gc + b * gd) / gg;
      if (a > 0.0 && rest < MOST_MISFIT) {
        shiftH[usable] = lag + b / a;
        misfit[usable] = rest;
        height[usable] = a;
        usable++;
      }
    }
    return ofClearest(shiftH, misfit, height, usable, MOST_DAYS_A_YEAR * Math.max(1, days / 365));
  }

  private static @Nullable SunClock ofClearest(
      double[] shiftH, double[] misfit, double[] height, int usable, int most) {
    double[] heights = Arrays.copyOf(height, usable);
    Arrays.sort(heights);
    double usual = usable == 0 ? 0.0 : heights[(int) (0.9 * (usable - 1))];
    var sortedMisfit = new double[usable];
    int clear = 0;
    for (int i = 0; i < usable; i++) {
      if (height[i] > usual * 2.0 / 3.0) {
        sortedMisfit[clear++] = misfit[i];
      }
    }
    if (clear < FEWEST_DAYS) {
      return null;
    }
    sortedMisfit = Arrays.copyOf(sortedMisfit, clear);
    Arrays.sort(sortedMisfit);
    double limit = sortedMisfit[Math.min(most, clear) - 1];
    var shifts = new double[clear];
    int days = 0;
    for (int i = 0; i < usable && days < most; i++) {
      if (height[i] > usual * 2.0 / 3.0 && misfit[i] <= limit) {
        shifts[days++] = shiftH[i];
      }
    }
    shifts = Arrays.copyOf(shifts, days);
    double middle = median(shifts);
    for (int i = 0; i < days; i++) {
      shifts[i] = Math.abs(shifts[i] - middle);
    }
    double scatterH = 1.86 * median(shifts) / Math.sqrt(days);
    return new SunClock(middle, Math.hypot(scatterH, SYSTEMATIC_MIN / MIN_PER_H), days);
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    int half = values.length / 2;
    return values.length % 2 == 1 ? values[half] : 0.5 * (values[half - 1] + values[half]);
  }
}
