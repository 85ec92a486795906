package greyspell.outcome;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

class WintersPublishedTest implements PublishedChecks {
  private static final String ROOM = "outcome";
  private static final String NEWCOMBE =
      "Newcombe 1998, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17, table I, exact method (from memory)";
  private static final String THREE =
      "Hanley and Lippman-Hand 1983, If nothing goes wrong, is everything all right?, JAMA 249: 1 - 0.05^(1/n) (from memory)";
  private static final String CHOW =
      "Chow, Maidment and Mays 1988, Applied Hydrology, example 12.2.1, largest 10-minute rainfall of each year, Chicago 1913-1947 (from memory)";
  private static final String LMOMENTS =
      "manual page of a statistics package on the Gumbel distribution and its L-moments (opened)";
  private static final double HALF_FOURTH = 0.00005;
  private static final double HALF_SECOND = 0.005;

  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    interval(checks, 81, 263, 0.2527, 0.3676);
    interval(checks, 15, 148, 0.0578, 0.1617);
    interval(checks, 1, 29, 0.0009, 0.1776);
    checks.add(
        new PublishedCheck(
            ROOM,
            THREE,
            "most that 20 winters without a shortfall allow of shortfalls a winter, one-sided 95 %",
            "1",
            0.139,
            0.0005,
            () -> 1.0 - Odds.of(20, 20).lowShare()));
    var chicago = new ExtremeTail.Shape(0.569, 0.138, 0.0, ExtremeTail.GUMBEL_SKEW);
    double[][] depths = {{5.0, 0.78}, {10.0, 0.88}, {50.0, 1.11}};
    for (double[] at : depths) {
      checks.add(
          new PublishedCheck(
              ROOM,
              CHOW,
              "Gumbel with u 0.569 in and a 0.138 in, once in " + (int) at[0] + " years",
              "in",
              at[1],
              HALF_SECOND,
              () -> chicago.at(ExtremeTail.reduced(at[0]))));
    }
    checks.add(
        new PublishedCheck(
            ROOM,
            LMOMENTS,
            "L-skewness of the Gumbel distribution, of 20,000 evenly spread quantiles",
            "1",
            0.1699,
            HALF_FOURTH,
            () -> ExtremeTail.Shape.of(quantiles(0.0, 1.0), true).skew()));
    checks.add(
        new PublishedCheck(
            ROOM,
            LMOMENTS,
            "scale a = l2 / ln 2 of a Gumbel distribution with u 40 and a 10, of 20,000 evenly spread quantiles",
            "1",
            10.0,
            HALF_SECOND,
            () -> ExtremeTail.Shape.of(quantiles(40.0, 10.0), true).scale()));
    return checks;
  }

  private static void interval(List<PublishedCheck> checks, int k, int n, double low, double high) {
    String what = k + " of " + n + ", exact 95 % interval, ";
    checks.add(
        new PublishedCheck(
            ROOM,
            NEWCOMBE,
            what + "lower end",
            "1",
            low,
            HALF_FOURTH,
            () -> Odds.of(k, n).lowShare()));
    checks.add(
        new PublishedCheck(
            ROOM,
            NEWCOMBE,
            what + "upper end",
            "1",
            high,
            HALF_FOURTH,
            () -> Odds.of(k, n).highShare()));
  }

  private static double[] quantiles(double location, double scale) {
    var values = new double[20_000];
    for (int k = 0; k < values.length; k++) {
      values[k] = location - scale * Math.log(-Math.log((k + 0.5) / values.length));
    }
    return values;
  }
}
