package greyspell.power;

import greyspell.power.InverterSpec.EfficiencyAt;
import greyspell.power.step.InverterLimits;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How much an inverter loses at any load.
 *
 * <pre>
 * eta = p / (p + ps + v p + r p²)
 * fit:  (1/eta - 1) - ps / p = v + r p         at each point of the data sheet
 *
 * p    AC power over continuous power          1      0 .. 1
 * ps   no-load loss over continuous power      1      known: the stated standby
 * v    linear loss (voltage drops)             1      0 or more
 * r    quadratic loss (resistances)            1      0 or more
 * </pre>
 *
 * One point gives v, two give v and r, three or more the least squares of the right-hand side, with
 * v and r not negative. The no-load part is booked apart every hour, so the hourly loop gets v and
 * r alone. Where the points cannot be met with the sheet's own no-load draw, a caution says by how
 * much: the sheet contradicts itself. Where a home states less standby than the sheet (switched off
 * by hand), v and r take the rest of the loss and miss the points by some per cent; a note says
 * which efficiencies are used. Nothing is changed in silence. Above p = 1 the inverter serves
 * nothing.
 *
 * <p>Source: Schmidt, Sauer (1996), Wechselrichter-Wirkungsgrade, Sonnenenergie 4, 43-47 (from
 * memory). Held by PowerPublishedTest and InverterCurveTest.
 *
 * @param noLoadShare ps
 * @param linearLossShare v
 * @param quadraticLossShare r
 */
public record InverterCurve(double noLoadShare, double linearLossShare, double quadraticLossShare) {
  private static final double NOTABLE_MISS = 0.01;

  /**
   * The curve of an inverter, with what had to be said about its data sheet.
   *
   * @param cautions where the sheet contradicts itself
   * @param note which efficiencies are used where a home's own standby moves them; empty if none
   */
  public record Fit(
      InverterCurve curve, InverterLimits limits, List<String> cautions, String note) {
    public Fit {
      cautions = List.copyOf(cautions);
    }
  }

  public static Fit fit(InverterSpec inverter) {
    double ps = inverter.noLoadW() / inverter.continuousW();
    InverterCurve curve = leastSquares(ps, inverter.efficiencies());
    var limits =
        new InverterLimits(
            inverter.continuousW(), curve.linearLossShare(), curve.quadraticLossShare());
    if (!(inverter.sheetNoLoadW() > inverter.noLoadW())) {
      return new Fit(curve, limits, cautions(inverter, inverter.noLoadW(), curve), "");
    }
    InverterCurve ofSheet =
        leastSquares(inverter.sheetNoLoadW() / inverter.continuousW(), inverter.efficiencies());
    return new Fit(
        curve,
        limits,
        cautions(inverter, inverter.sheetNoLoadW(), ofSheet),
        usedNote(inverter, curve));
  }

  /** "87.2 % at 10 %, 87.3 % at 40 % of full load". */
  private static String usedNote(InverterSpec inverter, InverterCurve curve) {
    var used = new ArrayList<String>();
    for (EfficiencyAt at : inverter.efficiencies()) {
      used.add(
          Show.percent(curve.efficiency(at.loadShare())) + " at " + Show.percent(at.loadShare()));
    }
    return String.join(", ", used) + " of full load";
  }

  /**
   * Efficiency with the no-load loss in it.
   *
   * @param p AC power over continuous power, 0 to 1
   */
  public double efficiency(double p) {
    return p <= 0.0
        ? 0.0
        : p / (p + noLoadShare + linearLossShare * p + quadraticLossShare * p * p);
  }

  private static InverterCurve leastSquares(double ps, List<EfficiencyAt> points) {
    int n = points.size();
    double sumP = 0.0;
    double sumPp = 0.0;
    double sumY = 0.0;
    double sumPy = 0.0;
    for (EfficiencyAt at : points) {
      double p = at.loadShare();
      double y = 1.0 / at.efficiency() - 1.0 - ps / p;
      sumP += p;
      sumPp += p * p;
      sumY += y;
      sumPy += p * y;
    }
    double spread = n * sumPp - sumP * sumP;
    double v = sumY / n;
    double r = 0.0;
    if (spread > 1e-9 * n * sumPp) {
      r = (n * sumPy - sumP * sumY) / spread;
      v = (sumY - r * sumP) / n;
      if (r < 0.0) {
        r = 0.0;
        v = sumY / n;
      } else if (v < 0.0) {
        v = 0.0;
        r = Math.max(0.0, sumPy / sumPp);
      }
    }
    return new InverterCurve(ps, Math.max(0.0, v), r);
  }

  private static List<String> cautions(
      InverterSpec inverter, double standbyW, InverterCurve curve) {
    var cautions = new ArrayList<String>();
    for (EfficiencyAt at : inverter.efficiencies()) {
      double got = curve.efficiency(at.loadShare());
      if (Math.abs(got - at.efficiency()) > NOTABLE_MISS) {
        cautions.add(
            String.format(
                Locale.ROOT,
                "inverter %s: %.1f %% at %.0f %% load does not suit its standby of %s and its other"
                    + " points; %.1f %% is used",
                inverter.name(),
                100.0 * at.efficiency(),
                100.0 * at.loadShare(),
                Show.power(standbyW),
                100.0 * got));
      }
    }
    return cautions;
  }
}
