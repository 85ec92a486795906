package greyspell.cause.log;

/**
 * Seen beside expected in one hour of the day.
 *
 * @param hour 0 to 23, standard time
 * @param clearSolarFactor seen over expected where the sun shone and nothing held it back; NaN if
 *     there were no such hours
 * @param clearHours how many
 * @param seenLoadW mean; NaN if not in the log
 * @param expectedLoadW mean in the same hours
 */
public record HourOfDay(
    int hour, double clearSolarFactor, int clearHours, double seenLoadW, double expectedLoadW) {}
