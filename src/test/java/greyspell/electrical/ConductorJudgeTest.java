package greyspell.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.electrical.Ampacity.Insulation;
import greyspell.electrical.Finding.Severity;
import greyspell.electrical.WireResistance.Metal;
import greyspell.electrical.WireSize.Strands;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductorJudgeTest {
  private static final double FIFTY_FT_M = 15.24;

  /** Own construction: 2 × 50 ft × 1.24 Ohm/1000 ft × 20 A = 2.48 V, 10.33 % of 24 V. */
  @Test
  void dropOfTenAwgWorkedByHand() {
    var run = Equipment.run(WireSize.AWG_10, FIFTY_FT_M, 30.0, Insulation.C75);
    assertEquals(2.480, 20.0 * WireResistance.loopOhm(run, 75.0), 0.0005);
    assertEquals(0.1033, 20.0 * WireResistance.loopOhm(run, 75.0) / 24.0, 0.00005);
  }

  /** Own construction: 2 × 8 m × 1.21 Ohm/km × 60 A = 1.162 V, 2.42 % of 48 V, 69.7 W at 20 °C. */
  @Test
  void dropOfSixteenSquareMillimetresWorkedByHand() {
    var run = Equipment.run(WireSize.MM2_16, 8.0, 20.0, Insulation.C90);
    double dropV = 60.0 * WireResistance.loopOhm(run, 20.0);
    assertEquals(1.162, dropV, 0.0005);
    assertEquals(0.0242, dropV / 48.0, 0.00005);
    assertEquals(69.7, 60.0 * dropV, 0.05);
  }

  /**
   * 10 AWG, 75 °C column 35 A, 12 A, 30 °C of air: (12/35)² × 45 K = 5.29 K warmer; 2 × 15.24 m ×
   * 1.24/304.8 × (234.5 + 35.29)/(234.5 + 75) = 0.10809 Ohm; 1.2971 V of 100 V; 15.57 W.
   */
  @Test
  void metalTemperatureDropAndLossWorkedByHand() {
    var run = Equipment.run(WireSize.AWG_10, FIFTY_FT_M, 30.0, Insulation.C75);
    var load = new RunLoad(12.0, 16.0, 100.0, 50_000.0, 2_000_000.0);
    var judged = ConductorJudge.judge(run, load);
    assertEquals(35.29, judged.stated().conductorC(), 0.005);
    assertEquals(0.10809, judged.stated().loopOhm(), 0.000005);
    assertEquals(1.2971, judged.stated().dropV(), 0.0001);
    assertEquals(15.565, judged.stated().lossW(), 0.005);
    assertEquals(5404.5, judged.stated().yearLossWh(), 0.5);
    assertEquals(35.0, judged.ampacityA());
    // 16 A, × 1.25 = 20 A of 35 A
    assertEquals(Severity.PASS, judged.verdict());
    assertEquals(judged.stated().loopOhm(), ConductorJudge.workingOhm(run, 12.0));
  }

  /** 10 AWG: 35 A in the 75 °C column; 90 °C column 40 A × 0.76 = 30.4 A in 55 °C of air. */
  @ParameterizedTest
  @CsvSource({
    "20.0, 30, C75, PASS", // × 1.25 = 25 A of 35 A
    "27.0, 30, C75, CAUTION", // 33.75 A of 35 A: hardly any room
    "28.5, 30, C75, FAIL", // 35.6 A of 35 A at the terminals
    "26.0, 55, C90, PASS", // 26 A of 30.4 A, 32.5 A of 35 A
    "26.0, 55, C75, FAIL", // 35 A × 0.67 = 23.4 A
    "5.0, 80, C75, FAIL", // air hotter than the insulation's rating
  })
  void heatVerdictsWorkedByHand(
      double circuitA, double ambientC, Insulation insulation, Severity expected) {
    var judged =
        ConductorJudge.judge(
            Equipment.run(WireSize.AWG_10, 5.0, ambientC, insulation),
            new RunLoad(circuitA / 1.6, circuitA, 200.0, 0.0, 0.0));
    assertEquals(expected, finding(judged, "heat").severity());
  }

  @Test
  void metricAndAluminiumAreNotJudgedUnlessTheirOwnTableIsStated() {
    var load = new RunLoad(20.0, 25.0, 100.0, 0.0, 0.0);
    var metric = Equipment.run(WireSize.MM2_6, 10.0, 30.0, Insulation.C90);
    var judged = ConductorJudge.judge(metric, load);
    assertNull(judged.ampacityA());
    assertEquals(Severity.UNKNOWN, finding(judged, "heat").severity());
    assertTrue(finding(judged, "heat").text().endsWith("not judged"));
    assertTrue(finding(judged, "heat").reason().contains("state allowed_current"));
    assertEquals(90.0, judged.stated().conductorC()); // overstated on purpose
    assertEquals(Severity.PASS, finding(stated(metric, 40.0, load), "heat").severity());
    var tooLittle = finding(stated(metric, 31.0, load), "heat");
    assertEquals(Severity.FAIL, tooLittle.severity());
    // a stated current is the cable's: of its terminals nothing is known
    assertTrue(
        tooLittle.reason().startsWith("too much for hours on end; by the"), tooLittle.reason());
    assertTrue(tooLittle.reason().endsWith("its terminals are not looked at"), tooLittle.reason());
    var aluminium =
        new ConductorRun(
            metric.kind(),
            "long",
            10.0,
            WireSize.AWG_2,
            Strands.STRANDED,
            Metal.ALUMINIUM,
            1,
            30.0,
            Insulation.C75,
            null);
    assertTrue(
        finding(ConductorJudge.judge(aluminium, load), "heat").reason().contains("aluminium"));
  }

  private static ConductorJudgement stated(ConductorRun run, double ampacityA, RunLoad load) {
    return ConductorJudge.judge(
        new ConductorRun(
            run.kind(),
            run.name(),
            run.lengthM(),
            run.size(),
            run.strands(),
            run.metal(),
            run.inParallel(),
            run.ambientC(),
            run.insulation(),
            ampacityA),
        load);
  }

  @Test
  void wiresSideBySideShareTheCurrent() {
    var one = Equipment.run(WireSize.AWG_4, 6.0, 30.0, Insulation.C75);
    var two =
        new ConductorRun(
            one.kind(),
            one.name(),
            6.0,
            one.size(),
            one.strands(),
            one.metal(),
            2,
            30.0,
            one.insulation(),
            null);
    var load = new RunLoad(60.0, 75.0, 51.2, 0.0, 0.0);
    assertEquals(170.0, ConductorJudge.judge(two, load).ampacityA());
    assertEquals(0.5 * WireResistance.loopOhm(one, 50.0), WireResistance.loopOhm(two, 50.0), 1e-15);
    assertEquals(
        Severity.CAUTION,
        finding(ConductorJudge.judge(two, load), "wires side by side").severity());
  }

  @Test
  void protectionOfTheSmallestWiresIsCapped() {
    var run = Equipment.run(WireSize.AWG_12, 3.0, 30.0, Insulation.C90);
    var over = ConductorJudge.judge(run, new RunLoad(14.0, 17.0, 100.0, 0.0, 0.0));
    assertEquals(Severity.CAUTION, finding(over, "small wire").severity()); // 21.25 A over 20 A
    var under = ConductorJudge.judge(run, new RunLoad(12.0, 15.0, 100.0, 0.0, 0.0));
    assertTrue(under.findings().stream().noneMatch(f -> f.subject().equals("small wire")));
  }

  /** Drop of a solid wire of the same gauge by its geometry, 127 × 92^((36 - n)/39) µm. */
  @ParameterizedTest
  @CsvSource({
    "14, AWG_14",
    "12, AWG_12",
    "10, AWG_10",
    "8, AWG_8",
    "6, AWG_6",
    "4, AWG_4",
    "3, AWG_3",
    "2, AWG_2",
    "1, AWG_1",
    "0, AWG_1_0",
    "-1, AWG_2_0",
    "-2, AWG_3_0",
    "-3, AWG_4_0"
  })
  void strandedWireIsTwoPerCentAboveSolidGeometry(int gauge, WireSize size) {
    double diameterM = 0.127e-3 * Math.pow(92.0, (36 - gauge) / 39.0);
    double solidOhmPerM =
        1.7241e-8 * (1 + 0.00393 * 55.0) / (Math.PI / 4.0 * diameterM * diameterM);
    double ratio =
        WireResistance.ohmPerM(size, Strands.STRANDED, Metal.COPPER, 75.0) / solidOhmPerM;
    assertTrue(ratio > 1.0175 && ratio < 1.0255, size + " " + ratio);
  }

  @Test
  void aluminiumIsCopperOverItsConductivity() {
    double copper = WireResistance.ohmPerM(WireSize.MM2_50, Strands.STRANDED, Metal.COPPER, 20.0);
    double aluminium =
        WireResistance.ohmPerM(WireSize.MM2_50, Strands.STRANDED, Metal.ALUMINIUM, 20.0);
    assertEquals(copper / 0.61, aluminium, 1e-12);
    // at 75 °C: (303.1 / 248.1) / (309.5 / 254.5) more
    assertEquals(
        1.6468,
        WireResistance.ohmPerM(WireSize.AWG_2, Strands.STRANDED, Metal.ALUMINIUM, 75.0)
            / WireResistance.ohmPerM(WireSize.AWG_2, Strands.STRANDED, Metal.COPPER, 75.0),
        0.0001);
  }

  @Test
  void sizesAreReadAsPeopleWriteThem() {
    for (String text : List.of("10 AWG", "AWG 10", "10awg", " 10  awg ")) {
      assertEquals(WireSize.AWG_10, WireSize.find(text), text);
    }
    assertEquals(WireSize.AWG_2_0, WireSize.find("2/0 AWG"));
    assertEquals(WireSize.AWG_2_0, WireSize.find("AWG 2/0"));
    for (String text : List.of("1.5 mm2", "1,5 mm²", "1.5mm²", "1.5 sqmm")) {
      assertEquals(WireSize.MM2_1_5, WireSize.find(text), text);
    }
    for (String text : List.of("", "10", "11 AWG", "mm2", "16 mm", "5/0 AWG", "AWG", "16")) {
      assertNull(WireSize.find(text), text);
    }
    for (WireSize size : WireSize.values()) {
      assertEquals(size, WireSize.find(size.label()));
    }
  }

  @Test
  void theSizeTableShowsTheNeighboursOfWhatIsStated() {
    var load = new RunLoad(20.0, 25.0, 100.0, 100_000.0, 5e6);
    var sizes =
        ConductorJudge.judge(Equipment.run(WireSize.AWG_14, 9.0, 30.0, Insulation.C90), load)
            .sizes();
    assertEquals(
        List.of(WireSize.AWG_14, WireSize.AWG_12, WireSize.AWG_10, WireSize.AWG_8),
        sizes.stream().map(ConductorJudgement.SizeRow::size).toList());
    var metric =
        ConductorJudge.judge(Equipment.run(WireSize.MM2_2_5, 9.0, 30.0, Insulation.C90), load)
            .sizes();
    assertEquals(WireSize.MM2_1_5, metric.get(0).size());
    assertEquals(5, metric.size());
  }

  /**
   * Three hours of 1000, 0 and 2000 Wh at 50 V: 20² + 0 + 40² = 2000 A²h, 3000 Wh, over 2 years.
   */
  @Test
  void hoursBecomeASumOfSquares() {
    var load =
        new RunLoad(40.0, 50.0, 50.0, 0.0, 0.0)
            .withHours(new double[] {1000.0, 0.0, 2000.0}, 50.0, 2.0);
    assertEquals(1000.0, load.squareCurrentA2H());
    assertEquals(1500.0, load.throughputWh());
    var same =
        new RunLoad(40.0, 50.0, 50.0, 0.0, 0.0)
            .withCurrents(new double[] {20.0, 0.0, 40.0}, 3000.0, 2.0);
    assertEquals(load, same);
  }

  /** Of every system and column: thicker wire loses less, at rated current and over the year. */
  @Property
  void thickerWireLosesLess(
      @ForAll @DoubleRange(min = 0.1, max = 300) double currentA,
      @ForAll @DoubleRange(min = 0.1, max = 100) double lengthM,
      @ForAll @DoubleRange(min = -30, max = 70) double ambientC,
      @ForAll Insulation insulation) {
    var load = new RunLoad(currentA, currentA, 51.2, currentA * currentA * 500, 1e6);
    for (boolean isAwg : new boolean[] {true, false}) {
      ConductorJudgement.SizeRow thinner = null;
      for (WireSize size :
          Arrays.stream(WireSize.values()).filter(s -> s.isAwg() == isAwg).toList()) {
        var row =
            ConductorJudge.judge(Equipment.run(size, lengthM, ambientC, insulation), load).stated();
        if (thinner != null) {
          assertTrue(row.dropV() < thinner.dropV(), size.label());
          assertTrue(row.yearLossWh() < thinner.yearLossWh(), size.label());
        }
        thinner = row;
      }
    }
  }

  /** Same power at twice the voltage: half the current, a quarter of the heat or less. */
  @Property
  void twiceTheVoltageIsAQuarterOfTheHeat(
      @ForAll @DoubleRange(min = 100, max = 5000) double powerW) {
    var run = Equipment.run(WireSize.AWG_8, 20.0, 30.0, Insulation.C90);
    double low = ConductorJudge.judge(run, load(powerW, 48.0)).stated().lossW();
    double high = ConductorJudge.judge(run, load(powerW, 96.0)).stated().lossW();
    assertTrue(high <= 0.25 * low * (1 + 1e-12), low + " " + high);
  }

  /** 3 strings of 13.06 A at 4 × 31.4 V; 5.12 kW of controller; 6 kW over 0.9 at 51.2 and 44 V. */
  @Test
  void loadsOfTheThreeRunsWorkedByHand() {
    var rules = Equipment.rules(-22.0, 36.0);
    var best =
        Objects.requireNonNull(
            StringJudge.judge(Equipment.M410, Equipment.c250(), rules, Wanted.modules(12)).best());
    var strings =
        RunLoad.ofArray(
            Equipment.array("roof", Equipment.M410, 4, 3), Equipment.c250(), rules.bankV());
    assertEquals(39.18, strings.ratedA(), 1e-9);
    assertEquals(52.125, strings.circuitA(), 1e-9);
    assertEquals(125.6, strings.voltageV(), 1e-9);
    var controller = RunLoad.ofController(Equipment.c250(), rules, best.ratedPowerW());
    assertEquals(4920.0 * 0.97 / 51.2, controller.ratedA(), 1e-9);
    assertEquals(100.0, controller.circuitA(), 1e-9);
    var inverter = RunLoad.ofInverter(Equipment.inverter(null), Equipment.bank(), 44.0);
    assertEquals(6000.0 / 0.9 / 51.2, inverter.ratedA(), 1e-9);
    assertEquals(6000.0 / 0.9 / 44.0, inverter.circuitA(), 1e-9);
  }

  /**
   * Without tracking, two strings of one module work at the bank's 24 V, where the curve gives more
   * than at its best point and less than at short circuit: 2 × 13.06 to 2 × 13.9 A.
   */
  @Test
  void withoutTrackingTheCableWorksAtTheBanksVoltage() {
    var array = Equipment.array("roof", Equipment.M410, 1, 2);
    var atBank = RunLoad.ofArray(array, Equipment.pwm(), 24.0);
    assertEquals(24.0, atBank.voltageV());
    assertTrue(atBank.ratedA() > 27.4 && atBank.ratedA() < 27.8, "" + atBank.ratedA());
    assertEquals(2 * 1.25 * 13.9, atBank.circuitA(), 1e-9);
    var tracked = RunLoad.ofArray(array, Equipment.c150(), 24.0);
    assertEquals(31.4, tracked.voltageV());
    assertEquals(26.12, tracked.ratedA(), 1e-9);
    var run = Equipment.run(WireSize.AWG_10, 5.0, 30.0, Insulation.C90);
    double share = ConductorJudge.judge(run, atBank).stated().dropShare();
    // 31.4 / 24 × 27.6 / 26.1 and somewhat warmer metal: more than a third above
    assertTrue(share > 1.37 * ConductorJudge.judge(run, tracked).stated().dropShare());
    // a bank above the module's open circuit takes nothing
    assertEquals(0.0, RunLoad.ofArray(array, Equipment.pwm(), 48.0).ratedA());
  }

  @Test
  void ofACableOfUnknownSizeOnlyAStatedCurrentIsJudged() {
    var load = new RunLoad(20.0, 25.0, 100.0, 0.0, 0.0);
    var silent = new UnknownRun(ConductorRun.Kind.ARRAY_TO_CONTROLLER, "roof", null);
    List<Finding> found = silent.findings(load, "no loss of it is booked");
    assertEquals(Severity.UNKNOWN, StringJudgeTest.finding(found, "heat").severity());
    assertTrue(StringJudgeTest.finding(found, "heat").reason().contains("allowed_current"));
    var drop = StringJudgeTest.finding(found, "voltage drop");
    assertEquals(Severity.CAUTION, drop.severity());
    assertTrue(drop.reason().startsWith("no loss of it is booked"), drop.reason());
    var stated = new UnknownRun(ConductorRun.Kind.ARRAY_TO_CONTROLLER, "roof", 40.0);
    assertEquals(
        Severity.PASS, StringJudgeTest.finding(stated.findings(load, "-"), "heat").severity());
    var small = new UnknownRun(ConductorRun.Kind.ARRAY_TO_CONTROLLER, "roof", 24.0);
    assertEquals(
        Severity.FAIL, StringJudgeTest.finding(small.findings(load, "-"), "heat").severity());
  }

  private static RunLoad load(double powerW, double voltageV) {
    return new RunLoad(powerW / voltageV, powerW / voltageV, voltageV, 0.0, 0.0);
  }

  private static Finding finding(ConductorJudgement judged, String subject) {
    return StringJudgeTest.finding(judged.findings(), subject);
  }
}
