package greyspell.weather.ensemble;

import java.util.ArrayList;
import java.util.List;

/** A source with more to say. */
record NotedSource(WinterSource source, List<String> more) implements WinterSource {
  @Override
  public int years() {
    return source.years();
  }

  @Override
  public void fill(int year, WeatherYear reused) {
    source.fill(year, reused);
  }

  @Override
  public String name(int year) {
    return source.name(year);
  }

  @Override
  public ClimateSite site() {
    return source.site();
  }

  @Override
  public String describe() {
    return source.describe();
  }

  @Override
  public String format() {
    return source.format();
  }

  @Override
  public List<String> notes() {
    var notes = new ArrayList<>(more);
    notes.addAll(source.notes());
    return notes;
  }
}
