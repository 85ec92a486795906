package greyspell.sizing;

import greyspell.calendar.Monthly;

/**
 * The hand method of the standards for stand-alone systems, step by step: the bank by days without
 * sun, the array by the month in which it brings least for what is asked.
 *
 * <pre>
 * Q        = need / V                         of the month of greatest need          Ah a day
 * carried  = Q D                              unadjusted                             Ah
 * capacity = max(Q D / depth, Q / daily depth, Q D / end of life) cold (1 + margin)  Ah
 * packs    = ⌈ capacity / of one pack ⌉
 * ratio(m) = array(m) / need(m)               array-to-load ratio of a month
 * modules  = wanted ratio / (ratio of one module in its lowest month)
 *
 * D           days of battery reserve
 * depth       deepest discharge that is allowed, of the nominal capacity
 * daily depth the same for a usual day
 * end of life capacity that is left when the bank is given up, of the nominal
 * cold        factor for the coldest month, 1 or above
 * need, array on the bus, of a mean day of the month
 * </pre>
 *
 * Sources: definitions of array-to-load ratio and days of battery reserve from IEEE 1013-2000, read
 * on an opened page; the order of the steps from the contents of IEEE 1013-2007; the formula of the
 * capacity from memory of its worksheet and of AS/NZS 4509.2, not compared with a copy. Own choice:
 * energy on the bus in place of peak sun hours times a current, so that the losses are those of the
 * home. Rate: the sheet's capacity is taken as it stands where the bank is emptied no faster than
 * in {@value #SLOW_H} hours (common practice, no source).
 *
 * @param asked what it starts from
 * @param loadMonth of greatest need
 * @param arrayMonth of the lowest array-to-load ratio
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
    double capacityAh,
    int packs,
    double emptiedInH,
    int arrayMonth,
    double nowRatio,
    double modules) {
  /** Capacity on a sheet holds for slower than this; common practice, no source. */
  public static final double SLOW_H = 20.0;

  private static final double ROUNDING = 1e-9;

  /**
   * What the hand method starts from.
   *
   * @param needWhPerDay on the bus, mean day of each month
   * @param arrayWhPerDay on the bus if all of it were taken, mean day of each month
   * @param modules that bring it
   * @param wantedRatio array-to-load
   * @param reserveDays days of battery reserve
   * @param dailyDepthShare for a usual day
   * @param coldFactor on the capacity, 1 or above
   * @param marginShare on the capacity
   */
  public record Asked(
      double bankV,
      double packWh,
      Monthly needWhPerDay,
      Monthly arrayWhPerDay,
      int modules,
      double reserveDays,
      double depthShare,
      double dailyDepthShare,
      double endOfLifeShare,
      double coldFactor,
      double marginShare,
      double wantedRatio) {}

  /** Works through the steps. */
  public static HandMethod of(Asked in) {
    int loadMonth = 1, arrayMonth = 1;
    for (int m = 2; m <= 12; m++) {
      loadMonth = in.needWhPerDay().in(m) > in.needWhPerDay().in(loadMonth) ? m : loadMonth;
      arrayMonth = ratio(in, m) < ratio(in, arrayMonth) ? m : arrayMonth;
    }
    double loadAh = in.needWhPerDay().in(loadMonth) / in.bankV();
    double carriedAh = loadAh * in.reserveDays();
    double byDepthAh = carriedAh / in.depthShare();
    double byDailyAh = loadAh / in.dailyDepthShare();
    double byEndAh = carriedAh / in.endOfLifeShare();
    double mostAh = Math.max(byDepthAh, Math.max(byDailyAh, byEndAh));
    double coldAh = mostAh * in.coldFactor();
    double capacityAh = coldAh * (1.0 + in.marginShare());
    double nowRatio = ratio(in, arrayMonth);
    return new HandMethod(
        in,
        loadMonth,
        loadAh,
        carriedAh,
        byDepthAh,
        byDailyAh,
        byEndAh,
        coldAh,
        capacityAh,
        Math.max(1, (int) Math.ceil(capacityAh * in.bankV() / in.packWh() - ROUNDING)),
        capacityAh / (loadAh / 24.0),
        arrayMonth,
        nowRatio,
        in.wantedRatio() * in.modules() / nowRatio);
  }

  private static double ratio(Asked in, int month) {
    return in.arrayWhPerDay().in(month) / in.needWhPerDay().in(month);
  }

  /** Whether the capacity on the sheet may be taken as it stands. */
  public boolean isSlow() {
    return emptiedInH >= SLOW_H;
  }

  /** Which of the three rules asks for most: depth, daily depth, end of life. */
  public String ruling() {
    if (byDepthAh >= byDailyDepthAh && byDepthAh >= byEndOfLifeAh) {
      return "depth of discharge";
    }
    return byDailyDepthAh >= byEndOfLifeAh ? "daily depth of discharge" : "end of life";
  }
}
