package greyspell.scenario;

import greyspell.power.Fuel;
import greyspell.power.GeneratorRules;
import greyspell.quantity.Dimension;

/** Keys of inverters, generators and a second source. The part of {@link Vocabulary} about them. */
final class PowerKeys {
  private PowerKeys() {}

  static final Key INVERTER_NAME = CommonKeys.name("inverter");
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
          .usual("1 % of continuous_power", "measure it, it runs all year; " + CommonKeys.PRACTICE)
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
          .usual("92 %", CommonKeys.PRACTICE)
          .into("efficiencies");
  static final Key LOWEST_INPUT_VOLTAGE =
      Key.measure("lowest_input_voltage", "Lowest bank voltage it works at.", Dimension.VOLTAGE)
          .within(1, 2000);
  static final Key HIGHEST_INPUT_VOLTAGE =
      Key.measure("highest_input_voltage", "Highest bank voltage it bears.", Dimension.VOLTAGE)
          .within(1, 2000);
  static final Key BUILT_IN_CONTROLLER =
      Key.block(
          "controller", "The charge controller inside it, if it has one.", ArrayKeys.CONTROLLER);
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
          .usual("90 %", CommonKeys.PRACTICE)
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
          ArrayKeys.FROM,
          INVERTER_NAME,
          ArrayKeys.NOTE,
          ArrayKeys.COUNT,
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

  static final Key GENERATOR_NAME = CommonKeys.name("generator");
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
      CommonKeys.PRACTICE
          + "; makers' sheets differ, from sea level to 1500 m and from 25 °C to 40 °C";
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
              "It starts below this charge, of the usable window; charge that cold has locked counts. It also starts when the bank cannot give what the house lacks.",
              Dimension.SHARE)
          .within(0, 0.99)
          .usual("20 %", CommonKeys.PRACTICE)
          .into("startBelowShare");
  static final Key STOP_ABOVE =
      Key.measure(
              "stop_above",
              "It stops when the charge has reached this, of the usable window, and the bank can give"
                  + " what the house lacks.",
              Dimension.SHARE)
          .within(0.01, 1)
          .usual("80 %", "the last part fills slowly; " + CommonKeys.PRACTICE)
          .into("stopAboveShare");
  static final Key MINIMUM_RUN =
      Key.measure(
              "minimum_run",
              "Shortest run, in whole hours; quiet hours, or nobody at home with policy: manual, end it"
                  + " sooner.",
              Dimension.DURATION)
          .within(0, 24)
          .usual("2 h", "short runs wear an engine; " + CommonKeys.PRACTICE)
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
          ArrayKeys.FROM,
          GENERATOR_NAME,
          ArrayKeys.NOTE,
          ArrayKeys.COUNT,
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
              ApplianceKeys.Supply.values())
          .usual("dc", "small turbines mostly charge the bank; " + CommonKeys.PRACTICE)
          .into("isDirectCurrent");
  static final Key SOURCE_NAME = CommonKeys.name("other source");
  static final Shape OTHER_SOURCE =
      Shape.shortened(
          "other_source",
          "A second source, such as a small wind or water turbine, as hourly watts. Hours without a"
              + " value count as nothing; a log of one year repeats.",
          SOURCE_FILE,
          SOURCE_BUS,
          SOURCE_NAME);
}
