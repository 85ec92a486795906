package greyspell.scenario;

import greyspell.calendar.Monthly;
import greyspell.sky.CloudTable;
import greyspell.sky.SkyChoices;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.Node;

/** The models of the sky. */
final class SkyBinder {
  private SkyBinder() {}

  static SkyChoices sky(Block block) {
    SkyChoices usual = SkyChoices.usual();
    SkyChoices.Cloud cloud = block.wordOrNull(Vocabulary.CLOUD, SkyChoices.Cloud.values());
    boolean isTable = cloud == SkyChoices.Cloud.TABLE;
    // beside a table the curve is not asked for, so that nothing is assumed of it
    double cloudDepth = isTable ? usual.cloudDepth() : block.measure(Vocabulary.CLOUD_DEPTH);
    double cloudExponent =
        isTable ? usual.cloudExponent() : block.measure(Vocabulary.CLOUD_EXPONENT);
    Monthly turbidity = block.monthly(Vocabulary.TURBIDITY);
    SkyChoices.ClearSky clearSky = block.word(Vocabulary.CLEAR_SKY, SkyChoices.ClearSky.values());
    CloudTable table = isTable ? table(block, clearSky, turbidity) : null;
    if (cloud == SkyChoices.Cloud.CLASSIC && block.has(Vocabulary.CLOUD_TABLE)) {
      block
          .border()
          .fault(
              block.place(Vocabulary.CLOUD_TABLE),
              "cloud_table beside cloud: classic",
              "a table is used with cloud: table",
              "Write cloud: table, or take the table out.");
    }
    try {
      return new SkyChoices(
          clearSky,
          cloudDepth,
          cloudExponent,
          table,
          block.word(Vocabulary.TILT_MODEL, SkyChoices.Tilt.values()),
          turbidity,
          block.measure(Vocabulary.SNOW_ALBEDO));
    } catch (IllegalArgumentException refused) {
      return block.border().refused(block.place(), refused, usual);
    }
  }

  private static CloudTable table(Block block, SkyChoices.ClearSky clearSky, Monthly turbidity) {
    if (!block.has(Vocabulary.CLOUD_TABLE)) {
      refuseOtherSky(block, clearSky, turbidity);
      block
          .border()
          .assume(
              block.path(Vocabulary.CLOUD_TABLE),
              "of a lowland station at 52 degrees north",
              "our own fit on ten measured years; greyspell weather calibrate makes one for your"
                  + " place");
      return CloudTable.lowland();
    }
    var rows = new ArrayList<CloudTable.Row>();
    List<Node> items = block.list(Vocabulary.CLOUD_TABLE);
    for (int i = 0; i < items.size(); i++) {
      String path = block.path(Vocabulary.CLOUD_TABLE) + "[" + i + "]";
      CloudTable.Row row =
          row(
              new Block(
                  Vocabulary.CLOUD_ROW,
                  items.get(i),
                  block.file(Vocabulary.CLOUD_TABLE),
                  path,
                  block.border(),
                  null));
      if (row != null) {
        rows.add(row);
      }
    }
    try {
      return new CloudTable(rows);
    } catch (IllegalArgumentException refused) {
      return block
          .border()
          .refused(block.place(Vocabulary.CLOUD_TABLE), refused, CloudTable.lowland());
    }
  }

  /** The table that comes with the program holds for one clear sky alone. */
  private static void refuseOtherSky(Block block, SkyChoices.ClearSky clearSky, Monthly turbidity) {
    SkyChoices usual = SkyChoices.usual();
    boolean isOther = clearSky != usual.clearSky();
    for (int month = 1; month <= 12; month++) {
      isOther |= turbidity.in(month) != usual.linkeTurbidity().in(month);
    }
    if (isOther) {
      block
          .border()
          .fault(
              block.place(Vocabulary.CLOUD),
              "cloud: table with another clear sky",
              "the table that comes with the program was fitted with clear_sky: ineichen_perez and"
                  + " turbidity: 3",
              "Leave these two out, or state a cloud_table of your own.");
    }
  }

  private static CloudTable.@Nullable Row row(Block block) {
    CloudTable.Season season = block.word(Vocabulary.CLOUD_SEASON, CloudTable.Season.values());
    double sunDeg = block.measure(Vocabulary.CLOUD_SUN);
    List<WrittenValues.PointXY> points = block.curve(Vocabulary.CLOUD_SHARES);
    if (points == null || points.isEmpty() || !(sunDeg >= 0.0)) {
      return null;
    }
    for (WrittenValues.PointXY point : points) {
      if (!(point.x >= 0.0 && point.x <= CloudTable.OKTAS)) {
        block
            .border()
            .fault(
                block.place(Vocabulary.CLOUD_SHARES),
                "shares: found a point outside 0 to 8 eighths",
                "must be 0 to 8 eighths of the sky",
                "Nine eighths, sky invisible, count as eight.");
        return null;
      }
    }
    var shares = new ArrayList<Double>();
    for (int okta = 0; okta <= CloudTable.OKTAS; okta++) {
      shares.add(at(points, okta));
    }
    try {
      return new CloudTable.Row(season, sunDeg, shares);
    } catch (IllegalArgumentException refused) {
      var clear = Collections.nCopies(CloudTable.OKTAS + 1, 1.0);
      return block.border().refused(block.place(), refused, new CloudTable.Row(season, 0.0, clear));
    }
  }

  private static double at(List<WrittenValues.PointXY> points, double x) {
    WrittenValues.PointXY before = points.get(0);
    for (WrittenValues.PointXY point : points) {
      if (point.x >= x) {
        double way = point.x > before.x ? (x - before.x) / (point.x - before.x) : 1.0;
        return x <= before.x ? before.y : before.y + way * (point.y - before.y);
      }
      before = point;
    }
    return before.y;
  }
}
