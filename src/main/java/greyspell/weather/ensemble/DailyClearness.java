package greyspell.weather.ensemble;

import greyspell.quantity.Check;

/**
 * How often the days of a month are how clear, from the month's mean alone: about as many clear
 * days at one place as at another, if their months are equally bright.
 *
 * <pre>
 * F(K)  = (e^(g Kmin) - e^(g K)) / (e^(g Kmin) - e^(g Kmax))                           share of days no clearer than K
 * K(F)  = ln[(1 - F) e^(g Kmin) + F e^(g Kmax)] / g                                    its inverse
 * Kbar  = [(Kmin - 1/g) e^(g Kmin) - (Kmax - 1/g) e^(g Kmax)] / (e^(g Kmin) - e^(g Kmax))   solved for g
 * Kmax  = 0.6313 + 0.267 Kbar - 11.9 (Kbar - 0.75)^8
 *
 * K     clearness of a day: sunshine on level ground over that above the air   1   Kmin .. Kmax
 * Kbar  mean of the month     1   0.08 .. 0.75           Kmin  of the darkest day   1   0.05
 * g     of the exponential, 0 where all clearnesses are equally frequent        1   about -35 .. 14
 * </pre>
 *
 * The fit was made on months of 0.3 to 0.7. Duller ones are let in down to 0.08, because winters
 * are: ten measured years at a lowland station (Kbar 0.27 in December) have a standard deviation of
 * 0.156 against 0.166 here. Typical-year files are steadier than this: their months were picked to
 * be usual ones.
 *
 * <p>Source: Bendt, Collares-Pereira and Rabl (1981) for F; Hollands and Huget (1983) for Kmax; g
 * is solved exactly and not by Herzog's (1985) approximation. Formulas seen second-hand. Held by
 * SynthesisPublishedTest.
 */
final class DailyClearness {
  static final double LOWEST = 0.05;
  static final double LEAST_MEAN = 0.08;
  static final double MOST_MEAN = 0.75;
  private static final double STEEPEST = 60.0;
  private static final double FLAT = 1e-7;

  private final double highest;
  private final double steepness;

  DailyClearness(double mean) {
    Check.within("mean clearness", mean, LEAST_MEAN, MOST_MEAN);
    highest = highest(mean);
    double low = -STEEPEST;
    double high = STEEPEST;
    for (int round = 0; round < 80; round++) {
      double middle = 0.5 * (low + high);
      if (mean(middle) < mean) {
        low = middle;
      } else {
        high = middle;
      }
    }
    steepness = 0.5 * (low + high);
  }

  static double highest(double mean) {
    double off = mean - 0.75;
    double off4 = off * off * off * off;
    return 0.6313 + 0.267 * mean - 11.9 * off4 * off4;
  }

  /** Rearranged so that nothing overflows: the exponentials stand in their ratio only. */
  private double mean(double g) {
    double width = highest - LOWEST;
    double x = g * width;
    if (Math.abs(x) < FLAT) {
      return LOWEST + 0.5 * width;
    }
    return LOWEST + width * (1.0 / -StrictMath.expm1(-x) - 1.0 / x);
  }

  /** g of the equation block. */
  double steepness() {
    return steepness;
  }

  double highest() {
    return highest;
  }

  /** Clearness that this share of the days does not exceed. */
  double at(double share) {
    double x = steepness * (highest - LOWEST);
    if (Math.abs(x) < FLAT) {
      return LOWEST + share * (highest - LOWEST);
    }
    return LOWEST + StrictMath.log1p(share * StrictMath.expm1(x)) / steepness;
  }

  /** Share of the days no clearer than this. */
  double share(double clearness) {
    double held = Math.max(LOWEST, Math.min(highest, clearness));
    double x = steepness * (highest - LOWEST);
    if (Math.abs(x) < FLAT) {
      return (held - LOWEST) / (highest - LOWEST);
    }
    return StrictMath.expm1(steepness * (held - LOWEST)) / StrictMath.expm1(x);
  }
}
