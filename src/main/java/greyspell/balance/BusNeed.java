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
    var needWh = new double[forcing.hours()];
    fill(forcing, inverter, needWh);
    return needWh;
  }

  /** Hourly need in Wh, into an array that is overwritten. */
  public static void fill(Forcing forcing, InverterLimits inverter, double[] needWh) {
    double[] acAskedWh = forcing.acAskedWh(), dcAskedWh = forcing.dcAskedWh();
    double[] standingWh = forcing.standingWh();
    double mostAcWh = inverter.continuousW();
    for (int h = 0; h < needWh.length; h++) {
      double acWh = acAskedWh[h] < mostAcWh ? acAskedWh[h] : mostAcWh;
      needWh[h] = standingWh[h] + dcAskedWh[h] + inverter.busWh(acWh);
    }
  }
}
