package greyspell.weather.ensemble;

import java.util.Arrays;

/**
 * Makes the stated monthly means the means of the whole ensemble, exactly: the hidden numbers of
 * each month are shifted by a hair, which leaves every day inside the published distribution, and
 * what is left by the tables is a factor within a thousandth of 1 (for very few years within a
 * hundredth). Temperatures are offset.
 *
 * <p>Nothing is kept of the years but sums.
 */
final class MonthBalance {
  private static final double[] SHIFTS = {
    -4.0, -3.0, -2.5, -2.0, -1.6, -1.3, -1.0, -0.8, -0.6, -0.4, -0.3, -0.2, -0.1, 0.0, 0.1, 0.2,
    0.3, 0.4, 0.6, 0.8, 1.0, 1.3, 1.6, 2.0, 2.5, 3.0, 4.0
  };

  final double[] shift = new double[YearDays.MONTHS];
  final double[] factor = new double[YearDays.MONTHS];

  /** A smooth course with the months' means, so that no month begins with a step. */
  double[] offsetOfDayK = new double[WeatherYear.DAYS];

  MonthBalance() {
    Arrays.fill(factor, 1.0);
  }

  /** Two passes over the days of all years; no hours of sunshine are made. */
  static MonthBalance over(MadeWinters winters, int years) {
    var balance = new MonthBalance();
    var year = new WeatherYear();
    balance.findShifts(winters, years, year);
    balance.findRest(winters, years, year);
    return balance;
  }

  private void findShifts(MadeWinters winters, int years, WeatherYear year) {
    var sums = new double[YearDays.MONTHS][SHIFTS.length];
    for (int y = 0; y < years; y++) {
      winters.drawSky(y, year);
      for (int day = 0; day < WeatherYear.DAYS; day++) {
        int m = winters.month(day);
        MonthSky sky = winters.sky(m);
        double dayWhm2 = winters.dayWhm2(day);
        double x = year.latent[day];
        double[] sum = sums[m];
        for (int i = 0; i < SHIFTS.length; i++) {
          sum[i] += dayWhm2 * sky.clearness(x + SHIFTS[i]);
        }
      }
    }
    for (int m = 0; m < YearDays.MONTHS; m++) {
      shift[m] = shiftAt(sums[m], winters.monthWhm2(m) * years);
    }
  }

  private static double shiftAt(double[] sums, double wanted) {
    int i = 1;
    while (i < SHIFTS.length - 1 && sums[i] < wanted) {
      i++;
    }
    double share = (wanted - sums[i - 1]) / (sums[i] - sums[i - 1]);
    double held = Math.max(0.0, Math.min(1.0, share));
    return SHIFTS[i - 1] + held * (SHIFTS[i] - SHIFTS[i - 1]);
  }

  private void findRest(MadeWinters winters, int years, WeatherYear year) {
    var sumWhm2 = new double[YearDays.MONTHS];
    var sumC = new double[YearDays.MONTHS];
    for (int y = 0; y < years; y++) {
      winters.drawSky(y, year);
      winters.clear(year, this);
      winters.drawAir(y, year, this);
      double[] temperatureC = year.airTemperatureC();
      for (int day = 0; day < WeatherYear.DAYS; day++) {
        int m = winters.month(day);
        sumWhm2[m] += winters.dayWhm2(day) * year.clearness[day];
        int first = day * YearDays.HOURS_PER_DAY;
        for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
          sumC[m] += temperatureC[first + h];
        }
      }
    }
    var offsetK = new double[YearDays.MONTHS];
    for (int m = 0; m < YearDays.MONTHS; m++) {
      factor[m] = winters.monthWhm2(m) * years / sumWhm2[m];
      double hours = (double) YearDays.length(m) * YearDays.HOURS_PER_DAY * years;
      offsetK[m] = winters.meanTemperatureC(m) - sumC[m] / hours;
    }
    offsetOfDayK = YearDays.course(offsetK);
  }
}
