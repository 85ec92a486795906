package greyspell.study;

import greyspell.outcome.WinterReader;
import greyspell.outcome.WinterRecord;
import greyspell.scenario.Scenario;
import greyspell.sky.SunPath;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.WinterSource;
import java.util.ArrayList;

/** Runs a home through one winter after another; one for each thread. */
final class WinterRunner {
  private final Scenario home;
  private final WinterSource source;
  private final SunPath sun;
  private final int seamHour;

  WinterRunner(Scenario home, WinterSource source, SunPath sun, int seamHour) {
    this.home = home;
    this.source = source;
    this.sun = sun;
    this.seamHour = seamHour;
  }

  WinterRecord run(int winter) {
    WeatherSeries weather = EnsembleSeries.oneWinter(source, winter);
    HomeLight light = HomeLight.keeping(home, weather, sun, 0);
    HomeRun ran = HomeRun.of(home, light, Without.NOTHING, new ArrayList<>(), new ArrayList<>());
    return new WinterReader(ran.design(), seamHour)
        .read(ran.laps().ledger(), winter, source.name(winter));
  }
}
