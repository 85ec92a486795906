package greyspell.weather.ensemble;

import java.util.ArrayList;
import java.util.List;

/**
 * Years made from twelve monthly means: days by the published distribution, skies that last, hours
 * and temperatures to match. See MonthSky, HourSpread and AirTemperature for the equations.
 *
 * <p>Of a stated number of years the monthly means are met exactly over all of them together; of an
 * unbounded row they are its expected values.
 */
final class MadeWinters implements WinterSource {
  private final SiteClimate climate;
  private final SynthesisChoices choices;
  private final int years;
  private final long seed;
  private final int seamDay;
  private final int[] monthOfDay = YearDays.monthOfDay();
  private final SunYear sun;
  private final MonthSky[] skies = new MonthSky[YearDays.MONTHS];
  private final double[] monthWhm2 = new double[YearDays.MONTHS];
  private final HourSpread hours;
  private final AirTemperature air;
  private final MonthBalance balance;
  private final List<String> notes;

  MadeWinters(SiteClimate climate, SynthesisChoices choices, int years, long seed) {
    this.climate = climate;
    this.choices = choices;
    this.years = years;
    this.seed = seed;
    seamDay = YearDays.seamDay(climate.site().isNorthern());
    sun = new SunYear(climate.site());
    notes = new ArrayList<>();
    makeSkies();
    hours = new HourSpread(sun);
    air = new AirTemperature(climate, choices, sun, skies, seamDay);
    balance = years == UNBOUNDED ? new MonthBalance() : MonthBalance.over(this, years);
  }

  private void makeSkies() {
    var aboveWhm2 = new double[YearDays.MONTHS];
    for (int day = 0; day < WeatherYear.DAYS; day++) {
      aboveWhm2[monthOfDay[day]] += sun.dayWhm2[day];
    }
    var missed = new ArrayList<String>();
    var spread = choices.yearSpreadFraction();
    for (int m = 0; m < YearDays.MONTHS; m++) {
      int days = YearDays.length(m);
      monthWhm2[m] = climate.dailyGlobalWhm2().in(m + 1) * days;
      skies[m] = new MonthSky(monthWhm2[m] / aboveWhm2[m], days);
      if (spread == null) {
        skies[m].remember(choices.memory());
      } else if (!skies[m].meet(choices.memory(), spread.in(m + 1))) {
        missed.add(Integer.toString(m + 1));
      }
    }
    notes.add(
        "made weather: no measured day is in it; daily clearness by the published distribution"
            + " (Bendt et al. 1981)");
    notes.add(
        spread == null
            ? "years differ by what the memory of the sky brings (own rule, fitted at one station)"
            : "years differ as stated");
    if (!missed.isEmpty()) {
      notes.add(
          "the stated spread of the years cannot be met in month "
              + String.join(", ", missed)
              + ": its days alone swing more, or less");
    }
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
    reused.beginAt(seamDay * YearDays.HOURS_PER_DAY);
    drawSky(year, reused);
    clear(reused, balance);
    drawAir(year, reused, balance);
    YearRandom random = reused.random;
    random.begin(seed, year, YearRandom.HOURS);
    double[] globalWm2 = reused.globalHorizontalWm2();
    for (int i = 0; i < WeatherYear.DAYS; i++) {
      int day = (seamDay + i) % WeatherYear.DAYS;
      double clearness = balance.factor[monthOfDay[day]] * reused.clearness[day];
      hours.fill(day, clearness, random, reused.hour, globalWm2);
    }
  }

  /** The hidden numbers of a year's days. */
  void drawSky(int year, WeatherYear reused) {
    YearRandom random = reused.random;
    random.begin(seed, year, YearRandom.SKY);
    double day1 = choices.memory().dayCorrelation();
    double newDay = Math.sqrt(1.0 - day1 * day1);
    double spell1 = choices.memory().spellCorrelation();
    double newSpell = Math.sqrt(1.0 - spell1 * spell1);
    double fast = random.normal();
    double spell = random.normal();
    double ofMonth = 0.0;
    int month = -1;
    for (int i = 0; i < WeatherYear.DAYS; i++) {
      int day = (seamDay + i) % WeatherYear.DAYS;
      if (monthOfDay[day] != month) {
        month = monthOfDay[day];
        ofMonth = random.normal();
      }
      reused.latent[day] = skies[month].latent(fast, spell, ofMonth);
      fast = day1 * fast + newDay * random.normal();
      spell = spell1 * spell + newSpell * random.normal();
    }
  }

  /** Hidden numbers to clearness. */
  void clear(WeatherYear reused, MonthBalance balance) {
    for (int day = 0; day < WeatherYear.DAYS; day++) {
      int m = monthOfDay[day];
      reused.clearness[day] = skies[m].clearness(reused.latent[day] + balance.shift[m]);
    }
  }

  void drawAir(int year, WeatherYear reused, MonthBalance balance) {
    reused.random.begin(seed, year, YearRandom.AIR);
    air.fill(reused, balance.offsetOfDayK);
  }

  int month(int day) {
    return monthOfDay[day];
  }

  MonthSky sky(int month) {
    return skies[month];
  }

  double dayWhm2(int day) {
    return sun.dayWhm2[day];
  }

  /** Wanted in one mean month. */
  double monthWhm2(int month) {
    return monthWhm2[month];
  }

  double meanTemperatureC(int month) {
    return climate.meanTemperatureC().in(month + 1);
  }

  @Override
  public String name(int year) {
    return "winter " + (year + 1);
  }

  @Override
  public ClimateSite site() {
    return climate.site();
  }

  @Override
  public String describe() {
    return "made from monthly means, seed " + seed;
  }

  @Override
  public List<String> notes() {
    return List.copyOf(notes);
  }
}
