package greyspell.scenario;

import greyspell.quantity.Dimension;
import greyspell.storage.CellDefaults;
import greyspell.storage.Enclosure;

/**
 * The part of {@link Vocabulary} that tells how a bank really behaves; {@code model: detailed} asks
 * for it.
 */
final class BankKeys {
  private static final String BY_CHEMISTRY = "by chemistry";

  private BankKeys() {}

  /** How a bank is reckoned. */
  enum Model {
    CONSTANT,
    DETAILED
  }

  /** What its losses follow. */
  enum Losses {
    STATED,
    RESISTANCE
  }

  // ---- battery: of its data sheet
  // -----------------------------------------------------------------

  static final Key FULL_CHARGE_FROM =
      Key.measure(
              "full_charge_from",
              "From here up it takes its full charge limit; between coldest_charge and this a"
                  + " share that rises along a straight line. Left out: the full limit at once.",
              Dimension.TEMPERATURE)
          .within(-60, 60)
          .into("fullChargeFromC");
  static final Key VOLTAGE_BY_CHARGE =
      Key.curve(
              "voltage_by_charge",
              "Of one, rested and without load; points [charge, voltage] (model: detailed).",
              Dimension.SHARE,
              Dimension.VOLTAGE)
          .within(0.5, 2000)
          .usual(BY_CHEMISTRY, CellDefaults.VOLTAGE_WHY)
          .into("cells.voltageByCharge");
  static final Key RESISTANCE =
      Key.measure(
              "resistance",
              "Internal, of one, new, at 25 °C, as it tells over an hour (model: detailed).",
              Dimension.RESISTANCE)
          .within(0.00001, 10)
          .usual("by chemistry and size", "typical, or our own choice")
          .into("cells.resistanceOhm");
  static final Key RESISTANCE_BY_TEMPERATURE =
      Key.curve(
              "resistance_by_temperature",
              "Resistance over that at 25 °C; points [temperature, share] (model: detailed).",
              Dimension.TEMPERATURE,
              Dimension.SHARE)
          .within(0.1, 20)
          .usual(BY_CHEMISTRY, CellDefaults.FACTORS_WHY)
          .into("cells.resistanceByTemperature");
  static final Key COULOMBIC_EFFICIENCY =
      Key.measure(
              "coulombic_efficiency",
              "Charge out over charge in; tells where losses follow the resistance (model:"
                  + " detailed).",
              Dimension.SHARE)
          .within(0.5, 1)
          .usual(BY_CHEMISTRY, CellDefaults.COULOMBIC_WHY)
          .into("cells.coulombicEfficiency");
  static final Key TAPER_FROM =
      Key.measure(
              "taper_from",
              "Above this charge it accepts less and less (model: detailed).",
              Dimension.SHARE)
          .within(0, 1)
          .usual(BY_CHEMISTRY, CellDefaults.TAPER_WHY)
          .into("cells.taperFromShare");
  static final Key TAPER_TO =
      Key.measure(
              "taper_to",
              "What it still accepts when full, as a share of its charge limit (model: detailed).",
              Dimension.SHARE)
          .within(0.01, 1)
          .usual("5 %", CellDefaults.TAPER_WHY)
          .into("cells.taperTopShare");
  static final Key CAPACITY_BY_HOURS =
      Key.curve(
              "capacity_by_hours",
              "Of one: what it gives when emptied evenly in so many hours; points [hours, Ah]."
                  + " Two or three of them fit its two tanks (lead-acid, model: detailed).",
              Dimension.DURATION,
              Dimension.CHARGE)
          .within(0.1, 100_000)
          .usual("its capacity at 20 h", CellDefaults.TANKS_WHY)
          .into("tanks.tanksWh");
  static final Key QUICK_SHARE =
      Key.measure(
              "quick_share",
              "Share of the charge that is at hand at once, the c of the two tanks; goes with"
                  + " exchange_rate (lead-acid, model: detailed).",
              Dimension.SHARE)
          .within(0.02, 1)
          .usual("from capacity_by_hours, else by chemistry", CellDefaults.TANKS_WHY)
          .into("tanks.availableShare");
  static final Key EXCHANGE_RATE =
      Key.measure(
              "exchange_rate",
              "How fast the rest follows, in parts an hour: the k of the exponential, not that of"
                  + " the valve (lead-acid, model: detailed).",
              Dimension.NUMBER)
          .within(0.001, 50)
          .usual("from capacity_by_hours, else by chemistry", CellDefaults.TANKS_WHY)
          .into("tanks.exchangePerH");
  static final Key CYCLE_LIFE =
      Key.curve(
              "cycle_life",
              "Cycles until worn; points [depth, cycles].",
              Dimension.SHARE,
              Dimension.NUMBER)
          .within(1, 1_000_000)
          .usual(BY_CHEMISTRY, "guidance, from memory")
          .into("life.cycleLife");
  static final Key CYCLE_LIFE_TO =
      Key.measure("cycle_life_to", "Capacity left where cycle_life calls it worn.", Dimension.SHARE)
          .within(0.3, 0.95)
          .usual("80 %", CellDefaults.END_WHY)
          .into("life.cycleLifeToShare");
  static final Key CALENDAR_LIFE =
      Key.measure(
              "calendar_life",
              "Time until end_of_life at rest at 25 °C; lithium half charged, lead-acid full.",
              Dimension.DURATION)
          .within(8766, 438_300)
          .usual(BY_CHEMISTRY, "guidance, from memory or our own choice")
          .into("life.calendarLifeH");

  // ---- bank -----------------------------------------------------------------------------------

  static final Key MODEL =
      Key.word(
              "model",
              "constant: one efficiency in and one out. detailed: voltage and resistance, falling"
                  + " acceptance near full, two tanks if it is lead-acid.",
              Model.values())
          .usual("constant", "");
  static final Key LOSSES =
      Key.word(
              "losses",
              "What losses follow: the efficiencies that are stated, or the resistance (model:"
                  + " detailed).",
              Losses.values())
          .usual("stated if the battery states an efficiency, else resistance", "what is known")
          .into("cells.isLossStated");
  static final Key HEALTH =
      Key.measure(
              "health",
              "Capacity now over that when new; resistance grows as one over its square.",
              Dimension.SHARE)
          .within(0.1, 1.2)
          .usual("100 %", "")
          .into("healthShare");
  static final Key END_OF_LIFE =
      Key.measure("end_of_life", "Health at which it is replaced.", Dimension.SHARE)
          .within(0.3, 0.95)
          .usual("80 %", CellDefaults.END_WHY)
          .into("life.endOfLifeShare");
  static final Key FULL_CHARGE_EVERY =
      Key.measure(
              "full_charge_every",
              "Longest time that it should go without a full charge.",
              Dimension.DURATION)
          .within(12, 8766)
          .usual("by chemistry", "14 days if it is lead-acid; " + CommonKeys.PRACTICE)
          .into("life.fullChargeEveryH");
  static final Key SERVICE_YEARS =
      Key.whole("service_years", "Over how many years its capacity is followed.")
          .within(1, 60)
          .into("life.serviceYears");

  // ---- enclosure ------------------------------------------------------------------------------

  static final Key DEPTH =
      Key.measure("depth", "Of the bank's middle below the surface (ground).", Dimension.LENGTH)
          .within(0, 30)
          .usual("1.5 m", "a root cellar; our own choice")
          .into("depthM");
  static final Key SOIL =
      Key.word("soil", "What the ground is (ground).", Enclosure.Soil.values())
          .usual("damp", "our own choice; diffusivity typical, from memory")
          .into("soil");
  static final Key MASS =
      Key.measure(
              "mass",
              "Of the batteries and what warms with them; with heat_loss it takes the place of lag"
                  + " (outdoors and heated).",
              Dimension.MASS)
          .within(0.5, 100_000)
          .into("lagH");
  static final Key SPECIFIC_HEAT =
      Key.measure("specific_heat", "Goes with mass.", Dimension.SPECIFIC_HEAT)
          .within(100, 5000)
          .usual(BY_CHEMISTRY, "a whole battery; typical, from memory")
          .into("lagH");
}
