package greyspell.weather.ensemble;

/**
 * Random numbers of one year, the same on every machine and in whatever order years are asked for:
 * each (seed, year, strand) begins anew.
 *
 * <p>SplitMix64 (Steele, Lea and Flood 2014, Fast splittable pseudorandom number generators;
 * constants from memory); normals by Marsaglia's polar method.
 */
final class YearRandom {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final double PER_LONG = 0x1.0p-53;

  /** Strands of a year, so that one can be drawn without the others. */
  static final int SKY = 1;

  static final int AIR = 2;
  static final int HOURS = 3;
  static final int SPLICE = 4;

  private long state;
  private double spare;
  private boolean hasSpare;

  void begin(long seed, int year, int strand) {
    state = mixed(mixed(seed + GOLDEN) + GOLDEN * (8L * year + strand));
    hasSpare = false;
  }

  private static long mixed(long value) {
    long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** 0 or above, below 1. */
  double uniform() {
    state += GOLDEN;
    return (mixed(state) >>> 11) * PER_LONG;
  }

  /** 0 to bound less 1. */
  int below(int bound) {
    return (int) (uniform() * bound);
  }

  double normal() {
    if (hasSpare) {
      hasSpare = false;
      return spare;
    }
    while (true) {
      double x = 2.0 * uniform() - 1.0;
      double y = 2.0 * uniform() - 1.0;
      double square = x * x + y * y;
      if (square < 1.0 && square > 0.0) {
        double scale = Math.sqrt(-2.0 * StrictMath.log(square) / square);
        spare = y * scale;
        hasSpare = true;
        return x * scale;
      }
    }
  }
}
