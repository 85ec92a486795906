package greyspell.cli;

import greyspell.report.CheckJson;
import greyspell.report.CheckText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.ElectricalCheck;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Is anything wrong with a home before the sun is counted. */
@Command(
    name = "check",
    description = {
      "Checks a home on one screen: sheets, strings, wires, motor starts, loads.",
      "Also whatever is unusual in the scenario. Nothing is simulated; 'run' adds what the wires lose in a",
      "year. Strings need record_low and record_high of the site; they are never guessed."
    },
    footer = {
      "",
      "Example: greyspell check scenarios/alder-fold.yaml --all",
      "",
      "What cannot be judged is not passed: a missing figure that safety hangs on (a record temperature, a",
      "voltage or current that must never be exceeded, what a wire bears) is a finding that says what to state.",
      "",
      "Exit codes: 0 nothing fails (there may be cautions); 1 something fails or cannot be judged; 2 bad input."
    },
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file.")
  private Path scenario = Path.of("");

  @Option(
      names = "--all",
      description =
          "Also what passed, each wire size by size, and the checklist for a licensed person.")
  private boolean all;

  @Option(names = "--json", description = "Print the findings for other programs.")
  private boolean json;

  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    Scenario home = ScenarioReader.read(scenario, library.folder());
    ElectricalCheck check = ElectricalCheck.of(home, null);
    screen.print(json ? CheckJson.text(home.name(), check) : CheckText.of(home.name(), check, all));
    screen.flush();
    return check.worst().isRefused() ? Main.FOUND : 0;
  }
}
