package greyspell.cause.log;

/**
 * Hours of the day in which the panels fall short when the sun shines, and do not when it is grey.
 *
 * @param fromHour 0 to 23, standard time
 * @param toHour 1 to 24, where it ends
 * @param lostShare of the light that comes straight from the sun
 * @param clearFactor seen over expected on clear days in these hours
 * @param clearHours how many such hours there were
 */
public record Shade(
    int fromHour, int toHour, Estimate lostShare, double clearFactor, int clearHours) {}
