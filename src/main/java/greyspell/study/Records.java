package greyspell.study;

import greyspell.electrical.Finding;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.sky.Site;
import greyspell.weather.SiteExtremes;
import greyspell.weather.WeatherReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The record temperatures that strings are judged by, and where they come from. What the user
 * states holds, but a milder one than the weather file states for its place is a caution. What is
 * left out is taken from the weather file if it states its place's extremes and that place is near:
 * the further out of its 50-year figure and its own hours. Else it is not known.
 *
 * @param lowC null if not known
 * @param highC null if not known
 * @param findings where they come from, if not from the user; what speaks against them
 */
public record Records(@Nullable Double lowC, @Nullable Double highC, List<Finding> findings) {
  private static final String SUBJECT = "record temperatures";
  // as for the weather itself
  private static final double FAR_M = WeatherNotes.FAR_M;
  private static final double KM_PER_DEG = 111.2;

  public Records {
    findings = List.copyOf(findings);
  }

  public static Records of(Scenario home) {
    return of(home, home.site().recordLowC(), home.site().recordHighC());
  }

  /** With what was stated elsewhere; null where nothing is. */
  public static Records of(Scenario home, @Nullable Double lowC, @Nullable Double highC) {
    if (home.weather().files().isEmpty()) {
      return new Records(lowC, highC, List.of());
    }
    Path file = home.weather().files().get(0).path();
    SiteExtremes header = SiteExtremes.find(file);
    if (header == null) {
      return new Records(lowC, highC, List.of());
    }
    var findings = new ArrayList<Finding>();
    boolean isFar = isFar(home.site(), header);
    if (lowC != null && header.lowC() < lowC && !isFar) {
      findings.add(milder("record_low", lowC, header.lowC(), "colder", where(home, header)));
    }
    if (highC != null && header.highC() > highC && !isFar) {
      findings.add(milder("record_high", highC, header.highC(), "hotter", where(home, header)));
    }
    if (lowC != null && highC != null) {
      return new Records(lowC, highC, findings);
    }
    if (isFar) {
      findings.add(
          Finding.caution(
              SUBJECT,
              "the weather file states "
                  + Show.temperature(header.lowC())
                  + " and "
                  + Show.temperature(header.highC())
                  + " once in 50 years, but for "
                  + where(home, header)
                  + ": not taken",
              "it is too far away, or too much higher or lower, to speak for the house"));
      return new Records(lowC, highC, findings);
    }
    double[] airC = WeatherReader.readOnItsOwnClock(file, file.toString()).airTemperatureC();
    Double takenLowC = lowC == null ? Double.valueOf(Math.min(header.lowC(), coldest(airC))) : lowC;
    Double takenHighC =
        highC == null ? Double.valueOf(Math.max(header.highC(), hottest(airC))) : highC;
    if (!(takenLowC <= takenHighC)) {
      return new Records(lowC, highC, findings); // no such place: what is stated is misread
    }
    if (lowC == null) {
      findings.add(taken("record_low", takenLowC, header.lowC(), "coldest", where(home, header)));
    }
    if (highC == null) {
      findings.add(
          taken("record_high", takenHighC, header.highC(), "hottest", where(home, header)));
    }
    return new Records(takenLowC, takenHighC, findings);
  }

  private static Finding milder(
      String key, double statedC, double headerC, String word, String where) {
    return Finding.caution(
        SUBJECT,
        key
            + " "
            + Show.temperature(statedC)
            + ", but the weather file states "
            + Show.temperature(headerC)
            + " once in 50 years for "
            + where,
        "strings are judged as if it never were "
            + word
            + " than you state: is it the record, and of this place?");
  }

  private static Finding taken(
      String key, double takenC, double headerC, String most, String where) {
    boolean isHour = takenC != headerC;
    return Finding.caution(
        SUBJECT,
        key
            + " is not stated; "
            + Show.temperature(takenC)
            + " is taken: "
            + (isHour
                ? "the "
                    + most
                    + " hour of the weather file, beyond the "
                    + Show.temperature(headerC)
                : "what the weather file")
            + (isHour ? " that it states" : " states")
            + " once in 50 years for "
            + where,
        "an old record may lie beyond: state " + key + " if you know the place's own");
  }

  /** "Tarn Head, 12 km away and 40 m lower than the house". */
  private static String where(Scenario home, SiteExtremes header) {
    double upM = header.elevationM() - home.site().elevationM();
    return (header.place().isEmpty() ? "its place" : header.place())
        + ", "
        + Show.number(apartDeg(home.site(), header) * KM_PER_DEG, 0)
        + " km away and "
        + (Math.abs(upM) < 1.0
            ? "as high as"
            : Show.number(Math.abs(upM), 0) + " m " + (upM > 0.0 ? "higher" : "lower") + " than")
        + " the house";
  }

  private static boolean isFar(Site site, SiteExtremes header) {
    return !(apartDeg(site, header) <= WeatherNotes.FAR_DEG
        && Math.abs(header.elevationM() - site.elevationM()) <= FAR_M);
  }

  /** In degrees of latitude; good enough for neighbours. */
  private static double apartDeg(Site site, SiteExtremes header) {
    double north = header.latitudeDeg() - site.latitudeDeg();
    double turnDeg = Math.abs(header.longitudeDeg() - site.longitudeDeg()) % 360.0;
    double east = Math.min(turnDeg, 360.0 - turnDeg) * Math.cos(Math.toRadians(site.latitudeDeg()));
    return Math.hypot(north, east);
  }

  private static double coldest(double[] airC) {
    double coldestC = Double.POSITIVE_INFINITY;
    for (double c : airC) {
      coldestC = c < coldestC ? c : coldestC;
    }
    return coldestC;
  }

  private static double hottest(double[] airC) {
    double hottestC = Double.NEGATIVE_INFINITY;
    for (double c : airC) {
      hottestC = c > hottestC ? c : hottestC;
    }
    return hottestC;
  }
}
