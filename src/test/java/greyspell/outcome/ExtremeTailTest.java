package greyspell.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.outcome.ExtremeTail.Shape;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExtremeTailTest {
  private static final Shape GUMBEL = new Shape(40.0, 10.0, 0.0, ExtremeTail.GUMBEL_SKEW);

  /** Of many bands of samples about nine in ten hold the truth; of few winters a little fewer. */
  @ParameterizedTest
  @CsvSource({"10, 0.0", "30, 0.0", "100, 0.3"})
  void theBandHoldsTheTruthAboutNineTimesInTen(int winters, double shape) {
    var random = new Random(5);
    var truth = new Shape(40.0, 10.0, shape, 0.0);
    double tenth = truth.at(ExtremeTail.reduced(10.0));
    int held = 0, samples = 200;
    for (int k = 0; k < samples; k++) {
      ExtremeTail tail = ExtremeTail.of(sample(random, truth, winters));
      held += tail.low(10.0) <= tenth && tenth <= tail.high(10.0) ? 1 : 0;
    }
    double share = (double) held / samples;
    assertTrue(share > 0.78 && share < 0.95, "share " + share);
  }

  /** The spread of drawn fits is the one that theory gives for Gumbel's distribution. */
  @ParameterizedTest
  @ValueSource(doubles = {2.0, 10.0, 50.0})
  void theSpreadIsThatOfTheory(double onceIn) {
    int winters = 100;
    var random = new Random(3);
    var drawn = new DescriptiveStatistics();
    for (int k = 0; k < 8000; k++) {
      drawn.addValue(
          Shape.of(sample(random, GUMBEL, winters), true).at(ExtremeTail.reduced(onceIn)));
    }
    // sd of a quantile by probability-weighted moments: Phien 1987 (from memory)
    double y = ExtremeTail.reduced(onceIn);
    double sd = 10.0 * Math.sqrt((1.1128 + 0.4574 * y + 0.8046 * y * y) / winters);
    assertEquals(1.0, drawn.getStandardDeviation() / sd, 0.05);
    assertEquals(GUMBEL.at(y), drawn.getMean(), 0.01 * GUMBEL.at(y));
  }

  /** Gumbel's distribution is refused about once in twenty of its own samples, not more. */
  @ParameterizedTest
  @ValueSource(ints = {20, 60, 300})
  void gumbelIsSeldomRefusedItsOwn(int winters) {
    var random = new Random(11);
    int refused = 0, samples = 2000;
    for (int k = 0; k < samples; k++) {
      double skew = Shape.of(sample(random, GUMBEL, winters), true).skew();
      refused += Shape.isGumbelLike(skew, winters) ? 0 : 1;
    }
    double share = (double) refused / samples;
    assertTrue(share > 0.02 && share < 0.08, "share " + share);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.2, 0.15, 0.4})
  void theShapeComesBack(double shape) {
    var truth = new Shape(40.0, 10.0, shape, 0.0);
    var quantiles = new double[20_000];
    for (int k = 0; k < quantiles.length; k++) {
      quantiles[k] = truth.at(-Math.log(-Math.log((k + 0.5) / quantiles.length)));
    }
    ExtremeTail tail = ExtremeTail.of(quantiles);
    assertEquals(shape, tail.shape(), 0.003);
    assertEquals(10.0, tail.scale(), 0.05);
    assertEquals(40.0, tail.location(), 0.05);
    assertEquals(truth.at(ExtremeTail.reduced(10.0)), tail.value(10.0), 0.05);
  }

  @Test
  void fewWintersAreNeverBent() {
    double[] skew = {1, 1, 1, 1, 1, 1, 1, 50};
    assertEquals(0.0, ExtremeTail.of(skew).shape());
  }

  @Test
  void wintersThatAreAllAlikeHaveNoSpread() {
    var tail = ExtremeTail.of(new double[] {7.0, 7.0, 7.0, 7.0, 7.0, 7.0});
    assertEquals(7.0, tail.value(10.0), 1e-9);
    assertEquals(7.0, tail.low(10.0), 1e-9);
    assertEquals(7.0, tail.high(10.0), 1e-9);
    assertFalse(Double.isNaN(tail.skew()));
    assertThrows(IllegalArgumentException.class, () -> ExtremeTail.of(new double[4]));
  }

  @Test
  void theOrderOfWintersPlaysNoPartAndTheBandIsAlwaysTheSame() {
    double[] rising = {1.0, 2.0, 4.0, 8.0, 9.0, 12.0};
    double[] mixed = {9.0, 1.0, 12.0, 4.0, 2.0, 8.0};
    ExtremeTail one = ExtremeTail.of(rising), other = ExtremeTail.of(mixed);
    assertEquals(one.value(10.0), other.value(10.0));
    assertEquals(one.low(10.0), other.low(10.0));
    assertEquals(one.high(5.0), other.high(5.0));
    assertEquals(9.0, mixed[0], "left as it was");
  }

  private static double[] sample(Random random, Shape truth, int winters) {
    var sample = new double[winters];
    for (int k = 0; k < winters; k++) {
      sample[k] = truth.at(-Math.log(-Math.log(1.0 - random.nextDouble())));
    }
    return sample;
  }
}
