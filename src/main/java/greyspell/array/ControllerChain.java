package greyspell.array;

import greyspell.quantity.Check;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the charge controllers pass on.
 *
 * <pre>
 * bus     = min(out(available), most)
 * clipped = available - in(bus)      where the limit binds, else 0
 * loss    = available - clipped - bus
 * most    = count × min(maxOutputW, maxOutputA × bank voltage), whichever is stated
 *
 * out(x) = eta x, or with stated points (load p, efficiency eta(p), both at the output):
 *          in(p most) = p most / eta(p) at the points, straight between them;
 *          below the first and above the last point their efficiency holds
 *
 * available, bus, clipped, loss   Wh in the hour          eta   efficiency, above 0 to 1
 * </pre>
 *
 * The limits stand at the output, as on data sheets; the bank's nominal voltage is used, which is a
 * little below the voltage it charges at, so a current limit clips slightly early. Several
 * controllers share the sun evenly. Points of efficiency need a stated limit to be shares of;
 * without one the flat efficiency is taken. In very weak light a controller is less efficient than
 * its first point says: its own draw is in the standby. The tracking window stands before this: see
 * {@link ControllerInput}. Source: own bookkeeping. Held by SolarChainTest and ControllerInputTest.
 */
public final class ControllerChain {
  private final double mostOutputWh;
  // corners of the line from input to output, the first at 0; the last slope goes on
  private final double[] cornerInputWh;
  private final double[] cornerOutputWh;

  public ControllerChain(ControllerSpec controller, double bankV) {
    Check.positive("bankV", bankV);
    mostOutputWh =
        controller.count()
            * Math.min(
                orEndless(controller.maxOutputW()), orEndless(controller.maxOutputA()) * bankV);
    List<EfficiencyPoint> points = controller.efficiencyPoints();
    if (points.isEmpty() || mostOutputWh == Double.POSITIVE_INFINITY) {
      cornerInputWh = new double[] {0.0, 1.0};
      cornerOutputWh = new double[] {0.0, controller.efficiency()};
      return;
    }
    // above the last point its own efficiency holds, so the line goes on through a point twice as
    // far out
    int n = points.size();
    cornerInputWh = new double[n + 2];
    cornerOutputWh = new double[n + 2];
    for (int k = 0; k < n; k++) {
      cornerInputWh[k + 1] = points.get(k).inputShare() * mostOutputWh;
      cornerOutputWh[k + 1] = points.get(k).loadShare() * mostOutputWh;
    }
    cornerInputWh[n + 1] = 2.0 * cornerInputWh[n];
    cornerOutputWh[n + 1] = 2.0 * cornerOutputWh[n];
  }

  /** Most that all of them can put on the bus in an hour; infinite if no limit is stated. */
  public double mostOutputWh() {
    return mostOutputWh;
  }

  public ControllerHours run(double[] availableWh) {
    var out = new ControllerHours(availableWh.length);
    fill(availableWh, out);
    return out;
  }

  /** As {@link #run}, over what it held. */
  public void fill(double[] availableWh, ControllerHours out) {
    double[] clippedWh = out.clippedWh();
    double[] lossWh = out.lossWh();
    double[] busWh = out.busWh();
    double mostInputWh = along(cornerOutputWh, cornerInputWh, mostOutputWh);
    for (int h = 0; h < availableWh.length; h++) {
      double available = availableWh[h];
      double taken = available < mostInputWh ? available : mostInputWh;
      busWh[h] =
          available < mostInputWh ? along(cornerInputWh, cornerOutputWh, available) : mostOutputWh;
      clippedWh[h] = available - taken;
      lossWh[h] = taken - busWh[h];
    }
  }

  private static double along(double[] from, double[] to, double value) {
    int k = 1;
    while (k < from.length - 1 && value > from[k]) {
      k++;
    }
    return to[k - 1] + (to[k] - to[k - 1]) * ((value - from[k - 1]) / (from[k] - from[k - 1]));
  }

  private static double orEndless(@Nullable Double limit) {
    return limit == null ? Double.POSITIVE_INFINITY : limit;
  }
}
