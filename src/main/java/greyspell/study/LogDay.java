package greyspell.study;

import java.time.LocalDate;

/**
 * One day of a log, seen beside expected; NaN is what is not known.
 *
 * @param seenSolarWh in the hours that the log tells
 * @param expectedSolarWh in the same hours, if all had been taken
 * @param fittedSolarWh the same with what was found
 * @param freeSeenWh seen in the hours in which nothing held the sun back
 * @param freeExpectedWh expected in these hours
 * @param freeHours how many
 * @param seenChargeShare at the end of the day
 * @param expectedChargeShare as simulated, nothing changed
 * @param fittedChargeShare as simulated with all that was found
 */
public record LogDay(
    LocalDate date,
    double seenSolarWh,
    double expectedSolarWh,
    double fittedSolarWh,
    double freeSeenWh,
    double freeExpectedWh,
    int freeHours,
    double seenLoadWh,
    double expectedLoadWh,
    double seenChargeShare,
    double expectedChargeShare,
    double fittedChargeShare) {}
