package greyspell.scenario;

import greyspell.calendar.Monthly;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * A block of keys of one file, over an entry of the equipment library if it names one. Reading a
 * value never stops at a fault: it is noted, something harmless is handed back, and the next value
 * is read, so that all faults of a file come out at once.
 */
final class Block {
  /** A value and the file it stands in. */
  private record Held(Node node, String file) {}

  private final Shape shape;
  private final Node node;
  private final String file;
  private final String path;
  private final Border border;
  private final WrittenValues written;
  private final @Nullable Block under;
  private final String[] names;
  private final Node[] values;
  private int size;
  private boolean isUnsound;
  private final List<String> unknown = new ArrayList<>();

  /**
   * @param path of this block, empty for the whole file
   * @param under what goes behind this block's own values, null if nothing
   */
  Block(Shape shape, Node node, String file, String path, Border border, @Nullable Block under) {
    this.shape = shape;
    this.node = node;
    this.file = file;
    this.path = path;
    this.border = border;
    written = new WrittenValues(border);
    this.under = under;
    int most = node instanceof MappingNode m ? m.getValue().size() : 1;
    names = new String[most];
    values = new Node[most];
    if (node instanceof MappingNode mapping) {
      index(mapping);
    } else if (shape.shortKey() != null && node instanceof ScalarNode && !isNothing(node)) {
      names[0] = shape.shortKey().name;
      values[0] = node;
      size = 1;
    } else {
      isUnsound = true;
      border.fault(
          place(node),
          (path.isEmpty() ? "the file" : shape.name()) + ": found " + kindOf(node),
          "must be a block of keys: " + String.join(", ", shape.keyNames()),
          "Write one key on each line, set in alike.");
    }
  }

  /** A block that was left out whole, so that each of its defaults is used. */
  static Block empty(Shape shape, String file, String path, Border border) {
    var nothing = new MappingNode(Tag.MAP, List.of(), DumperOptions.FlowStyle.BLOCK);
    return new Block(shape, nothing, file, path, border, null);
  }

  private void index(MappingNode mapping) {
    List<NodeTuple> tuples = mapping.getValue();
    for (int i = 0; i < tuples.size(); i++) {
      Node keyNode = tuples.get(i).getKeyNode();
      Node valueNode = tuples.get(i).getValueNode();
      String name = keyNode instanceof ScalarNode scalar ? scalar.getValue() : "";
      if (shape.find(name) == null) {
        refuseUnknown(name, keyNode);
      } else if (at(name) >= 0) {
        border.fault(
            place(keyNode),
            "\"" + name + "\" a second time in " + where(),
            "each key once",
            "It is already set in line " + place(values[at(name)]).line() + ".");
      } else {
        names[size] = name;
        values[size++] = valueNode;
      }
    }
  }

  private void refuseUnknown(String name, Node keyNode) {
    unknown.add(name);
    String nearest = Nearest.of(name, shape.keyNames());
    String mend;
    if (nearest != null) {
      mend = "Nearest: \"" + nearest + "\".";
    } else if (!name.isEmpty() && (Character.isDigit(name.charAt(0)) || LoadWords.isDay(name))) {
      mend = "Between { } a comma parts two keys: put quotes around a value that has a comma.";
    } else {
      mend = "Leave it out, or see docs/scenario-reference.md.";
    }
    border.fault(
        place(keyNode),
        keyNode instanceof ScalarNode
            ? "unknown key \"" + Border.shown(name) + "\" in " + where()
            : "a key that is no word in " + where(),
        "keys of " + where() + ": " + String.join(", ", shape.keyNames()),
        mend);
  }

  private String where() {
    return "scenario".equals(shape.name()) ? "the scenario" : shape.name();
  }

  private int at(String name) {
    for (int i = 0; i < size; i++) {
      if (names[i].equals(name)) {
        return i;
      }
    }
    return -1;
  }

  /** The value as written here or, failing that, in the library. */
  private @Nullable Held find(Key key) {
    int i = at(key.name);
    if (i >= 0 && !isNothing(values[i])) {
      return new Held(values[i], file);
    }
    return under == null || key.name.equals("from") ? null : under.find(key);
  }

  /** {@code key:} with nothing behind it, or {@code ~}. */
  private static boolean isNothing(Node value) {
    return value instanceof ScalarNode scalar
        && scalar.getTag().equals(Tag.NULL)
        && scalar.isPlain();
  }

  /** The library's entry that this block is laid over, null if there is none. */
  @Nullable Block under() {
    return under;
  }

  /** Whether this block itself holds it, not the library's entry. */
  boolean isOwn(Key key) {
    int i = at(key.name);
    return i >= 0 && !isNothing(values[i]);
  }

  boolean has(Key key) {
    return find(key) != null;
  }

  @Nullable Node node(Key key) {
    Held held = find(key);
    return held == null ? null : held.node();
  }

  String path() {
    return path;
  }

  String path(Key key) {
    return path.isEmpty() ? key.name : path.concat(".").concat(key.name);
  }

  String file(Key key) {
    Held held = find(key);
    return held == null ? file : held.file();
  }

  Place place() {
    return place(node);
  }

  /** Of the value if it is written, else of the block. */
  Place place(Key key) {
    Held held = find(key);
    return held == null ? place() : placeIn(held.node(), held.file());
  }

  private Place place(Node any) {
    return placeIn(any, file);
  }

  /** Of a block that was left out whole the file is the place. */
  static Place placeIn(Node any, String file) {
    if (any.getStartMark() == null) {
      return Place.of(file);
    }
    return new Place(file, any.getStartMark().getLine() + 1, any.getStartMark().getColumn() + 1);
  }

  static String kindOf(Node any) {
    if (any instanceof ScalarNode scalar) {
      return scalar.getValue().isEmpty() || isNothing(any)
          ? "nothing"
          : "\"" + Border.shown(scalar.getValue()) + "\"";
    }
    return any instanceof SequenceNode ? "a list" : "a block of keys";
  }

  // ---- what is missing --------------------------------------------------------------------------

  /** Notes a missing key, unless a mistyped one was already named. */
  void missing(Key key) {
    if (isMistyped(key)) {
      return;
    }
    int i = at(key.name);
    border.fault(
        i >= 0 ? place(values[i]) : place(),
        i >= 0 ? key.name + ": found nothing" : "\"" + key.name + "\" is missing in " + where(),
        "must hold " + key.expectation(),
        key.kind == Key.Kind.MEASURE || key.kind == Key.Kind.MONTHLY
            ? "Write for instance \"" + key.name + ": " + key.dimensions.get(0).example() + "\"."
            : key.kind == Key.Kind.WORD ? "Choose one: " + String.join(", ", key.words) + "." : "");
  }

  /** Whether a fault already stands for it: a near word, or a block that is none. */
  boolean isMistyped(Key key) {
    for (String word : unknown) {
      if (key.name.equals(Nearest.of(word, shape.keyNames()))) {
        return true;
      }
    }
    return isUnsound;
  }

  private boolean takeDefault(Key key) {
    if (key.need == Key.Need.DEFAULT) {
      if (!key.why.isEmpty()) {
        border.assume(path(key), key.usual, key.why);
      }
      return true;
    }
    if (key.need == Key.Need.REQUIRED) {
      missing(key);
    }
    return false;
  }

  // ---- values with units ------------------------------------------------------------------------

  /** In inside units; NaN after a fault. */
  double measure(Key key) {
    return measure(key, Double.NaN);
  }

  /**
   * In the inside unit of the key's first dimension; a value of its second dimension is multiplied
   * by the factor to get there (Ah by volts, A by volts, V/K by one over volts).
   */
  double measure(Key key, double factor) {
    Held held = find(key);
    if (held == null) {
      return takeDefault(key) ? ofText(key, key.usual) : Double.NaN;
    }
    return written.measure(key, held.node(), held.file(), factor);
  }

  /** Null if it is left out. */
  @Nullable Double optional(Key key) {
    Held held = find(key);
    return held == null ? null : written.measure(key, held.node(), held.file(), Double.NaN);
  }

  private static double ofText(Key key, String text) {
    return Quantity.parse(text, key.dimensions).inside();
  }

  /** A value that stands somewhere below a key, as in a list; NaN after a fault. */
  double measureBelow(Key below, Key key, Node any) {
    return written.measure(key, any, file(below), Double.NaN);
  }

  Monthly monthly(Key key) {
    Held held = find(key);
    if (held == null) {
      return Monthly.constant(takeDefault(key) ? ofText(key, key.usual) : Double.NaN);
    }
    if (held.node() instanceof SequenceNode list) {
      return written.twelve(key, list, held.file());
    }
    return Monthly.constant(written.measure(key, held.node(), held.file(), Double.NaN));
  }

  /** Points in order of x; null if the key is left out. A single y is one point at half of x. */
  @Nullable List<WrittenValues.PointXY> curve(Key key) {
    Held held = find(key);
    if (held == null) {
      if (key.need == Key.Need.REQUIRED) {
        missing(key);
      }
      return null;
    }
    return written.curve(key, held.node(), held.file());
  }

  // ---- other values -----------------------------------------------------------------------------

  /** Text of a single value that stands below this key; null after a fault. */
  @Nullable String textBelow(Key key, Node any) {
    return written.text(key, any, file(key));
  }

  String text(Key key) {
    Held held = find(key);
    if (held == null) {
      takeDefault(key);
      return key.usual;
    }
    String text = written.text(key, held.node(), held.file());
    if (text != null && text.isBlank() && key.need == Key.Need.REQUIRED) {
      missing(key);
    }
    return text == null ? "" : text.strip();
  }

  /** 1 after a fault. */
  int whole(Key key) {
    Held held = find(key);
    if (held == null) {
      return takeDefault(key) ? Integer.parseInt(key.usual) : 1;
    }
    String text = written.text(key, held.node(), held.file());
    if (text == null) {
      return 1;
    }
    String digits = text.strip();
    if (isWhole(digits)) {
      long value = Long.parseLong(digits);
      if (value >= key.low && value <= key.high) {
        return (int) value;
      }
    }
    border.fault(
        placeIn(held.node(), held.file()),
        Border.found(key.name, text),
        "must be a whole number, " + (long) key.low + " to " + (long) key.high,
        key.mend);
    return 1;
  }

  private static boolean isWhole(String text) {
    int from = text.startsWith("-") ? 1 : 0;
    if (text.length() == from || text.length() > 15) {
      return false;
    }
    for (int i = from; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  /** The first choice after a fault. */
  <E extends Enum<E>> E word(Key key, E[] choices) {
    E chosen = wordOrNull(key, choices);
    return chosen == null ? choices[0] : chosen;
  }

  /** Null after a fault, for those who judge other keys by the word. */
  <E extends Enum<E>> @Nullable E wordOrNull(Key key, E[] choices) {
    Held held = find(key);
    @Nullable String text;
    if (held == null) {
      text = takeDefault(key) ? key.usual : null;
    } else {
      text = written.text(key, held.node(), held.file());
    }
    if (text == null) {
      return null;
    }
    String word = text.strip().toLowerCase(Locale.ROOT);
    for (int i = 0; i < choices.length; i++) {
      if (key.words.get(i).equals(word)) {
        return choices[i];
      }
    }
    String nearest = Nearest.of(word, key.words);
    border.fault(
        place(key),
        Border.found(key.name, text),
        "must be one of: " + String.join(", ", key.words),
        nearest == null ? "" : "Nearest: \"" + nearest + "\".");
    return null;
  }

  boolean flag(Key key) {
    Held held = find(key);
    if (held == null) {
      takeDefault(key);
    }
    String text = held == null ? key.usual : written.text(key, held.node(), held.file());
    if (text == null) {
      return false;
    }
    switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> {
        return true;
      }
      case "no", "false" -> {
        return false;
      }
      default -> border.fault(place(key), Border.found(key.name, text), "must be yes or no", "");
    }
    return false;
  }

  /** A block below this key; null if it is left out. */
  @Nullable Block block(Key key) {
    Held held = find(key);
    if (held == null) {
      if (key.need == Key.Need.REQUIRED) {
        missing(key);
      }
      return null;
    }
    return new Block(shapeOf(key), held.node(), held.file(), path(key), border, null);
  }

  boolean isList(Key key) {
    return node(key) instanceof SequenceNode;
  }

  /** The items of a list; empty after a fault or if it is left out. */
  List<Node> list(Key key) {
    Held held = find(key);
    if (held == null) {
      if (key.need == Key.Need.REQUIRED) {
        missing(key);
      }
      return List.of();
    }
    if (held.node() instanceof SequenceNode list) {
      if (list.getValue().isEmpty() && key.need == Key.Need.REQUIRED) {
        border.fault(place(key), key.name + ": found an empty list", "must hold at least one", "");
      }
      return list.getValue();
    }
    border.fault(
        place(key),
        key.name + ": found " + kindOf(held.node()),
        "must be a list",
        "Begin each item with a dash: \"- \".");
    return List.of();
  }

  static Shape shapeOf(Key key) {
    if (key.shape == null) {
      throw new IllegalStateException(key.name);
    }
    return key.shape;
  }

  Border border() {
    return border;
  }
}
