package greyspell.scenario;

import greyspell.calendar.Monthly;
import greyspell.quantity.Dimension;
import greyspell.quantity.Nearest;
import greyspell.quantity.Place;
import greyspell.quantity.Quantity;
import greyspell.quantity.Unit;
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

  /** A point of a curve; in inside units of the key's two dimensions. */
  static final class PointXY {
    final double x;
    final double y;

    PointXY(double x, double y) {
      this.x = x;
      this.y = y;
    }
  }

  private final Shape shape;
  private final Node node;
  private final String file;
  private final String path;
  private final Border border;
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
        "must hold " + expectation(key),
        key.kind == Key.Kind.MEASURE || key.kind == Key.Kind.MONTHLY
            ? "Write for instance \"" + key.name + ": " + example(key) + "\"."
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

  private static String example(Key key) {
    return key.dimensions.get(0).example();
  }

  private static String expectation(Key key) {
    String meaning = key.meaning.endsWith(".") ? key.meaning : key.meaning + ".";
    String what =
        switch (key.kind) {
          case MEASURE, MONTHLY -> key.dimensions.get(0).words();
          case WHOLE -> "a whole number";
          case WORD -> "one of its words";
          case BLOCK ->
              key.shape != null && key.shape.isEquipment()
                  ? "a name from the library, or a block of keys"
                  : "a block of keys";
          case LIST -> "a list";
          case AZIMUTH -> "an angle or a compass word";
          default -> "a value";
        };
    return what
        + ": "
        + Character.toLowerCase(meaning.charAt(0))
        + meaning.substring(1, meaning.length() - 1);
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
    return scalarMeasure(key, held.node(), held.file(), factor);
  }

  /** Null if it is left out. */
  @Nullable Double optional(Key key) {
    Held held = find(key);
    return held == null ? null : scalarMeasure(key, held.node(), held.file(), Double.NaN);
  }

  private static double ofText(Key key, String text) {
    return Quantity.parse(text, key.dimensions).inside();
  }

  /** A value that stands somewhere below this key, as in a list. */
  double scalarMeasure(Key key, Node any, String inFile, double factor) {
    String text = scalar(key, any, inFile);
    if (text == null) {
      return Double.NaN;
    }
    Quantity quantity = parse(key, text, key.dimensions, any, inFile, factor);
    return quantity == null ? Double.NaN : ranged(key, quantity, text, any, inFile, factor);
  }

  private @Nullable Quantity parse(
      Key key, String text, List<Dimension> dimensions, Node any, String inFile, double factor) {
    try {
      return Quantity.parse(text, dimensions);
    } catch (Quantity.NotUnderstood e) {
      String guess = key == ArrayKeys.VOLTAGE_COEFFICIENT ? UnitGuess.voltage(text, factor) : "";
      border.fault(
          placeIn(any, inFile),
          Border.found(key.name, text),
          e.expected(),
          guess.isEmpty() ? e.mend() : guess);
      return null;
    }
  }

  private double ranged(
      Key key, Quantity quantity, String text, Node any, String inFile, double factor) {
    boolean isFirst = quantity.dimension() == key.dimensions.get(0);
    double value = quantity.inside();
    Unit unit = quantity.unit();
    if (!isFirst && !Double.isNaN(factor)) {
      value *= factor;
      unit = boundUnit(key.dimensions.get(0));
    } else if (!isFirst && needsFactor(key)) {
      return Double.NaN; // the voltage that it depends on is at fault itself
    }
    if (!key.isRanged() || (value >= key.low && value <= key.high)) {
      return value;
    }
    border.fault(
        placeIn(any, inFile), Border.found(key.name, text), rangeText(key, unit), key.mend);
    return Double.NaN;
  }

  private static Unit boundUnit(Dimension dimension) {
    return switch (dimension) {
      case SHARE_PER_KELVIN -> Unit.PERCENT_PER_KELVIN;
      case SHARE -> Unit.PERCENT;
      default -> dimension.insideUnit();
    };
  }

  /** Ah for Wh and the like; plain numbers and percents stand for each other. */
  private static boolean needsFactor(Key key) {
    return !key.dimensions.contains(Dimension.NUMBER);
  }

  static String rangeText(Key key, Unit unit) {
    String low = unit.text(key.low);
    String high = unit.text(key.high);
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    String bare = low.endsWith(symbol) ? low.substring(0, low.length() - symbol.length()) : low;
    return "must be " + bare + " to " + high + (key.sense.isEmpty() ? "" : " " + key.sense);
  }

  Monthly monthly(Key key) {
    Held held = find(key);
    if (held == null) {
      return Monthly.constant(takeDefault(key) ? ofText(key, key.usual) : Double.NaN);
    }
    if (held.node() instanceof SequenceNode list) {
      return twelve(key, list, held.file());
    }
    return Monthly.constant(scalarMeasure(key, held.node(), held.file(), Double.NaN));
  }

  private Monthly twelve(Key key, SequenceNode list, String inFile) {
    var values12 = new double[12];
    List<Node> items = list.getValue();
    if (items.size() != 12) {
      border.fault(
          placeIn(list, inFile),
          key.name + ": found a list of " + items.size(),
          "must be one value or twelve, January first",
          "");
      return Monthly.constant(Double.NaN);
    }
    for (int i = 0; i < 12; i++) {
      values12[i] = scalarMeasure(key, items.get(i), inFile, Double.NaN);
    }
    return Monthly.of(values12);
  }

  /** Points in order of x; null if the key is left out. A single y is one point at half of x. */
  @Nullable List<PointXY> curve(Key key) {
    Held held = find(key);
    if (held == null) {
      if (key.need == Key.Need.REQUIRED) {
        missing(key);
      }
      return null;
    }
    var points = new ArrayList<PointXY>();
    if (held.node() instanceof ScalarNode && key.dimensions.get(0) == Dimension.SHARE) {
      points.add(new PointXY(0.5, curveY(key, held.node(), held.file())));
      return points;
    }
    if (!(held.node() instanceof SequenceNode list) || list.getValue().isEmpty()) {
      refuseCurve(key, held.node(), held.file());
      return points;
    }
    for (Node item : list.getValue()) {
      if (item instanceof SequenceNode pair && pair.getValue().size() == 2) {
        double x = curveX(key, pair.getValue().get(0), held.file());
        double y = curveY(key, pair.getValue().get(1), held.file());
        if (!points.isEmpty() && x <= points.get(points.size() - 1).x) {
          border.fault(
              placeIn(item, held.file()),
              key.name + ": found points out of order",
              "must rise from one point to the next",
              "Sort them by their first value, each once.");
        }
        points.add(new PointXY(x, y));
      } else {
        refuseCurve(key, item, held.file());
      }
    }
    return points;
  }

  private void refuseCurve(Key key, Node any, String inFile) {
    border.fault(
        placeIn(any, inFile),
        key.name + ": found " + kindOf(any),
        "must be a list of pairs",
        "Write for instance ["
            + "["
            + key.dimensions.get(0).example()
            + ", "
            + key.dimensions.get(1).example()
            + "], ...].");
  }

  private double curveX(Key key, Node any, String inFile) {
    String text = scalar(key, any, inFile);
    if (text == null) {
      return Double.NaN;
    }
    Quantity x = parse(key, text, key.dimensions.subList(0, 1), any, inFile, Double.NaN);
    if (x == null) {
      return Double.NaN;
    }
    if (x.dimension() == Dimension.SHARE && !(x.inside() >= 0.0 && x.inside() <= 1.5)) {
      border.fault(placeIn(any, inFile), Border.found(key.name, text), "must be 0 to 150 %", "");
      return Double.NaN;
    }
    return x.inside();
  }

  private double curveY(Key key, Node any, String inFile) {
    String text = scalar(key, any, inFile);
    if (text == null) {
      return Double.NaN;
    }
    Quantity y = parse(key, text, key.dimensions.subList(1, 2), any, inFile, Double.NaN);
    if (y == null) {
      return Double.NaN;
    }
    if (!(y.inside() >= key.low && y.inside() <= key.high)) {
      border.fault(
          placeIn(any, inFile), Border.found(key.name, text), rangeText(key, y.unit()), key.mend);
      return Double.NaN;
    }
    return y.inside();
  }

  // ---- other values -----------------------------------------------------------------------------

  /** Text of a single value; null after a fault. */
  @Nullable String scalar(Key key, Node any, String inFile) {
    if (any instanceof ScalarNode scalar && isPlainTag(scalar.getTag())) {
      return scalar.getValue();
    }
    border.fault(
        placeIn(any, inFile),
        key.name + ": found " + (any instanceof ScalarNode ? "a tag with \"!\"" : kindOf(any)),
        "must be a single value",
        "");
    return null;
  }

  private static boolean isPlainTag(Tag tag) {
    return tag.startsWith(Tag.PREFIX) && tag.getValue().indexOf(':', Tag.PREFIX.length()) < 0;
  }

  String text(Key key) {
    Held held = find(key);
    if (held == null) {
      takeDefault(key);
      return key.usual;
    }
    String text = scalar(key, held.node(), held.file());
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
    String text = scalar(key, held.node(), held.file());
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
    Held held = find(key);
    String text;
    if (held == null) {
      text = takeDefault(key) ? key.usual : key.words.get(0);
    } else {
      text = scalar(key, held.node(), held.file());
      if (text == null) {
        return choices[0];
      }
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
    return choices[0];
  }

  boolean flag(Key key) {
    Held held = find(key);
    if (held == null) {
      takeDefault(key);
    }
    String text = held == null ? key.usual : scalar(key, held.node(), held.file());
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
