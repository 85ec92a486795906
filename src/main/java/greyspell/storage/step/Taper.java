package greyspell.storage.step;

import greyspell.quantity.Check;

/**
 * Charge acceptance that falls near full: the last part of a charge takes long, whatever the sun
 * offers.
 *
 * <pre>
 * ds/dt = eta min(P, L a(s)) / C
 * a(s)  = 1                                        s up to s0
 * a(s)  = 1 - (1 - e) (s - s0) / (1 - s0)          s above s0
 *
 * within the falling part a(t) = a(0) exp(-g r t),  r = eta L / C,  g = (1 - e) / (1 - s0)
 * from s0 to the top it takes  ln(1 / e) / (g r)  hours
 *
 * s    charge over all that the cells hold       1     0 .. 1
 * s0   from where acceptance falls               1     0 .. 1; 1 is no taper
 * e    acceptance left at s = 1                  1     above 0 to 1
 * P    offered                                   W
 * L    charging limit                            W
 * C    all that the cells hold                   Wh
 * eta  bus to cells                              1
 * </pre>
 *
 * Stands for the constant-voltage stage of a charger, whose current falls by itself. The shape is
 * common practice, no source; nothing is said of temperature or age. The values are exact for the
 * equation within an hour of constant offer. Held by TaperTest.
 *
 * @param fromShare s0
 * @param topShare e
 * @param fullShare where charging ends; up to 1
 */
public record Taper(double fromShare, double topShare, double fullShare) {
  public Taper {
    Check.share("fromShare", fromShare);
    Check.within("topShare", topShare, 1e-6, 1.0);
    Check.within("fullShare", fullShare, Double.MIN_VALUE, 1.0);
  }

  /** Share of the charging limit that is accepted at this charge. */
  public double acceptedShare(double chargeShare) {
    if (chargeShare <= fromShare || fromShare >= 1.0) {
      return 1.0;
    }
    double s = chargeShare < 1.0 ? chargeShare : 1.0;
    return 1.0 - (1.0 - topShare) * (s - fromShare) / (1.0 - fromShare);
  }

  /**
   * Most that an hour can take from the bus; up to {@code fullShare}.
   *
   * @param chargeShare at the start of the hour, of all that the cells hold
   * @param contentWh all that the cells hold
   * @param mostInWh charging limit at the bus
   */
  public double mostInWh(
      double chargeShare, double contentWh, double mostInWh, double chargeEfficiency) {
    return acceptedWh(mostInWh, chargeShare, contentWh, mostInWh, chargeEfficiency);
  }

  /**
   * What an hour takes of an even offer at the bus. Less than the smaller of offer and {@link
   * #mostInWh} where the offer lasts into the falling part.
   */
  public double acceptedWh(
      double offeredWh,
      double chargeShare,
      double contentWh,
      double mostInWh,
      double chargeEfficiency) {
    double offerWh = offeredWh < mostInWh ? offeredWh : mostInWh;
    if (!(chargeShare < fullShare) || !(offerWh > 0.0)) {
      return 0.0;
    }
    double limitPerH = mostInWh * chargeEfficiency / contentWh;
    double offerPerH = offerWh * chargeEfficiency / contentWh;
    double slope = fromShare < 1.0 ? (1.0 - topShare) / (1.0 - fromShare) : 0.0;
    // the charge at which the falling limit meets the offer
    double meetShare = 1.0;
    if (slope > 0.0) {
      meetShare = fromShare + (1.0 - offerWh / mostInWh) / slope;
      meetShare = meetShare < 1.0 ? meetShare : 1.0;
    }
    double s = chargeShare;
    double leftH = 1.0;
    if (s < meetShare) {
      double freeH = (meetShare - s) / offerPerH;
      if (freeH >= leftH) {
        s += offerPerH;
        leftH = 0.0;
      } else {
        s = meetShare;
        leftH -= freeH;
      }
    }
    if (leftH > 0.0 && slope > 0.0) {
      double accepted = 1.0 - slope * (s - fromShare);
      s += accepted * -Math.expm1(-slope * limitPerH * leftH) / slope;
    }
    if (s > fullShare) {
      s = fullShare;
    }
    return (s - chargeShare) * contentWh / chargeEfficiency;
  }
}
