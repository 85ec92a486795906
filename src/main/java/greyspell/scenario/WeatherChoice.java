package greyspell.scenario;

import greyspell.weather.ensemble.WinterKind;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which weather a home stands in, and how its many winters are drawn. There is a file or there are
 * monthly means.
 *
 * @param files hourly weather, in the order of time; empty where there are means alone
 * @param years measured years from which winters are drawn and beside which a typical year is
 *     ranked; empty to take those of the files
 * @param means twelve monthly means, null if none
 * @param winters how many are wanted; null if the scenario does not say
 * @param how null to go by what there is
 * @param memory of the sky, for made winters
 * @param seed of the winters
 */
public record WeatherChoice(
    List<WeatherPath> files,
    List<WeatherPath> years,
    @Nullable WeatherPath means,
    @Nullable Integer winters,
    @Nullable WinterKind how,
    Memory memory,
    long seed) {
  public WeatherChoice {
    files = List.copyOf(files);
    years = List.copyOf(years);
  }

  /** One file and nothing more. */
  public WeatherChoice(String file, String resolvedPath) {
    this(
        List.of(new WeatherPath(file, resolvedPath)),
        List.of(),
        null,
        null,
        null,
        Memory.GREY_SPELLS,
        1);
  }

  /** How long made skies last. */
  public enum Memory {
    /** Grey and bright weeks come. */
    GREY_SPELLS,
    /** A day remembers only the one before it. */
    ONE_LAG
  }

  /**
   * A file; the path is as written, relative to the scenario file's folder.
   *
   * @param resolvedPath relative to where the program runs
   */
  public record WeatherPath(String file, String resolvedPath) {
    public Path path() {
      return Path.of(resolvedPath);
    }
  }

  /** For people: the file, "first.csv and 2 more", or that of the means. */
  public String file() {
    WeatherPath from = means;
    if (files.isEmpty()) {
      return from == null ? "" : from.file();
    }
    String first = files.get(0).file();
    return files.size() == 1 ? first : first + " and " + (files.size() - 1) + " more";
  }

  /** Where there are no hours, only monthly means: every run draws winters. */
  public boolean isMeansAlone() {
    return files.isEmpty() && years.isEmpty();
  }
}
