package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerKind;
import greyspell.array.SnowRule;
import greyspell.calendar.Monthly;
import greyspell.electrical.ConductorRun;
import greyspell.load.LoadPlan;
import greyspell.scenario.Scenario;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How much each effect matters in one home: the home is run without it, all else the same.
 *
 * @param home its name
 * @param whole with everything
 * @param left without one effect each, what changes most first; only effects that the home has
 */
public record Effects(String home, Unmet whole, List<LeftOut> left) {
  private static final double LEAST_WH = 100.0;
  private static final double LEAST_H = 0.5;

  public Effects {
    left = List.copyOf(left);
  }

  /**
   * The run without one effect.
   *
   * @param unmet what goes unserved then
   */
  public record LeftOut(Effect effect, Unmet unmet) {}

  /** Runs the home once with everything and once without each effect. */
  public static Effects of(Scenario scenario) {
    Trials trials = Trials.of(scenario, (what, done) -> {});
    Unmet whole = trials.run(scenario).unmet();
    var left = new ArrayList<LeftOut>();
    for (Effect effect : present(scenario)) {
      left.add(new LeftOut(effect, trials.run(scenario, EnumSet.of(effect)).unmet()));
    }
    left.sort(
        Comparator.comparingDouble((LeftOut l) -> change(whole, l.unmet))
            .reversed()
            .thenComparing(LeftOut::effect));
    return new Effects(scenario.name(), whole, left);
  }

  /** How far what is not served, let go or given by the generator moves, a year. */
  private static double change(Unmet whole, Unmet without) {
    return Math.abs(without.wh() - whole.wh())
        + Math.abs(without.letGoWh() - whole.letGoWh())
        + Math.abs(without.generatorWh() - whole.generatorWh());
  }

  /** Whether an effect changed less than 0.1 kWh and half an hour a year. */
  public boolean isIdle(LeftOut l) {
    return change(whole, l.unmet) < LEAST_WH
        && Math.abs(l.unmet.unmetHours() - whole.unmetHours()) < LEAST_H;
  }

  /** Effects that a home has: leaving out the others changes nothing. */
  public static Set<Effect> present(Scenario s) {
    var present = EnumSet.allOf(Effect.class);
    boolean isHeld = s.controller().kind() == ControllerKind.PWM;
    List<ArraySpec> arrays = s.arrays();
    Monthly none = Monthly.constant(0.0);
    drop(present, Effect.SHADE, arrays.stream().allMatch(a -> a.shadeFraction().equals(none)));
    drop(present, Effect.SOILING, arrays.stream().allMatch(a -> a.soilingFraction().equals(none)));
    drop(
        present,
        Effect.BUS_WIRING,
        s.electrical().conductors().stream()
            .allMatch(w -> w.run().kind() == ConductorRun.Kind.ARRAY_TO_CONTROLLER));
    drop(present, Effect.MISMATCH, arrays.stream().allMatch(a -> a.mismatchFraction() == 0.0));
    drop(present, Effect.MODULE_AGE, arrays.stream().allMatch(a -> a.ageingFraction() == 0.0));
    drop(present, Effect.SNOW, arrays.stream().noneMatch(a -> a.snow() != SnowRule.NONE));
    drop(present, Effect.HELD_AT_BANK_VOLTAGE, !isHeld);
    drop(present, Effect.TRACKING_WINDOW, isHeld);
    drop(present, Effect.SEARCH, s.inverter().search() == null);
    drop(present, Effect.ABSORPTION, !s.bank().isDetailed());
    drop(present, Effect.VOLTAGE, !s.bank().isDetailed());
    drop(present, Effect.TWO_TANKS, s.bank().tanks() == null);
    drop(present, Effect.BANK_HEALTH, s.bank().healthShare() == 1.0);
    drop(present, Effect.GENERATOR, s.generator() == null);
    drop(present, Effect.OTHER_SOURCE, s.otherSource() == null);
    LoadPlan plan = s.load();
    drop(present, Effect.LOAD_RULES, plan.policy().isIdle());
    drop(
        present,
        Effect.LOAD_VARIATION,
        plan.dailyVariationFraction() == 0.0 && plan.hourlyVariationFraction() == 0.0);
    drop(present, Effect.GROWTH, plan.growthFraction() == 0.0);
    return present;
  }

  private static void drop(Set<Effect> present, Effect effect, boolean isMissing) {
    if (isMissing) {
      present.remove(effect);
    }
  }
}
