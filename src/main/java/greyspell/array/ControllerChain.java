package greyspell.array;

import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * What the charge controllers pass on.
 *
 * <pre>
 * bus     = min(available eta, most)
 * clipped = available - bus / eta
 * loss    = available - clipped - bus
 * most    = count × min(maxOutputW, maxOutputA × bank voltage), whichever is stated
 *
 * available, bus, clipped, loss   Wh in the hour          eta   efficiency, above 0 to 1
 * </pre>
 *
 * The limits stand at the output, as on data sheets; the bank's nominal voltage is used, which is a
 * little below the voltage it charges at, so a current limit clips slightly early. Several
 * controllers share the sun evenly. Efficiency is one number now; a curve takes the place of {@link
 * #outputWh} and {@link #inputWh}. Tracking window: not judged here. Source: own bookkeeping. Held
 * by SolarChainTest.
 */
public final class ControllerChain {
  private final double efficiency;
  private final double mostOutputWh;

  public ControllerChain(ControllerSpec controller, double bankV) {
    Check.positive("bankV", bankV);
    efficiency = controller.efficiency();
    mostOutputWh =
        controller.count()
            * Math.min(
                orEndless(controller.maxOutputW()), orEndless(controller.maxOutputA()) * bankV);
  }

  /** Most that all of them can put on the bus in an hour; infinite if no limit is stated. */
  public double mostOutputWh() {
    return mostOutputWh;
  }

  public ControllerHours run(double[] availableWh) {
    var out = new ControllerHours(availableWh.length);
    double[] clippedWh = out.clippedWh();
    double[] lossWh = out.lossWh();
    double[] busWh = out.busWh();
    double mostInputWh = inputWh(mostOutputWh);
    for (int h = 0; h < availableWh.length; h++) {
      double available = availableWh[h];
      double taken = available < mostInputWh ? available : mostInputWh;
      busWh[h] = available < mostInputWh ? outputWh(available) : mostOutputWh;
      clippedWh[h] = available - taken;
      lossWh[h] = taken - busWh[h];
    }
    return out;
  }

  private double outputWh(double inputWh) {
    return inputWh * efficiency;
  }

  private double inputWh(double outputWh) {
    return outputWh / efficiency;
  }

  private static double orEndless(@Nullable Double limit) {
    return limit == null ? Double.POSITIVE_INFINITY : limit;
  }
}
