package greyspell.balance;

import greyspell.power.step.InverterLimits;

/**
 * A forcing seen from the bus behind one inverter: what every loop that keeps sums only needs of
 * each hour, worked out once and shared by all banks and all numbers of panels.
 *
 * <p>Where no controller clips, more panels are a factor on the solar energy; where one does, each
 * number of panels has its own forcing.
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
  final InverterLimits inverter;
  final double overloadSumWh;
  final int overloadHours;
  final boolean isNeverLocked;
  final boolean isAlwaysServing;

  private BusHours(Forcing forcing, InverterLimits inverter) {
    int hours = forcing.hours();
    this.inverter = inverter;
    solarWh = forcing.solarBusWh();
    lockedShare = forcing.lockedShare();
    chargeShare = forcing.chargeShare();
    needWh = new double[hours];
    servedShare = new double[hours];
    overloadWh = new double[hours];
    availablePerBus = new double[hours];
    fillNeed(forcing, inverter);
    fillAvailable(forcing.controllerLossWh());
    double sumWh = 0.0;
    int over = 0;
    boolean isUnlocked = true, isServing = true;
    for (int h = 0; h < hours; h++) {
      if (overloadWh[h] > 0.0) {
        over++;
        sumWh += overloadWh[h];
      }
      isUnlocked &= lockedShare[h] <= 0.0;
      isServing &= servedShare[h] > 0.0 || needWh[h] <= 0.0;
    }
    overloadSumWh = sumWh;
    overloadHours = over;
    isNeverLocked = isUnlocked;
    isAlwaysServing = isServing;
  }

  /** For one forcing and one inverter. {@link LaneLoop#isFor} says whether sums are enough. */
  public static BusHours of(Forcing forcing, InverterLimits inverter) {
    return new BusHours(forcing, inverter);
  }

  public int hours() {
    return needWh.length;
  }

  private void fillNeed(Forcing forcing, InverterLimits inverter) {
    double[] acAskedWh = forcing.acAskedWh(), dcAskedWh = forcing.dcAskedWh();
    double[] standingWh = forcing.standingWh();
    double mostAcWh = inverter.continuousW(), linear = inverter.linearLossShare();
    double quadraticPerWh = inverter.quadraticLossShare() / inverter.continuousW();
    double wirePerWh = inverter.wireLossSharePerW();
    for (int h = 0; h < needWh.length; h++) {
      double overTwiceWh = acAskedWh[h] - mostAcWh + Math.abs(acAskedWh[h] - mostAcWh);
      double acWh = acAskedWh[h] - 0.5 * overTwiceWh;
      double lossWh = acWh * linear + acWh * acWh * quadraticPerWh;
      double wireWh = (acWh + lossWh) * (acWh + lossWh) * wirePerWh;
      needWh[h] = standingWh[h] + dcAskedWh[h] + acWh + lossWh + wireWh;
      overloadWh[h] = 0.5 * overTwiceWh;
    }
    for (int h = 0; h < needWh.length; h++) {
      double servedWh = dcAskedWh[h] + acAskedWh[h] - overloadWh[h];
      servedShare[h] = servedWh / (needWh[h] + Double.MIN_NORMAL);
    }
  }

  private void fillAvailable(double[] controllerLossWh) {
    for (int h = 0; h < solarWh.length; h++) {
      availablePerBus[h] = 1.0 + controllerLossWh[h] / (solarWh[h] + Double.MIN_NORMAL);
    }
  }
}
