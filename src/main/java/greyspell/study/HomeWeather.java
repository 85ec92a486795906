package greyspell.study;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.scenario.WeatherChoice;
import greyspell.scenario.WeatherChoice.WeatherPath;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.WinterSource;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the weather files that a scenario names. */
final class HomeWeather {
  private static final int FIRST_YEAR = 2001;
  private static final int MADE_YEARS = 10;

  private HomeWeather() {}

  /**
   * The hours that a home is run through where no winters are drawn; of monthly means alone ten
   * made years.
   */
  static WeatherSeries read(Scenario home) {
    WeatherChoice weather = home.weather();
    if (!weather.files().isEmpty()) {
      return read(home, weather.files());
    }
    if (!weather.years().isEmpty()) {
      return read(home, weather.years());
    }
    WinterSource made = WintersWanted.of(home, MADE_YEARS).source(home);
    return EnsembleSeries.of(made, FIRST_YEAR, MADE_YEARS);
  }

  /** Years to draw winters from: those stated for it, else those of the file; null if none. */
  static @Nullable WeatherSeries years(Scenario home) {
    WeatherChoice weather = home.weather();
    List<WeatherPath> files = weather.years().isEmpty() ? weather.files() : weather.years();
    if (files.isEmpty()) {
      return null;
    }
    WeatherSeries years = read(home, files);
    if (!weather.years().isEmpty() && years.calendar().isTypical()) {
      throw BadInput.of(
          Place.of(years.source().file()),
          "found a typical year",
          "weather.years must be measured years",
          "A typical year goes under weather.file.");
    }
    return withGlobal(home, years);
  }

  private static WeatherSeries read(Scenario home, List<WeatherPath> files) {
    List<String> names = files.stream().map(WeatherPath::resolvedPath).toList();
    return WeatherReader.readAll(
        files.stream().map(WeatherPath::path).toList(), names, home.site().utcOffsetH(), null);
  }

  /** Winters are drawn from light: where there is only cloud it is worked out first. */
  static WeatherSeries withGlobal(Scenario home, WeatherSeries series) {
    if (series.globalHorizontalWm2() != null) {
      return series;
    }
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = HomeLight.of(home, series).radiation().globalHorizontalWm2();
    columns.airTemperatureC = series.airTemperatureC();
    columns.windMs = series.windMs();
    columns.snowDepthM = series.snowDepthM();
    return new WeatherSeries(series.calendar(), series.source(), series.gaps(), columns);
  }

  static BadInput tooFew(WeatherSeries years, String what, int least) {
    return BadInput.of(
        Place.of(years.source().file()),
        "found "
            + years.calendar().years()
            + (years.calendar().isTypical() ? " typical year" : " years"),
        what + " winters need at least " + least + " measured years",
        "Name more files under weather, or let winters be made.");
  }
}
