package greyspell.sizing;

import greyspell.balance.BankAxis;
import greyspell.balance.BusHours;
import greyspell.balance.LaneLoop;
import greyspell.balance.Lanes;
import greyspell.balance.SteadyState;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Many banks through the same hours, round and round until each starts as it ends, beginning full:
 * what counts is the first lap that does so, or the tenth. That is how a single home is run. A lap
 * is left as soon as every bank is where it was in the lap before: from there on nothing changes.
 */
abstract class Laps {
  /** Two ways to the same charge differ by rounding. */
  private static final double ROUNDING_WH = 1e-7;

  /** A bank that is full is seldom so at the end of a month; looking costs a little. */
  private static final int LOOK_EVERY_HOURS = 1095;

  /** Of each bank, in the lap that counts. */
  final double[] unmetWh;

  final int[] unmetHours;

  /** As far as some of the hours: of each bank, since everything was full. */
  static final class Mark {
    final double[] lackWh;
    final double[] unmetWh;
    final int[] unmetHours;

    Mark(double[] lackWh, double[] unmetWh, int[] unmetHours) {
      this.lackWh = lackWh;
      this.unmetWh = unmetWh;
      this.unmetHours = unmetHours;
    }
  }

  Laps(int banks) {
    unmetWh = new double[banks];
    unmetHours = new int[banks];
  }

  /** Goes on through some of the hours. */
  abstract void go(int from, int to);

  /** Where every bank stands now. */
  abstract Mark mark();

  /** All banks full, at hour 0; their sums may be anything. */
  final void run(int hours) {
    int looks = (hours + LOOK_EVERY_HOURS - 1) / LOOK_EVERY_HOURS;
    var isSettled = new boolean[unmetWh.length];
    Mark[] before = null;
    Mark start = mark();
    for (int lap = 1; lap <= SteadyState.MOST_LAPS; lap++) {
      var marks = new Mark[looks + 1];
      marks[0] = start;
      for (int k = 0; k < looks; k++) {
        go(k * LOOK_EVERY_HOURS, Math.min(hours, (k + 1) * LOOK_EVERY_HOURS));
        marks[k + 1] = mark();
        if (before != null && isSame(marks[k + 1], before[k + 1], ROUNDING_WH, isSettled)) {
          settle(start, marks[k + 1], before[k + 1], before[looks], isSettled);
          return;
        }
      }
      Mark end = marks[looks];
      boolean isLast = lap == SteadyState.MOST_LAPS, isAll = true;
      for (int i = 0; i < isSettled.length; i++) {
        if (!isSettled[i]) {
          boolean isRound = Math.abs(end.lackWh[i] - start.lackWh[i]) <= SteadyState.SAME_CHARGE_WH;
          if (isRound || isLast) {
            put(i, start, end);
            isSettled[i] = true;
          }
          isAll &= isSettled[i];
        }
      }
      if (isAll) {
        return;
      }
      before = marks;
      start = end;
    }
  }

  private static boolean isSame(Mark a, Mark b, double withinWh, boolean[] isSettled) {
    for (int i = 0; i < isSettled.length; i++) {
      if (!isSettled[i] && Math.abs(a.lackWh[i] - b.lackWh[i]) > withinWh) {
        return false;
      }
    }
    return true;
  }

  private void put(int i, Mark from, Mark to) {
    unmetWh[i] = to.unmetWh[i] - from.unmetWh[i];
    unmetHours[i] = to.unmetHours[i] - from.unmetHours[i];
  }

  /** This lap's hours so far, and the rest as in the lap before. */
  private void settle(Mark start, Mark now, Mark then, Mark end, boolean[] isSettled) {
    for (int i = 0; i < isSettled.length; i++) {
      if (!isSettled[i]) {
        put(i, start, now);
        unmetWh[i] += end.unmetWh[i] - then.unmetWh[i];
        unmetHours[i] += end.unmetHours[i] - then.unmetHours[i];
      }
    }
  }

  /** Every bank of the axis in one pass, where that is exact. */
  static Laps inOnePass(BankAxis axis, BusHours hours, double solarFactor, int banks) {
    axis.restart();
    axis.take(hours, solarFactor);
    var laps =
        new Laps(banks) {
          @Override
          void go(int from, int to) {
            axis.go(from, to);
          }

          @Override
          Mark mark() {
            return new Mark(axis.belowFullWh(), axis.unmetWh(), axis.unmetHours());
          }
        };
    laps.run(hours.hours());
    return laps;
  }

  /**
   * Lanes side by side.
   *
   * @param startWh charge of each at the first hour, for a single lap; null for the steady state
   */
  static Laps inLanes(Lanes lanes, BusHours hours, double @Nullable [] startWh) {
    int count = lanes.count();
    lanes.restart();
    var laps =
        new Laps(count) {
          @Override
          void go(int from, int to) {
            LaneLoop.runUnmet(hours, lanes, from, to);
          }

          @Override
          Mark mark() {
            var mark = new Mark(new double[count], new double[count], new int[count]);
            for (int i = 0; i < count; i++) {
              // what is lacking or what is there: only the change matters
              mark.lackWh[i] = lanes.chargeWh(i);
              mark.unmetWh[i] = lanes.unmetWh(i);
              mark.unmetHours[i] = lanes.unmetHours(i);
            }
            return mark;
          }
        };
    if (startWh == null) {
      laps.run(hours.hours());
      return laps;
    }
    for (int i = 0; i < count; i++) {
      lanes.startAt(i, startWh[i]);
    }
    Mark start = laps.mark();
    laps.go(0, hours.hours());
    Mark end = laps.mark();
    Arrays.setAll(laps.unmetWh, i -> end.unmetWh[i] - start.unmetWh[i]);
    Arrays.setAll(laps.unmetHours, i -> end.unmetHours[i] - start.unmetHours[i]);
    return laps;
  }
}
