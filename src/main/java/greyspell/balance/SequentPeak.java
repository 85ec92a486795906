package greyspell.balance;

import greyspell.storage.step.BankLimits;
import java.util.List;

/**
 * The least usable energy with which nothing is ever unmet.
 *
 * <pre>
 * D = max(0, D - etaIn in)     in an hour of surplus, else     D = D + out / etaOut
 * least window = largest D
 *
 * D        drawn from a bank that was full when the hours began   Wh, from 0
 * in, out  surplus up to the charge limit; lack                   Wh
 * </pre>
 *
 * Exact where {@link BankAxis#isExactFor(Forcing, Design)} says so. The method is the sequent peak
 * algorithm of reservoir design (Thomas and Fiering 1962, from memory); held against a search with
 * HourLoop by BankAxisTest.
 */
public final class SequentPeak {
  private SequentPeak() {}

  /**
   * For hours that begin with a full bank.
   *
   * @param bank its window plays no part
   * @return infinite if the inverter or the discharge limit leaves something unmet with any window
   */
  public static double leastWindowWh(BusHours hours, double solarFactor, BankLimits bank) {
    double[] solarWh = hours.solarWh, needWh = hours.needWh, servedShare = hours.servedShare;
    double[] overloadWh = hours.overloadWh, chargeShare = hours.chargeShare;
    double etaIn = bank.chargeEfficiency(), perOut = 1.0 / bank.dischargeEfficiency();
    double mostInWh = bank.mostInWh(), mostOutWh = bank.mostOutWh();
    double drawnWh = 0.0, mostWh = 0.0;
    boolean isServing = true;
    for (int h = 0; h < solarWh.length; h++) {
      double surplusWh = solarWh[h] * solarFactor - needWh[h];
      if (overloadWh[h] > UnmetLoop.LEAST_UNMET_WH) {
        return Double.POSITIVE_INFINITY;
      }
      if (surplusWh >= 0.0) {
        double acceptedWh = mostInWh * chargeShare[h];
        drawnWh -= (surplusWh > acceptedWh ? acceptedWh : surplusWh) * etaIn;
        if (drawnWh < 0.0) {
          drawnWh = 0.0;
        }
      } else {
        if (-surplusWh > mostOutWh) {
          if (servedShare[h] > 0.0) {
            return Double.POSITIVE_INFINITY;
          }
          surplusWh = -mostOutWh;
        }
        isServing &= servedShare[h] > 0.0;
        drawnWh -= surplusWh * perOut;
        if (drawnWh > mostWh) {
          mostWh = drawnWh;
        }
      }
    }
    // a bank that is empty while nobody asks for anything leaves nothing unmet
    return isServing ? mostWh : deepestServed(hours, solarFactor, bank, mostWh);
  }

  private static double deepestServed(
      BusHours hours, double solarFactor, BankLimits bank, double mostWh) {
    var axis = new BankAxis(List.of(withWindow(bank, 0.0), withWindow(bank, 2.0 * mostWh + 1.0)));
    axis.add(hours, solarFactor);
    return axis.leastWindowWh();
  }

  private static BankLimits withWindow(BankLimits bank, double windowWh) {
    return new BankLimits(
        windowWh,
        bank.chargeEfficiency(),
        bank.dischargeEfficiency(),
        bank.mostInWh(),
        bank.mostOutWh(),
        1.0);
  }
}
