package greyspell.ladder;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

final class TiesTest {
  @Test
  void oneWinterTellsEverythingApart() {
    assertFalse(Ties.isTie(new double[] {0.001}));
  }

  @Test
  void twoWintersTieWhereTheyDisagree() {
    assertTrue(Ties.isTie(new double[] {1.0, -0.2}));
    assertFalse(Ties.isTie(new double[] {1.0, 0.2}));
  }

  /** Mean 1, deviations -3, 0, 3: s = 3, s / sqrt(3) = 1.73. */
  @Test
  void manyWintersTieWithinOneStandardError() {
    assertTrue(Ties.isTie(new double[] {-2.0, 1.0, 4.0}));
    assertFalse(Ties.isTie(new double[] {0.0, 1.0, 2.0}));
  }
}
