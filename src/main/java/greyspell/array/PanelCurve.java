package greyspell.array;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Current against voltage of everything on one controller input: one string, or several in
 * parallel, each of which may be partly shaded; with every place where the power has a summit.
 *
 * <pre>
 * I(V) = sum over strings of Ik(V)          P(V) = V I(V)
 * summit:  dP/dV = I + V dI/dV = 0
 *
 * Ik  current of a string at this voltage   A     {@link StringCurve}, negative above its own open circuit
 * </pre>
 *
 * Between two voltages at which a bypass diode switches, every Ik is hollow-down, hence so is P:
 * there is at most one summit in each such stretch, and none at a switch, where the slope jumps
 * upward. So all summits are found, and none twice. (A single string is searched by its current,
 * for which the same holds.) A controller that climbs the nearest summit may stay on a lower one;
 * which it finds is not foretold here. Without light there are no summits. Source: Kirchhoff's
 * laws. Held by PanelCurveTest.
 */
public final class PanelCurve {
  private static final double SAME_V = 1e-9;
  private final List<StringCurve> strings;
  private final double openCircuitV;

  private PanelCurve(List<StringCurve> strings) {
    this.strings = List.copyOf(strings);
    double low = Double.POSITIVE_INFINITY;
    double high = 0.0;
    for (StringCurve string : strings) {
      double ocV = string.openCircuitV();
      low = Math.min(low, ocV);
      high = Math.max(high, ocV);
    }
    openCircuitV =
        high - low <= SAME_V || !(currentA(high) < 0.0)
            ? high
            : solver(high).solve(StringCurve.MOST_STEPS, this::currentA, low, high);
  }

  public static PanelCurve of(StringCurve... strings) {
    return new PanelCurve(Arrays.asList(strings));
  }

  public static PanelCurve of(List<StringCurve> strings) {
    if (strings.isEmpty()) {
      throw new IllegalArgumentException("no string");
    }
    return new PanelCurve(strings);
  }

  public double openCircuitV() {
    return openCircuitV;
  }

  public double shortCircuitA() {
    return currentA(0.0);
  }

  /** Sum of the strings' currents at a voltage of 0 or more. */
  public double currentA(double voltageV) {
    double sum = 0.0;
    for (StringCurve string : strings) {
      sum += string.currentA(voltageV);
    }
    return sum;
  }

  public double powerW(double voltageV) {
    return voltageV * currentA(voltageV);
  }

  /** Every summit of the power, by rising voltage. */
  public List<CurvePoint> summits() {
    if (strings.size() == 1) {
      return strings.get(0).summits();
    }
    var summits = new ArrayList<CurvePoint>();
    double[] ends = stretchEndsV();
    for (int k = 0; k + 1 < ends.length; k++) {
      double low = ends[k] + StringCurve.BESIDE_SHARE * openCircuitV;
      double high = ends[k + 1] - StringCurve.BESIDE_SHARE * openCircuitV;
      if (high > low && powerSlopeA(low) > 0.0 && powerSlopeA(high) < 0.0) {
        double v = solver(high).solve(StringCurve.MOST_STEPS, this::powerSlopeA, low, high);
        double current = currentA(v);
        if (current > StringCurve.NO_CURRENT_A) {
          summits.add(new CurvePoint(v, current));
        }
      }
    }
    return summits;
  }

  /** The highest summit; zeros without light. */
  public CurvePoint maxPower() {
    var best = new CurvePoint(0.0, 0.0);
    for (CurvePoint summit : summits()) {
      best = summit.powerW() > best.powerW() ? summit : best;
    }
    return best;
  }

  /** Points from short to open circuit: even steps of voltage, each switch and each summit. */
  public CurveTrace trace(int steps) {
    List<CurvePoint> summits = summits();
    var v = new ArrayList<Double>();
    for (int k = 0; k <= steps; k++) {
      v.add(openCircuitV * k / steps);
    }
    for (double end : stretchEndsV()) {
      v.add(end);
    }
    summits.forEach(s -> v.add(s.voltageV()));
    double[] voltageV = v.stream().mapToDouble(Double::doubleValue).sorted().distinct().toArray();
    return new CurveTrace(voltageV, Arrays.stream(voltageV).map(this::currentA).toArray(), summits);
  }

  private double[] stretchEndsV() {
    var ends = new ArrayList<Double>(List.of(0.0, openCircuitV));
    for (StringCurve string : strings) {
      for (double kink : string.kinksV()) {
        if (kink < openCircuitV) {
          ends.add(kink);
        }
      }
    }
    return ends.stream().mapToDouble(Double::doubleValue).sorted().distinct().toArray();
  }

  private double powerSlopeA(double voltageV) {
    double current = 0.0;
    double slopeS = 0.0;
    for (StringCurve string : strings) {
      double own = string.currentA(voltageV);
      current += own;
      if (Math.abs(own) > StringCurve.NO_CURRENT_A) {
        slopeS += 1.0 / string.slopeOhm(own);
      }
    }
    return current + voltageV * slopeS;
  }

  private static BrentSolver solver(double sizeV) {
    return new BrentSolver(StringCurve.ACCURACY_SHARE, StringCurve.ACCURACY_SHARE * sizeV);
  }
}
