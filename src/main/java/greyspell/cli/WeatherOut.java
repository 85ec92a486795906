package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.FileTrouble;
import greyspell.quantity.Place;
import greyspell.weather.PlainCsvWriter;
import greyspell.weather.WeatherSeries;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Where the commands that make weather put it. */
final class WeatherOut {
  private WeatherOut() {}

  /**
   * As a plain hourly CSV, its remarks on top.
   *
   * @throws BadInput if it cannot be written there
   */
  static void write(WeatherSeries series, List<String> remarks, Path out) {
    try {
      PlainCsvWriter.write(series, remarks, out);
    } catch (IOException e) {
      throw BadInput.of(
          Place.of(out.toString()),
          "cannot be written (" + FileTrouble.words(e) + ")",
          "must be a file in a folder that is there and may be written",
          "Make the folder first, or name another.");
    }
  }
}
