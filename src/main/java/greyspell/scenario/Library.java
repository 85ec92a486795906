package greyspell.scenario;

import greyspell.quantity.BadInput;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.Node;

/**
 * The equipment library: a folder with one YAML file for each kind of equipment, each a list of
 * data sheets. A file is read only when a name of its kind is asked for.
 */
final class Library {
  static final String FOLDER = "shared";

  private final @Nullable Path folder;
  private final Map<String, Entries> files = new HashMap<>();

  Library(@Nullable Path folder) {
    this.folder = folder;
  }

  /**
   * The folder "shared" beside the scenario file or in a folder above it, else beside the program;
   * null if there is none.
   */
  static @Nullable Path find(Path scenarioFile, @Nullable Path programFolder) {
    for (Path up = scenarioFile.toAbsolutePath().normalize().getParent();
        up != null;
        up = up.getParent()) {
      if (isLibrary(up.resolve(FOLDER))) {
        return up.resolve(FOLDER);
      }
    }
    for (Path up = programFolder; up != null; up = up.getParent()) {
      if (isLibrary(up.resolve(FOLDER))) {
        return up.resolve(FOLDER);
      }
    }
    return null;
  }

  /** Other folders are called "shared" too. */
  private static boolean isLibrary(Path candidate) {
    return Files.isRegularFile(candidate.resolve(ArrayKeys.MODULE.library()));
  }

  /** As named in messages. */
  String shownName(Shape shape) {
    return folder == null
        ? FOLDER.concat("/").concat(shape.library())
        : folder.resolve(shape.library()).toString();
  }

  /** Names of the entries, in the order of the file. */
  synchronized List<String> names(Shape shape, Border border) {
    return new ArrayList<>(entries(shape, border).names());
  }

  /** The entry, or null after a fault that says which names are near. */
  synchronized @Nullable Node entry(
      Shape shape, String name, Place place, String key, Border border) {
    if (folder == null) {
      border.fault(
          place,
          Border.found(key, name),
          "names an entry of the equipment library, and no library was found",
          "Put the folder \"shared\" beside or above the scenario file, or write the values out.");
      return null;
    }
    Entries entries = entries(shape, border);
    Node entry = entries.find(name, border);
    if (entry == null && !entries.names().contains(name)) {
      refuse(shape, name, place, key, border, entries);
    }
    return entry;
  }

  private void refuse(
      Shape shape, String name, Place place, String key, Border border, Entries entries) {
    String nearest = nearest(name, entries.names());
    border.fault(
        place,
        Border.found(key, name),
        "must be the name of one of the "
            + entries.names().size()
            + " entries in "
            + shownName(shape)
            + ", or a block of values",
        nearest.isEmpty() ? "See the names there." : "Nearest: " + nearest + ".");
  }

  /** The nearest name, or those that hold the text or a word of it. */
  private static String nearest(String name, Iterable<String> known) {
    var all = new ArrayList<String>();
    known.forEach(all::add);
    String nearest = Nearest.of(name, all);
    if (nearest != null) {
      return "\"" + nearest + "\"";
    }
    var holding = new ArrayList<String>();
    for (String word : name.toLowerCase(java.util.Locale.ROOT).split("\\s+", 5)) {
      for (String candidate : all) {
        boolean holds = candidate.toLowerCase(java.util.Locale.ROOT).contains(word);
        if (word.length() >= 3 && holds && holding.size() < 3 && !holding.contains(candidate)) {
          holding.add(candidate);
        }
      }
    }
    return holding.isEmpty() ? "" : "\"" + String.join("\", \"", holding) + "\"";
  }

  private Entries entries(Shape shape, Border border) {
    Entries known = files.get(shape.library());
    if (known == null) {
      known = read(shape, border);
      if (border.isClean()) {
        // else the next reader is to be told of the faults too
        files.put(shape.library(), known);
      }
    }
    return known;
  }

  private Entries read(Shape shape, Border border) {
    String shown = shownName(shape);
    if (folder == null) {
      return new Entries("", shown);
    }
    try {
      var entries = new Entries(YamlFile.text(folder.resolve(shape.library()), shown), shown);
      entries.index(border);
      return entries;
    } catch (BadInput e) {
      border.faults(e);
      return new Entries("", shown);
    }
  }
}
