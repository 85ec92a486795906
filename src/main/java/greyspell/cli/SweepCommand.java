package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import greyspell.quantity.Place;
import greyspell.report.SweepFile;
import greyspell.report.SweepJson;
import greyspell.report.SweepStamp;
import greyspell.report.SweepSummary;
import greyspell.report.SweepTable;
import greyspell.sweep.Sweep;
import greyspell.sweep.SweepQuestion;
import greyspell.sweep.SweepWinters;
import greyspell.sweep.Variation;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Many runs of one home or of many, as a table. */
@Command(
    name = "sweep",
    description = {
      "Runs homes under every combination of values of their keys, into a table.",
      "One row a run. What is interrupted goes on where it was when the same command is given again."
    },
    footer = {
      "",
      "Example: greyspell sweep scenarios/whin-cabin.yaml --vary \"arrays[0].tilt=30..70 deg step 10\""
          + " --vary \"bank.in_parallel=1, 2, 3\" --out table.csv",
      "",
      "VALUES are parted by commas, each as it would stand in the file, or a range with its step.",
      "\"left out\" takes the key away, \"as is\" leaves it. Items of lists have numbers from 0, or names:",
      "\"loads.appliances[Laptop].power=20 W, 40 W\"."
    },
    mixinStandardHelpOptions = true)
final class SweepCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "1..*",
      paramLabel = "SCENARIO",
      description = "The scenario files, one or more.")
  private List<Path> scenarios = new ArrayList<>();

  @Option(
      names = "--vary",
      paramLabel = "PATH=VALUES",
      description = "A key and the values that it takes; may be given several times.")
  private List<String> vary = new ArrayList<>();

  @Option(
      names = "--side-by-side",
      description = "First values together, then second ones; else every value meets every other.")
  private boolean sideBySide;

  @Option(
      names = {"-o", "--out"},
      required = true,
      paramLabel = "FILE",
      description = "The table to write, CSV.")
  private Path out = Path.of("");

  @Option(
      names = "--winters",
      paramLabel = "N",
      description =
          "Draw N winters for each home, the same for all its runs, instead of what it says of weather.")
  private @Nullable Integer winters;

  @Option(
      names = "--how",
      paramLabel = "KIND",
      description = "Where winters come from: measured, spliced or made, as in run.")
  private @Nullable String how;

  @Option(
      names = "--max-runs",
      paramLabel = "N",
      defaultValue = "10000",
      description = "Refuse more runs than this (default ${DEFAULT-VALUE}).")
  private int maxRuns;

  @Option(
      names = "--warn-refused",
      description = "End with exit code 1 if any run was refused, not only if all were.")
  private boolean warnRefused;

  @Option(names = "--json", description = "Print the rows for other programs.")
  private boolean json;

  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    SweepQuestion question = question();
    checkSize(question);
    var table = new SweepTable(question);
    String stamp = SweepStamp.of(question, new Main.Version().getVersion()[0]);
    try (var file = SweepFile.open(out, stamp, table.columns().size(), question.runs())) {
      tellStart(file, question.runs());
      run(question, table, file);
      file.finish(table.columns());
      tell(table.columns(), file.rows());
      int refused = SweepSummary.refused(table.columns(), file.rows());
      boolean isNothingTold = refused == question.runs();
      return isNothingTold || (warnRefused && refused > 0) ? Main.FOUND : 0;
    }
  }

  /** What is wrong with any of the files or values is told together. */
  private SweepQuestion question() {
    var faults = new ArrayList<Fault>();
    List<SweepQuestion.Home> homes = each(scenarios, SweepQuestion.Home::of, faults);
    List<Variation> variations = each(vary, Variation::parse, faults);
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    return new SweepQuestion(homes, variations, sideBySide, winters(), library.folder());
  }

  private static <T, R> List<R> each(List<T> from, Function<T, R> read, List<Fault> faults) {
    var all = new ArrayList<R>();
    for (T one : from) {
      try {
        all.add(read.apply(one));
      } catch (BadInput e) {
        faults.addAll(e.faults());
      }
    }
    return all;
  }

  private void run(SweepQuestion question, SweepTable table, SweepFile file) {
    int before = file.done().cardinality();
    var clock = new RunClock(before, question.runs());
    var stopped = new StopNote(spec.commandLine().getErr(), question.runs(), before);
    try (var progress = Progress.onTerminal()) {
      progress.step(clock.words(), clock.share());
      Sweep.run(
          question,
          file.done(),
          Runtime.getRuntime().availableProcessors(),
          row -> {
            file.append(row.run(), table.cells(row));
            stopped.one();
            clock.one();
            progress.step(clock.words(), clock.share());
          });
    } finally {
      stopped.done();
    }
  }

  private SweepWinters winters() {
    if (winters != null && (winters < 1 || winters > SweepWinters.MOST)) {
      throw BadInput.of(
          Place.of("--winters"),
          "found " + winters,
          "must be 1 to " + SweepWinters.MOST,
          "All of them are kept in memory for all the runs.");
    }
    return new SweepWinters(winters, WintersOption.kind(how));
  }

  private void checkSize(SweepQuestion question) {
    if (maxRuns < 1) {
      throw BadInput.of(
          Place.of("--max-runs"),
          "found " + maxRuns,
          "must be 1 or more",
          "It is the most runs that are allowed.");
    }
    if (question.runs() > maxRuns) {
      throw BadInput.of(
          Place.of("--max-runs"),
          "found " + question.runs() + " runs: " + question.sum(),
          "must be at most " + maxRuns,
          "Vary fewer values, or allow them with --max-runs " + question.runs() + ".");
    }
  }

  private void tellStart(SweepFile file, long runs) {
    PrintWriter err = spec.commandLine().getErr();
    if (file.isOfAnotherQuestion()) {
      err.println(
          "The unfinished rows beside "
              + out
              + " are those of another question (a scenario, a file, the values or the program has"
              + " changed): begun anew.");
    }
    int taken = file.done().cardinality();
    if (taken > 0) {
      err.println(taken + " of " + runs + " runs are there already; going on with the rest.");
    }
  }

  private void tell(List<String> columns, List<List<String>> rows) throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    if (json) {
      screen.print(SweepJson.text(columns, rows));
    } else {
      screen.print(SweepSummary.text(columns, rows));
      screen.println("Written: " + out);
    }
    screen.flush();
  }
}
