package greyspell.study;

import greyspell.balance.BusHours;
import greyspell.balance.Design;
import greyspell.balance.LaneLoop;
import greyspell.scenario.Scenario;
import greyspell.sizing.PanelRow;
import greyspell.sizing.PanelStorageMap;
import greyspell.sizing.Store;
import greyspell.storage.BankSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * What goes unserved in an average year with every pair of panels and bank: what {@code run} tells
 * of each such home, without its books (TradeoffMapTest).
 */
public final class TradeoffMap {
  private static final int FULL_PANELS = 7;
  private static final int FULL_BANKS = 10;
  private static final double SAME_SHARE = 1e-12;

  private final TradeoffAxes axes;
  private final Way way;
  private final double[][] unmetWh;
  private final double[][] unmetHours;
  private final double[][] generatorHours;
  private final double[][] fuelL;

  /** How the numbers were come by. */
  public enum Way {
    ONE_PASS("every bank in one pass over the hours, which is exact here"),
    LANES("all pairs side by side, hour by hour"),
    FULL(
        "every pair a run of its own with all its details, so the map is coarser and between its points"
            + " a straight line is drawn");

    private final String words;

    Way(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  private TradeoffMap(TradeoffAxes axes, Way way) {
    this.axes = axes;
    this.way = way;
    int panels = axes.panels().size(), banks = axes.banks().size();
    unmetWh = new double[panels][banks];
    unmetHours = new double[panels][banks];
    generatorHours = new double[panels][banks];
    fuelL = new double[panels][banks];
  }

  /** The map of a home in the weather of its trials. */
  static TradeoffMap of(Trials trials, TradeoffAxes axes, int threads) {
    return isFull(trials) ? full(trials, axes) : lean(trials, axes, threads);
  }

  /** Whether a pair needs the full loop, or a second run at the bank's voltage. */
  static boolean isFull(Trials trials) {
    Scenario home = trials.home();
    Design design = trials.design(0, home, Set.of());
    return !LaneLoop.isFor(trials.forcing(0, home, Set.of()), design)
        || HomeRun.followsVoltage(home, design);
  }

  private static TradeoffMap full(Trials trials, TradeoffAxes fine) {
    TradeoffAxes axes = fine.coarser(FULL_PANELS, FULL_BANKS);
    var map = new TradeoffMap(axes, Way.FULL);
    int banks = axes.banks().size();
    IntStream.range(0, axes.panels().size() * banks)
        .parallel()
        .forEach(
            k -> {
              int i = k / banks, j = k % banks;
              Trial trial = trials.run(axes.home(i, j));
              map.unmetWh[i][j] = trial.unmet().wh();
              map.unmetHours[i][j] = trial.unmet().unmetHours();
              map.generatorHours[i][j] = trial.generatorHours();
              map.fuelL[i][j] = trial.fuelL();
            });
    return map;
  }

  private static TradeoffMap lean(Trials trials, TradeoffAxes axes, int threads) {
    var homes = new ArrayList<Scenario>();
    axes.panels().forEach(step -> homes.add(step.home()));
    PanelStorageMap sums = sums(trials, homes, axes.banks(), threads);
    var map = new TradeoffMap(axes, sums.isInOnePass(0) ? Way.ONE_PASS : Way.LANES);
    for (int i = 0; i < homes.size(); i++) {
      for (int j = 0; j < axes.banks().size(); j++) {
        map.unmetWh[i][j] = sums.unmetWh(i, j) / trials.years();
        map.unmetHours[i][j] = (double) sums.unmetHours(i, j) / trials.years();
      }
    }
    return map;
  }

  /** Sums of homes that differ in their panels only, each with every bank. */
  static PanelStorageMap sums(
      Trials trials, List<Scenario> homes, List<BankSpec> banks, int threads) {
    Scenario home = trials.home();
    Design design = trials.design(0, home, Set.of());
    return PanelStorageMap.of(
        rows(trials, homes, design),
        design.inverter(),
        stores(home, banks),
        home.startChargeFraction(),
        threads);
  }

  /** Sums of homes that differ in any way but bank and inverter. */
  static PanelStorageMap unlike(Trials trials, List<Scenario> homes, List<BankSpec> banks) {
    Design design = trials.design(0, trials.home(), Set.of());
    var rows = new ArrayList<PanelRow>();
    for (Scenario home : homes) {
      rows.add(new PanelRow(() -> hours(trials, home, design), 1.0));
    }
    return PanelStorageMap.of(
        rows,
        design.inverter(),
        stores(trials.home(), banks),
        trials.home().startChargeFraction(),
        2);
  }

  private static List<Store> stores(Scenario home, List<BankSpec> banks) {
    var stores = new ArrayList<Store>();
    for (BankSpec bank : banks) {
      stores.add(new Store(bank.limits(), bank.standbyW() - home.bank().standbyW()));
    }
    return stores;
  }

  private static List<PanelRow> rows(Trials trials, List<Scenario> homes, Design design) {
    var rows = new ArrayList<PanelRow>();
    double[] factors = factors(trials, homes);
    if (factors.length > 0) {
      List<BusHours> most = hours(trials, homes.get(homes.size() - 1), design);
      Supplier<List<BusHours>> shared = () -> most;
      for (double factor : factors) {
        rows.add(new PanelRow(shared, factor));
      }
      return rows;
    }
    for (Scenario home : homes) {
      rows.add(new PanelRow(() -> hours(trials, home, design), 1.0));
    }
    return rows;
  }

  private static List<BusHours> hours(Trials trials, Scenario home, Design design) {
    var parts = new ArrayList<BusHours>();
    for (int part = 0; part < trials.parts(); part++) {
      parts.add(BusHours.of(trials.forcingByStrings(part, home), design.inverter()));
    }
    return parts;
  }

  /** Panels over the most, where more panels are no more than a factor; else empty. */
  private static double[] factors(Trials trials, List<Scenario> homes) {
    int last = homes.size() - 1;
    Scenario least = homes.get(0), most = homes.get(last);
    boolean isAlike =
        last > 0
            && most.arrays().size() == 1
            && least.controller().equals(most.controller())
            && least.controller().efficiencyPoints().isEmpty()
            && least.electrical().conductors().isEmpty();
    if (!isAlike) {
      return new double[0];
    }
    double share = (double) modules(least) / modules(most);
    for (int part = 0; part < trials.parts(); part++) {
      double[] few = trials.forcingByStrings(part, least).solarBusWh();
      double[] many = trials.forcingByStrings(part, most).solarBusWh();
      for (int h = 0; h < few.length; h++) {
        if (Math.abs(many[h] * share - few[h]) > SAME_SHARE * (1.0 + many[h])) {
          return new double[0]; // a controller clips
        }
      }
    }
    return homes.stream().mapToDouble(h -> (double) modules(h) / modules(most)).toArray();
  }

  private static int modules(Scenario home) {
    return home.arrays().stream().mapToInt(a -> a.modules()).sum();
  }

  public TradeoffAxes axes() {
    return axes;
  }

  public Way way() {
    return way;
  }

  public int panels() {
    return unmetWh.length;
  }

  public int banks() {
    return unmetWh[0].length;
  }

  /** Not served in an average year. */
  public double unmetWh(int panel, int bank) {
    return unmetWh[panel][bank];
  }

  /** Hours of an average year in which something is not served. */
  public double unmetHours(int panel, int bank) {
    return unmetHours[panel][bank];
  }

  /** In an average year; 0 without a generator. */
  public double generatorHours(int panel, int bank) {
    return generatorHours[panel][bank];
  }

  /** Burnt in an average year; 0 without a generator. */
  public double fuelL(int panel, int bank) {
    return fuelL[panel][bank];
  }

  /** Whether a generator runs in the home as it stands. */
  public boolean hasGenerator() {
    return generatorHours[axes.presentPanels()][axes.presentBank()] > 0.0;
  }

  /** Not served in an average year by the home as it stands. */
  public double presentWh() {
    return unmetWh[axes.presentPanels()][axes.presentBank()];
  }

  /**
   * How large a bank leaves so much unserved beside these panels: straight lines between the banks
   * of the map; infinite if none of them leaves so little, less than anything if the smallest
   * leaves less.
   */
  public double storageWhFor(int panel, double leftWh) {
    double[] wh = unmetWh[panel];
    if (wh[0] < leftWh * (1.0 - SAME_SHARE)) {
      return Double.NEGATIVE_INFINITY;
    }
    if (wh[0] <= leftWh) {
      return axes.storageWh(0);
    }
    for (int j = 1; j < wh.length; j++) {
      if (wh[j] <= leftWh) {
        double share = (wh[j - 1] - leftWh) / (wh[j - 1] - wh[j]);
        double from = axes.storageWh(j - 1);
        return from + share * (axes.storageWh(j) - from);
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** The place of the least bank that keeps to so many hours beside these panels; -1 if none. */
  public int leastBank(int panel, double mostHours) {
    for (int j = 0; j < banks(); j++) {
      if (unmetHours[panel][j] <= mostHours) {
        return j;
      }
    }
    return -1;
  }
}
