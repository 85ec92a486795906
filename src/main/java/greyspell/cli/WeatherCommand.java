package greyspell.cli;

import greyspell.report.InspectionText;
import greyspell.report.WeatherFiles;
import greyspell.study.WeatherInspection;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Weather files: what one holds, and made ones. */
@Command(
    name = "weather",
    description = "Looks at weather files, turns them into ours, or makes years of weather.",
    footer = {"", "Example: greyspell weather inspect weather-samples/grey-maritime.csv"},
    mixinStandardHelpOptions = true,
    subcommands = {
      WeatherCommand.Inspect.class,
      WeatherMakeCommand.class,
      WeatherConvert.class,
      WeatherCalibrate.class
    })
final class WeatherCommand implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  /** What a file holds and what is odd in it. */
  @Command(
      name = "inspect",
      description = {
        "Tells what a weather file holds and what looks wrong in it.",
        "Monthly means, peak-sun hours, missing hours, the longest dull spells; light at night, light brighter than the sun allows, times that do not fit the sun, jumps in temperature."
      },
      footer = {
        "",
        "Example: greyspell weather inspect weather-samples/grey-maritime.csv --pictures out/weather"
      },
      mixinStandardHelpOptions = true)
  static final class Inspect implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
        index = "0",
        paramLabel = "FILE",
        description = "In any known format; gzip is unpacked.")
    private Path file = Path.of("");

    @Option(
        names = "--latitude",
        paramLabel = "DEG",
        description = "Where the file does not say; south negative.")
    private @Nullable Double latitudeDeg;

    @Option(
        names = "--longitude",
        paramLabel = "DEG",
        description = "Where the file does not say; west negative.")
    private @Nullable Double longitudeDeg;

    @Option(
        names = "--utc-offset",
        paramLabel = "H",
        description = "Standard time to show the file on; without it the file's own clock.")
    private @Nullable Double utcOffsetH;

    @Option(
        names = "--pictures",
        paramLabel = "DIR",
        description = "Also write tables and pictures into this folder.")
    private @Nullable Path pictures;

    @Option(names = "--warn", description = "End with exit code 1 if anything looks wrong.")
    private boolean warn;

    @Override
    public Integer call() {
      var inspection = WeatherInspection.of(file, latitudeDeg, longitudeDeg, utcOffsetH);
      var screen = spec.commandLine().getOut();
      screen.print(InspectionText.of(inspection));
      Path folder = pictures;
      if (folder != null) {
        for (Path picture : WeatherFiles.write(inspection.weather(), folder, true)) {
          screen.println("Wrote " + picture);
        }
      }
      screen.flush();
      return warn && !InspectionText.findings(inspection).isEmpty() ? Main.FOUND : 0;
    }
  }
}
