package greyspell.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GumbelTailTest {
  private static final int SAMPLES = 20_000;

  /** The deviation that the formula gives is the one that drawn samples have. */
  @ParameterizedTest
  @ValueSource(ints = {20, 100})
  void theDeviationIsThatOfDrawnSamples(int winters) {
    for (double onceIn : new double[] {2.0, 10.0, 50.0}) {
      var drawn = drawn(winters, onceIn);
      GumbelTail truth = new GumbelTail(40.0, 10.0, winters, GumbelTail.GUMBEL_SKEW);
      assertEquals(truth.value(onceIn), drawn.getMean(), 0.02 * truth.value(onceIn));
      double share = drawn.getStandardDeviation() / truth.deviation(onceIn);
      assertTrue(share > 0.93 && share < 1.07, winters + ", " + onceIn + ": " + share);
    }
  }

  /** Of many bands of small samples nine in ten hold the truth, or a little fewer. */
  @ParameterizedTest
  @ValueSource(ints = {10, 30})
  void theBandHoldsTheTruthNineTimesInTen(int winters) {
    var random = new Random(5);
    double truth = new GumbelTail(40.0, 10.0, winters, 0.0).value(10.0);
    int held = 0;
    for (int k = 0; k < SAMPLES; k++) {
      GumbelTail tail = GumbelTail.of(sample(random, winters));
      held += tail.low(10.0) <= truth && truth <= tail.high(10.0) ? 1 : 0;
    }
    double share = (double) held / SAMPLES;
    assertTrue(share > 0.82 && share < 0.92, "share " + share);
  }

  @ParameterizedTest
  @ValueSource(ints = {10, 40, 200})
  void aGumbelSampleIsSeldomStrange(int winters) {
    var random = new Random(11);
    var skew = new DescriptiveStatistics();
    int strange = 0;
    for (int k = 0; k < SAMPLES; k++) {
      GumbelTail tail = GumbelTail.of(sample(random, winters));
      skew.addValue(tail.skew());
      strange += tail.isStrange() ? 1 : 0;
    }
    assertEquals(GumbelTail.SKEW_SD_ROOT_N, skew.getStandardDeviation() * Math.sqrt(winters), 0.06);
    double share = (double) strange / SAMPLES;
    assertTrue(share > 0.02 && share < 0.08, "share " + share);
  }

  @Test
  void twoHeapsOfWintersAreStrange() {
    var largest = new double[60];
    for (int k = 0; k < 60; k++) {
      largest[k] = k < 54 ? 10.0 + 0.01 * k : 100.0 + k;
    }
    assertTrue(GumbelTail.of(largest).isStrange());
  }

  @Test
  void wintersThatAreAllAlikeHaveNoSpread() {
    var tail = GumbelTail.of(new double[] {7.0, 7.0, 7.0, 7.0, 7.0, 7.0});
    assertEquals(7.0, tail.value(10.0), 1e-12);
    assertEquals(0.0, tail.deviation(10.0), 1e-12);
    assertFalse(Double.isNaN(tail.skew()));
    assertThrows(IllegalArgumentException.class, () -> GumbelTail.of(new double[4]));
  }

  @Test
  void theOrderOfWintersPlaysNoPart() {
    double[] rising = {1.0, 2.0, 4.0, 8.0, 9.0, 12.0};
    double[] mixed = {9.0, 1.0, 12.0, 4.0, 2.0, 8.0};
    assertEquals(GumbelTail.of(rising), GumbelTail.of(mixed));
    assertTrue(Arrays.equals(new double[] {9.0, 1.0, 12.0, 4.0, 2.0, 8.0}, mixed));
  }

  private static DescriptiveStatistics drawn(int winters, double onceIn) {
    var random = new Random(3);
    var drawn = new DescriptiveStatistics();
    for (int k = 0; k < SAMPLES; k++) {
      drawn.addValue(GumbelTail.of(sample(random, winters)).value(onceIn));
    }
    return drawn;
  }

  private static double[] sample(Random random, int winters) {
    var sample = new double[winters];
    for (int k = 0; k < winters; k++) {
      sample[k] = 40.0 - 10.0 * Math.log(-Math.log(random.nextDouble()));
    }
    return sample;
  }
}
