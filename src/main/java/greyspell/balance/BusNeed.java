package greyspell.balance;

import greyspell.power.step.InverterLimits;

/**
 * What the house asks of the bus: always-on draw, loads on the bus, and the sockets through the
 * inverter up to its limit.
 */
public final class BusNeed {
  private BusNeed() {}

  /** Hourly need in Wh, a new array. */
  public static double[] wh(Forcing forcing, InverterLimits inverter) {
    double[] acAskedWh = forcing.acAskedWh(), dcAskedWh = forcing.dcAskedWh();
    double[] standingWh = forcing.standingWh();
    double mostAcWh = inverter.continuousW();
    var needWh = new double[forcing.hours()];
    for (int h = 0; h < needWh.length; h++) {
      double acWh = acAskedWh[h] < mostAcWh ? acAskedWh[h] : mostAcWh;
      needWh[h] = standingWh[h] + dcAskedWh[h] + inverter.busWh(acWh);
    }
    return needWh;
  }
}
