package greyspell.cause;

import java.time.LocalDate;

/**
 * One day of a spell, from the books. Energies on the bus unless named otherwise.
 *
 * @param fromHour its first hour in the ledger
 * @param solarBusWh what the panels could have put on the bus
 * @param otherWh what a second source could have
 * @param generatorWh from the generator, at its own terminals
 * @param needWh what the house needed on the bus: loads, inverter, always-on draw
 * @param askedWh asked for by the appliances themselves
 * @param unmetWh of it not served, in hours of this spell: two may share a day
 * @param letGoWh let go by rule, not among the unserved
 * @param unmetHours hours of this spell in which something was not served
 * @param endChargeShare of the usable bank at the day's end
 * @param lowestChargeShare of the usable bank at any hour's end
 */
public record SpellDay(
    int fromHour,
    LocalDate date,
    double solarBusWh,
    double otherWh,
    double generatorWh,
    double needWh,
    double askedWh,
    double unmetWh,
    double letGoWh,
    int unmetHours,
    double endChargeShare,
    double lowestChargeShare) {}
