package greyspell.study;

import greyspell.balance.Ledger;
import greyspell.calendar.Winter;
import greyspell.cause.DarkSpell;
import greyspell.cause.Said;
import greyspell.cause.SaidValue.Count;
import greyspell.cause.SaidValue.Energy;
import greyspell.cause.SaidValue.Hours;
import greyspell.cause.SaidValue.Litres;
import greyspell.power.FuelUse;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.Explanation.Kind;
import greyspell.study.Explanation.Remedy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The smallest change of each kind that would have prevented a spell, and all of them: families of
 * changes are run step by step, every hour of every winter, and what is told of a change is what
 * its run says. The change is made in the scenario's own text, so that {@code run} on it confirms.
 */
final class Remedies {
  private static final int SIDE_BY_SIDE = 4;
  private static final double LEAST_TOLD_SHARE = 0.005;
  private static final Set<Kind> TOLD_WHERE_NONE =
      EnumSet.of(Kind.PANELS, Kind.STORAGE, Kind.TILT, Kind.GENERATOR);

  private static final Set<String> FREE_TOLD_WHERE_NONE =
      Set.of("remedy.snow", "remedy.move.all", "remedy.less.all");

  private final Trials trials;
  private final ScenarioEdit file;
  private final @Nullable Path library;
  private final List<PartSpells> parts;
  private final Map<Change, Outcome> known = new ConcurrentHashMap<>();
  private final List<List<Change>> families = new ArrayList<>();
  private final Outcome now;

  /** The spells of one part of the weather. */
  record PartSpells(int part, List<DarkSpell> spells) {
    PartSpells {
      spells = List.copyOf(spells);
    }
  }

  /**
   * What a change comes to.
   *
   * @param spells unserved within the dates of each, part after part
   * @param isRefused no such home may stand
   */
  private record Outcome(
      List<Spell> spells,
      double unmetWh,
      int unmetHours,
      int darkWinters,
      double generatorHours,
      double fuelL,
      boolean isRefused) {
    record Spell(double unmetWh, int unmetHours, int generatorHours) {}

    boolean isAll() {
      return !isRefused && unmetHours == 0;
    }

    boolean prevents(int spell) {
      return !isRefused && spells.get(spell).unmetHours == 0;
    }
  }

  /**
   * Runs all families.
   *
   * @param parts all parts of the weather, those without a spell too
   * @param months in which the spells are
   */
  Remedies(
      Trials trials,
      ScenarioEdit file,
      @Nullable Path library,
      List<PartSpells> parts,
      List<Integer> months) {
    this.trials = trials;
    this.file = file;
    this.library = library;
    this.parts = List.copyOf(parts);
    now = outcome(trials.home());
    var changes = new Changes(trials.home());
    changes.doing().forEach(c -> families.add(List.of(c)));
    changes.moving().forEach(c -> families.add(List.of(c)));
    var books = trials.load(0, trials.home()).books();
    double dailyWh = books.stream().mapToDouble(b -> Changes.dailyWh(b, months)).sum();
    families.add(changes.less(dailyWh));
    families.addAll(changes.lessOfOne(books, months));
    families.add(changes.tilting());
    families.add(changes.panels());
    families.add(changes.storage());
    families.add(changes.generator());
    families.removeIf(List::isEmpty);
    families.parallelStream().forEach(this::run);
  }

  /** Until all spells are prevented. */
  private void run(List<Change> family) {
    for (int from = 0; from < family.size(); from += SIDE_BY_SIDE) {
      List<Change> next = family.subList(from, Math.min(family.size(), from + SIDE_BY_SIDE));
      next.parallelStream().forEach(this::outcome);
      if (next.stream().anyMatch(c -> outcome(c).isAll())) {
        return;
      }
    }
  }

  /** Those that prevent one spell, counted over all parts; free ones first. */
  List<Remedy> of(int spell) {
    var found = new ArrayList<Remedy>();
    for (List<Change> family : families) {
      Change smallest = smallest(family, spell);
      if (smallest != null) {
        found.add(told(smallest, spell));
      } else if (isToldWhereNone(family, spell)) {
        none(family, spell, found);
      }
    }
    return sorted(found);
  }

  /** Of a single spell also what costs nothing; of all of them {@link #free} tells it. */
  private static boolean isToldWhereNone(List<Change> family, int spell) {
    String key = family.get(0).said().key();
    return TOLD_WHERE_NONE.contains(family.get(0).kind())
        || (spell >= 0 && FREE_TOLD_WHERE_NONE.contains(key));
  }

  /** Those that prevent all spells; where neither panels nor storage do alone, a pair that does. */
  List<Remedy> all() {
    var found = new ArrayList<>(of(-1));
    boolean isFound =
        found.stream()
            .anyMatch(r -> r.isFound() && (r.kind() == Kind.PANELS || r.kind() == Kind.STORAGE));
    if (!isFound && now.unmetHours > 0) {
      Change pair = pair();
      if (pair != null) {
        found.add(told(pair, -1));
      }
    }
    return sorted(found);
  }

  /** What costs nothing and helps, whether or not it is enough; most saved first. */
  List<Remedy> free() {
    var found = new ArrayList<Remedy>();
    for (List<Change> family : families) {
      Change first = family.get(0);
      Outcome after = outcome(first);
      boolean helps = now.unmetWh - after.unmetWh > LEAST_TOLD_SHARE * now.unmetWh;
      if (first.isFree() && !after.isRefused && helps && now.unmetWh > 0.0) {
        found.add(told(first, -1));
      }
    }
    found.sort(Comparator.comparingDouble(Remedy::afterUnmetWh));
    return List.copyOf(found);
  }

  private @Nullable Change smallest(List<Change> family, int spell) {
    for (Change change : family) {
      Outcome after = known.get(change);
      if (after != null && (spell < 0 ? after.isAll() : after.prevents(spell))) {
        return change;
      }
    }
    return null;
  }

  /** The best of a kind that is not enough. */
  private void none(List<Change> family, int spell, List<Remedy> found) {
    Change best = null;
    for (Change change : family) {
      Outcome after = known.get(change);
      boolean isBetter =
          after != null
              && !after.isRefused
              && (best == null || unmetWh(after, spell) < unmetWh(outcome(best), spell));
      best = isBetter ? change : best;
    }
    if (best != null && unmetWh(now, spell) > 0.0) {
      found.add(told(best, spell));
    }
  }

  private static boolean isLessOfAll(Change change) {
    return change.said().key().equals("remedy.less.all");
  }

  private static double unmetWh(Outcome outcome, int spell) {
    return spell < 0 ? outcome.unmetWh : outcome.spells.get(spell).unmetWh;
  }

  private static int unmetHours(Outcome outcome, int spell) {
    return spell < 0 ? outcome.unmetHours : outcome.spells.get(spell).unmetHours;
  }

  private static List<Remedy> sorted(List<Remedy> found) {
    found.sort(
        Comparator.comparing((Remedy r) -> !r.isFound())
            .thenComparing(r -> !r.isFree())
            .thenComparing(Remedy::kind));
    return List.copyOf(found);
  }

  /** Fewest panels at which some bank is enough, and the smallest such bank. */
  private @Nullable Change pair() {
    List<Change> panels = family(Kind.PANELS), storage = family(Kind.STORAGE);
    if (panels.isEmpty() || storage.isEmpty()) {
      return null;
    }
    Change largest = storage.get(storage.size() - 1);
    for (Change more : panels) {
      if (outcome(together(more, largest)).isAll()) {
        int low = -1, high = storage.size() - 1;
        while (high - low > 1) {
          int middle = (low + high) / 2;
          if (outcome(together(more, storage.get(middle))).isAll()) {
            high = middle;
          } else {
            low = middle;
          }
        }
        return together(more, storage.get(high));
      }
    }
    return null;
  }

  private List<Change> family(Kind kind) {
    return families.stream().filter(f -> f.get(0).kind() == kind).findFirst().orElse(List.of());
  }

  private static Change together(Change panels, Change storage) {
    Said said =
        Said.of(
            "remedy.pair",
            panels.said().values().get(0),
            panels.said().values().get(1),
            storage.said().values().get(0),
            storage.said().values().get(1));
    return panels.and(storage, said);
  }

  private Remedy told(Change change, int spell) {
    Outcome after = outcome(change);
    boolean isFound = unmetHours(after, spell) == 0;
    return new Remedy(
        change.kind(),
        isFound ? change.said() : notEnough(change, spell),
        effect(change, after, spell, isFound),
        change.edits(),
        isFound,
        change.isFree(),
        spell < 0 ? after.unmetWh / trials.years() : unmetWh(after, spell),
        spell < 0 ? (double) after.unmetHours / trials.years() : unmetHours(after, spell),
        after.darkWinters);
  }

  /** How far was looked, where that is more than the best that was found. */
  private Said notEnough(Change best, int spell) {
    if (spell >= 0 && isLessOfAll(best)) {
      return Said.of("remedy.none.less", best.said().values().get(0));
    }
    List<Change> family = family(best.kind());
    Said last = family.isEmpty() ? best.said() : family.get(family.size() - 1).said();
    return switch (best.kind()) {
      case PANELS -> Said.of("remedy.none.panels", last.values().get(1));
      case STORAGE -> Said.of("remedy.none.storage", last.values().get(2));
      case TILT -> new Said(best.said().key() + ".best", best.said().values());
      default -> best.said();
    };
  }

  private Said effect(Change change, Outcome after, int spell, boolean isFound) {
    if (change.kind() == Kind.GENERATOR && !after.isRefused) {
      double years = spell < 0 ? trials.years() : 1.0;
      double hours = spell < 0 ? after.generatorHours : after.spells.get(spell).generatorHours;
      double fuelL = after.generatorHours > 0.0 ? after.fuelL * hours / after.generatorHours : 0.0;
      String key = isFound ? "prevents" : "leaves";
      String of = spell < 0 ? "all" : "spell";
      var hoursYear = new Hours(hours / years);
      var litres = new Litres(fuelL / years);
      return isFound
          ? Said.of("effect.generator." + key + "." + of, hoursYear, litres)
          : Said.of(
              "effect.generator." + key + "." + of,
              hoursYear,
              litres,
              new Energy(unmetWh(after, spell) / years),
              new Energy(unmetWh(now, spell) / years));
    }
    if (isFound) {
      return Said.of(spell < 0 ? "effect.prevents.all" : "effect.prevents.spell");
    }
    double years = spell < 0 ? trials.years() : 1.0;
    return Said.of(
        spell < 0 ? "effect.leaves.all" : "effect.leaves.spell",
        new Energy(unmetWh(after, spell) / years),
        new Hours(unmetHours(after, spell) / years),
        new Energy(unmetWh(now, spell) / years),
        new Hours(unmetHours(now, spell) / years),
        new Count(after.darkWinters),
        new Count(trials.winters().size()));
  }

  private Outcome outcome(Change change) {
    Outcome before = known.get(change);
    if (before == null) {
      Scenario variant = change.of(file, library);
      before =
          variant == null
              ? new Outcome(List.of(), Double.MAX_VALUE, Integer.MAX_VALUE, 0, 0.0, 0.0, true)
              : outcome(variant);
      known.put(change, before);
    }
    return before;
  }

  private Outcome outcome(Scenario variant) {
    var spells = new ArrayList<Outcome.Spell>();
    double unmetWh = 0.0, generatorHours = 0.0, fuelL = 0.0;
    int unmetHours = 0, dark = 0;
    for (PartSpells part : parts) {
      Ledger ledger = trials.brief(part.part, variant, Set.of(), null);
      for (DarkSpell spell : part.spells) {
        spells.add(within(ledger, spell.fromHour(), spell.toHour()));
      }
      Outcome.Spell all = within(ledger, 0, ledger.hours());
      unmetWh += all.unmetWh;
      unmetHours += all.unmetHours;
      generatorHours += all.generatorHours;
      FuelUse fuel = Again.fuel(variant, ledger);
      fuelL += fuel == null ? 0.0 : fuel.totalL(0, ledger.hours());
      for (Winter winter : ledger.forcing().calendar().winters(variant.site().isNorthern())) {
        boolean isDark = within(ledger, winter.fromHour(), winter.toHour()).unmetHours > 0;
        dark += winter.isWhole() && isDark ? 1 : 0;
      }
    }
    return new Outcome(spells, unmetWh, unmetHours, dark, generatorHours, fuelL, false);
  }

  private static Outcome.Spell within(Ledger ledger, int from, int to) {
    double unmetWh = 0.0;
    int unmetHours = 0, generatorHours = 0;
    for (int h = from; h < to; h++) {
      int at = h % ledger.hours();
      unmetWh += ledger.unmetWh(at);
      unmetHours += ledger.isUnmet(at) ? 1 : 0;
      generatorHours += ledger.isGeneratorOn(at) ? 1 : 0;
    }
    return new Outcome.Spell(unmetWh, unmetHours, generatorHours);
  }
}
