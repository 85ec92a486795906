package greyspell.cause.log;

import java.util.Arrays;

/**
 * Hours in which the house got nothing, by the load itself: a meter that has drifted shows an empty
 * bank as a fifth full. Below the charge shown then, and a little above, nothing is read of load
 * and bank, back to the last full bank and on to the next.
 *
 * <pre>
 * out   load seen below a tenth of its median, expected above a quarter of its own
 * </pre>
 *
 * Own rule, no source. Held by LogStudyTest.
 *
 * @param hours that were out
 * @param highestChargeShare shown in any of them; NaN if there were none
 */
public record LightsOut(int hours, double highestChargeShare) {
  private static final double OUT_SHARE = 0.1;
  private static final double EXPECTED_SHARE = 0.25;
  private static final double FULL_SHARE = 0.99;

  /** Raises {@code emptyShare} where loads were out above it. */
  static LightsOut raise(Weeks.Columns of, double[] emptyShare) {
    double seenMedian = median(of.loadWh);
    double expectedMedian = median(of.expectedLoadWh);
    int out = 0;
    double highest = Double.NaN;
    for (int h = 0; h < emptyShare.length; h++) {
      boolean isOut =
          of.loadWh[h] < OUT_SHARE * seenMedian
              && of.expectedLoadWh[h] > EXPECTED_SHARE * expectedMedian
              && !(of.solarWh[h] > seenMedian);
      double share = Math.max(of.chargeShare[h], of.chargeShare[h + 1]);
      if (isOut && share < 0.6) {
        out++;
        highest = Double.isNaN(highest) ? share : Math.max(highest, share);
        spread(of, emptyShare, h, share);
      }
    }
    return new LightsOut(out, highest);
  }

  private static void spread(Weeks.Columns of, double[] emptyShare, int hour, double share) {
    for (int h = hour; h >= 0 && !(of.chargeShare[h] > FULL_SHARE); h--) {
      if (h < hour && emptyShare[h] >= share) {
        break;
      }
      emptyShare[h] = Math.max(emptyShare[h], share);
    }
    for (int h = hour + 1; h < emptyShare.length && !(of.chargeShare[h] > FULL_SHARE); h++) {
      if (emptyShare[h] >= share) {
        break;
      }
      emptyShare[h] = share;
    }
  }

  private static double median(double[] values) {
    double[] known = Arrays.stream(values).filter(v -> v > 0.0).sorted().toArray();
    return known.length == 0 ? Double.NaN : known[known.length / 2];
  }
}
