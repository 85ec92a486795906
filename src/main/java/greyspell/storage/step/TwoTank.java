package greyspell.storage.step;

/**
 * A bank as two tanks: one that can be drawn at once, one that is bound and flows over slowly. The
 * hour's draw is constant.
 *
 * <pre>
 * dy1/dt = -p + k' (h2 - h1)      h1 = y1 / c,  h2 = y2 / (1 - c)      k = k' / (c (1 - c))
 * dy2/dt =     - k' (h2 - h1)
 *
 * y1 after t:  y1 e + c y0 (1 - e) - p [(1 - e) (1 - c) / k + c t]      e = exp(-k t), y0 = y1 + y2
 *
 * y1, y2  available and bound charge                  Wh
 * p       draw from the cells, negative to charge     W
 * c       share of the charge that is available at rest     above 0, below 1
 * k       rate constant                               1/h, above 0
 * </pre>
 *
 * Source: J. F. Manwell and J. G. McGowan, "Lead acid battery storage model for hybrid energy
 * systems", Solar Energy 50 (1993) 399-405 (from memory), in energy instead of ampere hours.
 *
 * @param availableShare c
 * @param decay e for one hour
 * @param drawWeight (1 - e) (1 - c) / k + c: what one watt drawn for the hour takes from y1
 */
public record TwoTank(double availableShare, double decay, double drawWeight) {
  /**
   * From c and k.
   *
   * @param perHour k, not k'
   */
  public static TwoTank of(double availableShare, double perHour) {
    double decay = Math.exp(-perHour);
    return new TwoTank(
        availableShare,
        decay,
        -Math.expm1(-perHour) * (1.0 - availableShare) / perHour + availableShare);
  }

  /** Available charge after an hour at this draw, negative to charge. */
  public double availableAfterWh(double availableWh, double boundWh, double drawWh) {
    return restedWh(availableWh, boundWh) - drawWh * drawWeight;
  }

  /** Most that can be drawn from the cells in the coming hour. */
  public double mostOutWh(double availableWh, double boundWh) {
    double mostWh = restedWh(availableWh, boundWh) / drawWeight;
    return mostWh > 0.0 ? mostWh : 0.0;
  }

  /** Most that the cells of a bank of this capacity take in the coming hour. */
  public double mostInWh(double availableWh, double boundWh, double capacityWh) {
    double mostWh = (availableShare * capacityWh - restedWh(availableWh, boundWh)) / drawWeight;
    return mostWh > 0.0 ? mostWh : 0.0;
  }

  private double restedWh(double availableWh, double boundWh) {
    return availableWh * decay + availableShare * (availableWh + boundWh) * (1.0 - decay);
  }
}
