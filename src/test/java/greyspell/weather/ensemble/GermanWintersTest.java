package greyspell.weather.ensemble;

import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.Monthly;
import greyspell.weather.WeatherSeries;
import greyspell.words.German;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What drawn winters say of themselves is told in German. */
class GermanWintersTest {
  @TempDir private Path folder = Path.of("");

  private final Set<String> told = new LinkedHashSet<>();

  private void tell(WinterSource source) {
    told.add(source.describe());
    told.add(source.format());
    told.addAll(source.notes());
  }

  @Test
  void drawnWinters() throws IOException {
    SiteClimate climate = Climates.maritime();
    WinterSource made = EnsembleSource.of(climate, SynthesisChoices.USUAL, 4, 3);
    tell(made);
    tell(
        EnsembleSource.of(
            climate, SynthesisChoices.USUAL.withYearSpread(Monthly.constant(0.6)), 4, 3));
    tell(
        EnsembleSource.of(
            climate, SynthesisChoices.USUAL.withYearSpread(Monthly.constant(0.0)), 4, 3));
    WeatherSeries series = EnsembleSeries.of(made, 2011, 4);
    told.addAll(series.gaps().notes());
    told.add(series.source().file());
    tell(EnsembleSource.measured(series, climate.site()));
    tell(EnsembleSource.spliced(series, climate.site(), 5, 7));
    assertTrue(told.stream().anyMatch(t -> t.contains("cannot be met")), told.toString());
    told.add("the last 3 of " + EnsembleSource.measured(series, climate.site()).describe());
    told.add("1 winter of alt.csv");
    told.add("carried over beside sunshine and temperature: wind, snow depth, diffuse light");
    told.add("carried over beside sunshine and temperature: snow depth");
    for (String head :
        List.of("", "# azimuth: 170\n", "# albedo: 0.3\n", "# azimuth: 170\n# albedo: 0.3\n")) {
      told.addAll(means(head));
    }
    assertTrue(told.size() > 15, told.toString());
    German.check(told, List.of("alt.csv"));
  }

  private List<String> means(String head) throws IOException {
    var text = new StringBuilder("# latitude: 53.2\n# longitude: 6\n# utc_offset: 1\n# tilt: 60\n");
    text.append(head).append("month,peak_sun_hours,temperature_c\n");
    double[] hours = {0.9, 1.7, 2.6, 3.6, 4.0, 4.0, 4.0, 3.8, 3.0, 2.0, 1.1, 0.7};
    for (int month = 1; month <= 12; month++) {
      text.append(month).append(',').append(hours[month - 1]).append(",8\n");
    }
    Path file = Files.writeString(folder.resolve("m.csv"), text);
    List<String> notes = ClimateFile.read(file, "m.csv").notes();
    assertTrue(notes.size() == 1, notes.toString());
    return notes;
  }
}
