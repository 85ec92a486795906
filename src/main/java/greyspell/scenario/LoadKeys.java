package greyspell.scenario;

import greyspell.load.LogClock;
import greyspell.load.LogExtension;
import greyspell.load.Priority;
import greyspell.quantity.Dimension;

/** Keys of loads that follow the weather, of logs, of ranges and of what happens at low charge. */
final class LoadKeys {
  private static final String OWN = "own choice, no source";

  private LoadKeys() {}

  /** Where a fridge stands. */
  enum RoomPlace {
    INDOORS,
    OUTDOORS
  }

  // ---- season -----------------------------------------------------------------------------------

  static final Key WHEN =
      Key.of(
              "when",
              Key.Kind.WHEN,
              "Days on which it is used at all: \"below 12 °C\" or \"above 25 °C\" (mean outdoor"
                  + " temperature of the day), \"days shorter than 10 h\" or \"days longer than 14"
                  + " h\".")
          .into("season");

  // ---- heating and cooling ----------------------------------------------------------------------

  static final Key COP =
      Key.curve(
              "cop",
              "Heat moved for each unit of electricity, by outdoor temperature; straight between"
                  + " the points.",
              Dimension.TEMPERATURE,
              Dimension.NUMBER)
          .within(0.2, 12)
          .usual("1", "a plain heater")
          .into("copPoints");
  static final Key HEAT_LOSS =
      Key.measure(
              "loss",
              "Heat that the house loses for each degree below the base.",
              Dimension.POWER_PER_KELVIN)
          .within(0, 5000)
          .required()
          .into("lossWPerK");
  static final Key HEATING_BASE =
      Key.measure(
              "base", "Outdoor temperature from which on no heat is needed.", Dimension.TEMPERATURE)
          .within(-30, 40)
          .usual("15 °C", "some degrees below the room, which sun and people give; " + OWN)
          .into("baseC");
  static final Shape HEATING =
      Shape.of(
          "heating",
          "A thermostat in the cold: its power is the most it draws, its duty is not used.",
          HEAT_LOSS,
          HEATING_BASE,
          COP);
  static final Key HEAT_GAIN =
      Key.measure(
              "gain",
              "Heat that comes into the house for each degree above the base.",
              Dimension.POWER_PER_KELVIN)
          .within(0, 5000)
          .required()
          .into("lossWPerK");
  static final Key COOLING_BASE =
      Key.measure(
              "base",
              "Outdoor temperature up to which no cooling is needed.",
              Dimension.TEMPERATURE)
          .within(-30, 40)
          .usual("22 °C", OWN)
          .into("baseC");
  static final Shape COOLING =
      Shape.of(
          "cooling",
          "A thermostat in the heat: its power is the most it draws, its duty is not used.",
          HEAT_GAIN,
          COOLING_BASE,
          COP);
  static final Key WITH_HEATING =
      Key.block("heating", "It follows the cold, hour by hour.", HEATING).into("weatherDraw");
  static final Key WITH_COOLING =
      Key.block("cooling", "It follows the heat, hour by hour.", COOLING).into("weatherDraw");

  // ---- fridge and freezer -----------------------------------------------------------------------

  static final Key ROOM_TEMPERATURE =
      Key.measure("temperature", "Of the room, fixed.", Dimension.TEMPERATURE)
          .within(-40, 60)
          .into("roomC");
  static final Key ROOM_PLACE =
      Key.word(
              "place",
              "Indoors at a fixed temperature, or following the day's mean outdoor temperature.",
              RoomPlace.values())
          .usual("indoors", "");
  static final Key ROOM_NEVER_BELOW =
      Key.measure(
              "never_below",
              "The room stays at least so warm when it follows.",
              Dimension.TEMPERATURE)
          .within(-60, 60)
          .usual("-60 °C", "")
          .into("leastC");
  static final Key ROOM_NEVER_ABOVE =
      Key.measure(
              "never_above",
              "The room stays at most so warm when it follows.",
              Dimension.TEMPERATURE)
          .within(-60, 60)
          .usual("60 °C", "")
          .into("mostC");
  static final Key ROOM_CHANGE =
      Key.measure(
              "change",
              "Change of its energy for each degree of the room.",
              Dimension.SHARE_PER_KELVIN)
          .within(0, 0.2)
          .usual("4 %/K", "from memory, no copy opened; makers differ")
          .into("changePerK");
  static final Key ROOM_STATED_AT =
      Key.measure(
              "stated_at", "Room temperature for which power and duty hold.", Dimension.TEMPERATURE)
          .within(0, 45)
          .usual("20 °C", "an ordinary kitchen; " + OWN)
          .into("statedAtC");
  static final Shape ROOM =
      Shape.shortened(
          "room",
          "Where a fridge or freezer stands: the warmer, the longer it runs.",
          ROOM_TEMPERATURE,
          ROOM_PLACE,
          ROOM_NEVER_BELOW,
          ROOM_NEVER_ABOVE,
          ROOM_CHANGE,
          ROOM_STATED_AT);
  static final Key IN_ROOM =
      Key.block("room", "Of a fridge or freezer: what is around it.", ROOM).into("weatherDraw");

  // ---- water pump -------------------------------------------------------------------------------

  static final Key WATER_USE =
      Key.measure("daily", "Water of a day.", Dimension.VOLUME).within(0, 100_000).required();
  static final Key WATER_FLOW =
      Key.measure("flow", "What the pump delivers; or state the head.", Dimension.FLOW)
          .within(1, 100_000);
  static final Key WATER_HEAD =
      Key.measure(
              "head", "Height it lifts the water, pressure and friction in it.", Dimension.LENGTH)
          .within(0.1, 500);
  static final Key WATER_EFFICIENCY =
      Key.measure("efficiency", "Of pump and motor together, with a head.", Dimension.SHARE)
          .within(0.02, 0.95)
          .usual("30 %", "a small pump; common practice, no source");
  static final Shape WATER =
      Shape.of(
          "water",
          "A pump by the water of a day: its duty follows.",
          WATER_USE,
          WATER_FLOW,
          WATER_HEAD,
          WATER_EFFICIENCY);
  static final Key WITH_WATER = Key.block("water", "It pumps so much a day.", WATER);

  // ---- range ------------------------------------------------------------------------------------

  static final Key AT_LEAST =
      Key.measure(
              "at_least", "Low end of its energy, as a share of what is stated.", Dimension.SHARE)
          .within(0, 1)
          .usual("by evidence: measured 95 %, label 85 %, guess 60 %", "")
          .into("statedRange.lowFactor");
  static final Key AT_MOST =
      Key.measure(
              "at_most", "High end of its energy, as a share of what is stated.", Dimension.SHARE)
          .within(1, 10)
          .usual("by evidence: measured 105 %, label 115 %, guess 140 %", "")
          .into("statedRange.highFactor");

  // ---- log --------------------------------------------------------------------------------------

  static final Key LOG_PRIORITY =
      Key.word("priority", "Class of all that was measured.", Priority.values())
          .usual("must_run", "")
          .into("priority");
  static final Key LOG_CLOCK =
      Key.word("clock", "Which clock wrote its local times.", LogClock.values())
          .usual("standard", "")
          .into("clock");
  static final Key LOG_ZONE =
      Key.of(
              "zone",
              Key.Kind.TEXT,
              "Daylight saving of a local clock: a time zone such as Europe/Berlin, or the rule eu or"
                  + " us.")
          .into("zone");
  static final Key LOG_EXTENSION =
      Key.word(
              "other_days",
              "How days outside the log are made: from its nearest day, or by a fit of weekday,"
                  + " season and temperature.",
              LogExtension.values())
          .usual("nearest_day", "")
          .into("extension");
  static final Key LOG_SCATTER =
      Key.of(
              "scatter",
              Key.Kind.FLAG,
              "Fitted days get the scatter of the measured ones, by the seed.")
          .usual("no", "")
          .into("isScattered");

  // ---- all loads --------------------------------------------------------------------------------

  static final Key HOURLY_VARIATION =
      Key.measure(
              "hourly_variation",
              "Standard deviation of the appliances' variation from hour to hour.",
              Dimension.SHARE)
          .within(0, 1)
          .usual("0 %", "")
          .into("hourlyVariationFraction");
  static final Key GROWTH =
      Key.measure("growth", "Added to all loads, for what the house will use.", Dimension.SHARE)
          .within(-0.5, 5)
          .usual("0 %", "")
          .into("growthFraction");
  static final Key SHED_SHOULD_RUN =
      Key.measure(
              "should_run_below",
              "Charge below which what should run is switched off, of the usable bank; charge that cold has locked counts.",
              Dimension.SHARE)
          .within(0, 1)
          .into("policy.shedShouldRunBelowShare");
  static final Key SHED_CAN_WAIT =
      Key.measure(
              "can_wait_below",
              "Charge below which what can wait is switched off, of the usable bank; charge that cold has locked counts.",
              Dimension.SHARE)
          .within(0, 1)
          .into("policy.shedCanWaitBelowShare");
  static final Key WAIT_ABOVE =
      Key.measure(
              "can_wait_above",
              "What can wait is moved to hours with more charge than this.",
              Dimension.SHARE)
          .within(0, 1)
          .into("policy.canWaitAboveShare");
  static final Key LONGEST_WAIT =
      Key.whole("longest_wait_days", "What waits longer is given up.")
          .within(0, 60)
          .usual("3", "with can_wait_above; " + OWN)
          .into("policy.longestWaitDays");
  static final Shape POLICY =
      Shape.of(
          "when_low",
          "What the house does when the charge is low.",
          SHED_SHOULD_RUN,
          SHED_CAN_WAIT,
          WAIT_ABOVE,
          LONGEST_WAIT);
  static final Key WHEN_LOW =
      Key.block("when_low", "What is switched off or moved when the charge is low.", POLICY)
          .into("policy");
}
