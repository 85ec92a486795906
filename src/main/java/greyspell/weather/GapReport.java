package greyspell.weather;

import java.util.List;

/**
 * What was missing in a weather file and how it was filled.
 *
 * @param missingHours hours in which at least one used column had no value
 * @param longestGapHours longest unbroken run of such hours
 * @param notes one sentence a column and rule: "temperature: 3 hours by a straight line"
 */
public record GapReport(int missingHours, int longestGapHours, List<String> notes) {
  public static final GapReport NONE = new GapReport(0, 0, List.of());
}
