package greyspell.weather.ensemble;

import java.util.ArrayList;
import java.util.List;

/** A source with one more thing to say. */
record NotedSource(WinterSource source, String note) implements WinterSource {
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
  public List<String> notes() {
    var notes = new ArrayList<String>();
    notes.add(note);
    notes.addAll(source.notes());
    return notes;
  }
}
