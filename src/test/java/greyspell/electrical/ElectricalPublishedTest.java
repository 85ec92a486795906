package greyspell.electrical;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleSupplier;

class ElectricalPublishedTest implements PublishedChecks {
  private static final String COLD =
      "NEC (NFPA 70) Table 690.7(A), 2017 to 2023 editions, crystalline silicon (from memory)";
  private static final String COEFFICIENT =
      "NEC 690.7(A)(1), 2017 to 2023 editions, maker's coefficient; recomputed apart (from memory)";
  private static final String FACTORS =
      "NEC 690.8(A)(1) and (B), 2017 to 2023 editions; recomputed apart (from memory)";
  private static final String AWG =
      "NEC chapter 9, Table 8, stranded uncoated copper at 75 °C (from memory)";
  private static final String METRIC =
      "IEC 60228, most resistance at 20 °C; two pages seen second-hand";
  private static final String WARM =
      "IEC 60228, temperature factor of copper; seen second-hand, recomputed";
  private static final String AMPACITY = "NEC 310.16, 2023 edition, copper; seen second-hand";
  private static final String AMBIENT =
      "NEC Table 310.15(B)(1)(1), 2023 edition, 30 °C base; seen second-hand, recomputed";

  private static final String[] COLD_STEPS = {
    "24 to 20",
    "19 to 15",
    "14 to 10",
    "9 to 5",
    "4 to 0",
    "-1 to -5",
    "-6 to -10",
    "-11 to -15",
    "-16 to -20",
    "-21 to -25",
    "-26 to -30",
    "-31 to -35",
    "-36 to -40"
  };
  private static final double[] COLD_FACTORS = {
    1.02, 1.04, 1.06, 1.08, 1.10, 1.12, 1.14, 1.16, 1.18, 1.20, 1.21, 1.23, 1.25
  };
  private static final String[] SIZES = {
    "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "3 AWG", "2 AWG", "1 AWG", "1/0 AWG",
    "2/0 AWG", "3/0 AWG", "4/0 AWG"
  };
  private static final double[] OHM_PER_1000_FT = {
    3.14, 1.98, 1.24, .778, .491, .308, .245, .194, .154, .122, .0967, .0766, .0608
  };
  private static final double[] A_75 = {20, 25, 35, 50, 65, 85, 100, 115, 130, 150, 175, 200, 230};
  private static final double[] A_90 = {25, 30, 40, 55, 75, 95, 115, 130, 145, 170, 195, 225, 260};
  private static final double[] MM2 = {1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120};
  private static final double[] CLASS_2 = {
    12.1, 7.41, 4.61, 3.08, 1.83, 1.15, .727, .524, .387, .268, .193, .153
  };
  private static final double[] CLASS_5 = {
    13.3, 7.98, 4.95, 3.30, 1.91, 1.21, .780, .554, .386, .272, .206, .161
  };
  private static final double[] K_75 = {1.20, 1.15, 1.11, 1.05, 1.00, .94, .88, .82, .75, .67, .58};
  private static final double[] K_90 = {1.15, 1.12, 1.08, 1.04, 1.00, .96, .91, .87, .82, .76, .71};

  @Override
  public List<PublishedCheck> checks() {
    var checks = new ArrayList<PublishedCheck>();
    strings(checks);
    resistance(checks);
    heat(checks);
    return checks;
  }

  private static void strings(List<PublishedCheck> checks) {
    for (int k = 0; k < COLD_STEPS.length; k++) {
      double coldC = 20.0 - 5.0 * k;
      add(
          checks,
          COLD,
          "open-circuit factor at " + COLD_STEPS[k] + " °C, each whole degree",
          "1",
          COLD_FACTORS[k],
          0.0,
          () -> sameOverTheStep(coldC));
    }
    add(checks, COLD, "3 × 39.8 V at -22 °C", "V", 143.28, 0.005, () -> 3 * 39.8 * cold(-22.0));
    add(
        checks,
        COEFFICIENT,
        "3 × 39.8 V, -0.31 %/K, at -22 °C",
        "V",
        136.80,
        0.005,
        () -> 3 * StringVoltages.openV(module(39.8, -0.0031), -22.0));
    add(checks, FACTORS, "9.83 A, most current", "A", 12.29, 0.005, () -> built(1).circuitA());
    add(checks, FACTORS, "9.83 A, for wires", "A", 15.36, 0.005, () -> built(1).conductorA());
    add(
        checks,
        FACTORS,
        "two strings of 9.83 A, for wires",
        "A",
        30.72,
        0.005,
        () -> built(2).conductorA());
  }

  private static void resistance(List<PublishedCheck> checks) {
    for (int k = 0; k < SIZES.length; k++) {
      WireSize size = size(SIZES[k]);
      add(
          checks,
          AWG,
          SIZES[k],
          "Ohm/1000 ft",
          OHM_PER_1000_FT[k],
          1e-12,
          () -> 304.8 * copper(size, WireSize.Strands.STRANDED, 75.0));
    }
    for (int k = 0; k < MM2.length; k++) {
      WireSize size = size(MM2[k] % 1.0 == 0.0 ? (int) MM2[k] + " mm2" : MM2[k] + " mm2");
      add(
          checks,
          METRIC,
          size.label() + ", class 2",
          "Ohm/km",
          CLASS_2[k],
          1e-12,
          () -> 1000.0 * copper(size, WireSize.Strands.STRANDED, 20.0));
      add(
          checks,
          METRIC,
          size.label() + ", class 5",
          "Ohm/km",
          CLASS_5[k],
          1e-12,
          () -> 1000.0 * copper(size, WireSize.Strands.FINE, 20.0));
    }
    add(
        checks,
        WARM,
        "70 °C over 20 °C",
        "1",
        1.1965,
        0.00005,
        () -> WireResistance.copperFactor(20.0, 70.0));
  }

  private static void heat(List<PublishedCheck> checks) {
    for (int k = 0; k < SIZES.length; k++) {
      WireSize size = size(SIZES[k]);
      for (var column : Ampacity.Insulation.values()) {
        boolean is75 = column == Ampacity.Insulation.C75;
        add(
            checks,
            AMPACITY,
            SIZES[k] + (is75 ? ", 75 °C column" : ", 90 °C column"),
            "A",
            is75 ? A_75[k] : A_90[k],
            0.0,
            () -> Ampacity.tableA(size, column));
      }
    }
    for (int k = 0; k < K_75.length; k++) {
      double ambientC = 10.0 + 5.0 * k;
      for (var column : Ampacity.Insulation.values()) {
        boolean is75 = column == Ampacity.Insulation.C75;
        add(
            checks,
            AMBIENT,
            (int) ambientC + " °C of air" + (is75 ? ", 75 °C column" : ", 90 °C column"),
            "1",
            is75 ? K_75[k] : K_90[k],
            1e-12,
            () -> Ampacity.ambientFactor(column, ambientC));
      }
    }
  }

  /** The factor if all five whole degrees of a printed step give it, else NaN. */
  private static double sameOverTheStep(double coldestC) {
    double factor = cold(coldestC);
    for (int k = 1; k < 5; k++) {
      if (cold(coldestC + k) != factor) {
        return Double.NaN;
      }
    }
    return factor;
  }

  private static double cold(double coldestC) {
    return Objects.requireNonNull(ColdTable.factor(coldestC));
  }

  private static double copper(WireSize size, WireSize.Strands strands, double conductorC) {
    return WireResistance.ohmPerM(size, strands, WireResistance.Metal.COPPER, conductorC);
  }

  private static WireSize size(String text) {
    return Objects.requireNonNull(WireSize.find(text));
  }

  private static Arrangement built(int strings) {
    return StringJudge.asBuilt(
            List.of(Equipment.array("roof", module(39.8, -0.0031), 3, strings)),
            Equipment.c150(),
            Equipment.rules(-22.0, 38.0))
        .arrays()
        .get(0);
  }

  private static greyspell.array.ModuleSpec module(double openV, double openPerK) {
    return Equipment.module("published", openV, 9.83, 32.5, 9.25, openPerK, 1000.0);
  }

  private static void add(
      List<PublishedCheck> checks,
      String source,
      String what,
      String unit,
      double expected,
      double tolerance,
      DoubleSupplier got) {
    checks.add(new PublishedCheck("electrical", source, what, unit, expected, tolerance, got));
  }
}
