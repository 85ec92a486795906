package greyspell.sweep;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.ScenarioEdit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a sweep asks: every home, under every combination of the values. Runs are numbered from 0,
 * home by home; of the keys varied the first one changes slowest.
 *
 * @param isSideBySide the first values of all keys belong together, then the second ones, and so on
 * @param winters in which the homes stand
 * @param library folder of the equipment library, null to look for it
 */
public record SweepQuestion(
    List<Home> homes,
    List<Variation> variations,
    boolean isSideBySide,
    SweepWinters winters,
    @Nullable Path library) {
  private static final Set<String> OF_THE_LIGHT = Set.of("home", "site", "weather", "sky", "seed");

  public SweepQuestion {
    homes = List.copyOf(homes);
    variations = List.copyOf(variations);
    checkPaths(variations);
    if (isSideBySide) {
      checkLengths(variations);
    }
    for (Variation variation : variations) {
      checkKnown(homes, variation);
    }
  }

  /** A scenario file as it stands. */
  public record Home(Path file, ScenarioEdit text) {
    public static Home of(Path file) {
      return new Home(file, ScenarioEdit.of(file));
    }

    /** As the file says it. */
    public String name() {
      String name = text.written("home");
      return name == null ? "" : name;
    }
  }

  private static void checkPaths(List<Variation> variations) {
    var paths = new HashSet<String>();
    for (Variation variation : variations) {
      if (!paths.add(variation.path())) {
        throw BadInput.of(
            Place.of("--vary"),
            "found " + variation.path() + " twice",
            "each key once",
            "Put all its values behind one --vary.");
      }
    }
  }

  private static void checkLengths(List<Variation> variations) {
    for (Variation variation : variations) {
      int first = variations.get(0).values().size();
      if (variation.values().size() != first) {
        throw BadInput.of(
            Place.of("--side-by-side"),
            "found "
                + first
                + " values of "
                + variations.get(0).path()
                + " and "
                + variation.values().size()
                + " of "
                + variation.path(),
            "must be as many of each",
            "Or leave --side-by-side out: then every value meets every other.");
      }
    }
  }

  /** A key that no home knows is a slip of the pen; one that some lack is told in their rows. */
  private static void checkKnown(List<Home> homes, Variation variation) {
    BadInput first = null;
    for (Home home : homes) {
      try {
        home.text().written(variation.path());
        return;
      } catch (BadInput e) {
        first = first == null ? e : first;
      }
    }
    if (first != null) {
      throw first;
    }
  }

  /** Combinations of each home; may be more than an int holds. */
  public long combinations() {
    if (variations.isEmpty() || isSideBySide) {
      return variations.isEmpty() ? 1 : variations.get(0).values().size();
    }
    double product = 1.0;
    long count = 1;
    for (Variation variation : variations) {
      product *= variation.values().size();
      count *= variation.values().size();
    }
    return product > 1e15 ? (long) 1e15 : count;
  }

  /** All runs of all homes. */
  public long runs() {
    return combinations() * homes.size();
  }

  /** "2 homes x 5 x 3". */
  public String sum() {
    var parts = new ArrayList<String>();
    parts.add(homes.size() == 1 ? "1 home" : homes.size() + " homes");
    if (isSideBySide) {
      parts.add(Long.toString(combinations()));
    } else {
      variations.forEach(v -> parts.add(Integer.toString(v.values().size())));
    }
    return String.join(" x ", parts);
  }

  Home home(int run) {
    return homes.get((int) (run / combinations()));
  }

  /** What each key varied is set to in this run. */
  public List<String> values(int run) {
    var values = new String[variations.size()];
    long left = run % combinations();
    for (int k = values.length - 1; k >= 0; k--) {
      List<String> all = variations.get(k).values();
      int i = (int) (isSideBySide ? left : left % all.size());
      left = isSideBySide ? left : left / all.size();
      values[k] = all.get(i);
    }
    return List.of(values);
  }

  /** The home's text with the values of this run. */
  ScenarioEdit text(int run) {
    ScenarioEdit text = home(run).text();
    List<String> values = values(run);
    for (int k = 0; k < values.size(); k++) {
      String path = variations.get(k).path();
      String value = values.get(k);
      if (value.equals(Variation.LEFT_OUT)) {
        text = text.written(path) == null ? text : text.remove(path);
      } else if (!value.equals(Variation.AS_IS)) {
        text = text.set(path, value);
      }
    }
    return text;
  }

  /** Runs of the same name share weather, sun and sky. */
  String light(int run) {
    var name = new StringBuilder().append(run / combinations());
    List<String> values = values(run);
    for (int k = 0; k < values.size(); k++) {
      String top = variations.get(k).path().split("[.\\[]", 2)[0];
      if (OF_THE_LIGHT.contains(top)) {
        name.append('\n').append(k).append(' ').append(values.get(k));
      }
    }
    return name.toString();
  }
}
