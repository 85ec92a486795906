package greyspell.cause;

import greyspell.quantity.Check;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * How an effect is shared among causes that work together, whatever the order in which they are
 * looked at: each gets the mean of what it adds over all orders in which they might come.
 *
 * <pre>
 * phi_i = sum over sets S without i of  s! (n - s - 1)! / n!  [v(S + i) - v(S)]
 *
 * n     causes                                1     1 .. 8 exact, up to 20 by drawn orders
 * S     a set of causes, s how many           -     bit i of the mask is cause i
 * v(S)  value of the set                      any   v(none) need not be 0
 * phi_i share of cause i                      as v  sums to v(all) - v(none), exactly
 * </pre>
 *
 * Beyond eight causes orders are drawn, each with its reverse; the shares still sum to the whole,
 * and each has the standard error of its mean over the pairs. Several effects can be shared at
 * once, for the same sets: v(S) is then an array.
 *
 * <p>Source: Shapley (1953), A value for n-person games, Contributions to the Theory of Games II
 * (from memory). Held by ShapleySharesPublishedTest, ShapleySharesLawTest.
 */
public final class ShapleyShares {
  /** Up to so many causes all sets are run. */
  public static final int MOST_EXACT = 8;

  private static final int MOST_CAUSES = 20;

  private final int causes;
  private final boolean isExact;
  private final Map<Integer, double[]> values;
  private final double[][] shares;
  private final double[][] errors;

  private ShapleyShares(int causes, boolean isExact, Map<Integer, double[]> values) {
    this.causes = causes;
    this.isExact = isExact;
    this.values = values;
    int measures = none().length;
    shares = new double[causes][measures];
    errors = new double[causes][measures];
  }

  /**
   * Over all sets, each valued once, side by side; the same whatever thread was first.
   *
   * @param causes 0 to 8
   * @param value of a set; called from several threads
   */
  public static ShapleyShares exact(int causes, IntFunction<double[]> value) {
    Check.within("causes", causes, 0, MOST_EXACT);
    var result =
        new ShapleyShares(causes, true, valued(IntStream.range(0, 1 << causes).toArray(), value));
    double[] weights = weights(causes);
    for (int i = 0; i < causes; i++) {
      for (int set = 0; set < 1 << causes; set++) {
        if ((set >> i & 1) == 0) {
          result.add(i, set, weights[Integer.bitCount(set)]);
        }
      }
    }
    return result;
  }

  /**
   * Over drawn orders.
   *
   * @param causes 1 to 20
   * @param pairs of an order and its reverse, 2 or more
   * @param value of a set; called from several threads
   */
  public static ShapleyShares sampled(
      int causes, int pairs, long seed, IntFunction<double[]> value) {
    Check.within("causes", causes, 1, MOST_CAUSES);
    Check.within("pairs", pairs, 2, 1_000_000);
    List<int[]> orders = orders(causes, pairs, seed);
    var sets = new TreeSet<Integer>();
    for (int[] order : orders) {
      int set = 0;
      sets.add(set);
      for (int cause : order) {
        set |= 1 << cause;
        sets.add(set);
      }
    }
    var result =
        new ShapleyShares(causes, false, valued(sets.stream().mapToInt(s -> s).toArray(), value));
    result.average(orders);
    return result;
  }

  /** How many sets were valued. */
  public int runs() {
    return values.size();
  }

  /** Whether all sets were. */
  public boolean isExact() {
    return isExact;
  }

  /** Of one cause in one of the effects. */
  public double share(int cause, int measure) {
    return shares[cause][measure];
  }

  /** Standard error of that share; 0 where exact. */
  public double standardError(int cause, int measure) {
    return errors[cause][measure];
  }

  /** Value of a set that was run. */
  public double value(int set, int measure) {
    double[] value = values.get(set);
    if (value == null) {
      throw new IllegalArgumentException("set " + set + " was not run");
    }
    return value[measure];
  }

  /** What the shares sum to: all causes less none. */
  public double whole(int measure) {
    return value((1 << causes) - 1, measure) - value(0, measure);
  }

  private double[] none() {
    double[] none = values.get(0);
    if (none == null) {
      throw new IllegalStateException("the empty set is always run");
    }
    return none;
  }

  private void add(int cause, int set, double weight) {
    for (int m = 0; m < shares[cause].length; m++) {
      shares[cause][m] += weight * (value(set | 1 << cause, m) - value(set, m));
    }
  }

  private void average(List<int[]> orders) {
    int pairs = orders.size() / 2;
    int measures = none().length;
    for (int m = 0; m < measures; m++) {
      var squares = new double[causes];
      for (int p = 0; p < pairs; p++) {
        var pair = new double[causes];
        gains(orders.get(2 * p), m, pair);
        gains(orders.get(2 * p + 1), m, pair);
        for (int i = 0; i < causes; i++) {
          shares[i][m] += pair[i] / 2.0 / pairs;
          squares[i] += pair[i] * pair[i] / 4.0;
        }
      }
      for (int i = 0; i < causes; i++) {
        double mean = shares[i][m];
        double variance = Math.max(0.0, squares[i] - pairs * mean * mean) / (pairs - 1);
        errors[i][m] = Math.sqrt(variance / pairs);
      }
    }
  }

  private void gains(int[] order, int measure, double[] sums) {
    int set = 0;
    for (int cause : order) {
      int next = set | 1 << cause;
      sums[cause] += value(next, measure) - value(set, measure);
      set = next;
    }
  }

  /** s! (n - s - 1)! / n! for each s. */
  private static double[] weights(int n) {
    var weights = new double[Math.max(n, 1)];
    weights[0] = n == 0 ? 1.0 : 1.0 / n;
    for (int s = 1; s < n; s++) {
      weights[s] = weights[s - 1] * s / (n - s);
    }
    return weights;
  }

  private static List<int[]> orders(int causes, int pairs, long seed) {
    var random = new Random(seed);
    var orders = new ArrayList<int[]>();
    var order = new ArrayList<>(IntStream.range(0, causes).boxed().toList());
    for (int p = 0; p < pairs; p++) {
      Collections.shuffle(order, random);
      int[] forth = order.stream().mapToInt(i -> i).toArray();
      orders.add(forth);
      orders.add(IntStream.range(0, causes).map(i -> forth[causes - 1 - i]).toArray());
    }
    return orders;
  }

  private static Map<Integer, double[]> valued(int[] sets, IntFunction<double[]> value) {
    List<double[]> found = Arrays.stream(sets).parallel().mapToObj(value).toList();
    var values = new HashMap<Integer, double[]>();
    for (int i = 0; i < sets.length; i++) {
      values.put(sets[i], found.get(i));
    }
    return values;
  }
}
