package greyspell.cli;

import greyspell.report.LogFiles;
import greyspell.report.LogJson;
import greyspell.report.LogText;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.study.LogStudy;
import greyspell.weather.MonitorLog;
import greyspell.weather.MonitorMap;
import greyspell.weather.MonitorReader;
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

/** A home beside what its monitor wrote. */
@Command(
    name = "compare",
    description = {
      "Holds a home against its monitor's log (charge, solar power, load) over the same weeks.",
      "Tells what fits, what differs and by how much, each with its uncertainty; changes nothing."
    },
    footer = {
      "",
      "Example: greyspell compare scenarios/whin-cabin.yaml --log scenarios/whin-cabin-log.csv"
    },
    mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      paramLabel = "SCENARIO",
      description = "The scenario file; its weather must hold the log's weeks.")
  private Path scenario = Path.of("");

  @Option(
      names = "--log",
      required = true,
      paramLabel = "FILE",
      description = "The monitor's CSV, rows 1 to 60 minutes apart.")
  private Path log = Path.of("");

  @Option(
      names = "--columns",
      paramLabel = "MAP",
      description =
          "How its columns are to be read; not needed for local_start, charge_pct, solar_w, load_w (docs/compare.md).")
  private @Nullable Path columns;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Also write the text, JSON, a table of days and the picture, as SVG and PNG.")
  private @Nullable Path out;

  @Option(names = "--json", description = "Print the findings for other programs.")
  private boolean json;

  @Option(
      names = "--warn",
      description = "End with exit code 1 if anything differs by more than chance brings.")
  private boolean warn;

  @Mixin private LibraryOption library = new LibraryOption();

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    Scenario home = ScenarioReader.read(scenario, library.folder());
    Path map = columns;
    MonitorLog read =
        MonitorReader.read(
            log,
            log.toString(),
            map == null ? null : MonitorMap.read(map, map.toString()),
            home.site().utcOffsetH());
    LogStudy study = LogStudy.of(home, read);
    if (out != null) {
      List<Path> files = LogFiles.write(study, out);
      if (study.hasWeather() && files.stream().noneMatch(f -> f.toString().endsWith(".png"))) {
        spec.commandLine()
            .getErr()
            .println("No PNG picture: Java finds no font on this machine. The SVG is whole.");
      }
    }
    screen.print(json ? LogJson.text(study) : LogText.of(study));
    screen.flush();
    return warn && !study.named().isEmpty() ? Main.FOUND : 0;
  }
}
