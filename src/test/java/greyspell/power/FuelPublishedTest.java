package greyspell.power;

import greyspell.power.GeneratorSpec.Derating;
import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

class FuelPublishedTest implements PublishedChecks {
  private static final String EIA =
      "US Energy Information Administration, Carbon Dioxide Emissions Coefficients, 2 February 2016 (archived page opened): its pounds, the program holds its kilograms";
  private static final String TABLE =
      "a maker's operating manual, table of deration: 3 % for each 500 m above 1000 m and for each 5 °C above 40 °C (opened; makers are not named here)";
  private static final double L_PER_GALLON = 3.785411784;
  private static final double KG_PER_LB = 0.45359237;
  private static final double WH_PER_MILLION_BTU = 293_071.07;

  /**
   * Half the last digit of the pounds, 0.005, and of the kilograms, 0.005 kg, which are 0.011 lb.
   */
  private static final double HALF_DIGITS_LB = 0.016;

  private static final double HALF_PERCENT = 0.005;

  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    for (Fuel fuel : Fuel.values()) {
      double[] printed =
          switch (fuel) {
            case PETROL -> new double[] {19.60, 157.20};
            case DIESEL -> new double[] {22.40, 161.30};
            case PROPANE -> new double[] {12.70, 139.05};
          };
      String name = fuel.name().toLowerCase(java.util.Locale.ROOT);
      checks.add(
          new PublishedCheck(
              "power",
              EIA,
              "carbon dioxide of a US gallon of " + name,
              "lb",
              printed[0],
              HALF_DIGITS_LB,
              () -> fuel.co2KgPerL() * L_PER_GALLON / KG_PER_LB));
      checks.add(
          new PublishedCheck(
              "power",
              EIA,
              "carbon dioxide of a million Btu of " + name,
              "lb",
              printed[1],
              HALF_DIGITS_LB,
              () -> fuel.co2KgPerL() / fuel.heatWhPerL() * WH_PER_MILLION_BTU / KG_PER_LB));
    }
    var derating = new Derating(1000.0, 0.03 / 500.0, 40.0, 0.03 / 5.0);
    double[][] heights = {{1500, 0.97}, {2000, 0.94}, {2500, 0.91}, {3500, 0.85}, {4000, 0.82}};
    for (double[] at : heights) {
      checks.add(
          new PublishedCheck(
              "power",
              TABLE,
              "power left at " + (int) at[0] + " m",
              "1",
              at[1],
              HALF_PERCENT,
              () -> derating.leftShare(at[0], 20.0)));
    }
    double[][] heats = {{45, 0.97}, {50, 0.94}, {55, 0.91}, {60, 0.88}};
    for (double[] at : heats) {
      checks.add(
          new PublishedCheck(
              "power",
              TABLE,
              "power left at " + (int) at[0] + " °C",
              "1",
              at[1],
              HALF_PERCENT,
              () -> derating.leftShare(0.0, at[0])));
    }
    return checks;
  }
}
