package greyspell.words;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A sentence with places for values: {@code {0}} is the first value, {@code {0|day|days}} the word
 * for one where that value reads "1", else the word for many.
 */
final class Pattern {
  private Pattern() {}

  /**
   * Fills the places.
   *
   * @throws IllegalArgumentException for a place without a value
   */
  static String fill(String pattern, List<String> values) {
    var out = new StringBuilder(pattern.length() + 40);
    int at = 0;
    for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', at)) {
      int close = pattern.indexOf('}', open);
      if (close < 0) {
        throw new IllegalArgumentException("no end of a place in: " + pattern);
      }
      out.append(pattern, at, open)
          .append(place(pattern, pattern.substring(open + 1, close), values));
      at = close + 1;
    }
    return out.append(pattern, at, pattern.length()).toString();
  }

  private static String place(String pattern, String place, List<String> values) {
    int bar = place.indexOf('|');
    int number = Integer.parseInt(bar < 0 ? place : place.substring(0, bar));
    if (number >= values.size()) {
      throw new IllegalArgumentException("no value for {" + number + "} in: " + pattern);
    }
    if (bar < 0) {
      return values.get(number);
    }
    int second = place.indexOf('|', bar + 1);
    return values.get(number).equals("1")
        ? place.substring(bar + 1, second)
        : place.substring(second + 1);
  }

  /** Numbers of the places that a pattern has. */
  static Set<Integer> places(String pattern) {
    var places = new TreeSet<Integer>();
    for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', open + 1)) {
      String place = pattern.substring(open + 1, pattern.indexOf('}', open));
      places.add(Integer.parseInt(place.replaceFirst("\\D.*", "")));
    }
    return places;
  }
}
