package greyspell.load;

import greyspell.quantity.Check;
import org.jspecify.annotations.Nullable;

/**
 * How long a pump runs to lift a day's water.
 *
 * <pre>
 * runtime = V / (60 q)                          where the flow is known
 * runtime = rho g H V / (3.6e6 eta P)           where the head is known
 *
 * V    water of a day        l       0 .. 100000
 * q    flow                  l/min   above 0
 * H    head, friction in it  m       above 0 .. 500
 * eta  pump and motor        1       above 0 .. 1
 * P    electric power        W       above 0
 * rho  1 kg/l;   g  9.80665 m/s2
 * </pre>
 *
 * A runtime longer than the pump's hours is refused.
 *
 * <p>Source: definition of work; g is the standard value. Held by WeatherLoadsTest.
 *
 * @param dailyL V
 * @param flowLPerH flow an hour, null if the head is given
 * @param headM H, null if the flow is given
 * @param pumpEfficiency eta
 */
public record WaterUse(
    double dailyL, @Nullable Double flowLPerH, @Nullable Double headM, double pumpEfficiency) {
  private static final double STANDARD_GRAVITY_MS2 = 9.80665;
  private static final double SECONDS_PER_H = 3600.0;

  public WaterUse {
    Check.within("dailyL", dailyL, 0.0, 100_000.0);
    if ((flowLPerH == null) == (headM == null)) {
      throw new IllegalArgumentException("either the flow or the head");
    }
    if (flowLPerH != null) {
      Check.positive("flowLPerH", flowLPerH);
    }
    if (headM != null) {
      Check.within("headM", headM, Double.MIN_VALUE, 500.0);
    }
    Check.within("pumpEfficiency", pumpEfficiency, Double.MIN_VALUE, 1.0);
  }

  /** Hours of a day that the pump runs. */
  public double runtimeH(double powerW) {
    Double flow = flowLPerH;
    if (flow != null) {
      return dailyL / flow;
    }
    double head = headM == null ? 0.0 : headM;
    double liftWh = dailyL * STANDARD_GRAVITY_MS2 * head / SECONDS_PER_H;
    return liftWh / (pumpEfficiency * powerW);
  }
}
