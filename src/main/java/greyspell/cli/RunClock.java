package greyspell.cli;

/** How many of many runs are done, and how long the rest will take at the pace so far. */
final class RunClock {
  private static final double NANOS = 1e9;
  private static final double MINUTE_S = 60.0;
  private static final double HOUR_S = 3600.0;

  private final long begunNs = System.nanoTime();
  private final long before;
  private final long all;
  private long done;

  /**
   * @param before runs that were there at the start and took no time
   */
  RunClock(long before, long all) {
    this.before = before;
    this.all = all;
    done = before;
  }

  void one() {
    done++;
  }

  double share() {
    return (double) done / all;
  }

  /** "run 12 of 40, about 3 min left". */
  String words() {
    return words((System.nanoTime() - begunNs) / NANOS);
  }

  String words(double elapsedS) {
    String count = done + " of " + all + " runs";
    long mine = done - before;
    if (mine == 0 || done == all) {
      return count;
    }
    return count + ", about " + time(elapsedS / mine * (all - done)) + " left";
  }

  private static String time(double seconds) {
    if (seconds < MINUTE_S) {
      return (long) Math.ceil(seconds) + " s";
    }
    return seconds < HOUR_S
        ? (long) Math.ceil(seconds / MINUTE_S) + " min"
        : Math.round(seconds / HOUR_S * 10.0) / 10.0 + " h";
  }
}
