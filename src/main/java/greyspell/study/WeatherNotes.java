package greyspell.study;

import greyspell.quantity.Show;
import greyspell.scenario.Scenario.Assumption;
import greyspell.sky.Radiation;
import greyspell.sky.Site;
import greyspell.sky.SunClock;
import greyspell.weather.GapReport;
import greyspell.weather.WeatherSeries;
import greyspell.weather.WeatherSource;
import java.util.ArrayList;
import java.util.List;

/** What has to be said about a weather file before anyone believes a result that rests on it. */
final class WeatherNotes {
  static final double FAR_DEG = 1.0;
  static final double FAR_M = 300.0;
  private static final double NIGHT_LIGHT_SHARE = 0.01;

  private WeatherNotes() {}

  static List<String> cautions(Site site, WeatherSeries weather) {
    var cautions = new ArrayList<String>();
    var calendar = weather.calendar();
    if (calendar.isTypical()) {
      cautions.add(
          "The weather is a typical year, put together from months near the long-term average: one middling draw. Real winters differ by a"
              + " factor of two, and the bad ones are not in it.");
    } else if (calendar.isOneWinter()) {
      cautions.add(
          "This is "
              + calendar.name()
              + " alone, "
              + weather.source().file()
              + ": others are duller or brighter.");
    } else if (calendar.years() == 1) {
      cautions.add(
          "The weather is a single year; other winters will be duller or brighter. More years tell how often.");
    }
    WeatherSource source = weather.source();
    Double latitudeDeg = source.latitudeDeg(),
        longitudeDeg = source.longitudeDeg(),
        elevationM = source.elevationM();
    if (latitudeDeg != null && longitudeDeg != null) {
      double north = Math.abs(latitudeDeg - site.latitudeDeg());
      double east =
          Math.abs(longitudeDeg - site.longitudeDeg())
              * Math.cos(Math.toRadians(site.latitudeDeg()));
      if (north > FAR_DEG || east > FAR_DEG) {
        cautions.add(
            "The weather was taken at "
                + Show.number(latitudeDeg, 2)
                + ", "
                + Show.number(longitudeDeg, 2)
                + ", far from the site at "
                + Show.number(site.latitudeDeg(), 2)
                + ", "
                + Show.number(site.longitudeDeg(), 2)
                + "; the sun is the site's, the cloud is the file's.");
      }
    }
    if (elevationM != null && Math.abs(elevationM - site.elevationM()) > FAR_M) {
      cautions.add(
          "The weather was taken at "
              + Show.number(elevationM, 0)
              + " m, the site lies at "
              + Show.number(site.elevationM(), 0)
              + " m: temperature is not corrected for the height.");
    }
    cautions.addAll(recordCautions(site, weather.airTemperatureC()));
    GapReport gaps = weather.gaps();
    if (gaps.missingHours() > 0) {
      cautions.add(
          gaps.missingHours()
              + " of "
              + weather.hours()
              + " hours of weather were missing and filled, at most "
              + gaps.longestGapHours()
              + " in one run.");
    }
    return cautions;
  }

  /** Strings are judged by the records: an hour beyond them shows that one is misread. */
  private static List<String> recordCautions(Site site, double[] airC) {
    double coldestC = airC[0];
    double hottestC = airC[0];
    for (double c : airC) {
      coldestC = c < coldestC ? c : coldestC;
      hottestC = c > hottestC ? c : hottestC;
    }
    var cautions = new ArrayList<String>();
    Double lowC = site.recordLowC();
    if (lowC != null && coldestC < lowC) {
      cautions.add(
          "The weather holds an hour of "
              + Show.temperature(coldestC)
              + ", colder than the site's record_low of "
              + Show.temperature(lowC)
              + ": strings are judged as if it never were so cold.");
    }
    Double highC = site.recordHighC();
    if (highC != null && hottestC > highC) {
      cautions.add(
          "The weather holds an hour of "
              + Show.temperature(hottestC)
              + ", hotter than the site's record_high of "
              + Show.temperature(highC)
              + ": strings are judged as if it never were so hot.");
    }
    return cautions;
  }

  /** What the sun of the site says of the light in the file. */
  static List<String> lightCautions(Radiation radiation) {
    SunClock clock = radiation.findSunClock();
    if (clock != null && clock.isWrong()) {
      return List.of(
          "The weather's clear days lie "
              + Show.number(Math.abs(clock.shiftMin()), 0)
              + " minutes (± "
              + Show.number(clock.uncertaintyMin(), 0)
              + ") too "
              + (clock.shiftMin() > 0.0 ? "early" : "late")
              + " against the sun of the site: the clock, the stamps or the place of one of them is"
              + " wrong, and the result with it. Look at the file with weather inspect.");
    }
    double share = radiation.nightLightShare();
    return share > NIGHT_LIGHT_SHARE
        ? List.of(
            Show.percent(share)
                + " of the weather's light comes while the sun is down at the site: the clock or the"
                + " place of one of them is wrong, and the result with it. Look at the file with"
                + " weather inspect.")
        : List.of();
  }

  static List<Assumption> assumptions(WeatherSeries weather, Radiation radiation) {
    var assumptions = new ArrayList<Assumption>();
    String has = weather.calendar().isOneWinter() ? "the winter has " : "the file holds ";
    if (radiation.resplitHours() > 0) {
      assumptions.add(
          new Assumption(
              "weather.diffuse",
              "split from global in " + radiation.resplitHours() + " hours",
              "there the file's direct and diffuse light do not add up to its global light"));
    }
    for (String note : weather.gaps().notes()) {
      assumptions.add(new Assumption("weather", note, "rules for reading, docs/weather-files.md"));
    }
    if (weather.globalHorizontalWm2() == null) {
      assumptions.add(
          new Assumption(
              "weather.global",
              "from cloud cover",
              "clear sky derated by cloud: the file holds no irradiance"));
    }
    if (weather.directNormalWm2() == null && weather.diffuseHorizontalWm2() == null) {
      assumptions.add(
          new Assumption(
              "weather.diffuse",
              "split from global",
              "Erbs: " + has + "neither direct nor diffuse light"));
    }
    if (weather.windMs() == null) {
      assumptions.add(
          new Assumption(
              "weather.wind", "1 m/s", has + "no wind; as for the nominal cell temperature"));
    }
    if (weather.snowDepthM() == null) {
      assumptions.add(
          new Assumption("weather.snow", "no snow on the ground", has + "no snow depth"));
    }
    return assumptions;
  }
}
