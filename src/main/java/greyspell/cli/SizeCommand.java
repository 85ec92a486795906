package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Dimension;
import greyspell.quantity.Place;
import greyspell.report.Deliver;
import greyspell.report.SizeJson;
import greyspell.report.SizeText;
import greyspell.report.TextFile;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.scenario.ScenarioReader;
import greyspell.sizing.Target;
import greyspell.study.PanelSteps;
import greyspell.study.SizeEdit;
import greyspell.study.SizeResult;
import greyspell.study.SizeResult.Point;
import greyspell.study.SizeStudy;
import greyspell.study.SizeWanted;
import greyspell.study.Trials;
import greyspell.study.WintersDrawn;
import greyspell.study.WintersWanted;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What size of bank and panels a target takes. */
@Command(
    name = "size",
    description = {
      "Finds the smallest bank, the fewest panels and the cheapest pair for a target.",
      "With the standards' hand method beside it. Panels are whole strings that the rules allow, banks whole packs."
    },
    footer = {
      "",
      "Example: greyspell size scenarios/whin-cabin.yaml --unmet-hours 100 --controllers-may-grow",
      "Example: greyspell size scenarios/alder-fold.yaml --dark-winters \"1 in 10\" --winters 100 --controllers-may-grow"
    },
    mixinStandardHelpOptions = true)
final class SizeCommand implements Callable<Integer> {
  private static final int MOST_PACKS = 1000;
  private static final int MOST_MODULES = 1000;
  private static final double MOST_RATIO = 100.0;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file.")
  private Path scenario = Path.of("");

  @Option(names = "--without-generator", description = "Size the home as if it had no generator.")
  private boolean withoutGenerator;

  @Option(
      names = "--roof",
      paramLabel = "MODULES",
      description = "Room for so many modules, all planes together.")
  private @Nullable Integer roof;

  @Option(
      names = "--plane",
      paramLabel = "NAME",
      description = "Only strings of this plane are added or taken away.")
  private @Nullable String plane;

  @Option(
      names = "--controllers-may-grow",
      description =
          "Where the input of the controllers is exceeded, count one more of the same, with its standby.")
  private boolean controllersMayGrow;

  @Option(
      names = "--most-packs",
      paramLabel = "PACKS",
      description =
          "The largest bank to look at. Without it four times the present one, 12 at least.")
  private @Nullable Integer mostPacks;

  @Option(
      names = "--any-size",
      paramLabel = "STEP",
      description =
          "Banks of any size made of the same cells, in steps of so much energy: 0.5kWh. Without it whole packs.")
  private @Nullable String anySize;

  @Option(
      names = "--reserve-days",
      paramLabel = "DAYS",
      description =
          "Days without sun for the hand method. Without it those of --autonomy-days, or 5.")
  private @Nullable Double reserveDays;

  @Option(
      names = "--array-to-load",
      paramLabel = "RATIO",
      description = "Wanted ratio of array to load for the hand method. Without it 1.3.")
  private double arrayToLoad = SizeWanted.USUAL_RATIO;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description =
          "Write the frontier as frontier.csv and everything as size.json into this folder.")
  private @Nullable Path out;

  @Option(names = "--json", description = "Print the figures for other programs.")
  private boolean json;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description =
          "Save the scenario with the answer in it; comments and order stay. Best beside the scenario: files are named relative to it.")
  private @Nullable Path write;

  @Option(
      names = "--take",
      paramLabel = "ANSWER",
      description =
          "Which answer to write: bank (the smallest for the panels), panels (the fewest for the bank), pair (the cheapest), or the number of modules of a pair in the table. Without it the first of the three that there is.")
  private @Nullable String take;

  @Option(
      names = "--warn",
      description = "End with exit code 1 if the home as it is misses the target.")
  private boolean warn;

  @Mixin private TargetOptions targets = new TargetOptions();

  @Mixin private WintersOption winters = new WintersOption();

  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    var reader = new OptionReader();
    Scenario file = ScenarioReader.read(scenario, library.folder());
    SizeWanted wanted = wanted(reader, file);
    @Nullable SizeAnswer chosen = chosen(reader);
    writable(reader);
    reader.throwIfAny();
    var cautions = new ArrayList<String>();
    SizeResult result;
    String weather;
    try (var progress = Progress.onTerminal()) {
      progress.step("reading the weather", 0.05);
      Scenario home = withoutGenerator ? file.withGenerator(null) : file;
      WintersWanted drawn = winters.find(home);
      Trials trials;
      if (drawn == null) {
        trials = Trials.of(home, (what, done) -> {});
        weather = measured(trials);
      } else {
        home = home.steady();
        WintersDrawn source = drawn.draw(home);
        cautions.addAll(source.cautions());
        trials = Trials.of(home, source.source(), source.source().years(), (what, done) -> {});
        weather = "Gone through: " + source.source().describe() + ".";
      }
      result = SizeStudy.of(home, trials, wanted, progress::step);
    }
    for (String caution : file.cautions()) {
      if (caution.contains("medical")) {
        cautions.add(caution);
      }
    }
    deliver(result, weather, cautions, file, chosen, screen);
    return warn && !result.isPresentEnough() ? Main.FOUND : 0;
  }

  private static String measured(Trials trials) {
    int years = trials.years();
    return "Gone through: the weather of the scenario, "
        + (years == 1 ? "one year" : years + " years")
        + (trials.winters().isEmpty()
            ? " without a whole winter."
            : " with "
                + (trials.winters().size() == 1
                    ? "one whole winter."
                    : trials.winters().size() + " whole winters."));
  }

  private void deliver(
      SizeResult result,
      String weather,
      List<String> cautions,
      Scenario file,
      @Nullable SizeAnswer chosen,
      PrintWriter screen)
      throws IOException {
    // what cannot be written is said before anything is
    SizeAnswer answer = chosen == null ? SizeAnswer.first(result) : chosen;
    @Nullable ScenarioEdit edit = write == null ? null : edit(result, file, answer, write);
    if (out != null) {
      try (var deliver = new Deliver(out)) {
        deliver.write("frontier.csv", SizeJson.csv(result).getBytes(StandardCharsets.UTF_8));
        String json = SizeJson.text(result, weather, cautions);
        deliver.write("size.json", json.getBytes(StandardCharsets.UTF_8));
        deliver.done();
      }
    }
    if (edit != null && write != null) {
      TextFile.write(write, edit.text());
    }
    Point saved = write == null ? null : answer.in(result);
    String written =
        saved == null
            ? ""
            : "Written: " + write + ", with " + answer.words + ": " + SizeText.pair(saved);
    if (json) {
      screen.print(SizeJson.text(result, weather, cautions));
      if (!written.isEmpty()) {
        spec.commandLine().getErr().println(written);
      }
    } else {
      screen.print(SizeText.of(result, weather, cautions));
      if (out != null) {
        screen.println(
            "\nWritten: " + out.resolve("frontier.csv") + ", " + out.resolve("size.json"));
      }
      if (!written.isEmpty()) {
        screen.println("\n" + written);
      }
    }
    screen.flush();
  }

  // ---- what is asked ----------------------------------------------------------------------------

  private SizeWanted wanted(OptionReader reader, Scenario home) {
    List<Target> target = targets.read(reader);
    whole(reader, "--roof", roof, MOST_MODULES);
    whole(reader, "--most-packs", mostPacks, MOST_PACKS);
    TargetOptions.within(reader, "--reserve-days", reserveDays, TargetOptions.MOST_DAYS);
    TargetOptions.within(reader, "--array-to-load", arrayToLoad, MOST_RATIO);
    if (plane != null && home.arrays().stream().noneMatch(a -> a.name().equals(plane))) {
      reader.fault(
          "--plane",
          "found \"" + plane + "\"",
          "must be one of " + String.join(", ", home.arrays().stream().map(a -> a.name()).toList()),
          "Names of planes stand under arrays in the scenario.");
    }
    Double days = reserveDays != null ? reserveDays : targets.autonomyDays();
    return new SizeWanted(
        target,
        new PanelSteps.Room(plane, roof, controllersMayGrow),
        mostPacks,
        reader.positive("--any-size", anySize, Dimension.ENERGY),
        days == null ? SizeWanted.USUAL_RESERVE_D : days,
        arrayToLoad);
  }

  private static void whole(OptionReader reader, String option, @Nullable Integer value, int most) {
    if (value != null && (value < 1 || value > most)) {
      reader.fault(option, "found " + value, "must be 1 to " + most, "A whole number.");
    }
  }

  private @Nullable SizeAnswer chosen(OptionReader reader) {
    if (take == null) {
      return null;
    }
    SizeAnswer answer = SizeAnswer.of(take);
    if (answer == null) {
      reader.fault(
          "--take",
          "found \"" + take + "\"",
          "must be bank, panels, pair, or a number of modules",
          "The numbers stand in the table of pairs.");
    }
    return answer;
  }

  /** What could not be written is said before anything is run. */
  private void writable(OptionReader reader) {
    if (write != null && anySize != null) {
      reader.fault(
          "--write",
          "found with --any-size",
          "must be a bank of whole packs",
          "Leave out --any-size.");
    }
    if (write == null && take != null) {
      reader.fault(
          "--take",
          "found without --write",
          "says which answer is written",
          "Name the file to write: --write FILE.");
    }
  }

  private ScenarioEdit edit(SizeResult result, Scenario file, SizeAnswer answer, Path to) {
    Point point = answer.in(result);
    if (point == null) {
      throw BadInput.of(
          Place.of("--write"),
          answer.words + ": there is none",
          "must be one that was found",
          SizeAnswer.instead(result));
    }
    ScenarioEdit edit = SizeEdit.of(scenario, file, point, withoutGenerator);
    // files are named relative to the scenario: where it is to stand they must be found again
    ScenarioEdit there = ScenarioEdit.ofText(edit.text(), to);
    there.scenario(library.folder());
    return there;
  }
}
