package greyspell.storage;

/**
 * Counts the cycles in a series: each swing that is closed by a larger one is a whole cycle, what
 * is never closed counts half.
 *
 * <pre>
 * of the last three reversals   X = newest range,  Y = the one before
 * X below Y                     read on
 * Y holds the start             half a cycle of Y, its first point is dropped
 * else                          one cycle of Y, both its points are dropped
 * at the end                    each range that is left is half a cycle
 * </pre>
 *
 * The sum of range times count is half of all that the series went up and down. Values that repeat
 * or lie on the way between two others are no reversals. Needs memory for the reversals that are
 * still open only.
 *
 * <p>Source: ASTM E1049-85, 5.4.4. Held by StoragePublishedTest (its worked example) and
 * AgeingTest.
 */
public final class Rainflow {
  private double[] open = new double[64];
  private int from;
  private int to;
  private final Sink sink;

  /** Takes what is counted, in the order in which it is found. */
  public interface Sink {
    /**
     * One finding.
     *
     * @param range from valley to peak
     * @param mean middle of the two
     * @param count 1 or 0.5
     */
    void cycle(double range, double mean, double count);
  }

  private Rainflow(Sink sink) {
    this.sink = sink;
  }

  /** Counts a series from its first to its last value. */
  public static void count(double[] series, Sink sink) {
    var flow = new Rainflow(sink);
    int n = series.length;
    if (n == 0) {
      return;
    }
    double last = series[0];
    flow.reversal(last);
    int direction = 0;
    for (int i = 1; i < n; i++) {
      double value = series[i];
      int step = value > last ? 1 : value < last ? -1 : 0;
      if (step != 0) {
        if (direction != 0 && step != direction) {
          flow.reversal(last);
        }
        direction = step;
        last = value;
      }
    }
    if (direction != 0) {
      flow.reversal(last);
    }
    flow.leftovers();
  }

  private void reversal(double value) {
    if (to == open.length) {
      makeRoom();
    }
    open[to++] = value;
    while (to - from >= 3) {
      double newest = Math.abs(open[to - 1] - open[to - 2]);
      double before = Math.abs(open[to - 2] - open[to - 3]);
      if (newest < before) {
        return;
      }
      double mean = 0.5 * (open[to - 2] + open[to - 3]);
      if (to - from == 3) {
        sink.cycle(before, mean, 0.5);
        from++;
      } else {
        sink.cycle(before, mean, 1.0);
        open[to - 3] = open[to - 1];
        to -= 2;
      }
    }
  }

  /** Drops what lies before the start; only then takes more memory. */
  private void makeRoom() {
    int held = to - from;
    double[] wider = held > open.length / 2 ? new double[2 * open.length] : open;
    System.arraycopy(open, from, wider, 0, held);
    open = wider;
    from = 0;
    to = held;
  }

  private void leftovers() {
    for (int i = from + 1; i < to; i++) {
      sink.cycle(Math.abs(open[i] - open[i - 1]), 0.5 * (open[i] + open[i - 1]), 0.5);
    }
  }
}
