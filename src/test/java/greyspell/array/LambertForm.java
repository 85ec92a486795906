package greyspell.array;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The single-diode curve by Lambert's W, solved for current or voltage in closed form: a second way
 * for the tests.
 *
 * <pre>
 * I(V) = [Rsh (IL + I0) - V] / (Rs + Rsh) - (a / Rs) W(z),
 *        z = Rs Rsh I0 / [a (Rs + Rsh)] exp{Rsh (Rs IL + Rs I0 + V) / [a (Rs + Rsh)]}
 * V(I) = x - I Rs,  x = a ln[W(y) a / (I0 Rsh)],  y = (I0 Rsh / a) exp[Rsh (IL + I0 - I) / a]
 * dP/dI = V + I dV/dI = 0,  dV/dI = -Rs - Rsh / (1 + W(y))
 * </pre>
 *
 * Source: Jain, Kapoor (2004), Solar Energy Materials and Solar Cells 81, 269-277 (from memory).
 */
final class LambertForm {
  private LambertForm() {}

  static double currentA(DiodeParameters p, double voltageV) {
    double rs = p.seriesOhm();
    double a = p.idealityV();
    // Rsh / (Rs + Rsh), which also holds without shunt
    double part = 1.0 / (1.0 + rs / p.shuntOhm());
    double light = p.lightA() + p.saturationA();
    double logZ = Math.log(rs * part * p.saturationA() / a) + part * (rs * light + voltageV) / a;
    return part * (light - voltageV / p.shuntOhm()) - a / rs * w(logZ);
  }

  static double voltageV(DiodeParameters p, double currentA) {
    double a = p.idealityV();
    double scale = p.saturationA() * p.shuntOhm() / a;
    return a * Math.log(ofCurrent(p, currentA) / scale) - currentA * p.seriesOhm();
  }

  static CurvePoint maxPower(DiodeParameters p) {
    double current =
        new BrentSolver(1e-15, 1e-15)
            .solve(
                500,
                i -> voltageV(p, i) - i * (p.seriesOhm() + p.shuntOhm() / (1.0 + ofCurrent(p, i))),
                0.0,
                currentA(p, 0.0));
    return new CurvePoint(voltageV(p, current), current);
  }

  private static double ofCurrent(DiodeParameters p, double currentA) {
    double scale = p.saturationA() * p.shuntOhm() / p.idealityV();
    return w(
        Math.log(scale) + p.shuntOhm() * (p.lightA() + p.saturationA() - currentA) / p.idealityV());
  }

  /** W(exp(logZ)): the w with w + ln w = logZ, without ever forming the exponential. */
  static double w(double logZ) {
    double w = logZ > 1.0 ? logZ - Math.log(logZ) : Math.exp(Math.min(logZ, 0.0));
    for (int step = 0; step < 50; step++) {
      double next = w * (1.0 + logZ - Math.log(w)) / (1.0 + w);
      if (Math.abs(next - w) <= 1e-16 * w) {
        return next;
      }
      w = next;
    }
    return w;
  }
}
