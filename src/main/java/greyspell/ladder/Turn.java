package greyspell.ladder;

import greyspell.ladder.Step.Price;
import greyspell.scenario.Scenario.Costs;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * At what price a step would avoid a kWh for as much money as another one does, all other prices as
 * they are stated. The price is the one that is not stated where only one is not; else the first.
 *
 * <pre>
 * x = (c E - w - sum of the other  p y) / y(x)
 *
 * c   money for each kWh that the other step avoids
 * E   kWh a year that this one avoids;  w  wear of a generator, a year
 * p   a price;  y  so much of it falls on a year: pieces over their life, litres
 * </pre>
 *
 * @param tried the step
 * @param price whose value is asked
 * @param cost at which both are alike; 0 or below where no price is low enough
 * @param alsoMissing keys of further prices that are not stated: they have to lie within the cost
 */
public record Turn(Tried tried, Price price, double cost, List<String> alsoMissing) {
  public Turn {
    alsoMissing = List.copyOf(alsoMissing);
  }

  /**
   * Null for what has no price.
   *
   * @param leftCost most that may be spent at once: the price has to keep to it too
   */
  static @Nullable Turn of(Tried tried, double otherCostPerKwh, double leftCost, Costs costs) {
    List<Price> prices = tried.prices(costs);
    if (prices.isEmpty()) {
      return null;
    }
    var missing = new ArrayList<>(prices.stream().filter(p -> p.cost() == null).toList());
    Price asked = missing.isEmpty() ? prices.get(0) : missing.remove(0);
    double yearly = otherCostPerKwh * tried.avoidedWh() / 1000.0 - tried.wearCost(costs);
    double once = leftCost;
    for (Price price : prices) {
      Double cost = price == asked ? null : price.cost();
      yearly -= cost == null ? 0.0 : cost * tried.yearlyOf(price, costs);
      once -= cost == null ? 0.0 : cost * price.count();
    }
    double even = Math.min(ratio(yearly, tried.yearlyOf(asked, costs)), ratio(once, asked.count()));
    return new Turn(tried, asked, even, missing.stream().map(Price::key).toList());
  }

  private static double ratio(double left, double share) {
    return share > 0.0 ? left / share : left >= 0.0 ? Double.POSITIVE_INFINITY : -1.0;
  }

  /** Whether some price is low enough. */
  public boolean isPossible() {
    return cost > 0.0;
  }
}
