package greyspell.storage;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import greyspell.storage.step.TwoTank;
import java.util.ArrayList;
import java.util.List;

class StoragePublishedTest implements PublishedChecks {
  private static final String JONGERDEN =
      "Jongerden, Haverkort (2009), Which battery model to use?, IET Software 3: inputs seen in code that cites it, minutes from memory";
  private static final String IEEE_485 =
      "IEEE 485, cell size correction factors for temperature, two decimals (from memory)";
  private static final String ASTM =
      "ASTM E1049-85, 5.4.4, worked example, seen second-hand in a public test file";
  private static final String WANG =
      "Wang et al. (2011), Journal of Power Sources 196: formula seen second-hand, values recomputed apart from it";
  private static final String NAUMANN =
      "Naumann et al. (2020), Journal of Power Sources 451: formula seen second-hand, values recomputed apart from it";
  private static final String SOIL =
      "Oklahoma State University, Rain or Shine, 13.4 (open textbook page): a daily wave in soil of 0.50e-6 m2/s";

  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    cold(checks);
    tanks(checks);
    rainflow(checks);
    fade(checks);
    checks.add(
        new PublishedCheck(
            "storage",
            SOIL,
            "damping depth",
            "cm",
            11.7,
            0.05,
            () -> 100.0 * GroundTemperature.dampingDepthM(0.5e-6, 24.0)));
    checks.add(
        new PublishedCheck(
            "storage",
            SOIL,
            "swing 10 cm down that is 7 °C on top",
            "°C",
            3.0,
            0.5,
            () -> 7.0 * Math.exp(-0.10 / GroundTemperature.dampingDepthM(0.5e-6, 24.0))));
    return checks;
  }

  // ---- capacity against temperature -------------------------------------------------------------

  /** The factor at 30 °F is not among the points of the curve, so that one is free to disagree. */
  private static void cold(List<PublishedCheck> checks) {
    var curve =
        new CapacityCurve(BankDefaults.of(Chemistry.LEAD_ACID_FLOODED).capacityByTemperature());
    double[][] factors = {
      {25, 1.52}, {30, 1.43}, {40, 1.30}, {50, 1.19}, {60, 1.11}, {70, 1.04}, {77, 1.00}
    };
    for (double[] row : factors) {
      double degC = (row[0] - 32.0) / 1.8;
      checks.add(
          new PublishedCheck(
              "storage",
              IEEE_485,
              "one over the share of capacity of lead-acid at " + Math.round(row[0]) + " °F",
              "1",
              row[1],
              0.01,
              () -> 1.0 / curve.capacityShare(degC)));
    }
  }

  // ---- two tanks --------------------------------------------------------------------------------

  private static final double CAPACITY_AH = 2.0; // 7200 As
  private static final double WIDTH = 0.625;
  private static final double VALVE_PER_H = 4.5e-5 * 3600.0;
  private static final double CURRENT_A = 0.96;

  private static void tanks(List<PublishedCheck> checks) {
    checks.add(
        new PublishedCheck(
            "storage",
            JONGERDEN,
            "0.96 A without pause until empty",
            "min",
            91.0,
            0.5,
            () -> squareWaveMinutes(60.0, 1.0)));
    checks.add(
        new PublishedCheck(
            "storage",
            JONGERDEN,
            "0.96 A half of each second",
            "min",
            203.0,
            0.5,
            () -> squareWaveMinutes(1.0, 0.5)));
    checks.add(
        new PublishedCheck(
            "storage",
            JONGERDEN,
            "0.96 A half of each five seconds",
            "min",
            203.0,
            0.5,
            () -> squareWaveMinutes(5.0, 0.5)));
  }

  private static double squareWaveMinutes(double periodS, double onShare) {
    double onH = onShare * periodS / 3600.0;
    double offH = (1.0 - onShare) * periodS / 3600.0;
    var on = TwoTank.ofValve(WIDTH, VALVE_PER_H, onH);
    double q1 = WIDTH * CAPACITY_AH, q2 = (1.0 - WIDTH) * CAPACITY_AH;
    double hours = 0.0;
    while (true) {
      double draw = CURRENT_A * onH;
      double most = on.mostOutWh(q1, q2);
      if (most < draw) {
        return 60.0 * (hours + onH * most / draw);
      }
      double next = on.availableAfterWh(q1, q2, draw);
      q2 = q1 + q2 - draw - next;
      q1 = next;
      hours += onH;
      if (offH > 0.0) {
        double rested = TwoTank.ofValve(WIDTH, VALVE_PER_H, offH).availableAfterWh(q1, q2, 0.0);
        q2 = q1 + q2 - rested;
        q1 = rested;
        hours += offH;
      }
    }
  }

  // ---- rainflow ---------------------------------------------------------------------------------

  private static void rainflow(List<PublishedCheck> checks) {
    double[][] table = {{3, 0.5}, {4, 1.5}, {6, 0.5}, {8, 1.0}, {9, 0.5}};
    for (double[] line : table) {
      checks.add(
          new PublishedCheck(
              "storage",
              ASTM,
              "cycles of range " + (int) line[0] + " in -2 1 -3 5 -1 3 -4 4 -2",
              "1",
              line[1],
              0.0,
              () -> counted(line[0])));
    }
  }

  private static double counted(double wanted) {
    double[] sum = new double[1];
    Rainflow.count(
        new double[] {-2, 1, -3, 5, -1, 3, -4, 4, -2},
        (range, mean, count) -> sum[0] += range == wanted ? count : 0.0);
    return sum[0];
  }

  // ---- lithium ----------------------------------------------------------------------------------

  private static void fade(List<PublishedCheck> checks) {
    double[][] wang = {{15.0, 6.506}, {25.0, 10.112}, {35.0, 15.273}, {45.0, 22.479}};
    for (double[] at : wang) {
      checks.add(
          new PublishedCheck(
              "storage",
              WANG,
              "lost after 5000 Ah at " + (int) at[0] + " °C",
              "%",
              at[1],
              1e-3,
              () -> 100.0 * LithiumFade.byChargeMovedShare(at[0], 5000.0, 2.2)));
    }
    checks.add(
        new PublishedCheck(
            "storage",
            NAUMANN,
            "lost after 1000 full cycles, 80 % deep, in two hours",
            "%",
            4.573,
            1e-3,
            () -> 100.0 * LithiumFade.byFullCyclesShare(0.5, 0.8, 1000.0)));
    double[][] naumann = {{0.5, 0.8, 19_127}, {0.5, 0.5, 20_422}, {1.0, 1.0, 8564}};
    for (double[] at : naumann) {
      checks.add(
          new PublishedCheck(
              "storage",
              NAUMANN,
              "full cycles until 20 % is lost, " + (int) (100 * at[1]) + " % deep, rate " + at[0],
              "1",
              at[2],
              0.5,
              () -> LithiumFade.fullCycles(at[0], at[1], 0.2)));
    }
  }
}
