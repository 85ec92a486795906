package greyspell.power;

import greyspell.quantity.Check;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The inverter, or several alike in parallel (figures are for all together).
 *
 * @param count how many, for the record
 * @param continuousW AC power that it can hold
 * @param surgeW AC power for a motor start, null if not stated
 * @param standbyDayW drawn from the bus between sunrise and sunset whether or not anything is on
 * @param standbyNightW drawn from the bus at night
 * @param efficiencies data-sheet points, one to many; standby is in them, as on data sheets
 * @param search null if it never sleeps
 * @param charger its charger side, null if it has none
 */
public record InverterSpec(
    String name,
    int count,
    double continuousW,
    @Nullable Double surgeW,
    double standbyDayW,
    double standbyNightW,
    List<EfficiencyAt> efficiencies,
    @Nullable Search search,
    @Nullable Charger charger) {
  public InverterSpec {
    Check.within("count", count, 1, 1000);
    Check.positive("continuousW", continuousW);
    if (surgeW != null) {
      Check.positive("surgeW", surgeW);
    }
    Check.notNegative("standbyDayW", standbyDayW);
    Check.notNegative("standbyNightW", standbyNightW);
    efficiencies = List.copyOf(efficiencies);
    Check.within("points of efficiencies", efficiencies.size(), 1, 1000);
  }

  /** One that never sleeps and does not charge. */
  public InverterSpec(
      String name,
      int count,
      double continuousW,
      @Nullable Double surgeW,
      double standbyDayW,
      double standbyNightW,
      List<EfficiencyAt> efficiencies) {
    this(name, count, continuousW, surgeW, standbyDayW, standbyNightW, efficiencies, null, null);
  }

  /**
   * What it does while nothing worth waking for is switched on.
   *
   * @param drawW drawn from the bus asleep, of all together
   * @param wakesAtW power asked at the sockets from which it wakes
   */
  public record Search(double drawW, double wakesAtW) {
    public Search {
      Check.notNegative("drawW", drawW);
      Check.positive("wakesAtW", wakesAtW);
    }
  }

  /** Efficiency at a share of the continuous power. */
  public record EfficiencyAt(double loadShare, double efficiency) {
    public EfficiencyAt {
      Check.within("loadShare", loadShare, Double.MIN_VALUE, 2.0);
      Check.within("efficiency", efficiency, Double.MIN_VALUE, 1.0);
    }
  }

  /**
   * The no-load draw that is part of the data sheet's efficiencies: the larger of day and night.
   */
  public double noLoadW() {
    return Math.max(standbyDayW, standbyNightW);
  }

  /**
   * Always-on draw, hour by hour.
   *
   * @param daylightShare share of each hour between sunrise and sunset, 0 to 1
   */
  public double[] standbyWh(double[] daylightShare) {
    var wh = new double[daylightShare.length];
    for (int h = 0; h < wh.length; h++) {
      wh[h] = standbyNightW + daylightShare[h] * (standbyDayW - standbyNightW);
    }
    return wh;
  }

  /**
   * Always-on draw of one that sleeps in some hours.
   *
   * @param daylightShare share of each hour between sunrise and sunset, 0 to 1
   * @param asleep for each hour whether it sleeps
   */
  public double[] standbyWh(double[] daylightShare, boolean[] asleep) {
    double[] wh = standbyWh(daylightShare);
    if (search != null) {
      for (int h = 0; h < wh.length; h++) {
        if (asleep[h]) {
          wh[h] = search.drawW();
        }
      }
    }
    return wh;
  }
}
