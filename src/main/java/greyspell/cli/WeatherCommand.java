package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.report.InspectionText;
import greyspell.report.WeatherFiles;
import greyspell.study.WeatherInspection;
import greyspell.weather.ClimateGenerator;
import greyspell.weather.ClimateRecipe;
import greyspell.weather.ClimateRecipes;
import greyspell.weather.PlainCsvWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Weather files: what one holds, and invented ones. */
@Command(
    name = "weather",
    description =
        "Looks at weather files, turns them into ours, or makes years of an invented climate.",
    footer = {"", "Example: greyspell weather inspect weather-samples/grey-maritime.csv"},
    mixinStandardHelpOptions = true,
    subcommands = {
      WeatherCommand.Inspect.class,
      WeatherCommand.Make.class,
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

  /** Years of an invented climate. */
  @Command(
      name = "make",
      description = {
        "Makes hourly years of an invented climate from a seed, the same on every machine.",
        "Climates: grey-maritime, cold-continental, high-plateau, south-island-coast."
      },
      footer = {
        "",
        "Example: greyspell weather make grey-maritime --years 3 --first-year 2022 --seed 7 --out grey.csv"
      },
      mixinStandardHelpOptions = true)
  static final class Make implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "CLIMATE", description = "Name of an invented climate.")
    private String climate = "";

    @Option(
        names = {"-o", "--out"},
        required = true,
        paramLabel = "FILE",
        description = "The CSV file to write.")
    private Path out = Path.of("");

    @Option(
        names = "--years",
        defaultValue = "3",
        paramLabel = "N",
        description = "How many (1 to 200; 3 if not said).")
    private int years;

    @Option(
        names = "--first-year",
        defaultValue = "2022",
        paramLabel = "YEAR",
        description = "The first one (2022 if not said).")
    private int firstYear;

    @Option(
        names = "--seed",
        defaultValue = "1",
        paramLabel = "S",
        description = "Another number, other years.")
    private long seed;

    @Override
    public Integer call() {
      ClimateRecipe recipe = recipe();
      check("--years", years, 1, 200);
      check("--first-year", firstYear, 1900, 2100);
      var series = ClimateGenerator.make(recipe, firstYear, years, seed);
      try {
        PlainCsvWriter.write(series, ClimateGenerator.remarks(recipe, firstYear, years, seed), out);
      } catch (IOException e) {
        throw BadInput.of(
            Place.of(out.toString()),
            "cannot be written (" + FileTrouble.words(e) + ")",
            "must be a file in a folder that is there and may be written",
            "Make the folder first, or name another.");
      }
      spec.commandLine()
          .getOut()
          .println("Wrote " + out + ": " + years + " years of " + recipe.place() + ".");
      return 0;
    }

    private ClimateRecipe recipe() {
      ClimateRecipe found = ClimateRecipes.find(climate);
      if (found != null) {
        return found;
      }
      String near = Nearest.of(climate, ClimateRecipes.names());
      throw BadInput.of(
          Place.of("CLIMATE"),
          "found \"" + climate + "\"",
          "must be one of " + String.join(", ", ClimateRecipes.names()),
          near == null ? "Write one of these names." : "Did you mean " + near + "?");
    }

    private static void check(String option, int value, int low, int high) {
      if (value < low || value > high) {
        throw BadInput.of(
            Place.of(option),
            "found " + value,
            "must be " + low + " to " + high,
            "Choose another number.");
      }
    }
  }
}
