package greyspell.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.List;
import org.junit.jupiter.api.Test;

class LifeCycleCostPublishedTest implements PublishedChecks {
  private static final String TABLES =
      "compound interest tables of engineering economy (capital recovery A/P, present worth P/A), from memory";

  @Override
  public List<PublishedCheck> checks() {
    return List.of(
        new PublishedCheck(
            "sizing",
            TABLES,
            "A/P at 8 %, 10 years",
            "1",
            0.1490,
            0.00005,
            () -> LifeCycleCost.yearly(1.0, 10.0, 0.08)),
        new PublishedCheck(
            "sizing",
            TABLES,
            "P/A at 8 %, 10 years",
            "1",
            6.7101,
            0.00005,
            () -> LifeCycleCost.presentOfYearly(10.0, 0.08)),
        new PublishedCheck(
            "sizing",
            TABLES,
            "A/P at 5 %, 20 years",
            "1",
            0.0802,
            0.00005,
            () -> LifeCycleCost.yearly(1.0, 20.0, 0.05)));
  }

  /** 1000 now, a bank of 5000 after 8 and 16 of 20 years, 100 of fuel and 30 of upkeep a year. */
  @Test
  void addsUpYearByYear() {
    double r = 0.04, yearly = 0.0;
    for (int t = 1; t <= 20; t++) {
      yearly += Math.pow(1.0 + r, -t);
    }
    var cost = LifeCycleCost.of(1000.0, 5000.0, 8.0, 8.0, 100.0, 0.0, 30.0, 20, r);
    assertEquals(1000.0, cost.onceCost());
    assertEquals(
        5000.0 * (Math.pow(1.0 + r, -8.0) + Math.pow(1.0 + r, -16.0)),
        cost.replacementCost(),
        1e-6);
    assertEquals(100.0 * yearly, cost.fuelCost(), 1e-6);
    assertEquals(30.0 * yearly, cost.upkeepCost(), 1e-6);
    assertEquals(1000.0 + cost.replacementCost() + 130.0 * yearly, cost.totalCost(), 1e-6);
  }

  @Test
  void aBankThatLastsIsNotReplacedAndMoneyWithoutInterestIsShared() {
    assertEquals(
        0.0,
        LifeCycleCost.of(0, 5000, Double.POSITIVE_INFINITY, 8, 0, 0, 0, 20, 0).replacementCost());
    // bought anew in the last year is not counted
    assertEquals(0.0, LifeCycleCost.of(0, 5000, 20, 20, 0, 0, 0, 20, 0).replacementCost());
    assertEquals(50.0, LifeCycleCost.yearly(1000.0, 20.0, 0.0), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> LifeCycleCost.yearly(1.0, 0.0, 0.0));
    assertThrows(
        IllegalArgumentException.class, () -> LifeCycleCost.of(0, 1, 3.0, 0.0, 0, 0, 0, 20, 0));
  }

  /**
   * One with three years left, then new ones of eight: after 3, 11 and 19 years; a worn one now.
   */
  @Test
  void aBankThatHasServedIsReplacedSoonerThanTheNewOnes() {
    double r = 0.04;
    assertEquals(
        5000.0 * (Math.pow(1.0 + r, -3.0) + Math.pow(1.0 + r, -11.0) + Math.pow(1.0 + r, -19.0)),
        LifeCycleCost.of(0, 5000, 3, 8, 0, 0, 0, 20, r).replacementCost(),
        1e-6);
    assertEquals(
        5000.0 * (1.0 + Math.pow(1.0 + r, -8.0) + Math.pow(1.0 + r, -16.0)),
        LifeCycleCost.of(0, 5000, 0, 8, 0, 0, 0, 20, r).replacementCost(),
        1e-6);
  }
}
