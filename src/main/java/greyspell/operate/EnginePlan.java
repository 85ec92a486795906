package greyspell.operate;

import greyspell.power.GeneratorRules;
import greyspell.scenario.Scenario;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * When to start the generator, and until when it should run, so that the bank seldom has no more to
 * give: every pair of a charge to start below and one to stop at is run through the stretches, each
 * in the generator's own hours.
 *
 * <pre>
 * taken   of those with which the bank gives out in at most one stretch of ten, those that burn
 *         within a twentieth of the least fuel, of these the one with the fewest starts
 *         if there are none: the one with which the fewest stretches go dark
 * </pre>
 *
 * @param startBelowShare of the usable window
 * @param stopAboveShare of the usable window
 * @param with what comes of it
 */
public record EnginePlan(double startBelowShare, double stopAboveShare, Outlook with) {
  /** The bank may give out in no more of the stretches than this. */
  static final double FEW = 0.1;

  private static final double[] START = {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9};
  private static final double[] STOP = {0.2, 0.35, 0.5, 0.65, 0.8, 0.95};
  private static final double NEAR_FUEL = 1.05;

  /** Whether it keeps the house going in nine of ten stretches. */
  public boolean isEnough() {
    return with.reachedShare() <= FEW;
  }

  /** The best of the plans. */
  static EnginePlan of(LookAhead look, Scenario home, Scenario.Generator generator, double nowWh) {
    List<EnginePlan> plans =
        pairs().parallelStream().map(p -> plan(look, home, generator, nowWh, p)).toList();
    double leastL =
        plans.stream()
            .filter(EnginePlan::isEnough)
            .mapToDouble(p -> p.with.engine().fuelL())
            .min()
            .orElse(Double.NaN);
    return plans.stream()
        .filter(p -> p.isEnough() && p.with.engine().fuelL() <= leastL * NEAR_FUEL)
        .min(Comparator.comparingDouble(p -> p.with.engine().startsPerDay()))
        .orElseGet(() -> fewestDark(plans));
  }

  private static EnginePlan fewestDark(List<EnginePlan> plans) {
    EnginePlan best = null;
    for (EnginePlan plan : plans) {
      best = best == null || plan.isBetterThan(best) ? plan : best;
    }
    if (best == null) {
      throw new IllegalStateException("there is no pair of charges to try");
    }
    return best;
  }

  private boolean isBetterThan(EnginePlan other) {
    return with.reached() != other.with.reached()
        ? with.reached() < other.with.reached()
        : with.unmetWh() < other.with.unmetWh();
  }

  private static List<double[]> pairs() {
    var pairs = new ArrayList<double[]>();
    for (double start : START) {
      for (double stop : STOP) {
        if (start < stop) {
          pairs.add(new double[] {start, stop});
        }
      }
    }
    return pairs;
  }

  private static EnginePlan plan(
      LookAhead look, Scenario home, Scenario.Generator generator, double nowWh, double[] pair) {
    GeneratorRules r = generator.rules();
    var rules =
        new GeneratorRules(
            r.policy(), pair[0], pair[1], r.minimumRunH(), r.permitted(), r.home(), r.charger());
    Scenario variant = home.withGenerator(new Scenario.Generator(generator.spec(), rules));
    return new EnginePlan(pair[0], pair[1], look.of(variant, nowWh, true));
  }
}
