package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.weather.ClimateGenerator;
import greyspell.weather.ClimateRecipe;
import greyspell.weather.ClimateRecipes;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.ClimateFile;
import greyspell.weather.ensemble.ClimateSite;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.EnsembleSource;
import greyspell.weather.ensemble.SkyMemory;
import greyspell.weather.ensemble.WinterSource;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Years of weather: of an invented climate, from monthly means, or like measured years. */
@Command(
    name = "make",
    description = {
      "Makes hourly years of weather from a seed, the same on every machine.",
      "From one of three: the name of an invented climate (grey-maritime, cold-continental, high-plateau, south-island-coast); --means, twelve monthly means of sunshine and temperature; --like, a weather file: three or more years are spliced into new winters, fewer give their monthly means."
    },
    footer = {
      "",
      "Example: greyspell weather make grey-maritime --years 3 --first-year 2022 --seed 7 --out grey.csv",
      "Example: greyspell weather make --like weather-samples/grey-maritime.csv --years 30 --out more.csv"
    },
    mixinStandardHelpOptions = true)
final class WeatherMakeCommand implements Callable<Integer> {
  private static final String GREY_SPELLS = "grey-spells";
  private static final String ONE_LAG = "one-lag";

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "CLIMATE",
      description = "Name of an invented climate.")
  private @Nullable String climate;

  @Option(
      names = "--means",
      paramLabel = "FILE",
      description = "CSV of twelve monthly means (docs/weather-files.md).")
  private @Nullable Path means;

  @Option(
      names = "--like",
      paramLabel = "FILE",
      description = "Weather file whose years to learn from.")
  private @Nullable Path like;

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

  @Option(
      names = "--memory",
      paramLabel = "HOW",
      description =
          "With --means: grey-spells (if not said) or one-lag, skies that last a day or two.")
  private @Nullable String memory;

  @Option(
      names = "--latitude",
      paramLabel = "DEG",
      description = "With --like, where the file does not say; south negative.")
  private @Nullable Double latitudeDeg;

  @Option(
      names = "--longitude",
      paramLabel = "DEG",
      description = "With --like, where the file does not say; west negative.")
  private @Nullable Double longitudeDeg;

  @Option(
      names = "--utc-offset",
      paramLabel = "H",
      description = "With --like: standard time to write; without it the file's own clock.")
  private @Nullable Double utcOffsetH;

  @Override
  public Integer call() {
    check("--years", years, 1, 200);
    check("--first-year", firstYear, 1900, 2100);
    if (Stream.of(climate, means, like).filter(Objects::nonNull).count() != 1) {
      throw BadInput.of(
          Place.of("weather make"),
          "found no climate, or more than one of CLIMATE, --means, --like",
          "must have one of them",
          "Such as: greyspell weather make grey-maritime --out grey.csv");
    }
    refuseUnused();
    var screen = spec.commandLine().getOut();
    if (climate != null) {
      ClimateRecipe recipe = recipe(climate);
      WeatherOut.write(
          ClimateGenerator.make(recipe, firstYear, years, seed),
          ClimateGenerator.remarks(recipe, firstYear, years, seed),
          out);
      screen.println("Wrote " + out + ": " + years + " years of " + recipe.place() + ".");
      return 0;
    }
    WinterSource source = source();
    WeatherSeries series = EnsembleSeries.of(source, firstYear, years);
    var remarks = new ArrayList<>(series.gaps().notes());
    remarks.add(0, "made weather, " + source.describe());
    WeatherOut.write(series, remarks, out);
    screen.println("Wrote " + out + ": " + years + " years, " + source.describe() + ".");
    source.notes().forEach(note -> screen.println("Note: " + note + "."));
    return 0;
  }

  /** What plays no part must not be passed over in silence. */
  private void refuseUnused() {
    if (memory != null && means == null) {
      throw refused("--memory", "found it without --means", "goes with --means only");
    }
    if (like == null && (latitudeDeg != null || longitudeDeg != null || utcOffsetH != null)) {
      throw refused(
          "--latitude, --longitude, --utc-offset",
          "found without --like",
          "go with --like only; a file of means tells its own place");
    }
  }

  private WinterSource source() {
    Path file = means;
    if (file != null) {
      var contents = ClimateFile.read(file, file.toString());
      var choices = contents.choices().withMemory(memory());
      return EnsembleSource.noting(
          EnsembleSource.of(contents.climate(), choices, years, seed), contents.notes());
    }
    Path measured = Objects.requireNonNull(like);
    String name = measured.toString();
    within("--latitude", latitudeDeg, ClimateSite.FARTHEST_DEG);
    within("--longitude", longitudeDeg, 180.0);
    within("--utc-offset", utcOffsetH, 14.0);
    WeatherSeries series =
        utcOffsetH == null
            ? WeatherReader.readOnItsOwnClock(measured, name)
            : WeatherReader.read(measured, name, utcOffsetH);
    if (series.globalHorizontalWm2() == null) {
      throw refused(name, "has no global irradiance", "must have it to learn from");
    }
    var site = ClimateSite.of(series.source(), latitudeDeg, longitudeDeg);
    return EnsembleSource.like(series, site, years, seed);
  }

  private SkyMemory memory() {
    String how = memory == null ? GREY_SPELLS : memory;
    return switch (how) {
      case GREY_SPELLS -> SkyMemory.GREY_SPELLS;
      case ONE_LAG -> SkyMemory.ONE_LAG;
      default ->
          throw refused(
              "--memory", "found \"" + how + '"', "must be " + GREY_SPELLS + " or " + ONE_LAG);
    };
  }

  private static ClimateRecipe recipe(String climate) {
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
      throw refused(option, "found " + value, "must be " + low + " to " + high);
    }
  }

  private static void within(String option, @Nullable Double value, double most) {
    if (value != null && !(Math.abs(value) <= most)) {
      throw refused(option, "found " + value, "must be -" + (int) most + " to " + (int) most);
    }
  }

  private static BadInput refused(String place, String found, String expected) {
    return BadInput.of(Place.of(place), found, expected, "Choose another.");
  }
}
