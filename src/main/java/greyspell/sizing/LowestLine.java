package greyspell.sizing;

import java.util.ArrayList;
import java.util.List;

/**
 * Which of some rising straight lines is lowest from 0 on: what costs least while a price is not
 * known.
 *
 * <pre>
 * cost(i, x) = at0(i) + slope(i) x     x from 0 on
 * </pre>
 *
 * @param line that is lowest in this range
 * @param upToCost where the next one takes over; infinite for the last
 */
public record LowestLine(int line, double upToCost) {
  /**
   * The ranges from 0 on.
   *
   * @param at0 of each line; one at least
   * @param slope of each line, 0 or above
   */
  public static List<LowestLine> of(double[] at0, double[] slope) {
    int now = 0;
    for (int i = 1; i < at0.length; i++) {
      boolean isLower = at0[i] < at0[now] || (at0[i] == at0[now] && slope[i] < slope[now]);
      now = isLower ? i : now;
    }
    var ranges = new ArrayList<LowestLine>();
    for (int next = after(now, at0, slope); next >= 0; next = after(now, at0, slope)) {
      ranges.add(new LowestLine(now, crossing(now, next, at0, slope)));
      now = next;
    }
    ranges.add(new LowestLine(now, Double.POSITIVE_INFINITY));
    return ranges;
  }

  /** The flatter line that is met first, of several the flattest; -1 if none is flatter. */
  private static int after(int now, double[] at0, double[] slope) {
    int next = -1;
    for (int i = 0; i < at0.length; i++) {
      if (slope[i] < slope[now]) {
        double here = crossing(now, i, at0, slope);
        double best = next < 0 ? Double.POSITIVE_INFINITY : crossing(now, next, at0, slope);
        next = here < best || (here == best && slope[i] < slope[next]) ? i : next;
      }
    }
    return next;
  }

  private static double crossing(int steep, int flat, double[] at0, double[] slope) {
    return (at0[flat] - at0[steep]) / (slope[steep] - slope[flat]);
  }
}
