package greyspell.ladder;

import greyspell.scenario.Scenario.Costs;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** At what prices another kind of step would have been the rung. */
final class Turns {
  private Turns() {}

  private record Asked(String family, String key) {}

  /**
   * Of every other kind the highest price at which one of its steps is the better buy.
   *
   * @param leftCost most that may be spent
   */
  static List<Turn> below(Tried best, List<Tried> all, double leftCost, Costs costs) {
    Double costPerKwh = best.costPerKwh(costs);
    return costPerKwh == null
        ? List.of()
        : highest(
            all.stream().filter(t -> !t.step().family().equals(best.step().family())).toList(),
            costPerKwh,
            leftCost,
            costs);
  }

  /** Up to what price of its own the kind of the rung stays the best; null if nothing competes. */
  static @Nullable Turn upTo(Tried best, List<Tried> within, double leftCost, Costs costs) {
    String family = best.step().family();
    double next = Double.POSITIVE_INFINITY;
    for (Tried tried : within) {
      Double cost = tried.costPerKwh(costs);
      next = tried.step().family().equals(family) || cost == null ? next : Math.min(next, cost);
    }
    if (Double.isInfinite(next)) {
      return null;
    }
    String key = best.step().prices().get(0).key();
    return highest(within, next, leftCost, costs).stream()
        .filter(t -> t.tried().step().family().equals(family) && t.price().key().equals(key))
        .findFirst()
        .orElse(null);
  }

  private static List<Turn> highest(
      List<Tried> tried, double costPerKwh, double leftCost, Costs costs) {
    Map<Asked, Turn> highest = new LinkedHashMap<>();
    for (Tried t : tried) {
      Turn turn = Turn.of(t, costPerKwh, leftCost, costs);
      if (turn != null) {
        highest.merge(
            new Asked(t.step().family(), turn.price().key()),
            turn,
            (a, b) -> b.cost() > a.cost() ? b : a);
      }
    }
    return List.copyOf(highest.values());
  }
}
