package greyspell.storage;

import java.util.Arrays;

/**
 * How warm the bank is, hour by hour, and what its heater draws.
 *
 * <pre>
 * lag dT/dt = Ta - T + Q / UA        Q = 0 while T is above the target, else what holds T at the target
 *
 * air constant within the hour:
 * T(t) = Ta + (T0 - Ta) exp(-t / lag)
 *
 * Ta   air temperature                        °C
 * T    bank temperature                       °C
 * lag  heat capacity over heat loss           h       0 or more; 0 follows the air at once
 * UA   heat loss of the box                   W/K
 * Q    heater                                 W
 * </pre>
 *
 * The bank is one lump of one temperature; the hour's value is the mean over the hour, exact for
 * air that is constant within it. Heat from its own losses and the sun on the box are left out, so
 * a working bank is a little warmer than this. The start is periodic: the bank begins as warm as
 * the same weather, repeated without end, leaves it. The heater is never too small, and draws
 * whether or not the bank holds charge.
 *
 * <p>Source: first-order heat balance (textbook). Held by BankTemperatureTest. The arrays are not
 * written.
 */
public final class BankTemperature {
  private final double[] temperatureC;
  private final double[] heaterWh;

  private BankTemperature(double[] temperatureC, double[] heaterWh) {
    this.temperatureC = temperatureC;
    this.heaterWh = heaterWh;
  }

  /** As {@link Enclosure#follow}. */
  public static BankTemperature of(Enclosure enclosure, double[] airC) {
    return enclosure.follow(airC);
  }

  /** Mean of each hour. */
  public double[] temperatureC() {
    return temperatureC;
  }

  /** Drawn from the bus by the heater; zeros where there is none. */
  public double[] heaterWh() {
    return heaterWh;
  }

  static BankTemperature constant(int hours, double roomC) {
    var temperatureC = new double[hours];
    Arrays.fill(temperatureC, roomC);
    return new BankTemperature(temperatureC, new double[hours]);
  }

  /** Without a heater; the array is kept. */
  static BankTemperature given(double[] temperatureC) {
    return new BankTemperature(temperatureC, new double[temperatureC.length]);
  }

  static BankTemperature lagging(double[] airC, double lagH) {
    return heated(airC, lagH, Double.NEGATIVE_INFINITY, 0.0);
  }

  static BankTemperature heated(double[] airC, double lagH, double atLeastC, double lossWPerK) {
    int hours = airC.length;
    var out = new BankTemperature(new double[hours], new double[hours]);
    if (hours == 0) {
      return out;
    }
    // The end of a run forgets its start: after each pass the start is as good as exp(-hours /
    // lag).
    double sumC = 0.0;
    for (double c : airC) {
      sumC += c;
    }
    double startC = Math.max(atLeastC, sumC / hours);
    for (int pass = 0; pass < 50; pass++) {
      double endC = out.run(airC, startC, lagH, atLeastC, lossWPerK);
      if (Math.abs(endC - startC) < 1e-9) {
        return out;
      }
      startC = endC;
    }
    return out;
  }

  /** Fills all hours; gives the temperature after the last. */
  private double run(double[] airC, double startC, double lagH, double atLeastC, double lossWPerK) {
    double keptShare = lagH > 0.0 ? Math.exp(-1.0 / lagH) : 0.0;
    double tC = startC;
    for (int h = 0; h < airC.length; h++) {
      double air = airC[h];
      double freeC = air + (tC - air) * keptShare;
      if (freeC >= atLeastC) {
        temperatureC[h] = air + (tC - air) * (1.0 - keptShare) * lagH;
        heaterWh[h] = 0.0;
        tC = freeC;
      } else {
        // Falls freely until the target is reached, then is held there.
        double freeH = lagH > 0.0 ? lagH * Math.log((tC - air) / (atLeastC - air)) : 0.0;
        temperatureC[h] = air * freeH + (tC - atLeastC) * lagH + atLeastC * (1.0 - freeH);
        heaterWh[h] = lossWPerK * (atLeastC - air) * (1.0 - freeH);
        tC = atLeastC;
      }
    }
    return tC;
  }
}
