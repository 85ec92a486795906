package greyspell.study;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioReader;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.WinterSource;
import greyspell.words.German;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is said of one winter alone is told in German. */
class GermanWinterTest {
  @Test
  void oneWinter() {
    Scenario home = ScenarioReader.read(Path.of("scenarios/peat-hut.yaml"));
    Set<String> told = new LinkedHashSet<>();
    WinterSource measured = requireNonNull(WintersWanted.allMeasured(home));
    WinterSource drawn = WintersWanted.of(home, 3).source(home);
    for (WinterSource source : List.of(measured, drawn)) {
      WeatherSeries winter = EnsembleSeries.oneWinter(source, 0);
      told.addAll(WeatherNotes.cautions(home.site(), winter));
      WeatherNotes.assumptions(winter, HomeLight.of(home, winter).radiation())
          .forEach(
              a -> {
                told.add(a.why());
                if (a.key().equals("weather")) {
                  told.add(a.value());
                }
              });
    }
    var bare = new WeatherSeries.Columns();
    WeatherSeries full = EnsembleSeries.oneWinter(drawn, 0);
    bare.globalHorizontalWm2 = full.globalHorizontalWm2();
    bare.airTemperatureC = full.airTemperatureC();
    var plain = new WeatherSeries(full.calendar(), full.source(), full.gaps(), bare);
    WeatherNotes.assumptions(plain, HomeLight.of(home, plain).radiation())
        .forEach(a -> told.add(a.why()));
    for (String part : List.of(" alone, ", "the winter has no wind", "the winter has no snow")) {
      assertTrue(told.stream().anyMatch(t -> t.contains(part)), part + " in " + told);
    }
    German.check(told, List.of("weather-samples/grey-maritime.csv", "grey-maritime.csv"));
  }
}
