package greyspell.study;

import greyspell.weather.ensemble.ClimateSite;
import greyspell.weather.ensemble.WeatherYear;
import greyspell.weather.ensemble.WinterSource;
import java.util.List;

/** The last of some measured winters. */
record LatestWinters(WinterSource all, int years) implements WinterSource {
  private int before() {
    return all.years() - years;
  }

  @Override
  public void fill(int year, WeatherYear reused) {
    all.fill(before() + year, reused);
  }

  @Override
  public String name(int year) {
    return all.name(before() + year);
  }

  @Override
  public ClimateSite site() {
    return all.site();
  }

  @Override
  public String describe() {
    return "the last " + years + " of " + all.describe();
  }

  @Override
  public String format() {
    return all.format();
  }

  @Override
  public List<String> notes() {
    return all.notes();
  }
}
