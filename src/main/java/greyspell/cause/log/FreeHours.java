package greyspell.cause.log;

import java.util.Arrays;

/**
 * Hours in which the panels gave all they could, so that what is missing is missing: sun that
 * nobody could take looks like dirt, and is left out.
 *
 * <pre>
 * light enough     expected at least 3 % of the most that is expected
 * bank open        charge below a share at both ends of the hour (95 %, less where acceptance falls sooner)
 * not at a limit   neither the controller's nor the bank's charging limit
 * not held back    not: charge above 70 %, expected a fifth above seen, and yet nothing went into the bank
 *                  (a meter that has drifted shows a full bank as 85 %); nor any hour of that day from
 *                  5 points below that charge on
 * generator        off
 * day not covered  the day's free hours brought at least 0.35 of the middle day's share (snow lies on panels for
 *                  whole days)
 * </pre>
 *
 * Own rules, no source; LogStudyTest counts what they let through.
 */
final class FreeHours {
  private static final double LIGHT_SHARE = 0.03;
  private static final double LIMIT_SHARE = 0.95;
  private static final double HELD_FROM_SHARE = 0.7;
  private static final double HELD_REACH_SHARE = 0.05;
  private static final double COVERED_SHARE = 0.35;
  private static final int FEWEST_HOURS_A_DAY = 3;

  final boolean[] isFree;
  final double mostWh;
  int full;
  int atLimit;
  int heldBack;
  int unknown;
  int coveredDays;
  int free;

  private final Weeks weeks;

  private FreeHours(Weeks weeks) {
    this.weeks = weeks;
    isFree = new boolean[weeks.hours];
    mostWh = Arrays.stream(weeks.of.expectedSolarWh).max().orElse(0.0);
  }

  static FreeHours of(Weeks weeks) {
    var hours = new FreeHours(weeks);
    hours.judge();
    hours.leaveOutHeldBack();
    hours.leaveOutCovered();
    for (boolean is : hours.isFree) {
      hours.free += is ? 1 : 0;
    }
    return hours;
  }

  private void judge() {
    Weeks.Columns of = weeks.of;
    for (int h = 0; h < weeks.hours; h++) {
      if (!(of.expectedSolarWh[h] > LIGHT_SHARE * mostWh)) {
        continue;
      }
      if (Double.isNaN(of.solarWh[h]) || !weeks.isChargeKnown(h) || !weeks.isGeneratorOff(h)) {
        unknown++;
      } else if (Math.max(of.chargeShare[h], of.chargeShare[h + 1]) >= of.freeBelowShare) {
        full++;
      } else if (of.atLimit[h] || of.expectedSolarWh[h] > LIMIT_SHARE * of.mostTakenWh[h]) {
        atLimit++;
      } else {
        isFree[h] = true;
      }
    }
  }

  private boolean isHeldBack(int h) {
    Weeks.Columns of = weeks.of;
    double intoBankWh =
        Double.isNaN(of.batteryWh[h]) ? of.solarWh[h] - of.drawWh[h] : of.batteryWh[h];
    double roomWh = of.expectedSolarWh[h] - of.drawWh[h];
    double riseShare = of.chargeShare[h + 1] - of.chargeShare[h];
    return isFree[h]
        && of.chargeShare[h] > HELD_FROM_SHARE
        && of.expectedSolarWh[h] > 1.2 * of.solarWh[h]
        && roomWh > 0.1 * mostWh
        && intoBankWh < 0.15 * roomWh
        && riseShare * of.contentWh < 0.4 * roomWh;
  }

  private void leaveOutHeldBack() {
    var fromShare = new double[weeks.days()];
    Arrays.fill(fromShare, Double.POSITIVE_INFINITY);
    for (int h = 0; h < weeks.hours; h++) {
      if (isHeldBack(h)) {
        int day = weeks.day(h);
        fromShare[day] = Math.min(fromShare[day], weeks.of.chargeShare[h] - HELD_REACH_SHARE);
      }
    }
    for (int h = 0; h < weeks.hours; h++) {
      if (isFree[h] && weeks.of.chargeShare[h + 1] >= fromShare[weeks.day(h)]) {
        isFree[h] = false;
        heldBack++;
      }
    }
  }

  private void leaveOutCovered() {
    int days = weeks.days();
    var seen = new double[days];
    var expected = new double[days];
    var count = new int[days];
    for (int h = 0; h < weeks.hours; h++) {
      if (isFree[h]) {
        int day = weeks.day(h);
        seen[day] += weeks.of.solarWh[h];
        expected[day] += weeks.of.expectedSolarWh[h];
        count[day]++;
      }
    }
    var shares = new double[days];
    int n = 0;
    for (int d = 0; d < days; d++) {
      if (count[d] >= FEWEST_HOURS_A_DAY) {
        shares[n++] = seen[d] / expected[d];
      }
    }
    double[] sorted = Arrays.copyOf(shares, n);
    Arrays.sort(sorted);
    double limit = n == 0 ? 0.0 : COVERED_SHARE * sorted[n / 2];
    for (int d = 0; d < days; d++) {
      if (count[d] >= FEWEST_HOURS_A_DAY && seen[d] < limit * expected[d]) {
        coveredDays++;
        leaveOutDay(d);
      }
    }
  }

  private void leaveOutDay(int day) {
    for (int h = 0; h < weeks.hours; h++) {
      if (weeks.day(h) == day) {
        isFree[h] = false;
      }
    }
  }
}
