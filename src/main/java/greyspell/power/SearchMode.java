package greyspell.power;

import greyspell.power.InverterSpec.Search;
import java.util.function.Supplier;

/**
 * When an inverter that searches for loads sleeps.
 *
 * <pre>
 * awake   mean or peak of what is asked &gt;= wakesAt
 * asleep  otherwise: it draws the search power, and what is asked is not served
 * </pre>
 *
 * The hours do not tell for how long a load runs within them: an hour whose peak wakes the inverter
 * counts as awake from end to end, so that standby is never too small. Loads too small to wake it
 * (a clock, a charging telephone) get nothing while it sleeps: {@link #notWokenWh}. Held by
 * SearchModeTest.
 */
public final class SearchMode {
  private final boolean[] asleep;
  private final double[] notWokenWh;

  private SearchMode(boolean[] asleep, double[] notWokenWh) {
    this.asleep = asleep;
    this.notWokenWh = notWokenWh;
  }

  /**
   * Hour by hour.
   *
   * @param acAskedWh asked at the sockets in each hour
   * @param peaksW highest power within each hour; where it is unknown, the mean power or NaN. Asked
   *     only if there is an hour whose mean does not wake it: peaks are dear to work out
   */
  public static SearchMode of(Search search, double[] acAskedWh, Supplier<double[]> peaksW) {
    double wakesAtW = search.wakesAtW();
    var asleep = new boolean[acAskedWh.length];
    var notWokenWh = new double[acAskedWh.length];
    if (least(acAskedWh) >= wakesAtW) {
      return new SearchMode(asleep, notWokenWh);
    }
    double[] peakW = peaksW.get();
    if (acAskedWh.length != peakW.length) {
      throw new IllegalArgumentException(
          acAskedWh.length + " hours of energy, " + peakW.length + " of peaks");
    }
    for (int h = 0; h < asleep.length; h++) {
      if (!(acAskedWh[h] >= wakesAtW) && !(peakW[h] >= wakesAtW)) {
        asleep[h] = true;
        notWokenWh[h] = acAskedWh[h];
      }
    }
    return new SearchMode(asleep, notWokenWh);
  }

  private static double least(double[] wh) {
    double least = Double.POSITIVE_INFINITY;
    for (double one : wh) {
      least = Math.min(least, one);
    }
    return least;
  }

  /** For each hour whether it sleeps. */
  public boolean[] asleep() {
    return asleep;
  }

  /** Asked in each hour by loads too small to wake it. */
  public double[] notWokenWh() {
    return notWokenWh;
  }

  public int hoursAsleep() {
    int hours = 0;
    for (boolean is : asleep) {
      hours += is ? 1 : 0;
    }
    return hours;
  }
}
