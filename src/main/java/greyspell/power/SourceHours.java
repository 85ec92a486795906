package greyspell.power;

/** A second source, laid over the hours of a calendar. */
public final class SourceHours {
  private final double[] wh;
  private final int repeatedHours;
  private final int absentHours;
  private final String told;

  SourceHours(double[] wh, int repeatedHours, int absentHours, String told) {
    this.wh = wh;
    this.repeatedHours = repeatedHours;
    this.absentHours = absentHours;
    this.told = told;
  }

  /** Energy of each hour. */
  public double[] wh() {
    return wh;
  }

  /** Hours outside the log, which take the same day and hour of it. */
  public int repeatedHours() {
    return repeatedHours;
  }

  /** Hours for which the log has no value: counted as nothing. */
  public int absentHours() {
    return absentHours;
  }

  /** What was done, in a sentence for the list of assumptions. */
  public String told() {
    return told;
  }
}
