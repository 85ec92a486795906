package greyspell.load;

import greyspell.quantity.Check;

/**
 * What a meter wrote: energy in steps of equal length, in rising order of time, with holes. The
 * arrays are not written.
 */
public final class LoadRecord {
  private final long[] startMinute;
  private final double[] wh;
  private final int stepMinutes;

  /**
   * A record.
   *
   * @param startMinute start of each step, minutes since 1970-01-01 00:00 in the site's local
   *     standard time, rising
   * @param wh energy of each step, 0 or more
   * @param stepMinutes length of each, 1 to 60
   */
  public LoadRecord(long[] startMinute, double[] wh, int stepMinutes) {
    Check.within("stepMinutes", stepMinutes, 1, 60);
    if (startMinute.length != wh.length || wh.length == 0) {
      throw new IllegalArgumentException("a record needs as many times as values, and some");
    }
    for (int i = 0; i < wh.length; i++) {
      Check.notNegative("wh", wh[i]);
      if (i > 0 && startMinute[i] < startMinute[i - 1] + stepMinutes) {
        throw new IllegalArgumentException("steps overlap at number " + i);
      }
    }
    this.startMinute = startMinute;
    this.wh = wh;
    this.stepMinutes = stepMinutes;
  }

  public int steps() {
    return wh.length;
  }

  public int stepMinutes() {
    return stepMinutes;
  }

  public long startMinute(int step) {
    return startMinute[step];
  }

  public double wh(int step) {
    return wh[step];
  }
}
