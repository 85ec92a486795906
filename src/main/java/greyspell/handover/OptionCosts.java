package greyspell.handover;

import greyspell.scenario.Scenario.Costs;
import greyspell.study.Explanation.Cost;
import greyspell.study.Explanation.Remedy;
import greyspell.words.Words;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** What the options cost, as cells of their table; only by prices that the scenario states. */
record OptionCosts(Words words) {
  /** Whether anything that can be bought has a price. */
  static boolean areStated(Costs costs) {
    return Stream.of(
            costs.perModuleCost(),
            costs.perPackCost(),
            costs.perControllerCost(),
            costs.perTiltedModuleCost(),
            costs.generatorCost())
        .anyMatch(Objects::nonNull);
  }

  /** Whether any that is enough makes a generator run more or less. */
  static boolean doesRun(List<Remedy> remedies) {
    return remedies.stream()
        .filter(Remedy::isFound)
        .map(r -> r.cost().moreYearlyCost())
        .anyMatch(cost -> cost != null && cost != 0.0);
  }

  /** What is not enough has no price: nobody should buy it. */
  String once(Remedy remedy) {
    Cost cost = remedy.cost();
    if (!remedy.isFound()) {
      return "–";
    }
    if (cost.unpriced().isEmpty()) {
      return words.number(cost.onceCost(), 0);
    }
    return cost.onceCost() > 0.0
        ? words.say("options.over", words.number(cost.onceCost(), 0))
        : words.say("not_stated");
  }

  String moreYearly(Remedy remedy) {
    Double cost = remedy.cost().moreYearlyCost();
    if (!remedy.isFound()) {
      return "–";
    }
    return cost == null ? words.say("not_stated") : words.number(cost, 0);
  }

  /** Below the table: whose prices, and which are missing. */
  String note(List<Remedy> remedies, Costs costs, boolean hasRunning) {
    String note = words.say("options.costs", money(costs.currency()));
    boolean isWearUnpriced = hasRunning && costs.perGeneratorHourCost() == null;
    List<String> missing =
        Stream.concat(
                remedies.stream()
                    .filter(Remedy::isFound)
                    .flatMap(r -> r.cost().unpriced().stream()),
                isWearUnpriced ? Stream.of("costs.per_generator_hour") : Stream.of())
            .distinct()
            .sorted()
            .toList();
    return missing.isEmpty()
        ? note
        : note + " " + words.say("options.unpriced", String.join("; ", missing));
  }

  private String money(String currency) {
    return currency.isEmpty() ? "" : " (" + currency + ")";
  }
}
