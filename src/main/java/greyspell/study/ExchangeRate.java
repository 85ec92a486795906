package greyspell.study;

/**
 * What a string more and a pack more are worth at the home as it stands: by how much each lowers
 * what goes unserved in an average year, and how much of the one buys the same as some of the
 * other, along the line of equal unmet energy.
 *
 * @param stringModules panels of the next string, 0 if the map holds no more
 * @param isStringBuildable whether the string rules allow it
 * @param stringSavesWh a year, by the next string
 * @param packWh nominal energy of a pack
 * @param packSavesWh a year, by the next pack
 * @param stringWorthWh of bank that lowers it as far as the string does; infinite if no bank of the
 *     map does
 * @param packWorthModules panels that lower it as far as the pack does, infinite if none of the map
 *     do
 * @param panelsHelpTo from so many panels on, beside this bank, another string lowers nothing that
 *     counts; 0 if the map ends before
 * @param storageHelpsToWh from so large a bank on, beside these panels, another pack lowers nothing
 *     that counts; 0 if the map ends before
 * @param leftWithAllPanelsWh unserved with the most panels of the map and this bank
 * @param leftWithAllStorageWh unserved with these panels and the largest bank of the map
 * @param leastThatCountsWh less than this a year is taken as nothing
 * @param stringSavesHours of the generator, a year
 * @param stringSavesL of fuel, a year
 */
public record ExchangeRate(
    int stringModules,
    boolean isStringBuildable,
    double stringSavesWh,
    double packWh,
    double packSavesWh,
    double stringWorthWh,
    double packWorthModules,
    int panelsHelpTo,
    double storageHelpsToWh,
    double leftWithAllPanelsWh,
    double leftWithAllStorageWh,
    double leastThatCountsWh,
    double stringSavesHours,
    double stringSavesL,
    double packSavesHours,
    double packSavesL) {
  private static final double LEAST_WH = 100.0;
  private static final double LEAST_SHARE = 0.005;

  /** At the home as it stands. */
  static ExchangeRate of(TradeoffMap map) {
    TradeoffAxes axes = map.axes();
    int p = axes.presentPanels(), c = axes.presentBank();
    double nowWh = map.presentWh(), leastWh = Math.max(LEAST_WH, LEAST_SHARE * nowWh);
    int next = Math.min(p + 1, map.panels() - 1), pack = packOn(axes, c);
    double stringSavesWh = nowWh - map.unmetWh(next, c);
    double packSavesWh = nowWh - map.unmetWh(p, pack);
    boolean isString = next > p && stringSavesWh > 0.0, isPack = packSavesWh > 0.0;
    return new ExchangeRate(
        axes.modules(next) - axes.modules(p),
        next < axes.buildable(),
        stringSavesWh,
        axes.storageWh(pack) - axes.storageWh(c),
        packSavesWh,
        isString ? map.storageWhFor(p, map.unmetWh(next, c)) - axes.storageWh(c) : 0.0,
        isPack ? modulesFor(map, map.unmetWh(p, pack)) - axes.modules(p) : 0.0,
        panelsHelpTo(map, leastWh),
        storageHelpsToWh(map, leastWh),
        map.unmetWh(map.panels() - 1, c),
        map.unmetWh(p, map.banks() - 1),
        leastWh,
        map.generatorHours(p, c) - map.generatorHours(next, c),
        map.fuelL(p, c) - map.fuelL(next, c),
        map.generatorHours(p, c) - map.generatorHours(p, pack),
        map.fuelL(p, c) - map.fuelL(p, pack));
  }

  /** The bank a pack larger, or the next one where steps are larger than a pack. */
  static int packOn(TradeoffAxes axes, int bank) {
    double wantedWh = axes.storageWh(bank) + axes.packWh() * 0.999;
    int place = bank;
    while (place < axes.banks().size() - 1 && axes.storageWh(place) < wantedWh) {
      place++;
    }
    return place;
  }

  private static double modulesFor(TradeoffMap map, double leftWh) {
    TradeoffAxes axes = map.axes();
    int c = axes.presentBank();
    for (int i = axes.presentPanels() + 1; i < map.panels(); i++) {
      double before = map.unmetWh(i - 1, c), here = map.unmetWh(i, c);
      if (here <= leftWh) {
        double share = before > here ? (before - leftWh) / (before - here) : 1.0;
        return axes.modules(i - 1) + share * (axes.modules(i) - axes.modules(i - 1));
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static int panelsHelpTo(TradeoffMap map, double leastWh) {
    TradeoffAxes axes = map.axes();
    int c = axes.presentBank();
    for (int i = axes.presentPanels(); i < map.panels() - 1; i++) {
      boolean isNothing = true;
      for (int k = i; k < map.panels() - 1; k++) {
        isNothing &= map.unmetWh(k, c) - map.unmetWh(k + 1, c) < leastWh;
      }
      if (isNothing) {
        return axes.modules(i);
      }
    }
    return 0;
  }

  private static double storageHelpsToWh(TradeoffMap map, double leastWh) {
    TradeoffAxes axes = map.axes();
    int p = axes.presentPanels();
    for (int j = axes.presentBank(); packOn(axes, j) > j && isFull(axes, j); j++) {
      boolean isNothing = true;
      for (int k = j; isFull(axes, k); k++) {
        isNothing &= map.unmetWh(p, k) - map.unmetWh(p, packOn(axes, k)) < leastWh;
      }
      if (isNothing) {
        return axes.storageWh(j);
      }
    }
    return 0.0;
  }

  /** Whether a whole pack more is on the map. */
  private static boolean isFull(TradeoffAxes axes, int bank) {
    return axes.storageWh(packOn(axes, bank)) - axes.storageWh(bank) > axes.packWh() * 0.99;
  }

  public boolean isStringWorthNothing() {
    return stringSavesWh < leastThatCountsWh;
  }

  public boolean isPackWorthNothing() {
    return packSavesWh < leastThatCountsWh;
  }
}
