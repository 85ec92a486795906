package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.balance.BusHours;
import greyspell.balance.SequentPeak;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.sizing.Frontier;
import greyspell.sizing.Frontier.Pair;
import greyspell.sizing.HandMethod;
import greyspell.sizing.Target;
import greyspell.storage.BankSpec;
import greyspell.study.SizeResult.Deficit;
import greyspell.study.SizeResult.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/**
 * What size of bank and panels a home needs for a target: the smallest bank with its panels, the
 * fewest panels with its bank, and the pairs between. Panels are whole strings that the rules
 * allow, and every pair is told as {@code run} tells it.
 */
public final class SizeStudy {
  private final Scenario home;
  private final Trials trials;
  private final SizeWanted wanted;
  private final PanelSteps steps;
  private final BankSteps banks;
  private final SizeGrid grid;
  private final SizeCosts costs;
  private final Frontier search;
  private final int presentPanel;
  private final int presentBank;

  /** The home's own panels, where the string rules refuse them, stand behind all steps. */
  private SizeStudy(Scenario home, Trials trials, SizeWanted wanted) {
    this.home = home;
    this.trials = trials;
    this.wanted = wanted;
    costs = new SizeCosts(home);
    steps = PanelSteps.of(home, wanted.room());
    banks = wanted.banks(home);
    var panels = new ArrayList<Scenario>();
    steps.steps().forEach(step -> panels.add(step.home()));
    presentPanel = steps.present() >= 0 ? steps.present() : panels.size();
    if (steps.present() < 0) {
      panels.add(home);
    }
    presentBank = banks.areWholePacks() ? home.bank().packs() - 1 : nearest();
    grid = new SizeGrid(trials, panels, withPresent(), wanted.targets());
    search = new Frontier(new Buildable());
  }

  /**
   * Sizes a home.
   *
   * @param home its generator left out if it is to do without
   * @param trials of the same home, in the weather that counts
   */
  public static SizeResult of(
      Scenario home, Trials trials, SizeWanted wanted, Study.Steps progress) {
    for (Target target : wanted.targets()) {
      if (target.needsWinters() && trials.winters().isEmpty()) {
        throw BadInput.of(
            Place.of(home.file()),
            "the weather holds no whole winter",
            "must hold one for a target that counts winters",
            "Name several years of weather, or let winters be drawn: --winters 30.");
      }
    }
    return new SizeStudy(home, trials, wanted).result(progress);
  }

  private int nearest() {
    int best = 0;
    for (int k = 1; k < banks.count(); k++) {
      double now = Math.abs(banks.banks().get(k).capacityWh() - home.bank().capacityWh());
      double was = Math.abs(banks.banks().get(best).capacityWh() - home.bank().capacityWh());
      best = now < was ? k : best;
    }
    return best;
  }

  /** The present bank stands behind all others where it is none of them. */
  private BankSteps withPresent() {
    var all = new ArrayList<>(banks.banks());
    all.add(home.bank());
    return new BankSteps(all, banks.areWholePacks());
  }

  private int ownBank() {
    return banks.count();
  }

  /** Only what may be bought: neither refused panels nor the present bank twice. */
  private final class Buildable implements Frontier.Grid {
    @Override
    public int panels() {
      return steps.count();
    }

    @Override
    public int banks() {
      return banks.count();
    }

    @Override
    public boolean isMet(int panel, int bank) {
      return grid.isMet(panel, bank);
    }

    @Override
    public double missedBy(int panel, int bank) {
      return grid.missedBy(panel, bank);
    }
  }

  private SizeResult result(Study.Steps progress) {
    progress.step("the home as it is", 0.2);
    Point present = point(presentPanel, ownBank());
    boolean isEnough = grid.isMet(presentPanel, ownBank());
    progress.step("banks and panels, and the pairs between", 0.3);
    boolean isByRule = wanted.targets().stream().allMatch(Target::isByRule);
    // three searches side by side, each knowing what the others have tried
    var leastSearched =
        CompletableFuture.supplyAsync(
            () -> search.leastBank(presentPanel, Math.min(presentBank, banks.count() - 1)));
    var fewestSearched = CompletableFuture.supplyAsync(() -> isByRule ? null : fewestPanels());
    var frontier = new ArrayList<Point>();
    for (Pair corner : isByRule ? List.<Pair>of() : search.corners()) {
      frontier.add(point(corner.panel(), corner.bank()));
    }
    int least = leastSearched.join();
    Point fewest = fewestSearched.join();
    progress.step("by hand beside it", 0.9);
    HandMethod hand = HandStudy.of(home, grid.forcings(), grid.inverter(), wanted);
    Pair handPair = handPair(hand);
    return new SizeResult(
        home,
        wanted.targets(),
        trials.years(),
        trials.winters().size(),
        steps,
        banks,
        present,
        isEnough,
        least == banks.count() ? null : point(presentPanel, least),
        least == banks.count() ? point(presentPanel, banks.count() - 1) : null,
        fewest,
        frontier,
        costs.cheapest(frontier),
        costs.missing(frontier),
        costs.byPrice(frontier),
        hand,
        handPair == null ? null : point(handPair.panel(), handPair.bank()),
        handPair != null && grid.isMet(handPair.panel(), handPair.bank()),
        deficit(least),
        grid.isBySums(),
        search.tried(),
        steps.count() * banks.count());
  }

  private @Nullable Point fewestPanels() {
    if (steps.steps().isEmpty()) {
      return null;
    }
    int near = Math.max(0, Math.min(presentPanel, steps.count() - 1));
    int panel = search.fewestPanels(presentBankOnAxis(), near);
    return panel == steps.count() ? null : point(panel, presentBankOnAxis());
  }

  /** Its own place where it is one of the steps; else behind them. */
  private int presentBankOnAxis() {
    return banks.areWholePacks() && presentBank < banks.count() ? presentBank : ownBank();
  }

  private Point point(int panel, int bank) {
    Scenario at = grid.home(panel, bank);
    BankSpec spec = at.bank();
    int modules = at.arrays().stream().mapToInt(ArraySpec::modules).sum();
    boolean isWhole = banks.areWholePacks() || bank == ownBank();
    return new Point(
        at,
        modules,
        at.arrays().stream().mapToDouble(ArraySpec::ratedPowerW).sum(),
        at.controller().count(),
        isWhole ? Integer.valueOf(spec.packs()) : null,
        spec.capacityWh(),
        grid.tally(panel, bank),
        costs.cost(modules, at.controller().count(), spec));
  }

  // ---- the hand method --------------------------------------------------------------------------

  /** The first step with as many modules as the hand method wants; null if none can be built. */
  private @Nullable Pair handPair(HandMethod hand) {
    if (!banks.areWholePacks() || hand.packs() > banks.count()) {
      return null;
    }
    for (int panel = 0; panel < steps.count(); panel++) {
      if (steps.steps().get(panel).modules() >= hand.modules() - 1e-9) {
        return new Pair(panel, hand.packs() - 1);
      }
    }
    return null;
  }

  /** With the electronics of the bank that is told of: each pack draws something of its own. */
  private Deficit deficit(int bank) {
    BankSpec spec = banks.banks().get(Math.min(bank, banks.count() - 1));
    double moreWh = spec.standbyW() - home.bank().standbyW();
    double deepestWh = grid.isBySums() ? 0.0 : Double.NaN;
    for (BusHours hours : grid.busHours(presentPanel)) {
      double lackWh = SequentPeak.leastWindowWh(hours.drawing(moreWh), 1.0, spec.limits());
      deepestWh = Math.max(deepestWh, lackWh);
    }
    return new Deficit(deepestWh);
  }
}
