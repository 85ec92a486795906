package greyspell.weather;

import greyspell.calendar.Monthly;
import greyspell.quantity.Check;

/**
 * An invented climate: all that {@link ClimateGenerator} needs to make years of weather. Monthly
 * values are those of a long row of years; single years swing around them.
 *
 * @param name of the recipe, as on the command line
 * @param place invented
 * @param meanClearnessShare irradiation on level ground over that above the air, month by month
 * @param greyDayShare how many days of the month are grey
 * @param greyClearnessShare clearness of a grey day over that of the month
 * @param stayShare how far a day's sky follows the day before: 0 not at all, 1 for ever
 * @param yearSwingFactor how strongly months and winters differ between years: natural logarithm of
 *     the odds of a grey day for one standard deviation
 * @param meanTemperatureC month by month
 * @param temperatureSwingK standard deviation of a day's temperature, month by month
 * @param dayRangeK from the coldest to the warmest hour on a middling day
 * @param meanWindMs month by month
 * @param snowfallM new snow of a middling snowy day; 0 where it never snows
 */
public record ClimateRecipe(
    String name,
    String place,
    double latitudeDeg,
    double longitudeDeg,
    double elevationM,
    double utcOffsetH,
    Monthly meanClearnessShare,
    Monthly greyDayShare,
    double greyClearnessShare,
    double stayShare,
    double yearSwingFactor,
    Monthly meanTemperatureC,
    Monthly temperatureSwingK,
    double dayRangeK,
    Monthly meanWindMs,
    double snowfallM) {
  public ClimateRecipe {
    Check.within("latitudeDeg", latitudeDeg, -66.0, 66.0);
    Check.within("longitudeDeg", longitudeDeg, -180.0, 180.0);
    Check.within("elevationM", elevationM, -500.0, 5000.0);
    Check.within("utcOffsetH", utcOffsetH, -14.0, 14.0);
    Check.within("greyClearnessShare", greyClearnessShare, 0.2, 0.9);
    Check.within("stayShare", stayShare, 0.0, 0.9);
    Check.within("yearSwingFactor", yearSwingFactor, 0.0, 2.0);
    Check.within("dayRangeK", dayRangeK, 0.0, 30.0);
    Check.within("snowfallM", snowfallM, 0.0, 1.0);
    for (int month = 1; month <= 12; month++) {
      Check.within("meanClearnessShare", meanClearnessShare.in(month), 0.1, 0.75);
      Check.within("greyDayShare", greyDayShare.in(month), 0.02, 0.9);
      Check.within("temperatureSwingK", temperatureSwingK.in(month), 0.0, 15.0);
      Check.within("meanTemperatureC", meanTemperatureC.in(month), -50.0, 45.0);
      Check.within("meanWindMs", meanWindMs.in(month), 0.0, 20.0);
      Check.within(
          "clearness of a bright day",
          bright(meanClearnessShare.in(month), greyDayShare.in(month), greyClearnessShare),
          0.1,
          0.8);
    }
  }

  double greyClearness(int month) {
    return meanClearnessShare.in(month) * greyClearnessShare;
  }

  /** What bright days must bring so that the month keeps its mean. */
  double brightClearness(int month) {
    return bright(meanClearnessShare.in(month), greyDayShare.in(month), greyClearnessShare);
  }

  private static double bright(double mean, double greyDays, double greyOverMean) {
    return mean * (1.0 - greyDays * greyOverMean) / (1.0 - greyDays);
  }
}
