package greyspell.study;

import greyspell.array.SolarHours;
import greyspell.balance.Ledger;
import greyspell.outcome.Outcome;
import greyspell.power.FuelUse;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything that one run of a scenario gives; pages and pictures are made from this alone.
 *
 * @param besides what was found by running it again with one thing changed
 * @param planes what each array plane brought, in the scenario's order
 * @param assumptions the scenario's defaults and those of the weather and the run
 * @param cautions unusual things about scenario, weather and result, and the usual warnings
 * @param startNote how the first hour's charge was found, a sentence
 */
public record StudyResult(
    Scenario scenario,
    WeatherSeries weather,
    Ledger ledger,
    Outcome outcome,
    Besides besides,
    List<PlaneBooks> planes,
    List<Assumption> assumptions,
    List<String> cautions,
    String startNote) {

  /**
   * One plane's own sums over all hours; the ledger holds those of all planes together.
   *
   * @param availableWh at the controller's input
   * @param cableHeatWh lost in its stated wire, 0 if none is stated
   */
  public record PlaneBooks(String name, double availableWh, double cableHeatWh) {
    static PlaneBooks of(String name, SolarHours hours) {
      return new PlaneBooks(name, sumWh(hours.availableWh()), sumWh(hours.cableHeatWh()));
    }

    private static double sumWh(double[] wh) {
      double sumWh = 0.0;
      for (double one : wh) {
        sumWh += one;
      }
      return sumWh;
    }
  }

  /** With one more caution, before all others. */
  public StudyResult withFirstCaution(String caution) {
    var all = new ArrayList<String>();
    all.add(caution);
    all.addAll(cautions);
    return new StudyResult(
        scenario,
        weather,
        ledger,
        outcome,
        besides,
        planes,
        assumptions,
        List.copyOf(all),
        startNote);
  }

  /** What the generator burnt from one hour to another. */
  public Fuel fuelBetween(int fromHour, int toHour) {
    FuelUse fuel = besides.fuel();
    if (fuel == null) {
      return Fuel.NONE;
    }
    double burntL = fuel.totalL(fromHour, toHour);
    return new Fuel(
        burntL, fuel.co2Kg(burntL), FuelUse.cost(burntL, scenario.costs().fuelPerLitreCost()));
  }
}
