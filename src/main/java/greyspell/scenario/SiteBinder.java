package greyspell.scenario;

import greyspell.calendar.Monthly;
import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.quantity.Unit;
import greyspell.sky.Horizon;
import greyspell.sky.Site;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** The place of the house and its horizon. */
final class SiteBinder {
  private static final double WIDE_GAP_DEG = 90.0;
  private static final List<Dimension> ANGLE_OR_BARE = List.of(Dimension.ANGLE, Dimension.NUMBER);
  private static final double DEG_PER_H = 15.0;

  /** Stands in for a point that could not be read, and is left out. */
  private static final Horizon.Point NO_POINT = new Horizon.Point(0.0, 0.0);

  private SiteBinder() {}

  static Site site(String home, Block block) {
    double longitudeDeg = block.measure(Vocabulary.LONGITUDE);
    double latitudeDeg = block.measure(Vocabulary.LATITUDE);
    double elevationM = block.measure(Vocabulary.ELEVATION);
    double utcOffsetH = utcOffsetH(block, longitudeDeg);
    Monthly albedo = block.monthly(Vocabulary.ALBEDO);
    Horizon horizon = horizon(block);
    Double recordLowC = block.optional(Vocabulary.RECORD_LOW);
    Double recordHighC = block.optional(Vocabulary.RECORD_HIGH);
    if (recordLowC != null && recordHighC != null && recordLowC >= recordHighC) {
      block
          .border()
          .fault(
              block.place(Vocabulary.RECORD_LOW),
              "record_low above record_high",
              "the coldest must lie below the hottest",
              "Are the two swapped?");
    }
    try {
      return new Site(
          home,
          latitudeDeg,
          longitudeDeg,
          elevationM,
          utcOffsetH,
          albedo,
          horizon,
          recordLowC,
          recordHighC);
    } catch (IllegalArgumentException refused) {
      return block
          .border()
          .refused(
              block.place(),
              refused,
              // on the right half of the earth, so that months of the library move as they should
              new Site(
                  home,
                  latitudeDeg < 0.0 ? -1.0 : 1.0,
                  0.0,
                  0.0,
                  0.0,
                  Monthly.constant(0.2),
                  Horizon.OPEN,
                  null,
                  null));
    }
  }

  private static double utcOffsetH(Block block, double longitudeDeg) {
    Key key = Vocabulary.UTC_OFFSET;
    if (block.has(key)) {
      return block.measure(key);
    }
    double offsetH = (double) Math.round(longitudeDeg / DEG_PER_H);
    block.border().assume(block.path(key), Unit.HOUR.text(offsetH), key.why);
    return offsetH;
  }

  /** Degrees from north; NaN after a fault. */
  static double azimuth(Block block, Key key) {
    Node node = block.node(key);
    if (node == null) {
      block.missing(key);
      return Double.NaN;
    }
    return azimuth(block, key, node, List.of(Dimension.ANGLE));
  }

  private static double azimuth(Block block, Key key, Node node, List<Dimension> dimensions) {
    String text = block.scalar(key, node, block.file(key));
    if (text == null) {
      return Double.NaN;
    }
    double word = Compass.azimuthDeg(text.strip());
    if (!Double.isNaN(word)) {
      return word;
    }
    Key plain = ArrayKeys.AZIMUTH;
    try {
      double deg = Quantity.parse(text, dimensions).inside();
      if (deg >= plain.low && deg <= plain.high) {
        return deg;
      }
      block
          .border()
          .fault(
              Block.placeIn(node, block.file(key)),
              Border.found(key.name, text),
              Block.rangeText(plain, Unit.DEGREE),
              plain.mend);
    } catch (Quantity.NotUnderstood e) {
      block
          .border()
          .fault(
              Block.placeIn(node, block.file(key)),
              Border.found(key.name, text),
              "must be an angle such as 180 deg, or a compass word: "
                  + String.join(", ", Compass.WORDS),
              e.mend());
    }
    return Double.NaN;
  }

  private static Horizon horizon(Block block) {
    Key key = Vocabulary.HORIZON;
    Node node = block.node(key);
    if (node == null || (node instanceof ScalarNode s && s.getValue().equals(key.usual))) {
      if (node == null) {
        block.border().assume(block.path(key), key.usual, key.why);
      }
      return Horizon.OPEN;
    }
    var points = new ArrayList<Horizon.Point>();
    if (node instanceof MappingNode mapping) {
      for (NodeTuple tuple : mapping.getValue()) {
        points.add(point(block, tuple.getKeyNode(), tuple.getValueNode()));
      }
    } else if (node instanceof SequenceNode list) {
      for (Node item : list.getValue()) {
        if (item instanceof SequenceNode pair && pair.getValue().size() == 2) {
          points.add(point(block, pair.getValue().get(0), pair.getValue().get(1)));
        } else {
          refuse(block, key, item);
        }
      }
    } else {
      refuse(block, key, node);
    }
    points.removeIf(p -> p == NO_POINT);
    sort(points);
    refuseTwice(block, key, points);
    if (!points.isEmpty() && widestGapDeg(points) > WIDE_GAP_DEG) {
      block
          .border()
          .assume(
              block.path(key),
              "straight lines around the compass between the points stated, also behind the house",
              "no height is stated over more than a quarter of the compass");
    }
    try {
      return new Horizon(points);
    } catch (IllegalArgumentException refused) {
      return block.border().refused(block.place(key), refused, Horizon.OPEN);
    }
  }

  /** The points are in compass order. */
  private static double widestGapDeg(List<Horizon.Point> points) {
    double widestDeg =
        points.get(0).azimuthDeg() + 360.0 - points.get(points.size() - 1).azimuthDeg();
    for (int i = 1; i < points.size(); i++) {
      widestDeg = Math.max(widestDeg, points.get(i).azimuthDeg() - points.get(i - 1).azimuthDeg());
    }
    return widestDeg;
  }

  /** By azimuth; a handful of points, and no lambda while the program starts. */
  private static void sort(List<Horizon.Point> points) {
    for (int i = 1; i < points.size(); i++) {
      Horizon.Point moved = points.get(i);
      int j = i;
      for (; j > 0 && points.get(j - 1).azimuthDeg() > moved.azimuthDeg(); j--) {
        points.set(j, points.get(j - 1));
      }
      points.set(j, moved);
    }
  }

  private static Horizon.Point point(Block block, Node azimuth, Node height) {
    Key key = Vocabulary.HORIZON;
    try {
      return new Horizon.Point(
          azimuth(block, key, azimuth, ANGLE_OR_BARE) % 360.0, height(block, key, height));
    } catch (IllegalArgumentException refused) {
      return block.border().refused(block.place(key), refused, NO_POINT);
    }
  }

  private static double height(Block block, Key key, Node node) {
    String text = block.scalar(key, node, block.file(key));
    if (text == null) {
      return Double.NaN;
    }
    String expected = "must be 0 to 85 deg above the level";
    String mend = "";
    try {
      double deg = Quantity.parse(text, ANGLE_OR_BARE).inside();
      if (deg >= key.low && deg <= key.high) {
        return deg;
      }
    } catch (Quantity.NotUnderstood e) {
      expected = e.expected();
      mend = e.mend();
    }
    block
        .border()
        .fault(Block.placeIn(node, block.file(key)), Border.found(key.name, text), expected, mend);
    return Double.NaN;
  }

  private static void refuseTwice(Block block, Key key, List<Horizon.Point> points) {
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).azimuthDeg() == points.get(i - 1).azimuthDeg()) {
        block
            .border()
            .fault(
                block.place(key),
                key.name + ": found " + Unit.DEGREE.text(points.get(i).azimuthDeg()) + " twice",
                "each direction once",
                "0 deg and 360 deg are the same direction.");
        return;
      }
    }
  }

  private static void refuse(Block block, Key key, @Nullable Node node) {
    block
        .border()
        .fault(
            node == null ? block.place(key) : Block.placeIn(node, block.file(key)),
            key.name + ": found " + (node == null ? "nothing" : Block.kindOf(node)),
            "must be directions with heights",
            "Write {SE: 8 deg, S: 4 deg, SW: 12 deg} or [[120, 8], [180, 4], [240, 12]].");
  }
}
