package greyspell.sizing;

/**
 * What a home is to keep to. All are judged by counts in the weather that was gone through: a
 * target that is met there is no promise for other winters.
 */
public sealed interface Target {
  /** Whether it is met; for weather that was gone through in part, whether it is not yet broken. */
  boolean isMet(Tally tally, double darkDays);

  /** Whether it counts whole winters. */
  default boolean needsWinters() {
    return false;
  }

  /** Whether the weather plays no part. */
  default boolean isByRule() {
    return false;
  }

  /**
   * Hours in an average year in which something is not served.
   *
   * @param mostPerYear 0 or above
   */
  record UnmetHours(double mostPerYear) implements Target {
    private static final double ROUNDING = 1e-9;

    @Override
    public boolean isMet(Tally tally, double darkDays) {
      return tally.unmetHours() <= mostPerYear * tally.years() + ROUNDING;
    }
  }

  /**
   * Days on which something is not served, in every whole winter.
   *
   * @param mostPerWinter 0 or above
   */
  record LossDays(int mostPerWinter) implements Target {
    @Override
    public boolean isMet(Tally tally, double darkDays) {
      return tally.mostLossDays() <= mostPerWinter;
    }

    @Override
    public boolean needsWinters() {
      return true;
    }
  }

  /**
   * Whole winters in which anything at all is not served.
   *
   * @param most of so many
   * @param of above {@code most}
   */
  record DarkWinters(int most, int of) implements Target {
    public DarkWinters {
      if (most < 0 || of < 1 || most >= of) {
        throw new IllegalArgumentException(most + " in " + of);
      }
    }

    @Override
    public boolean isMet(Tally tally, double darkDays) {
      return tally.darkWinters() <= allowed(tally.wholeWinters());
    }

    /**
     * Dark winters that are allowed in so many: whole ones, so fewer than {@code of} allow none.
     */
    public int allowed(int winters) {
      return (int) ((long) winters * most / of);
    }

    @Override
    public boolean needsWinters() {
      return true;
    }
  }

  /**
   * Days that a full bank lasts with no sun at all, at the need of the month in which it lasts
   * shortest: the standards' rule.
   *
   * @param least above 0
   */
  record AutonomyDays(double least) implements Target {
    @Override
    public boolean isMet(Tally tally, double darkDays) {
      return darkDays >= least;
    }

    @Override
    public boolean isByRule() {
      return true;
    }
  }
}
