package greyspell.balance;

import greyspell.storage.step.BankLimits;
import java.util.List;

/**
 * The windows of banks by rising size, and how many of them are smaller than a depth: by a sum
 * where they stand at even steps, else by a table.
 */
final class WindowPlaces {
  /** Places in the table for each step between windows: the finer, the seldomer a step is left. */
  private static final int PLACES = 16;

  private static final int MOST_PLACES = 1 << 14;

  final double[] windowWh;
  final int[] first;
  final double placesPerWh;

  /** Windows a Wh where they stand at even steps, else 0. */
  final double stepsPerWh;

  WindowPlaces(List<BankLimits> banks) {
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
    double mostWh = mostWh();
    stepsPerWh = stepsPerWh(windowWh);
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
  }

  double leastWh() {
    return windowWh[0];
  }

  double mostWh() {
    return windowWh[windowWh.length - 1];
  }

  private static double stepsPerWh(double[] windowWh) {
    int last = windowWh.length - 1;
    double stepWh = (windowWh[last] - windowWh[0]) / last;
    for (int i = 1; i <= last; i++) {
      if (Math.abs(windowWh[0] + i * stepWh - windowWh[i]) > 1e-14 * windowWh[last]) {
        return 0.0;
      }
    }
    return stepWh > 0.0 ? 1.0 / stepWh : 0.0;
  }

  /** How many windows are smaller than this depth; between even steps to rounding. */
  static int place(double depthWh, double[] windows, int[] first, double perWh, double stepsPerWh) {
    if (depthWh > windows[windows.length - 1]) {
      return windows.length;
    }
    if (stepsPerWh > 0.0) {
      double steps = (depthWh - windows[0]) * stepsPerWh;
      int whole = (int) steps;
      return steps <= 0.0 ? 0 : whole < steps ? whole + 1 : whole;
    }
    int i = first[(int) (depthWh * perWh)];
    while (windows[i] < depthWh) {
      i++;
    }
    return i;
  }
}
