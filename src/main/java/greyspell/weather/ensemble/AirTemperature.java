package greyspell.weather.ensemble;

import greyspell.calendar.Monthly;

/**
 * Air temperature that goes with the sky: clear days are colder than grey ones in the short days,
 * warmer in the long ones, and have the wider swing from morning to afternoon.
 *
 * <pre>
 * T      = T_month + S rel + x + A shape(t)         rel = K / Kbar - 1
 * S      = 0.5 - 5 cos ws                           what a day twice as clear as the month is warmer by, K
 * x      = 0.80 x' + 0.60 v N,   v^2 = swing^2 - S^2 variance(rel)                  one day before: '
 * swing  = cold + (warm - cold) (T_month - Tmin) / R,   cold = 1.8 + 0.15 R,   warm = 2.5 + 0.03 R
 * A      = 25.8 Kbar - 5.21, at least 2, + (11.5 - 10 cos ws) (K - Kbar); never below 1         K
 * shape  = 0.4632 cos(u - 3.805) + 0.0984 cos(2u - 0.360) + 0.0168 cos(3u - 0.822) + 0.0138 cos(4u - 3.513)
 *
 * T_month  on straight lines through the months' middles, each month's mean kept    C
 * Tmin, R  of the coldest month; warmest less coldest                               C, K     R 0 .. 60
 * K, Kbar  clearness of the day, of the month                                       1
 * ws       sunset hour angle          rad   0 .. pi        u   2 pi (t - 1) / 24,  t solar hour   rad
 * swing    standard deviation of a day's temperature, stated or by this rule        K        0 .. 15
 * </pre>
 *
 * Between the middles of two days mean and A run straight. Not for records: the extremes are those
 * of a normal distribution.
 *
 * <p>Source: shape and 25.8 Kbar - 5.21: Erbs, Klein and Beckman (1983), formulas seen second-hand.
 * S, 0.80, the swing's rule and how A follows the day: own fit, no source; the first two and the
 * last on ten measured years of one maritime lowland station, the swing also on our idea of a
 * continental one. Held by SynthesisPublishedTest, MadeWintersTest.
 */
final class AirTemperature {
  private static final double DAY_CORRELATION = 0.80;
  private static final double NEW = Math.sqrt(1.0 - DAY_CORRELATION * DAY_CORRELATION);
  private static final double LEAST_RANGE_K = 1.0;

  private final SunYear sun;
  private final MonthSky[] skies;
  private final int[] monthOfDay;
  private final int seamDay;
  private final double[] courseC;
  private final double[] slopeK = new double[WeatherYear.DAYS];
  private final double[] restK = new double[WeatherYear.DAYS];
  private final double[] monthRangeK = new double[WeatherYear.DAYS];
  private final double[] rangePerClearnessK = new double[WeatherYear.DAYS];

  AirTemperature(
      SiteClimate climate, SynthesisChoices choices, SunYear sun, MonthSky[] skies, int seamDay) {
    this.sun = sun;
    this.skies = skies;
    this.seamDay = seamDay;
    monthOfDay = YearDays.monthOfDay();
    double[] swingK = swingK(climate.meanTemperatureC(), choices);
    var means = new double[YearDays.MONTHS];
    for (int m = 0; m < means.length; m++) {
      means[m] = climate.meanTemperatureC().in(m + 1);
    }
    courseC = YearDays.course(means);
    for (int day = 0; day < WeatherYear.DAYS; day++) {
      MonthSky sky = skies[monthOfDay[day]];
      double cosSunset = sun.cosSunset[day];
      slopeK[day] = 0.5 - 5.0 * cosSunset;
      double bySkyK = slopeK[day] * sky.relativeDeviation();
      double swing = swingK[monthOfDay[day]];
      restK[day] = Math.sqrt(Math.max(0.0, swing * swing - bySkyK * bySkyK));
      monthRangeK[day] = Math.max(2.0, 25.8 * sky.mean() - 5.21);
      rangePerClearnessK[day] = 11.5 - 10.0 * cosSunset;
    }
  }

  private static double[] swingK(Monthly meanC, SynthesisChoices choices) {
    Monthly stated = choices.temperatureSwingK();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int month = 1; month <= YearDays.MONTHS; month++) {
      least = Math.min(least, meanC.in(month));
      most = Math.max(most, meanC.in(month));
    }
    double rangeK = most - least;
    double coldK = 1.8 + 0.15 * rangeK;
    double warmK = 2.5 + 0.03 * rangeK;
    var swingK = new double[YearDays.MONTHS];
    for (int m = 0; m < swingK.length; m++) {
      double share = rangeK > 0.0 ? (meanC.in(m + 1) - least) / rangeK : 0.5;
      swingK[m] = stated == null ? coldK + (warmK - coldK) * share : stated.in(m + 1);
    }
    return swingK;
  }

  /** Share of the day's swing at a solar hour; zero over a day. */
  static double shape(double solarH) {
    double u = 2.0 * Math.PI * (solarH - 1.0) / YearDays.HOURS_PER_DAY;
    return 0.4632 * StrictMath.cos(u - 3.805)
        + 0.0984 * StrictMath.cos(2.0 * u - 0.360)
        + 0.0168 * StrictMath.cos(3.0 * u - 0.822)
        + 0.0138 * StrictMath.cos(4.0 * u - 3.513);
  }

  /** Hours from the year's clearness; an offset is added to each day's. */
  void fill(WeatherYear year, double[] offsetOfDayK) {
    YearRandom random = year.random;
    double x = random.normal();
    for (int i = 0; i < WeatherYear.DAYS; i++) {
      int day = (seamDay + i) % WeatherYear.DAYS;
      int m = monthOfDay[day];
      double mean = skies[m].mean();
      double clearness = year.clearness[day];
      year.dayTemperatureC[day] =
          courseC[day] + slopeK[day] * (clearness / mean - 1.0) + restK[day] * x;
      double rangeK = monthRangeK[day] + rangePerClearnessK[day] * (clearness - mean);
      year.dayRangeK[day] = Math.max(LEAST_RANGE_K, rangeK);
      x = DAY_CORRELATION * x + NEW * random.normal();
    }
    for (int day = 0; day < WeatherYear.DAYS; day++) {
      int before = day == seamDay ? day : (day + WeatherYear.DAYS - 1) % WeatherYear.DAYS;
      int next = (day + 1) % WeatherYear.DAYS;
      int after = next == seamDay ? day : next;
      fillHalf(year, day, before, 0, offsetOfDayK[day]);
      fillHalf(year, day, after, YearDays.HOURS_PER_DAY / 2, offsetOfDayK[day]);
    }
  }

  private void fillHalf(WeatherYear year, int day, int other, int from, double offsetK) {
    double[] temperatureC = year.airTemperatureC();
    double meanC = year.dayTemperatureC[day];
    double rangeK = year.dayRangeK[day];
    double meanStepK = year.dayTemperatureC[other] - meanC;
    double rangeStepK = year.dayRangeK[other] - rangeK;
    int first = day * YearDays.HOURS_PER_DAY;
    for (int h = from; h < from + YearDays.HOURS_PER_DAY / 2; h++) {
      double share = Math.abs((h + 0.5) / YearDays.HOURS_PER_DAY - 0.5);
      temperatureC[first + h] =
          offsetK
              + meanC
              + share * meanStepK
              + (rangeK + share * rangeStepK) * sun.temperatureShape[first + h];
    }
  }
}
