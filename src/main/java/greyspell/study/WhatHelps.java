package greyspell.study;

import greyspell.scenario.Scenario.Costs;

/**
 * At every point of a map, whether the next string or the next pack lowers more of what goes
 * unserved, or of the fuel where a generator runs: for the same money where both prices are known,
 * else one against the other.
 */
public final class WhatHelps {
  private final TradeoffMap map;
  private final double[][] stringGain;
  private final double[][] packGain;
  private final boolean isPerMoney;
  private final double leastGain;
  private static final double LEAST_FUEL_L = 1.0;

  /** What is the better next step. */
  public enum Zone {
    PANELS,
    STORAGE,
    NEITHER
  }

  private WhatHelps(TradeoffMap map, Costs costs, double leastWh) {
    this.map = map;
    leastGain = map.hasGenerator() ? LEAST_FUEL_L : leastWh;
    isPerMoney = costs.perModuleCost() != null && costs.perPackCost() != null;
    stringGain = new double[map.panels()][map.banks()];
    packGain = new double[map.panels()][map.banks()];
  }

  static WhatHelps of(TradeoffMap map, TradeoffCosts costs, double leastWh) {
    var helps = new WhatHelps(map, costs.costs(), leastWh);
    TradeoffAxes axes = map.axes();
    int last = map.panels() - 1;
    for (int i = 0; i <= last; i++) {
      // the next step of each, at the edges of the map the last one
      int from = Math.max(0, Math.min(i, last - 1)), to = Math.min(last, from + 1);
      double ratio = helps.isPerMoney ? costs.stringOverPack(from, to) : 1.0;
      for (int j = 0; j < map.banks(); j++) {
        helps.stringGain[i][j] = (helps.lacking(from, j) - helps.lacking(to, j)) / ratio;
        int back = wholePackBelow(axes, j), pack = ExchangeRate.packOn(axes, back);
        double packs = Math.max(1.0, (axes.storageWh(pack) - axes.storageWh(back)) / axes.packWh());
        helps.packGain[i][j] = (helps.lacking(i, back) - helps.lacking(i, pack)) / packs;
      }
    }
    return helps;
  }

  /** This bank, or near the upper edge of the map the one a pack below it. */
  private static int wholePackBelow(TradeoffAxes axes, int bank) {
    int back = bank;
    while (back > 0
        && axes.storageWh(ExchangeRate.packOn(axes, back)) - axes.storageWh(back)
            < axes.packWh() * 0.99) {
      back--;
    }
    return back;
  }

  private double lacking(int panel, int bank) {
    return map.hasGenerator() ? map.fuelL(panel, bank) : map.unmetWh(panel, bank);
  }

  /**
   * A year, by the next string, or by what the money for a pack buys of panels: Wh served, or
   * litres of fuel where a generator runs.
   */
  public double panelsGain(int panel, int bank) {
    return stringGain[panel][bank];
  }

  /** A year, by a pack more, in the same measure. */
  public double packGain(int panel, int bank) {
    return packGain[panel][bank];
  }

  /** Less than this a year counts as nothing. */
  public double leastGain() {
    return leastGain;
  }

  public boolean isPerMoney() {
    return isPerMoney;
  }

  public Zone zone(int panel, int bank) {
    return zone(stringGain[panel][bank], packGain[panel][bank], leastGain);
  }

  /** Of two gains. */
  public static Zone zone(double panelsGain, double packGain, double leastGain) {
    if (panelsGain < leastGain && packGain < leastGain) {
      return Zone.NEITHER;
    }
    return panelsGain >= packGain ? Zone.PANELS : Zone.STORAGE;
  }

  /** Whether, at the home as it stands, both help and what lies between them counts as nothing. */
  public boolean isAlike() {
    int p = map.axes().presentPanels(), c = map.axes().presentBank();
    return present() != Zone.NEITHER
        && Math.abs(stringGain[p][c] - packGain[p][c]) < leastGain
        && Math.min(stringGain[p][c], packGain[p][c]) >= leastGain;
  }

  /** What is best at the home as it stands. */
  public Zone present() {
    return zone(map.axes().presentPanels(), map.axes().presentBank());
  }

  /**
   * Beside the present bank: the fewest panels, more than now, at which something else is best; 0
   * if none.
   */
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

  /**
   * Beside the present panels: the least bank, larger than now, at which something else is best; 0
   * if none.
   */
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
