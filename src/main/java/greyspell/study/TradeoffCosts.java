package greyspell.study;

import greyspell.scenario.Scenario.Costs;
import org.jspecify.annotations.Nullable;

/** What the points of a map cost beyond what stands, by the user's own prices. */
public record TradeoffCosts(Costs costs, TradeoffAxes axes) {
  /** Whether panels and packs both have a price. */
  public boolean isKnown() {
    return costs.perModuleCost() != null && costs.perPackCost() != null;
  }

  /** Whether some points of the map take more controllers, which have no price. */
  public boolean leavesOutControllers() {
    int most = axes.panels().get(axes.panels().size() - 1).controllers();
    return isKnown()
        && costs.perControllerCost() == null
        && most > axes.panels().get(axes.presentPanels()).controllers();
  }

  /** Beyond what stands; below 0 for less than that. Only where prices are known. */
  public double extraCost(int panel, int bank) {
    double packs = (axes.storageWh(bank) - axes.storageWh(axes.presentBank())) / axes.packWh();
    return panelsCost(axes.presentPanels(), panel) + packs * or(costs.perPackCost());
  }

  /** Panels and the controllers they take, from one place to another. */
  private double panelsCost(int from, int to) {
    int controllers = axes.panels().get(to).controllers() - axes.panels().get(from).controllers();
    return (axes.modules(to) - axes.modules(from)) * or(costs.perModuleCost())
        + controllers * or(costs.perControllerCost());
  }

  /** What the panels from one place to another cost over a pack. */
  double stringOverPack(int from, int to) {
    double ratio = panelsCost(from, to) / or(costs.perPackCost());
    return ratio > 0.0 ? ratio : 1.0;
  }

  private static double or(@Nullable Double price) {
    return price == null ? 0.0 : price;
  }
}
