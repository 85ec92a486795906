package greyspell.weather.ensemble;

import greyspell.weather.WeatherSeries;
import java.util.List;

/**
 * Winters that did not come but might have: whole stretches of measured years, joined where one
 * year's sky and air were like another's.
 *
 * <p>A year begins in a measured one on its seam (1 July in the north, 1 January in the south) and
 * stays there for 20 to 60 days. It leaves on that of the last 21 of these days on which the
 * running clearness is most usual for the month, so that no grey or bright spell is cut in two and
 * neither is favoured, and goes on in another winter, at most 5 days off in the season, on one of
 * the 4 days before which the running clearness (10 days) and temperature (3 days) were most alike.
 * Sunshine is scaled to the sun of the day that it lands on; a step of temperature at a joint is
 * run out over a day.
 *
 * <p>What stays within a stretch is measured, hour by hour. What is new is the order of stretches,
 * so that two grey spells of different winters may follow each other; no single spell is longer or
 * duller than the measured ones allow within about two months. All of it is our own construction,
 * no source; the lengths are common sense, not fitted.
 */
final class SplicedWinters implements WinterSource {
  static final int CHOICES = 4;

  /** With fewer years there is too little to choose from. */
  static final int LEAST_YEARS = 3;

  private static final int SHORTEST_D = 20;
  private static final int FREE_D = 20;
  private static final int JOINT_WINDOW_D = 21;
  private static final int SEASON_D = 5;
  private static final int APART_D = 60;
  private static final int WARM_UP_D = 30;
  private static final int LONGEST_D = SHORTEST_D + FREE_D + JOINT_WINDOW_D;

  private final MeasuredDays days;
  private final ClimateSite site;
  private final String file;
  private final int years;
  private final long seed;
  private final int seamDay;
  private final double skyScale;
  private final double airScaleK;

  SplicedWinters(WeatherSeries series, ClimateSite site, int years, long seed) {
    days = new MeasuredDays(series, site);
    if (days.years < LEAST_YEARS) {
      throw new IllegalArgumentException(days.years + " years, " + LEAST_YEARS + " are needed");
    }
    this.site = site;
    this.years = years;
    this.seed = seed;
    file = series.source().file();
    seamDay = YearDays.seamDay(site.isNorthern());
    skyScale = deviation(days.skyState);
    airScaleK = deviation(days.airStateC);
  }

  private static double deviation(double[] values) {
    double sum = 0.0;
    double square = 0.0;
    for (int day = WeatherYear.DAYS; day < values.length; day++) {
      double off = values[day] - values[day - WeatherYear.DAYS];
      sum += off;
      square += off * off;
    }
    int n = values.length - WeatherYear.DAYS;
    return Math.max(1e-6, Math.sqrt(square / n - sum * sum / n / n));
  }

  @Override
  public int years() {
    return years;
  }

  @Override
  public void fill(int year, WeatherYear reused) {
    if (year < 0 || year >= years) {
      throw new IllegalArgumentException("year " + year + " of " + years);
    }
    YearRandom random = reused.random;
    random.begin(seed, year, YearRandom.SPLICE);
    reused.beginAt(seamDay * YearDays.HOURS_PER_DAY, days.more);
    int winters = seamDay > 0 ? days.years - 1 : days.years;
    int donor = random.below(winters) * WeatherYear.DAYS + seamDay;
    int done = 0;
    while (true) {
      int length = leave(donor, WeatherYear.DAYS - done, random);
      copy(donor, done, length, reused);
      done += length;
      if (done == WeatherYear.DAYS) {
        return;
      }
      donor = next(donor + length, done, random, reused);
    }
  }

  /** How many days to stay: to the end of the year if it is near. */
  private int leave(int donor, int left, YearRandom random) {
    int length = SHORTEST_D + random.below(FREE_D);
    if (left <= length + JOINT_WINDOW_D) {
      return Math.min(left, days.days() - donor);
    }
    int mostUsual = length;
    double least = Double.POSITIVE_INFINITY;
    for (int l = length; l < length + JOINT_WINDOW_D; l++) {
      double off = Math.abs(days.skyState[donor + l - 1] - 1.0);
      if (off < least) {
        least = off;
        mostUsual = l;
      }
    }
    return mostUsual;
  }

  /** The day to go on with: one of the few whose past is most like the one left behind. */
  private int next(int after, int done, YearRandom random, WeatherYear reused) {
    double sky = days.skyState[after - 1];
    double airC = days.airStateC[after - 1];
    double[] distance = reused.nearDistance;
    int[] near = reused.nearDay;
    int found = 0;
    int left = Math.min(WeatherYear.DAYS - done, LONGEST_D);
    for (int y = -1; y <= days.years; y++) {
      int middle = y * WeatherYear.DAYS + (seamDay + done) % WeatherYear.DAYS;
      for (int day = middle - SEASON_D; day <= middle + SEASON_D; day++) {
        if (day < WARM_UP_D || day + left > days.days() || Math.abs(day - after) < APART_D) {
          continue;
        }
        double skyOff = (days.skyState[day - 1] - sky) / skyScale;
        double airOff = (days.airStateC[day - 1] - airC) / airScaleK;
        double off = skyOff * skyOff + airOff * airOff;
        if (found < CHOICES || off < distance[found - 1]) {
          found = Math.min(CHOICES, found + 1);
          int place = found - 1;
          while (place > 0 && distance[place - 1] > off) {
            distance[place] = distance[place - 1];
            near[place] = near[place - 1];
            place--;
          }
          distance[place] = off;
          near[place] = day;
        }
      }
    }
    return near[random.below(found)];
  }

  private void copy(int donor, int done, int length, WeatherYear reused) {
    double[] globalWm2 = reused.globalHorizontalWm2();
    double[] temperatureC = reused.airTemperatureC();
    SunYear sun = days.sun;
    for (int i = 0; i < length; i++) {
      int day = (seamDay + done + i) % WeatherYear.DAYS;
      int to = day * YearDays.HOURS_PER_DAY;
      int from = (donor + i) * YearDays.HOURS_PER_DAY;
      int ofYear = (donor + i) % WeatherYear.DAYS;
      System.arraycopy(days.airTemperatureC, from, temperatureC, to, YearDays.HOURS_PER_DAY);
      if (ofYear == day) {
        System.arraycopy(days.globalWm2, from, globalWm2, to, YearDays.HOURS_PER_DAY);
      } else {
        double factor = sun.dayWhm2[day] / sun.dayWhm2[ofYear];
        for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
          // sunrise and sunset have moved a little: no more than there is above the air
          globalWm2[to + h] = Math.min(sun.aboveWm2[to + h], factor * days.globalWm2[from + h]);
        }
      }
    }
    copyMore(donor, done, length, reused);
    if (done > 0) {
      runOut(donor, done, temperatureC);
    }
  }

  /** Wind and snow as they were, diffuse light scaled as all of it. */
  private void copyMore(int donor, int done, int length, WeatherYear reused) {
    for (int k = 0; k < MeasuredDays.MORE; k++) {
      double[] from = days.more[k];
      double[] to = reused.more(k);
      for (int i = 0; i < length && from.length > 0; i++) {
        int day = (seamDay + done + i) % WeatherYear.DAYS;
        double factor =
            k == MeasuredDays.DIFFUSE
                ? days.sun.dayWhm2[day] / days.sun.dayWhm2[(donor + i) % WeatherYear.DAYS]
                : 1.0;
        int first = (donor + i) * YearDays.HOURS_PER_DAY;
        for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
          to[day * YearDays.HOURS_PER_DAY + h] = factor * from[first + h];
        }
      }
    }
  }

  /** The day's temperatures go on from where the last stretch ended. */
  private void runOut(int donor, int done, double[] temperatureC) {
    int to = (seamDay + done) % WeatherYear.DAYS * YearDays.HOURS_PER_DAY;
    int last = (to + WeatherYear.HOURS - 1) % WeatherYear.HOURS;
    double stepK = temperatureC[last] - days.airTemperatureC[donor * YearDays.HOURS_PER_DAY - 1];
    for (int h = 0; h < YearDays.HOURS_PER_DAY; h++) {
      temperatureC[to + h] += stepK * (1.0 - (h + 1.0) / (YearDays.HOURS_PER_DAY + 1.0));
    }
  }

  @Override
  public String name(int year) {
    return "winter " + (year + 1);
  }

  @Override
  public ClimateSite site() {
    return site;
  }

  @Override
  public String describe() {
    return "spliced from " + days.years + " years of " + file + ", seed " + seed;
  }

  @Override
  public String format() {
    return "spliced winters";
  }

  @Override
  public List<String> notes() {
    String more = days.moreWords();
    return List.of(
        "spliced weather: stretches of "
            + days.years
            + " years of the file in new order; a winter worse than all of them in each of its weeks"
            + " cannot come of it",
        more.isEmpty()
            ? "sunshine and temperature only: the file has no wind, snow depth or diffuse light"
            : "carried over beside sunshine and temperature: " + more);
  }
}
