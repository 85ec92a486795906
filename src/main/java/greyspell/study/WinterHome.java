package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.SnowRule;
import greyspell.calendar.HourCalendar;
import greyspell.scenario.Scenario;
import greyspell.sky.SunPath;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.WeatherYear;
import greyspell.weather.ensemble.WinterSource;
import java.util.List;

/**
 * What all winters of one home share: every drawn winter is read by the same calendar, so the sun
 * is the same in all.
 */
final class WinterHome {
  private final Scenario home;
  private final WinterSource source;
  private final SunPath sun;

  /** What has to be said is added to the list. */
  WinterHome(Scenario home, WinterSource source, List<String> cautions) {
    this.home = home;
    this.source = source;
    var first = new WeatherYear();
    source.fill(0, first);
    WeatherSeries weather =
        EnsembleSeries.ring(source, first, HourCalendar.oneWinter(source.name(0)));
    sun = HomeLight.sun(home, weather);
    sayOfSnow(weather, cautions);
  }

  private void sayOfSnow(WeatherSeries weather, List<String> cautions) {
    for (ArraySpec array : home.arrays()) {
      if (array.snow() != SnowRule.NONE && weather.snowDepthM() == null) {
        cautions.add(
            array.name()
                + ": snow on the panels is asked for, but these winters have no snow depth; none was counted.");
      }
    }
  }

  /** A worker for one thread. */
  WinterRunner runner() {
    return new WinterRunner(home, source, sun);
  }
}
