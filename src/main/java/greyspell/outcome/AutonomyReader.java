package greyspell.outcome;

import greyspell.balance.Carry;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import greyspell.storage.step.BankLimits;
import java.util.Arrays;

/**
 * Autonomy with no sun and in the weather that comes.
 *
 * <pre>
 * dark days of a month = usable Wh (1 - mean locked share) etaOut / (mean bus need of a day in that month)
 * </pre>
 *
 * Dark means no second source either. Grey autonomy counts one, and starts a full bank at midnight
 * of every day of the series and follows it until the bank first fails the house.
 */
final class AutonomyReader {
  private AutonomyReader() {}

  static Autonomy read(Forcing forcing, double[] needWh, Design design) {
    double[] hours = new Carry(forcing, design).hoursFromEachDay(Autonomy.LONGEST_D * 24.0);
    int worst = 0;
    for (int day = 1; day < hours.length; day++) {
      worst = hours[day] < hours[worst] ? day : worst;
    }
    double worstDays = hours[worst] / 24.0;
    Arrays.sort(hours);
    return new Autonomy(
        darkDays(forcing, needWh, design.bank()),
        Band.share(hours, 0.1) / 24.0,
        Band.share(hours, 0.5) / 24.0,
        Band.share(hours, 0.9) / 24.0,
        worstDays,
        worst,
        Autonomy.LONGEST_D);
  }

  static Monthly darkDays(Forcing forcing, double[] needWh, BankLimits bank) {
    HourCalendar calendar = forcing.calendar();
    var needSumWh = new double[12];
    var lockedSum = new double[12];
    var count = new int[12];
    for (int h = 0; h < needWh.length; h++) {
      int m = calendar.month(h) - 1;
      needSumWh[m] += needWh[h];
      lockedSum[m] += forcing.lockedShare()[h];
      count[m]++;
    }
    var days = new double[12];
    for (int m = 0; m < 12; m++) {
      double dayNeedWh = needSumWh[m] / count[m] * 24.0;
      double storedWh =
          bank.windowWh() * (1.0 - lockedSum[m] / count[m]) * bank.dischargeEfficiency();
      days[m] =
          storedWh < dayNeedWh * Autonomy.LONGEST_D ? storedWh / dayNeedWh : Autonomy.LONGEST_D;
    }
    return Monthly.of(days);
  }
}
