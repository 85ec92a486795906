package greyspell.balance;

import greyspell.storage.step.BankLimits;

/**
 * The balance of {@link HourLoop} for one design, with nothing kept but the unmet hours of each
 * day: enough for unmet hours, days of loss and dark winters alike. Equal to the ledger's:
 * UnmetDaysTest.
 */
public final class UnmetDays {
  private static final int HOURS_OF_DAY = 24;

  private UnmetDays() {}

  /**
   * Runs all hours.
   *
   * @param startChargeWh above the reserve, 0 to the window
   * @param unmetHours of each day, overwritten; as long as there are days
   * @return charge after the last hour
   */
  public static double run(
      BusHours hours, BankLimits bank, double startChargeWh, byte[] unmetHours) {
    double[] solarWh = hours.solarWh, needWh = hours.needWh, servedShare = hours.servedShare;
    double[] overloadWh = hours.overloadWh;
    double[] lockedShare = hours.lockedShare, chargeShare = hours.chargeShare;
    double windowWh = bank.windowWh(), kept = bank.keptPerHourShare();
    double etaIn = bank.chargeEfficiency();
    double etaOut = bank.dischargeEfficiency(), perOut = 1.0 / etaOut;
    double mostInWh = bank.mostInWh(), mostOutWh = bank.mostOutWh();
    double chargeWh = startChargeWh;
    for (int day = 0, h = 0; day < unmetHours.length; day++) {
      int count = 0;
      for (int end = h + HOURS_OF_DAY; h < end; h++) {
        double surplusWh = solarWh[h] - needWh[h], nextWh, shortWh = 0.0;
        if (surplusWh >= 0.0) {
          double inWh = surplusWh, mostWh = mostInWh * chargeShare[h];
          if (inWh > mostWh) {
            inWh = mostWh;
          }
          nextWh = Math.fma(chargeWh, kept, inWh * etaIn);
          if (nextWh > windowWh) {
            nextWh = windowWh;
          }
        } else {
          double outWh = -surplusWh;
          if (outWh > mostOutWh) {
            shortWh = outWh - mostOutWh;
            outWh = mostOutWh;
          }
          double lockedWh = windowWh * lockedShare[h];
          nextWh = Math.fma(chargeWh, kept, -outWh * perOut);
          if (nextWh < lockedWh) {
            double restedWh = chargeWh * kept, floorWh = restedWh < lockedWh ? restedWh : lockedWh;
            shortWh += (floorWh - nextWh) * etaOut;
            nextWh = floorWh;
          }
        }
        chargeWh = nextWh;
        if (shortWh * servedShare[h] + overloadWh[h] > UnmetLoop.LEAST_UNMET_WH) {
          count++;
        }
      }
      unmetHours[day] = (byte) count;
    }
    return chargeWh;
  }
}
