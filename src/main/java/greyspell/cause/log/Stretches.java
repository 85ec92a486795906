package greyspell.cause.log;

import java.util.ArrayList;
import java.util.List;

/**
 * Runs of hours over which the charge is known at both ends and every flow between: nights, days,
 * and the time from one full bank to the next.
 */
final class Stretches {
  private static final int SHORTEST_H = 3;
  private static final int LONGEST_H = 16;

  /** From here on a meter may set itself to full. */
  private static final double NEAR_FULL_SHARE = 0.97;

  private static final double FULL_SHARE = 0.995;
  private static final int SHORTEST_BETWEEN_FULL_H = 24;
  private static final double DARK_WH_SHARE = 0.005;

  /**
   * One run.
   *
   * @param riseShare of the charge, as the meter shows it
   * @param isFullToFull the meter was at full at both ends, so its drift does not matter
   */
  record Stretch(int from, int to, double riseShare, boolean isFullToFull) {
    int lengthH() {
      return to - from;
    }
  }

  private final Weeks weeks;
  private final double darkWh;

  private Stretches(Weeks weeks) {
    this.weeks = weeks;
    double most = 0.0;
    for (double wh : weeks.of.solarWh) {
      most = Math.max(most, Double.isNaN(wh) ? 0.0 : wh);
    }
    darkWh = DARK_WH_SHARE * most;
  }

  static List<Stretch> of(Weeks weeks) {
    var finder = new Stretches(weeks);
    var all = new ArrayList<>(finder.nightsAndDays());
    all.addAll(finder.fullToFull());
    return all;
  }

  /** Flows of the hour known; the bank not nearly empty, where loads are cut off. */
  private boolean isKnown(int h) {
    Weeks.Columns of = weeks.of;
    boolean isFlowKnown =
        !Double.isNaN(of.batteryWh[h])
            || (!Double.isNaN(of.solarWh[h]) && !Double.isNaN(of.drawWh[h]));
    return isFlowKnown && weeks.isGeneratorOff(h);
  }

  private boolean isDark(int h) {
    return !(weeks.of.solarWh[h] > darkWh);
  }

  private List<Stretch> nightsAndDays() {
    var found = new ArrayList<Stretch>();
    double[] charge = weeks.of.chargeShare;
    int from = 0;
    while (from < weeks.hours) {
      int to = from;
      while (to < weeks.hours
          && to - from < LONGEST_H
          && isKnown(to)
          && weeks.isChargeKnown(to)
          && charge[to + 1] < NEAR_FULL_SHARE
          && !weeks.isNearEmpty(to)
          && isDark(to) == isDark(from)) {
        to++;
      }
      if (to - from >= SHORTEST_H) {
        found.add(new Stretch(from, to, charge[to] - charge[from], false));
      }
      from = Math.max(to, from + 1);
    }
    return found;
  }

  /** From the last hour at full to the next that is. */
  private List<Stretch> fullToFull() {
    var found = new ArrayList<Stretch>();
    double[] charge = weeks.of.chargeShare;
    int left = -1;
    for (int b = 0; b <= weeks.hours; b++) {
      if (Double.isNaN(charge[b]) || (b > 0 && (!isKnown(b - 1) || weeks.isNearEmpty(b - 1)))) {
        left = -1;
      } else if (charge[b] >= FULL_SHARE) {
        if (left >= 0 && b - left >= SHORTEST_BETWEEN_FULL_H) {
          found.add(new Stretch(left, b, 0.0, true));
        }
        left = b;
      }
    }
    return found;
  }
}
