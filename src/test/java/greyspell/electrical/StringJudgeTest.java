package greyspell.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.array.ControllerSpec;
import greyspell.array.ModuleSpec;
import greyspell.electrical.Finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StringJudgeTest {
  private static final ModuleSpec M410 = Equipment.M410;

  /** Common practice, worked by hand: 39.1 V, -0.33 %/K, -10 °C. */
  @Test
  void threeInSeriesStayUnderAHundredAndFortyFive() {
    var module = Equipment.module("worked", 39.1, 9.0, 32.0, 8.5, -0.0033, 1000.0);
    assertEquals(43.616, StringVoltages.openV(module, -10.0), 0.0005);
    var controller = Equipment.controller(1, 60.0, 20.0, 140.0, 25.0, 145.0, 50.0);
    var judged = judge(module, controller, -10.0, 35.0, 3);
    var three = of(judged, 3);
    assertEquals(130.84815, three.coldOpenV(), 1e-9);
    assertEquals(Severity.PASS, finding(three, "coldest morning, controller").severity());
    assertEquals((145.0 - 130.84815) / 145.0, Objects.requireNonNull(three.marginShare()), 1e-9);
    assertEquals(three, judged.best());
  }

  /**
   * 54 cells, 37.5 V, -0.27 %/K, worked by hand: 3 × 37.5 × (1 + 0.0027 × 65) = 132.2 V at -40 °C;
   * 6 × 37.5 × (1 + 0.0027 × 35) = 246.3 V at -10 °C; × (1 + 0.0027 × 45) = 252.3 V at -20 °C.
   */
  @ParameterizedTest
  @CsvSource({
    "3, -40, 150, 132.24375, PASS",
    "6, -10, 250, 246.2625, CAUTION",
    "6, -20, 250, 252.3375, FAIL"
  })
  void coldVerdictsWorkedByHand(
      int inSeries, double lowC, double mostV, double coldV, Severity expected) {
    var controller = Equipment.controller(1, 100.0, 30.0, null, null, mostV, 70.0);
    var a = of(judge(M410, controller, lowC, 35.0, inSeries), inSeries);
    assertEquals(coldV, a.coldOpenV(), 1e-9);
    assertEquals(expected, finding(a, "coldest morning, controller").severity());
  }

  /** The same module, two in series: 52 to 54 V with cells at 65 to 75 °C (worked by hand). */
  @Test
  void twoInSeriesCannotFillAnLfpBankInTheHeat() {
    assertEquals(57.6, StringRules.usualChargingV(Equipment.bank()), 1e-9);
    // 45 °C sheet: 31.25 K of rise, so 40 °C of air is 71.25 °C of cell
    var volts = StringVoltages.of(M410, -10.0, 40.0);
    assertEquals(71.25, volts.hotCellC(), 1e-9);
    assertEquals(31.25, volts.hotRiseK(), 1e-9);
    assertTrue(volts.isFromCurve());
    double byPowerCoefficientV = 2 * 31.4 * (1 - 0.0034 * 46.25);
    assertEquals(52.92, byPowerCoefficientV, 0.01);
    // the curve also lets the current rise, so its voltage falls a little further
    assertTrue(2 * volts.hotPowerV() < byPowerCoefficientV);
    assertEquals(byPowerCoefficientV, 2 * volts.hotPowerV(), 0.03 * byPowerCoefficientV);
    var two = of(judge(M410, Equipment.c150(), -10.0, 40.0, 2), 2);
    var bank = finding(two, "hottest afternoon, bank");
    assertEquals(Severity.FAIL, bank.severity());
    assertTrue(bank.text().contains("57.6 V"), bank.text());
    assertEquals(Severity.PASS, finding(two, "hottest afternoon, window").severity());
  }

  @Test
  void betweenTheChargingVoltageAndItsHeadroomIsACaution() {
    var rules = Equipment.rules(-10.0, 40.0);
    double hotV = 2 * StringVoltages.of(M410, -10.0, 40.0).hotPowerV();
    var judged =
        StringJudge.judge(
            M410, Equipment.c150(), rules.withChargingV(hotV - 4.9), Wanted.modules(2));
    assertEquals(Severity.CAUTION, finding(of(judged, 2), "hottest afternoon, bank").severity());
    judged =
        StringJudge.judge(
            M410, Equipment.c150(), rules.withChargingV(hotV - 5.1), Wanted.modules(2));
    assertEquals(Severity.PASS, finding(of(judged, 2), "hottest afternoon, bank").severity());
  }

  /** 39.8 V, -0.31 %/K, 3 in series, -22 °C: 136.8 V by the sheet, 143.3 V by the table. */
  @Test
  void theTableAloneOnlyCautions() {
    var module = Equipment.module("worked", 39.8, 9.83, 32.5, 9.25, -0.0031, 1000.0);
    var controller = Equipment.controller(1, 60.0, 20.0, 135.0, 25.0, 142.0, 50.0);
    var three = of(judge(module, controller, -22.0, 35.0, 3), 3);
    assertEquals(136.797, three.coldOpenV(), 0.001);
    assertEquals(143.28, Objects.requireNonNull(three.coldOpenTableV()), 0.001);
    var cold = finding(three, "coldest morning, controller");
    assertEquals(Severity.CAUTION, cold.severity());
    assertTrue(cold.reason().contains("690.7(A), 2017 to 2023 editions"), cold.reason());
  }

  @Test
  void theLowestOfThreeLimitsIsNamed() {
    var wide = Equipment.controller(1, 30.0, 120.0, 560.0, 150.0, 650.0, 30.0);
    var rules = Equipment.rules(-20.0, 35.0);
    var sixteen = of(StringJudge.judge(M410, wide, rules, Wanted.modules(16)), 16);
    assertEquals(672.9, sixteen.coldOpenV(), 0.01);
    assertEquals("dwelling", sixteen.limitName());
    assertEquals(Severity.FAIL, finding(sixteen, "coldest morning, dwelling").severity());
    assertEquals(Severity.FAIL, finding(sixteen, "coldest morning, controller").severity());
    assertEquals(Severity.PASS, finding(sixteen, "coldest morning, module").severity());
    var barn = StringJudge.judge(M410, wide, rules.withDwellingLimitV(null), Wanted.modules(16));
    assertEquals("controller", of(barn, 16).limitName());
    assertTrue(of(barn, 16).findings().stream().noneMatch(f -> f.subject().contains("dwelling")));
  }

  @Test
  void anUnstatedLimitIsNotPassed() {
    var silent = Equipment.controller(1, null, null, null, null, null, null);
    var module = Equipment.module("silent", 37.5, 13.9, 31.4, 13.06, -0.0027, null);
    var rules = Equipment.rules(-20.0, 35.0).withDwellingLimitV(null);
    var judged = StringJudge.judge(module, silent, rules, Wanted.modules(3));
    var three = of(judged, 3);
    assertNull(three.limitV());
    assertNull(three.marginShare());
    assertNull(three.controllerShare());
    for (String[] asked :
        new String[][] {
          {"coldest morning, controller", "absolute_maximum_voltage"},
          {"coldest morning, module", "max_system_voltage"},
          {"short-circuit current", "max_short_circuit_current"}
        }) {
      assertEquals(Severity.UNKNOWN, finding(three, asked[0]).severity());
      assertTrue(finding(three, asked[0]).reason().contains("state " + asked[1]), asked[1]);
    }
    assertEquals(Severity.UNKNOWN, three.verdict());
    assertNull(judged.best());
    assertTrue(
        judged
            .why()
            .contains("what cannot be judged is not passed: coldest morning, controller (2)"),
        judged.why());
  }

  /** What is certain at 25 °C needs no record: 5 × 37.5 V = 187.5 V on 150 V. */
  @Test
  void withoutRecordsWhatIsCertainIsJudgedAllTheSame() {
    var rules = Equipment.rules(null, 35.0);
    var built =
        StringJudge.asBuilt(List.of(Equipment.array("barn", M410, 5, 4)), Equipment.c150(), rules);
    assertEquals(1, built.missing().size());
    var cold = finding(built.findings(), "barn: coldest morning, controller");
    assertEquals(Severity.FAIL, cold.severity());
    assertTrue(cold.text().contains("187.5 V at 25 °C already, limit 150 V"), cold.text());
    assertEquals(Severity.FAIL, finding(built.findings(), "short-circuit current").severity());
    // one module works at 31.4 V, the bank wants 57.6 V
    var one =
        StringJudge.asBuilt(List.of(Equipment.array("barn", M410, 1, 1)), Equipment.c150(), rules);
    assertEquals(Severity.FAIL, finding(one.findings(), "barn: hottest afternoon").severity());
    var sound =
        StringJudge.asBuilt(List.of(Equipment.array("barn", M410, 3, 1)), Equipment.c150(), rules);
    assertEquals(Severity.PASS, Finding.worst(sound.findings()));
  }

  @Test
  void aGlanceSaysWhatASingleModuleIs() {
    var small = Equipment.controller(1, 20.0, 35.0, 70.0, 17.0, 30.0, 15.0);
    List<String> told = StringGlance.of(List.of(Equipment.array("hut", M410, 1, 1)), small, -10.0);
    assertEquals(2, told.size());
    assertTrue(told.get(0).startsWith("hut: one module reaches 41 V"), told.get(0));
    assertTrue(told.get(0).endsWith("This module does not suit it."), told.get(0));
    assertTrue(told.get(1).startsWith("hut: one module works at 31.4 V"), told.get(1));
    assertTrue(
        StringGlance.of(List.of(Equipment.array("hut", M410, 2, 1)), small, null)
            .get(0)
            .endsWith("Fewer in series."));
  }

  /**
   * 3 × 13.9 A = 41.7 A, × 1.25 = 52.1 A: over 50 A only with the factor; 4 strings over it as is.
   */
  @Test
  void shortCircuitCurrentFailsWithTheFactor() {
    var judged = judge(M410, Equipment.c150(), -10.0, 35.0, 12);
    var two = finding(of(judged, 6), "short-circuit current");
    assertEquals(Severity.PASS, two.severity());
    var three =
        finding(of(judge(M410, Equipment.c150(), -10.0, 35.0, 9), 3), "short-circuit current");
    assertEquals(Severity.FAIL, three.severity());
    assertTrue(three.text().contains("41.7 A at test conditions, × 1.25 = 52.1 A"), three.text());
    assertFalse(three.reason().contains("even without"), three.reason());
    var four = finding(of(judged, 3), "short-circuit current");
    assertEquals(Severity.FAIL, four.severity());
    assertTrue(four.reason().contains("even without the factor"), four.reason());
  }

  /** 60 A at 51.2 V is 3072 W; 9 × 410 W = 3690 W is 120 % of it. */
  @Test
  void clippedPowerIsOnlyACaution() {
    var a = of(judge(M410, Equipment.c150(), -10.0, 35.0, 9), 3);
    assertEquals(9 * 410.0 / 3072.0, Objects.requireNonNull(a.controllerShare()), 1e-9);
    var power = finding(a, "array power");
    assertEquals(Severity.CAUTION, power.severity());
    assertTrue(power.text().endsWith(": 120 %"), power.text());
    assertEquals(
        Severity.PASS,
        finding(of(judge(M410, Equipment.c150(), -10.0, 35.0, 6), 3), "array power").severity());
  }

  @Test
  void threeStringsSideBySideNeedProtectionEachAndNoSizeIsTold() {
    var three =
        finding(of(judge(M410, Equipment.c250(), -10.0, 35.0, 12), 4), "strings in parallel");
    assertEquals(Severity.CAUTION, three.severity());
    assertEquals("Three strings side by side: each needs overcurrent protection", three.text());
    var two = finding(of(judge(M410, Equipment.c250(), -10.0, 35.0, 8), 4), "strings in parallel");
    assertEquals(Severity.PASS, two.severity());
    var one = of(judge(M410, Equipment.c250(), -10.0, 35.0, 4), 4);
    assertTrue(one.findings().stream().noneMatch(f -> f.subject().equals("strings in parallel")));
  }

  @Test
  void fiveModulesDoNotSplitIntoTwoEqualStrings() {
    var judged = judge(M410, Equipment.c250(), -10.0, 35.0, 5);
    assertEquals(List.of(5, 1), judged.arrangements().stream().map(Arrangement::inSeries).toList());
    assertTrue(
        judged.notes().get(0).startsWith("Five modules do not split into two, three or four equal"),
        judged.notes().get(0));
  }

  @Test
  void everyDivisorIsAnArrangement() {
    var judged = judge(M410, Equipment.c250(), -10.0, 35.0, 12);
    assertEquals(
        List.of(12, 6, 4, 3, 2, 1),
        judged.arrangements().stream().map(Arrangement::inSeries).toList());
  }

  /** 4 kW of 410 W modules: 10 reach it, 11 is the tenth more. */
  @Test
  void aWantedPowerLooksAtAFewMoreModules() {
    assertEquals(List.of(10, 11), Wanted.power(4000.0).counts(410.0));
    assertEquals(List.of(10, 11), Wanted.power(4100.0).counts(410.0));
    assertEquals(List.of(25, 26, 27, 28), Wanted.power(10_000.0).counts(410.0));
    assertEquals(List.of(7), Wanted.modules(7).counts(410.0));
  }

  @Test
  void withoutRecordTemperaturesNothingIsGuessed() {
    var judged =
        StringJudge.judge(M410, Equipment.c150(), Equipment.rules(null, null), Wanted.modules(6));
    assertFalse(judged.isJudged());
    assertEquals(2, judged.missing().size());
    assertTrue(judged.missing().get(0).startsWith("State the record low"));
    assertTrue(judged.missing().get(1).startsWith("State the record high"));
    assertTrue(judged.arrangements().isEmpty());
    var built =
        StringJudge.asBuilt(
            List.of(Equipment.array("roof", M410, 3, 2)),
            Equipment.c150(),
            Equipment.rules(-10.0, null));
    assertEquals(1, built.missing().size());
  }

  /**
   * Twelve on 250 V at -10 °C: 6 in series reach 246.3 V, 1.5 % of room; 4 and 3 in series have a
   * caution each too (three and four strings side by side), but no colder night destroys anything.
   */
  @Test
  void hardlyAnyRoomInTheColdIsNotTheBest() {
    var judged = judge(M410, Equipment.c250(), -10.0, 35.0, 12);
    var six = of(judged, 6);
    assertEquals(Severity.CAUTION, six.verdict());
    assertEquals(1, Finding.count(six.findings(), Severity.CAUTION));
    assertEquals(1, Finding.count(of(judged, 4).findings(), Severity.CAUTION));
    assertEquals(4, Objects.requireNonNull(judged.best()).inSeries());
    assertTrue(
        judged
            .why()
            .startsWith(
                "Highest voltage of 2 of 3 allowed that keep clear of the limits in the cold: 39.2 A"
                    + " instead of 52.2 A with 3 in series, 4 strings"),
        judged.why());
  }

  /**
   * The panels' current at the bank's voltage, which a controller that does not track passes on.
   */
  @Test
  void withoutTrackingTheCurrentIsNotRaised() {
    var array = Equipment.array("roof", M410, 1, 2);
    double atBankA = RunLoad.ofArray(array, Equipment.pwm(), 24.0).ratedA();
    assertEquals(24.0 * atBankA, RunLoad.broughtW(array, Equipment.pwm(), 24.0), 1e-9);
    assertEquals(820.0, RunLoad.broughtW(array, Equipment.c150(), 24.0), 1e-9);
    var rules = new StringRules(-10.0, 35.0, null, 24.0, 28.8, 5.0, StringRules.USUAL_MARGIN_SHARE);
    var one = of(StringJudge.judge(M410, Equipment.pwm(), rules, Wanted.modules(2)), 1);
    // 27.4 A, not 820 W / 24 V = 34 A
    var power = finding(one, "array power");
    assertTrue(power.text().startsWith("27.4 A of modules at the bank's 24 V on "), power.text());
    double mostA = Objects.requireNonNull(Equipment.pwm().maxOutputA());
    assertEquals(atBankA / mostA, stated(one.controllerShare()), 1e-9);
    assertEquals(
        Math.min(mostA, Equipment.pwm().efficiency() * atBankA),
        RunLoad.ofController(Equipment.pwm(), rules, RunLoad.broughtW(array, Equipment.pwm(), 24.0))
            .ratedA(),
        1e-9);
  }

  @Test
  void theBestIsNamedWithItsReason() {
    var judged = judge(M410, Equipment.c250(), -20.0, 35.0, 10);
    // 5 in series: 210.3 V, 16 % of room, two strings: passes all; 10 and 2 in series do not
    var best = Objects.requireNonNull(judged.best());
    assertEquals(5, best.inSeries());
    assertEquals(Severity.PASS, best.verdict());
    assertTrue(judged.why().startsWith("The only"), judged.why());
    assertTrue(judged.why().contains("16 % below the limit of the controller"), judged.why());
    var wide = Equipment.controller(1, 200.0, 50.0, 560.0, 60.0, 600.0, 90.0);
    var higher = judge(M410, wide, -20.0, 35.0, 8);
    assertEquals(8, Objects.requireNonNull(higher.best()).inSeries());
    assertTrue(
        higher.why().contains("13.1 A instead of 26.1 A with 4 in series, 2 strings"),
        higher.why());
    assertTrue(higher.why().contains("less current, less heat, thinner wire"), higher.why());
  }

  @Test
  void whereNoneFitsItSaysWhy() {
    var small = Equipment.controller(1, 20.0, 15.0, 70.0, 17.0, 30.0, 15.0);
    var judged = judge(M410, small, -10.0, 35.0, 4);
    assertNull(judged.best());
    assertTrue(judged.why().startsWith("None of 3 is allowed"), judged.why());
    assertTrue(judged.why().contains("coldest morning, controller (3)"), judged.why());
  }

  /** Two controllers, three strings: one gets two of them. */
  @Test
  void stringsAreSharedByControllers() {
    var pair = Equipment.controller(2, 60.0, 20.0, 240.0, 25.0, 250.0, 40.0);
    var a = of(judge(M410, pair, -10.0, 35.0, 12), 4);
    assertEquals(2, a.stringsOnOne());
    assertEquals(27.8, a.shortCircuitA(), 1e-9);
    assertEquals(Severity.CAUTION, finding(a, "controllers side by side").severity());
    var even = of(judge(M410, pair, -10.0, 35.0, 8), 4);
    assertEquals(1, even.stringsOnOne());
    assertTrue(even.findings().stream().noneMatch(f -> f.subject().startsWith("controllers")));
  }

  @Test
  void theWindowsTopInTheColdLosesPowerOnly() {
    var narrow = Equipment.controller(1, 60.0, 20.0, 100.0, 25.0, 150.0, 50.0);
    var three = of(judge(M410, narrow, -20.0, 35.0, 3), 3);
    assertTrue(three.coldPowerV() > 100.0);
    assertEquals(Severity.CAUTION, finding(three, "cold operating voltage").severity());
    assertEquals(Severity.CAUTION, three.verdict());
  }

  @Test
  void startVoltageFailsOnlyIfItIsNeverReached() {
    var volts = StringVoltages.of(M410, -10.0, 40.0);
    assertTrue(volts.weakOpenV() < volts.hotOpenV() * 1.06 && volts.weakOpenV() > 30.0);
    double fullV = 3 * volts.hotOpenV();
    assertEquals(Severity.FAIL, start(fullV + 0.1));
    double weakV = 3 * volts.weakOpenV();
    assertEquals(Severity.PASS, start(Math.min(weakV, fullV) - 0.1));
  }

  private static Severity start(double startV) {
    var controller = Equipment.controller(1, 60.0, 20.0, 145.0, startV, 150.0, 50.0);
    return finding(of(judge(M410, controller, -10.0, 40.0, 3), 3), "start voltage").severity();
  }

  /**
   * Two planes meet at one controller: 2 + 1 strings, 41.7 A; unlike lengths pull each other down.
   */
  @Test
  void builtArraysMeetAtTheController() {
    var arrays = List.of(Equipment.array("barn", M410, 3, 2), Equipment.array("yard", M410, 2, 1));
    var built = StringJudge.asBuilt(arrays, Equipment.c150(), Equipment.rules(-16.0, 34.0));
    assertEquals(2, built.arrays().size());
    assertTrue(
        built.arrays().get(0).findings().stream().allMatch(f -> f.subject().startsWith("barn: ")));
    var current = finding(built.together(), "short-circuit current");
    assertEquals(Severity.FAIL, current.severity());
    assertTrue(current.text().startsWith("41.7 A"), current.text());
    assertEquals(Severity.CAUTION, finding(built.together(), "strings in parallel").severity());
    var unlike = finding(built.together(), "unlike strings");
    assertTrue(unlike.text().contains("62.8 V and 94.2 V"), unlike.text());
    assertEquals(Severity.FAIL, Finding.worst(built.findings()));
  }

  @Test
  void builtStringsOnTwoControllersAreSharedEvenlyOrItIsSaid() {
    var pair = Equipment.controller(2, 60.0, 20.0, 145.0, 25.0, 150.0, 50.0);
    var rules = Equipment.rules(-16.0, 34.0);
    var even = StringJudge.asBuilt(List.of(Equipment.array("barn", M410, 3, 4)), pair, rules);
    assertEquals(Severity.PASS, finding(even.together(), "controllers side by side").severity());
    assertTrue(
        finding(even.together(), "short-circuit current").text().startsWith("27.8 A"),
        "half of four strings");
    var odd = StringJudge.asBuilt(List.of(Equipment.array("barn", M410, 3, 3)), pair, rules);
    assertEquals(Severity.CAUTION, finding(odd.together(), "controllers side by side").severity());
    assertTrue(
        finding(odd.together(), "short-circuit current").text().startsWith("27.8 A"),
        "one of the two gets two of the three strings");
  }

  /** Forty sheets on twenty controllers, each verdict against a plain recomputation. */
  @Test
  void aWholeLibraryIsJudgedAsByHand() {
    var rules = Equipment.rules(-25.0, 38.0);
    int judgedCount = 0;
    int failed = 0;
    for (ModuleSpec module : Equipment.modules(40, 3)) {
      for (ControllerSpec controller : Equipment.controllers(20, 4)) {
        var judged = StringJudge.judge(module, controller, rules, Wanted.modules(12));
        assertEquals(6, judged.arrangements().size());
        for (Arrangement a : judged.arrangements()) {
          double coldV =
              a.inSeries() * module.openCircuitV() * (1 + module.openCircuitPerK() * -50.0);
          int strings = (a.inParallel() + controller.count() - 1) / controller.count();
          double hotV = a.inSeries() * Objects.requireNonNull(judged.perModule()).hotPowerV();
          boolean isFail =
              coldV > stated(controller.absoluteMaximumV())
                  || coldV > stated(module.maxSystemV())
                  || coldV > 600.0
                  || 1.25 * strings * module.shortCircuitA() > stated(controller.maxShortCircuitA())
                  || hotV < stated(controller.lowestTrackingV())
                  || hotV < 57.6
                  || a.inSeries() * judged.perModule().hotOpenV() < stated(controller.startV());
          assertEquals(isFail, a.verdict() == Severity.FAIL, a + " of " + module);
          judgedCount++;
          failed += isFail ? 1 : 0;
        }
        boolean isAnyAllowed =
            judged.arrangements().stream().anyMatch(a -> a.verdict() != Severity.FAIL);
        assertEquals(isAnyAllowed, judged.best() != null);
      }
    }
    assertEquals(4800, judgedCount);
    assertTrue(failed > 1000 && failed < 4700, "both kinds occur: " + failed);
  }

  private static double stated(@Nullable Double value) {
    return Objects.requireNonNull(value);
  }

  /** Colder mornings raise the voltage and never better the verdict. */
  @Property
  void colderIsNeverBetter(
      @ForAll @DoubleRange(min = -40, max = 20) double lowC,
      @ForAll @DoubleRange(min = 0.01, max = 20) double colderK,
      @ForAll @IntRange(min = 1, max = 8) int inSeries) {
    var mild = of(judge(M410, Equipment.c150(), lowC, 30.0, inSeries), inSeries);
    var cold = of(judge(M410, Equipment.c150(), lowC - colderK, 30.0, inSeries), inSeries);
    assertTrue(cold.coldOpenV() > mild.coldOpenV());
    assertTrue(cold.verdict().compareTo(mild.verdict()) >= 0, mild + " then " + cold);
  }

  @Property
  void hotterIsNeverBetter(
      @ForAll @DoubleRange(min = 0, max = 40) double highC,
      @ForAll @DoubleRange(min = 0.01, max = 15) double hotterK,
      @ForAll @IntRange(min = 1, max = 8) int inSeries) {
    var mild = of(judge(M410, Equipment.c150(), -10.0, highC, inSeries), inSeries);
    var hot = of(judge(M410, Equipment.c150(), -10.0, highC + hotterK, inSeries), inSeries);
    assertTrue(hot.hotPowerV() < mild.hotPowerV());
    assertTrue(hot.verdict().compareTo(mild.verdict()) >= 0, mild + " then " + hot);
  }

  @Property
  void moreInSeriesIsMoreVoltageAndNoMoreCurrent(
      @ForAll @IntRange(min = 1, max = 20) int inSeries) {
    var rules = Equipment.rules(-15.0, 35.0);
    var arrangements = new ArrayList<Arrangement>();
    for (int n : List.of(inSeries, inSeries + 1)) {
      arrangements.add(of(StringJudge.judge(M410, Equipment.c250(), rules, Wanted.modules(n)), n));
    }
    assertTrue(arrangements.get(1).coldOpenV() > arrangements.get(0).coldOpenV());
    assertTrue(arrangements.get(1).hotPowerV() > arrangements.get(0).hotPowerV());
    assertTrue(arrangements.get(1).coldPowerV() < arrangements.get(1).coldOpenV());
    assertTrue(arrangements.get(1).hotPowerV() < arrangements.get(1).coldPowerV());
    assertEquals(arrangements.get(0).operatingA(), arrangements.get(1).operatingA());
  }

  @Test
  void theTableEndsAtMinusForty() {
    assertNull(ColdTable.factor(-40.1));
    assertEquals(1.0, ColdTable.factor(25.0));
    assertEquals(1.04, ColdTable.factor(19.5));
    var judged = judge(M410, Equipment.c150(), -45.0, 30.0, 3);
    assertNull(of(judged, 3).coldOpenTableV());
    assertTrue(String.join(" ", judged.notes()).contains("there is no cross-check"));
  }

  private static StringJudgement judge(
      ModuleSpec module, ControllerSpec controller, double lowC, double highC, int count) {
    return StringJudge.judge(
        module, controller, Equipment.rules(lowC, highC), Wanted.modules(count));
  }

  private static Arrangement of(StringJudgement judged, int inSeries) {
    return judged.arrangements().stream()
        .filter(a -> a.inSeries() == inSeries)
        .findFirst()
        .orElseThrow();
  }

  static Finding finding(Arrangement a, String subject) {
    return finding(a.findings(), subject);
  }

  static Finding finding(List<Finding> findings, String subject) {
    return findings.stream().filter(f -> f.subject().equals(subject)).findFirst().orElseThrow();
  }
}
