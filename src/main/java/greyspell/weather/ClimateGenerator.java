package greyspell.weather;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Makes years of hourly weather from an invented climate. Skies last (a day follows the day before)
 * and years differ (a winter can be grey as a whole): weather without either hides the worst
 * winter.
 *
 * <pre>
 * a month's swing    z = 0.6 y + 0.8 u,   u = 0.5 u' + 0.866 N,   y = N, one for each winter
 * odds of a grey day exp(ln(p/(1-p)) sqrt(1 + 0.35 f^2) + f z),   f = the recipe's swing factor
 * the sky            grey or bright, P(grey | grey before) = p + s (1-p),  P(grey | bright before) = p (1-s)
 * clearness of a day K = clearness of the sky's kind x (1 + spread N)
 * of an hour         k = K (a + b cos w) (1 + spread y),     y = 0.5 y' + 0.866 N; then scaled to K's sum and capped
 *                    a = 0.409 + 0.5016 sin(ws - 60 deg),    b = 0.6609 - 0.4767 sin(ws - 60 deg)
 * temperature        month's mean (drawn through the months' middles) + x,   x = 0.75 x' + swing 0.661 N - chill
 *                    + range x shape(t),   shape(t) = 0.4632 cos(t - 3.805) + 0.0984 cos(2t - 0.360)
 *                                                  + 0.0168 cos(3t - 0.822) + 0.0138 cos(4t - 3.513)
 * cloud              share c with k / k_clear = 1 - 0.75 c^3.4,   k_clear = 0.95 (0.75 + 2e-5 h)
 * wind               mean (0.9 + 0.44 y)^2,                  y = 0.92 y' + 0.392 N
 * snow               falls on grey days below 1 C; settles 3 % a day, melts 2 cm a day for each degree above 0 C
 *
 * N   standard normal, new each time     s   the recipe's stay share       w   hour angle    ws  sunset hour angle
 * t   2 pi (solar hour - 1) / 24         h   elevation in m                '   one step before
 * </pre>
 *
 * Sources of the parts: the two-state sky is a first-order Markov chain, the other memories are
 * first-order autoregressive (Graham, Hollands and Suthers 1988 found about 0.29 for daily
 * clearness, from memory); a and b: Collares-Pereira and Rabl 1979; temperature shape: Erbs 1983;
 * cloud: Kasten and Czeplak 1980; clear sky: Allen et al. 1998 (FAO-56). How they are put together,
 * and all other numbers, are our own and invented: good for examples and tests of a program, not
 * for sizing a real house.
 *
 * <p>The same recipe, years and seed give the same bits everywhere: StrictMath, a generator with a
 * published algorithm (Well19937c), normals as sums of twelve uniforms, values rounded to what the
 * file prints.
 */
public final class ClimateGenerator {
  private static final double HIGHEST_CLEARNESS = 0.80;
  private static final double HIGHEST_HOUR_CLEARNESS = 0.84;
  private static final double LOWEST_CLEARNESS = 0.03;
  private static final double GREY_SPREAD = 0.34;
  private static final double BRIGHT_SPREAD = 0.16;
  private static final double SIXTY_DEG = Math.PI / 3.0;
  private static final double SNOW_FALLS_BELOW_C = 1.0;
  private static final double CM_PER_M = 100.0;
  private static final double OKTAS = 8.0;

  /** The clear-sky line is the upper edge of clear days; a usual one lies below. */
  private static final double USUAL_CLEAR_SKY = 0.95;

  private final ClimateRecipe recipe;
  private final HourCalendar calendar;
  private final RandomGenerator random;
  private final int days;
  private final boolean[] isGrey;
  private final double[] clearness;
  private final double[] dayTemperatureC;
  private final double[] dayRangeK;
  private final double[] solarMinusClockH;

  private ClimateGenerator(ClimateRecipe recipe, HourCalendar calendar, long seed) {
    this.recipe = recipe;
    this.calendar = calendar;
    random = new Well19937c(seed);
    days = calendar.days();
    isGrey = new boolean[days];
    clearness = new double[days];
    dayTemperatureC = new double[days];
    dayRangeK = new double[days];
    solarMinusClockH = new double[days];
  }

  /** Whole years of weather with global irradiance, temperature, wind, cloud and, if any, snow. */
  public static WeatherSeries make(ClimateRecipe recipe, int firstYear, int years, long seed) {
    return new ClimateGenerator(recipe, HourCalendar.of(firstYear, years), seed).series(seed);
  }

  /** First lines of the file of such a series: that it is invented, and how to make it again. */
  public static List<String> remarks(ClimateRecipe recipe, int firstYear, int years, long seed) {
    return List.of(
        "invented weather of an invented place, for examples and tests",
        "made by: greyspell weather make "
            + recipe.name()
            + " --first-year "
            + firstYear
            + " --years "
            + years
            + " --seed "
            + seed);
  }

  private WeatherSeries series(long seed) {
    makeSkies();
    makeTemperatures();
    var columns = new WeatherSeries.Columns();
    double[] globalWm2 = globalWm2();
    columns.globalHorizontalWm2 = globalWm2;
    columns.cloudShare = cloudShare(globalWm2);
    double[] temperatureC = temperatureC();
    columns.airTemperatureC = temperatureC;
    columns.windMs = windMs();
    if (recipe.snowfallM() > 0.0) {
      columns.snowDepthM = snowDepthM(temperatureC);
    }
    var source =
        new WeatherSource(
            recipe.name() + ", seed " + seed,
            "made weather",
            recipe.place(),
            recipe.latitudeDeg(),
            recipe.longitudeDeg(),
            recipe.elevationM(),
            recipe.utcOffsetH());
    var note = List.of("invented weather: recipe " + recipe.name() + ", seed " + seed);
    return new WeatherSeries(calendar, source, new GapReport(0, 0, note), columns);
  }

  private void makeSkies() {
    double ofMonth = normal();
    double winter = normal();
    boolean wasGrey = false;
    int month = 0;
    double factor = recipe.yearSwingFactor();
    // swinging odds pull the mean share of grey days towards a half: widened against it
    double widened = Math.sqrt(1.0 + 0.35 * factor * factor);
    int winterBegins = recipe.latitudeDeg() >= 0.0 ? 7 : 1;
    for (int day = 0; day < days; day++) {
      int hour = day * Dates.HOURS_PER_DAY;
      if (calendar.month(hour) != month) {
        month = calendar.month(hour);
        if (month == winterBegins) {
          winter = normal();
        }
        ofMonth = 0.5 * ofMonth + 0.866 * normal();
      }
      double odds =
          StrictMath.exp(widened * logit(month) + factor * (0.6 * winter + 0.8 * ofMonth));
      double grey = odds / (1.0 + odds);
      double stay = recipe.stayShare();
      double chance = wasGrey ? grey + stay * (1.0 - grey) : grey * (1.0 - stay);
      wasGrey = random.nextDouble() < chance;
      isGrey[day] = wasGrey;
      double kind = wasGrey ? recipe.greyClearness(month) : recipe.brightClearness(month);
      double spread = wasGrey ? GREY_SPREAD : brightSpread(kind);
      clearness[day] = held(kind * (1.0 + spread * normal()), LOWEST_CLEARNESS, highestClearness());
    }
  }

  /** Near the clear-sky limit bright days are all alike; cutting them off would darken the mean. */
  private double brightSpread(double kind) {
    return held((highestClearness() - kind) / (2.0 * kind), 0.02, BRIGHT_SPREAD);
  }

  private double logit(int month) {
    double grey = recipe.greyDayShare().in(month);
    return StrictMath.log(grey / (1.0 - grey));
  }

  private double highestClearness() {
    return Math.min(HIGHEST_CLEARNESS, clearSkyClearness());
  }

  private double clearSkyClearness() {
    return 0.75 + 2e-5 * recipe.elevationM();
  }

  private double[] globalWm2() {
    var globalWm2 = new double[calendar.hours()];
    var shape = new double[Dates.HOURS_PER_DAY];
    double flicker = 0.0;
    for (int day = 0; day < days; day++) {
      int first = day * Dates.HOURS_PER_DAY;
      ExtraterrestrialHour sun = sun(first);
      double a = 0.409 + 0.5016 * StrictMath.sin(sun.sunsetAngle() - SIXTY_DEG);
      double b = 0.6609 - 0.4767 * StrictMath.sin(sun.sunsetAngle() - SIXTY_DEG);
      // between open and shut, broken cloud makes the hours most uneven
      double unevenness = 0.08 + 1.2 * clearness[day] * Math.max(0.0, 0.75 - clearness[day]);
      double sum = 0.0;
      for (int h = 0; h < shape.length; h++) {
        flicker = 0.5 * flicker + 0.866 * normal();
        double aboveWhm2 = sun.irradiationWhm2(h);
        double profile = a + b * StrictMath.cos(sun.midHourAngle(h));
        double lively = Math.max(0.25, 1.0 + unevenness * flicker);
        shape[h] = aboveWhm2 * Math.max(0.0, profile) * lively;
        sum += shape[h];
      }
      double wantedWhm2 = clearness[day] * sun.dayWhm2();
      spread(sun, shape, sum, wantedWhm2, globalWm2, first);
    }
    return globalWm2;
  }

  /** Scales the day to its sum; what the cap of an hour takes goes to the others. */
  private static void spread(
      ExtraterrestrialHour sun,
      double[] shape,
      double sum,
      double wantedWhm2,
      double[] globalWm2,
      int first) {
    double scale = sum > 0.0 ? wantedWhm2 / sum : 0.0;
    for (int round = 0; round < 4; round++) {
      double got = 0.0;
      for (int h = 0; h < shape.length; h++) {
        double capWhm2 = HIGHEST_HOUR_CLEARNESS * sun.irradiationWhm2(h);
        got += Math.min(capWhm2, scale * shape[h]);
      }
      scale = got > 0.0 ? scale * wantedWhm2 / got : 0.0;
    }
    for (int h = 0; h < shape.length; h++) {
      double capWhm2 = HIGHEST_HOUR_CLEARNESS * sun.irradiationWhm2(h);
      globalWm2[first + h] = Math.floor(Math.min(capWhm2, scale * shape[h]) + 0.5);
    }
  }

  /** Okta as a share of the sky: from the hour's clearness by day, from the day's at night. */
  private double[] cloudShare(double[] globalWm2) {
    var share = new double[calendar.hours()];
    double clear = USUAL_CLEAR_SKY * clearSkyClearness();
    for (int day = 0; day < days; day++) {
      int first = day * Dates.HOURS_PER_DAY;
      ExtraterrestrialHour sun = sun(first);
      for (int h = 0; h < Dates.HOURS_PER_DAY; h++) {
        double aboveWhm2 = sun.irradiationWhm2(h);
        double cosine = StrictMath.cos(sun.midHourAngle(h));
        // low sun sees more air and more cloud: only well-lit hours tell the cover
        boolean isLit = aboveWhm2 > 250.0 && cosine > 0.0;
        double let = (isLit ? globalWm2[first + h] / aboveWhm2 : clearness[day]) / clear;
        double cover = StrictMath.pow(held((1.0 - let) / 0.75, 0.0, 1.0), 1.0 / 3.4);
        double okta = Math.floor(OKTAS * cover + 0.6 * (random.nextDouble() - 0.5) + 0.5);
        share[first + h] = held(okta, 0.0, OKTAS) / OKTAS;
      }
    }
    return share;
  }

  private void makeTemperatures() {
    double wander = 0.0;
    for (int day = 0; day < days; day++) {
      int hour = day * Dates.HOURS_PER_DAY;
      int month = calendar.month(hour);
      wander = 0.75 * wander + 0.661 * recipe.temperatureSwingK().in(month) * normal();
      double relative = clearness[day] / recipe.meanClearnessShare().in(month);
      // a clear sky cools the short days and warms the long ones
      ExtraterrestrialHour sun = sun(hour);
      solarMinusClockH[day] = sun.solarMinusClockH();
      double seasonal = StrictMath.cos(sun.sunsetAngle());
      double chillK = 3.0 * seasonal * (relative - 1.0);
      dayTemperatureC[day] = monthCourse(recipe.meanTemperatureC(), hour) + wander - chillK;
      dayRangeK[day] = recipe.dayRangeK() * held(0.25 + 0.75 * relative, 0.3, 1.5);
    }
  }

  private double[] temperatureC() {
    var temperatureC = new double[calendar.hours()];
    for (int hour = 0; hour < temperatureC.length; hour++) {
      int day = hour / Dates.HOURS_PER_DAY;
      double fromNoon = (hour % Dates.HOURS_PER_DAY + 0.5) / Dates.HOURS_PER_DAY - 0.5;
      int other = (int) held(fromNoon < 0.0 ? day - 1 : day + 1, 0, days - 1);
      double share = Math.abs(fromNoon);
      double mean = dayTemperatureC[day] + share * (dayTemperatureC[other] - dayTemperatureC[day]);
      double range = dayRangeK[day] + share * (dayRangeK[other] - dayRangeK[day]);
      double solarH = hour % Dates.HOURS_PER_DAY + 0.5 + solarMinusClockH[day];
      temperatureC[hour] = rounded(mean + range * dayShape(solarH), 10.0);
    }
    return temperatureC;
  }

  private static double dayShape(double solarH) {
    double t = 2.0 * Math.PI * (solarH - 1.0) / Dates.HOURS_PER_DAY;
    return 0.4632 * StrictMath.cos(t - 3.805)
        + 0.0984 * StrictMath.cos(2.0 * t - 0.360)
        + 0.0168 * StrictMath.cos(3.0 * t - 0.822)
        + 0.0138 * StrictMath.cos(4.0 * t - 3.513);
  }

  private double[] windMs() {
    var windMs = new double[calendar.hours()];
    double gust = normal();
    for (int hour = 0; hour < windMs.length; hour++) {
      gust = 0.92 * gust + 0.392 * normal();
      double root = 0.9 + 0.44 * gust;
      windMs[hour] = rounded(monthCourse(recipe.meanWindMs(), hour) * root * root, 10.0);
    }
    return windMs;
  }

  private double[] snowDepthM(double[] temperatureC) {
    var snowM = new double[calendar.hours()];
    double depthM = 0.0;
    for (int day = 0; day < days; day++) {
      int first = day * Dates.HOURS_PER_DAY;
      double falls = random.nextDouble();
      double meanC = mean(temperatureC, first);
      Arrays.fill(snowM, first, first + Dates.HOURS_PER_DAY, rounded(depthM, CM_PER_M));
      depthM *= 0.97;
      if (isGrey[day] && meanC < SNOW_FALLS_BELOW_C && falls > 0.5) {
        depthM += recipe.snowfallM() * 4.0 * (falls - 0.5);
      }
      depthM = Math.max(0.0, depthM - 0.02 * Math.max(0.0, meanC));
      depthM = depthM < 0.005 ? 0.0 : depthM;
    }
    return snowM;
  }

  private static double mean(double[] values, int first) {
    double sum = 0.0;
    for (int h = 0; h < Dates.HOURS_PER_DAY; h++) {
      sum += values[first + h];
    }
    return sum / Dates.HOURS_PER_DAY;
  }

  private ExtraterrestrialHour sun(int hour) {
    return new ExtraterrestrialHour(
        recipe.latitudeDeg(), recipe.longitudeDeg(), recipe.utcOffsetH(), calendar.dayOfYear(hour));
  }

  /** Straight lines through the middles of the months. */
  private double monthCourse(Monthly monthly, int hour) {
    int month = calendar.month(hour);
    double days = (calendar.dayOfMonth(hour) - 0.5) / 30.4 - 0.5;
    int other = Math.floorMod((days < 0.0 ? month - 1 : month + 1) - 1, 12) + 1;
    double share = Math.min(0.5, Math.abs(days));
    return monthly.in(month) + share * (monthly.in(other) - monthly.in(month));
  }

  /** Sum of twelve uniforms less six: close to normal, and the same bits everywhere. */
  private double normal() {
    double sum = -6.0;
    for (int i = 0; i < 12; i++) {
      sum += random.nextDouble();
    }
    return sum;
  }

  private static double held(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }

  private static double rounded(double value, double perUnit) {
    return Math.floor(value * perUnit + 0.5) / perUnit;
  }
}
