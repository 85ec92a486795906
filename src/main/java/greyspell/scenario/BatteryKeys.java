package greyspell.scenario;

import greyspell.quantity.Dimension;
import greyspell.storage.BankDefaults;
import greyspell.storage.Chemistry;

/**
 * Keys of batteries, where they stand, and the bank that they make. The part of {@link Vocabulary}
 * about them.
 */
final class BatteryKeys {
  private BatteryKeys() {}

  /** Where a bank stands. */
  enum Stands {
    INDOORS,
    OUTDOORS,
    HEATED,
    GROUND
  }

  static final Key BATTERY_NAME = CommonKeys.name("battery");
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
          ArrayKeys.FROM,
          BATTERY_NAME,
          ArrayKeys.NOTE,
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
          .usual("12 h", "a heavy pack in a box; " + CommonKeys.PRACTICE)
          .into("lagH");
  static final Key AT_LEAST =
      Key.measure("at_least", "Kept this warm (heated).", Dimension.TEMPERATURE)
          .within(-30, 40)
          .usual("5 °C", CommonKeys.PRACTICE)
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
}
