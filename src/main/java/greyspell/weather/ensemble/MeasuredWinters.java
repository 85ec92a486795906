package greyspell.weather.ensemble;

import greyspell.weather.WeatherSeries;
import java.util.List;

/**
 * The measured winters one by one, whole: in the north from 1 July to 30 June, the half winters at
 * the ends left out; in the south by calendar year. A single year is one winter, read as a ring.
 */
final class MeasuredWinters implements WinterSource {
  private final MeasuredDays days;
  private final ClimateSite site;
  private final String file;
  private final int firstYear;
  private final boolean isTypical;
  private final int seamHour;

  MeasuredWinters(WeatherSeries series, ClimateSite site) {
    days = new MeasuredDays(series, site);
    this.site = site;
    file = series.source().file();
    firstYear = series.calendar().firstYear();
    isTypical = series.calendar().isTypical();
    seamHour = YearDays.seamDay(site.isNorthern()) * YearDays.HOURS_PER_DAY;
  }

  private boolean isSplit() {
    return seamHour > 0 && days.years > 1;
  }

  @Override
  public int years() {
    return isSplit() ? days.years - 1 : days.years;
  }

  @Override
  public void fill(int year, WeatherYear reused) {
    if (year < 0 || year >= years()) {
      throw new IllegalArgumentException("year " + year + " of " + years());
    }
    reused.beginAt(seamHour, days.more);
    int spring = isSplit() ? year + 1 : year;
    copy(days.globalWm2, spring, year, reused.globalHorizontalWm2());
    copy(days.airTemperatureC, spring, year, reused.airTemperatureC());
    for (int k = 0; k < MeasuredDays.MORE; k++) {
      if (days.more[k].length > 0) {
        copy(days.more[k], spring, year, reused.more(k));
      }
    }
  }

  private void copy(double[] from, int spring, int autumn, double[] to) {
    System.arraycopy(from, spring * WeatherYear.HOURS, to, 0, seamHour);
    System.arraycopy(
        from, autumn * WeatherYear.HOURS + seamHour, to, seamHour, WeatherYear.HOURS - seamHour);
  }

  @Override
  public String name(int year) {
    if (isTypical) {
      return "typical year";
    }
    int autumn = firstYear + year;
    if (!isSplit()) {
      return Integer.toString(autumn);
    }
    int next = (autumn + 1) % 100;
    return autumn + "/" + (next < 10 ? "0" : "") + next;
  }

  @Override
  public ClimateSite site() {
    return site;
  }

  @Override
  public String describe() {
    return years() + (years() == 1 ? " winter of " : " whole winters of ") + file;
  }

  @Override
  public String format() {
    return "measured winters";
  }

  @Override
  public List<String> notes() {
    return List.of("winters as they stand in the file; 29 February is left out");
  }
}
