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
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
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

  /** What came of changes from here, for others that ask the same: prices change no hour. */
  private Map<List<Step.Change>, Ran> ran = new ConcurrentHashMap<>();

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

  /** The same home with other prices; what has been run is not run again. */
  private Trying(Trying from, ScenarioEdit text, Scenario home) {
    this.text = text;
    this.home = home;
    library = from.library;
    trials = from.trials;
    weather = from.weather;
    now = from.now;
    failing = from.failing;
    ran = from.ran;
  }

  /** The books behind a step, whatever it costs. */
  private record Ran(@Nullable Trial after, String wires, String refused) {}

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

  /** A place to come back to: from here, whatever steps this takes later. */
  Trying here() {
    return new Trying(this, text, home);
  }

  /** From another home in the same weather. */
  Trying in(ScenarioEdit changed) {
    return new Trying(changed, library, trials, changed.scenario(library), weather);
  }

  /** From here with a price changed. */
  Trying atPrice(String path, String value) {
    ScenarioEdit priced = text.set(path, value);
    return new Trying(this, priced, priced.scenario(library));
  }

  /** In the order of the steps. */
  List<Result> all(List<Step> steps) {
    return steps.parallelStream().map(this::one).toList();
  }

  /** From here on the home is as after this step. */
  void take(Tried tried) {
    text = changed(text, tried.step());
    home = tried.after().scenario();
    now = tried.after();
    failing = failing(home);
    ran = new ConcurrentHashMap<>();
  }

  private Result one(Step step) {
    Ran known = ran.get(step.changes());
    if (known == null) {
      known = ran(step);
      ran.put(step.changes(), known);
    }
    Trial after = known.after;
    return after == null
        ? new Result(step, null, known.refused)
        : new Result(step, new Tried(step, now, after, known.wires), "");
  }

  private Ran ran(Step step) {
    try {
      Scenario variant = changed(text, step).scenario(library);
      ElectricalCheck check = ElectricalCheck.of(variant, null);
      List<Finding> faults = newFaults(check, false);
      if (!faults.isEmpty()) {
        Finding first = faults.get(0);
        String reason = first.subject() + ", " + first.text();
        return new Ran(null, "", "the electrical check fails: " + reason);
      }
      String wires =
          String.join(", ", newFaults(check, true).stream().map(Finding::subject).toList());
      return new Ran(run(variant), wires, "");
    } catch (BadInput refused) {
      return new Ran(null, "", refused.faults().get(0).found());
    }
  }

  Trial run(Scenario variant) {
    return (trials.isFor(variant) ? trials : weather.apply(variant)).run(variant);
  }

  static ScenarioEdit changed(ScenarioEdit text, Step step) {
    ScenarioEdit changed = text;
    for (Step.Change change : step.changes()) {
      changed = changed.set(change.path(), change.value());
    }
    return changed;
  }

  /** One of each subject, by its name. */
  private List<Finding> newFaults(ElectricalCheck check, boolean isWires) {
    return failing(check, isWires).entrySet().stream()
        .filter(f -> !failing.contains(f.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }

  private static Set<String> failing(Scenario home) {
    ElectricalCheck check = ElectricalCheck.of(home, null);
    var all = new HashSet<>(failing(check, false).keySet());
    all.addAll(failing(check, true).keySet());
    return all;
  }

  /** What fails, or cannot be judged for want of a figure: a wire, or anything else. */
  private static Map<String, Finding> failing(ElectricalCheck check, boolean isWires) {
    var failing = new TreeMap<String, Finding>();
    for (ElectricalCheck.Group group : check.groups()) {
      if (group.isWires() == isWires) {
        for (Finding f : group.findings()) {
          if (f.severity() == Severity.FAIL || f.severity() == Severity.UNKNOWN) {
            failing.putIfAbsent(f.subject(), f);
          }
        }
      }
    }
    return failing;
  }
}
