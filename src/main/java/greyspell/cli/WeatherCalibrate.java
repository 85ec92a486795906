package greyspell.cli;

import greyspell.calendar.Monthly;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.report.CloudTableText;
import greyspell.sky.CloudCalibration;
import greyspell.sky.Horizon;
import greyspell.sky.Site;
import greyspell.sky.SunPath;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A cloud table from a file that has both cloud cover and irradiance. */
@Command(
    name = "calibrate",
    description = {
      "Makes a cloud table from a file that has both cloud cover and irradiance.",
      "Prints it as a block for the scenario.",
      "With it, light is worked out from the cloud cover of other years or of a place nearby. Its error stands beside the classic curve's."
    },
    footer = {"", "Example: greyspell weather calibrate weather-samples/grey-maritime.csv"},
    mixinStandardHelpOptions = true)
final class WeatherCalibrate implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "FILE", description = "In any known format.")
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
      names = "--elevation",
      paramLabel = "M",
      description = "Where the file does not say; 0 without it.")
  private @Nullable Double elevationM;

  @Override
  public Integer call() {
    WeatherSeries weather = WeatherReader.readOnItsOwnClock(file, file.toString());
    var source = weather.source();
    double north = stated("--latitude", latitudeDeg, source.latitudeDeg(), 90.0);
    double east = stated("--longitude", longitudeDeg, source.longitudeDeg(), 180.0);
    Double up = elevationM != null ? elevationM : source.elevationM();
    double offsetH = source.utcOffsetH();
    var site =
        new Site(
            source.place(),
            north,
            east,
            up == null ? 0.0 : within("--elevation", up, -450.0, 6000.0),
            offsetH < -12.0 ? -12.0 : offsetH,
            Monthly.constant(0.2),
            Horizon.OPEN,
            null,
            null);
    SunPath sun = SunPath.of(north, east, offsetH, weather.calendar());
    CloudCalibration found = CloudCalibration.find(weather, sun, site);
    if (found == null) {
      throw BadInput.of(
          Place.of(file.toString()),
          "no cloud table can be made of it",
          "must have both global irradiance and cloud cover, in winter and in summer",
          "Look at what it holds with greyspell weather inspect.");
    }
    var screen = spec.commandLine().getOut();
    if (up == null) {
      screen.println(
          "# elevation: the file does not say, so sea level was taken; --elevation states it");
    }
    screen.print(CloudTableText.of(weather, found));
    screen.flush();
    return 0;
  }

  private double stated(
      String option, @Nullable Double asked, @Nullable Double ofFile, double most) {
    Double value = asked != null ? asked : ofFile;
    if (value == null) {
      throw BadInput.of(
          Place.of(file.toString()),
          "the file does not say where it was taken",
          "needed: latitude and longitude",
          "State them with --latitude and --longitude; " + option + " is missing.");
    }
    return within(option, value, -most, most);
  }

  private static double within(String option, double value, double low, double high) {
    if (value >= low && value <= high) {
      return value;
    }
    throw BadInput.of(
        Place.of(option), "found " + value, "must be " + low + " to " + high, "Is it mistyped?");
  }
}
