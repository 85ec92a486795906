package greyspell.balance;

import greyspell.storage.step.BankLimits;
import java.util.Arrays;

/**
 * How long a full bank carries the house from the start of each day, in the weather that really
 * comes, with a second source and without a generator or rules. The bank physics are those of
 * {@link HourLoop}, without the books; of a bank in detail its mean efficiencies are taken, and an
 * inverter that sleeps is taken as awake. The weather is taken round and round: a run that passes
 * the end goes on at the beginning.
 *
 * <p>Runs that start full and fill up again share their future, so each full hour's end is worked
 * out once: the cost is near one pass over the hours however long the runs are.
 */
public final class Carry {
  private static final double NOT_KNOWN = -1.0;

  private final double[] solarBusWh; // with the second source
  private final double[] needWh;
  private final double[] lockedShare;
  private final double[] chargeShare;
  private final BankLimits bank;
  private final int hours;

  public Carry(Forcing forcing, Design design) {
    bank = design.bank();
    solarBusWh = forcing.solarBusWh().clone();
    for (int h = 0; h < solarBusWh.length; h++) {
      solarBusWh[h] += forcing.otherWh(h);
    }
    needWh = BusNeed.wh(forcing, design.inverter());
    lockedShare = forcing.lockedShare();
    chargeShare = forcing.chargeShare();
    hours = forcing.hours();
  }

  /**
   * Hours carried from midnight of each day with a full bank until the bank first fails the house,
   * the served part of the last hour included; at most {@code longestH}.
   */
  public double[] hoursFromEachDay(double longestH) {
    int days = hours / 24;
    var carried = new double[days];
    // end[h]: hour (counted on through a second lap) at which a run that is full at the start of
    // hour h ends
    var end = new double[2 * hours + 1];
    Arrays.fill(end, NOT_KNOWN);
    var fullAt = new int[2 * hours + 1];
    end[2 * hours] = Double.POSITIVE_INFINITY;
    for (int day = 2 * days - 1; day >= 0; day--) {
      double ends = runFrom(day * 24, end, fullAt);
      if (day < days) {
        double hoursCarried = ends - day * 24.0;
        carried[day] = hoursCarried < longestH ? hoursCarried : longestH;
      }
    }
    return carried;
  }

  private double runFrom(int start, double[] end, int[] fullAt) {
    double windowWh = bank.windowWh(), kept = bank.keptPerHourShare();
    double etaIn = bank.chargeEfficiency(), etaOut = bank.dischargeEfficiency();
    double chargeWh = windowWh;
    double ends = Double.POSITIVE_INFINITY;
    int fullCount = 0;
    for (int t = start; t < 2 * hours; t++) {
      int h = t < hours ? t : t - hours;
      chargeWh *= kept;
      double surplusWh = solarBusWh[h] - needWh[h];
      if (surplusWh >= 0.0) {
        double mostWh = bank.mostInWh() * chargeShare[h];
        chargeWh += (surplusWh < mostWh ? surplusWh : mostWh) * etaIn;
        if (chargeWh >= windowWh) {
          chargeWh = windowWh;
          if (end[t + 1] != NOT_KNOWN) {
            ends = end[t + 1];
            break;
          }
          fullAt[fullCount++] = t + 1;
        }
      } else {
        double lockedWh = windowWh * lockedShare[h];
        double storedWh = chargeWh > lockedWh ? chargeWh - lockedWh : 0.0;
        double mostWh = storedWh * etaOut < bank.mostOutWh() ? storedWh * etaOut : bank.mostOutWh();
        if (-surplusWh > mostWh) {
          ends = t + (solarBusWh[h] + mostWh) / needWh[h];
          break;
        }
        chargeWh += surplusWh / etaOut;
      }
    }
    for (int i = 0; i < fullCount; i++) {
      end[fullAt[i]] = ends;
    }
    return ends;
  }
}
