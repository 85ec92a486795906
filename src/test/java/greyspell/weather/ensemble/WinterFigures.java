package greyspell.weather.ensemble;

import java.util.Arrays;

/** What winters are like, one figure a winter, sorted. */
final class WinterFigures {
  private static final int SPELL_D = 10;
  private static final double DULL_WHM2 = 1000.0;

  final double[] longestRunDays;
  final double[] decemberKwhm2;
  final double[] leastTenDaysKwhm2;

  /** Largest running deficit of sunshine on level ground against a steady draw. */
  final double[] deficitKwhm2;

  final double[] yearKwhm2;

  WinterFigures(WinterSource source, int years, double drawWhm2) {
    longestRunDays = new double[years];
    decemberKwhm2 = new double[years];
    leastTenDaysKwhm2 = new double[years];
    deficitKwhm2 = new double[years];
    yearKwhm2 = new double[years];
    var year = new WeatherYear();
    var days = new double[WeatherYear.DAYS];
    int[] month = YearDays.monthOfDay();
    for (int y = 0; y < years; y++) {
      source.fill(y, year);
      int seam = year.seamHour() / 24;
      for (int i = 0; i < WeatherYear.DAYS; i++) {
        int day = (seam + i) % WeatherYear.DAYS;
        days[i] = 0.0;
        for (int h = 0; h < 24; h++) {
          days[i] += year.globalHorizontalWm2()[day * 24 + h];
        }
        yearKwhm2[y] += days[i] / 1000.0;
        decemberKwhm2[y] += month[day] == 11 ? days[i] / 31_000.0 : 0.0;
      }
      walk(y, days, drawWhm2);
    }
    for (double[] figures :
        new double[][] {
          longestRunDays, decemberKwhm2, leastTenDaysKwhm2, deficitKwhm2, yearKwhm2
        }) {
      Arrays.sort(figures);
    }
  }

  private void walk(int y, double[] days, double drawWhm2) {
    int run = 0;
    double short1 = 0.0;
    double ten = 0.0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < days.length; i++) {
      run = days[i] < DULL_WHM2 ? run + 1 : 0;
      longestRunDays[y] = Math.max(longestRunDays[y], run);
      short1 = Math.max(0.0, short1 + drawWhm2 - days[i]);
      deficitKwhm2[y] = Math.max(deficitKwhm2[y], short1 / 1000.0);
      ten += days[i] - (i >= SPELL_D ? days[i - SPELL_D] : 0.0);
      if (i >= SPELL_D - 1) {
        least = Math.min(least, ten / SPELL_D);
      }
    }
    leastTenDaysKwhm2[y] = least / 1000.0;
  }

  /** Along straight lines between sorted figures. */
  static double quantile(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int i = Math.min(sorted.length - 2, (int) at);
    return sorted[i] + (at - i) * (sorted[i + 1] - sorted[i]);
  }

  static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }
}
