package greyspell.scenario;

import greyspell.scenario.WeatherChoice.Memory;
import greyspell.scenario.WeatherChoice.WeatherPath;
import greyspell.weather.ensemble.WinterKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The weather and its many winters. */
final class WeatherBinder {
  static final WeatherChoice NONE = new WeatherChoice("", "");

  private final FilePaths paths;
  private final Border border;

  WeatherBinder(FilePaths paths, Border border) {
    this.paths = paths;
    this.border = border;
  }

  WeatherChoice weather(Block block) {
    List<WeatherPath> files = paths.all(block, WeatherKeys.FILE);
    List<WeatherPath> years = paths.all(block, WeatherKeys.YEARS);
    WeatherPath means =
        block.has(WeatherKeys.MEANS)
            ? new WeatherPath(
                block.text(WeatherKeys.MEANS), paths.resolved(block, WeatherKeys.MEANS))
            : null;
    if (!block.has(WeatherKeys.FILE) && means == null) {
      missing(block);
    }
    return new WeatherChoice(
        files,
        years,
        means,
        block.has(WeatherKeys.WINTERS) ? (Integer) block.whole(WeatherKeys.WINTERS) : null,
        how(block, means),
        block.word(WeatherKeys.MEMORY, Memory.values()),
        block.whole(WeatherKeys.SEED));
  }

  private void missing(Block block) {
    if (!block.isMistyped(WeatherKeys.FILE) && !block.isMistyped(WeatherKeys.MEANS)) {
      border.fault(
          block.place(),
          "neither \"file\" nor \"means\" in weather",
          "must hold hourly weather, or twelve monthly means",
          "Write for instance \"file: years.csv\"; docs/weather-files.md tells what is read.");
    }
  }

  private @Nullable WinterKind how(Block block, @Nullable WeatherPath means) {
    if (!block.has(WeatherKeys.HOW)) {
      return null;
    }
    WinterKind how = block.wordOrNull(WeatherKeys.HOW, WinterKind.values());
    boolean hasYears = block.has(WeatherKeys.FILE) || block.has(WeatherKeys.YEARS);
    if (how != null && how != WinterKind.MADE && means != null && !hasYears) {
      border.fault(
          block.place(WeatherKeys.HOW),
          Border.found("how", block.text(WeatherKeys.HOW)) + " beside means alone",
          "needs measured years",
          "Name them with \"file\" or \"years\", or write made.");
    }
    return how;
  }
}
