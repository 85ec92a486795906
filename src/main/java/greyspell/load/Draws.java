package greyspell.load;

/**
 * Even random numbers, of which some can be left out at once: those that follow are the same as if
 * they had been drawn.
 *
 * <pre>
 * state' = state + gamma          n steps at once: state + n gamma
 * </pre>
 *
 * Source: Steele, Lea, Flood (2014), Fast splittable pseudorandom number generators, OOPSLA (from
 * memory). Held against {@link java.util.SplittableRandom}, which draws the same, by DrawsTest.
 */
final class Draws {
  private static final long GAMMA = 0x9E3779B97F4A7C15L;
  private static final double STEP = 0x1.0p-53;

  private long state;

  Draws(long seed) {
    state = seed;
  }

  /** 0 to below 1. */
  double next() {
    state += GAMMA;
    long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return ((z ^ (z >>> 31)) >>> 11) * STEP;
  }

  /** As if so many had been drawn. */
  void skip(int draws) {
    state += draws * GAMMA;
  }
}
