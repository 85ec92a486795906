package greyspell.scenario;

import java.util.List;
import java.util.Locale;

/** The sixteen winds, clockwise from north. */
final class Compass {
  static final List<String> WORDS =
      List.of(
          "N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW",
          "NW", "NNW");
  private static final List<String> LONG_WORDS =
      List.of(
          "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");
  private static final double BETWEEN_WORDS_DEG = 360.0 / 16.0;

  private Compass() {}

  /** Azimuth of a compass word, NaN if it is none. */
  static double azimuthDeg(String word) {
    int i = WORDS.indexOf(word.toUpperCase(Locale.ROOT));
    if (i >= 0) {
      return i * BETWEEN_WORDS_DEG;
    }
    int j = LONG_WORDS.indexOf(word.toLowerCase(Locale.ROOT));
    return j >= 0 ? 2 * j * BETWEEN_WORDS_DEG : Double.NaN;
  }
}
