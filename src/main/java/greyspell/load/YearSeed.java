package greyspell.load;

/**
 * A seed of its own for each year, so that a year keeps its draws whatever years stand around it.
 */
final class YearSeed {
  private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L; // spreads neighbouring seeds apart

  private YearSeed() {}

  /**
   * Made of the scenario's seed and the year's number.
   *
   * @param stream keeps draws for one purpose apart from those for another
   */
  static long of(long seed, long stream, int year) {
    return seed ^ stream ^ (year * GOLDEN_GAMMA);
  }
}
