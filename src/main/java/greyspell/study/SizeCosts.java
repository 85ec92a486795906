package greyspell.study;

import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Costs;
import greyspell.sizing.LowestLine;
import greyspell.storage.BankSpec;
import greyspell.study.CheapestByPrice.Range;
import greyspell.study.CheapestByPrice.Unknown;
import greyspell.study.SizeResult.Point;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What pairs of panels and bank cost by the user's prices, and what missing ones leave open. */
final class SizeCosts {
  private final Costs costs;
  private final double packWh;
  private final int controllers;

  SizeCosts(Scenario home) {
    costs = home.costs();
    packWh = home.bank().capacityWh() / home.bank().packs();
    controllers = home.controller().count();
  }

  /**
   * Of a whole pair; controllers that are there already cost nothing. Null if a price is missing.
   */
  @Nullable Double cost(int modules, int controllersThen, BankSpec bank) {
    int more = controllersThen - controllers;
    Double perController = costs.perControllerCost();
    if (costs.perModuleCost() == null
        || costs.perPackCost() == null
        || (more > 0 && perController == null)) {
      return null;
    }
    return modules * costs.perModuleCost()
        + bank.capacityWh() / packWh * costs.perPackCost()
        + (perController == null ? 0.0 : more * perController);
  }

  /** Null if any of them cannot be told. */
  @Nullable Point cheapest(List<Point> frontier) {
    Point best = null;
    double bestCost = Double.POSITIVE_INFINITY;
    for (Point point : frontier) {
      Double cost = point.cost();
      if (cost == null) {
        return null;
      }
      if (cost < bestCost) {
        best = point;
        bestCost = cost;
      }
    }
    return best;
  }

  /** Keys of {@code costs}. */
  List<String> missing(List<Point> frontier) {
    var missing = new ArrayList<String>();
    if (costs.perModuleCost() == null) {
      missing.add("per_module");
    }
    if (costs.perPackCost() == null) {
      missing.add("per_pack");
    }
    if (costs.perControllerCost() == null && doControllersGrow(frontier)) {
      missing.add("per_controller");
    }
    return missing;
  }

  private boolean doControllersGrow(List<Point> frontier) {
    return frontier.stream().anyMatch(p -> p.controllers() > controllers);
  }

  /** Null without a frontier or without a missing price. */
  @Nullable CheapestByPrice byPrice(List<Point> frontier) {
    List<String> missing = missing(frontier);
    if (frontier.isEmpty() || missing.isEmpty()) {
      return null;
    }
    Unknown unknown = unknown(missing);
    boolean isAside =
        doControllersGrow(frontier)
            && (unknown == Unknown.PACK_IN_MODULES
                || (missing.contains("per_controller") && missing.size() > 1));
    var known = new double[frontier.size()];
    var count = new double[frontier.size()];
    for (int i = 0; i < known.length; i++) {
      Point point = frontier.get(i);
      known[i] = known(point, unknown, isAside);
      count[i] = count(point, unknown);
    }
    var ranges = new ArrayList<Range>();
    for (LowestLine range : LowestLine.of(known, count)) {
      ranges.add(new Range(range.upToCost(), frontier.get(range.line())));
    }
    return new CheapestByPrice(unknown, isAside, ranges);
  }

  private static Unknown unknown(List<String> missing) {
    if (missing.contains("per_module")) {
      return missing.contains("per_pack") ? Unknown.PACK_IN_MODULES : Unknown.MODULE;
    }
    return missing.contains("per_pack") ? Unknown.PACK : Unknown.CONTROLLER;
  }

  /** By the prices that there are; in modules where neither modules nor packs have one. */
  private double known(Point point, Unknown unknown, boolean isAside) {
    if (unknown == Unknown.PACK_IN_MODULES) {
      return point.modules();
    }
    double perController = isAside ? 0.0 : orNothing(costs.perControllerCost());
    return point.modules() * orNothing(costs.perModuleCost())
        + packs(point) * orNothing(costs.perPackCost())
        + (point.controllers() - controllers) * perController;
  }

  private double count(Point point, Unknown unknown) {
    return switch (unknown) {
      case MODULE -> point.modules();
      case PACK, PACK_IN_MODULES -> packs(point);
      case CONTROLLER -> point.controllers() - controllers;
    };
  }

  private double packs(Point point) {
    return point.capacityWh() / packWh;
  }

  private static double orNothing(@Nullable Double price) {
    return price == null ? 0.0 : price;
  }
}
