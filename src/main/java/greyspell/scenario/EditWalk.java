package greyspell.scenario;

import greyspell.quantity.BadInput;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.scenario.EditPath.Step;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** The way from the top of a scenario file to one of its values, as far as the file goes. */
final class EditWalk {
  private final String file;
  private final String asked;
  private final List<Step> steps;
  private final Splice splice;

  private Shape shape = Vocabulary.SCENARIO;
  private @Nullable Key key;
  private String path = "";

  /** The block that holds the last key found, or the bare value that stands for a block. */
  private Node holder;

  /** What stands at the last key; null if the key is left out. */
  private @Nullable NodeTuple tuple;

  private @Nullable SequenceNode list;
  private @Nullable Node value;

  /** The steps that the file does not hold, below what it does. */
  private int firstMissing = Integer.MAX_VALUE;

  private int itemAt = -1;

  EditWalk(YamlLayout layout, Node root, String file, String asked, List<Step> steps) {
    this.file = file;
    this.asked = asked;
    this.steps = steps;
    splice = new Splice(layout, root);
    holder = root;
    value = root;
    for (int i = 0; i < steps.size(); i++) {
      step(i, layout);
    }
  }

  private void step(int i, YamlLayout layout) {
    Step step = steps.get(i);
    Shape inside = i == 0 ? shape : shapeBelow(i);
    shape = inside;
    Key next = inside.find(step.key());
    if (next == null) {
      throw unknown(step.key(), inside);
    }
    key = next;
    path = EditCheck.join(path, next.name);
    if (firstMissing > i) {
      descend(i, next, layout);
    }
    if (step.item() != null) {
      if (next.kind != Key.Kind.LIST) {
        throw refused("\"" + next.name + "\" is no list", "has no items", "Leave the [ ] out.");
      }
      pick(step.item(), next);
    } else if (next.kind == Key.Kind.LIST && i + 1 < steps.size()) {
      throw refused(
          "\"" + path + "\" is a list",
          "must say which item: " + path + "[0], or by its name",
          itemsOf(value));
    } else {
      list = null;
      itemAt = -1;
    }
  }

  private Shape shapeBelow(int i) {
    Key above = key();
    if (above.shape == null) {
      throw refused(
          "\"" + path + "\" is a single value",
          "has no key \"" + steps.get(i).key() + "\" below it",
          "");
    }
    return above.shape;
  }

  /** From what was reached to the value of the next key. */
  private void descend(int i, Key next, YamlLayout layout) {
    Node here = Objects.requireNonNull(value);
    if (here instanceof MappingNode mapping) {
      holder = here;
      tuple = ScenarioEdit.tuple(mapping, next.name);
      value = tuple == null ? null : tuple.getValueNode();
      if (tuple != null && layout.start(tuple.getValueNode()) < layout.start(tuple.getKeyNode())) {
        throw refused(
            "\"" + path + "\" is written by reference (*)",
            "must be written out to be changed",
            "Write the values out instead.");
      }
    } else if (here instanceof ScalarNode && shape.shortKey() != null) {
      holder = here;
      tuple = null;
      value = next.name.equals(shape.shortKey().name) ? here : null;
    } else {
      throw refused("\"" + path + "\": found " + Block.kindOf(here), "must be in a block", "");
    }
    boolean isMissing = value == null || YamlLayout.isNothing(value);
    if (isMissing) {
      value = null;
      firstMissing = i + 1;
    }
  }

  private void pick(String item, Key next) {
    if (!(value instanceof SequenceNode found)) {
      throw refused("\"" + path + "\" holds no items", "must hold the one that is named", "");
    }
    list = found;
    itemAt = EditItems.find(found, item);
    if (itemAt < 0) {
      String known = itemsOf(found);
      throw refused(
          itemAt == EditItems.SEVERAL
              ? "several items of " + next.name + " are called \"" + Border.shown(item) + "\""
              : "no item \"" + Border.shown(item) + "\" in " + next.name,
          itemAt == EditItems.SEVERAL
              ? "must be one: give its number"
              : "must be one that is there",
          known);
    }
    value = found.getValue().get(itemAt);
    path = path + "[" + itemAt + "]";
  }

  private static String itemsOf(@Nullable Node value) {
    return value instanceof SequenceNode list ? EditItems.listed(list) : "";
  }

  Key key() {
    return Objects.requireNonNull(key);
  }

  /** With numbers in the place of names. */
  String path() {
    return path;
  }

  boolean isItem() {
    return itemAt >= 0;
  }

  /** Null if it is left out. */
  @Nullable Node value() {
    return value;
  }

  // ---- changes
  // ------------------------------------------------------------------------------------

  String set(Fragment fragment) {
    if (itemAt >= 0) {
      return splice.item(Objects.requireNonNull(list), Objects.requireNonNull(value), fragment);
    }
    return write(fragment);
  }

  /** At the deepest key that the file has room for, what is missing below it wrapped around. */
  private String write(Fragment fragment) {
    int deepest = Math.min(firstMissing, steps.size()) - 1;
    Fragment whole = fragment;
    for (int i = steps.size() - 1; i > deepest; i--) {
      whole = whole.under(steps.get(i).key(), splice.indent());
    }
    String name = steps.get(deepest).key();
    if (holder instanceof MappingNode mapping) {
      return tuple == null
          ? splice.newKey(mapping, name, whole)
          : splice.value(mapping, tuple, whole);
    }
    return widened((ScalarNode) holder, name, whole);
  }

  /** A bare value becomes a block between braces, unless it is itself what is set. */
  private String widened(ScalarNode bare, String name, Fragment whole) {
    String shortKey = Objects.requireNonNull(shapeOfHolder().shortKey()).name;
    if (name.equals(shortKey)) {
      return splice.bare(bare, whole);
    }
    String kept = Fragment.words(bare.getValue(), true);
    return splice.bare(
        bare,
        Fragment.flowOf("{" + shortKey + ": " + kept + ", " + name + ": " + whole.flow() + "}"));
  }

  /** Found again from the top, since the walk went on below it. */
  private Shape shapeOfHolder() {
    Shape at = Vocabulary.SCENARIO;
    int deepest = Math.min(firstMissing, steps.size()) - 1;
    for (int i = 0; i < deepest; i++) {
      at = Block.shapeOf(Objects.requireNonNull(at.find(steps.get(i).key())));
    }
    return at;
  }

  String add(Fragment item) {
    if (value instanceof SequenceNode found) {
      boolean isOneLine = YamlLayout.isFlow(found) && !found.getValue().isEmpty();
      if (isOneLine || YamlLayout.isBlock(found) || YamlLayout.isFlow(holder)) {
        return splice.newItem(found, item);
      }
    }
    return write(item.asList(2));
  }

  String remove() {
    if (list != null) {
      return list.getValue().size() == 1 && !YamlLayout.isFlow(list)
          ? write(Fragment.flowOf("[]"))
          : splice.withoutItem(list, itemAt);
    }
    if (holder instanceof MappingNode mapping) {
      return splice.withoutKey(mapping, Objects.requireNonNull(tuple));
    }
    throw refused("\"" + path + "\" is all that its block holds", "must stay", "Remove the block.");
  }

  // ---- refusals
  // -----------------------------------------------------------------------------------

  private BadInput unknown(String word, Shape inside) {
    String nearest = Nearest.of(word, inside.keyNames());
    return refused(
        "unknown key \"" + Border.shown(word) + "\"",
        "keys of " + inside.name() + ": " + String.join(", ", inside.keyNames()),
        nearest == null
            ? "See docs/scenario-reference.md."
            : "Nearest: \"" + EditCheck.join(path, nearest) + "\".");
  }

  private BadInput refused(String found, String expected, String mend) {
    String shown = Border.shown(asked);
    return BadInput.of(Place.of(file), shown + ": " + found, expected, mend);
  }
}
