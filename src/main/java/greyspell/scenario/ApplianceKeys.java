package greyspell.scenario;

import greyspell.load.Evidence;
import greyspell.load.Priority;
import greyspell.quantity.Dimension;

/**
 * Keys of appliances, a log, and the loads that they make. The part of {@link Vocabulary} about
 * them.
 */
final class ApplianceKeys {
  private ApplianceKeys() {}

  /** Which current a load takes. */
  enum Supply {
    AC,
    DC
  }

  static final Key APPLIANCE_NAME = CommonKeys.name("appliance");
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
          ArrayKeys.FROM,
          APPLIANCE_NAME,
          ArrayKeys.NOTE,
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
}
