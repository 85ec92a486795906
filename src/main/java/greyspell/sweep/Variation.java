package greyspell.sweep;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import java.util.List;

/**
 * One key of the scenario file and the values that it takes in turn.
 *
 * @param path as docs/scenario-reference.md names it
 * @param values as they would stand in the file, or {@link #LEFT_OUT}, or {@link #AS_IS}
 */
public record Variation(String path, List<String> values) {
  /** The key is taken out of the file. */
  public static final String LEFT_OUT = "left out";

  /** The key stays as it is written. */
  public static final String AS_IS = "as is";

  private static final String OPTION = "--vary";

  public Variation {
    values = List.copyOf(values);
  }

  /**
   * Reads {@code PATH=VALUES}.
   *
   * @throws BadInput that says what is wrong with which part
   */
  public static Variation parse(String text) {
    int equals = equals(text);
    if (equals < 0 || text.substring(0, equals).isBlank()) {
      throw BadInput.of(
          Place.of(OPTION),
          "found \"" + text + "\"",
          "must be PATH=VALUES, such as \"arrays[0].tilt=30..70 deg step 10\"",
          "Put the whole of it in quotes.");
    }
    String path = text.substring(0, equals).strip();
    return new Variation(path, SweepValues.of(text.substring(equals + 1), path));
  }

  /** The first equals sign that is not in a name in brackets. */
  private static int equals(String text) {
    int depth = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      depth += c == '[' ? 1 : c == ']' ? -1 : 0;
      if (c == '=' && depth <= 0) {
        return i;
      }
    }
    return -1;
  }
}
