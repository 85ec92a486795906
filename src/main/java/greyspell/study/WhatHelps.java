package greyspell.study;

import greyspell.scenario.Scenario.Costs;

/**
 * At every point of a map, whether the next string or the next pack lowers more of what goes
 * unserved: for the same money where both prices are known, else one against the other.
 */
public final class WhatHelps {
  private final TradeoffMap map;
  private final double[][] stringWh;
  private final double[][] packWh;
  private final boolean isPerMoney;
  private final double leastWh;

  /** What is the better next step. */
  public enum Zone {
    PANELS,
    STORAGE,
    NEITHER
  }

  private WhatHelps(TradeoffMap map, Costs costs, double leastWh) {
    this.map = map;
    this.leastWh = leastWh;
    isPerMoney = costs.perModuleCost() != null && costs.perPackCost() != null;
    stringWh = new double[map.panels()][map.banks()];
    packWh = new double[map.panels()][map.banks()];
  }

  static WhatHelps of(TradeoffMap map, TradeoffCosts costs, double leastWh) {
    var helps = new WhatHelps(map, costs.costs(), leastWh);
    TradeoffAxes axes = map.axes();
    for (int i = 0; i < map.panels(); i++) {
      int from = Math.min(i, Math.max(0, map.panels() - 2)), to = Math.min(from + 1, map.panels() - 1);
      for (int j = 0; j < map.banks(); j++) {
        helps.stringWh[i][j] = map.unmetWh(from, j) - map.unmetWh(to, j);
        int back = j;
        while (back > 0 && axes.storageWh(ExchangeRate.packOn(axes, back)) - axes.storageWh(back) < axes.packWh() * 0.99) {
          back--;
        }
        int pack = ExchangeRate.packOn(axes, back);
        double packs = Math.max(1.0, (axes.storageWh(pack) - axes.storageWh(back)) / axes.packWh());
        helps.packWh[i][j] = (map.unmetWh(i, back) - map.unmetWh(i, pack)) / packs;
      }
      if (helps.isPerMoney) {
        double ratio = costs.stringOverPack(from, to);
        for (int j = 0; j < map.banks(); j++) {
          helps.stringWh[i][j] /= ratio;
        }
      }
    }
    return helps;
  }

  /** A year, by panels: those of the next string, or what the money for a pack buys of them. */
  public double panelsSaveWh(int panel, int bank) {
    return stringWh[panel][bank];
  }

  /** A year, by a pack more. */
  public double packSavesWh(int panel, int bank) {
    return packWh[panel][bank];
  }

  /** Less than this a year counts as nothing. */
  public double leastWh() {
    return leastWh;
  }

  public boolean isPerMoney() {
    return isPerMoney;
  }

  public Zone zone(int panel, int bank) {
    return zone(stringWh[panel][bank], packWh[panel][bank], leastWh);
  }

  /** Of two savings. */
  public static Zone zone(double panelsWh, double packWh, double leastWh) {
    if (panelsWh < leastWh && packWh < leastWh) {
      return Zone.NEITHER;
    }
    return panelsWh >= packWh ? Zone.PANELS : Zone.STORAGE;
  }

  /** What is best at the home as it stands. */
  public Zone present() {
    return zone(map.axes().presentPanels(), map.axes().presentBank());
  }

  /** Beside the present bank: the fewest panels, more than now, at which something else is best; 0 if none. */
  public int flipsAtModules() {
    TradeoffAxes axes = map.axes();
    for (int i = axes.presentPanels() + 1; i < map.panels(); i++) {
      if (zone(i, axes.presentBank()) != present()) {
        return axes.modules(i);
      }
    }
    return 0;
  }

  /** And what that is. */
  public Zone afterMoreModules() {
    TradeoffAxes axes = map.axes();
    for (int i = axes.presentPanels() + 1; i < map.panels(); i++) {
      if (zone(i, axes.presentBank()) != present()) {
        return zone(i, axes.presentBank());
      }
    }
    return present();
  }

  /** Beside the present panels: the least bank, larger than now, at which something else is best; 0 if none. */
  public double flipsAtStorageWh() {
    TradeoffAxes axes = map.axes();
    for (int j = axes.presentBank() + 1; j < map.banks(); j++) {
      if (zone(axes.presentPanels(), j) != present()) {
        return axes.storageWh(j);
      }
    }
    return 0.0;
  }

  /** And what that is. */
  public Zone afterMoreStorage() {
    TradeoffAxes axes = map.axes();
    for (int j = axes.presentBank() + 1; j < map.banks(); j++) {
      if (zone(axes.presentPanels(), j) != present()) {
        return zone(axes.presentPanels(), j);
      }
    }
    return present();
  }
}
