package greyspell.power;

import greyspell.quantity.Check;
import java.util.List;

/**
 * An engine with its generator, for the weeks in which the sun is not enough; or several alike side
 * by side, which then start and stop together (figures are for all together).
 *
 * <pre>
 * rate(x) = straight lines between the points, the first and the last line carried on, never below 0; one point: level
 * most    = P [1 - a max(0, z - z0)] [1 - b max(0, T - T0)], never below 0
 *
 * x    load over rated power            1       0 ..         z, z0  site, and where losing begins   m
 * rate fuel burnt                       l/h                  a      power lost for each metre       1/m
 * P    rated power                      W                    T, T0  air, and where losing begins    °C
 * most power that it can hold           W                    b      power lost for each kelvin      1/K
 * </pre>
 *
 * Fuel use is close to a straight line with an idle part, so carrying the lowest line on to no load
 * is nearer than holding it level (Willans' line, from memory). Thin and hot air only take power
 * away; cold air below T0 gives none back. A cold start, wear and oil are not in it.
 *
 * <p>The two losses multiply, as makers' sheets say of theirs; how large they are each maker states
 * for itself. Held by GeneratorSpecTest, GeneratorLawTest and FuelPublishedTest (a maker's table).
 *
 * @param count how many, for the record
 * @param ratedPowerW AC power that it can hold in the air for which it is rated
 * @param fuelUse data-sheet points, load rising, fuel not falling; load 0 is the engine idling
 * @param derating what thin and hot air take away
 */
public record GeneratorSpec(
    String name,
    int count,
    double ratedPowerW,
    Fuel fuel,
    List<FuelAt> fuelUse,
    Derating derating) {
  public GeneratorSpec {
    Check.within("count", count, 1, 1000);
    Check.positive("ratedPowerW", ratedPowerW);
    fuelUse = List.copyOf(fuelUse);
    Check.within("points of fuelUse", fuelUse.size(), 1, 1000);
    for (int i = 1; i < fuelUse.size(); i++) {
      FuelAt before = fuelUse.get(i - 1);
      FuelAt at = fuelUse.get(i);
      if (!(at.loadShare() > before.loadShare()) || !(at.fuelLPerH() >= before.fuelLPerH())) {
        throw new IllegalArgumentException("fuel use falls, or its loads do not rise");
      }
    }
  }

  /** Fuel burnt in an hour at a share of the rated power. */
  public record FuelAt(double loadShare, double fuelLPerH) {
    public FuelAt {
      Check.within("loadShare", loadShare, 0.0, 2.0);
      Check.notNegative("fuelLPerH", fuelLPerH);
    }
  }

  /**
   * What the air takes from the rated power.
   *
   * @param fromElevationM below it nothing is lost
   * @param perMShare lost for each metre above
   * @param fromTemperatureC below it nothing is lost
   * @param perK lost for each kelvin above
   */
  public record Derating(
      double fromElevationM, double perMShare, double fromTemperatureC, double perK) {
    public static final Derating NONE = new Derating(0.0, 0.0, 0.0, 0.0);

    public Derating {
      Check.finite("fromElevationM", fromElevationM);
      Check.share("perMShare", perMShare);
      Check.finite("fromTemperatureC", fromTemperatureC);
      Check.share("perK", perK);
    }

    /** Share of the rated power that is left, 0 to 1. */
    public double leftShare(double elevationM, double airC) {
      double heightShare = 1.0 - perMShare * Math.max(0.0, elevationM - fromElevationM);
      double heatShare = 1.0 - perK * Math.max(0.0, airC - fromTemperatureC);
      return Math.max(0.0, heightShare) * Math.max(0.0, heatShare);
    }
  }

  /**
   * Fuel of a straight line from no load to full load, as another way of stating it.
   *
   * @param idleLPerH with the engine running and nothing drawn
   * @param fullLPerH at rated power
   */
  public static List<FuelAt> line(double idleLPerH, double fullLPerH) {
    return List.of(new FuelAt(0.0, idleLPerH), new FuelAt(1.0, fullLPerH));
  }

  /** Most AC power in this air. */
  public double mostW(double elevationM, double airC) {
    return ratedPowerW * derating.leftShare(elevationM, airC);
  }

  /** Fuel burnt in an hour at this power. */
  public double fuelLPerH(double powerW) {
    double share = powerW / ratedPowerW;
    int last = fuelUse.size() - 1;
    if (last == 0) {
      return fuelUse.get(0).fuelLPerH();
    }
    int i = 1;
    while (i < last && share > fuelUse.get(i).loadShare()) {
      i++;
    }
    FuelAt low = fuelUse.get(i - 1);
    FuelAt high = fuelUse.get(i);
    double slope = (high.fuelLPerH() - low.fuelLPerH()) / (high.loadShare() - low.loadShare());
    return Math.max(0.0, low.fuelLPerH() + slope * (share - low.loadShare()));
  }
}
