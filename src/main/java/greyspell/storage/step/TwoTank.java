package greyspell.storage.step;

import greyspell.quantity.Check;

/**
 * A battery as two tanks: charge that is at hand, and charge that has to flow to it first. A fast
 * draw empties the first tank while the second is still full; rest brings some of it back.
 *
 * <pre>
 * dq1/dt = -I - kv (h1 - h2)      h1 = q1 / c            kv = k c (1 - c)
 * dq2/dt =      kv (h1 - h2)      h2 = q2 / (1 - c)
 *
 * constant draw for a time t, E = exp(-k t), q0 = q1 + q2, D = [1 - E + c (k t - 1 + E)] / k:
 * q1(t)       = q1 E + q0 c (1 - E) - I D          q2(t) = q0 - I t - q1(t)
 * most out    I = [q1 E + q0 c (1 - E)] / D                        empties the first tank
 * most in    -I = [c qmax - q1 E - q0 c (1 - E)] / D               fills the first tank
 *
 * q1   at hand                         Wh      0 .. c qmax
 * q2   bound                           Wh      0 .. (1 - c) qmax
 * qmax both tanks full                 Wh
 * c    width of the first tank         1       above 0 to 1; 1 is one tank
 * k    rate constant                   1/h     above 0
 * kv   conductance between the tanks   1/h     k c (1 - c)
 * I    draw, negative when charging    W
 * t    length of the step              h
 * </pre>
 *
 * Papers print either k (as here, the constant of the exponential) or kv, the valve between the
 * tanks: {@link #ofValve} takes the latter. Under a constant draw the first tank has no minimum
 * inside the step, so a step that ends within bounds stays within them. The source counts Ah; here
 * the same equations count Wh in the cells. Not for lithium, whose tanks would be nearly one.
 *
 * <p>Source: Manwell, McGowan (1993), Lead acid battery storage model for hybrid energy systems,
 * Solar Energy 50 (from memory). Held by TwoTankTest and StoragePublishedTest.
 *
 * @param availableShare c
 * @param exchangePerH k
 * @param keptShare E of the step
 * @param drawFactor D over the step's length: what an energy drawn evenly in the step takes from
 *     the first tank
 */
public record TwoTank(
    double availableShare, double exchangePerH, double keptShare, double drawFactor) {
  private static final double ONE_HOUR = 1.0;

  public TwoTank {
    Check.within("availableShare", availableShare, Double.MIN_VALUE, 1.0);
    Check.positive("exchangePerH", exchangePerH);
    Check.share("keptShare", keptShare);
    Check.positive("drawFactor", drawFactor);
  }

  /** For steps of one hour. */
  public static TwoTank of(double availableShare, double exchangePerH) {
    return of(availableShare, exchangePerH, ONE_HOUR);
  }

  /** For steps of this length; energies are then those of a step. */
  public static TwoTank of(double availableShare, double exchangePerH, double stepH) {
    double kt = exchangePerH * stepH;
    double gone = -Math.expm1(-kt);
    // the difference of kt and gone is lost to rounding where both are small
    double beyond = kt < 1e-4 ? kt * kt * (0.5 - kt / 6.0) : kt - gone;
    return new TwoTank(
        availableShare, exchangePerH, 1.0 - gone, (gone + availableShare * beyond) / kt);
  }

  /** From the valve between the tanks, as some papers print it. */
  public static TwoTank ofValve(double availableShare, double valvePerH, double stepH) {
    return of(availableShare, valvePerH / (availableShare * (1.0 - availableShare)), stepH);
  }

  /** First tank after a step of rest. */
  private double restedWh(double availableWh, double boundWh) {
    return availableWh * keptShare + (availableWh + boundWh) * availableShare * (1.0 - keptShare);
  }

  /** Most that can be drawn evenly from the cells in a step. */
  public double mostOutWh(double availableWh, double boundWh) {
    double mostWh = restedWh(availableWh, boundWh) / drawFactor;
    return mostWh > 0.0 ? mostWh : 0.0;
  }

  /** Most that the cells take in evenly in a step. */
  public double mostInWh(double availableWh, double boundWh, double capacityWh) {
    double mostWh = (availableShare * capacityWh - restedWh(availableWh, boundWh)) / drawFactor;
    return mostWh > 0.0 ? mostWh : 0.0;
  }

  /**
   * First tank after a step; the second holds the rest of {@code availableWh + boundWh - drawWh}.
   *
   * @param drawWh from the cells, negative when charging
   */
  public double availableAfterWh(double availableWh, double boundWh, double drawWh) {
    return restedWh(availableWh, boundWh) - drawWh * drawFactor;
  }
}
