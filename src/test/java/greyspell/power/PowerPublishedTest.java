package greyspell.power;

import greyspell.power.InverterSpec.EfficiencyAt;
import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

class PowerPublishedTest implements PublishedChecks {
  private static final String SCHMIDT_SAUER =
      "Schmidt, Sauer (1996), Wechselrichter-Wirkungsgrade, Sonnenenergie 4; values recomputed apart from its formula (from memory)";
  private static final String WEIGHTS =
      "European and Californian efficiency weightings, seen second-hand; values recomputed apart";
  private static final InverterCurve CURVE = new InverterCurve(0.010, 0.02, 0.03);

  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    double[][] printed = {
      {0.05, 0.81867},
      {0.1, 0.89047},
      {0.2, 0.92937},
      {0.3, 0.94132},
      {0.5, 0.94787},
      {0.75, 0.94712},
      {1.0, 0.94340}
    };
    for (double[] at : printed) {
      checks.add(
          new PublishedCheck(
              "power",
              SCHMIDT_SAUER,
              "efficiency at load " + at[0] + " with losses 0.010, 0.02, 0.03",
              "1",
              at[1],
              5e-6,
              () -> CURVE.efficiency(at[0])));
    }
    checks.add(
        new PublishedCheck(
            "power",
            SCHMIDT_SAUER,
            "peak efficiency, at the root of no-load over quadratic loss",
            "1",
            0.94819,
            5e-6,
            () -> CURVE.efficiency(Math.sqrt(0.010 / 0.03))));
    checks.add(
        new PublishedCheck(
            "power",
            SCHMIDT_SAUER,
            "linear loss fitted from 10, 50 and 100 % load",
            "1",
            0.020,
            5e-4,
            () -> fitted().linearLossShare()));
    checks.add(
        new PublishedCheck(
            "power",
            SCHMIDT_SAUER,
            "quadratic loss fitted from 10, 50 and 100 % load",
            "1",
            0.030,
            5e-4,
            () -> fitted().quadraticLossShare()));
    checks.add(
        new PublishedCheck(
            "power",
            WEIGHTS,
            "European weighting of 80, 86, 92, 94, 95, 93 %",
            "%",
            93.12,
            0.005,
            () -> WeightedEfficiency.EUROPEAN.of(80, 86, 92, 94, 95, 93)));
    checks.add(
        new PublishedCheck(
            "power",
            WEIGHTS,
            "Californian weighting of 86, 92, 94, 95, 94.5, 93 %",
            "%",
            94.00,
            0.005,
            () -> WeightedEfficiency.CALIFORNIAN.of(86, 92, 94, 95, 94.5, 93)));
    checks.add(
        new PublishedCheck(
            "power",
            WEIGHTS,
            "European weighting of the curve above",
            "1",
            0.93659,
            5e-6,
            () -> WeightedEfficiency.EUROPEAN.of(CURVE)));
    checks.add(
        new PublishedCheck(
            "power",
            WEIGHTS,
            "Californian weighting of the curve above",
            "1",
            0.94324,
            5e-6,
            () -> WeightedEfficiency.CALIFORNIAN.of(CURVE)));
    return checks;
  }

  private static InverterCurve fitted() {
    return InverterCurve.fit(
            new InverterSpec(
                "i",
                1,
                3000.0,
                null,
                30.0,
                30.0,
                List.of(
                    new EfficiencyAt(0.1, 0.89047),
                    new EfficiencyAt(0.5, 0.94787),
                    new EfficiencyAt(1.0, 0.94340))))
        .curve();
  }
}
