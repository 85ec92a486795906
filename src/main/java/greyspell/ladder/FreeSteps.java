package greyspell.ladder;

import greyspell.array.ArraySpec;
import greyspell.array.SnowRule;
import greyspell.ladder.Step.Change;
import greyspell.ladder.Step.Kind;
import greyspell.load.ApplianceSpec;
import greyspell.load.ApplianceSpec.HourSpan;
import greyspell.load.Priority;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;

/**
 * What could be done without money. Nothing that must run and nothing medical is touched. What the
 * family gives up by it stands in the words; whether they will is theirs to say.
 */
final class FreeSteps {
  private static final double ROUND_THE_CLOCK_H = 23.99;
  private static final double ALWAYS = 0.999;

  /** A timer's night. */
  private static final String DAY_HOURS = "[06:00-23:00]";

  /** Around noon, when the sun is over. */
  private static final double FROM_H = 10.0, TO_H = 15.0;

  private static final String MIDDAY = "[10:00-15:00]";

  private FreeSteps() {}

  static List<Step> of(Scenario home) {
    var steps = new ArrayList<Step>();
    List<ApplianceSpec> appliances = home.load().appliances();
    for (int i = 0; i < appliances.size(); i++) {
      ApplianceSpec a = appliances.get(i);
      if (a.isMedical() || a.priority() == Priority.MUST_RUN || a.quantity() == 0) {
        continue;
      }
      String path = "loads.appliances[" + i + "].";
      unplug(a, path, steps);
      if (!a.isWeatherDriven()) {
        timer(a, path, steps);
        move(a, path, steps);
      }
    }
    for (int k = 0; k < home.arrays().size(); k++) {
      ArraySpec plane = home.arrays().get(k);
      if (plane.snow() != SnowRule.NONE) {
        steps.add(
            Step.free(
                Kind.SWEEP,
                "Keep \"" + plane.name() + "\" free of snow, from the ground with a soft broom",
                new Change("arrays[" + k + "].snow", "none")));
      }
    }
    return steps;
  }

  private static void unplug(ApplianceSpec a, String path, List<Step> steps) {
    if (a.standbyW() > 0.0) {
      steps.add(
          Step.free(
              Kind.UNPLUG,
              a.name() + ": off at the socket when not in use (" + Show.power(a.standbyW()) + ")",
              new Change(path + "standby", "0 W")));
    }
  }

  private static void timer(ApplianceSpec a, String path, List<Step> steps) {
    if (a.dailySpanH() >= ROUND_THE_CLOCK_H && a.dutyShare() >= ALWAYS && a.powerW() > 0.0) {
      steps.add(
          Step.free(
              Kind.TIMER,
              a.name() + ": on a timer, off from 23:00 to 06:00",
              new Change(path + "hours", DAY_HOURS)));
    }
  }

  /** The same energy around noon, if it fits there. */
  private static void move(ApplianceSpec a, String path, List<Step> steps) {
    double spanH = a.dailySpanH();
    double duty = a.dutyShare() * spanH / (TO_H - FROM_H);
    boolean isThere = a.hours().stream().allMatch(FreeSteps::isMidday);
    if (a.priority() == Priority.CAN_WAIT && !isThere && duty > 0.0 && duty <= 1.0) {
      steps.add(
          Step.free(
              Kind.MOVE,
              a.name() + ": between 10:00 and 15:00 only",
              new Change(path + "hours", MIDDAY),
              new Change(path + "duty", Show.number(duty * 100.0, 3) + " %")));
    }
  }

  private static boolean isMidday(HourSpan span) {
    return span.fromH() >= FROM_H && span.toH() <= TO_H && span.fromH() < span.toH();
  }
}
