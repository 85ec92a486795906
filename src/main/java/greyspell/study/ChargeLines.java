package greyspell.study;

import java.time.LocalDateTime;

/**
 * The bank's charge hour by hour over a log: seen, simulated, and simulated with what was found.
 * NaN is what the log does not tell. The arrays are not written.
 */
public final class ChargeLines {
  private final LocalDateTime start;
  private final double[] seenShare;
  private final double[] expectedShare;
  private final double[] fittedShare;

  ChargeLines(
      LocalDateTime start, double[] seenShare, double[] expectedShare, double[] fittedShare) {
    this.start = start;
    this.seenShare = seenShare;
    this.expectedShare = expectedShare;
    this.fittedShare = fittedShare;
  }

  /** Of the first hour. */
  public LocalDateTime start() {
    return start;
  }

  public int hours() {
    return seenShare.length;
  }

  /** At the end of each hour, of all that the bank holds. */
  public double[] seenShare() {
    return seenShare;
  }

  /** As the scenario has it. */
  public double[] expectedShare() {
    return expectedShare;
  }

  /** With everything that is named. */
  public double[] fittedShare() {
    return fittedShare;
  }
}
