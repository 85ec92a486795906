package greyspell.scenario;

import greyspell.array.ControllerKind;
import greyspell.array.ModuleChoices;
import greyspell.array.SnowRule;
import greyspell.quantity.Dimension;

/**
 * Keys of modules, planes of them, and charge controllers. The part of {@link Vocabulary} about
 * them.
 */
final class ArrayKeys {
  private ArrayKeys() {}

  static final Key FROM = CommonKeys.from();
  static final Key NOTE = CommonKeys.note();
  static final Key MODULE_NAME = CommonKeys.name("module");
  static final Key RATED_POWER =
      Key.measure("rated_power", "Power at test conditions.", Dimension.POWER)
          .within(1, 2000)
          .required()
          .into("ratedPowerW");
  static final Key OPEN_CIRCUIT_VOLTAGE =
      Key.measure("open_circuit_voltage", "Voltage with nothing connected.", Dimension.VOLTAGE)
          .within(1, 400)
          .required()
          .into("openCircuitV");
  static final Key SHORT_CIRCUIT_CURRENT =
      Key.measure("short_circuit_current", "Current with the leads joined.", Dimension.CURRENT)
          .within(0.05, 50)
          .required()
          .into("shortCircuitA");
  static final Key MAX_POWER_VOLTAGE =
      Key.measure("max_power_voltage", "Voltage at rated power.", Dimension.VOLTAGE)
          .within(1, 400)
          .required()
          .into("maxPowerV");
  static final Key MAX_POWER_CURRENT =
      Key.measure("max_power_current", "Current at rated power.", Dimension.CURRENT)
          .within(0.05, 50)
          .required()
          .into("maxPowerA");
  static final Key POWER_COEFFICIENT =
      Key.measure(
              "power_coefficient",
              "Change of power for each degree of cell temperature.",
              Dimension.SHARE_PER_KELVIN,
              Dimension.POWER_PER_KELVIN)
          .within(-0.01, 0.0)
          .mend("Power falls with heat: write it with a minus sign, such as -0.35 %/K.")
          .usual("-0.38 %/K", CommonKeys.SILICON)
          .into("powerPerK");
  static final Key VOLTAGE_COEFFICIENT =
      Key.measure(
              "voltage_coefficient",
              "Change of open-circuit voltage for each degree of cell temperature.",
              Dimension.SHARE_PER_KELVIN,
              Dimension.VOLTAGE_PER_KELVIN)
          .within(-0.01, 0.0)
          .mend("Voltage falls with heat: write it with a minus sign, such as -0.29 %/K.")
          .usual("-0.29 %/K", CommonKeys.SILICON)
          .into("openCircuitPerK");
  static final Key CURRENT_COEFFICIENT =
      Key.measure(
              "current_coefficient",
              "Change of short-circuit current for each degree of cell temperature.",
              Dimension.SHARE_PER_KELVIN,
              Dimension.CURRENT_PER_KELVIN)
          .within(-0.002, 0.005)
          .usual("0.05 %/K", CommonKeys.SILICON)
          .into("shortCircuitPerK");
  static final Key NOMINAL_CELL_TEMPERATURE =
      Key.measure(
              "nominal_cell_temperature",
              "Cell temperature at 800 W/m2, 20 °C air, 1 m/s wind.",
              Dimension.TEMPERATURE)
          .within(30, 70)
          .usual("45 °C", CommonKeys.SILICON)
          .into("nominalCellC");
  static final Key CELLS_IN_SERIES =
      Key.whole(
              "cells_in_series",
              "Cells in one series path; of a module with half-cut cells half of all.")
          .within(1, 400)
          .usual(
              "by the open-circuit voltage",
              "nearest usual count at 0.68 V a cell; " + CommonKeys.PRACTICE)
          .into("cellsInSeries");
  static final Key MAX_SYSTEM_VOLTAGE =
      Key.measure("max_system_voltage", "Highest voltage of a string.", Dimension.VOLTAGE)
          .within(10, 3000)
          .into("maxSystemV");
  static final Key AREA =
      Key.measure("area", "Outer area with the frame.", Dimension.AREA)
          .within(0.01, 10)
          .into("areaM2");
  static final Shape MODULE =
      Shape.equipment(
          "module",
          "modules.yaml",
          "A panel's data sheet at standard test conditions (1000 W/m2, 25 °C cell).",
          FROM,
          MODULE_NAME,
          NOTE,
          RATED_POWER,
          OPEN_CIRCUIT_VOLTAGE,
          SHORT_CIRCUIT_CURRENT,
          MAX_POWER_VOLTAGE,
          MAX_POWER_CURRENT,
          POWER_COEFFICIENT,
          VOLTAGE_COEFFICIENT,
          CURRENT_COEFFICIENT,
          NOMINAL_CELL_TEMPERATURE,
          CELLS_IN_SERIES,
          MAX_SYSTEM_VOLTAGE,
          AREA);

  // ---- array ----------------------------------------------------------------------------------

  static final Key ARRAY_NAME = CommonKeys.name("panels");
  static final Key TILT =
      Key.measure("tilt", "From horizontal: 0 deg lies flat.", Dimension.ANGLE)
          .within(0, 90)
          .sense("from horizontal")
          .mend("For panels on a wall write 90 deg.")
          .required()
          .into("tiltDeg");
  static final Key AZIMUTH =
      Key.of(
              "azimuth",
              Key.Kind.AZIMUTH,
              "Where the panels face: clockwise from true north, or a compass word such as SSE.")
          .within(0, 360)
          .mend("Clockwise from true north: east 90 deg, south 180 deg, west 270 deg.")
          .required()
          .into("azimuthDeg");
  static final Key ARRAY_MODULE =
      Key.block("module", "The panel.", MODULE).required().into("module");
  static final Key IN_SERIES =
      Key.whole("in_series", "Modules in one string.").within(1, 100).required().into("inSeries");
  static final Key IN_PARALLEL =
      Key.whole("in_parallel", "Strings side by side.")
          .within(1, 1000)
          .usual("1", "one string")
          .into("inParallel");
  static final Key SOILING =
      Key.monthly("soiling", "Light lost to dirt.", Dimension.SHARE)
          .within(0, 1)
          .usual("2 %", "light dust that rain clears; " + CommonKeys.PRACTICE)
          .into("soilingFraction");
  static final Key SHADE =
      Key.monthly(
              "shade",
              "Light lost to near objects that the horizon does not hold.",
              Dimension.SHARE)
          .within(0, 1)
          .usual("0 %", "none stated")
          .into("shadeFraction");
  static final Key MISMATCH =
      Key.measure("mismatch", "Lost because modules differ.", Dimension.SHARE)
          .within(0, 0.5)
          .usual("1 %", CommonKeys.PRACTICE)
          .into("mismatchFraction");
  static final Key WIRING_LOSS =
      Key.measure(
              "wiring_loss",
              "Lost in the cables to the controller; 0 % is taken where conductors hold them.",
              Dimension.SHARE)
          .within(0, 0.5)
          .usual("2 %", CommonKeys.PRACTICE)
          .into("wiringFraction");
  static final Key AGEING =
      Key.measure("ageing", "Power lost to age so far.", Dimension.SHARE)
          .within(0, 0.9)
          .usual("0 %", "new panels")
          .into("ageingFraction");
  static final Key SNOW =
      Key.word(
              "snow",
              "What becomes of snow on the panels: none lies, or it lies until it slides; needs a weather file with snow depth.",
              SnowRule.values())
          .usual("none", "swept, or no snow")
          .into("snow");
  static final Key CELL_HEAT =
      Key.word(
              "cell_heat",
              "Which model gives the cell temperature.",
              ModuleChoices.CellHeat.values())
          .usual("faiman", "heeds wind")
          .into("choices.cellHeat");
  static final Key POWER_CURVE =
      Key.word(
              "power_curve",
              "Which model gives the power from light and heat.",
              ModuleChoices.PowerCurve.values())
          .usual("single_diode", "heeds weak light")
          .into("choices.powerCurve");
  static final Key HEAT_LOSS =
      Key.measure("heat_loss", "Faiman's u0.", Dimension.HEAT_TRANSFER)
          .within(5, 100)
          .usual("25 W/m2K", "open rack; Faiman (2008), from memory")
          .into("choices.heatLossWm2K");
  static final Key WIND_HEAT_LOSS =
      Key.measure("wind_heat_loss", "Faiman's u1.", Dimension.WIND_HEAT_TRANSFER)
          .within(0, 30)
          .usual("6.84 Ws/m3K", "open rack; Faiman (2008), from memory")
          .into("choices.windHeatLossWm2KPerMs");
  static final Shape ARRAY =
      Shape.of(
          "array",
          "Panels of one kind on one plane.",
          ARRAY_NAME,
          TILT,
          AZIMUTH,
          ARRAY_MODULE,
          IN_SERIES,
          IN_PARALLEL,
          SOILING,
          SHADE,
          MISMATCH,
          WIRING_LOSS,
          AGEING,
          SNOW,
          CELL_HEAT,
          POWER_CURVE,
          HEAT_LOSS,
          WIND_HEAT_LOSS);

  // ---- controller -----------------------------------------------------------------------------

  static final Key CONTROLLER_NAME = CommonKeys.name("controller");
  static final Key COUNT =
      Key.whole("count", "How many alike, side by side.")
          .within(1, 100)
          .usual("1", "")
          .into("count");
  static final Key TRACKING =
      Key.word(
              "tracking",
              "Whether it follows the maximum power point or joins the panels to the bank in pulses.",
              ControllerKind.values())
          .usual("mppt", "follows the maximum power point")
          .into("kind");
  static final Key MAX_OUTPUT_POWER =
      Key.measure("max_output_power", "Most charging power of one.", Dimension.POWER)
          .within(1, 200_000)
          .into("maxOutputW");
  static final Key MAX_OUTPUT_CURRENT =
      Key.measure("max_output_current", "Most charging current of one.", Dimension.CURRENT)
          .within(0.1, 2000)
          .into("maxOutputA");
  static final Key CONTROLLER_EFFICIENCY =
      Key.curve(
              "efficiency",
              "From the panels to the bus; points [share of its greatest output, efficiency] or one"
                  + " value.",
              Dimension.SHARE,
              Dimension.SHARE)
          .within(0.5, 1)
          .usual("97 %", "typical of trackers; " + CommonKeys.PRACTICE)
          .into("efficiency.efficiencyPoints");
  static final Key LOWEST_TRACKING_VOLTAGE =
      Key.measure("lowest_tracking_voltage", "Lower end of its window.", Dimension.VOLTAGE)
          .within(1, 2000)
          .into("lowestTrackingV");
  static final Key HIGHEST_TRACKING_VOLTAGE =
      Key.measure("highest_tracking_voltage", "Upper end of its window.", Dimension.VOLTAGE)
          .within(1, 2000)
          .into("highestTrackingV");
  static final Key START_VOLTAGE =
      Key.measure("start_voltage", "From which it starts in the morning.", Dimension.VOLTAGE)
          .within(1, 2000)
          .into("startV");
  static final Key ABSOLUTE_MAXIMUM_VOLTAGE =
      Key.measure("absolute_maximum_voltage", "Never to be exceeded.", Dimension.VOLTAGE)
          .within(1, 2000)
          .into("absoluteMaximumV");
  static final Key MAX_SHORT_CIRCUIT_CURRENT =
      Key.measure("max_short_circuit_current", "Never to be exceeded.", Dimension.CURRENT)
          .within(0.1, 2000)
          .into("maxShortCircuitA");
  static final Key CONTROLLER_STANDBY =
      Key.measure("standby", "Drawn day and night by one.", Dimension.POWER)
          .within(0, 200)
          .usual("2 W", CommonKeys.PRACTICE)
          .into("standbyW");
  static final Shape CONTROLLER =
      Shape.equipment(
          "controller",
          "controllers.yaml",
          "The charge controller between panels and bank.",
          FROM,
          CONTROLLER_NAME,
          NOTE,
          COUNT,
          TRACKING,
          MAX_OUTPUT_POWER,
          MAX_OUTPUT_CURRENT,
          CONTROLLER_EFFICIENCY,
          LOWEST_TRACKING_VOLTAGE,
          HIGHEST_TRACKING_VOLTAGE,
          START_VOLTAGE,
          ABSOLUTE_MAXIMUM_VOLTAGE,
          MAX_SHORT_CIRCUIT_CURRENT,
          CONTROLLER_STANDBY);
}
