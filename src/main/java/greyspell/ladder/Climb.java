package greyspell.ladder;

import greyspell.ladder.Ladder.Refused;
import greyspell.ladder.Step.Kind;
import greyspell.ladder.Step.Price;
import greyspell.ladder.Trying.Result;
import greyspell.quantity.Show;
import greyspell.scenario.EquipmentReader;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Costs;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.BankLife;
import greyspell.study.Effect;
import greyspell.study.Study.Steps;
import greyspell.study.Trial;
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
  private static final double LEAST_WH = 100.0;

  private final Wanted wanted;
  private final Trying trying;
  private final Costs costs;
  private final @Nullable Double packLifeYears;
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

  private Climb(Trying trying, Wanted wanted, @Nullable Double packLifeYears, String generator) {
    this.trying = trying;
    this.wanted = wanted;
    this.packLifeYears = packLifeYears;
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
    int years = trials.home().costs().years();
    BankLife present = trials.bankLife(trials.home(), years);
    steps.step("what is free", 0.15);
    var trying = new Trying(text, library, trials, weather);
    var climb = new Climb(trying, wanted, present.newYears(), generator(trials, library, wanted));
    var start = trying.now();
    climb.free();
    Trying afterFree = trying.here();
    steps.step("what could be bought", 0.3);
    climb.paid();
    steps.step("what moves the answer", 0.7);
    List<Bar> bars = new Bars(text, library, trials, start, afterFree, climb::firstOf).all();
    steps.step("adding up the years", 0.95);
    double standbyWh =
        Tried.shortWh(start) - Tried.shortWh(trials.run(trials.home(), Set.of(Effect.STANDBY)));
    BankLife topLife = climb.rungs.isEmpty() ? present : trials.bankLife(trying.home(), years);
    return new Ladder(
        trials.years(),
        start,
        climb.rungs,
        climb.idle,
        climb.unpriced,
        new ArrayList<>(climb.refused.values()),
        climb.missingPrices(),
        climb.end,
        climb.fuelCostPerKwh(trying.now()),
        Owning.cost(start, 0.0, present),
        Owning.cost(trying.now(), climb.spentCost(), topLife),
        present,
        topLife,
        bars,
        standbyWh,
        trying.text().text());
  }

  /** The rungs alone. */
  static List<Rung> rungs(
      Trying from, Wanted wanted, @Nullable Double packLifeYears, String generator) {
    var climb = new Climb(from, wanted, packLifeYears, generator);
    climb.free();
    climb.paid();
    return climb.rungs;
  }

  private double spentCost() {
    double spentCost = 0.0;
    for (Rung rung : rungs) {
      Double cost = rung.tried().step().onceCost();
      spentCost += cost == null ? 0.0 : cost;
    }
    return spentCost;
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
      take(new Rung(best, textWith(best), 0.0, 0.0, List.of(), List.of(), null));
      left = FreeSteps.of(trying.home()).stream().filter(s -> !isTaken(s)).toList();
    }
  }

  private boolean isTaken(Step step) {
    return rungs.stream().anyMatch(r -> r.tried().step().words().equals(step.words()));
  }

  private String textWith(Tried tried) {
    return Trying.changed(trying.text(), tried.step()).text();
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
        unpriced = bestOfKinds(all.stream().filter(t -> t.costPerKwh(costs) == null).toList());
      }
      List<Tried> useful =
          all.stream().filter(t -> t.costPerKwh(costs) != null).sorted(byCost()).toList();
      double left = budgetCost() - spent;
      List<Tried> within = useful.stream().filter(t -> once(t) <= left).toList();
      end = end(k, all, useful, within, left);
      if (end.isEmpty()) {
        Tried best = within.get(0);
        spent += once(best);
        take(rung(best, within, all, left));
      }
    }
  }

  private double budgetCost() {
    Double budget = wanted.budgetCost();
    return budget == null ? Double.POSITIVE_INFINITY : budget;
  }

  private List<Tried> tried(Trying from) {
    var all = new ArrayList<Tried>();
    List<Step> steps = PaidSteps.of(from.home(), from.text(), packLifeYears, generator, done);
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
      // one line for a plane and a reason: two strings fail where one does, of other figures
      String key = result.refused().split(",", 2)[0] + result.step().changes().get(0).path();
      refused.putIfAbsent(key, new Refused(result.step(), result.refused()));
    }
  }

  /** Why to stop here; empty to go on. */
  private String end(
      int rung, List<Tried> all, List<Tried> useful, List<Tried> within, double left) {
    if (Tried.shortWh(trying.now()) < LEAST_WH) {
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
    Double fuel = fuelCostPerKwh(trying.now()), next = within.get(0).costPerKwh(costs);
    if (next != null && isFuelCheaper(trying.now(), next)) {
      return "From here fuel is cheaper: the next step ("
          + within.get(0).step().words()
          + ") costs "
          + money(next)
          + " for each kWh that it avoids, a kWh from the generator "
          + money(fuel == null ? 0.0 : fuel)
          + ".";
    }
    return rung >= wanted.mostRungs()
        ? "Not looked at beyond so many steps that cost money (--rungs " + rung + ")."
        : "";
  }

  private String money(double cost) {
    return Show.money(costs.currency(), cost);
  }

  /** Of a kWh from the engine of a home, null without one or without a fuel price. */
  private @Nullable Double fuelCostPerKwh(Trial now) {
    Double running = Tried.runningCost(costs, now);
    double wh = now.unmet().generatorWh();
    return running == null || wh < LEAST_WH ? null : Double.valueOf(running / (wh / 1000.0));
  }

  private boolean isFuelCheaper(Trial now, double nextCostPerKwh) {
    Double fuel = fuelCostPerKwh(now);
    return fuel != null && nextCostPerKwh > fuel;
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

  private Rung rung(Tried best, List<Tried> within, List<Tried> all, double left) {
    var ties = new ArrayList<String>();
    for (Tried other : within.subList(1, within.size())) {
      if (Ties.isTie(best, other, costs)) {
        ties.add(other.step().words());
      }
    }
    return new Rung(
        best,
        textWith(best),
        best.costPerKwh(costs),
        best.costPerUnmetHour(costs),
        ties,
        Turns.below(best, all, left, costs),
        Turns.upTo(best, within, left, costs));
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
        .flatMap(t -> t.prices(costs).stream())
        .filter(price -> price.cost() == null)
        .map(Price::key)
        .distinct()
        .toList();
  }

  /** What a home would have to buy first, in words; empty for nothing. */
  private String firstOf(Trying from) {
    return new Climb(from, wanted, packLifeYears, generator).first();
  }

  private String first() {
    Tried first =
        tried(trying).stream()
            .filter(t -> t.costPerKwh(costs) != null && once(t) <= budgetCost())
            .min(byCost())
            .orElse(null);
    Double cost = first == null ? null : first.costPerKwh(costs);
    if (first == null || cost == null || Tried.shortWh(trying.now()) < LEAST_WH) {
      return "";
    }
    return isFuelCheaper(trying.now(), cost) ? Bar.FUEL : first.step().words();
  }
}
