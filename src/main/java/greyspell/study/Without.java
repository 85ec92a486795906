package greyspell.study;

import greyspell.array.ArrayLoss;
import greyspell.array.ControllerHours;
import greyspell.array.ControllerKind;
import greyspell.array.SolarHours;
import greyspell.calendar.HourCalendar;
import greyspell.load.LoadPlan;
import greyspell.load.LoadPolicy;
import greyspell.sky.UsualSky;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a run leaves out. A loss of the array is left out by giving back at the controller's input
 * what was booked for it, so that losses which follow it are not worked out anew: they are small
 * beside one another, but for snow ({@link SolarHours#without}).
 */
record Without(Set<Effect> effects) {
  static final Without NOTHING = new Without(Set.of());

  boolean has(Effect effect) {
    return effects.contains(effect);
  }

  /** Whether what is lost between controllers and bank is left out. */
  boolean isBusWiringOut() {
    return has(Effect.CONTROLLER_LOSS) || has(Effect.BUS_WIRING);
  }

  /** Whether nothing is left on the way to the bus that goes by the bank's voltage. */
  boolean isVoltageOut(ControllerKind kind) {
    return kind != ControllerKind.PWM && isBusWiringOut();
  }

  /** Those that act between the light and the bus, which alone panels heed. */
  Set<Effect> ofPanels() {
    return effects.stream()
        .filter(
            e ->
                e.arrayLoss() != null
                    || e == Effect.CONTROLLER_LIMIT
                    || e == Effect.CONTROLLER_LOSS)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Losses of the array that are left out. */
  EnumSet<ArrayLoss> arrayLosses() {
    var losses = EnumSet.noneOf(ArrayLoss.class);
    for (Effect effect : effects) {
      if (effect.arrayLoss() != null) {
        losses.add(effect.arrayLoss());
      }
    }
    return losses;
  }

  /** Gives back what the controllers clip, and what they lose, in place. */
  void giveBack(ControllerHours controller) {
    double[] clippedWh = controller.clippedWh(), lossWh = controller.lossWh();
    double[] busWh = controller.busWh();
    for (int h = 0; h < busWh.length; h++) {
      double takenWh = busWh[h] + lossWh[h];
      if (has(Effect.CONTROLLER_LIMIT) && clippedWh[h] > 0.0 && takenWh > 0.0) {
        double factor = 1.0 + clippedWh[h] / takenWh;
        busWh[h] *= factor;
        lossWh[h] *= factor;
        clippedWh[h] = 0.0;
      }
      if (has(Effect.CONTROLLER_LOSS)) {
        busWh[h] += lossWh[h];
        lossWh[h] = 0.0;
      }
    }
  }

  /** Which part of the sky. */
  UsualSky.LeftOut sky() {
    return new UsualSky.LeftOut(
        has(Effect.USUAL_CLOUD), has(Effect.MORE_CLOUD), has(Effect.SHORT_DAYS));
  }

  /** What was asked in each hour, or the mean of its month and hour of the day. */
  double[] load(double[] wh, HourCalendar calendar) {
    if (!has(Effect.THAT_DAYS_LOAD)) {
      return wh;
    }
    var sums = new double[12 * 24];
    var counts = new int[12 * 24];
    for (int h = 0; h < wh.length; h++) {
      int slot = (calendar.month(h) - 1) * 24 + h % 24;
      sums[slot] += wh[h];
      counts[slot]++;
    }
    var meanWh = new double[wh.length];
    for (int h = 0; h < wh.length; h++) {
      int slot = (calendar.month(h) - 1) * 24 + h % 24;
      meanWh[h] = sums[slot] / counts[slot];
    }
    return meanWh;
  }

  /** The plan without what is left out of it. */
  LoadPlan plan(LoadPlan plan) {
    boolean isEven = has(Effect.LOAD_VARIATION);
    return new LoadPlan(
        plan.appliances(),
        plan.log(),
        isEven ? 0.0 : plan.dailyVariationFraction(),
        isEven ? 0.0 : plan.hourlyVariationFraction(),
        has(Effect.GROWTH) ? 0.0 : plan.growthFraction(),
        has(Effect.LOAD_RULES) ? LoadPolicy.NONE : plan.policy());
  }
}
