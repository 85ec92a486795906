package greyspell.sizing;

import greyspell.calendar.Monthly;
import java.util.function.DoubleUnaryOperator;

/**
 * The hand method of the standards for stand-alone systems, step by step: the bank by days without
 * sun, the array by the month in which it brings least for what is asked.
 *
 * <pre>
 * Q        = need / V                         of the month of greatest need          Ah a day
 * carried  = Q D                              unadjusted                             Ah
 * padded   = max(Q D / depth, Q / daily depth, Q D / end of life) cold (1 + margin)  Ah
 * t        = padded / I                       emptied at the greatest hour's current h
 * capacity = padded / rate(t)                                                        Ah
 * packs    = ⌈ capacity / of one pack ⌉
 * ratio(m) = (array(m) + other(m)) / need(m)  array-to-load ratio of a month
 * modules  = greatest over months of  n (wanted ratio need(m) - other(m)) / array(m)
 *
 * D           days of battery reserve
 * depth       deepest discharge that is allowed, of the nominal capacity
 * daily depth the same for a usual day
 * end of life capacity that is left when the bank is given up, of the nominal
 * cold        factor for the coldest month, 1 or above
 * I           need of the greatest hour / V                                          A
 * rate(t)     share of the sheet's capacity when emptied in t, 1 from 20 h on
 * need, array, other   on the bus, of a mean day of the month; array of n modules
 * </pre>
 *
 * Without a second source the month that asks for most modules is that of the lowest ratio. Where
 * no panels are asked for in any month, modules is 0; infinite where they bring nothing when they
 * are.
 *
 * <p>Sources: definitions of array-to-load ratio and days of battery reserve from IEEE 1013-2000,
 * read on an opened page; the order of the steps from the contents of IEEE 1013-2007; the formula
 * of the capacity from memory of its worksheet and of AS/NZS 4509.2, not compared with a copy. Own
 * choice: energy on the bus in place of peak sun hours times a current, so that the losses are
 * those of the home, and a second source beside the array. Rate: by the current of the greatest
 * hour (from memory of the worksheet of IEEE 1013); the sheet's capacity is taken as it stands
 * where the bank is emptied no faster than in 20 hours (common practice, no source).
 *
 * @param asked what it starts from
 * @param loadMonth of greatest need
 * @param withMarginAh before the rate
 * @param mostA of the greatest hour
 * @param emptiedInH at that current
 * @param rateShare of the sheet's capacity that is given then
 * @param arrayMonth that asks for most modules
 * @param nowRatio array-to-load ratio in that month, a second source with the array
 * @param packs that the capacity takes
 * @param modules that the wanted ratio takes, not rounded
 */
public record HandMethod(
    Asked asked,
    int loadMonth,
    double loadAhPerDay,
    double carriedAh,
    double byDepthAh,
    double byDailyDepthAh,
    double byEndOfLifeAh,
    double inTheColdAh,
    double withMarginAh,
    double mostA,
    double emptiedInH,
    double rateShare,
    double capacityAh,
    int packs,
    int arrayMonth,
    double nowRatio,
    double modules) {
  /** Capacity on a sheet holds for slower than this; common practice, no source. */
  public static final double SLOW_H = 20.0;

  /** The first of the rules for the capacity. */
  public static final String BY_DEPTH = "depth of discharge";

  private static final double ROUNDING = 1e-9;

  /**
   * What the hand method starts from.
   *
   * @param needWhPerDay on the bus, mean day of each month
   * @param arrayWhPerDay on the bus if all of it were taken, mean day of each month
   * @param otherWhPerDay of a second source on the bus, mean day of each month
   * @param mostNeedWh of one hour
   * @param modules that bring what the array brings
   * @param wantedRatio array-to-load
   * @param reserveDays days of battery reserve
   * @param dailyDepthShare for a usual day
   * @param coldFactor on the capacity, 1 or above
   * @param marginShare on the capacity
   * @param rateShare of the sheet's capacity that is given when emptied in so many hours, asked
   *     below {@value HandMethod#SLOW_H}
   */
  public record Asked(
      double bankV,
      double packWh,
      Monthly needWhPerDay,
      Monthly arrayWhPerDay,
      Monthly otherWhPerDay,
      double mostNeedWh,
      int modules,
      double reserveDays,
      double depthShare,
      double dailyDepthShare,
      double endOfLifeShare,
      double coldFactor,
      double marginShare,
      DoubleUnaryOperator rateShare,
      double wantedRatio) {}

  /** Works through the steps. */
  public static HandMethod of(Asked in) {
    int loadMonth = 1, arrayMonth = 1;
    for (int m = 2; m <= 12; m++) {
      loadMonth = in.needWhPerDay().in(m) > in.needWhPerDay().in(loadMonth) ? m : loadMonth;
      arrayMonth = modules(in, m) > modules(in, arrayMonth) ? m : arrayMonth;
    }
    double loadAh = in.needWhPerDay().in(loadMonth) / in.bankV();
    double carriedAh = loadAh * in.reserveDays();
    double byDepthAh = carriedAh / in.depthShare();
    double byDailyAh = loadAh / in.dailyDepthShare();
    double byEndAh = carriedAh / in.endOfLifeShare();
    double coldAh = Math.max(byDepthAh, Math.max(byDailyAh, byEndAh)) * in.coldFactor();
    double withMarginAh = coldAh * (1.0 + in.marginShare());
    double mostA = in.mostNeedWh() / in.bankV();
    double emptiedInH = withMarginAh / mostA;
    double rateShare = emptiedInH >= SLOW_H ? 1.0 : in.rateShare().applyAsDouble(emptiedInH);
    double capacityAh = withMarginAh / rateShare;
    return new HandMethod(
        in,
        loadMonth,
        loadAh,
        carriedAh,
        byDepthAh,
        byDailyAh,
        byEndAh,
        coldAh,
        withMarginAh,
        mostA,
        emptiedInH,
        rateShare,
        capacityAh,
        Math.max(1, (int) Math.ceil(capacityAh * in.bankV() / in.packWh() - ROUNDING)),
        arrayMonth,
        (in.arrayWhPerDay().in(arrayMonth) + in.otherWhPerDay().in(arrayMonth))
            / in.needWhPerDay().in(arrayMonth),
        Math.max(0.0, modules(in, arrayMonth)));
  }

  /** Below 0 where the other source alone brings more than is wanted. */
  private static double modules(Asked in, int month) {
    double askedWh = in.wantedRatio() * in.needWhPerDay().in(month) - in.otherWhPerDay().in(month);
    return in.modules() * askedWh / in.arrayWhPerDay().in(month);
  }

  /** Whether there is something beside the array in the month that counts. */
  public boolean hasOther() {
    return asked.otherWhPerDay().in(arrayMonth) > 0.0;
  }

  /** Whether the capacity on the sheet may be taken as it stands. */
  public boolean isSlow() {
    return emptiedInH >= SLOW_H;
  }

  /** Which of the three rules asks for most: depth, daily depth, end of life. */
  public String ruling() {
    if (byDepthAh >= byDailyDepthAh && byDepthAh >= byEndOfLifeAh) {
      return BY_DEPTH;
    }
    return byDailyDepthAh >= byEndOfLifeAh ? "daily depth of discharge" : "end of life";
  }
}
