package greyspell.study;

import greyspell.cause.Said;
import greyspell.cause.SaidValue.Count;
import greyspell.cause.SaidValue.Energy;
import greyspell.cause.SaidValue.Hours;
import greyspell.cause.SaidValue.Litres;
import greyspell.scenario.Scenario.Costs;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.ChangeRuns.Outcome;
import greyspell.study.ChangeRuns.PartSpells;
import greyspell.study.ChangeRuns.Span;
import greyspell.study.Explanation.Cost;
import greyspell.study.Explanation.Kind;
import greyspell.study.Explanation.Remedy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The smallest change of each kind that would have prevented a spell, and all of them: families of
 * changes are run step by step, every hour of every winter, and what is told of a change is what
 * its run says. The change is made in the scenario's own text, so that {@code run} on it confirms.
 */
final class Remedies {
  private static final int ALL = -1;
  private static final int SIDE_BY_SIDE = 4;
  private static final double LEAST_TOLD_SHARE = 0.005;
  private static final Set<Kind> TOLD_WHERE_NONE =
      EnumSet.of(Kind.PANELS, Kind.STORAGE, Kind.TILT, Kind.GENERATOR);

  private static final Set<String> FREE_TOLD_WHERE_NONE =
      Set.of("remedy.snow", "remedy.move.all", "remedy.less.all");

  private final Trials trials;
  private final ChangeRuns runs;
  private final List<List<Change>> families = new ArrayList<>();
  private final Outcome now;

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
    runs = new ChangeRuns(trials, file, library, parts);
    now = runs.now();
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
    families.add(GeneratorChanges.of(trials.home(), file));
    families.removeIf(List::isEmpty);
    if (now.all().unmetHours() > 0) {
      families.parallelStream().forEach(this::run);
    }
  }

  /** Until all spells are prevented. */
  private void run(List<Change> family) {
    for (List<Change> next : steps(family)) {
      next.parallelStream().forEach(runs::outcome);
      if (next.stream().anyMatch(c -> runs.outcome(c).prevents(ALL))) {
        return;
      }
    }
  }

  /** What is run side by side: some sizes; of a generator all levels of one way to run it. */
  private static List<List<Change>> steps(List<Change> family) {
    boolean isGenerator = family.get(0).kind() == Kind.GENERATOR;
    var steps = new ArrayList<List<Change>>();
    int from = 0;
    for (int to = 1; to <= family.size(); to++) {
      boolean isEnd =
          to == family.size()
              || (isGenerator
                  ? !family.get(to).said().key().equals(family.get(from).said().key())
                  : to - from == SIDE_BY_SIDE);
      if (isEnd) {
        steps.add(family.subList(from, to));
        from = to;
      }
    }
    return steps;
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
    var found = new ArrayList<>(of(ALL));
    boolean isFound =
        found.stream()
            .anyMatch(r -> r.isFound() && (r.kind() == Kind.PANELS || r.kind() == Kind.STORAGE));
    if (!isFound && now.all().unmetHours() > 0) {
      Change pair = pair();
      if (pair != null) {
        found.add(told(pair, ALL));
      }
    }
    return sorted(found);
  }

  /** What costs nothing and helps, whether or not it is enough; most saved first. */
  List<Remedy> free() {
    var found = new ArrayList<Remedy>();
    for (List<Change> family : families) {
      Change first = family.get(0);
      Outcome after = runs.outcome(first);
      boolean helps =
          now.all().unmetWh() - after.all().unmetWh() > LEAST_TOLD_SHARE * now.all().unmetWh();
      if (first.isFree() && !after.isRefused() && helps && now.all().unmetWh() > 0.0) {
        found.add(told(first, ALL));
      }
    }
    found.sort(Comparator.comparingDouble(Remedy::afterUnmetWh));
    return List.copyOf(found);
  }

  /**
   * The first in its family; of a generator, in the first way to run it that prevents, the levels
   * at which it runs fewest hours, of these the ones with the least fuel.
   */
  private @Nullable Change smallest(List<Change> family, int spell) {
    for (List<Change> step : steps(family)) {
      Change least = null;
      for (Change change : step) {
        Outcome after = runs.known(change);
        boolean prevents = after != null && after.prevents(spell);
        if (prevents && change.kind() != Kind.GENERATOR) {
          return change;
        }
        if (prevents
            && (least == null
                || runs.outcome(change)
                    .within(spell)
                    .runsLessThan(runs.outcome(least).within(spell)))) {
          least = change;
        }
      }
      if (least != null) {
        return least;
      }
    }
    return null;
  }

  /** The best of a kind that is not enough. */
  private void none(List<Change> family, int spell, List<Remedy> found) {
    Change best = null;
    for (Change change : family) {
      Outcome after = runs.known(change);
      boolean isBetter =
          after != null
              && !after.isRefused()
              && (best == null
                  || after.within(spell).unmetWh() < runs.outcome(best).within(spell).unmetWh());
      best = isBetter ? change : best;
    }
    if (best != null && now.within(spell).unmetWh() > 0.0) {
      found.add(told(best, spell));
    }
  }

  private static boolean isLessOfAll(Change change) {
    return change.said().key().equals("remedy.less.all");
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
      if (runs.outcome(together(more, largest)).prevents(ALL)) {
        int low = -1, high = storage.size() - 1;
        while (high - low > 1) {
          int middle = (low + high) / 2;
          if (runs.outcome(together(more, storage.get(middle))).prevents(ALL)) {
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
    Outcome after = runs.outcome(change);
    boolean isFound = after.within(spell).unmetHours() == 0;
    return new Remedy(
        change.kind(),
        isFound ? change.said() : notEnough(change, spell),
        effect(change, after, spell, isFound),
        cost(after),
        after.wires(),
        change.edits(),
        isFound,
        change.isFree(),
        after.within(spell).unmetWh() / (spell < 0 ? trials.years() : 1.0),
        after.within(spell).unmetHours() / (spell < 0 ? trials.years() : 1.0),
        after.darkWinters());
  }

  private Cost cost(Outcome after) {
    BuyingCost buying = after.buying();
    return buying == null
        ? new Cost(0.0, List.of(), null)
        : new Cost(buying.sumCost(), buying.unpriced(), moreYearlyCost(after));
  }

  /** Fuel and wear beyond those of the home as it stands; null where fuel has no price. */
  private @Nullable Double moreYearlyCost(Outcome after) {
    Costs costs = trials.home().costs();
    Double fuel = costs.fuelPerLitreCost(), hour = costs.perGeneratorHourCost();
    double moreL = after.all().fuelL() - now.all().fuelL();
    double moreHours = after.all().generatorHours() - now.all().generatorHours();
    if (moreL == 0.0 && moreHours == 0.0) {
      return 0.0;
    }
    return fuel == null
        ? null
        : Double.valueOf((moreL * fuel + (hour == null ? 0.0 : moreHours * hour)) / trials.years());
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
    if (change.kind() == Kind.GENERATOR && !after.isRefused()) {
      double years = spell < 0 ? trials.years() : 1.0;
      Span span = after.within(spell);
      if (isFound && span.generatorHours() == 0) {
        return Said.of("effect.generator.before.spell");
      }
      String key = isFound ? "prevents" : "leaves";
      String of = spell < 0 ? "all" : "spell";
      var hoursYear = new Hours(span.generatorHours() / years);
      var litres = new Litres(span.fuelL() / years);
      return isFound
          ? Said.of("effect.generator." + key + "." + of, hoursYear, litres)
          : Said.of(
              "effect.generator." + key + "." + of,
              hoursYear,
              litres,
              new Energy(span.unmetWh() / years),
              new Energy(now.within(spell).unmetWh() / years));
    }
    if (isFound) {
      return Said.of(spell < 0 ? "effect.prevents.all" : "effect.prevents.spell");
    }
    double years = spell < 0 ? trials.years() : 1.0;
    return Said.of(
        spell < 0 ? "effect.leaves.all" : "effect.leaves.spell",
        new Energy(after.within(spell).unmetWh() / years),
        new Hours(after.within(spell).unmetHours() / years),
        new Energy(now.within(spell).unmetWh() / years),
        new Hours(now.within(spell).unmetHours() / years),
        new Count(after.darkWinters()),
        new Count(trials.winters().size()));
  }
}
