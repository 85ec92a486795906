package greyspell.bench;

import greyspell.calendar.Monthly;
import greyspell.weather.ensemble.ClimateSite;
import greyspell.weather.ensemble.EnsembleSeries;
import greyspell.weather.ensemble.EnsembleSource;
import greyspell.weather.ensemble.SiteClimate;
import greyspell.weather.ensemble.SynthesisChoices;
import greyspell.weather.ensemble.WeatherYear;
import greyspell.weather.ensemble.WinterSource;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Microseconds a year of weather: made from means, spliced from years; and the means' balance. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(3)
public class WinterBench {
  private static final SiteClimate CLIMATE =
      new SiteClimate(
          new ClimateSite("Mewsand (invented)", 53.2, 6.1, 8.0, 1.0),
          Monthly.of(620, 1290, 2510, 4110, 5020, 5180, 5050, 4250, 2980, 1620, 790, 480),
          Monthly.of(3.4, 3.7, 6.1, 9.3, 13.0, 15.8, 17.9, 17.7, 14.8, 11.0, 6.9, 4.1));

  private WinterSource made = EnsembleSource.of(CLIMATE, SynthesisChoices.USUAL, 1);
  private WinterSource spliced = made;
  private final WeatherYear year = new WeatherYear();
  private int next;

  /** Ten made years stand in for measured ones. */
  @Setup
  public void prepare() {
    made = EnsembleSource.of(CLIMATE, SynthesisChoices.USUAL, 1);
    spliced =
        EnsembleSource.spliced(
            EnsembleSeries.of(made, 2011, 10), CLIMATE.site(), WinterSource.UNBOUNDED, 1);
  }

  @Benchmark
  public double madeYear() {
    made.fill(next++ & 0xFFFF, year);
    return year.globalHorizontalWm2()[12];
  }

  @Benchmark
  public double splicedYear() {
    spliced.fill(next++ & 0xFFFF, year);
    return year.globalHorizontalWm2()[12];
  }

  /** A hundred years: what exact means cost before the first fill. */
  @Benchmark
  public WinterSource balanceOf100() {
    return EnsembleSource.of(CLIMATE, SynthesisChoices.USUAL, 100, 1);
  }
}
