package greyspell.array;

import greyspell.array.SheetFinding.Severity;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks for misread figures on a module's data sheet: each against the others, and against what
 * modules of silicon or thin film usually have.
 *
 * <pre>
 * Pr / (Vmp Imp) within 3 % of 1
 * FF = Vmp Imp / (Voc Isc) below FF0 = [v - ln(v + 0.72)] / (v + 1),   v = Voc / (n kT/q)
 *
 * Pr   rated power            W        Voc, Vmp   open-circuit, maximum-power voltage    V
 * n    cells in series        1        Isc, Imp   short-circuit, maximum-power current   A
 * FF0  fill factor of a cell without resistances and with ideality 1, kT/q at 25 °C       1
 *
 *                                        usual (else caution)        possible (else fail)
 * Voc / n                                                             0.50 .. 0.78 V
 * Vmp / Voc                              0.75 .. 0.88                 0.65 .. 0.92
 * Imp / Isc                              0.84 .. 0.97                 0.75 .. 0.99
 * FF                                     0.65 .. 0.85                 0.50 .. FF0
 * Pr / area / 1000 W/m²                  0.08 .. 0.24                 0.04 .. 0.25
 * change of Voc                          -0.40 .. -0.20 %/K           -0.60 .. -0.10 %/K
 * change of Pr                           -0.52 .. -0.20 %/K           -0.70 .. -0.10 %/K
 * change of Isc                          0.01 .. 0.10 %/K             -0.05 .. 0.15 %/K
 * nominal cell temperature               38 .. 52 °C
 * highest system voltage                 600 .. 1500 V                Voc or more .. 2000 V
 * </pre>
 *
 * A coefficient outside its usual band that falls into it when its number is read in another unit
 * (V/K, mV/K a cell, A/K, mA/K, W/K, a share of 1 per K) is named as that unit. What is wrong is a
 * guess from the other figures; the sheet decides. Sources: FF0 Green (1981), Solid-State
 * Electronics 24, 788 (from memory); the bands are common practice, no source. Held by
 * DataSheetLintTest.
 */
public final class DataSheetLint {
  private static final double POWER_MISS_SHARE = 0.03;

  private final ModuleSpec module;
  private final List<SheetFinding> findings = new ArrayList<>();

  private DataSheetLint(ModuleSpec module) {
    this.module = module;
  }

  /** Everything that is off; empty if the sheet is sound. */
  public static List<SheetFinding> of(ModuleSpec module) {
    var lint = new DataSheetLint(module);
    lint.power();
    lint.cells();
    lint.ratios();
    lint.fillFactor();
    lint.area();
    lint.coefficients();
    lint.heat();
    lint.systemVoltage();
    lint.curve();
    return List.copyOf(lint.findings);
  }

  /** Whether open-circuit voltage of a silicon module usually changes so. */
  public static boolean isUsualVoltageCoefficient(double perK) {
    return Coefficient.VOLTAGE.isUsual(perK);
  }

  private void power() {
    double productW = module.maxPowerV() * module.maxPowerA();
    double off = module.ratedPowerW() / productW - 1.0;
    if (Math.abs(off) <= POWER_MISS_SHARE) {
      return;
    }
    boolean isVoltageUsual = isUsual(Ratio.VOLTAGE, module.maxPowerV() / module.openCircuitV());
    boolean isCurrentUsual = isUsual(Ratio.CURRENT, module.maxPowerA() / module.shortCircuitA());
    String suspect =
        isVoltageUsual && isCurrentUsual
            ? "rated power"
            : isVoltageUsual ? "maximum-power current" : "maximum-power voltage";
    fail(
        suspect,
        "rated power is "
            + Show.power(module.ratedPowerW())
            + ", but maximum-power voltage times current is "
            + Show.voltage(module.maxPowerV())
            + " × "
            + amps(module.maxPowerA())
            + " = "
            + Show.power(productW)
            + ", "
            + Show.percent(Math.abs(off))
            + (off > 0.0 ? " less" : " more"));
  }

  private void cells() {
    double perCellV = module.openCircuitV() / module.cellsInSeries();
    if (isCellVoltage(perCellV)) {
      return;
    }
    int half = module.cellsInSeries() / 2;
    String told =
        Show.voltage(module.openCircuitV())
            + " open-circuit over "
            + module.cellsInSeries()
            + " cells in series is "
            + Show.number(perCellV, 2)
            + " V a cell, where 0.50 to 0.78 V is possible";
    if (half > 0 && isCellVoltage(module.openCircuitV() / half)) {
      fail(
          "cells in series",
          told
              + "; with half of them, "
              + half
              + ", it would fit: modules of half-cut cells have two halves side by side");
    } else if (isCellVoltage(module.openCircuitV() / (2.0 * module.cellsInSeries()))) {
      fail("cells in series", told + "; with twice as many it would fit");
    } else {
      boolean isVoltageUsual = isUsual(Ratio.VOLTAGE, module.maxPowerV() / module.openCircuitV());
      fail(isVoltageUsual ? "cells in series" : "open-circuit voltage", told);
    }
  }

  private void ratios() {
    judge(
        Ratio.VOLTAGE,
        module.maxPowerV() / module.openCircuitV(),
        // the one that does not suit the cells
        isCellVoltage(module.openCircuitV() / module.cellsInSeries())
            ? "maximum-power voltage"
            : "open-circuit voltage",
        "maximum-power voltage "
            + Show.voltage(module.maxPowerV())
            + " over open-circuit voltage "
            + Show.voltage(module.openCircuitV()));
    double wantedA = module.ratedPowerW() / module.maxPowerV();
    judge(
        Ratio.CURRENT,
        module.maxPowerA() / module.shortCircuitA(),
        Math.abs(module.maxPowerA() / wantedA - 1.0) <= POWER_MISS_SHARE
            ? "short-circuit current"
            : "maximum-power current",
        "maximum-power current "
            + amps(module.maxPowerA())
            + " over short-circuit current "
            + amps(module.shortCircuitA()));
  }

  private void judge(Ratio ratio, double value, String suspect, String what) {
    if (!isUsual(ratio, value)) {
      add(
          value >= ratio.least && value <= ratio.most ? Severity.CAUTION : Severity.FAIL,
          suspect,
          what
              + " is "
              + Show.number(value, 2)
              + ", usual is "
              + Show.number(ratio.low, 2)
              + " to "
              + Show.number(ratio.high, 2));
    }
  }

  private void fillFactor() {
    double fill = module.fillFactor();
    double thermalV = SingleDiode.BOLTZMANN_EV_PER_K * SingleDiode.REFERENCE_K;
    double v = module.openCircuitV() / (module.cellsInSeries() * thermalV);
    double most = (v - Math.log(v + 0.72)) / (v + 1.0);
    String told =
        "fill factor (maximum power over open-circuit voltage × short-circuit current) is ";
    if (fill > most) {
      fail(
          "maximum-power point",
          told
              + Show.number(fill, 3)
              + ", above the "
              + Show.number(most, 3)
              + " of a perfect cell of this voltage");
    } else if (fill < 0.50) {
      fail(
          "maximum-power point",
          told + Show.number(fill, 3) + ", below the 0.5 of any sound module");
    } else if (fill < 0.65 || fill > 0.85) {
      add(
          Severity.CAUTION,
          "maximum-power point",
          told + Show.number(fill, 3) + ", usual is 0.65 to 0.85");
    }
  }

  private void area() {
    Double efficiency = module.efficiency();
    Double areaM2 = module.areaM2();
    if (efficiency == null || areaM2 == null || (efficiency >= 0.08 && efficiency <= 0.24)) {
      return;
    }
    boolean isPowerMet =
        Math.abs(module.ratedPowerW() / (module.maxPowerV() * module.maxPowerA()) - 1.0)
            <= POWER_MISS_SHARE;
    add(
        efficiency >= 0.04 && efficiency <= 0.25 ? Severity.CAUTION : Severity.FAIL,
        isPowerMet ? "area" : "rated power",
        Show.power(module.ratedPowerW())
            + " from "
            + Show.number(areaM2, 2)
            + " m² is an efficiency of "
            + Show.number(100.0 * efficiency, 1)
            + " %, usual is 8 to 24 %");
  }

  private void coefficients() {
    double voc = module.openCircuitPerK();
    String onV = " on " + Show.voltage(module.openCircuitV());
    String onA = " on " + amps(module.shortCircuitA());
    coefficient(
        Coefficient.VOLTAGE,
        voc,
        new Reading("V/K", onV, voc * 100.0 / module.openCircuitV()),
        new Reading(
            "mV/K a cell",
            onV + " of " + module.cellsInSeries() + " cells",
            voc * 0.1 * module.cellsInSeries() / module.openCircuitV()),
        new Reading("a share of 1 per K", "", voc * 100.0));
    double power = module.powerPerK();
    coefficient(
        Coefficient.POWER,
        power,
        new Reading(
            "W/K", " on " + Show.power(module.ratedPowerW()), power * 100.0 / module.ratedPowerW()),
        new Reading("a share of 1 per K", "", power * 100.0));
    double isc = module.shortCircuitPerK();
    coefficient(
        Coefficient.CURRENT,
        isc,
        new Reading("A/K", onA, isc * 100.0 / module.shortCircuitA()),
        new Reading("mA/K", onA, isc * 0.1 / module.shortCircuitA()),
        new Reading("a share of 1 per K", "", isc * 100.0),
        new Reading("%/K with a wrong sign", "", -isc));
    if (Coefficient.VOLTAGE.isUsual(voc)
        && Coefficient.POWER.isUsual(power)
        && power > voc + 2e-4) {
      add(
          Severity.CAUTION,
          "coefficients of power and voltage",
          "power falls by "
              + percentPerK(-power)
              + " and open-circuit voltage by "
              + percentPerK(-voc)
              + ", but power usually falls faster than voltage: are the two swapped?");
    }
  }

  private void coefficient(Coefficient kind, double perK, Reading... readings) {
    if (kind.isUsual(perK)) {
      return;
    }
    var told =
        new StringBuilder("change of " + kind.words + " with temperature is ")
            .append(percentPerK(perK))
            .append(", usual is ")
            .append(percentPerK(kind.low))
            .append(" to ")
            .append(percentPerK(kind.high));
    for (Reading reading : readings) {
      if (kind.isUsual(reading.perK())) {
        told.append("; it looks like ")
            .append(reading.unit())
            .append("; ")
            .append(
                reading.base().isEmpty()
                    ? "that"
                    : Show.trimmed(100.0 * perK, 4) + " " + reading.unit() + reading.base())
            .append(" is ")
            .append(percentPerK(reading.perK()));
        break;
      }
    }
    add(
        perK >= kind.least && perK <= kind.most ? Severity.CAUTION : Severity.FAIL,
        "temperature coefficient of " + kind.words,
        told.toString());
  }

  private void heat() {
    double nominal = module.nominalCellC();
    if (!(nominal >= 38.0 && nominal <= 52.0)) {
      add(
          Severity.CAUTION,
          "nominal cell temperature",
          "nominal cell temperature is "
              + Show.temperature(nominal)
              + ", usual is 38 to 52 °C"
              + (nominal == 25.0 ? "; 25 °C is that of the test conditions" : ""));
    }
  }

  private void systemVoltage() {
    Double most = module.maxSystemV();
    if (most == null) {
      return;
    }
    String told = "highest system voltage is " + Show.voltage(most);
    if (most < module.openCircuitV()) {
      fail(
          "highest system voltage",
          told
              + ", below the "
              + Show.voltage(module.openCircuitV())
              + " open-circuit of a single module");
    } else if (most > 2000.0) {
      fail("highest system voltage", told + ", usual is 600, 1000 or 1500 V");
    } else if (most < 600.0 || most > 1500.0) {
      add(Severity.CAUTION, "highest system voltage", told + ", usual is 600, 1000 or 1500 V");
    }
  }

  /** What the fit says, unless a finding above already tells why. */
  private void curve() {
    DiodeFit fit = DataSheetFit.of(module);
    if (!fit.failure().isEmpty() && findings.isEmpty()) {
      fail("maximum-power point", fit.failure());
    }
    if (findings.isEmpty()) {
      for (String caution : fit.cautions()) {
        add(
            Severity.CAUTION,
            "temperature coefficients",
            caution.replace("module " + module.name() + ": ", ""));
      }
    }
  }

  private void fail(String suspect, String finding) {
    add(Severity.FAIL, suspect, finding);
  }

  private void add(Severity severity, String suspect, String finding) {
    findings.add(new SheetFinding(severity, suspect, finding));
  }

  private static boolean isCellVoltage(double perCellV) {
    return perCellV >= 0.50 && perCellV <= 0.78;
  }

  private static boolean isUsual(Ratio ratio, double value) {
    return value >= ratio.low && value <= ratio.high;
  }

  private static String percentPerK(double perK) {
    return Show.trimmed(100.0 * perK, Math.abs(perK) < 1e-4 ? 4 : 3) + " %/K";
  }

  private static String amps(double currentA) {
    return Show.trimmed(currentA, 2) + " A";
  }

  /**
   * What the number would be if it were in this unit.
   *
   * @param base what such a figure is a part of: " on 49.6 V"; empty if of nothing
   */
  private record Reading(String unit, String base, double perK) {}

  private enum Ratio {
    VOLTAGE(0.75, 0.88, 0.65, 0.92),
    CURRENT(0.84, 0.97, 0.75, 0.99);

    final double low;
    final double high;
    final double least;
    final double most;

    Ratio(double low, double high, double least, double most) {
      this.low = low;
      this.high = high;
      this.least = least;
      this.most = most;
    }
  }

  private enum Coefficient {
    VOLTAGE("open-circuit voltage", -0.0040, -0.0020, -0.0060, -0.0010),
    POWER("power", -0.0052, -0.0020, -0.0070, -0.0010),
    CURRENT("short-circuit current", 0.0001, 0.0010, -0.0005, 0.0015);

    final String words;
    final double low;
    final double high;
    final double least;
    final double most;

    Coefficient(String words, double low, double high, double least, double most) {
      this.words = words;
      this.low = low;
      this.high = high;
      this.least = least;
      this.most = most;
    }

    boolean isUsual(double perK) {
      return perK >= low && perK <= high;
    }
  }
}
