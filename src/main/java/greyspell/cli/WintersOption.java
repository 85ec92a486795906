package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.study.Study.Steps;
import greyspell.study.Trials;
import greyspell.study.WintersWanted;
import greyspell.weather.ensemble.WinterKind;
import greyspell.weather.ensemble.WinterSource;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How many winters, and of which kind; goes before what the scenario says. */
final class WintersOption {
  private static final int MOST = 10_000;

  private static final int MOST_TRIED = 300;

  @Option(
      names = "--winters",
      paramLabel = "N",
      description =
          "Go through N winters, drawn or measured, instead of the weather file's years as they stand.")
  private @Nullable Integer winters;

  @Option(
      names = "--how",
      paramLabel = "KIND",
      description =
          "Where winters come from: measured (those of the weather files one by one), spliced (stretches of them joined anew) or made (from monthly means).")
  private @Nullable String how;

  /** Null where neither the command line nor the scenario asks for winters. */
  @Nullable WintersWanted find(Scenario home) {
    boolean isAsked =
        winters != null
            || how != null
            || home.weather().winters() != null
            || home.weather().isMeansAlone();
    return isAsked ? wanted(home) : null;
  }

  /** Refuses more that are asked for here; what the scenario says is for all commands. */
  void atMost(int most) {
    if (winters != null && winters > most) {
      throw BadInput.of(
          Place.of("--winters"),
          "found " + winters,
          "must be 1 to " + most + " here",
          "Each is run several hundred times; 30 to 100 tell enough.");
    }
  }

  /** Weather in which variants of a home are tried: its own years, or the winters asked for. */
  Trials trials(Scenario home, Steps steps) {
    WintersWanted wanted = find(home);
    if (wanted == null) {
      return Trials.of(home, steps);
    }
    WinterSource source = wanted.draw(home).source();
    if (source.years() > MOST_TRIED) {
      throw BadInput.of(
          Place.of("--winters"),
          "found " + source.years(),
          "must be 1 to " + MOST_TRIED + " where many variants are tried",
          "30 to 100 tell enough.");
    }
    return Trials.of(home, source, source.years(), steps);
  }

  WintersWanted wanted(Scenario home) {
    Integer count = winters;
    if (count != null && (count < 1 || count > MOST)) {
      throw BadInput.of(
          Place.of("--winters"),
          "found " + count,
          "must be 1 to " + MOST,
          "100 tell of the winter that comes once in ten years.");
    }
    return WintersWanted.of(home, count).withHow(kind(how));
  }

  /** Of its word; null for none. */
  static @Nullable WinterKind kind(@Nullable String word) {
    if (word == null) {
      return null;
    }
    List<String> words =
        Stream.of(WinterKind.values()).map(k -> k.name().toLowerCase(Locale.ROOT)).toList();
    int at = words.indexOf(word.strip().toLowerCase(Locale.ROOT));
    if (at < 0) {
      String near = Nearest.of(word, words);
      throw BadInput.of(
          Place.of("--how"),
          "found \"" + word + '"',
          "must be one of " + String.join(", ", words),
          near == null ? "Write one of these words." : "Did you mean " + near + "?");
    }
    return WinterKind.valueOf(words.get(at).toUpperCase(Locale.ROOT));
  }
}
