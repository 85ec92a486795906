package greyspell.study;

import greyspell.calendar.HourCalendar;
import greyspell.scenario.Scenario;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.WeatherYear;
import greyspell.weather.ensemble.WinterKind;
import greyspell.weather.ensemble.WinterSource;
import org.jspecify.annotations.Nullable;

/**
 * How dull the winter of a typical year is beside measured ones, by the sunshine on level ground in
 * the three darkest months: November to January in the north, May to July in the south.
 *
 * @param file the typical year's
 * @param rank 1 for the dullest: "as dull as the 4th of 10"; one more than the winters where all of
 *     them are duller
 * @param winters measured ones beside it
 * @param darkWhm2 of the typical year in these months together
 * @param dullestWhm2 of the dullest measured winter
 */
public record TypicalRank(String file, int rank, int winters, double darkWhm2, double dullestWhm2) {
  private static final int[] NORTHERN_MONTHS = {11, 12, 1};
  private static final int[] SOUTHERN_MONTHS = {5, 6, 7};

  /** Null where the file is no typical year, or where no measured winters stand beside it. */
  static @Nullable TypicalRank of(Scenario home, WintersDrawn drawn) {
    if (!isAsked(home)) {
      return null;
    }
    WinterSource measured =
        drawn.kind() == WinterKind.MEASURED ? drawn.source() : WintersWanted.allMeasured(home);
    return of(home, HomeWeather.read(home), measured);
  }

  /** The same of weather that is read already and run by itself. */
  static @Nullable TypicalRank of(Scenario home, WeatherSeries own) {
    return isAsked(home) && own.calendar().isTypical()
        ? of(home, own, WintersWanted.allMeasured(home))
        : null;
  }

  private static boolean isAsked(Scenario home) {
    return !home.weather().files().isEmpty() && !home.weather().years().isEmpty();
  }

  private static @Nullable TypicalRank of(
      Scenario home, WeatherSeries own, @Nullable WinterSource measured) {
    WeatherSeries typical = HomeWeather.withGlobal(home, own);
    double[] ownWm2 = typical.globalHorizontalWm2();
    if (!typical.calendar().isTypical() || measured == null || ownWm2 == null) {
      return null;
    }
    boolean isNorthern = home.site().isNorthern();
    double ownWhm2 = darkWhm2(ownWm2, isNorthern);
    double dullestWhm2 = Double.POSITIVE_INFINITY;
    int duller = 0;
    var year = new WeatherYear();
    for (int y = 0; y < measured.years(); y++) {
      measured.fill(y, year);
      double whm2 = darkWhm2(year.globalHorizontalWm2(), isNorthern);
      duller += whm2 < ownWhm2 ? 1 : 0;
      dullestWhm2 = Math.min(dullestWhm2, whm2);
    }
    return new TypicalRank(
        typical.source().file(), duller + 1, measured.years(), ownWhm2, dullestWhm2);
  }

  private static double darkWhm2(double[] globalWm2, boolean isNorthern) {
    HourCalendar calendar = HourCalendar.typicalYear();
    double sumWh = 0.0;
    for (int month : isNorthern ? NORTHERN_MONTHS : SOUTHERN_MONTHS) {
      for (int h = 0; h < calendar.hours(); h++) {
        sumWh += calendar.month(h) == month ? globalWm2[h] : 0.0;
      }
    }
    return sumWh;
  }

  /** One sentence. */
  public String words() {
    if (rank > winters) {
      return "The typical year is brighter than all "
          + winters
          + " measured winters beside it: it hides every bad one.";
    }
    String duller = rank == 1 ? "none" : Integer.toString(rank - 1);
    return "The winter of the typical year "
        + file
        + " is as dull as the "
        + (rank == 1 ? "" : ordinal(rank) + " ")
        + "dullest of "
        + winters
        + " measured ones: "
        + duller
        + (rank <= 2 ? " was" : " were")
        + " duller.";
  }

  static String ordinal(int rank) {
    int tens = rank % 100;
    String end =
        tens >= 11 && tens <= 13
            ? "th"
            : switch (rank % 10) {
              case 1 -> "st";
              case 2 -> "nd";
              case 3 -> "rd";
              default -> "th";
            };
    return rank + end;
  }
}
