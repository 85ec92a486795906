package greyspell.study;

import greyspell.balance.BusNeed;
import greyspell.balance.Forcing;
import greyspell.scenario.Scenario;
import greyspell.storage.step.BankLimits;
import java.util.Set;

/**
 * How much sun and how much store a home has in its leanest month: two figures that guide, and do
 * not decide.
 *
 * @param month 1 to 12, that in which the sun brings the least of what is needed, all years
 *     together
 * @param supplyPerNeedShare what can reach the bus over what the bus is asked for, in that month
 * @param needWhPerDay on the bus, in that month
 * @param storageDays a full bank lasts so long at that need without any sun
 */
public record SunAndStore(
    int month, double supplyPerNeedShare, double needWhPerDay, double storageDays) {
  private static final double HOURS_A_DAY = 24.0;

  static SunAndStore of(Trials trials) {
    Scenario home = trials.home();
    var limits = trials.design(0, home, Set.of());
    var supplyWh = new double[13];
    var needWh = new double[13];
    var hours = new int[13];
    for (int part = 0; part < trials.parts(); part++) {
      Forcing forcing = trials.forcing(part, home, Set.of());
      double[] solarWh = forcing.solarBusWh(), need = BusNeed.wh(forcing, limits.inverter());
      for (int h = 0; h < forcing.hours(); h++) {
        int month = forcing.calendar().month(h);
        supplyWh[month] += solarWh[h] + forcing.otherWh(h);
        needWh[month] += need[h];
        hours[month]++;
      }
    }
    int lean = 1;
    for (int m = 2; m <= 12; m++) {
      lean = supplyWh[m] * needWh[lean] < supplyWh[lean] * needWh[m] ? m : lean;
    }
    double perDayWh = needWh[lean] / Math.max(1, hours[lean]) * HOURS_A_DAY;
    BankLimits bank = limits.bank();
    return new SunAndStore(
        lean,
        needWh[lean] > 0.0 ? supplyWh[lean] / needWh[lean] : 0.0,
        perDayWh,
        perDayWh > 0.0 ? bank.windowWh() * bank.dischargeEfficiency() / perDayWh : 0.0);
  }
}
