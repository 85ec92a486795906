package greyspell.cli;

import greyspell.outcome.Outcome.WinterBooks;
import greyspell.outcome.WinterRecord;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.report.ReportFiles;
import greyspell.report.Summary;
import greyspell.report.WintersText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ElectricalCheck;
import greyspell.study.ManyWinters;
import greyspell.study.Study;
import greyspell.study.StudyResult;
import greyspell.study.WintersWanted;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The year, or the years, of one home. */
@Command(
    name = "run",
    description = {
      "Runs a home through its weather, hour by hour, and tells the verdict.",
      "With --winters, or winters in the scenario, through many winters, with the odds.",
      "Writes the hourly and monthly books, results.json, pictures and a page to read."
    },
    footer = {
      "",
      "Example: greyspell run scenarios/alder-fold.yaml --out out",
      "Example: greyspell run scenarios/alder-fold.yaml --winters 200 --how made"
    },
    mixinStandardHelpOptions = true)
final class RunCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file.")
  private Path scenario = Path.of("");

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description =
          "Where to write; made if it is not there. Without it a folder 'out/NAME' in the current folder.")
  private @Nullable Path out;

  @Option(names = "--no-pictures", description = "Leave the pictures out; the page says so.")
  private boolean noPictures;

  @Option(
      names = "--json",
      description = "Print results.json, of many winters winters.json, instead of the summary.")
  private boolean json;

  @Option(names = "--quiet", description = "Print no summary.")
  private boolean quiet;

  @Option(
      names = "--warn-above",
      paramLabel = "HOURS",
      description =
          "End with exit code 1 if any whole winter, or any drawn one, has more unmet hours than this.")
  private @Nullable Integer warnAboveHours;

  @Mixin private WintersOption winters = new WintersOption();

  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    checkWarning();
    Path folder = out != null ? out : Path.of("out", fileStem(scenario));
    StudyResult result;
    ManyWinters many = null;
    List<Path> files;
    try (var progress = Progress.onTerminal()) {
      progress.step("reading the scenario", 0.0);
      Scenario home = ScenarioReader.read(scenario, library.folder());
      var judging = new FutureTask<>(() -> ElectricalCheck.of(home, null));
      startBeside(judging);
      WintersWanted wanted = winters.find(home);
      if (wanted == null) {
        result = Study.run(home, (what, done) -> progress.step(what, 0.1 + 0.5 * done));
      } else {
        many = ManyWinters.run(home, wanted, threads(), (what, done) -> progress.step(what, done));
        result = shown(many);
      }
      ElectricalCheck check = finished(judging).withYear(result);
      String failing = check.failing();
      if (!failing.isEmpty()) {
        result = result.withFirstCaution(failing);
      }
      files =
          ReportFiles.write(
              result, check, many, folder, !noPictures, what -> progress.step(what, 0.7));
    }
    if (!noPictures && files.stream().noneMatch(f -> f.toString().endsWith(".png"))) {
      spec.commandLine()
          .getErr()
          .println(
              "No PNG pictures: Java finds no font on this machine. The SVG pictures and the page are whole.");
    }
    if (json) {
      String books = many == null ? ReportFiles.RESULTS : ReportFiles.WINTERS;
      screen.print(Files.readString(folder.resolve(books)));
      screen.flush();
    } else if (!quiet) {
      screen.print(many == null ? Summary.text(result, files) : WintersText.text(many, files));
      screen.flush();
    }
    return isWarningDue(result, many) ? Main.FOUND : 0;
  }

  private static int threads() {
    return Runtime.getRuntime().availableProcessors();
  }

  /** The winter that comes once in ten years, with what must be said of all of them. */
  private static StudyResult shown(ManyWinters many) {
    WinterRecord winter = many.book().shown();
    StudyResult result = many.inFull(winter, (what, done) -> {});
    return result.withFirstCaution(many.standing(winter));
  }

  /** The electrical check needs no weather: it is judged while the hours are run. */
  private static void startBeside(FutureTask<?> task) {
    var thread = new Thread(task, "electrical check");
    thread.setDaemon(true);
    thread.start();
  }

  private static <T> T finished(FutureTask<T> task) {
    try {
      return task.get();
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException cause
          ? cause
          : new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while judging", e);
    }
  }

  private void checkWarning() {
    if (warnAboveHours != null && warnAboveHours < 0) {
      throw BadInput.of(
          Place.of("--warn-above"),
          "found " + warnAboveHours,
          "must be 0 or more hours",
          "Write 0 to be warned of any unmet hour.");
    }
  }

  private boolean isWarningDue(StudyResult result, @Nullable ManyWinters many) {
    Integer limit = warnAboveHours;
    if (limit == null) {
      return false;
    }
    if (many != null) {
      return many.book().winters().stream().anyMatch(w -> w.unmetHours() > limit);
    }
    for (WinterBooks winter : result.outcome().winters()) {
      if (winter.winter().isWhole() && winter.figures().unmetHours() > limit) {
        return true;
      }
    }
    return false;
  }

  private static String fileStem(Path file) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
