package greyspell.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What makes these shares fair, over random games. */
final class ShapleySharesLawTest {
  private static final int GAMES = 40;

  @Test
  void sharesSumToTheWholeExactAndSampled() {
    for (int g = 0; g < GAMES; g++) {
      int causes = 1 + g % ShapleyShares.MOST_EXACT;
      double[][] values = random(g, causes, 3);
      ShapleyShares exact = ShapleyShares.exact(causes, set -> values[set]);
      ShapleyShares sampled = ShapleyShares.sampled(causes, 5, g, set -> values[set]);
      for (int m = 0; m < 3; m++) {
        assertEquals(values[values.length - 1][m] - values[0][m], sum(exact, causes, m), 1e-9);
        assertEquals(exact.whole(m), sum(sampled, causes, m), 1e-9);
      }
      assertEquals(1 << causes, exact.runs());
    }
  }

  /** The mean over all orders, written out plainly. */
  @Test
  void aShareIsTheMeanOverAllOrders() {
    for (int g = 0; g < 10; g++) {
      double[][] values = random(100 + g, 5, 1);
      var sums = new double[5];
      int orders = allOrders(values, 0, sums);
      ShapleyShares exact = ShapleyShares.exact(5, set -> values[set]);
      for (int i = 0; i < 5; i++) {
        assertEquals(sums[i] / orders, exact.share(i, 0), 1e-9);
      }
    }
  }

  @Test
  void causesThatDoTheSameShareAlikeAndOneThatDoesNothingHasNothing() {
    for (int g = 0; g < GAMES; g++) {
      double[][] base = random(200 + g, 5, 1);
      // causes 5 and 6 are the same: only how many of them are in counts; 7 does nothing
      ShapleyShares shares =
          ShapleyShares.exact(
              8,
              set -> {
                int both = Integer.bitCount(set >> 5 & 3);
                double common = base[set & 31][0];
                return new double[] {common + both * both * (1.0 + base[(set + both) & 31][0])};
              });
      assertEquals(shares.share(5, 0), shares.share(6, 0), 1e-9);
      assertEquals(0.0, shares.share(7, 0), 1e-9);
    }
  }

  @Test
  void drawnOrdersComeWithinTheirErrorAndRepeat() {
    int within = 0, all = 0;
    for (int g = 0; g < GAMES; g++) {
      double[][] values = random(300 + g, 8, 1);
      ShapleyShares exact = ShapleyShares.exact(8, set -> values[set]);
      ShapleyShares drawn = ShapleyShares.sampled(8, 60, g, set -> values[set]);
      ShapleyShares again = ShapleyShares.sampled(8, 60, g, set -> values[set]);
      for (int i = 0; i < 8; i++) {
        all++;
        double missed = Math.abs(drawn.share(i, 0) - exact.share(i, 0));
        within += missed <= 2.0 * drawn.standardError(i, 0) ? 1 : 0;
        assertTrue(missed <= 6.0 * drawn.standardError(i, 0), "game " + g + " cause " + i);
        assertEquals(drawn.share(i, 0), again.share(i, 0), 0.0);
        assertEquals(0.0, exact.standardError(i, 0), 0.0);
      }
    }
    // nineteen in twenty would be within two errors
    assertTrue(within >= 0.9 * all, within + " of " + all);
  }

  /** Five permanent members of whom each can stop the nine votes of fifteen that are needed. */
  @Test
  void aCouncilOfFifteenComesWithinItsError() {
    ShapleyShares council =
        ShapleyShares.sampled(
            15,
            3000,
            1L,
            set -> new double[] {(set & 31) == 31 && Integer.bitCount(set) >= 9 ? 1.0 : 0.0});
    // 421/2145 and 4/2145, Shapley and Shubik (1954), from memory
    assertEquals(421.0 / 2145.0, council.share(0, 0), 4.0 * council.standardError(0, 0));
    assertEquals(4.0 / 2145.0, council.share(14, 0), 4.0 * council.standardError(14, 0));
  }

  @Test
  void eachSetIsRunOnce() {
    var calls = new AtomicInteger();
    ShapleyShares.exact(
        6,
        set -> {
          calls.incrementAndGet();
          return new double[] {set};
        });
    assertEquals(64, calls.get());
    assertThrows(IllegalArgumentException.class, () -> ShapleyShares.exact(9, s -> new double[1]));
  }

  private static double[][] random(long seed, int causes, int measures) {
    var random = new Random(seed);
    var values = new double[1 << causes][measures];
    for (double[] value : values) {
      for (int m = 0; m < measures; m++) {
        value[m] = random.nextGaussian() * 100.0;
      }
    }
    return values;
  }

  private static double sum(ShapleyShares shares, int causes, int measure) {
    double sum = 0.0;
    for (int i = 0; i < causes; i++) {
      sum += shares.share(i, measure);
    }
    return sum;
  }

  private static int allOrders(double[][] values, int set, double[] sums) {
    return walk(values, set, new int[sums.length], 0, sums);
  }

  private static int walk(double[][] values, int set, int[] order, int at, double[] sums) {
    if (at == order.length) {
      int so = 0;
      for (int cause : order) {
        sums[cause] += values[so | 1 << cause][0] - values[so][0];
        so |= 1 << cause;
      }
      return 1;
    }
    int count = 0;
    for (int i = 0; i < order.length; i++) {
      if ((set >> i & 1) == 0) {
        order[at] = i;
        count += walk(values, set | 1 << i, order, at + 1, sums);
      }
    }
    return count;
  }
}
