package greyspell.operate;

import greyspell.load.ApplianceSpec;
import greyspell.load.Priority;
import greyspell.operate.RuleCard.Price;
import greyspell.operate.RuleCard.Told;
import greyspell.scenario.Scenario;
import greyspell.storage.BankSpec;
import greyspell.study.Trials;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Looks for few and simple rules, one after another: of all thresholds, with and without a look at
 * tomorrow's sky, and of all things that could stay off, the one that avoids most outage for what
 * it asks to give up. Nothing that must run, nothing medical and nothing that warms or cools stays
 * off. Found on every second winter, from the first; told with what they do on the others.
 *
 * <pre>
 * worth = kWh of outage avoided - a quarter of the kWh given up        a winter
 * kept    if it avoids at least a twentieth of the outage, and gives up at most three kWh for each
 * </pre>
 *
 * A quarter, a twentieth and three are own choices. Tomorrow's sky is taken as known at sunset,
 * which a forecast is not quite.
 */
public final class RuleSearch {
  private static final double STEP = 0.1, FINE_STEP = 0.05, WIDE = 0.6;
  private static final double COMFORT = 0.25, LEAST_SHARE = 0.05, DEAREST = 3.0;
  private static final int MOST_RULES = 3, MOST_ALONE = 5;

  private RuleSearch() {}

  /** Needs at least two whole winters: one to find the rules on, one to try them. */
  public static RuleCard of(Trials trials) {
    Scenario home = trials.home();
    var play = new RulePlay(trials);
    List<Rule> candidates = candidates(home, play);
    var taken = new ArrayList<Rule>();
    var told = new ArrayList<Told>();
    Price now = play.prices(List.of()).get(0);
    while (taken.size() < MOST_RULES) {
      Told best = best(play, taken, candidates, now);
      if (best == null) {
        break;
      }
      taken.add(best.rule());
      told.add(best);
      now = best.learnt();
    }
    List<String> names = trials.winters();
    return new RuleCard(
        home,
        told,
        every(names, 0),
        every(names, 1),
        home.load().appliances().stream().anyMatch(ApplianceSpec::isMedical));
  }

  private static List<String> every(List<String> names, int from) {
    return IntStream.range(0, names.size())
        .filter(w -> w % 2 == from)
        .mapToObj(names::get)
        .toList();
  }

  /** Round figures of the monitor between the reserve and a full bank. */
  static List<Double> thresholds(BankSpec bank) {
    double reserve = bank.monitorShare(0.0), full = bank.monitorShare(bank.usableWh());
    double step = full - reserve > WIDE ? STEP : FINE_STEP;
    var below = new ArrayList<Double>();
    for (int k = 1; k * step < full - step / 2; k++) {
      if (k * step > reserve + step / 2) {
        below.add(k * step);
      }
    }
    return below;
  }

  private static List<Rule> candidates(Scenario home, RulePlay play) {
    var canWait = new ArrayList<Integer>();
    var rest = new ArrayList<Integer>();
    List<ApplianceSpec> appliances = home.load().appliances();
    for (int a = 0; a < appliances.size(); a++) {
      ApplianceSpec appliance = appliances.get(a);
      if (appliance.isMedical()
          || appliance.isWeatherDriven()
          || WarmOrCold.isIn(appliance.name())) {
        // what warms or cools may keep pipes from freezing or food from spoiling
        continue;
      }
      if (appliance.priority() == Priority.CAN_WAIT) {
        canWait.add(a);
      } else if (appliance.priority() == Priority.SHOULD_RUN) {
        rest.add(a);
      }
    }
    var sets = new ArrayList<List<Integer>>();
    if (!canWait.isEmpty()) {
      sets.add(canWait);
    }
    var alone = new ArrayList<Integer>(canWait);
    alone.addAll(rest);
    alone.sort((a, b) -> Double.compare(play.yearlyWh(b), play.yearlyWh(a)));
    alone.stream()
        .limit(MOST_ALONE)
        .map(List::of)
        .filter(s -> !sets.contains(s))
        .forEach(sets::add);
    var rules = new ArrayList<Rule>();
    for (List<Integer> set : sets) {
      String names = String.join(", ", set.stream().map(a -> appliances.get(a).name()).toList());
      for (double below : thresholds(home.bank())) {
        rules.add(new Rule(below, false, set, names));
        rules.add(new Rule(below, true, set, names));
      }
    }
    return rules;
  }

  private static @Nullable Told best(
      RulePlay play, List<Rule> taken, List<Rule> candidates, Price now) {
    List<Told> tried =
        candidates.parallelStream()
            .map(rule -> told(play, taken, rule))
            .flatMap(List::stream)
            .toList();
    Told best = null;
    double most = 0.0;
    for (Told told : tried) {
      Price price = told.learnt();
      double avoidedWh = now.unmetWithWh() - price.unmetWithWh();
      double givenUpWh = price.givenUpWh() - now.givenUpWh();
      double worthWh = avoidedWh - COMFORT * givenUpWh;
      if (avoidedWh >= LEAST_SHARE * now.unmetWh()
          && givenUpWh <= DEAREST * avoidedWh
          && price.withUnmetHours() <= now.withUnmetHours()
          && worthWh > most) {
        best = told;
        most = worthWh;
      }
    }
    return best;
  }

  private static List<Told> told(RulePlay play, List<Rule> taken, Rule rule) {
    var all = new ArrayList<>(taken);
    all.add(rule);
    List<Price> prices = play.prices(all);
    return prices.isEmpty() ? List.of() : List.of(new Told(rule, prices.get(0), prices.get(1)));
  }
}
