package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.study.PanelSteps.Step;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The two axes of a map: numbers of panels that can be built, and banks of any size, the present
 * home among them.
 *
 * @param panels by rising number of modules
 * @param presentPanels place of the home's own
 * @param banks by rising size
 * @param presentBank place of the home's own
 * @param banksPerPack so many steps of storage make one pack; 0 where a step is of any size
 * @param buildable so many of the panels, from the fewest, can be built; what more would bring is
 *     worked out all the same, to show what the limit costs
 * @param end why no more can be built, a sentence; empty if nothing on the axis is refused
 * @param note what has to be known of the axes, empty if nothing
 */
public record TradeoffAxes(
    List<Step> panels,
    int presentPanels,
    List<BankSpec> banks,
    int presentBank,
    int banksPerPack,
    int buildable,
    String end,
    String note) {
  /** Beyond these many times what stands a map shows little that is of use. */
  private static final int USUAL_TIMES = 3;

  private static final int LEAST_PACKS_MORE = 4;
  private static final int USUAL_BANKS = 48;
  private static final double ROUNDING = 1e-9;
  private static final String NOT_LOOKED = "Not looked at beyond";

  public TradeoffAxes {
    panels = List.copyOf(panels);
    banks = List.copyOf(banks);
  }

  /** Axes around what stands, or as asked. */
  static TradeoffAxes of(Scenario home, TradeoffAsked asked) {
    PanelSteps steps = PanelSteps.of(home, new PanelSteps.Room(asked.plane(), null, true));
    String note = "";
    if (steps.present() < 0) {
      steps = unjudged(home, asked.plane());
      note =
          "The strings that stand are refused or cannot be judged (see check): the panels of this map are"
              + " not judged by the string rules.";
    }
    int present = steps.present(), every = Math.max(1, asked.everyStrings());
    int presentModules = steps.steps().get(present).modules();
    int least = asked.leastModules() == null ? 0 : asked.leastModules();
    int most =
        asked.mostModules() == null
            ? USUAL_TIMES * presentModules
            : Math.max(presentModules, asked.mostModules());
    boolean isEnd = !steps.end().startsWith(NOT_LOOKED);
    var all = new ArrayList<>(steps.steps());
    if (isEnd) {
      refused(all, asked.plane(), most);
    }
    var panels = new ArrayList<Step>();
    int place = 0, buildable = 0;
    for (int k = present % every; k < all.size(); k += every) {
      Step step = all.get(k);
      if (k == present || (step.modules() >= least && step.modules() <= most)) {
        place = k == present ? panels.size() : place;
        panels.add(step);
        buildable += k < steps.count() ? 1 : 0;
      }
    }
    String end = buildable < panels.size() ? steps.end() : "";
    return withBanks(home, asked, panels, place, buildable, end, note);
  }

  /** Adds what the rules refuse, one string more each time. */
  private static void refused(List<Step> all, @Nullable String plane, int mostModules) {
    Scenario last = all.get(all.size() - 1).home();
    int at = largest(last, plane), modules = all.get(all.size() - 1).modules();
    ArraySpec grown = last.arrays().get(at);
    for (int more = 1; modules + more * grown.inSeries() <= mostModules; more++) {
      all.add(
          new Step(modules + more * grown.inSeries(), with(last, at, grown.inParallel() + more)));
    }
  }

  private static int largest(Scenario home, @Nullable String plane) {
    int at = 0;
    for (int k = 0; k < home.arrays().size(); k++) {
      ArraySpec array = home.arrays().get(k);
      boolean isLarger = array.modules() > home.arrays().get(at).modules();
      at = plane == null ? (isLarger ? k : at) : array.name().equals(plane) ? k : at;
    }
    return at;
  }

  private static Scenario with(Scenario home, int at, int strings) {
    var arrays = new ArrayList<>(home.arrays());
    ArraySpec grown = arrays.get(at);
    arrays.set(at, grown.withStrings(grown.module(), grown.inSeries(), strings));
    return home.withArrays(arrays);
  }

  private static TradeoffAxes withBanks(
      Scenario home,
      TradeoffAsked asked,
      List<Step> panels,
      int presentPanels,
      int buildable,
      String end,
      String note) {
    BankSpec bank = home.bank();
    double packWh = bank.capacityWh() / bank.packs();
    double mostWh =
        asked.mostStorageWh() == null
            ? Math.max(
                USUAL_TIMES * bank.capacityWh(), bank.capacityWh() + LEAST_PACKS_MORE * packWh)
            : Math.max(bank.capacityWh(), asked.mostStorageWh());
    int perPack = Math.max(1, (int) Math.round(USUAL_BANKS * packWh / mostWh));
    double stepWh = packWh / perPack;
    if (asked.storageStepWh() != null) {
      stepWh = asked.storageStepWh();
      double parts = packWh / stepWh;
      perPack = Math.abs(parts - Math.rint(parts)) < ROUNDING ? (int) Math.rint(parts) : 0;
    }
    double leastWh = asked.leastStorageWh() == null ? 0.0 : asked.leastStorageWh();
    // steps are counted from the home's own bank, so that it is one of them
    int below =
        (int) Math.floor((bank.capacityWh() - Math.max(leastWh, stepWh * 0.5)) / stepWh + ROUNDING);
    int above = (int) Math.floor((mostWh - bank.capacityWh()) / stepWh + ROUNDING);
    below = Math.max(0, below);
    var banks = new ArrayList<BankSpec>();
    for (int k = -below; k <= above; k++) {
      banks.add(k == 0 ? bank : bank.withCapacityWh(bank.capacityWh() + k * stepWh));
    }
    return new TradeoffAxes(panels, presentPanels, banks, below, perPack, buildable, end, note);
  }

  /** Strings of one plane more or less, whatever the rules say of them. */
  private static PanelSteps unjudged(Scenario home, @Nullable String plane) {
    int at = largest(home, plane);
    ArraySpec grown = home.arrays().get(at);
    int rest = home.arrays().stream().mapToInt(ArraySpec::modules).sum() - grown.modules();
    var steps = new ArrayList<Step>();
    for (int strings = 1;
        strings <= USUAL_TIMES * grown.inParallel() + LEAST_PACKS_MORE;
        strings++) {
      Scenario variant = strings == grown.inParallel() ? home : with(home, at, strings);
      steps.add(new Step(rest + strings * grown.inSeries(), variant));
    }
    return new PanelSteps(steps, NOT_LOOKED + ".", grown.inParallel() - 1, false);
  }

  /** Fewer of both, for homes whose every cell is a run of its own; what stands stays in. */
  TradeoffAxes coarser(int mostPanels, int mostBanks) {
    int every = (panels.size() + mostPanels - 1) / mostPanels;
    int unit = Math.max(1, banksPerPack), step = (banks.size() + mostBanks - 1) / mostBanks;
    // whole packs, or an even part of one
    while (unit % step != 0 && step % unit != 0) {
      step++;
    }
    List<Step> fewerPanels = every(panels, presentPanels, every);
    List<BankSpec> fewerBanks = every(banks, presentBank, step);
    return new TradeoffAxes(
        fewerPanels,
        presentPanels / every,
        fewerBanks,
        presentBank / step,
        unit % step == 0 ? unit / step : 1,
        (int) fewerPanels.stream().filter(p -> p.modules() <= modules(buildable - 1)).count(),
        end,
        note);
  }

  private static <T> List<T> every(List<T> all, int present, int step) {
    var some = new ArrayList<T>();
    for (int k = present % step; k < all.size(); k += step) {
      some.add(all.get(k));
    }
    return some;
  }

  public int modules(int panel) {
    return panels.get(panel).modules();
  }

  public double ratedW(int panel) {
    return panels.get(panel).home().arrays().stream().mapToDouble(ArraySpec::ratedPowerW).sum();
  }

  /** Nominal energy. */
  public double storageWh(int bank) {
    return banks.get(bank).capacityWh();
  }

  /** Nominal energy of one pack. */
  public double packWh() {
    BankSpec bank = banks.get(presentBank);
    return bank.capacityWh() / bank.packs();
  }

  /** The home with these panels and this bank. */
  public Scenario home(int panel, int bank) {
    Scenario withPanels = panels.get(panel).home();
    return bank == presentBank ? withPanels : withPanels.withBank(banks.get(bank));
  }
}
