package greyspell.weather;

import greyspell.calendar.HourCalendar;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Real years from files that hold one year each, set one behind the other. Typical years have no
 * place in time and are refused; so are years that do not follow each other, or other places.
 */
final class JoinedYears {
  private final List<WeatherSeries> years;
  private final String label;
  private final FaultList faults;
  private final List<String> notes = new ArrayList<>();

  JoinedYears(List<WeatherSeries> years, String label) {
    this.years = years;
    this.label = label;
    faults = new FaultList(label);
  }

  WeatherSeries series() {
    WeatherSource first = years.get(0).source();
    for (int y = 0; y < years.size(); y++) {
      faults.in(years.get(y).source().file());
      refuse(y);
    }
    faults.throwIfAny();
    int hours = 0;
    int missing = 0;
    int longest = 0;
    for (WeatherSeries year : years) {
      hours += year.hours();
      missing += year.gaps().missingHours();
      longest = Math.max(longest, year.gaps().longestGapHours());
      for (String note : year.gaps().notes()) {
        notes.add(year.source().file() + ": " + note);
      }
    }
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 =
        joined("global horizontal irradiance", hours, WeatherSeries::globalHorizontalWm2);
    columns.directNormalWm2 =
        joined("direct normal irradiance", hours, WeatherSeries::directNormalWm2);
    columns.diffuseHorizontalWm2 =
        joined("diffuse horizontal irradiance", hours, WeatherSeries::diffuseHorizontalWm2);
    columns.airTemperatureC = joined("air temperature", hours, WeatherSeries::airTemperatureC);
    columns.windMs = joined("wind speed", hours, WeatherSeries::windMs);
    columns.cloudShare = joined("cloud cover", hours, WeatherSeries::cloudShare);
    columns.snowDepthM = joined("snow depth", hours, WeatherSeries::snowDepthM);
    if (columns.globalHorizontalWm2 == null && columns.cloudShare == null) {
      faults.in(label);
      throw faults.alone(
          0,
          0,
          "neither global irradiance nor cloud cover in all of the files",
          "one of the two is needed throughout",
          "");
    }
    var source =
        new WeatherSource(
            label,
            first.format(),
            first.place(),
            first.latitudeDeg(),
            first.longitudeDeg(),
            first.elevationM(),
            first.utcOffsetH());
    return new WeatherSeries(
        HourCalendar.of(years.get(0).calendar().firstYear(), years.size()),
        source,
        new GapReport(missing, longest, List.copyOf(notes)),
        columns);
  }

  private void refuse(int y) {
    WeatherSeries year = years.get(y);
    WeatherSource first = years.get(0).source();
    if (year.calendar().isTypical()) {
      faults.add(
          "is a typical year",
          "only real years can follow each other",
          "Run each typical year by itself: each is one middling draw.");
      return;
    }
    int wanted = years.get(0).calendar().firstYear() + y;
    if (year.calendar().firstYear() != wanted) {
      faults.add(
          "is of " + year.calendar().firstYear(),
          "must be of " + wanted + ": years must follow each other, in the order of the files",
          "Name the files in order, without a year left out.");
    }
    if (Math.abs(year.source().utcOffsetH() - first.utcOffsetH()) > 1e-9) {
      faults.add(
          "is on " + Dates.clock(year.source().utcOffsetH()),
          "must be on the clock of the first file, " + Dates.clock(first.utcOffsetH()),
          "State the site's offset.");
    }
    if (JoinedFiles.isElsewhere(first.latitudeDeg(), year.source().latitudeDeg())
        || JoinedFiles.isElsewhere(first.longitudeDeg(), year.source().longitudeDeg())) {
      faults.add(
          "is of another place than " + first.file(),
          "files that are read as one must be of one place",
          "Take out the files of other places.");
    }
  }

  /** A column that one of the years has not is left out. */
  private double @Nullable [] joined(
      String words, int hours, Function<WeatherSeries, double @Nullable []> column) {
    int having = 0;
    for (WeatherSeries year : years) {
      having += column.apply(year) == null ? 0 : 1;
    }
    if (having < years.size()) {
      if (having > 0) {
        notes.add(words + ": left out, not all of the files have it");
      }
      return null;
    }
    var all = new double[hours];
    int at = 0;
    for (WeatherSeries year : years) {
      double[] part = column.apply(year);
      if (part != null) {
        System.arraycopy(part, 0, all, at, part.length);
        at += part.length;
      }
    }
    return all;
  }
}
