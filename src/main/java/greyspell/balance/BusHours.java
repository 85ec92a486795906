package greyspell.balance;

import greyspell.power.step.InverterLimits;

/**
 * A forcing seen from the bus behind one inverter: what every loop that keeps sums only needs of
 * each hour, worked out once and shared by all banks and all numbers of panels.
 *
 * <p>Where no controller clips, more panels are a factor on the solar energy; where one does, each
 * number of panels has its own forcing. Of that only the arrays that are needed are held: many
 * numbers of panels in many winters stay in memory side by side.
 */
public final class BusHours {
  final double[] solarWh;
  final double[] needWh;

  /** Asked for and within the inverter, over the need: what a Wh lacking on the bus leaves off. */
  final double[] servedShare;

  final double[] overloadWh;

  /** Solar energy at the controller's input over that on the bus. */
  final double[] availablePerBus;

  final double[] lockedShare;
  final double[] chargeShare;
  final boolean isNeverLocked;
  InverterLimits inverter;
  private double overloadSumWh;
  private int overloadHours;
  private double mostNeedWh;
  private boolean isSummed;
  private double drawnWh;
  private final double[] acAskedWh;
  private final double[] dcAskedWh;
  private final double[] standingWh;

  private BusHours(Forcing forcing, InverterLimits inverter) {
    int hours = forcing.hours();
    this.inverter = inverter;
    acAskedWh = forcing.acAskedWh();
    dcAskedWh = forcing.dcAskedWh();
    standingWh = forcing.standingWh();
    solarWh = forcing.solarBusWh();
    lockedShare = forcing.lockedShare();
    chargeShare = forcing.chargeShare();
    needWh = new double[hours];
    servedShare = new double[hours];
    overloadWh = new double[hours];
    availablePerBus = new double[hours];
    fillAvailable(forcing.controllerLossWh(), solarWh, availablePerBus);
    double locked = 0.0;
    for (double share : lockedShare) {
      locked += share;
    }
    isNeverLocked = locked <= 0.0;
    work();
    sumUp();
  }

  /** For one forcing and one inverter. {@link LaneLoop#isFor} says whether sums are enough. */
  public static BusHours of(Forcing forcing, InverterLimits inverter) {
    if (forcing.otherBusWh().length > 0 || forcing.asleep().length > 0) {
      throw new IllegalArgumentException("a second source or sleep needs the full loop");
    }
    return new BusHours(forcing, inverter);
  }

  public int hours() {
    return needWh.length;
  }

  /** Works the need out again for another inverter, in place: not while another thread reads it. */
  public void putBehind(InverterLimits another) {
    inverter = another;
    isSummed = false;
    work();
  }

  private BusHours(BusHours like, double moreWh) {
    inverter = like.inverter;
    acAskedWh = like.acAskedWh;
    dcAskedWh = like.dcAskedWh;
    standingWh = like.standingWh;
    solarWh = like.solarWh;
    overloadWh = like.overloadWh;
    availablePerBus = like.availablePerBus;
    lockedShare = like.lockedShare;
    chargeShare = like.chargeShare;
    isNeverLocked = like.isNeverLocked;
    needWh = new double[like.hours()];
    servedShare = new double[like.hours()];
    for (int h = 0; h < needWh.length; h++) {
      needWh[h] = like.needWh[h] + moreWh;
    }
    fillShare(acAskedWh, overloadWh, dcAskedWh, needWh, servedShare);
    sumUp();
  }

  /**
   * The same hours with so much more drawn by the system itself in each: another bank's
   * electronics. Not for hours that are later put behind another inverter.
   *
   * @param moreWh may be negative
   */
  public BusHours drawing(double moreWh) {
    return moreWh == 0.0 ? this : new BusHours(this, moreWh);
  }

  /**
   * As {@link #drawing}, in place: so much more than the forcing says, whatever was drawn before.
   * Not while another thread reads it.
   *
   * @param moreWh each hour; may be negative
   */
  public void draw(double moreWh) {
    double changeWh = moreWh - drawnWh;
    if (changeWh == 0.0) {
      return;
    }
    isSummed = false;
    for (int h = 0; h < needWh.length; h++) {
      needWh[h] += changeWh;
    }
    drawnWh = moreWh;
    fillShare(acAskedWh, overloadWh, dcAskedWh, needWh, servedShare);
  }

  private void work() {
    drawnWh = 0.0;
    fillNeed(acAskedWh, inverter, needWh, overloadWh);
    addRest(standingWh, dcAskedWh, needWh);
    fillShare(acAskedWh, overloadWh, dcAskedWh, needWh, servedShare);
  }

  /** Beyond the inverter in all hours. */
  double overloadSumWh() {
    sumUp();
    return overloadSumWh;
  }

  /** Hours in which something is beyond the inverter. */
  int overloadHours() {
    sumUp();
    return overloadHours;
  }

  /** The greatest need of any hour. */
  double mostNeedWh() {
    sumUp();
    return mostNeedWh;
  }

  private void sumUp() {
    if (isSummed) {
      return;
    }
    double sumWh = 0.0, mostWh = 0.0;
    int count = 0;
    for (double wh : needWh) {
      mostWh = Math.max(mostWh, wh);
    }
    for (double wh : overloadWh) {
      sumWh += wh;
      count += wh > UnmetLoop.LEAST_UNMET_WH ? 1 : 0;
    }
    overloadSumWh = sumWh;
    overloadHours = count;
    mostNeedWh = mostWh;
    isSummed = true;
  }

  // short loops, so that the virtual machine turns them into vector instructions

  private static void fillNeed(
      double[] askedWh, InverterLimits inverter, double[] needWh, double[] overWh) {
    double mostWh = inverter.continuousW(), linear = inverter.linearLossShare();
    double quadraticPerWh = inverter.quadraticLossShare() / mostWh;
    double wirePerWh = inverter.wireLossSharePerW();
    for (int h = 0; h < needWh.length; h++) {
      double d = askedWh[h] - mostWh, over = 0.5 * (d + Math.abs(d)), ac = askedWh[h] - over;
      double into = ac + (ac * linear + ac * ac * quadraticPerWh);
      overWh[h] = over;
      needWh[h] = into + into * into * wirePerWh;
    }
  }

  private static void addRest(double[] standingWh, double[] dcWh, double[] needWh) {
    for (int h = 0; h < needWh.length; h++) {
      needWh[h] += standingWh[h] + dcWh[h];
    }
  }

  private static void fillShare(
      double[] acWh, double[] overWh, double[] dcWh, double[] needWh, double[] servedShare) {
    for (int h = 0; h < servedShare.length; h++) {
      servedShare[h] = (dcWh[h] + acWh[h] - overWh[h]) / (needWh[h] + Double.MIN_NORMAL);
    }
  }

  private static void fillAvailable(double[] lossWh, double[] solarWh, double[] availablePerBus) {
    for (int h = 0; h < solarWh.length; h++) {
      availablePerBus[h] = 1.0 + lossWh[h] / (solarWh[h] + Double.MIN_NORMAL);
    }
  }
}
