package greyspell.study;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.calendar.HourCalendar;
import greyspell.outcome.WinterReader;
import greyspell.outcome.WinterRecord;
import greyspell.scenario.Scenario;
import greyspell.sky.SunPath;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.WeatherYear;
import greyspell.weather.ensemble.WinterSource;
import java.util.ArrayList;

/**
 * Runs a home through one winter after another; one for each thread. Weather, light, forcing and
 * books are written over by each winter, so that a thousand take no more memory than one and a
 * thread allocates next to nothing but the records.
 */
final class WinterRunner {
  private final Scenario home;
  private final WinterSource source;
  private final WeatherYear year = new WeatherYear();
  private final WeatherSeries weather;
  private final HomeLight light;
  private final HomeForcing forcingHome;
  private final PanelsAgain panels;
  private final Forcing.Columns columns;
  private final Forcing forcing;
  private final Ledger books;
  private final WinterReader reader;
  private final boolean isVoltageFollowed;
  private Design design;

  WinterRunner(Scenario home, WinterSource source, SunPath sun) {
    this.home = home;
    this.source = source;
    source.fill(0, year);
    weather = EnsembleSeries.ring(source, year, HourCalendar.oneWinter(source.name(0)));
    light = HomeLight.keeping(home, weather, sun, 0);
    forcingHome =
        new HomeForcing(home, light, Without.NOTHING, new ArrayList<>(), new ArrayList<>());
    Forcing made = forcingHome.make();
    panels = new PanelsAgain(home, light, forcingHome.models());
    columns = panels.columns(made);
    forcing = new Forcing(weather.calendar(), columns);
    design = design();
    books = Ledger.of(forcing, design);
    reader = new WinterReader(design, year.seamHour(), home.bank().standbyW());
    isVoltageFollowed = HomeRun.followsVoltage(home, design);
  }

  private Design design() {
    return new HomeDesign(home, Without.NOTHING).make(weather, new ArrayList<>());
  }

  WinterRecord run(int winter) {
    source.fill(winter, year);
    light.again();
    panels.shine();
    panels.fill(columns, null);
    forcingHome.again(columns);
    if (home.generator() != null) {
      design = design(); // what it gives depends on the air
    }
    Laps.into(forcing, design, books);
    if (isVoltageFollowed) {
      panels.fill(columns, books.bankV());
      Laps.into(forcing, design, books);
    }
    return reader.read(books, winter, source.name(winter));
  }
}
