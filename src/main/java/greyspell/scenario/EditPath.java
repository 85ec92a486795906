package greyspell.scenario;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a value stands in a scenario file: keys with points between, items of a list in brackets by
 * number (from 0) or by name: {@code loads.appliances[Chest freezer].power}.
 */
final class EditPath {
  /**
   * One key on the way.
   *
   * @param item number or name of the item of its list, null if none is named
   */
  record Step(String key, @Nullable String item) {}

  private EditPath() {}

  /** At least one step. */
  static List<Step> steps(String path, String file) {
    var steps = new ArrayList<Step>();
    int at = 0;
    while (at <= path.length()) {
      int end = keyEnd(path, at);
      if (end == at) {
        throw refused(path, file);
      }
      String key = path.substring(at, end);
      if (end < path.length() && path.charAt(end) == '[') {
        int close = close(path, end);
        if (close < 0 || path.substring(end + 1, close).isBlank()) {
          throw refused(path, file);
        }
        steps.add(new Step(key, path.substring(end + 1, close).strip()));
        at = close + 2;
      } else {
        steps.add(new Step(key, null));
        at = end + 1;
      }
    }
    return steps;
  }

  private static int keyEnd(String path, int from) {
    int end = from;
    while (end < path.length() && isOfKey(path.charAt(end))) {
      end++;
    }
    boolean endsWell = end == path.length() || path.charAt(end) == '.' || path.charAt(end) == '[';
    return endsWell ? end : from;
  }

  private static boolean isOfKey(char c) {
    return c == '_' || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
  }

  /** The bracket that ends an item's name: the first with a point or nothing behind it. */
  private static int close(String path, int from) {
    int close = path.indexOf(']', from);
    while (close >= 0 && close + 1 < path.length() && path.charAt(close + 1) != '.') {
      close = path.indexOf(']', close + 1);
    }
    return close;
  }

  private static BadInput refused(String path, String file) {
    return BadInput.of(
        Place.of(file),
        "no path of a key: \"" + Border.shown(path) + "\"",
        "must be keys with points between, such as bank.in_parallel or arrays[0].tilt",
        "Items of a list are named in brackets, by number from 0 or by name.");
  }
}
