package greyspell.load.step;

/**
 * When loads are let go or put off. Charge is a share of the usable window, at the start of the
 * hour.
 *
 * @param shedShouldRunBelowShare loads that should run are let go below this charge; 0 for never
 * @param shedCanWaitBelowShare loads that can wait are let go below this charge, not put off; 0 for
 *     never
 * @param waitBelowShare loads that can wait run only on sun left over while the charge is below
 *     this, and make up for it later; 0: they never wait
 * @param longestWaitD what has waited over more than this many midnights is let go, 0 or more
 * @param mostAcWh most that loads that can wait take at the sockets in an hour
 * @param mostDcWh most that they take on the bus in an hour
 */
public record LoadRules(
    double shedShouldRunBelowShare,
    double shedCanWaitBelowShare,
    double waitBelowShare,
    int longestWaitD,
    double mostAcWh,
    double mostDcWh) {
  /** Everything runs when it is asked for. */
  public static final LoadRules NONE = new LoadRules(0.0, 0.0, 0.0, 1, 0.0, 0.0);

  /** True if every load runs when it is asked for. */
  public boolean isNone() {
    return shedShouldRunBelowShare <= 0.0 && shedCanWaitBelowShare <= 0.0 && waitBelowShare <= 0.0;
  }
}
