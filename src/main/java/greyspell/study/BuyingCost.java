package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Costs;
import greyspell.scenario.Scenario.Generator;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What has to be bought to make one home of another, by the user's own prices. */
final class BuyingCost {
  private double sumCost;
  private boolean isNothing = true;
  private final List<String> unpriced = new ArrayList<>();

  private BuyingCost(Scenario now, Scenario then) {
    Costs costs = now.costs();
    add(modules(then) - modules(now), "costs.per_module", costs.perModuleCost());
    add(then.bank().packs() - now.bank().packs(), "costs.per_pack", costs.perPackCost());
    add(
        then.controller().count() - now.controller().count(),
        "costs.per_controller",
        costs.perControllerCost());
    add(tilted(now, then), "costs.per_tilted_module", costs.perTiltedModuleCost());
    Generator was = now.generator(), is = then.generator();
    if (was == null && is != null) {
      add(1, "costs.generator", costs.generatorCost());
    } else if (was != null && is != null && was.rules().policy() != is.rules().policy()) {
      add(1, "generator.policy", null); // no price is asked for what starts it by itself
    }
  }

  static BuyingCost of(Scenario now, Scenario then) {
    return new BuyingCost(now, then);
  }

  /** Whether nothing has to be bought. */
  boolean isNothing() {
    return isNothing;
  }

  /** Of all that has a price. */
  double sumCost() {
    return sumCost;
  }

  /** Keys of what has to be bought and has no price. */
  List<String> unpriced() {
    return unpriced;
  }

  private void add(int count, String key, @Nullable Double price) {
    isNothing &= count <= 0;
    if (count > 0 && price == null) {
      unpriced.add(key);
    } else if (count > 0 && price != null) {
      sumCost += count * price;
    }
  }

  private static int modules(Scenario home) {
    return home.arrays().stream().mapToInt(ArraySpec::modules).sum();
  }

  private static int tilted(Scenario now, Scenario then) {
    int modules = 0;
    for (int k = 0; k < now.arrays().size(); k++) {
      boolean isTilted = then.arrays().get(k).tiltDeg() != now.arrays().get(k).tiltDeg();
      modules += isTilted ? now.arrays().get(k).modules() : 0;
    }
    return modules;
  }
}
