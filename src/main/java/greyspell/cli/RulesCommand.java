package greyspell.cli;

import greyspell.operate.RuleCard;
import greyspell.operate.RuleSearch;
import greyspell.report.RulesCardPage;
import greyspell.report.RulesJson;
import greyspell.report.RulesText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
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

/** Rules for the fridge door. */
@Command(
    name = "rules",
    description = {
      "Looks for up to three rules for the fridge door.",
      "Below which charge at sunset to leave what off, to keep the lights on in grey weeks.",
      "Found on some winters, tried on others; both prices are told: outage avoided and comfort given up."
    },
    footer = {"", "Example: greyspell rules scenarios/alder-fold.yaml --winters 20 --out card"},
    mixinStandardHelpOptions = true)
final class RulesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file.")
  private Path scenario = Path.of("");

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Write a page to print in large type, and the words, into this folder.")
  private @Nullable Path out;

  @Option(names = "--json", description = "Print the figures for other programs.")
  private boolean json;

  @Mixin private WintersOption weather = new WintersOption();
  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    RuleCard card;
    try (var progress = Progress.onTerminal()) {
      progress.step("reading the scenario", 0.0);
      Scenario home = ScenarioReader.read(scenario, library.folder());
      var trials = weather.trials(home, progress::step);
      progress.step("looking for rules", 0.3);
      card = RuleSearch.of(trials);
    }
    if (out != null) {
      RulesCardPage.write(card, out);
    }
    screen.print(json ? RulesJson.text(card) : RulesText.of(card));
    screen.flush();
    return 0;
  }
}
