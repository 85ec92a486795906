package greyspell.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.interval.IntervalUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OddsTest {
  @ParameterizedTest
  @CsvSource({"1,20", "2,30", "3,20", "5,100", "10,100", "9,10", "999,1000"})
  void agreesWithTheLibraryWhereThatCan(int k, int n) {
    var theirs = IntervalUtils.getClopperPearsonInterval(n, k, 0.95);
    Odds odds = Odds.of(k, n);
    assertEquals(theirs.getLowerBound(), odds.lowShare(), 1e-9);
    assertEquals(theirs.getUpperBound(), odds.highShare(), 1e-9);
    assertFalse(odds.isOneSided());
  }

  /** The ends are where a result as far out, or further, has the chance that was left out. */
  @ParameterizedTest
  @CsvSource({"1,10", "4,10", "7,10", "50,200", "199,200"})
  void theEndsLeaveTwoAndAHalfPercentOut(int k, int n) {
    Odds odds = Odds.of(k, n);
    var atLow = new BinomialDistribution(n, odds.lowShare());
    var atHigh = new BinomialDistribution(n, odds.highShare());
    assertEquals(0.025, 1.0 - atLow.cumulativeProbability(k - 1), 1e-8);
    assertEquals(0.025, atHigh.cumulativeProbability(k), 1e-8);
  }

  @Test
  void allAlikeHasOneEndOnly() {
    Odds none = Odds.of(10, 10);
    assertTrue(none.isOneSided());
    assertEquals(1.0, none.highShare());
    assertEquals(0.05, Math.pow(none.lowShare(), 10), 1e-12);
    Odds all = Odds.of(0, 10);
    assertEquals(0.0, all.lowShare());
    assertEquals(0.05, Math.pow(1.0 - all.highShare(), 10), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> Odds.of(0, 0));
    assertThrows(IllegalArgumentException.class, () -> Odds.of(3, 2));
  }

  @Test
  void bandsAreThoseOfTheLibrary() {
    var random = new Random(4);
    for (int n : new int[] {1, 2, 5, 10, 37, 100}) {
      double[] values = random.doubles(n, -5.0, 50.0).toArray();
      var theirs = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
      theirs.setData(values);
      Band band = Band.of(values);
      assertEquals(theirs.evaluate(10.0), band.low(), 1e-9);
      assertEquals(theirs.evaluate(50.0), band.middle(), 1e-9);
      assertEquals(theirs.evaluate(90.0), band.high(), 1e-9);
    }
  }

  @Test
  void anInfiniteWinterLeavesTheOthersAlone() {
    double[] values = {1.0, 2.0, 3.0, Double.POSITIVE_INFINITY, 0.0};
    assertEquals(2.0, Band.of(values).middle());
    assertEquals(0.4, Band.of(values).low(), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, Band.of(values).high());
  }
}
