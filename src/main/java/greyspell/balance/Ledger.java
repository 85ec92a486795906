package greyspell.balance;

/**
 * The hourly books of one run: every flow of every hour, in Wh. The forcing's columns are shared,
 * the rest is written by {@link HourLoop} or {@link FullLoop}. {@link LedgerColumn} names and reads
 * all of them; the bank's voltage is no flow and stands beside them.
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
  final double[] curtailedAbsorptionWh;
  final double[] otherCurtailedWh;
  final double[] generatorWh;
  final double[] chargerLossWh;
  final double[] unmetCutOffWh;
  final double[] unmetSlowWh;
  final double[] unmetAsleepWh;
  final double[] shedWh;
  final double[] putOffWh;
  final double[] madeUpWh;
  final double[] waitingWh;
  private final double[] noneWh;
  final boolean[] generatorOn;
  final double[] bankV;
  final boolean isFull;
  final boolean isBrief;
  double startChargeWh;

  /** For a design that {@link HourLoop} follows. */
  public Ledger(Forcing forcing, double windowWh) {
    this(forcing, windowWh, false);
  }

  /** For any design: with the books of {@link FullLoop} where it is needed. */
  public static Ledger of(Forcing forcing, Design design) {
    return new Ledger(forcing, design.bank().windowWh(), FullLoop.isNeeded(forcing, design));
  }

  /**
   * The same for who asks for no more than charge, voltage, generator and what went unmet, of many
   * runs: where {@link FullLoop} is needed no other flow is booked, and to read one fails.
   */
  public static Ledger brief(Forcing forcing, Design design) {
    boolean isFull = FullLoop.isNeeded(forcing, design);
    return new Ledger(forcing, design.bank().windowWh(), isFull, isFull);
  }

  Ledger(Forcing forcing, double windowWh, boolean isFull) {
    this(forcing, windowWh, isFull, false);
  }

  private Ledger(Forcing forcing, double windowWh, boolean isFull, boolean isBrief) {
    this.isFull = isFull;
    this.isBrief = isBrief;
    this.forcing = forcing;
    this.windowWh = windowWh;
    int hours = forcing.hours(), flows = isBrief ? 0 : hours;
    solarUsedWh = new double[flows];
    controllerLossWh = new double[flows];
    curtailedFullWh = new double[flows];
    curtailedRateWh = new double[flows];
    curtailedColdWh = new double[flows];
    bankInWh = new double[flows];
    bankOutWh = new double[flows];
    chargeLossWh = new double[flows];
    dischargeLossWh = new double[flows];
    selfDischargeWh = new double[flows];
    chargeWh = new double[hours];
    servedWh = new double[flows];
    standingServedWh = new double[flows];
    inverterLossWh = new double[flows];
    inverterWiringWh = new double[flows];
    unmetInverterWh = new double[hours];
    unmetRateWh = new double[hours];
    unmetEmptyWh = new double[hours];
    noneWh = new double[flows];
    generatorOn = new boolean[isFull ? hours : 0];
    curtailedAbsorptionWh = isFull ? new double[flows] : noneWh;
    otherCurtailedWh = isFull ? new double[flows] : noneWh;
    generatorWh = isFull ? new double[hours] : noneWh;
    chargerLossWh = isFull ? new double[flows] : noneWh;
    unmetCutOffWh = isFull ? new double[hours] : noneWh;
    unmetSlowWh = isFull ? new double[hours] : noneWh;
    unmetAsleepWh = isFull ? new double[hours] : noneWh;
    shedWh = isFull ? new double[flows] : noneWh;
    putOffWh = isFull ? new double[flows] : noneWh;
    madeUpWh = isFull ? new double[flows] : noneWh;
    waitingWh = isFull ? new double[flows] : noneWh;
    bankV = isFull ? new double[hours] : noneWh;
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
    double wh = unmetInverterWh[hour] + unmetRateWh[hour] + unmetEmptyWh[hour];
    return isFull ? wh + unmetCutOffWh[hour] + unmetSlowWh[hour] + unmetAsleepWh[hour] : wh;
  }

  /** The same of every hour, a new array: sooner where they are read more than once. */
  public double[] unmetWh() {
    var wh = new double[hours()];
    for (int h = 0; h < wh.length; h++) {
      wh[h] = unmetWh(h);
    }
    return wh;
  }

  /** Whether something was asked for and not served; less than a billionth of a Wh is rounding. */
  public boolean isUnmet(int hour) {
    return isUnmet(unmetWh(hour));
  }

  /** The same of an hour's {@link #unmetWh}. */
  public static boolean isUnmet(double unmetWh) {
    return unmetWh > UnmetLoop.LEAST_UNMET_WH;
  }

  /**
   * Whether the bank had no more to give: empty to the reserve, below its cut-off, or its charge
   * too slow to flow. What an inverter or a current limit holds back at any charge is not that.
   */
  public boolean isOutOfCharge(int hour) {
    double wh = unmetEmptyWh[hour];
    wh += isFull ? unmetCutOffWh[hour] + unmetSlowWh[hour] : 0.0;
    return wh > UnmetLoop.LEAST_UNMET_WH;
  }

  /** Asked for at the sockets and on the bus. */
  public double askedWh(int hour) {
    return forcing.acAskedWh()[hour] + forcing.dcAskedWh()[hour];
  }

  double[] otherAvailableWh() {
    double[] otherWh = forcing.otherBusWh();
    return otherWh.length == 0 ? noneWh : otherWh;
  }

  /** Whether the books of generator, second source, rules and cells were kept. */
  public boolean isFull() {
    return isFull;
  }

  /** Voltage of the bank at its terminals over each hour; zeros where it is not followed. */
  public double[] bankV() {
    return bankV;
  }

  /** Let go by rule. */
  public double letGoWh(int hour) {
    return isFull ? shedWh[hour] : 0.0;
  }

  /** From the generator, at its own terminals. */
  public double generatorWh(int hour) {
    return isFull ? generatorWh[hour] : 0.0;
  }

  /** Whether the generator ran in this hour. */
  public boolean isGeneratorOn(int hour) {
    return isFull && generatorOn[hour];
  }
}
