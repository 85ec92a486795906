package greyspell.ladder;

import greyspell.ladder.Ladder.Refused;
import greyspell.ladder.Rung.Flip;
import greyspell.ladder.Step.Kind;
import greyspell.ladder.Trying.Result;
import greyspell.quantity.Show;
import greyspell.scenario.EquipmentReader;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Costs;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.Effect;
import greyspell.study.Study.Steps;
import greyspell.study.Trials;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Climbs the ladder: first what is free, the most helpful first; then, from where that leads, again
 * and again the step that avoids a kWh for the least money. It ends where nothing helps any more,
 * the budget is spent, or a kWh from the generator's fuel is cheaper than the next step's.
 */
public final class Climb {
  private final Wanted wanted;
  private final Trying trying;
  private final Costs costs;
  private final @Nullable Double bankLifeYears;
  private final String generator;
  private final List<Rung> rungs = new ArrayList<>();
  private final List<Step> idle = new ArrayList<>();
  private final List<String> done = new ArrayList<>();
  private final Map<String, Refused> refused = new LinkedHashMap<>();
  private List<Tried> unpriced = List.of();
  private String end = "";

  /**
   * How far to climb.
   *
   * @param budgetCost money there is, null for no limit
   * @param generator a name of the equipment library, null for one that bears the greatest hour
   * @param mostRungs that cost money
   */
  public record Wanted(@Nullable Double budgetCost, @Nullable String generator, int mostRungs) {
    public static final Wanted USUAL = new Wanted(null, null, 8);
  }

  private Climb(Trying trying, Wanted wanted, @Nullable Double bankLifeYears, String generator) {
    this.trying = trying;
    this.wanted = wanted;
    this.bankLifeYears = bankLifeYears;
    this.generator = generator;
    costs = trying.home().costs();
  }

  /**
   * From a scenario as it stands.
   *
   * @param library folder of the equipment library, null to look for it
   * @param trials the home's weather
   * @param weather of a variant under another sky or horizon
   */
  public static Ladder of(
      ScenarioEdit text,
      @Nullable Path library,
      Trials trials,
      Function<Scenario, Trials> weather,
      Wanted wanted,
      Steps steps) {
    steps.step("the bank's life", 0.05);
    Owning owning = new Owning(library);
    Owning.Life present = owning.life(text, trials.home().costs().years());
    steps.step("what is free", 0.15);
    var trying = new Trying(text, library, trials, weather);
    var climb = new Climb(trying, wanted, present.years(), generator(trials, library, wanted));
    var start = trying.now();
    climb.free();
    steps.step("what could be bought", 0.3);
    climb.paid();
    steps.step("what moves the answer", 0.7);
    List<Bar> bars =
        new Bars(text, library, trials, weather, present.years(), climb.generator).all();
    steps.step("adding up the years", 0.95);
    double standbyWh =
        Tried.shortWh(start) - Tried.shortWh(trials.run(trials.home(), Set.of(Effect.STANDBY)));
    String top = trying.text().text();
    Owning.Life topLife =
        climb.rungs.isEmpty() ? present : owning.life(trying.text(), climb.costs.years());
    double onceCost = 0.0;
    for (Rung rung : climb.rungs) {
      Double cost = rung.tried().step().onceCost();
      onceCost += cost == null ? 0.0 : cost;
    }
    return new Ladder(
        start,
        climb.rungs,
        climb.idle,
        climb.unpriced,
        new ArrayList<>(climb.refused.values()),
        climb.missingPrices(),
        climb.end,
        climb.fuelCostPerKwh(),
        Owning.cost(start, 0.0, present),
        Owning.cost(trying.now(), onceCost, topLife),
        present.years(),
        bars,
        standbyWh,
        top);
  }

  /** One that bears the greatest hour of the house. */
  static String generator(Trials trials, @Nullable Path library, Wanted wanted) {
    String named = wanted.generator();
    if (named != null) {
      return named;
    }
    double mostW = 0.0;
    for (double wh : trials.forcing(0, trials.home(), Set.of()).acAskedWh()) {
      mostW = Math.max(mostW, wh);
    }
    return EquipmentReader.generatorFor(Path.of(trials.home().file()), library, mostW);
  }

  private void free() {
    List<Step> left = FreeSteps.of(trying.home());
    while (!left.isEmpty()) {
      Tried best = null;
      for (Result result : trying.all(left)) {
        note(result);
        Tried tried = result.tried();
        if (tried != null
            && !tried.isIdle()
            && (best == null || tried.avoidedWh() > best.avoidedWh())) {
          best = tried;
        }
      }
      if (best == null) {
        idle.addAll(left);
        return;
      }
      take(new Rung(best, 0.0, 0.0, List.of(), List.of()));
      left = FreeSteps.of(trying.home()).stream().filter(s -> !isTaken(s)).toList();
    }
  }

  private boolean isTaken(Step step) {
    return rungs.stream().anyMatch(r -> r.tried().step().words().equals(step.words()));
  }

  private void take(Rung rung) {
    rungs.add(rung);
    trying.take(rung.tried());
    if (rung.tried().step().kind() == Kind.MEASURE) {
      done.add(rung.tried().step().words());
    }
  }

  private void paid() {
    double spent = 0.0;
    for (int k = 0; end.isEmpty(); k++) {
      List<Tried> all = tried(trying);
      if (k == 0) {
        unpriced = bestOfKinds(all.stream().filter(t -> t.step().onceCost() == null).toList());
      }
      List<Tried> useful =
          all.stream().filter(t -> t.costPerKwh(costs) != null).sorted(byCost()).toList();
      Double budget = wanted.budgetCost();
      double left = budget == null ? Double.POSITIVE_INFINITY : budget - spent;
      List<Tried> within = useful.stream().filter(t -> once(t) <= left).toList();
      end = end(k, all, useful, within, left);
      if (end.isEmpty()) {
        Tried best = within.get(0);
        spent += once(best);
        take(rung(best, within, all));
      }
    }
  }

  private List<Tried> tried(Trying from) {
    var all = new ArrayList<Tried>();
    List<Step> steps = PaidSteps.of(from.home(), from.text(), bankLifeYears, generator, done);
    for (Result result : from.all(steps)) {
      note(result);
      Tried tried = result.tried();
      if (tried != null && !tried.isIdle()) {
        all.add(tried);
      }
    }
    return all;
  }

  private void note(Result result) {
    if (!result.refused().isEmpty()) {
      // one line for a plane and a reason: two strings fail where one does
      String key = result.refused() + result.step().changes().get(0).path();
      refused.putIfAbsent(key, new Refused(result.step(), result.refused()));
    }
  }

  /** Why to stop here; empty to go on. */
  private String end(
      int rung, List<Tried> all, List<Tried> useful, List<Tried> within, double left) {
    if (Tried.shortWh(trying.now()) < 100.0) {
      return "Nothing goes unserved and no engine runs in this weather: there is nothing left to avoid.";
    }
    if (useful.isEmpty()) {
      return all.isEmpty()
          ? "No step of this list helps any more."
          : "What would help has no price: state "
              + String.join(", ", missingPrices())
              + " to go on.";
    }
    if (within.isEmpty()) {
      return "What is left of the budget, " + money(left) + ", buys none of the steps that help.";
    }
    Double fuel = fuelCostPerKwh(), next = within.get(0).costPerKwh(costs);
    if (fuel != null && next != null && next > fuel) {
      return "From here fuel is cheaper: the next step ("
          + within.get(0).step().words()
          + ") costs "
          + money(next)
          + " for each kWh that it avoids, a kWh from the generator "
          + money(fuel)
          + ".";
    }
    return rung >= wanted.mostRungs() ? "Not looked at beyond " + rung + " rungs." : "";
  }

  private String money(double cost) {
    return Show.money(costs.currency(), cost);
  }

  /** Of a kWh from the engine as the home now stands, null without one or without a fuel price. */
  private @Nullable Double fuelCostPerKwh() {
    Double running = Tried.runningCost(costs, trying.now());
    double wh = trying.now().unmet().generatorWh();
    return running == null || wh < 100.0 ? null : Double.valueOf(running / (wh / 1000.0));
  }

  private Comparator<Tried> byCost() {
    return Comparator.comparingDouble(
        t -> {
          Double cost = t.costPerKwh(costs);
          return cost == null ? Double.POSITIVE_INFINITY : cost;
        });
  }

  private static double once(Tried tried) {
    Double cost = tried.step().onceCost();
    return cost == null ? Double.POSITIVE_INFINITY : cost;
  }

  private Rung rung(Tried best, List<Tried> within, List<Tried> all) {
    var ties = new ArrayList<String>();
    for (Tried other : within.subList(1, within.size())) {
      if (Ties.isTie(best, other, costs)) {
        ties.add(other.step().words());
      }
    }
    Double cost = best.costPerKwh(costs);
    var flips = new ArrayList<Flip>();
    for (Tried other : bestOfKinds(all)) {
      if (other.step().kind() != best.step().kind() && cost != null) {
        Double once = other.step().onceCost();
        flips.add(
            new Flip(
                other,
                other.evenPieceCost(cost, costs),
                once == null ? null : Double.valueOf(once / other.step().pieces())));
      }
    }
    return new Rung(best, cost, best.costPerUnmetHour(costs), ties, flips);
  }

  /** Of every kind the step that avoids most for one piece, or for the least money. */
  private List<Tried> bestOfKinds(List<Tried> all) {
    var best = new EnumMap<Kind, Tried>(Kind.class);
    for (Tried tried : all) {
      best.merge(tried.step().kind(), tried, (a, b) -> value(b) > value(a) ? b : a);
    }
    return List.copyOf(best.values());
  }

  private double value(Tried tried) {
    Double cost = tried.costPerKwh(costs);
    return cost == null ? tried.avoidedWh() / tried.step().pieces() : 1e12 / (cost + 1e-9);
  }

  private List<String> missingPrices() {
    return unpriced.stream()
        .flatMap(t -> t.step().priceKeys().stream())
        .filter(key -> !isStated(key))
        .distinct()
        .toList();
  }

  private boolean isStated(String key) {
    return switch (key) {
      case "costs.per_module" -> costs.perModuleCost() != null;
      case "costs.per_controller" -> costs.perControllerCost() != null;
      case "costs.per_tilted_module" -> costs.perTiltedModuleCost() != null;
      case "costs.per_pack" -> costs.perPackCost() != null;
      case "costs.generator" -> costs.generatorCost() != null;
      default -> costs.fuelPerLitreCost() != null;
    };
  }

  /** The first rung that costs money from where a home stands; empty if there is none. */
  static String first(
      Trying trying, @Nullable Double bankLifeYears, String generator, Wanted wanted) {
    var climb = new Climb(trying, wanted, bankLifeYears, generator);
    return climb.tried(trying).stream()
        .filter(t -> t.costPerKwh(climb.costs) != null)
        .min(climb.byCost())
        .map(t -> t.step().words())
        .orElse("");
  }
}
