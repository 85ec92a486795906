package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.weather.ColumnMap;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Any weather files as one file of ours. */
@Command(
    name = "convert",
    description = {
      "Turns weather files into one plain CSV that a scenario can name.",
      "Several files follow each other in time: daily files, or a year each. A table that is no known format is read by a column map (docs/weather-files.md shows one)."
    },
    footer = {
      "",
      "Example: greyspell weather convert hours.csv --columns map.yaml --out weather.csv"
    },
    mixinStandardHelpOptions = true)
final class WeatherConvert implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0..*",
      arity = "1..*",
      paramLabel = "FILE",
      description = "In the order of their times; gzip is unpacked.")
  private List<Path> files = new ArrayList<>();

  @Option(
      names = {"-o", "--out"},
      required = true,
      paramLabel = "FILE",
      description = "The CSV file to write.")
  private Path out = Path.of("");

  @Option(
      names = "--columns",
      paramLabel = "MAP",
      description = "How the columns are to be read; without it the files must be a known format.")
  private @Nullable Path columns;

  @Option(
      names = "--utc-offset",
      paramLabel = "H",
      description = "Standard time of the site; without it the first file's own clock.")
  private @Nullable Double utcOffsetH;

  @Override
  public Integer call() {
    Double offsetH = utcOffsetH;
    if (offsetH != null && !(offsetH >= -14.0 && offsetH <= 14.0)) {
      throw BadInput.of(
          Place.of("--utc-offset"), "found " + offsetH, "must be -14 to 14", "Write it in hours.");
    }
    Path map = columns;
    var names = new ArrayList<String>();
    for (Path file : files) {
      names.add(file.toString());
    }
    WeatherSeries series =
        WeatherReader.readAll(
            files, names, offsetH, map == null ? null : ColumnMap.read(map, map.toString()));
    write(series, names);
    var calendar = series.calendar();
    var screen = spec.commandLine().getOut();
    screen.println(
        "Wrote "
            + out
            + ": "
            + calendar.years()
            + (calendar.years() == 1 ? " year" : " years")
            + (calendar.isTypical() ? " (typical)" : " from " + calendar.firstYear())
            + ", "
            + series.gaps().missingHours()
            + " of "
            + series.hours()
            + " hours were missing and are filled.");
    series.gaps().notes().forEach(note -> screen.println("  - " + note));
    return 0;
  }

  private void write(WeatherSeries series, List<String> names) {
    var remarks = new ArrayList<String>();
    remarks.add("read by greyspell weather convert from " + names.get(0) + more(names.size() - 1));
    if (series.gaps().missingHours() > 0) {
      remarks.add(series.gaps().missingHours() + " missing hours are filled");
    }
    WeatherOut.write(series, remarks, out);
  }

  private static String more(int count) {
    return count == 0 ? "" : " and " + count + " more";
  }
}
