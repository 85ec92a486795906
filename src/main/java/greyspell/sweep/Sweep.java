package greyspell.sweep;

import greyspell.electrical.Finding;
import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.scenario.Scenario;
import greyspell.study.ElectricalCheck;
import greyspell.study.Trials;
import greyspell.study.VariantFigures;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Carries a sweep out, on all cores. Runs that share site, weather and sky are done one after
 * another and share their light, which is let go of after the last of them.
 */
public final class Sweep {
  private final SweepQuestion question;

  private Sweep(SweepQuestion question) {
    this.question = question;
  }

  /**
   * Does every run that is not done yet.
   *
   * @param done numbers of the runs that need not be done
   * @param threads at least 1
   * @param finished told of each row as soon as it is there, in no fixed order, by one thread
   */
  public static void run(
      SweepQuestion question, BitSet done, int threads, Consumer<SweepRow> finished) {
    new Sweep(question).run(done, threads, finished);
  }

  private void run(BitSet done, int threads, Consumer<SweepRow> finished) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      var ready = new ExecutorCompletionService<SweepRow>(pool);
      int count = 0;
      for (Light light : lights(done).values()) {
        for (int run : List.copyOf(light.runs)) {
          Callable<SweepRow> work = () -> light.row(run);
          ready.submit(work);
          count++;
        }
      }
      for (int i = 0; i < count; i++) {
        finished.accept(ready.take().get());
      }
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException cause
          ? cause
          : new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped between runs", e);
    } finally {
      pool.shutdownNow();
    }
  }

  private Map<String, Light> lights(BitSet done) {
    var lights = new LinkedHashMap<String, Light>();
    for (int run = 0; run < question.runs(); run++) {
      if (!done.get(run)) {
        lights.computeIfAbsent(question.light(run), name -> new Light()).runs.add(run);
      }
    }
    return lights;
  }

  /** What runs in the same light share. */
  private final class Light {
    final List<Integer> runs = new ArrayList<>();
    private int finished;
    private @Nullable Trials trials;

    SweepRow row(int run) {
      try {
        Scenario home = question.text(run).scenario(question.library());
        boolean areDrawn = question.winters().areDrawn(home);
        var figures = VariantFigures.of(trials(home), areDrawn ? home.steady() : home);
        ElectricalCheck check = ElectricalCheck.of(home, null);
        return row(run, home.name(), figures, check, "");
      } catch (BadInput e) {
        return row(run, question.home(run).name(), null, null, inOneLine(e));
      } finally {
        finish();
      }
    }

    private SweepRow row(
        int run,
        String name,
        @Nullable VariantFigures figures,
        @Nullable ElectricalCheck check,
        String fault) {
      return new SweepRow(
          run,
          name,
          question.home(run).file().toString(),
          question.values(run),
          figures,
          check == null ? null : strings(check),
          check == null ? null : check.worst(),
          fault);
    }

    private synchronized Trials trials(Scenario home) {
      Trials kept = trials;
      if (kept == null) {
        kept = question.winters().trials(home);
        trials = kept;
      }
      Scenario first = kept.home();
      boolean isSame =
          first.site().equals(home.site())
              && first.weather().equals(home.weather())
              && first.sky().equals(home.sky());
      return isSame ? kept : question.winters().trials(home);
    }

    private synchronized void finish() {
      finished++;
      trials = finished == runs.size() ? null : trials;
    }
  }

  private static Finding.Severity strings(ElectricalCheck check) {
    var findings = new ArrayList<Finding>();
    for (ElectricalCheck.Group group : check.groups()) {
      if (group.title().equals(ElectricalCheck.STRINGS_AS_BUILT)) {
        findings.addAll(group.findings());
      }
    }
    return Finding.worst(findings);
  }

  private static String inOneLine(BadInput bad) {
    return bad.faults().stream().map(Sweep::inOneLine).collect(Collectors.joining("; "));
  }

  private static String inOneLine(Fault fault) {
    return (fault.place() + " " + fault.found() + ": " + fault.expected())
        .replaceAll("\\s+", " ")
        .strip();
  }
}
