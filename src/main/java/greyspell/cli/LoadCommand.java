package greyspell.cli;

import greyspell.report.LoadFiles;
import greyspell.report.LoadJson;
import greyspell.report.LoadText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.LoadAudit;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a home asks for, by appliance and month. */
@Command(
    name = "load",
    description = {
      "Audits what a home asks for: by appliance, month and hour of the day.",
      "How sure each figure is, the greatest demand against the inverter, and what is always on.",
      "Nothing is simulated."
    },
    footer = {"", "Example: greyspell load scenarios/alder-fold.yaml --out out/load"},
    mixinStandardHelpOptions = true)
final class LoadCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario file.")
  private Path scenario = Path.of("");

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Also write load.txt, load.json and the picture, as SVG and PNG, here.")
  private @Nullable Path out;

  @Option(names = "--json", description = "Print the audit for other programs.")
  private boolean json;

  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    Scenario home = ScenarioReader.read(scenario, library.folder());
    LoadAudit audit = LoadAudit.of(home);
    if (out != null) {
      List<Path> files = LoadFiles.write(audit, out);
      if (files.stream().noneMatch(f -> f.toString().endsWith(".png"))) {
        spec.commandLine()
            .getErr()
            .println("No PNG picture: Java finds no font on this machine. The SVG is whole.");
      }
    }
    screen.print(json ? LoadJson.text(audit) : LoadText.of(audit));
    screen.flush();
    return 0;
  }
}
