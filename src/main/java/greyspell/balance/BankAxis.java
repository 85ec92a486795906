package greyspell.balance;

import greyspell.storage.step.BankLimits;
import java.util.Arrays;
import java.util.List;

/**
 * Unmet energy and unmet hours of every size of bank in one pass over the hours.
 *
 * <pre>
 * S(h) = S(h-1) + etaIn in     or     S(h-1) - out / etaOut          from 0, bank full
 * an hour that ends at level s is short for every window C < p - s
 * lacks, on the bus            etaOut (max(0, p - s - C) - max(0, p - s0 - C))
 *
 * S       energy stored by a bank without bounds   Wh
 * p       the peak that s is below: of the nested pairs of peak and valley between the highest level
 *         and now, each pair is forgotten once the level falls through its valley or climbs over its peak
 * s0      where the hour begins; split at every valley that it falls through
 * in, out surplus up to the charge limit, lack up to the discharge limit     Wh
 * </pre>
 *
 * Hours short are counted by p - s; the energy of each is two hinges in C, kept as two sums for each
 * window and added up from the largest down. What the inverter or the discharge limit withholds is
 * unmet whatever the window.
 *
 * <p>Exact, to rounding, where {@link #isExactFor(BusHours, double, List)} says so: constant
 * efficiencies, no self-discharge, nothing locked by cold, limits that are the same for all sizes or
 * never bind, start full. Elsewhere it proposes and {@link BankSearch} confirms. Held against
 * HourLoop by BankAxisTest. Method: the peaks are paired as in rainflow counting (ASTM E1049, from
 * memory); how unmet hours and energy follow from the pairs is derived here.
 */
public final class BankAxis {
  /** Places in the table for each step between windows: the finer, the seldomer a step is left. */
  private static final int PLACES = 16;

  private static final int MOST_PLACES = 1 << 14;

  private final double[] windowWh;
  private BankLimits limits;
  private final double leastWh;
  private final double mostWh;
  private final int[] first;
  private final double placesPerWh;

  // for hinges and hours that begin with the number of windows below them
  private final double[] weight;
  private final double[] weighted;
  private final int[] shortHours;
  private double baseWh;
  private int baseHours;
  private double deepestWh;

  private double[] peakWh = new double[16];
  private double[] valleyWh = new double[16];
  private int top;
  private double levelWh;

  /**
   * For these banks.
   *
   * @param banks by rising window; efficiencies and limits are those of the middle one
   */
  public BankAxis(List<BankLimits> banks) {
    int count = banks.size();
    windowWh = new double[count];
    double leastStepWh = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      windowWh[i] = banks.get(i).windowWh();
      double stepWh = i == 0 ? 0.0 : windowWh[i] - windowWh[i - 1];
      if (stepWh < 0.0) {
        throw new IllegalArgumentException("windows must rise");
      }
      leastStepWh = stepWh > 0.0 && stepWh < leastStepWh ? stepWh : leastStepWh;
    }
    limits = banks.get(count / 2);
    leastWh = windowWh[0];
    mostWh = windowWh[count - 1];
    double places = Math.min(MOST_PLACES, 1.0 + PLACES * mostWh / leastStepWh);
    placesPerWh = mostWh > 0.0 ? places / mostWh : 0.0;
    first = new int[(int) places + 2];
    for (int k = 0, i = 0; k < first.length; k++) {
      // a trace below the place's edge, so that rounding cannot step over a window
      double edgeWh = placesPerWh > 0.0 ? k / placesPerWh * (1.0 - 1e-12) : 0.0;
      while (i < count && windowWh[i] < edgeWh) {
        i++;
      }
      first[k] = i;
    }
    weight = new double[count + 1];
    weighted = new double[count + 1];
    shortHours = new int[count + 1];
  }

  /** Whether one pass is exact for this design with any window, its limits staying. */
  public static boolean isExactFor(Forcing forcing, Design design) {
    if (!LaneLoop.isFor(forcing, design) || design.bank().keptPerHourShare() < 1.0) {
      return false;
    }
    for (double share : forcing.lockedShare()) {
      if (share > 0.0) {
        return false;
      }
    }
    return true;
  }

  /** Whether one pass is exact for these banks: limits may grow with the window if none binds. */
  public static boolean isExactFor(BusHours hours, double solarFactor, List<BankLimits> banks) {
    BankLimits some = banks.get(0);
    double leastInWh = some.mostInWh(), leastOutWh = some.mostOutWh();
    boolean isSameIn = true, isSameOut = true, isAlike = hours.isNeverLocked;
    for (BankLimits bank : banks) {
      isAlike &=
          bank.keptPerHourShare() >= 1.0
              && bank.chargeEfficiency() == some.chargeEfficiency()
              && bank.dischargeEfficiency() == some.dischargeEfficiency();
      isSameIn &= bank.mostInWh() == some.mostInWh();
      isSameOut &= bank.mostOutWh() == some.mostOutWh();
      leastInWh = Math.min(leastInWh, bank.mostInWh());
      leastOutWh = Math.min(leastOutWh, bank.mostOutWh());
    }
    if (!isAlike || (isSameIn && isSameOut)) {
      return isAlike;
    }
    for (int h = 0; h < hours.hours(); h++) {
      double surplusWh = hours.solarWh[h] * solarFactor - hours.needWh[h];
      double share = hours.chargeShare[h];
      if ((!isSameOut && -surplusWh > leastOutWh)
          || (!isSameIn && share > 0.0 && surplusWh > leastInWh * share)) {
        return false;
      }
    }
    return true;
  }

  /** Fills every bank, keeping the sums: another winter that starts full. */
  public void fillUp() {
    top = 0;
    levelWh = 0.0;
    peakWh[0] = 0.0;
  }

  /** Fills every bank and forgets the sums. */
  public void restart() {
    fillUp();
    Arrays.fill(weight, 0.0);
    Arrays.fill(weighted, 0.0);
    Arrays.fill(shortHours, 0);
    baseWh = 0.0;
    baseHours = 0;
    deepestWh = 0.0;
  }

  /** Adds hours that follow what went before. */
  public void add(BusHours hours, double solarFactor) {
    reserve(top + hours.hours() / 2 + 2);
    double[] solarWh = hours.solarWh, needWh = hours.needWh, servedShare = hours.servedShare;
    double[] overloadWh = hours.overloadWh, chargeShare = hours.chargeShare;
    double[] peak = peakWh, valley = valleyWh, windows = windowWh;
    double[] weight = this.weight, weighted = this.weighted;
    int[] first = this.first, shortHours = this.shortHours;
    double etaIn = limits.chargeEfficiency(), etaOut = limits.dischargeEfficiency();
    double perOut = 1.0 / etaOut, mostInWh = limits.mostInWh(), mostOutWh = limits.mostOutWh();
    double least = leastWh, most = mostWh, perWh = placesPerWh;
    double s = levelWh, deepest = deepestWh;
    int count = hours.hours(), all = windows.length, top = this.top, h = 0;
    while (h < count) {
      double p = peak[top], surplusWh = 0.0;
      int at = -1;
      while (h < count && (surplusWh = solarWh[h] * solarFactor - needWh[h]) < 0.0) {
        double outWh = -surplusWh, share = servedShare[h], x = etaOut * share;
        boolean isRate = false;
        if (outWh > mostOutWh) {
          double unmetWh = (outWh - mostOutWh) * share;
          outWh = mostOutWh;
          baseWh += unmetWh;
          isRate = unmetWh > UnmetLoop.LEAST_UNMET_WH;
          if (isRate && overloadWh[h] <= UnmetLoop.LEAST_UNMET_WH) {
            baseHours++;
          }
        }
        double next = s - outWh * perOut, from = s;
        if (top > 0 && valley[top] >= next) {
          do {
            double to = valley[top];
            if (p - to > least) {
              int i = place(p - to, windows, first, perWh, most, all);
              weight[i] += x;
              weighted[i] += x * (p - to);
              i = place(p - from, windows, first, perWh, most, all);
              weight[i] -= x;
              weighted[i] -= x * (p - from);
            }
            from = to;
            p = peak[--top];
          } while (top > 0 && valley[top] >= next);
          at = -1;
        }
        double depth = p - next;
        if (depth > least) {
          double before = p - from;
          if (at < 0) {
            at = place(before, windows, first, perWh, most, all);
          }
          weight[at] -= x;
          weighted[at] -= x * before;
          at = place(depth, windows, first, perWh, most, all);
          weight[at] += x;
          weighted[at] += x * depth;
          if (share > 0.0) {
            if (!isRate && overloadWh[h] <= UnmetLoop.LEAST_UNMET_WH) {
              shortHours[at]++;
            }
            if (depth > deepest) {
              deepest = depth;
            }
          }
        }
        s = next;
        h++;
      }
      if (top == 0 && p - s > most) {
        // every bank is empty: how far the level fell beyond that no longer matters
        s = -most;
        peak[0] = 0.0;
      }
      if (h >= count) {
        break;
      }
      double low = s;
      while (h < count && (surplusWh = solarWh[h] * solarFactor - needWh[h]) >= 0.0) {
        double mostWh = mostInWh * chargeShare[h];
        s = Math.fma(surplusWh > mostWh ? mostWh : surplusWh, etaIn, s);
        h++;
      }
      if (low < peak[top]) {
        valley[++top] = low;
      }
      while (top > 0 && s >= peak[top - 1]) {
        top--;
      }
      if (top == 0) {
        // every bank is full
        s = 0.0;
      }
      peak[top] = s;
    }
    baseWh += hours.overloadSumWh();
    baseHours += hours.overloadHours();
    this.top = top;
    levelWh = s;
    deepestWh = deepest;
  }

  /** How many windows are smaller than this depth. */
  private static int place(
      double depthWh, double[] windows, int[] first, double perWh, double mostWh, int all) {
    if (depthWh > mostWh) {
      return all;
    }
    int i = first[(int) (depthWh * perWh)];
    while (windows[i] < depthWh) {
      i++;
    }
    return i;
  }

  private void reserve(int pairs) {
    if (peakWh.length < pairs) {
      peakWh = Arrays.copyOf(peakWh, pairs);
      valleyWh = Arrays.copyOf(valleyWh, pairs);
    }
  }

  /** Asked for and not served with each bank, since {@link #restart}. */
  public double[] unmetWh() {
    var unmetWh = new double[windowWh.length];
    double sum = 0.0, sumWh = 0.0;
    for (int i = windowWh.length - 1; i >= 0; i--) {
      sum += weight[i + 1];
      sumWh += weighted[i + 1];
      unmetWh[i] = baseWh + sumWh - windowWh[i] * sum;
    }
    return unmetWh;
  }

  /** Hours in which something asked for was not served, with each bank. */
  public int[] unmetHours() {
    var unmetHours = new int[windowWh.length];
    int sum = baseHours;
    for (int i = windowWh.length - 1; i >= 0; i--) {
      sum += shortHours[i + 1];
      unmetHours[i] = sum;
    }
    return unmetHours;
  }

  /**
   * The window from which on no bank is ever empty while something is asked for, where that lies
   * between the smallest and the largest of the axis; 0 if below, some number above the largest if
   * above.
   */
  public double leastWindowWh() {
    return deepestWh;
  }

  /** Takes the limits of another bank: a proposal is best near the bank whose limits it has. */
  void setLimits(BankLimits limits) {
    this.limits = limits;
  }
}
