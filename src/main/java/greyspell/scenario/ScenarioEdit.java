package greyspell.scenario;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.EditPath.Step;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Changes to the text of a scenario file that leave its comments, its order and its layout alone.
 *
 * <p>A path names a value as docs/scenario-reference.md does: {@code bank.in_parallel}, {@code
 * arrays[1].tilt}; an item of a list by its number from 0 or by its name, {@code
 * loads.appliances[Chest freezer].power}. What is not in the file yet is written into the right
 * block. After every change the text is read again: a change that would touch anything else than it
 * was asked to is refused. Comments inside a block or a line that is replaced or removed as a whole
 * go with it. Every method leaves this object as it is and hands out another.
 */
public final class ScenarioEdit {
  private final String text;
  private final Path file;
  private final Node root;

  /** Read once for all edits of a text. */
  private final Map<Optional<Path>, Library> libraries;

  private ScenarioEdit(String text, Path file, Map<Optional<Path>, Library> libraries) {
    this.text = text;
    this.file = file;
    this.libraries = libraries;
    root = YamlFile.compose(text, file.toString());
  }

  /** Of a file as it stands. */
  public static ScenarioEdit of(Path file) {
    return new ScenarioEdit(YamlFile.text(file, file.toString()), file, new ConcurrentHashMap<>());
  }

  /**
   * Of a text.
   *
   * @param asIfAt where it would stand, for messages and for files named relative to it
   */
  public static ScenarioEdit ofText(String text, Path asIfAt) {
    return new ScenarioEdit(
        text.startsWith("\ufeff") ? text.substring(1) : text, asIfAt, new ConcurrentHashMap<>());
  }

  /** The whole file. */
  public String text() {
    return text;
  }

  /** The home that the text as it now stands describes; faults name the file. */
  public Scenario scenario(@Nullable Path libraryFolder) {
    Library library =
        libraries.computeIfAbsent(
            Optional.ofNullable(libraryFolder),
            folder -> ScenarioReader.library(file, libraryFolder));
    return ScenarioReader.read(root, file, library);
  }

  /**
   * With this value at this path.
   *
   * @param value as it is written behind a key ({@code 40 W}; quotes are added where YAML needs
   *     them), or YAML between braces or brackets, or the lines of a block
   * @throws BadInput if the path names no key or no item, with the nearest that there is
   */
  public ScenarioEdit set(String path, String value) {
    EditWalk walk = walk(path);
    Fragment fragment = Fragment.of(walk.key(), value, path);
    Map<String, String> wanted = new LinkedHashMap<>(values());
    wanted.keySet().removeIf(p -> EditCheck.isBelow(p, walk.path()));
    wanted.putAll(EditCheck.values(fragment.node(), walk.key().shape, walk.path()));
    return checked(walk.set(fragment), wanted, path);
  }

  /**
   * With one more item at the end of a list; the list is begun if there is none.
   *
   * @param item a name, {@code {from: X}}, or the lines of a block
   */
  public ScenarioEdit add(String listPath, String item) {
    EditWalk walk = walk(listPath);
    if (walk.key().kind != Key.Kind.LIST || walk.isItem()) {
      throw BadInput.of(
          Place.of(file.toString()),
          "\"" + Border.shown(listPath) + "\" is no list",
          "must be a list such as arrays, loads.appliances or conductors",
          "Set it instead.");
    }
    Fragment fragment = Fragment.of(walk.key(), item, listPath).item();
    int size = walk.value() instanceof SequenceNode list ? list.getValue().size() : 0;
    Map<String, String> wanted = new LinkedHashMap<>(values());
    wanted.putAll(
        EditCheck.values(fragment.node(), walk.key().shape, walk.path() + "[" + size + "]"));
    return checked(walk.add(fragment), wanted, listPath);
  }

  /**
   * Without this key or this item.
   *
   * @throws BadInput if it is not there
   */
  public ScenarioEdit remove(String path) {
    EditWalk walk = walk(path);
    if (walk.value() == null) {
      throw BadInput.of(
          Place.of(file.toString()),
          "\"" + Border.shown(path) + "\" is not in the file",
          "must be a key or an item that is",
          "What is left out takes its default.");
    }
    return checked(walk.remove(), EditCheck.without(values(), walk.path()), path);
  }

  /**
   * What the file itself holds at this path, as it is written; a block on one line. Null if it is
   * left out (then a library entry or a default may hold).
   */
  public @Nullable String written(String path) {
    Node value = walk(path).value();
    if (value == null || YamlLayout.isNothing(value)) {
      return null;
    }
    return value instanceof ScalarNode scalar ? scalar.getValue() : Fragment.flow(value);
  }

  /** Number of items of a list, 0 if it is left out. */
  public int count(String listPath) {
    return walk(listPath).value() instanceof SequenceNode list ? list.getValue().size() : 0;
  }

  private EditWalk walk(String path) {
    List<Step> steps = EditPath.steps(path.strip(), file.toString());
    return new EditWalk(new YamlLayout(text), root, file.toString(), path.strip(), steps);
  }

  private Map<String, String> values() {
    return EditCheck.values(root, Vocabulary.SCENARIO, "");
  }

  private ScenarioEdit checked(String changed, Map<String, String> wanted, String path) {
    try {
      var edit = new ScenarioEdit(changed, file, libraries);
      if (edit.values().equals(wanted)) {
        return edit;
      }
    } catch (BadInput notYaml) {
      // told below: the layout of this file is one that is not understood
    }
    throw BadInput.of(
        Place.of(file.toString()),
        "\"" + Border.shown(path) + "\" stands where the text cannot be changed safely",
        "must be written in plain lines, or between braces, without anchors",
        "Change this key by hand.");
  }

  /** The tuple of a key, null if it is left out. */
  static @Nullable NodeTuple tuple(MappingNode mapping, String key) {
    for (NodeTuple tuple : mapping.getValue()) {
      if (tuple.getKeyNode() instanceof ScalarNode scalar && scalar.getValue().equals(key)) {
        return tuple;
      }
    }
    return null;
  }
}
