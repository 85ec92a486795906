package greyspell.cli;

import greyspell.handover.Handover;
import greyspell.handover.Paper;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.study.ElectricalCheck;
import greyspell.study.Explanation;
import greyspell.study.PlayGrid;
import greyspell.study.PlayGrids;
import greyspell.study.Study;
import greyspell.study.StudyResult;
import greyspell.words.Units;
import greyspell.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Whether pages are written, where, and in which form. */
final class HandoverOption {
  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Write explanation.html and explanation.pdf into this folder.")
  private @Nullable Path out;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "metric (default) or us: degrees Fahrenheit, feet, gallons.")
  private String units = "metric";

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description = "Of the PDF: a4 (default) or letter.")
  private String paper = "a4";

  private @Nullable FutureTask<Ran> running;

  Units units() {
    return switch (units) {
      case "metric" -> Units.METRIC;
      case "us" -> Units.US;
      default -> throw refused("--units", units, "metric or us", "Write --units metric.");
    };
  }

  private Paper paper() {
    return switch (paper) {
      case "a4" -> Paper.A4;
      case "letter" -> Paper.LETTER;
      default -> throw refused("--paper", paper, "a4 or letter", "Write --paper a4.");
    };
  }

  private static BadInput refused(String option, String found, String allowed, String mend) {
    return BadInput.of(Place.of(option), "found \"" + found + '"', "must be " + allowed, mend);
  }

  /** The home as it stands, and what its sliders answer. */
  private record Ran(StudyResult result, PlayGrid grid) {
    static Ran of(StudyResult result) {
      return new Ran(result, PlayGrids.of(result));
    }
  }

  /** Runs the home beside the explanation: the pages tell of its books too. */
  void start(Scenario home) {
    paper();
    if (out == null) {
      return;
    }
    Handover.prepare();
    var task = new FutureTask<>(() -> Ran.of(Study.run(home, (what, done) -> {})));
    var thread = new Thread(task, "run");
    thread.setDaemon(true);
    thread.start();
    running = task;
  }

  /** The files, none where none were asked for. */
  List<Path> write(Explanation told, Words words, Progress progress) {
    FutureTask<Ran> task = running;
    Path folder = out;
    if (task == null || folder == null) {
      return List.of();
    }
    progress.step("pages", 0.9);
    Ran ran = finished(task);
    ElectricalCheck check = ElectricalCheck.of(told.home(), ran.result);
    return Handover.write(
        ran.result,
        ran.grid,
        told,
        check,
        words,
        paper(),
        folder,
        what -> progress.step(what, 0.95));
  }

  private static Ran finished(FutureTask<Ran> task) {
    try {
      return task.get();
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException cause
          ? cause
          : new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while running", e);
    }
  }
}
