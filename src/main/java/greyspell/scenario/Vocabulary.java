package greyspell.scenario;

import greyspell.array.ControllerKind;
import greyspell.array.ModuleChoices;
import greyspell.array.SnowRule;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.WireResistance;
import greyspell.electrical.WireSize;
import greyspell.load.Evidence;
import greyspell.load.Priority;
import greyspell.power.Fuel;
import greyspell.power.GeneratorRules;
import greyspell.quantity.Dimension;
import greyspell.sky.CloudTable;
import greyspell.sky.SkyChoices;
import greyspell.storage.BankDefaults;
import greyspell.storage.Chemistry;
import java.util.List;

/** Every key of the scenario file and of the equipment library. Nothing else declares one. */
final class Vocabulary {
  private static final String PRACTICE = "common practice, no source";
  private static final String SILICON = "typical of crystalline silicon; " + PRACTICE;

  private Vocabulary() {}

  /** Where a bank stands. */
  enum Stands {
    INDOORS,
    OUTDOORS,
    HEATED,
    GROUND
  }

  /** Which current a load takes. */
  enum Supply {
    AC,
    DC
  }

  private static Key from() {
    return Key.of(
        "from",
        Key.Kind.TEXT,
        "Name of an entry of the equipment library; what is written beside it goes before the"
            + " entry's own values.");
  }

  private static Key name(String usual) {
    return Key.of("name", Key.Kind.TEXT, "What it is called on the pages.")
        .usual(usual, "")
        .into("name");
  }

  private static Key note() {
    return Key.of("note", Key.Kind.TEXT, "Free words; not used.");
  }

  // ---- module ---------------------------------------------------------------------------------

  static final Key FROM = from();
  static final Key NOTE = note();
  static final Key MODULE_NAME = name("module");
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
          .usual("-0.38 %/K", SILICON)
          .into("powerPerK");
  static final Key VOLTAGE_COEFFICIENT =
      Key.measure(
              "voltage_coefficient",
              "Change of open-circuit voltage for each degree of cell temperature.",
              Dimension.SHARE_PER_KELVIN,
              Dimension.VOLTAGE_PER_KELVIN)
          .within(-0.01, 0.0)
          .mend("Voltage falls with heat: write it with a minus sign, such as -0.29 %/K.")
          .usual("-0.29 %/K", SILICON)
          .into("openCircuitPerK");
  static final Key CURRENT_COEFFICIENT =
      Key.measure(
              "current_coefficient",
              "Change of short-circuit current for each degree of cell temperature.",
              Dimension.SHARE_PER_KELVIN,
              Dimension.CURRENT_PER_KELVIN)
          .within(-0.002, 0.005)
          .usual("0.05 %/K", SILICON)
          .into("shortCircuitPerK");
  static final Key NOMINAL_CELL_TEMPERATURE =
      Key.measure(
              "nominal_cell_temperature",
              "Cell temperature at 800 W/m2, 20 °C air, 1 m/s wind.",
              Dimension.TEMPERATURE)
          .within(30, 70)
          .usual("45 °C", SILICON)
          .into("nominalCellC");
  static final Key CELLS_IN_SERIES =
      Key.whole(
              "cells_in_series",
              "Cells in one series path; of a module with half-cut cells half of all.")
          .within(1, 400)
          .usual("by the open-circuit voltage", "nearest usual count at 0.68 V a cell; " + PRACTICE)
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

  static final Key ARRAY_NAME = name("panels");
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
          .usual("2 %", "light dust that rain clears; " + PRACTICE)
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
          .usual("1 %", PRACTICE)
          .into("mismatchFraction");
  static final Key WIRING_LOSS =
      Key.measure(
              "wiring_loss",
              "Lost in the cables to the controller; 0 % is taken where conductors hold them.",
              Dimension.SHARE)
          .within(0, 0.5)
          .usual("2 %", PRACTICE)
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

  static final Key CONTROLLER_NAME = name("controller");
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
          .usual("97 %", "typical of trackers; " + PRACTICE)
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
          .usual("2 W", PRACTICE)
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

  // ---- bank -----------------------------------------------------------------------------------

  static final Key BATTERY_NAME = name("battery");
  static final Key CHEMISTRY =
      Key.word("chemistry", "Kind of battery.", Chemistry.values()).required().into("chemistry");
  static final Key CAPACITY =
      Key.measure("capacity", "Nominal, of one.", Dimension.ENERGY, Dimension.CHARGE)
          .within(10, 1_000_000)
          .required()
          .into("capacityWh");
  static final Key VOLTAGE =
      Key.measure("voltage", "Nominal, of one.", Dimension.VOLTAGE)
          .within(1, 1000)
          .required()
          .into("nominalV");
  static final Key CHARGE_EFFICIENCY =
      Key.measure("charge_efficiency", "From the bus to the cells.", Dimension.SHARE)
          .within(0.3, 1)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("chargeEfficiency");
  static final Key DISCHARGE_EFFICIENCY =
      Key.measure("discharge_efficiency", "From the cells to the bus.", Dimension.SHARE)
          .within(0.3, 1)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("dischargeEfficiency");
  static final Key MAX_CHARGE =
      Key.measure("max_charge", "Most that one takes in.", Dimension.POWER, Dimension.CURRENT)
          .within(0, 1_000_000)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("maxChargeW");
  static final Key MAX_DISCHARGE =
      Key.measure("max_discharge", "Most that one gives.", Dimension.POWER, Dimension.CURRENT)
          .within(0, 1_000_000)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("maxDischargeW");
  static final Key SELF_DISCHARGE =
      Key.measure("self_discharge", "Lost at rest.", Dimension.SHARE_PER_MONTH)
          .within(0, 0.5)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("selfDischargePerMonthFraction");
  static final Key CAPACITY_BY_TEMPERATURE =
      Key.curve(
              "capacity_by_temperature",
              "Share of the capacity that can be drawn; points [temperature, share].",
              Dimension.TEMPERATURE,
              Dimension.SHARE)
          .within(0, 1.2)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("capacityByTemperature");
  static final Key COLDEST_CHARGE =
      Key.measure("coldest_charge", "No charging below this.", Dimension.TEMPERATURE)
          .within(-60, 30)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("coldestChargeC");
  static final Key BATTERY_STANDBY =
      Key.measure("standby", "Drawn by its own electronics, each.", Dimension.POWER)
          .within(0, 100)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("standbyW");
  static final Shape BATTERY =
      Shape.equipment(
          "battery",
          "batteries.yaml",
          "One battery: a pack, a block or a single cell, as it is bought.",
          FROM,
          BATTERY_NAME,
          NOTE,
          CHEMISTRY,
          CAPACITY,
          VOLTAGE,
          CHARGE_EFFICIENCY,
          DISCHARGE_EFFICIENCY,
          MAX_CHARGE,
          MAX_DISCHARGE,
          SELF_DISCHARGE,
          CAPACITY_BY_TEMPERATURE,
          COLDEST_CHARGE,
          BankKeys.FULL_CHARGE_FROM,
          BATTERY_STANDBY,
          BankKeys.VOLTAGE_BY_CHARGE,
          BankKeys.RESISTANCE,
          BankKeys.RESISTANCE_BY_TEMPERATURE,
          BankKeys.COULOMBIC_EFFICIENCY,
          BankKeys.TAPER_FROM,
          BankKeys.TAPER_TO,
          BankKeys.CAPACITY_BY_HOURS,
          BankKeys.QUICK_SHARE,
          BankKeys.EXCHANGE_RATE,
          BankKeys.CYCLE_LIFE,
          BankKeys.CYCLE_LIFE_TO,
          BankKeys.CALENDAR_LIFE);

  static final Key STANDS = Key.word("place", "Where the bank stands.", Stands.values()).required();
  static final Key INDOOR_TEMPERATURE =
      Key.measure("temperature", "Of the room (indoors).", Dimension.TEMPERATURE)
          .within(-20, 45)
          .usual("15 °C", "a room that is lived in, its cool side")
          .into("temperatureC");
  static final Key LAG =
      Key.measure("lag", "How slowly it follows the air (outdoors and heated).", Dimension.DURATION)
          .within(0, 240)
          .usual("12 h", "a heavy pack in a box; " + PRACTICE)
          .into("lagH");
  static final Key AT_LEAST =
      Key.measure("at_least", "Kept this warm (heated).", Dimension.TEMPERATURE)
          .within(-30, 40)
          .usual("5 °C", PRACTICE)
          .into("atLeastC");
  static final Key BOX_HEAT_LOSS =
      Key.measure(
              "heat_loss",
              "Heat lost by the box for each degree above the air (heated, or with mass).",
              Dimension.POWER_PER_KELVIN)
          .within(0.05, 100)
          .usual("1.5 W/K", "a box of 1.5 m2 with 5 cm of foam; own estimate")
          .into("heatLossWPerK");
  static final Shape ENCLOSURE =
      Shape.shortened(
          "enclosure",
          "Where the bank stands, which decides its temperature.",
          STANDS,
          INDOOR_TEMPERATURE,
          LAG,
          AT_LEAST,
          BOX_HEAT_LOSS,
          BankKeys.MASS,
          BankKeys.SPECIFIC_HEAT,
          BankKeys.DEPTH,
          BankKeys.SOIL);

  static final Key BANK_BATTERY =
      Key.block("battery", "What the bank is made of.", BATTERY).required();
  static final Key BANK_IN_SERIES =
      Key.whole("in_series", "Batteries in a row, which adds their voltages.")
          .within(1, 400)
          .usual("1", "");
  static final Key BANK_IN_PARALLEL =
      Key.whole("in_parallel", "Batteries, or rows of them, side by side.")
          .within(1, 200)
          .usual("1", "")
          .into("packs");
  static final Key FULL =
      Key.measure("full", "Charged up to this share of the capacity.", Dimension.SHARE)
          .within(0.2, 1)
          .usual("100 %", "charged to the top")
          .into("fullFraction");
  static final Key BANK_ENCLOSURE =
      Key.block("enclosure", "Where it stands.", ENCLOSURE).required().into("enclosure");
  static final Shape BANK =
      Shape.of(
          "bank",
          "The battery bank.",
          BANK_BATTERY,
          BANK_IN_SERIES,
          BANK_IN_PARALLEL,
          FULL,
          BANK_ENCLOSURE,
          BankKeys.MODEL,
          BankKeys.LOSSES,
          BankKeys.HEALTH,
          BankKeys.END_OF_LIFE,
          BankKeys.FULL_CHARGE_EVERY,
          BankKeys.SERVICE_YEARS);

  // ---- inverter -------------------------------------------------------------------------------

  static final Key INVERTER_NAME = name("inverter");
  static final Key CONTINUOUS_POWER =
      Key.measure("continuous_power", "AC power that one can hold.", Dimension.POWER)
          .within(10, 200_000)
          .required()
          .into("continuousW");
  static final Key SURGE_POWER =
      Key.measure("surge_power", "AC power of one for a motor start.", Dimension.POWER)
          .within(10, 1_000_000)
          .into("surgeW");
  static final Key STANDBY_DAY =
      Key.measure(
              "standby_day", "Drawn by one whether or not anything is on, by day.", Dimension.POWER)
          .within(0, 1000)
          .usual("1 % of continuous_power", "measure it, it runs all year; " + PRACTICE)
          .into("standbyDayW");
  static final Key STANDBY_NIGHT =
      Key.measure("standby_night", "The same at night.", Dimension.POWER)
          .within(0, 1000)
          .usual("as standby_day", "no search mode stated")
          .into("standbyNightW");
  static final Key INVERTER_EFFICIENCY =
      Key.curve(
              "efficiency",
              "From the bus to the sockets, standby included; points [share of continuous power,"
                  + " efficiency] or one value.",
              Dimension.SHARE,
              Dimension.SHARE)
          .within(0.2, 1)
          .usual("92 %", PRACTICE)
          .into("efficiencies");
  static final Key LOWEST_INPUT_VOLTAGE =
      Key.measure("lowest_input_voltage", "Lowest bank voltage it works at.", Dimension.VOLTAGE)
          .within(1, 2000);
  static final Key HIGHEST_INPUT_VOLTAGE =
      Key.measure("highest_input_voltage", "Highest bank voltage it bears.", Dimension.VOLTAGE)
          .within(1, 2000);
  static final Key BUILT_IN_CONTROLLER =
      Key.block("controller", "The charge controller inside it, if it has one.", CONTROLLER);
  static final Key SEARCH_DRAW =
      Key.measure("draw", "Drawn by one from the bus while it sleeps.", Dimension.POWER)
          .within(0, 500)
          .required()
          .into("drawW");
  static final Key WAKES_AT =
      Key.measure("wakes_at", "Power asked at the sockets from which it wakes.", Dimension.POWER)
          .within(0.1, 5000)
          .required()
          .into("wakesAtW");
  static final Shape SEARCH =
      Shape.of(
          "search",
          "An inverter that sleeps while nothing worth waking for is on. What asks for less than"
              + " wakes_at gets nothing while it sleeps.",
          SEARCH_DRAW,
          WAKES_AT);
  static final Key INVERTER_SEARCH =
      Key.block("search", "How it sleeps; left out, it is always awake.", SEARCH).into("search");
  static final Key CHARGER_POWER =
      Key.measure("power", "Most that it takes from the generator.", Dimension.POWER)
          .within(10, 200_000)
          .required()
          .into("mostAcW");
  static final Key CHARGER_EFFICIENCY =
      Key.measure("efficiency", "From the generator to the bus.", Dimension.SHARE)
          .within(0.3, 1)
          .usual("90 %", PRACTICE)
          .into("efficiency");
  static final Shape CHARGER =
      Shape.of(
          "charger",
          "What turns a generator's current into charge.",
          CHARGER_POWER,
          CHARGER_EFFICIENCY);
  static final Key INVERTER_CHARGER =
      Key.block("charger", "Its charger side, of one, if it has one.", CHARGER).into("charger");
  static final Shape INVERTER =
      Shape.equipment(
          "inverter",
          "inverters.yaml",
          "Turns the bank's current into that of the sockets.",
          FROM,
          INVERTER_NAME,
          NOTE,
          COUNT,
          CONTINUOUS_POWER,
          SURGE_POWER,
          STANDBY_DAY,
          STANDBY_NIGHT,
          INVERTER_EFFICIENCY,
          INVERTER_SEARCH,
          INVERTER_CHARGER,
          LOWEST_INPUT_VOLTAGE,
          HIGHEST_INPUT_VOLTAGE,
          BUILT_IN_CONTROLLER);

  // ---- generator ------------------------------------------------------------------------------

  static final Key GENERATOR_NAME = name("generator");
  static final Key GENERATOR_POWER =
      Key.measure("rated_power", "AC power that one can hold.", Dimension.POWER)
          .within(100, 100_000)
          .required()
          .into("spec.ratedPowerW");
  static final Key FUEL =
      Key.word("fuel", "What it burns; propane is counted as liquid.", Fuel.values())
          .required()
          .into("fuel");
  static final Key FUEL_USE =
      Key.curve(
              "fuel_use",
              "Points [share of rated power, litres or gallons an hour], of one; straight lines"
                  + " between, the outer lines carried on. This, or the two keys below.",
              Dimension.SHARE,
              Dimension.FUEL_RATE)
          .within(0, 100)
          .into("fuelUse");
  static final Key FUEL_AT_NO_LOAD =
      Key.measure(
              "fuel_at_no_load",
              "Burnt in an hour with nothing drawn; with the next key a straight line, instead of"
                  + " fuel_use.",
              Dimension.FUEL_RATE)
          .within(0, 100)
          .into("fuelUse");
  static final Key FUEL_AT_FULL_LOAD =
      Key.measure("fuel_at_full_load", "Burnt in an hour at rated power.", Dimension.FUEL_RATE)
          .within(0, 100)
          .into("fuelUse");
  private static final String THIN_AIR =
      PRACTICE + "; makers' sheets differ, from sea level to 1500 m and from 25 °C to 40 °C";
  static final Key ABOVE_ELEVATION =
      Key.measure("above_elevation", "Height from which it loses power.", Dimension.LENGTH)
          .within(-450, 6000)
          .usual("0 m", THIN_AIR)
          .into("fromElevationM");
  static final Key PER_300_M =
      Key.measure("per_300_m", "Power lost for each 300 m (1000 ft) above.", Dimension.SHARE)
          .within(0, 0.3)
          .usual("3.5 %", THIN_AIR)
          .into("perMShare");
  static final Key ABOVE_TEMPERATURE =
      Key.measure(
              "above_temperature",
              "Air temperature from which it loses power.",
              Dimension.TEMPERATURE)
          .within(-40, 60)
          .usual("25 °C", THIN_AIR)
          .into("fromTemperatureC");
  static final Key PER_DEGREE =
      Key.measure("per_degree", "Power lost for each degree above.", Dimension.SHARE_PER_KELVIN)
          .within(0, 0.05)
          .mend("Written without a minus sign: 0.18 %/K, or 0.1 %/°F.")
          .usual("0.18 %/K", "1 % for each 10 °F; " + THIN_AIR)
          .into("perK");
  static final Shape DERATING =
      Shape.of(
          "derating",
          "What thin and hot air take from a generator's rated power.",
          ABOVE_ELEVATION,
          PER_300_M,
          ABOVE_TEMPERATURE,
          PER_DEGREE);
  static final Key GENERATOR_DERATING =
      Key.block("derating", "What thin and hot air take from its power.", DERATING)
          .into("derating");
  static final Key POLICY =
      Key.word(
              "policy",
              "Starts by itself (auto), or only when someone is at home to start it and stay"
                  + " (manual).",
              GeneratorRules.Policy.values())
          .usual("auto", "it starts by itself")
          .into("rules.policy");
  static final Key START_BELOW =
      Key.measure(
              "start_below",
              "It starts below this charge, of the usable window, or when the bank cannot give what"
                  + " the house lacks.",
              Dimension.SHARE)
          .within(0, 0.99)
          .usual("20 %", PRACTICE)
          .into("startBelowShare");
  static final Key STOP_ABOVE =
      Key.measure(
              "stop_above",
              "It stops when the charge has reached this, of the usable window, and the bank can give"
                  + " what the house lacks.",
              Dimension.SHARE)
          .within(0.01, 1)
          .usual("80 %", "the last part fills slowly; " + PRACTICE)
          .into("stopAboveShare");
  static final Key MINIMUM_RUN =
      Key.measure(
              "minimum_run",
              "Shortest run, in whole hours; quiet hours, or nobody at home with policy: manual, end it"
                  + " sooner.",
              Dimension.DURATION)
          .within(0, 24)
          .usual("2 h", "short runs wear an engine; " + PRACTICE)
          .into("minimumRunH");
  static final Key PERMITTED_HOURS =
      Key.of(
              "permitted_hours",
              Key.Kind.HOURS,
              "Spans of the day in which it may run; only whole hours within them count, the rest"
                  + " are quiet hours.")
          .usual("00:00-24:00", "no quiet hours stated")
          .into("permitted.spans");
  static final Key PERMITTED_DAYS =
      Key.of("permitted_days", Key.Kind.DAYS, "Days of the week on which it may run.")
          .usual("Mon-Sun", "")
          .into("permitted.days");
  static final Key PERMITTED_MONTHS =
      Key.of("permitted_months", Key.Kind.MONTH_SPANS, "Months in which it may run: Oct-Mar.")
          .usual("Jan-Dec", "")
          .into("permitted.months");
  static final Key HOME_HOURS =
      Key.of(
              "home_hours",
              Key.Kind.HOURS,
              "Spans of the day in which someone is at home; for policy: manual only.")
          .usual("07:00-22:00", "awake and at home; own choice, no source")
          .into("home.spans");
  static final Key HOME_DAYS =
      Key.of(
              "home_days",
              Key.Kind.DAYS,
              "Days of the week on which someone is at home; for policy: manual only.")
          .usual("Mon-Sun", "")
          .into("home.days");
  static final Key GENERATOR_CHARGER =
      Key.block(
              "charger", "What it charges through; left out, the inverter's charger side.", CHARGER)
          .into("charger");
  static final Shape GENERATOR =
      Shape.equipment(
          "generator",
          "generators.yaml",
          "An engine for the grey weeks, and when it runs. Its exhaust kills: outdoors only, away"
              + " from every opening, joined to the house through a transfer switch by a licensed"
              + " electrician.",
          FROM,
          GENERATOR_NAME,
          NOTE,
          COUNT,
          GENERATOR_POWER,
          FUEL,
          FUEL_USE,
          FUEL_AT_NO_LOAD,
          FUEL_AT_FULL_LOAD,
          GENERATOR_DERATING,
          POLICY,
          START_BELOW,
          STOP_ABOVE,
          MINIMUM_RUN,
          PERMITTED_HOURS,
          PERMITTED_DAYS,
          PERMITTED_MONTHS,
          HOME_HOURS,
          HOME_DAYS,
          GENERATOR_CHARGER);

  // ---- a second source --------------------------------------------------------------------------

  static final Key SOURCE_FILE =
      Key.of(
              "file",
              Key.Kind.PATH,
              "Hourly CSV with the columns local_start (or utc_start, or none) and source_w;"
                  + " relative to this file.")
          .required()
          .into("file");
  static final Key SOURCE_BUS =
      Key.word(
              "bus",
              "Where it feeds in: beside the inverter on the sockets' side (ac), or on the bank's"
                  + " (dc).",
              Supply.values())
          .usual("dc", "small turbines mostly charge the bank; " + PRACTICE)
          .into("isDirectCurrent");
  static final Key SOURCE_NAME = name("other source");
  static final Shape OTHER_SOURCE =
      Shape.shortened(
          "other_source",
          "A second source, such as a small wind or water turbine, as hourly watts. Hours without a"
              + " value count as nothing; a log of one year repeats.",
          SOURCE_FILE,
          SOURCE_BUS,
          SOURCE_NAME);

  // ---- loads ----------------------------------------------------------------------------------

  static final Key APPLIANCE_NAME = name("appliance");
  static final Key QUANTITY =
      Key.whole("quantity", "How many alike.").within(0, 1000).usual("1", "").into("quantity");
  static final Key POWER =
      Key.measure("power", "While it runs, each.", Dimension.POWER)
          .within(0, 50_000)
          .required()
          .into("powerW");
  static final Key STANDBY =
      Key.measure("standby", "When it does not run, each.", Dimension.POWER)
          .within(0, 1000)
          .usual("0 W", "")
          .into("standbyW");
  static final Key SURGE =
      Key.measure("surge", "For a motor start, each.", Dimension.POWER)
          .within(0, 200_000)
          .into("surgeW");
  static final Key DUTY =
      Key.measure("duty", "Share of its hours that it really runs.", Dimension.SHARE)
          .within(0, 1)
          .usual("100 %", "runs through its hours")
          .into("dutyShare");
  static final Key HOURS =
      Key.of(
              "hours",
              Key.Kind.HOURS,
              "Spans of the day in local standard time: [07:00-09:00, 17:30-23:00].")
          .usual("00:00-24:00", "round the clock")
          .into("hours");
  static final Key DAYS =
      Key.of("days", Key.Kind.DAYS, "Days of the week: Mon-Fri, or [Sat, Sun].")
          .usual("Mon-Sun", "")
          .into("days");
  static final Key MONTHS =
      Key.of(
              "months",
              Key.Kind.MONTHS,
              "Months in which it is used, Nov-Feb, or twelve factors on its duty, January first.")
          .within(0, 10)
          .usual("Jan-Dec", "")
          .into("monthFactor");
  static final Key PRIORITY =
      Key.word("priority", "How much the house depends on it.", Priority.values())
          .usual("should_run", "")
          .into("priority");
  static final Key EVIDENCE =
      Key.word("evidence", "How well the figures are known.", Evidence.values())
          .usual("guess", "")
          .into("evidence");
  static final Key SUPPLY =
      Key.word(
              "supply", "Through the inverter (ac) or straight from the bus (dc).", Supply.values())
          .usual("ac", "")
          .into("isDirectCurrent");
  static final Key MEDICAL =
      Key.of("medical", Key.Kind.FLAG, "A life or a health depends on it.")
          .usual("no", "")
          .into("isMedical");

  /** One of the twelve factors that "months" may hold instead of words. */
  static final Key MONTH_FACTOR =
      Key.measure("months", "Factor of a month.", Dimension.NUMBER, Dimension.SHARE).within(0, 10);

  static final Shape APPLIANCE =
      Shape.equipment(
          "appliance",
          "appliances.yaml",
          "One kind of appliance.",
          FROM,
          APPLIANCE_NAME,
          NOTE,
          QUANTITY,
          POWER,
          STANDBY,
          SURGE,
          DUTY,
          HOURS,
          DAYS,
          MONTHS,
          PRIORITY,
          EVIDENCE,
          SUPPLY,
          MEDICAL,
          LoadKeys.WHEN,
          LoadKeys.WITH_HEATING,
          LoadKeys.WITH_COOLING,
          LoadKeys.IN_ROOM,
          LoadKeys.WITH_WATER,
          LoadKeys.AT_LEAST,
          LoadKeys.AT_MOST);

  static final Key LOG_FILE =
      Key.of("file", Key.Kind.PATH, "CSV, relative to this file.").required().into("file");
  static final Key LOG_FACTOR =
      Key.measure("factor", "Multiplies every value.", Dimension.NUMBER, Dimension.SHARE)
          .within(0, 100)
          .usual("1", "as measured")
          .into("factor");
  static final Shape LOG =
      Shape.shortened(
          "log",
          "A measured log of consumption.",
          LOG_FILE,
          LOG_FACTOR,
          LoadKeys.LOG_PRIORITY,
          LoadKeys.LOG_CLOCK,
          LoadKeys.LOG_ZONE,
          LoadKeys.LOG_EXTENSION,
          LoadKeys.LOG_SCATTER);

  static final Key APPLIANCES =
      Key.list("appliances", "Names from the library, or blocks.", APPLIANCE).into("appliances");
  static final Key LOAD_LOG = Key.block("log", "A measured log.", LOG).into("log");
  static final Key DAILY_VARIATION =
      Key.measure(
              "daily_variation",
              "Standard deviation of the day-to-day variation of the appliances.",
              Dimension.SHARE)
          .within(0, 1)
          .usual("0 %", "every day alike")
          .into("dailyVariationFraction");
  static final Shape LOADS =
      Shape.of(
          "loads",
          "What the house asks for: appliances, a measured log, or both.",
          APPLIANCES,
          LOAD_LOG,
          DAILY_VARIATION,
          LoadKeys.HOURLY_VARIATION,
          LoadKeys.GROWTH,
          LoadKeys.WHEN_LOW);

  // ---- site, weather, sky -----------------------------------------------------------------------

  static final Key LATITUDE =
      Key.measure("latitude", "South negative.", Dimension.ANGLE, Dimension.NUMBER)
          .within(-90, 90)
          .mend("Are latitude and longitude swapped?")
          .required()
          .into("latitudeDeg");
  static final Key LONGITUDE =
      Key.measure("longitude", "West negative.", Dimension.ANGLE, Dimension.NUMBER)
          .within(-180, 180)
          .mend("Write west with a minus sign.")
          .required()
          .into("longitudeDeg");
  static final Key ELEVATION =
      Key.measure("elevation", "Above the sea.", Dimension.LENGTH)
          .within(-450, 6000)
          .usual("0 m", "not stated")
          .into("elevationM");
  static final Key UTC_OFFSET =
      Key.measure("utc_offset", "Local standard time minus UTC.", Dimension.DURATION)
          .within(-12, 14)
          .mend("Hours ahead of Greenwich in winter, without daylight saving; west is negative.")
          .usual("by longitude", "a whole hour for each 15 degrees")
          .into("utcOffsetH");
  static final Key ALBEDO =
      Key.monthly(
              "albedo",
              "Share of light that the ground reflects without snow.",
              Dimension.NUMBER,
              Dimension.SHARE)
          .within(0, 1)
          .usual("0.2", "grass and soil; " + PRACTICE)
          .into("groundAlbedo");
  static final Key HORIZON =
      Key.of(
              "horizon",
              Key.Kind.HORIZON,
              "How high land, trees and roofs stand: {SE: 8 deg, S: 4 deg, SW: 12 deg} or pairs"
                  + " [azimuth, height]; straight lines between the points, all around.")
          .within(0, 85)
          .usual("open", "nothing in the way stated")
          .into("horizon");
  static final Key RECORD_LOW =
      Key.measure("record_low", "Coldest air ever noted.", Dimension.TEMPERATURE)
          .within(-90, 30)
          .into("recordLowC");
  static final Key RECORD_HIGH =
      Key.measure("record_high", "Hottest air ever noted.", Dimension.TEMPERATURE)
          .within(0, 60)
          .into("recordHighC");
  static final Shape SITE =
      Shape.of(
          "site",
          "The place of the house.",
          LATITUDE,
          LONGITUDE,
          ELEVATION,
          UTC_OFFSET,
          ALBEDO,
          HORIZON,
          RECORD_LOW,
          RECORD_HIGH);

  static final Key WEATHER_FILE =
      Key.of("file", Key.Kind.PATH, "Hourly weather, relative to this file.")
          .required()
          .into("file");
  static final Shape WEATHER =
      Shape.shortened("weather", "Which weather the house stands in.", WEATHER_FILE);

  static final Key CLEAR_SKY =
      Key.word("clear_sky", "Which model gives the cloudless sky.", SkyChoices.ClearSky.values())
          .usual("ineichen_perez", "heeds height and haze")
          .into("clearSky");
  static final Key CLOUD =
      Key.word(
              "cloud",
              "How cloud dims the light where the weather has no irradiance: the classic curve, or a"
                  + " table from measurement.",
              SkyChoices.Cloud.values())
          .usual("classic", "")
          .into("cloudTable");
  static final Key CLOUD_SEASON =
      Key.word(
              "season",
              "The part of the year that the row is for: winter is November to February, in the"
                  + " south May to August.",
              CloudTable.Season.values())
          .usual("all", "");
  static final Key CLOUD_SUN =
      Key.measure("sun", "Height of the sun; straight lines between rows.", Dimension.ANGLE)
          .within(0, 90)
          .required();
  static final Key CLOUD_SHARES =
      Key.curve(
              "shares",
              "Points [eighths covered, share of the clear light]; straight lines between them.",
              Dimension.NUMBER,
              Dimension.NUMBER)
          .within(0, 4)
          .required();
  static final Shape CLOUD_ROW =
      Shape.of(
          "cloud row",
          "A row of a cloud table; greyspell weather calibrate makes whole tables.",
          CLOUD_SEASON,
          CLOUD_SUN,
          CLOUD_SHARES);
  static final Key CLOUD_TABLE =
      Key.list(
              "cloud_table",
              "What cloud leaves of the clear light, for cloud: table; without it the table of a"
                  + " lowland station at 52 degrees north.",
              CLOUD_ROW)
          .into("cloudTable");
  static final Key CLOUD_DEPTH =
      Key.measure(
              "cloud_depth",
              "Share of clear light lost under full cloud.",
              Dimension.NUMBER,
              Dimension.SHARE)
          .within(0, 1)
          .usual("0.75", "Kasten and Czeplak (1980), from memory")
          .into("cloudDepth");
  static final Key CLOUD_EXPONENT =
      Key.measure("cloud_exponent", "How late cloud begins to tell.", Dimension.NUMBER)
          .within(0.5, 10)
          .usual("3.4", "Kasten and Czeplak (1980), from memory")
          .into("cloudExponent");
  static final Key TILT_MODEL =
      Key.word(
              "tilt_model",
              "Which model turns level light to the panels.",
              SkyChoices.Tilt.values())
          .usual("perez", "heeds the bright sky around the sun and at the horizon")
          .into("tilt");
  static final Key TURBIDITY =
      Key.monthly("turbidity", "Linke turbidity of the cloudless sky.", Dimension.NUMBER)
          .within(1, 10)
          .usual("3", "clear country air; " + PRACTICE)
          .into("linkeTurbidity");
  static final Key SNOW_ALBEDO =
      Key.measure(
              "snow_albedo",
              "Share of light that lying snow reflects.",
              Dimension.NUMBER,
              Dimension.SHARE)
          .within(0, 1)
          .usual("0.6", "neither fresh nor old snow; " + PRACTICE)
          .into("snowAlbedo");
  static final Shape SKY =
      Shape.of(
          "sky",
          "Which published models turn weather into light on the panels; all have defaults.",
          CLEAR_SKY,
          CLOUD,
          CLOUD_TABLE,
          CLOUD_DEPTH,
          CLOUD_EXPONENT,
          TILT_MODEL,
          TURBIDITY,
          SNOW_ALBEDO);

  // ---- electrical, conductors -------------------------------------------------------------------

  static final Key DWELLING =
      Key.of("dwelling", Key.Kind.FLAG, "A one- or two-family dwelling.")
          .usual("yes", "one- or two-family dwelling: the voltage limit of the code holds")
          .into("isDwelling");
  static final Key CHARGING_VOLTAGE =
      Key.measure(
              "charging_voltage",
              "Highest voltage at which the bank is charged.",
              Dimension.VOLTAGE)
          .within(1, 1500)
          .usual("by chemistry", PRACTICE)
          .into("chargingV");
  static final Key BANK_RESISTANCE =
      Key.measure("bank_resistance", "Internal resistance of the whole bank.", Dimension.RESISTANCE)
          .within(0, 10)
          .into("bankOhm");
  static final Key CUT_OFF_VOLTAGE =
      Key.measure(
              "cut_off_voltage",
              "Below it the inverter switches off; without it the inverter's lowest_input_voltage"
                  + " is taken, and never less than that.",
              Dimension.VOLTAGE)
          .within(1, 1500)
          .into("cutOffV");
  static final Shape ELECTRICAL =
      Shape.of(
          "electrical",
          "What only the electrical checks ask for. They are no design and no approval: local code"
              + " and licensed practice govern.",
          DWELLING,
          CHARGING_VOLTAGE,
          BANK_RESISTANCE,
          CUT_OFF_VOLTAGE);

  static final Key RUN =
      Key.word("run", "Which part of the way.", ConductorRun.Kind.values())
          .required()
          .into("run.kind");
  static final Key WIRE_ARRAY =
      Key.of(
              "array",
              Key.Kind.TEXT,
              "Name of the array that an array_to_controller run serves; left out, every array has"
                  + " such a run of its own.")
          .into("arrayName");
  static final Key WIRE_NAME = name("the run's words, and the array's name");
  static final Key WIRE_LENGTH =
      Key.measure("length", "One way; there and back is reckoned.", Dimension.LENGTH)
          .within(0.05, 2000)
          .required()
          .into("lengthM");
  static final Key WIRE_SIZE =
      Key.of(
              "size",
              Key.Kind.TEXT,
              "As printed along the cable: \"10 AWG\", \"2/0 AWG\" or \"16 mm2\"; \"unknown\" is a"
                  + " finding of the check, and no loss of the wire is booked.")
          .required()
          .into("size");
  static final Key STRANDS =
      Key.word(
              "strands",
              "Stiff cable with few wires, or flexible cable with fine ones; tells in mm2 only.",
              WireSize.Strands.values())
          .usual("fine", "flexible cable; of the two it has the higher resistance")
          .into("strands");
  static final Key METAL =
      Key.word("metal", "What it is drawn from.", WireResistance.Metal.values())
          .usual("copper", "the usual metal of such cables")
          .into("metal");
  static final Key WIRES_IN_PARALLEL =
      Key.whole("in_parallel", "Wires side by side in each direction.")
          .within(1, 20)
          .usual("1", "")
          .into("inParallel");
  static final Key AMBIENT =
      Key.measure("ambient", "Hottest air around it.", Dimension.TEMPERATURE)
          .within(-60, 85)
          .usual("30 °C", "the air of the ampacity table; a roof is hotter")
          .into("ambientC");
  static final Key INSULATION =
      Key.measure(
              "insulation",
              "Temperature that its insulation is made for: 75 °C or 90 °C.",
              Dimension.TEMPERATURE)
          .within(75, 90)
          .usual("75 °C", "the lower column of the ampacity table")
          .into("insulation");
  static final Key ALLOWED_CURRENT =
      Key.measure(
              "allowed_current",
              "By the cable's own table as it is laid, corrected for air and laying, all wires"
                  + " together; where it is stated the program's table is not asked.",
              Dimension.CURRENT)
          .within(0.1, 5000)
          .into("statedAmpacityA");
  static final Shape CONDUCTOR =
      Shape.of(
          "conductor",
          "A pair of wires, as it is laid. Sizes are judged, never recommended.",
          RUN,
          WIRE_ARRAY,
          WIRE_NAME,
          WIRE_LENGTH,
          WIRE_SIZE,
          STRANDS,
          METAL,
          WIRES_IN_PARALLEL,
          AMBIENT,
          INSULATION,
          ALLOWED_CURRENT);

  // ---- costs and the whole file -----------------------------------------------------------------

  static final Key CURRENCY =
      Key.of("currency", Key.Kind.TEXT, "The user's own word.").usual("", "").into("currency");
  static final Key PER_MODULE =
      Key.measure("per_module", "One panel, mounted.", Dimension.NUMBER)
          .within(0, 1e9)
          .into("perModuleCost");
  static final Key PER_PACK =
      Key.measure(
              "per_pack",
              "One battery more; of a bank with batteries in series one row.",
              Dimension.NUMBER)
          .within(0, 1e9)
          .into("perPackCost");
  static final Key FUEL_PER_LITRE =
      Key.measure("fuel_per_litre", "Generator fuel.", Dimension.NUMBER)
          .within(0, 1e6)
          .into("fuelPerLitreCost");
  static final Key FUEL_PER_GALLON =
      Key.measure(
              "fuel_per_gallon",
              "Generator fuel for a US gallon, instead of fuel_per_litre.",
              Dimension.NUMBER)
          .within(0, 1e6)
          .into("fuelPerLitreCost");
  static final Key YEARLY =
      Key.measure("yearly", "Upkeep each year.", Dimension.NUMBER)
          .within(0, 1e9)
          .into("yearlyCost");
  static final Shape COSTS =
      Shape.of(
          "costs",
          "Prices, all optional, plain numbers. The fuel price gives what a generator burns for; the others are read and kept.",
          CURRENCY,
          PER_MODULE,
          PER_PACK,
          FUEL_PER_LITRE,
          FUEL_PER_GALLON,
          YEARLY);

  static final Key HOME =
      Key.of("home", Key.Kind.TEXT, "Name of the house.").required().into("name");
  static final Key HOME_NOTE =
      Key.of("note", Key.Kind.TEXT, "Free words for the pages.").usual("", "").into("note");
  static final Key HOME_SITE = Key.block("site", "The place.", SITE).required().into("site");
  static final Key HOME_WEATHER =
      Key.block("weather", "The weather.", WEATHER).required().into("weather");
  static final Key HOME_SKY = Key.block("sky", "Models of the sky.", SKY).into("sky");
  static final Key ARRAYS =
      Key.list("arrays", "The planes of panels, any number.", ARRAY).required().into("arrays");
  static final Key HOME_CONTROLLER =
      Key.block("controller", "The charge controller.", CONTROLLER)
          .usual(
              "the inverter's own, else one without limits",
              "nothing is clipped; state yours to see what it clips")
          .into("controller");
  static final Key HOME_BANK = Key.block("bank", "The battery bank.", BANK).required().into("bank");
  static final Key HOME_INVERTER =
      Key.block("inverter", "The inverter.", INVERTER).required().into("inverter");
  static final Key HOME_GENERATOR =
      Key.block("generator", "An engine for the grey weeks, if there is one.", GENERATOR)
          .into("generator");
  static final Key HOME_OTHER_SOURCE =
      Key.block("other_source", "A second source, if there is one.", OTHER_SOURCE)
          .into("otherSource");
  static final Key HOME_LOADS =
      Key.block("loads", "What the house asks for.", LOADS).required().into("load");
  static final Key RESERVE =
      Key.measure("reserve", "Never drawn below this share of the capacity.", Dimension.SHARE)
          .within(0, 0.95)
          .usual("by chemistry", BankDefaults.USUAL_WHY)
          .into("bank.reserveFraction");
  static final Key START =
      Key.of(
              "start",
              Key.Kind.START,
              "Charge on the first day: a share of the usable window, or steady (as after the same"
                  + " years before).")
          .within(0, 1)
          .usual("steady", "the years before were like these")
          .into("startChargeFraction");
  static final Key HOME_COSTS = Key.block("costs", "Prices.", COSTS).into("costs");
  static final Key HOME_ELECTRICAL =
      Key.block("electrical", "For the electrical checks.", ELECTRICAL).into("electrical");
  static final Key CONDUCTORS =
      Key.list("conductors", "The wires from the panels to the inverter, any number.", CONDUCTOR)
          .into("electrical.conductors");
  static final Key SEED =
      Key.whole("seed", "Where whatever is drawn at random begins.")
          .within(0, 1_000_000_000)
          .usual("1", "")
          .into("seed");
  static final Shape SCENARIO =
      Shape.of(
          "scenario",
          "One home.",
          HOME,
          HOME_NOTE,
          HOME_SITE,
          HOME_WEATHER,
          HOME_SKY,
          ARRAYS,
          HOME_CONTROLLER,
          HOME_BANK,
          HOME_INVERTER,
          HOME_GENERATOR,
          HOME_OTHER_SOURCE,
          HOME_LOADS,
          RESERVE,
          START,
          HOME_ELECTRICAL,
          CONDUCTORS,
          HOME_COSTS,
          SEED);

  /** In the order of the reference page. */
  static List<Shape> shapes() {
    return List.of(
        SCENARIO,
        SITE,
        WEATHER,
        SKY,
        CLOUD_ROW,
        ARRAY,
        MODULE,
        CONTROLLER,
        BANK,
        BATTERY,
        ENCLOSURE,
        INVERTER,
        SEARCH,
        CHARGER,
        GENERATOR,
        DERATING,
        OTHER_SOURCE,
        LOADS,
        APPLIANCE,
        LoadKeys.HEATING,
        LoadKeys.COOLING,
        LoadKeys.ROOM,
        LoadKeys.WATER,
        LOG,
        LoadKeys.POLICY,
        ELECTRICAL,
        CONDUCTOR,
        COSTS);
  }
}
