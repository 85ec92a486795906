package greyspell.scenario;

import greyspell.calendar.Monthly;
import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * Values with their units as they are written: one, twelve, or the points of a curve. A fault is
 * noted and NaN or null handed back.
 */
final class WrittenValues {
  /** A point of a curve; in inside units of the key's two dimensions. */
  static final class PointXY {
    final double x;
    final double y;

    PointXY(double x, double y) {
      this.x = x;
      this.y = y;
    }
  }

  private final Border border;

  WrittenValues(Border border) {
    this.border = border;
  }

  /** Text of a single value; null after a fault. */
  @Nullable String text(Key key, Node any, String inFile) {
    if (any instanceof ScalarNode scalar && isPlainTag(scalar.getTag())) {
      return scalar.getValue();
    }
    border.fault(
        Block.placeIn(any, inFile),
        key.name
            + ": found "
            + (any instanceof ScalarNode ? "a tag with \"!\"" : Block.kindOf(any)),
        "must be a single value",
        "");
    return null;
  }

  private static boolean isPlainTag(Tag tag) {
    return tag.startsWith(Tag.PREFIX) && tag.getValue().indexOf(':', Tag.PREFIX.length()) < 0;
  }

  /**
   * In the inside unit of the key's first dimension; a value of its second dimension is multiplied
   * by the factor to get there.
   */
  double measure(Key key, Node any, String inFile, double factor) {
    String text = text(key, any, inFile);
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
          Block.placeIn(any, inFile),
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
        Block.placeIn(any, inFile), Border.found(key.name, text), rangeText(key, unit), key.mend);
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

  Monthly twelve(Key key, SequenceNode list, String inFile) {
    var values12 = new double[12];
    List<Node> items = list.getValue();
    if (items.size() != 12) {
      border.fault(
          Block.placeIn(list, inFile),
          key.name + ": found a list of " + items.size(),
          "must be one value or twelve, January first",
          "");
      return Monthly.constant(Double.NaN);
    }
    for (int i = 0; i < 12; i++) {
      values12[i] = measure(key, items.get(i), inFile, Double.NaN);
    }
    return Monthly.of(values12);
  }

  /** Points in order of x. A single y is one point at half of x. */
  List<PointXY> curve(Key key, Node any, String inFile) {
    var points = new ArrayList<PointXY>();
    if (any instanceof ScalarNode && key.dimensions.get(0) == Dimension.SHARE) {
      points.add(new PointXY(0.5, curveY(key, any, inFile)));
      return points;
    }
    if (!(any instanceof SequenceNode list) || list.getValue().isEmpty()) {
      refuseCurve(key, any, inFile);
      return points;
    }
    for (Node item : list.getValue()) {
      if (item instanceof SequenceNode pair && pair.getValue().size() == 2) {
        double x = curveX(key, pair.getValue().get(0), inFile);
        double y = curveY(key, pair.getValue().get(1), inFile);
        if (!points.isEmpty() && x <= points.get(points.size() - 1).x) {
          border.fault(
              Block.placeIn(item, inFile),
              key.name + ": found points out of order",
              "must rise from one point to the next",
              "Sort them by their first value, each once.");
        }
        points.add(new PointXY(x, y));
      } else {
        refuseCurve(key, item, inFile);
      }
    }
    return points;
  }

  private void refuseCurve(Key key, Node any, String inFile) {
    border.fault(
        Block.placeIn(any, inFile),
        key.name + ": found " + Block.kindOf(any),
        "must be a list of pairs",
        "Write for instance ["
            + "["
            + key.dimensions.get(0).example()
            + ", "
            + key.dimensions.get(1).example()
            + "], ...].");
  }

  private double curveX(Key key, Node any, String inFile) {
    String text = text(key, any, inFile);
    if (text == null) {
      return Double.NaN;
    }
    Quantity x = parse(key, text, key.dimensions.subList(0, 1), any, inFile, Double.NaN);
    if (x == null) {
      return Double.NaN;
    }
    if (x.dimension() == Dimension.SHARE && !(x.inside() >= 0.0 && x.inside() <= 1.5)) {
      border.fault(
          Block.placeIn(any, inFile), Border.found(key.name, text), "must be 0 to 150 %", "");
      return Double.NaN;
    }
    return x.inside();
  }

  private double curveY(Key key, Node any, String inFile) {
    String text = text(key, any, inFile);
    if (text == null) {
      return Double.NaN;
    }
    Quantity y = parse(key, text, key.dimensions.subList(1, 2), any, inFile, Double.NaN);
    if (y == null) {
      return Double.NaN;
    }
    if (!(y.inside() >= key.low && y.inside() <= key.high)) {
      border.fault(
          Block.placeIn(any, inFile),
          Border.found(key.name, text),
          rangeText(key, y.unit()),
          key.mend);
      return Double.NaN;
    }
    return y.inside();
  }
}
