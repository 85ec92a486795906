package greyspell.weather.ensemble;

import greyspell.quantity.Check;
import greyspell.weather.WeatherSeries;
import java.util.List;

/** The winters that there are: made from means, spliced from years, or measured. */
public final class EnsembleSource {
  private EnsembleSource() {}

  /** Endless years from monthly means, which are their expected values. */
  public static WinterSource of(SiteClimate climate, SynthesisChoices choices, long seed) {
    return new MadeWinters(climate, choices, WinterSource.UNBOUNDED, seed);
  }

  /** So many years from monthly means, which they meet exactly all together. */
  public static WinterSource of(
      SiteClimate climate, SynthesisChoices choices, int years, long seed) {
    return new MadeWinters(
        climate, choices, Check.within("years", years, 1, WinterSource.UNBOUNDED - 1), seed);
  }

  /** The same winters with more to tell of where they come from. */
  public static WinterSource noting(WinterSource source, List<String> more) {
    return new NotedSource(source, more);
  }

  /** The winters of measured years, one by one. */
  public static WinterSource measured(WeatherSeries series, ClimateSite site) {
    return new MeasuredWinters(series, site);
  }

  /** Stretches of measured years in new order; of at least three years. */
  public static WinterSource spliced(WeatherSeries series, ClimateSite site, int years, long seed) {
    return new SplicedWinters(
        series, site, Check.within("years", years, 1, WinterSource.UNBOUNDED), seed);
  }

  /**
   * Years like those of a series: spliced where there are at least three, else made from the
   * monthly means of what there is, with the variance of the years by rule; the notes say so.
   */
  public static WinterSource like(WeatherSeries series, ClimateSite site, int years, long seed) {
    int has = series.calendar().years();
    if (has >= SplicedWinters.LEAST_YEARS) {
      return spliced(series, site, years, seed);
    }
    var made = of(SiteClimate.of(series, site), SynthesisChoices.USUAL, years, seed);
    return new NotedSource(
        made,
        List.of(
            series.calendar().isTypical()
                ? "a typical year is pieced together from usual months and hides bad winters: only its"
                    + " monthly means are used, the differences between years are added by rule"
                : (has == 1 ? "one year is" : "two years are")
                    + " too few to tell a bad winter from a usual one: only the monthly means are used,"
                    + " the differences between years are added by rule"));
  }
}
