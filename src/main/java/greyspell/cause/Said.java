package greyspell.cause;

import java.util.List;

/**
 * One sentence, not yet in any language: the key of its pattern in {@code words_xx.properties} and
 * what goes into the pattern's {0}, {1}, ...
 *
 * @param key "story.began": lower case, dots
 * @param values in the order of the pattern's numbers
 */
public record Said(String key, List<SaidValue> values) {
  public Said {
    values = List.copyOf(values);
  }

  public static Said of(String key, SaidValue... values) {
    return new Said(key, List.of(values));
  }
}
