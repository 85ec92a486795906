package greyspell.scenario;

import greyspell.load.ApplianceSpec.HourSpan;
import greyspell.load.DegreeHours;
import greyspell.load.Evidence;
import greyspell.load.LoadRange;
import greyspell.load.RoomDraw;
import greyspell.load.Season;
import greyspell.load.WaterUse;
import greyspell.load.WeatherDraw;
import greyspell.quantity.Dimension;
import greyspell.quantity.Quantity;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What of an appliance hangs on the weather, the sun or the water, and how sure it is. */
final class LoadWeatherBinder {
  private final Block block;

  LoadWeatherBinder(Block appliance) {
    block = appliance;
  }

  // ---- season -----------------------------------------------------------------------------------

  @Nullable Season season() {
    Key key = LoadKeys.WHEN;
    if (!block.has(key)) {
      return null;
    }
    String text = block.text(key);
    Season season = null;
    try {
      season = ofWords(text.strip().split("\\s+", 2));
    } catch (Quantity.NotUnderstood | IllegalArgumentException e) {
      season = null; // told below in the key's own words
    }
    if (season == null && !text.isEmpty()) {
      block
          .border()
          .fault(
              block.place(key),
              Border.found(key.name, text),
              "must be \"below 12 °C\", \"above 25 °C\", \"days shorter than 10 h\" or \"days longer"
                  + " than 14 h\"",
              "For months write \"months: Nov-Feb\".");
    }
    return season;
  }

  private static @Nullable Season ofWords(String[] words) {
    if (words.length < 2) {
      return null;
    }
    String rest = words[1].strip();
    switch (words[0]) {
      case "below", "above" -> {
        double limitC = Quantity.parse(rest, List.of(Dimension.TEMPERATURE)).inside();
        return new Season.ByTemperature(words[0].equals("below"), limitC);
      }
      case "days" -> {
        boolean isShorter = rest.startsWith("shorter than ");
        if (!isShorter && !rest.startsWith("longer than ")) {
          return null;
        }
        String length = rest.substring(rest.indexOf(" than ") + 6).strip();
        return new Season.ByDayLength(
            isShorter, Quantity.parse(length, List.of(Dimension.DURATION)).inside());
      }
      default -> {
        return null;
      }
    }
  }

  // ---- weather ----------------------------------------------------------------------------------

  @Nullable WeatherDraw draw() {
    var given = new ArrayList<String>();
    for (Key key :
        List.of(
            LoadKeys.WITH_HEATING, LoadKeys.WITH_COOLING, LoadKeys.IN_ROOM, LoadKeys.WITH_WATER)) {
      if (block.has(key)) {
        given.add(key.name);
      }
    }
    if (given.size() > 1) {
      block
          .border()
          .fault(
              block.place(),
              String.join(" and ", given) + " in one appliance",
              "must be one of them",
              "Write two appliances.");
      return null;
    }
    Block heating = block.block(LoadKeys.WITH_HEATING);
    if (heating != null) {
      return degreeHours(heating, LoadKeys.HEAT_LOSS, LoadKeys.HEATING_BASE, true);
    }
    Block cooling = block.block(LoadKeys.WITH_COOLING);
    if (cooling != null) {
      return degreeHours(cooling, LoadKeys.HEAT_GAIN, LoadKeys.COOLING_BASE, false);
    }
    Block room = block.block(LoadKeys.IN_ROOM);
    return room == null ? null : room(room);
  }

  private @Nullable WeatherDraw degreeHours(Block inner, Key loss, Key baseKey, boolean isHeating) {
    double lossWPerK = inner.has(loss) ? inner.measure(loss) : Double.NaN;
    if (!inner.has(loss)) {
      inner.missing(loss);
    }
    double baseC = inner.measure(baseKey);
    List<Block.PointXY> points = inner.curve(LoadKeys.COP);
    if (points == null) {
      inner.border().assume(inner.path(LoadKeys.COP), LoadKeys.COP.usual, LoadKeys.COP.why);
    }
    try {
      var cops = new ArrayList<DegreeHours.CopAt>();
      for (Block.PointXY point : points == null ? List.<Block.PointXY>of() : points) {
        cops.add(new DegreeHours.CopAt(point.x, point.y));
      }
      return new DegreeHours(isHeating, lossWPerK, baseC, cops);
    } catch (IllegalArgumentException refused) {
      return inner
          .border()
          .refused(inner.place(), refused, new DegreeHours(true, 0.0, 0.0, List.of()));
    }
  }

  private static WeatherDraw room(Block inner) {
    boolean isOutdoors =
        inner.word(LoadKeys.ROOM_PLACE, LoadKeys.RoomPlace.values()) == LoadKeys.RoomPlace.OUTDOORS;
    Double roomC = inner.optional(LoadKeys.ROOM_TEMPERATURE);
    if (isOutdoors == (roomC != null)) {
      inner
          .border()
          .fault(
              inner.place(),
              isOutdoors ? "a temperature for a room outdoors" : "no temperature of the room",
              isOutdoors ? "follows the weather" : "must be stated, or \"place: outdoors\"",
              "Write for instance \"room: 18 °C\" or \"room: {place: outdoors, never_below: 5 °C}\".");
    }
    try {
      return new RoomDraw(
          roomC,
          inner.measure(LoadKeys.ROOM_NEVER_BELOW),
          inner.measure(LoadKeys.ROOM_NEVER_ABOVE),
          inner.measure(LoadKeys.ROOM_CHANGE),
          inner.measure(LoadKeys.ROOM_STATED_AT));
    } catch (IllegalArgumentException refused) {
      return inner
          .border()
          .refused(inner.place(), refused, new RoomDraw(20.0, 0.0, 0.0, 0.0, 20.0));
    }
  }

  // ---- duty -------------------------------------------------------------------------------------

  /** Share of its hours that it runs: stated, from its water, or all of them under a thermostat. */
  double dutyShare(double powerW, List<HourSpan> spans) {
    boolean isThermostat = block.has(LoadKeys.WITH_HEATING) || block.has(LoadKeys.WITH_COOLING);
    Block water = block.block(LoadKeys.WITH_WATER);
    if (!isThermostat && water == null) {
      return block.measure(ApplianceKeys.DUTY);
    }
    if (block.has(ApplianceKeys.DUTY)) {
      block
          .border()
          .assume(
              block.path(ApplianceKeys.DUTY),
              "not used",
              water == null ? "the thermostat decides" : "it follows from the water");
    }
    return water == null ? 1.0 : ofWater(water, powerW, LoadWords.lengthH(spans));
  }

  private static double ofWater(Block water, double powerW, double spanH) {
    double dailyL = water.has(LoadKeys.WATER_USE) ? water.measure(LoadKeys.WATER_USE) : Double.NaN;
    if (!water.has(LoadKeys.WATER_USE)) {
      water.missing(LoadKeys.WATER_USE);
    }
    Double flow = water.optional(LoadKeys.WATER_FLOW);
    Double headM = water.optional(LoadKeys.WATER_HEAD);
    if ((flow == null) == (headM == null)) {
      water
          .border()
          .fault(
              water.place(),
              flow == null ? "neither flow nor head" : "both flow and head",
              "must be one of them",
              "Write for instance \"water: {daily: 300 l, flow: 20 l/min}\".");
      return 0.0;
    }
    double efficiency = headM == null ? 1.0 : water.measure(LoadKeys.WATER_EFFICIENCY);
    try {
      double share = new WaterUse(dailyL, flow, headM, efficiency).runtimeH(powerW) / spanH;
      if (share > 1.0) {
        water
            .border()
            .fault(
                water.place(),
                "water for " + Show.hours(share * spanH) + " of pumping",
                "must fit into the pump's " + Show.hours(spanH) + " a day",
                "Is the flow or the water mistyped? Else give it longer hours.");
        return 0.0;
      }
      return share;
    } catch (IllegalArgumentException refused) {
      return water.border().refused(water.place(), refused, 0.0);
    }
  }

  // ---- range ------------------------------------------------------------------------------------

  /** Null where the evidence decides. */
  @Nullable LoadRange range(Evidence evidence) {
    Double atLeast = block.optional(LoadKeys.AT_LEAST);
    Double atMost = block.optional(LoadKeys.AT_MOST);
    if (atLeast == null && atMost == null) {
      return null;
    }
    LoadRange usual = LoadRange.of(evidence);
    try {
      return new LoadRange(
          atLeast == null ? usual.lowFactor() : atLeast,
          atMost == null ? usual.highFactor() : atMost);
    } catch (IllegalArgumentException refused) {
      return block.border().refused(block.place(), refused, usual);
    }
  }
}
