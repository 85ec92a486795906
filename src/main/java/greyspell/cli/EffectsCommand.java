package greyspell.cli;

import greyspell.report.EffectsJson;
import greyspell.report.EffectsText;
import greyspell.report.TextFile;
import greyspell.scenario.ScenarioReader;
import greyspell.study.Effects;
import java.io.IOException;
import java.io.PrintWriter;
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

/** What each effect is worth: the home without it. */
@Command(
    name = "effects",
    description = {
      "Tells what matters: runs the home again without each loss, limit, standby and rule.",
      "What goes unserved then stands beside what goes unserved now."
    },
    footer = {"", "Example: greyspell effects scenarios/alder-fold.yaml"},
    mixinStandardHelpOptions = true)
final class EffectsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "1..*",
      paramLabel = "SCENARIO",
      description = "The scenario files, one or more.")
  private List<Path> scenarios = new ArrayList<>();

  @Option(
      names = "--page",
      paramLabel = "FILE",
      description = "Write a page of Markdown with all of them; no tables are printed then.")
  private @Nullable Path page;

  @Option(names = "--json", description = "Print the figures for other programs.")
  private boolean json;

  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    var homes = new ArrayList<Effects>();
    for (Path scenario : scenarios) {
      homes.add(Effects.of(ScenarioReader.read(scenario, library.folder())));
    }
    if (page != null) {
      TextFile.write(page, EffectsText.page(homes, scenarios));
    }
    if (json) {
      screen.print(EffectsJson.text(homes));
    } else if (page != null) {
      screen.println("Written: " + page);
    } else {
      var texts = new ArrayList<String>();
      homes.forEach(h -> texts.add(EffectsText.of(h)));
      screen.print(String.join("\n\n", texts));
    }
    screen.flush();
    return 0;
  }
}
