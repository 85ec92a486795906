package greyspell.storage;

/**
 * What the bank's temperature forbids, hour by hour.
 *
 * <pre>
 * locked = 1 - capacity(T), held within 0 .. 1
 * charge = (T - Tc) / (Tf - Tc), held within 0 .. 1     where Tf = Tc: 0 below it, else 1
 *
 * capacity  share of the energy that can be drawn at T, see {@link CapacityCurve}
 * Tc        coldest charging temperature               °C
 * Tf        charged at the full limit from here up     °C    not below Tc
 * </pre>
 *
 * A share of the usable window is locked while it is cold and comes back with warmth; nothing is
 * lost by it. Where no second temperature is stated charging stops at once at the first. The
 * straight line between two is common practice, no source. The arrays are not written.
 */
public final class ColdLimits {
  private final double[] lockedShare;
  private final double[] chargeShare;

  private ColdLimits(int hours) {
    lockedShare = new double[hours];
    chargeShare = new double[hours];
  }

  public static ColdLimits of(BankSpec bank, double[] bankC) {
    var out = new ColdLimits(bankC.length);
    var curve = new CapacityCurve(bank.capacityByTemperature());
    double coldestChargeC = bank.coldestChargeC();
    double fullFromC = bank.fullChargeFromC();
    double spanC = fullFromC - coldestChargeC;
    for (int h = 0; h < bankC.length; h++) {
      double locked = 1.0 - curve.capacityShare(bankC[h]);
      out.lockedShare[h] = locked > 0.0 ? (locked < 1.0 ? locked : 1.0) : 0.0;
      double t = bankC[h];
      out.chargeShare[h] =
          t < coldestChargeC ? 0.0 : t >= fullFromC ? 1.0 : (t - coldestChargeC) / spanC;
    }
    return out;
  }

  /** Share of the usable window that cold keeps from being drawn. */
  public double[] lockedShare() {
    return lockedShare;
  }

  /** Share of the charge limit that the cells accept. */
  public double[] chargeShare() {
    return chargeShare;
  }
}
