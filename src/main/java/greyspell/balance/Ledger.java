package greyspell.balance;

/**
 * The hourly books of one run: every flow of every hour, in Wh. The forcing's columns are shared,
 * the rest is written by {@link HourLoop}. {@link LedgerColumn} names and reads all of them.
 */
public final class Ledger {
  private final Forcing forcing;
  private final double windowWh;
  final double[] solarUsedWh;
  final double[] controllerLossWh;
  final double[] curtailedFullWh;
  final double[] curtailedRateWh;
  final double[] curtailedColdWh;
  final double[] bankInWh;
  final double[] bankOutWh;
  final double[] chargeLossWh;
  final double[] dischargeLossWh;
  final double[] selfDischargeWh;
  final double[] chargeWh;
  final double[] servedWh;
  final double[] standingServedWh;
  final double[] inverterLossWh;
  final double[] inverterWiringWh;
  final double[] unmetInverterWh;
  final double[] unmetRateWh;
  final double[] unmetEmptyWh;
  double startChargeWh;

  public Ledger(Forcing forcing, double windowWh) {
    this.forcing = forcing;
    this.windowWh = windowWh;
    int hours = forcing.hours();
    solarUsedWh = new double[hours];
    controllerLossWh = new double[hours];
    curtailedFullWh = new double[hours];
    curtailedRateWh = new double[hours];
    curtailedColdWh = new double[hours];
    bankInWh = new double[hours];
    bankOutWh = new double[hours];
    chargeLossWh = new double[hours];
    dischargeLossWh = new double[hours];
    selfDischargeWh = new double[hours];
    chargeWh = new double[hours];
    servedWh = new double[hours];
    standingServedWh = new double[hours];
    inverterLossWh = new double[hours];
    inverterWiringWh = new double[hours];
    unmetInverterWh = new double[hours];
    unmetRateWh = new double[hours];
    unmetEmptyWh = new double[hours];
  }

  public Forcing forcing() {
    return forcing;
  }

  public int hours() {
    return chargeWh.length;
  }

  /** Usable energy of the full bank, above the reserve. */
  public double windowWh() {
    return windowWh;
  }

  /** Charge above the reserve before the first hour. */
  public double startChargeWh() {
    return startChargeWh;
  }

  /** Charge above the reserve at the end of each hour. Not to be written. */
  public double[] chargeWh() {
    return chargeWh;
  }

  /** All that was asked for and not served in this hour, whatever the reason. */
  public double unmetWh(int hour) {
    return unmetInverterWh[hour] + unmetRateWh[hour] + unmetEmptyWh[hour];
  }

  /** Asked for at the sockets and on the bus. */
  public double askedWh(int hour) {
    return forcing.acAskedWh()[hour] + forcing.dcAskedWh()[hour];
  }
}
