package greyspell.study;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.scenario.WeatherChoice;
import greyspell.scenario.WeatherChoice.Memory;
import greyspell.scenario.WeatherChoice.WeatherPath;
import greyspell.weather.WeatherSeries;
import greyspell.weather.ensemble.ClimateFile;
import greyspell.weather.ensemble.ClimateSite;
import greyspell.weather.ensemble.EnsembleSource;
import greyspell.weather.ensemble.SiteClimate;
import greyspell.weather.ensemble.SkyMemory;
import greyspell.weather.ensemble.SynthesisChoices;
import greyspell.weather.ensemble.WinterKind;
import greyspell.weather.ensemble.WinterSource;
import greyspell.weather.ensemble.YearSpread;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which winters a home is to stand in. Where nobody says how they come about: the measured ones of
 * three years or more are replayed if no number is asked for, and spliced to that number if one is;
 * of fewer years, of a typical year and of monthly means they are made.
 *
 * @param count null for every measured one, or {@value #USUAL} others
 * @param how null to go by what there is
 * @param memory of the sky, for made winters
 */
public record WintersWanted(
    @Nullable Integer count, @Nullable WinterKind how, SkyMemory memory, long seed) {
  /** Enough to see what comes once in ten years; fewer say so with a wide interval. */
  public static final int USUAL = 100;

  private static final int LEAST_YEARS = 3;

  /** Common practice, no source: a decade shows what comes once in a few winters. */
  private static final int ENOUGH_YEARS = 8;

  /**
   * What the scenario says.
   *
   * @param count from the command line, goes before the scenario's; null if not given
   */
  public static WintersWanted of(Scenario home, @Nullable Integer count) {
    WeatherChoice weather = home.weather();
    return new WintersWanted(
        count == null ? weather.winters() : count,
        weather.how(),
        weather.memory() == Memory.ONE_LAG ? SkyMemory.ONE_LAG : SkyMemory.GREY_SPELLS,
        weather.seed());
  }

  public WintersWanted withHow(@Nullable WinterKind other) {
    return other == null ? this : new WintersWanted(count, other, memory, seed);
  }

  /** The winters; {@link WinterSource#years} says how many they are. Reads the weather files. */
  public WinterSource source(Scenario home) {
    return draw(home).source();
  }

  /**
   * The winters, and what must be said of them.
   *
   * @throws BadInput where the files do not allow what is wanted
   */
  public WintersDrawn draw(Scenario home) {
    WeatherSeries years = HomeWeather.years(home);
    WeatherPath means = home.weather().means();
    WinterKind kind = kind(years, means != null && home.weather().years().isEmpty());
    if (kind == WinterKind.MADE) {
      return means == null ? madeLike(home, needed(home, years)) : made(means);
    }
    WeatherSeries real = needed(home, years);
    return kind == WinterKind.MEASURED ? measured(home, real) : spliced(home, real);
  }

  private WinterKind kind(@Nullable WeatherSeries years, boolean isByMeans) {
    if (how != null) {
      return how;
    }
    if (years == null || isByMeans || years.calendar().years() < LEAST_YEARS) {
      return WinterKind.MADE;
    }
    return count == null ? WinterKind.MEASURED : WinterKind.SPLICED;
  }

  private static WeatherSeries needed(Scenario home, @Nullable WeatherSeries years) {
    if (years == null) {
      throw BadInput.of(
          Place.of(home.file()),
          "found no measured years",
          "must name hourly weather under weather",
          "Or let winters be made from the monthly means: how: made.");
    }
    return years;
  }

  private int wanted() {
    return count == null ? USUAL : count;
  }

  private WintersDrawn made(WeatherPath means) {
    ClimateFile.Contents contents = ClimateFile.read(means.path(), means.resolvedPath());
    WinterSource source =
        EnsembleSource.of(
            contents.climate(), contents.choices().withMemory(memory), wanted(), seed);
    return new WintersDrawn(
        WinterKind.MADE, EnsembleSource.noting(source, contents.notes()), List.of());
  }

  private WintersDrawn madeLike(Scenario home, WeatherSeries years) {
    ClimateSite site = site(home, years);
    SiteClimate climate;
    try {
      climate = SiteClimate.of(years, site);
    } catch (IllegalArgumentException refused) {
      throw BadInput.of(
          Place.of(years.source().file()),
          "found monthly means that no climate has",
          String.valueOf(refused.getMessage()),
          "Look at the file with weather inspect.");
    }
    var choices = SynthesisChoices.USUAL.withMemory(memory);
    if (years.calendar().years() >= YearSpread.LEAST_YEARS) {
      choices = choices.withYearSpread(YearSpread.of(years));
    }
    return new WintersDrawn(
        WinterKind.MADE,
        EnsembleSource.of(climate, choices, wanted(), seed),
        List.of(onlyMeans(years)));
  }

  private static String onlyMeans(WeatherSeries years) {
    if (years.calendar().years() >= YearSpread.LEAST_YEARS) {
      return "The winters are made from the monthly means of the "
          + years.calendar().years()
          + " years and from how far their months differed; the order of their days is a rule,"
          + " fitted elsewhere.";
    }
    String told =
        years.calendar().isTypical()
            ? "The weather file is a typical year, pieced together from usual months: the bad winters are not in it."
            : switch (years.calendar().years()) {
              case 1 ->
                  "The weather file is a single year: too little to tell a bad winter from a usual one.";
              case 2 ->
                  "The weather file has two years: too little to tell a bad winter from a usual one.";
              default -> "";
            };
    return (told.isEmpty() ? "" : told + " ")
        + "The winters are made from its monthly means; how far they differ from each other is a rule, fitted elsewhere.";
  }

  private WintersDrawn measured(Scenario home, WeatherSeries years) {
    if (years.calendar().isTypical()) {
      throw HomeWeather.tooFew(years, "measured", 2);
    }
    WinterSource all = EnsembleSource.measured(years, site(home, years));
    var cautions = new ArrayList<String>();
    if (count != null && count > all.years()) {
      cautions.add(
          count
              + " measured winters are wanted, the files hold "
              + all.years()
              + " whole ones: these are replayed. For more let them be spliced.");
    }
    WinterSource latest =
        count != null && count < all.years() ? new LatestWinters(all, count) : all;
    return new WintersDrawn(WinterKind.MEASURED, latest, cautions);
  }

  /** All measured winters of the years that a scenario names; null where there are none. */
  static @Nullable WinterSource allMeasured(Scenario home) {
    WeatherSeries years = HomeWeather.years(home);
    return years == null || years.calendar().isTypical()
        ? null
        : EnsembleSource.measured(years, site(home, years));
  }

  private WintersDrawn spliced(Scenario home, WeatherSeries years) {
    if (years.calendar().years() < LEAST_YEARS) {
      throw HomeWeather.tooFew(years, "spliced", LEAST_YEARS);
    }
    return new WintersDrawn(
        WinterKind.SPLICED,
        EnsembleSource.spliced(years, site(home, years), wanted(), seed),
        years.calendar().years() < ENOUGH_YEARS ? List.of(fewBehind(years)) : List.of());
  }

  /** A hundred winters out of three look like a hundred: one December in three recurs in them. */
  private static String fewBehind(WeatherSeries years) {
    int n = years.calendar().years();
    return "Only "
        + n
        + " measured years stand behind these winters: what a single one of them brought comes"
        + " back in many, and what none of them brought comes in none. Ten years tell far more.";
  }

  /** The sun is the house's, the clock the file's. */
  private static ClimateSite site(Scenario home, WeatherSeries years) {
    return ClimateSite.of(years.source(), home.site().latitudeDeg(), home.site().longitudeDeg());
  }
}
