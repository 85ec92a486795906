package greyspell.study;

import greyspell.cause.Said;
import greyspell.cause.SaidValue.Litres;
import greyspell.cause.SaidValue.Percent;
import greyspell.cause.SaidValue.Power;
import greyspell.power.GeneratorRules;
import greyspell.power.RunTimes;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.Explanation.Edit;
import greyspell.study.Explanation.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The levels that are tried of a generator, or of one where there is none. */
final class GeneratorChanges {
  private static final double PETROL_L_PER_KWH = 0.6; // common practice, no source
  private static final double CHARGE_SHARE_PER_H = 0.1; // of the bank; common practice, no source
  private static final int LEVEL_STEP_PERCENT = 10;
  private static final int LEAST_START_PERCENT = 10;
  private static final int MOST_START_PERCENT = 70;
  private static final int HALF_PERCENT = 50; // own choice: below it a bank stays low for weeks
  private static final int USUAL_STOP_PERCENT = 80; // as the scenario's default
  private static final int NEAR_FULL_PERCENT = 90;

  private GeneratorChanges() {}

  /**
   * One that is started sooner and in more hours; or, where there is none, one with a charger. All
   * start and stop levels of one way to run it stand together, under one sentence: the one that
   * runs it least need not be the lowest ({@code RemediesTest} has such a home), so that {@link
   * Remedies} runs them all.
   *
   * @param file tells which hours at home are stated: they mean nothing where it starts by itself
   */
  static List<Change> of(Scenario home, ScenarioEdit file) {
    Scenario.Generator generator = home.generator();
    return generator == null ? fresh(home) : otherwise(generator.rules(), file);
  }

  private static List<Change> fresh(Scenario home) {
    double chargerW =
        home.inverter().charger() == null
            ? Math.max(
                300.0, Math.rint(home.bank().usableWh() * CHARGE_SHARE_PER_H / 100.0) * 100.0)
            : home.inverter().charger().mostAcW();
    double ratedW = Math.ceil(chargerW * 1.25 / 500.0) * 500.0;
    var changes = new ArrayList<Change>();
    for (int start = LEAST_START_PERCENT; start <= 60; start += LEVEL_STEP_PERCENT) {
      for (int stop : new int[] {HALF_PERCENT, USUAL_STOP_PERCENT}) {
        if (start < stop) {
          changes.add(
              new Change(
                  Kind.GENERATOR,
                  false,
                  Said.of(
                      "remedy.generator.new",
                      new Power(ratedW),
                      new Power(chargerW),
                      new Percent(start / 100.0),
                      new Percent(stop / 100.0),
                      new Litres(PETROL_L_PER_KWH)),
                  List.of(new Edit("generator", block(ratedW, chargerW, start, stop)))));
        }
      }
    }
    return changes;
  }

  private static List<Change> otherwise(GeneratorRules rules, ScenarioEdit file) {
    int start = percent(rules.startBelowShare());
    var changes = new ArrayList<Change>();
    levels(changes, "remedy.generator.sooner", start + LEVEL_STEP_PERCENT, rules, List.of());
    int least = LEAST_START_PERCENT + start % LEVEL_STEP_PERCENT;
    var more = new ArrayList<Edit>();
    if (rules.policy() == GeneratorRules.Policy.MANUAL) {
      more.add(new Edit("generator.policy", "auto"));
      for (String key : List.of("generator.home_hours", "generator.home_days")) {
        if (file.written(key) != null) {
          more.add(new Edit(key, null));
        }
      }
      levels(changes, "remedy.generator.auto", least, rules, more);
    }
    if (!rules.permitted().spans().equals(RunTimes.ALWAYS.spans())) {
      more.add(new Edit("generator.permitted_hours", "00:00-24:00"));
      levels(changes, "remedy.generator.any_hour", least, rules, more);
    }
    return changes;
  }

  /** Stopped as it is now, and at half if that is sooner; from the highest start also near full. */
  private static void levels(
      List<Change> changes, String key, int least, GeneratorRules rules, List<Edit> more) {
    int stopNow = percent(rules.stopAboveShare());
    for (int start = least; start <= MOST_START_PERCENT; start += LEVEL_STEP_PERCENT) {
      var stops = new TreeSet<>(List.of(Math.min(HALF_PERCENT, stopNow), stopNow));
      if (start + LEVEL_STEP_PERCENT > MOST_START_PERCENT) {
        stops.add(NEAR_FULL_PERCENT);
      }
      for (int stop : stops.tailSet(start + 1)) {
        var edits = new ArrayList<>(more);
        edits.add(new Edit("generator.start_below", start + " %"));
        if (stop != stopNow) {
          edits.add(new Edit("generator.stop_above", stop + " %"));
        }
        Said said = Said.of(key, new Percent(start / 100.0), new Percent(stop / 100.0));
        changes.add(new Change(Kind.GENERATOR, false, said, edits));
      }
    }
  }

  private static int percent(double share) {
    return (int) Math.rint(100.0 * share);
  }

  private static String block(double ratedW, double chargerW, int startPercent, int stopPercent) {
    return "{rated_power: "
        + Show.trimmed(ratedW, 0)
        + " W, fuel: petrol, fuel_use: [[100 %, "
        + Show.trimmed(PETROL_L_PER_KWH * ratedW / 1000.0, 3)
        + " l/h]], start_below: "
        + startPercent
        + " %, stop_above: "
        + stopPercent
        + " %, charger: {power: "
        + Show.trimmed(chargerW, 0)
        + " W}}";
  }
}
