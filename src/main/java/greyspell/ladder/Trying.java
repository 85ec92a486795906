package greyspell.ladder;

import greyspell.electrical.Finding;
import greyspell.electrical.Finding.Severity;
import greyspell.quantity.BadInput;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.ElectricalCheck;
import greyspell.study.Trial;
import greyspell.study.Trials;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Runs steps from where the home now stands. A step that the scenario's rules refuse, or whose
 * strings and currents fail where the home's did not before, is left out with the reason. A stated
 * wire that could not bear it is no reason: it can be changed, at a price of its own.
 */
final class Trying {
  private final @Nullable Path library;
  private final Function<Scenario, Trials> weather;
  private final Trials trials;
  private ScenarioEdit text;
  private Scenario home;
  private Trial now;
  private Set<String> failing;

  /**
   * A home to start from.
   *
   * @param weather of a variant that stands under another sky or horizon
   */
  Trying(
      ScenarioEdit text,
      @Nullable Path library,
      Trials trials,
      Function<Scenario, Trials> weather) {
    this(text, library, trials, trials.home(), weather);
  }

  /** From a variant of the home. */
  Trying(
      ScenarioEdit text,
      @Nullable Path library,
      Trials trials,
      Scenario from,
      Function<Scenario, Trials> weather) {
    this.text = text;
    this.library = library;
    this.trials = trials;
    this.weather = weather;
    home = from;
    now = run(home);
    failing = failing(home);
  }

  /** What came of a step: it was run, or why it was not. */
  record Result(Step step, @Nullable Tried tried, String refused) {}

  Scenario home() {
    return home;
  }

  ScenarioEdit text() {
    return text;
  }

  Trial now() {
    return now;
  }

  /** In the order of the steps. */
  List<Result> all(List<Step> steps) {
    return steps.parallelStream().map(this::one).toList();
  }

  /** From here on the home is as after this step. */
  void take(Tried tried) {
    text = ScenarioEdit.ofText(tried.text(), Path.of(trials.home().file()));
    home = tried.after().scenario();
    now = tried.after();
    failing = failing(home);
  }

  private Result one(Step step) {
    try {
      ScenarioEdit changed = changed(text, step);
      Scenario variant = changed.scenario(library);
      ElectricalCheck check = ElectricalCheck.of(variant, null);
      List<String> faults = newFaults(check, false);
      if (!faults.isEmpty()) {
        return new Result(step, null, "the electrical check fails: " + faults.get(0));
      }
      String wires = String.join(", ", newFaults(check, true));
      return new Result(step, new Tried(step, now, run(variant), changed.text(), wires), "");
    } catch (BadInput refused) {
      return new Result(step, null, refused.faults().get(0).found());
    }
  }

  Trial run(Scenario variant) {
    boolean isSame =
        variant.site().equals(trials.home().site())
            && variant.sky().equals(trials.home().sky())
            && variant.weather().equals(trials.home().weather());
    return (isSame ? trials : weather.apply(variant)).run(variant);
  }

  static ScenarioEdit changed(ScenarioEdit text, Step step) {
    ScenarioEdit changed = text;
    for (Step.Change change : step.changes()) {
      changed = changed.set(change.path(), change.value());
    }
    return changed;
  }

  private List<String> newFaults(ElectricalCheck check, boolean isWires) {
    return failing(check, isWires).stream().filter(f -> !failing.contains(f)).sorted().toList();
  }

  private static Set<String> failing(Scenario home) {
    ElectricalCheck check = ElectricalCheck.of(home, null);
    var all = new HashSet<>(failing(check, false));
    all.addAll(failing(check, true));
    return all;
  }

  /** What fails, or cannot be judged for want of a figure: a wire, or anything else. */
  private static Set<String> failing(ElectricalCheck check, boolean isWires) {
    var failing = new HashSet<String>();
    for (ElectricalCheck.Group group : check.groups()) {
      if (group.isWires() == isWires) {
        for (Finding f : group.findings()) {
          if (f.severity() == Severity.FAIL || f.severity() == Severity.UNKNOWN) {
            failing.add(f.subject());
          }
        }
      }
    }
    return failing;
  }
}
