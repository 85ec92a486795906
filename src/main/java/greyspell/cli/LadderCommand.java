package greyspell.cli;

import greyspell.ladder.Climb;
import greyspell.ladder.Ladder;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.report.LadderFiles;
import greyspell.report.LadderJson;
import greyspell.report.LadderText;
import greyspell.report.TextFile;
import greyspell.scenario.EquipmentReader;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Trials;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What to do or buy next. */
@Command(
    name = "ladder",
    description = {
      "Tells what to do or buy next, one step after another.",
      "First what costs nothing, then what avoids a kWh of shortfall for the least money.",
      "Prices are those under 'costs' in the scenario; where one is missing, the step is told in kWh and hours."
    },
    footer = {
      "",
      "Example: greyspell ladder scenarios/alder-fold.yaml --budget 4000",
      "Example: greyspell ladder scenarios/alder-fold.yaml --winters 30 --write scenarios/next.yaml"
    },
    mixinStandardHelpOptions = true)
final class LadderCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file.")
  private Path scenario = Path.of("");

  @Option(
      names = "--budget",
      paramLabel = "MONEY",
      description =
          "What there is to spend, in the scenario's money; without it the ladder ends elsewhere.")
  private @Nullable Double budget;

  @Option(
      names = "--generator",
      paramLabel = "NAME",
      description =
          "Generator of the equipment library that could be bought; without it the smallest that bears the greatest hour.")
  private @Nullable String generator;

  @Option(
      names = "--rungs",
      defaultValue = "8",
      paramLabel = "N",
      description = "At most so many steps that cost money (8 if not said).")
  private int rungs;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description =
          "Save the scenario with all steps taken, best beside the old one: files are named relative to it. 'run' on it confirms the last line.")
  private @Nullable Path write;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Write pictures, ladder.txt and ladder.json into this folder.")
  private @Nullable Path out;

  @Option(names = "--json", description = "Print the figures for other programs.")
  private boolean json;

  @Mixin private WintersOption weather = new WintersOption();
  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    check();
    Ladder ladder;
    try (var progress = Progress.onTerminal()) {
      progress.step("reading the scenario", 0.0);
      ScenarioEdit text = ScenarioEdit.of(scenario);
      Scenario home = text.scenario(library.folder());
      if (generator != null) {
        EquipmentReader.checkGenerator(scenario, library.folder(), generator, "--generator");
      }
      Trials trials = weather.trials(home, progress::step);
      ladder =
          Climb.of(
              text,
              library.folder(),
              trials,
              other -> weather.trials(other, progress::step),
              new Climb.Wanted(budget, generator, rungs),
              progress::step);
    }
    if (write != null) {
      // files are named relative to the scenario: where it is to stand they must be found again
      ScenarioReader.readText(ladder.topText(), write, library.folder());
      TextFile.write(write, ladder.topText());
    }
    if (out != null) {
      LadderFiles.write(ladder, out);
    }
    screen.print(json ? LadderJson.text(ladder) : LadderText.of(ladder));
    if (!json && write != null) {
      screen.println("\nWritten: " + write);
    }
    screen.flush();
    return 0;
  }

  private void check() {
    if (budget != null && !(budget >= 0.0)) {
      throw refused("--budget", "found " + budget, "must be 0 or more");
    }
    if (rungs < 1 || rungs > 50) {
      throw refused("--rungs", "found " + rungs, "must be 1 to 50");
    }
  }

  private static BadInput refused(String option, String found, String expected) {
    return BadInput.of(Place.of(option), found, expected, "Write another number.");
  }
}
