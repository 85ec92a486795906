package greyspell.study;

import greyspell.balance.Ledger;
import greyspell.calendar.Winter;
import greyspell.cause.DarkSpell;
import greyspell.power.FuelUse;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * What changes of a home come to, each run through every hour of every winter, and once. Safe for
 * several threads: two may run the same change, and get the same.
 */
final class ChangeRuns {
  private final Trials trials;
  private final ScenarioEdit file;
  private final @Nullable Path library;
  private final List<PartSpells> parts;
  private final Map<Change, Outcome> known = new ConcurrentHashMap<>();
  private final Set<String> failingNow;

  /** The spells of one part of the weather. */
  record PartSpells(int part, List<DarkSpell> spells) {
    PartSpells {
      spells = List.copyOf(spells);
    }
  }

  /**
   * What a change comes to.
   *
   * @param spells within the dates of each, part after part
   * @param all of all hours
   * @param buying what has to be bought, null where no such home may stand
   * @param wires that bear what flows now, and not what would flow then
   */
  record Outcome(
      List<Span> spells,
      Span all,
      int darkWinters,
      @Nullable BuyingCost buying,
      List<String> wires) {
    static final Outcome REFUSED =
        new Outcome(
            List.of(), new Span(Double.MAX_VALUE, Integer.MAX_VALUE, 0, 0.0), 0, null, List.of());

    boolean isRefused() {
      return buying == null;
    }

    /**
     * @param spell counted over all parts; below 0 for all hours
     */
    Span within(int spell) {
      return spell < 0 ? all : spells.get(spell);
    }

    boolean prevents(int spell) {
      return !isRefused() && within(spell).unmetHours == 0;
    }
  }

  /** Some hours. */
  record Span(double unmetWh, int unmetHours, int generatorHours, double fuelL) {
    Span and(Span more) {
      return new Span(
          unmetWh + more.unmetWh,
          unmetHours + more.unmetHours,
          generatorHours + more.generatorHours,
          fuelL + more.fuelL);
    }

    boolean runsLessThan(Span other) {
      return hoursOrLast() == other.hoursOrLast()
          ? fuelL < other.fuelL
          : hoursOrLast() < other.hoursOrLast();
    }

    /** One that serves these hours by what it charged before them is the last choice. */
    private int hoursOrLast() {
      return generatorHours > 0 ? generatorHours : Integer.MAX_VALUE;
    }
  }

  /**
   * Of the home that the trials are of.
   *
   * @param parts all parts of the weather, those without a spell too
   */
  ChangeRuns(Trials trials, ScenarioEdit file, @Nullable Path library, List<PartSpells> parts) {
    this.trials = trials;
    this.file = file;
    this.library = library;
    this.parts = List.copyOf(parts);
    failingNow = WireCheck.failing(trials.home());
  }

  /** The home as it stands. */
  Outcome now() {
    return outcome(trials.home());
  }

  /** Null if it was not run. */
  @Nullable Outcome known(Change change) {
    return known.get(change);
  }

  /** What a change comes to, run if it was not yet. */
  Outcome outcome(Change change) {
    Outcome before = known.get(change);
    if (before == null) {
      Scenario variant = change.of(file, library);
      before = variant == null ? Outcome.REFUSED : outcome(variant);
      known.put(change, before);
    }
    return before;
  }

  private Outcome outcome(Scenario variant) {
    var spells = new ArrayList<Span>();
    Span all = new Span(0.0, 0, 0, 0.0);
    int dark = 0;
    for (PartSpells part : parts) {
      Ledger ledger = trials.brief(part.part, variant, Set.of(), null);
      double[] unmetWh = ledger.unmetWh();
      FuelUse fuel = Again.fuel(variant, ledger);
      for (DarkSpell spell : part.spells) {
        spells.add(within(ledger, unmetWh, fuel, spell.fromHour(), spell.toHour()));
      }
      all = all.and(within(ledger, unmetWh, fuel, 0, ledger.hours()));
      for (Winter winter : ledger.forcing().calendar().winters(variant.site().isNorthern())) {
        boolean isDark =
            within(ledger, unmetWh, null, winter.fromHour(), winter.toHour()).unmetHours > 0;
        dark += winter.isWhole() && isDark ? 1 : 0;
      }
    }
    BuyingCost buying = BuyingCost.of(trials.home(), variant);
    List<String> wires = buying.isNothing() ? List.of() : overloaded(variant);
    return new Outcome(spells, all, dark, buying, wires);
  }

  private List<String> overloaded(Scenario variant) {
    return WireCheck.failing(variant).stream().filter(w -> !failingNow.contains(w)).toList();
  }

  private static Span within(
      Ledger ledger, double[] unmetWh, @Nullable FuelUse fuel, int from, int to) {
    double sumWh = 0.0, fuelL = 0.0;
    int unmetHours = 0, generatorHours = 0;
    for (int h = from; h < to; h++) {
      int at = h % ledger.hours();
      sumWh += unmetWh[at];
      unmetHours += Ledger.isUnmet(unmetWh[at]) ? 1 : 0;
      generatorHours += ledger.isGeneratorOn(at) ? 1 : 0;
      fuelL += fuel == null ? 0.0 : fuel.litresL()[at];
    }
    return new Span(sumWh, unmetHours, generatorHours, fuelL);
  }
}
