package greyspell.scenario;

import greyspell.quantity.Unit;
import greyspell.scenario.Scenario.Costs;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.Node;

/** The user's prices. */
final class CostBinder {
  private final Border border;
  private final String file;

  CostBinder(Border border, String file) {
    this.border = border;
    this.file = file;
  }

  Costs costs(Block home) {
    Block block = home.block(Vocabulary.HOME_COSTS);
    if (block == null) {
      return Costs.NONE;
    }
    return new Costs(
        block.text(CostKeys.CURRENCY),
        block.optional(CostKeys.PER_MODULE),
        block.optional(CostKeys.PER_PACK),
        block.optional(CostKeys.PER_CONTROLLER),
        block.optional(CostKeys.PER_TILTED_MODULE),
        block.optional(CostKeys.GENERATOR_PRICE),
        fuelPerLitreCost(block),
        block.optional(CostKeys.PER_GENERATOR_HOUR),
        block.optional(CostKeys.YEARLY),
        block.whole(CostKeys.YEARS),
        block.measure(CostKeys.DISCOUNT_RATE),
        measures(block));
  }

  private List<Scenario.Measure> measures(Block costs) {
    var measures = new ArrayList<Scenario.Measure>();
    List<Node> items = costs.list(CostKeys.MEASURES);
    for (int i = 0; i < items.size(); i++) {
      String path = costs.path(CostKeys.MEASURES) + '[' + i + ']';
      var block = new Block(CostKeys.MEASURE, items.get(i), file, path, border, null);
      measures.add(
          new Scenario.Measure(
              block.text(CostKeys.MEASURE_NAME),
              block.measure(CostKeys.MEASURE_PRICE),
              block.text(CostKeys.MEASURE_KEY),
              block.text(CostKeys.MEASURE_VALUE)));
    }
    return measures;
  }

  /** Null if no price is stated. */
  private static @Nullable Double fuelPerLitreCost(Block block) {
    Double perLitreCost = block.optional(CostKeys.FUEL_PER_LITRE);
    Double perGallonCost = block.optional(CostKeys.FUEL_PER_GALLON);
    if (perLitreCost != null && perGallonCost != null) {
      block
          .border()
          .fault(
              block.place(CostKeys.FUEL_PER_GALLON),
              "\"fuel_per_gallon\" beside \"fuel_per_litre\" in costs",
              "must be one price",
              "Leave one of them out.");
    }
    return perGallonCost == null
        ? perLitreCost
        : Double.valueOf(Unit.GALLON.fromInside(perGallonCost));
  }
}
