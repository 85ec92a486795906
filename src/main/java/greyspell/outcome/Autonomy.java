package greyspell.outcome;

import greyspell.calendar.Monthly;

/**
 * How long a full bank carries the house.
 *
 * @param darkDays days with no sun at all, at the mean need of each month
 * @param greyP10Days one start day in ten is carried for less than this, in the weather that really
 *     comes
 * @param greyP50Days the middle start day
 * @param greyP90Days nine start days in ten are carried for less than this
 * @param greyWorstDays the worst start day
 * @param greyWorstFromDay which one, counted from 0
 * @param longestD starts that are carried longer than this count as this long
 */
public record Autonomy(
    Monthly darkDays,
    double greyP10Days,
    double greyP50Days,
    double greyP90Days,
    double greyWorstDays,
    int greyWorstFromDay,
    double longestD) {
  /** A start that is carried longer counts as this long. */
  public static final double LONGEST_D = 365.0;
}
