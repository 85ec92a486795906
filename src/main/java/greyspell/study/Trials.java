package greyspell.study;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.calendar.HourCalendar;
import greyspell.load.LoadHours;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.outcome.OutcomeReader;
import greyspell.power.FuelUse;
import greyspell.scenario.Scenario;
import greyspell.sky.SunPath;
import greyspell.sky.UsualSky;
import greyspell.study.Study.Steps;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.WinterSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Many variants of one home in the same weather: weather, sun and sky are made once and kept, and
 * so is what planes and loads come to, for the next variant that has the same. The weather is
 * either the scenario's own, all its years in one part, or drawn winters, each a part of its own
 * that is run round and round. What a variant comes to is what {@code run} tells of it.
 *
 * <p>Holds a few MB a year; meant for up to about a hundred winters. Many more of one design are
 * streamed elsewhere.
 */
public final class Trials {
  private static final int YEARS_TO_KEEP = 240;
  private static final int LEAST_TO_KEEP = 6;
  private static final int TO_KEEP_UNDER_OTHER_SKIES = 20;

  private final Scenario home;
  private final List<HomeLight> parts;
  private final List<String> winters;
  private final int years;
  private final boolean isOwnWeather;
  private final Map<SkyKey, HomeLight> otherSkies = new ConcurrentHashMap<>();
  private @Nullable UsualSky usual;

  private Trials(Scenario home, List<HomeLight> parts, boolean isOwnWeather) {
    this.home = home;
    this.isOwnWeather = isOwnWeather;
    this.parts = List.copyOf(parts);
    var names = new ArrayList<String>();
    int count = 0;
    for (HomeLight part : parts) {
      count += part.weather().calendar().years();
      part.weather().calendar().winters(home.site().isNorthern()).stream()
          .filter(w -> w.isWhole())
          .forEach(w -> names.add(w.name()));
    }
    winters = List.copyOf(names);
    years = count;
  }

  /** In the scenario's own weather. */
  public static Trials of(Scenario home, Steps steps) {
    steps.step("reading the weather", 0.0);
    return of(home, Study.read(home));
  }

  static Trials of(Scenario home, WeatherSeries weather) {
    int keep = Math.max(LEAST_TO_KEEP, YEARS_TO_KEEP / weather.calendar().years());
    return new Trials(
        home, List.of(HomeLight.keeping(home, weather, HomeLight.sun(home, weather), keep)), true);
  }

  /**
   * The same weather with another home to start from.
   *
   * @throws IllegalArgumentException if it stands elsewhere, in other weather or under another sky
   */
  public Trials as(Scenario other) {
    return new Trials(checked(other), parts, isOwnWeather);
  }

  /** In the first winters of a source. */
  public static Trials of(Scenario home, WinterSource source, int winters, Steps steps) {
    int keep = Math.max(LEAST_TO_KEEP, YEARS_TO_KEEP / winters);
    steps.step("drawing winters", 0.0);
    WeatherSeries first = EnsembleSeries.oneWinter(source, 0);
    // every drawn winter is read by the same calendar, so the sun is the same in all
    SunPath sun = HomeLight.sun(home, first);
    var parts = new HomeLight[winters];
    IntStream.range(0, winters)
        .parallel()
        .forEach(
            w ->
                parts[w] = HomeLight.keeping(home, EnsembleSeries.oneWinter(source, w), sun, keep));
    return new Trials(home, List.of(parts), false);
  }

  /** The home whose site, weather and sky all variants share. */
  public Scenario home() {
    return home;
  }

  /** Whether a variant stands here, in this weather and under this sky. */
  public boolean isFor(Scenario variant) {
    return variant.site().equals(home.site())
        && variant.weather().equals(home.weather())
        && variant.sky().equals(home.sky());
  }

  /** How long the bank of a variant serves, in the scenario's own weather. */
  public BankLife bankLife(Scenario variant, int years) {
    Trials own = isOwnWeather && isFor(variant) ? this : of(variant, (what, done) -> {});
    HomeRun ran = own.ran(0, variant, Set.of());
    return BankLife.of(variant, ran.forcing(), own.parts.get(0).weather(), years);
  }

  /** Years of weather altogether. */
  public int years() {
    return years;
  }

  /** Names of the whole winters, in order. */
  public List<String> winters() {
    return winters;
  }

  /** How many runs of hours make up the weather: 1, or one for each drawn winter. */
  public int parts() {
    return parts.size();
  }

  /** The hours of one part of the weather. */
  public HourCalendar calendar(int part) {
    return parts.get(part).weather().calendar();
  }

  /** A variant's books, summed up. */
  public Trial run(Scenario variant) {
    return run(variant, Set.of());
  }

  /**
   * A variant with some of nature or equipment left out.
   *
   * @throws IllegalArgumentException if the variant stands elsewhere, in other weather or under
   *     another sky
   */
  public Trial run(Scenario variant, Set<Effect> leftOut) {
    return sum(variant, each(variant, leftOut, ran -> Part.of(variant, ran)));
  }

  /** What is read off the run of each part, in their order, whatever thread was first. */
  <T> List<T> each(Scenario variant, Set<Effect> leftOut, Function<HomeRun, T> read) {
    return IntStream.range(0, parts.size())
        .parallel()
        .mapToObj(part -> read.apply(ran(part, variant, leftOut)))
        .toList();
  }

  /** All parts together. */
  Trial sum(Scenario variant, List<Part> read) {
    var whole = new ArrayList<WinterBooks>();
    double unmetWh = 0.0, unmetHours = 0.0, letGoWh = 0.0, generatorWh = 0.0;
    int starts = 0;
    double hours = 0.0, fuelL = 0.0, curtailedWh = 0.0, loadWh = 0.0;
    double lowestWh = Double.POSITIVE_INFINITY;
    for (Part part : read) {
      int partYears = part.years;
      unmetWh += part.unmet.wh() * partYears;
      unmetHours += part.unmet.unmetHours() * partYears;
      letGoWh += part.unmet.letGoWh() * partYears;
      generatorWh += part.unmet.generatorWh() * partYears;
      hours += part.generatorHours;
      starts += part.starts;
      fuelL += part.fuelL;
      curtailedWh += part.curtailedWh;
      loadWh += part.loadWh;
      lowestWh = Math.min(lowestWh, part.lowestChargeWh);
      whole.addAll(part.winters);
    }
    return new Trial(
        variant,
        new Unmet(unmetWh / years, unmetHours / years, letGoWh / years, generatorWh / years),
        whole,
        hours / years,
        starts,
        fuelL / years,
        curtailedWh / years,
        loadWh / years,
        lowestWh);
  }

  /** The hourly books of one part of the weather. */
  public Ledger books(int part, Scenario variant, Set<Effect> leftOut) {
    return ran(part, variant, leftOut).laps().ledger();
  }

  /**
   * {@link Ledger#brief} books of it.
   *
   * @param guessWh at the charge to which it settles, for the same to a hundredth of a Wh, sooner;
   *     null for the very same
   */
  Ledger brief(int part, Scenario variant, Set<Effect> leftOut, @Nullable Double guessWh) {
    return HomeRun.brief(checked(variant), light(part, leftOut), new Without(leftOut), guessWh);
  }

  /**
   * What comes to the loop from outside in one part of the weather, the bank at nominal voltage.
   */
  public Forcing forcing(int part, Scenario variant, Set<Effect> leftOut) {
    return new HomeForcing(
            checked(variant),
            light(part, leftOut),
            new Without(leftOut),
            new ArrayList<>(),
            new ArrayList<>())
        .make();
  }

  /**
   * {@link #forcing} of a variant that differs in its numbers of strings: the same to rounding,
   * worked out from one string.
   */
  Forcing forcingByStrings(int part, Scenario variant) {
    return new HomeForcing(
            checked(variant),
            parts.get(part),
            Without.NOTHING,
            new ArrayList<>(),
            new ArrayList<>())
        .makeByStrings();
  }

  /** Years of weather in one part. */
  int years(int part) {
    return parts.get(part).weather().calendar().years();
  }

  /** What a variant asks for in one part of the weather. */
  LoadHours load(int part, Scenario variant) {
    var home =
        new HomeForcing(
            checked(variant),
            parts.get(part),
            Without.NOTHING,
            new ArrayList<>(),
            new ArrayList<>());
    home.make();
    return home.load();
  }

  /** Bank, inverter, generator and rules as the loop needs them. */
  public Design design(int part, Scenario variant, Set<Effect> leftOut) {
    return new HomeDesign(checked(variant), new Without(leftOut))
        .make(parts.get(part), new ArrayList<>());
  }

  private HomeRun ran(int part, Scenario variant, Set<Effect> leftOut) {
    return HomeRun.of(
        checked(variant),
        light(part, leftOut),
        new Without(leftOut),
        new ArrayList<>(),
        new ArrayList<>());
  }

  /** With part of the sky left out it is made once; the season's usual sky is that of all parts. */
  private HomeLight light(int part, Set<Effect> leftOut) {
    UsualSky.LeftOut out = new Without(leftOut).sky();
    return out.isNothing()
        ? parts.get(part)
        : otherSkies.computeIfAbsent(
            new SkyKey(part, out),
            key -> parts.get(part).under(usualSky(), out, TO_KEEP_UNDER_OTHER_SKIES));
  }

  private UsualSky usualSky() {
    synchronized (otherSkies) {
      if (usual == null) {
        usual =
            UsualSky.of(
                parts.stream().map(HomeLight::radiation).toList(),
                parts.stream().map(HomeLight::sun).toList(),
                home.site(),
                home.sky());
      }
      return usual;
    }
  }

  /** Lets go of the skies that were made for one part, which may be many MB. */
  void forgetOtherSkies(int part) {
    otherSkies.keySet().removeIf(key -> key.part == part);
  }

  private record SkyKey(int part, UsualSky.LeftOut out) {}

  private Scenario checked(Scenario variant) {
    if (!isFor(variant)) {
      throw new IllegalArgumentException("a variant must keep site, weather and sky");
    }
    return variant;
  }

  /** Of one part: sums over all its hours. */
  record Part(
      int years,
      Unmet unmet,
      List<WinterBooks> winters,
      double generatorHours,
      int starts,
      double fuelL,
      double curtailedWh,
      double loadWh,
      double lowestChargeWh) {
    static Part of(Scenario variant, HomeRun ran) {
      Ledger ledger = ran.laps().ledger();
      List<WinterBooks> books = OutcomeReader.winters(ledger, variant.site().isNorthern());
      int starts = 0;
      double hours = 0.0, curtailedWh = 0.0, loadWh = 0.0;
      double lowestWh = Double.POSITIVE_INFINITY;
      for (WinterBooks winter : books) {
        hours += winter.figures().beyond().generatorHours();
        starts += winter.figures().beyond().generatorStarts();
        curtailedWh += winter.figures().curtailedWh();
        loadWh += winter.figures().loadWh();
        lowestWh = Math.min(lowestWh, winter.figures().lowestChargeWh());
      }
      FuelUse fuel = Again.fuel(variant, ledger);
      return new Part(
          ledger.forcing().calendar().years(),
          Unmet.of(ledger),
          books.stream().filter(w -> w.winter().isWhole()).toList(),
          hours,
          starts,
          fuel == null ? 0.0 : fuel.totalL(0, ledger.hours()),
          curtailedWh,
          loadWh,
          lowestWh);
    }
  }
}
