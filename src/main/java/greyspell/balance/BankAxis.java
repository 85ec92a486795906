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
 * Hours short are counted by p - s; the energy of each is two hinges in C, kept as two sums for
 * each window and added up from the largest down. What the inverter or the discharge limit
 * withholds is unmet whatever the window.
 *
 * <p>Exact, to rounding, where {@link #isExactFor(BusHours, double, List)} says so: constant
 * efficiencies, no self-discharge, nothing locked by cold, limits that are the same for all sizes
 * or never bind, start full. Elsewhere it proposes and {@link BankSearch} confirms. Held against
 * HourLoop by BankAxisTest. Method: the peaks are paired as in rainflow counting (ASTM E1049, from
 * memory); how unmet hours and energy follow from the pairs is derived here.
 */
public final class BankAxis {
  private final double[] windowWh;
  private final WindowPlaces places;
  private BankLimits limits;

  // for hinges and hours that begin with the number of windows below them
  private final double[] weight;
  private final double[] weighted;
  private final int[] shortHours;
  private double baseWh;
  private int baseHours;
  private double deepestWh;

  private final LevelSteps steps = new LevelSteps();
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
    places = new WindowPlaces(banks);
    windowWh = places.windowWh;
    limits = banks.get(count / 2);
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
    take(hours, solarFactor);
    go(0, hours.hours());
  }

  /** Works out by how much each hour moves the level, for {@link #go}. */
  public void take(BusHours hours, double solarFactor) {
    steps.take(hours, solarFactor, limits);
  }

  /** Goes on through some of the hours last taken, from one up to another. */
  public void go(int from, int to) {
    double[] withheldWh = steps.withheldWh;
    for (int h = from; steps.isWithheld && h < to; h++) {
      baseWh += withheldWh[h];
      baseHours += withheldWh[h] > UnmetLoop.LEAST_UNMET_WH ? 1 : 0;
    }
    reserve(top + (to - from) / 2 + 2);
    scan(steps.servedShare, withheldWh, from, to);
  }

  /** How far each bank is below full now. */
  public double[] belowFullWh() {
    var belowWh = new double[windowWh.length];
    for (int i = 0; i < belowWh.length; i++) {
      double below = 0.0, window = windowWh[i];
      for (int k = 1; k <= top; k++) {
        below = Math.min(window, below + peakWh[k - 1] - valleyWh[k]);
        below = Math.max(0.0, below - (peakWh[k] - valleyWh[k]));
      }
      belowWh[i] = Math.min(window, below + peakWh[top] - levelWh);
    }
    return belowWh;
  }

  private void scan(double[] servedShare, double[] withheldWh, int from, int count) {
    double[] peak = peakWh, valley = valleyWh, windows = windowWh, step = steps.stepWh;
    double[] weight = this.weight, weighted = this.weighted;
    int[] first = places.first, shortHours = this.shortHours;
    double etaOut = limits.dischargeEfficiency();
    double least = places.leastWh(), most = places.mostWh();
    double perWh = places.placesPerWh, stepsPerWh = places.stepsPerWh;
    double s = levelWh, deepest = deepestWh;
    int top = this.top, h = from;
    while (h < count) {
      double p = peak[top], fallWh = 0.0;
      // the hinge where the last hour ended, not yet booked: the next one begins there
      int at = -1;
      double held = 0.0, heldWh = 0.0;
      while (h < count && (fallWh = step[h]) < 0.0) {
        double next = s + fallWh, begin = s;
        if (top > 0 && valley[top] >= next) {
          if (at >= 0) {
            weight[at] += held;
            weighted[at] += held * heldWh;
            held = 0.0;
            at = -1;
          }
          double x = etaOut * servedShare[h];
          do {
            double low = valley[top];
            if (p - low > least) {
              int i = WindowPlaces.place(p - low, windows, first, perWh, stepsPerWh);
              weight[i] += x;
              weighted[i] += x * (p - low);
              i = WindowPlaces.place(p - begin, windows, first, perWh, stepsPerWh);
              weight[i] -= x;
              weighted[i] -= x * (p - begin);
            }
            begin = low;
            p = peak[--top];
          } while (top > 0 && valley[top] >= next);
        }
        double depth = p - next;
        if (depth > least) {
          double share = servedShare[h], x = etaOut * share, before = p - begin;
          if (at < 0) {
            at = WindowPlaces.place(before, windows, first, perWh, stepsPerWh);
          }
          weight[at] += held - x;
          weighted[at] += (held - x) * before;
          at = WindowPlaces.place(depth, windows, first, perWh, stepsPerWh);
          held = x;
          heldWh = depth;
          if (share > 0.0) {
            if (withheldWh[h] <= UnmetLoop.LEAST_UNMET_WH) {
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
      if (at >= 0) {
        weight[at] += held;
        weighted[at] += held * heldWh;
      }
      if (top == 0 && p - s > most) {
        // every bank is empty: how far the level fell beyond that no longer matters
        s = -most;
        peak[0] = 0.0;
      }
      if (h >= count) {
        break;
      }
      double low = s, riseWh = 0.0;
      while (h < count && (riseWh = step[h]) >= 0.0) {
        s += riseWh;
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
    this.top = top;
    levelWh = s;
    deepestWh = deepest;
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
