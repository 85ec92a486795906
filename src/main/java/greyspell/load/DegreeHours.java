package greyspell.load;

import greyspell.quantity.Check;
import java.util.List;

/**
 * A thermostat that holds a room against the outdoor temperature: heater, heat pump, cooler.
 *
 * <pre>
 * heat  = L max(0, base - T)      heating;     L max(0, T - base)    cooling
 * draw  = min(P, heat / cop(T))                                      hour by hour
 *
 * L     heat that the house loses (or gains) for each degree      W/K    0 .. 5000
 * base  outdoor temperature at which nothing is needed            °C     -30 .. 40
 * T     outdoor temperature of the hour                           °C
 * cop   heat moved for each Wh of electricity, by T               1      0.2 .. 12; 1 is a plain heater
 * P     electric power, the most that it draws                    W      above 0
 * </pre>
 *
 * The base lies below the wanted room temperature by what sun, people and appliances give. Between
 * its points the cop runs straight, outside them it stays as at the nearest. Heat that the limit
 * keeps back is not made up for later: the room is colder then. Nothing is needed outside the
 * appliance's hours, days and months, and no more afterwards; a house that is left to cool down
 * wants more in the morning than this tells.
 *
 * <p>Source: degree-hour method, common practice (from memory); own bookkeeping. Held by
 * WeatherLoadsTest.
 *
 * @param isHeating else cooling
 * @param lossWPerK L
 * @param baseC base
 * @param copPoints in rising order of temperature; empty for 1
 */
public record DegreeHours(boolean isHeating, double lossWPerK, double baseC, List<CopAt> copPoints)
    implements WeatherDraw {
  public DegreeHours {
    Check.within("lossWPerK", lossWPerK, 0.0, 5000.0);
    Check.within("baseC", baseC, -30.0, 40.0);
    copPoints = List.copyOf(copPoints);
    for (int i = 1; i < copPoints.size(); i++) {
      if (!(copPoints.get(i).outdoorC() > copPoints.get(i - 1).outdoorC())) {
        throw new IllegalArgumentException("points of the cop must rise in temperature");
      }
    }
  }

  /** Heat moved for each Wh of electricity at an outdoor temperature. */
  public record CopAt(double outdoorC, double copFactor) {
    public CopAt {
      Check.within("outdoorC", outdoorC, -60.0, 60.0);
      Check.within("copFactor", copFactor, 0.2, 12.0);
    }
  }

  @Override
  public double dayFactor(double meanAirC) {
    return 1.0;
  }

  @Override
  public boolean isHourly() {
    return true;
  }

  @Override
  public double hourShare(double airC, double powerW) {
    double apartK = isHeating ? baseC - airC : airC - baseC;
    if (!(apartK > 0.0)) {
      return 0.0;
    }
    double drawW = lossWPerK * apartK / cop(airC);
    return drawW < powerW ? drawW / powerW : 1.0;
  }

  double cop(double airC) {
    int n = copPoints.size();
    if (n == 0) {
      return 1.0;
    }
    if (airC <= copPoints.get(0).outdoorC()) {
      return copPoints.get(0).copFactor();
    }
    for (int i = 1; i < n; i++) {
      CopAt right = copPoints.get(i);
      if (airC < right.outdoorC()) {
        CopAt left = copPoints.get(i - 1);
        double share = (airC - left.outdoorC()) / (right.outdoorC() - left.outdoorC());
        return left.copFactor() + share * (right.copFactor() - left.copFactor());
      }
    }
    return copPoints.get(n - 1).copFactor();
  }
}
