package greyspell.balance;

import greyspell.storage.step.BankLimits;

/**
 * By how much each hour moves the level of a bank without bounds, for {@link BankAxis}, and what
 * inverter and discharge limit withhold in it whatever the window.
 *
 * <pre>
 * step = etaIn min(surplus, charge limit)     or     -min(lack, discharge limit) / etaOut     Wh
 * </pre>
 */
final class LevelSteps {
  // of the hours last taken
  double[] stepWh = new double[0];
  double[] servedShare = new double[0];
  double[] withheldWh = new double[0];
  boolean isWithheld;

  /** Works them out; what stood there before is overwritten. */
  void take(BusHours hours, double solarFactor, BankLimits limits) {
    int count = hours.hours();
    boolean isLimited = hours.mostNeedWh() > limits.mostOutWh();
    withheldWh = isLimited ? withheld(hours, solarFactor, limits.mostOutWh()) : hours.overloadWh;
    isWithheld = isLimited || hours.overloadHours() > 0;
    servedShare = hours.servedShare;
    if (stepWh.length < count) {
      stepWh = new double[count];
    }
    fillSurplus(stepWh, hours.solarWh, hours.needWh, solarFactor);
    if (isLimited) {
      limitOut(stepWh, limits.mostOutWh(), count);
    }
    double mostInWh = Math.min(limits.mostInWh(), LaneBlock.NO_LIMIT_WH);
    limitIn(stepWh, hours.chargeShare, mostInWh);
    toCells(stepWh, limits.chargeEfficiency(), limits.dischargeEfficiency(), count);
  }

  private static double[] withheld(BusHours hours, double solarFactor, double mostOutWh) {
    double[] withheldWh = hours.overloadWh.clone();
    for (int h = 0; h < withheldWh.length; h++) {
      double beyondWh = hours.needWh[h] - hours.solarWh[h] * solarFactor - mostOutWh;
      withheldWh[h] += beyondWh > 0.0 ? beyondWh * hours.servedShare[h] : 0.0;
    }
    return withheldWh;
  }

  // short loops, for vector instructions

  private static void fillSurplus(
      double[] stepWh, double[] solarWh, double[] needWh, double solarFactor) {
    for (int h = 0; h < solarWh.length; h++) {
      stepWh[h] = solarWh[h] * solarFactor - needWh[h];
    }
  }

  private static void limitOut(double[] stepWh, double mostOutWh, int count) {
    for (int h = 0; h < count; h++) {
      double d = -mostOutWh - stepWh[h];
      stepWh[h] = Math.fma(0.5, d + Math.abs(d), stepWh[h]);
    }
  }

  private static void limitIn(double[] stepWh, double[] chargeShare, double mostInWh) {
    for (int h = 0; h < chargeShare.length; h++) {
      double e = stepWh[h] - mostInWh * chargeShare[h];
      stepWh[h] = Math.fma(-0.5, e + Math.abs(e), stepWh[h]);
    }
  }

  private static void toCells(double[] stepWh, double etaIn, double etaOut, int count) {
    double mean = 0.5 * (etaIn + 1.0 / etaOut), half = 0.5 * (etaIn - 1.0 / etaOut);
    for (int h = 0; h < count; h++) {
      stepWh[h] = Math.fma(Math.abs(stepWh[h]), half, stepWh[h] * mean);
    }
  }
}
