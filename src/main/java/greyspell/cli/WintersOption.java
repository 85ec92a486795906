package greyspell.cli;

import greyspell.quantity.BadInput;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.study.WintersWanted;
import greyspell.weather.ensemble.WinterKind;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How many winters, and of which kind; goes before what the scenario says. */
final class WintersOption {
  private static final int MOST = 10_000;

  @Option(
      names = "--winters",
      paramLabel = "N",
      description =
          "Run N drawn winters and tell the odds; the one that comes once in ten years is shown in full.")
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
