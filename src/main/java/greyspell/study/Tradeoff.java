package greyspell.study;

import greyspell.scenario.Scenario;
import greyspell.study.Study.Steps;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Panels against storage for one home: the map, what is worth what at the home as it stands, and
 * where the answer flips. Every figure comes from the replayed hours of its weather.
 *
 * @param winters names of the whole winters
 * @param frontier of each number of panels, the place of the least bank that keeps to the target;
 *     -1 if none of the map does
 * @param notes what has to be known, a sentence each
 */
public record Tradeoff(
    Scenario home,
    TradeoffAsked asked,
    TradeoffMap map,
    List<String> winters,
    int years,
    ExchangeRate rate,
    SunAndStore sun,
    WhatHelps helps,
    TradeoffCosts costs,
    List<OtherWay> others,
    List<Integer> frontier,
    List<String> notes) {
  private static final int THREADS = 2;

  public Tradeoff {
    winters = List.copyOf(winters);
    others = List.copyOf(others);
    frontier = List.copyOf(frontier);
    notes = List.copyOf(notes);
  }

  /** In the weather of the trials. */
  public static Tradeoff of(Trials trials, TradeoffAsked asked, Steps steps) {
    Scenario home = trials.home();
    steps.step("the axes", 0.1);
    TradeoffAxes axes = TradeoffAxes.of(home, asked);
    steps.step("panels against storage", 0.2);
    TradeoffMap map = TradeoffMap.of(trials, axes, THREADS);
    steps.step("other ways", 0.8);
    ExchangeRate rate = ExchangeRate.of(map);
    var costs = new TradeoffCosts(home.costs(), map.axes());
    return new Tradeoff(
        home,
        asked,
        map,
        trials.winters(),
        trials.years(),
        rate,
        SunAndStore.of(trials),
        WhatHelps.of(map, costs, rate.leastThatCountsWh()),
        costs,
        OtherWays.of(trials, map),
        frontier(map, asked.targetHours()),
        notes(map, costs, asked));
  }

  /** Whole packs, where the steps of the map hold them. */
  private static List<Integer> frontier(TradeoffMap map, double targetHours) {
    var frontier = new ArrayList<Integer>();
    TradeoffAxes axes = map.axes();
    for (int i = 0; i < map.panels(); i++) {
      int bank = map.leastBank(i, targetHours);
      while (bank >= 0 && bank < map.banks() && !isWholePacks(axes, bank)) {
        bank++;
      }
      frontier.add(bank < map.banks() ? bank : -1);
    }
    return frontier;
  }

  private static boolean isWholePacks(TradeoffAxes axes, int bank) {
    return axes.banksPerPack() == 0 || (bank - axes.presentBank()) % axes.banksPerPack() == 0;
  }

  private static List<String> notes(TradeoffMap map, TradeoffCosts costs, TradeoffAsked asked) {
    var notes = new ArrayList<String>();
    if (!map.axes().note().isEmpty()) {
      notes.add(map.axes().note());
    }
    notes.add("Worked out with " + map.way().words() + ".");
    if (!costs.isKnown()) {
      notes.add(
          "No prices of module and pack in the scenario (costs): one string is weighed against one"
              + " pack, whatever they cost"
              + (asked.budgetCost() == null ? "." : ", and the budget is left out."));
    } else if (costs.leavesOutControllers()) {
      notes.add(
          "Controllers beyond those that stand have no price (costs.per_controller): what they cost"
              + " comes on top of every sum here, that of the cheapest pair too.");
    }
    return notes;
  }

  /** Whether roof, string rules and budget allow a point; more controllers are allowed. */
  public boolean isAllowed(int panel, int bank) {
    Integer roof = asked.roofModules();
    Double budget = asked.budgetCost();
    return panel < map.axes().buildable()
        && (roof == null || map.axes().modules(panel) <= roof)
        && (budget == null || !costs.isKnown() || costs.extraCost(panel, bank) <= budget);
  }

  /**
   * What one controller may cost at most for the next string to gain more than packs for the same
   * money; null where it takes none, has a price, or panels help less even without it.
   */
  public @Nullable Double controllerCostBelow() {
    TradeoffAxes axes = map.axes();
    int p = axes.presentPanels(), c = axes.presentBank();
    Double module = costs.costs().perModuleCost();
    if (p + 1 >= map.panels() || !helps.isPerMoney() || module == null) {
      return null;
    }
    int more = axes.panels().get(p + 1).controllers() - axes.panels().get(p).controllers();
    if (more == 0
        || costs.costs().perControllerCost() != null
        || helps.present() != WhatHelps.Zone.PANELS
        || helps.packGain(p, c) <= 0.0) {
      return null;
    }
    double modulesCost = (axes.modules(p + 1) - axes.modules(p)) * module;
    return modulesCost * (helps.panelsGain(p, c) / helps.packGain(p, c) - 1.0) / more;
  }

  /**
   * The cheapest point of the frontier that is allowed, -1 where none is or prices are not known.
   */
  public int cheapestPanels() {
    int best = -1;
    for (int i = 0; i < frontier.size() && costs.isKnown(); i++) {
      int bank = frontier.get(i);
      if (bank >= 0
          && isAllowed(i, bank)
          && (best < 0 || costs.extraCost(i, bank) < costs.extraCost(best, frontier.get(best)))) {
        best = i;
      }
    }
    return best;
  }
}
