package greyspell.array;

import greyspell.quantity.Check;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Current and voltage of modules in a row that need not see the same light: the weak ones either
 * hold the current down or are bypassed.
 *
 * <pre>
 * V(I) = sum over groups of max[s V1(I; G, Tc), -Vb]
 *
 * I   current, the same in all groups                        A
 * V1  voltage of a whole module at this current, light       V     see {@link SingleDiode}
 *     and cell temperature
 * s   part of the module that one bypass diode spans         1     1/3 in most modules
 * Vb  forward drop of a bypass diode that conducts           V     0.5 (common practice, no source)
 * </pre>
 *
 * The bypass diode is a switch with a constant drop; its leakage, and the reverse breakdown of
 * cells, are left out. Below zero current (another string drives it above its open-circuit voltage)
 * the groups follow their diode curves: no blocking diode. Half-cut modules, whose upper and lower
 * half share the bypass diodes, are taken as if each group were one row of cells: light shade on
 * one half costs less than shown here. Source: Kirchhoff's laws on {@link SingleDiode}. Held by
 * PanelCurveTest.
 */
public final class StringCurve {
  /** Usual forward drop of a bypass diode that conducts. */
  public static final double USUAL_BYPASS_DROP_V = 0.5;

  // Within such a current a dark group goes from blocking to bypassed; neither slope nor power of
  // it means anything.
  static final double NO_CURRENT_A = 1e-9;
  // Beside a switch one of voltage and current hardly moves: closer, rounding decides on which side
  // of it the string is.
  static final double BESIDE_SHARE = 1e-6;
  static final double ACCURACY_SHARE = 1e-13;
  static final int MOST_STEPS = 500;

  private final double[] lightA;
  private final double[] saturationA;
  private final double[] seriesOhm;
  private final double[] shuntS;
  private final double[] idealityV;
  private final double[] modules;
  private final double[] bypassedV;
  private final double[] bypassFromA;

  private StringCurve(List<CellGroup> groups, double bypassDropV) {
    int n = groups.size();
    lightA = new double[n];
    saturationA = new double[n];
    seriesOhm = new double[n];
    shuntS = new double[n];
    idealityV = new double[n];
    modules = new double[n];
    bypassedV = new double[n];
    bypassFromA = new double[n];
    for (int g = 0; g < n; g++) {
      CellGroup group = groups.get(g);
      DiodeParameters p = group.diode().at(group.irradianceWm2(), group.cellC());
      lightA[g] = p.lightA();
      saturationA[g] = p.saturationA();
      seriesOhm[g] = p.seriesOhm();
      shuntS[g] = 1.0 / p.shuntOhm();
      idealityV[g] = p.idealityV();
      modules[g] = group.moduleShare() * group.count();
      bypassedV[g] = -bypassDropV * group.count();
      bypassFromA[g] =
          SingleDiode.currentA(
              lightA[g],
              saturationA[g],
              seriesOhm[g],
              shuntS[g],
              idealityV[g],
              -bypassDropV / group.moduleShare());
    }
  }

  /** Groups in any order; at least one. */
  public static StringCurve of(List<CellGroup> groups, double bypassDropV) {
    Check.within("groups", groups.size(), 1, 100_000);
    Check.within("bypassDropV", bypassDropV, 0.0, 2.0);
    return new StringCurve(groups, bypassDropV);
  }

  /** All modules alike, usual bypass diodes. */
  public static StringCurve of(LitString string) {
    return of(List.of(string.cells()), USUAL_BYPASS_DROP_V);
  }

  /** Falls as the current grows. */
  public double voltageV(double currentA) {
    double sum = 0.0;
    for (int g = 0; g < modules.length; g++) {
      sum +=
          currentA >= bypassFromA[g]
              ? bypassedV[g]
              : modules[g] * (diodeV(g, currentA) - currentA * seriesOhm[g]);
    }
    return sum;
  }

  /** dV/dI, negative; 0 where all groups are bypassed. */
  double slopeOhm(double currentA) {
    double sum = 0.0;
    for (int g = 0; g < modules.length; g++) {
      if (currentA < bypassFromA[g]) {
        double x = diodeV(g, currentA);
        double fallS = saturationA[g] / idealityV[g] * Math.exp(x / idealityV[g]) + shuntS[g];
        sum -= modules[g] * (1.0 / fallS + seriesOhm[g]);
      }
    }
    return sum;
  }

  public double openCircuitV() {
    return Math.max(0.0, voltageV(0.0));
  }

  /** Current at a voltage of 0 or more; negative above open circuit. */
  public double currentA(double voltageV) {
    if (modules.length == 1 && voltageV >= 0.0) {
      return SingleDiode.currentA(
          lightA[0], saturationA[0], seriesOhm[0], shuntS[0], idealityV[0], voltageV / modules[0]);
    }
    double high = 0.0;
    for (double from : bypassFromA) {
      high = Math.max(high, from);
    }
    double low = 0.0;
    double step = 1.0;
    while (voltageV(low) < voltageV && step < 1e9) {
      low -= step;
      step *= 2.0;
    }
    // Newton inside a bracket: bypass switches leave kinks that pure Newton may step over.
    double current = 0.5 * (low + high);
    for (int k = 0; k < 200; k++) {
      double excessV = voltageV(current) - voltageV;
      if (excessV > 0.0) {
        low = current;
      } else {
        high = current;
      }
      double slope = slopeOhm(current);
      double next = current - excessV / slope;
      if (!(next > low && next < high)) {
        next = 0.5 * (low + high);
      }
      if (!(Math.abs(next - current) > 1e-14 * (1.0 + Math.abs(current)))) {
        return next;
      }
      current = next;
    }
    return current;
  }

  /** Voltages at which a group begins to be bypassed, those above 0, any order. */
  double[] kinksV() {
    return Arrays.stream(bypassFromA).map(this::voltageV).filter(v -> v > 0.0).toArray();
  }

  /** Every summit of the power of this string alone, by rising voltage. */
  List<CurvePoint> summits() {
    double shortA = currentA(0.0);
    double[] ends =
        DoubleStream.concat(
                DoubleStream.of(0.0, shortA),
                Arrays.stream(bypassFromA).filter(a -> a > NO_CURRENT_A && a < shortA))
            .sorted()
            .distinct()
            .toArray();
    var summits = new ArrayList<CurvePoint>();
    for (int k = ends.length - 1; k > 0; k--) {
      double low = ends[k - 1] + BESIDE_SHARE * shortA;
      double high = ends[k] - BESIDE_SHARE * shortA;
      if (high > low && powerSlopeV(low) > 0.0 && powerSlopeV(high) < 0.0) {
        double current =
            new BrentSolver(ACCURACY_SHARE, ACCURACY_SHARE * shortA)
                .solve(MOST_STEPS, this::powerSlopeV, low, high);
        summits.add(new CurvePoint(voltageV(current), current));
      }
    }
    return summits;
  }

  /** dP/dI = V + I dV/dI. */
  private double powerSlopeV(double currentA) {
    return voltageV(currentA) + currentA * slopeOhm(currentA);
  }

  private double diodeV(int g, double currentA) {
    return SingleDiode.diodeVoltageV(lightA[g], saturationA[g], shuntS[g], idealityV[g], currentA);
  }
}
