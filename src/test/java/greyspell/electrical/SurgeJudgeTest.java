package greyspell.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.electrical.Finding.Severity;
import greyspell.electrical.SurgeJudge.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurgeJudgeTest {
  /** 50 V, 10 mOhm, 6000 W: V = (50 + sqrt(2500 - 240)) / 2 = 48.770 V; 123.03 A × 0.01 Ohm. */
  @Test
  void sagWorkedByHand() {
    double sagV = SurgeJudge.sagV(50.0, 0.010, 6000.0);
    assertEquals(48.770, sagV, 0.0005);
    assertEquals(50.0 - 6000.0 / sagV * 0.010, sagV, 1e-12);
    assertTrue(Double.isNaN(SurgeJudge.sagV(12.0, 0.010, 4000.0)));
  }

  /** 10.8 kW over 0.9 = 12 kW from 51.2 V through 8 mOhm: sags to 49.251 V. */
  @ParameterizedTest
  @CsvSource({"44.0, PASS", "48.5, CAUTION", "49.3, FAIL"})
  void cutOffVerdicts(double cutOffV, Severity expected) {
    var findings =
        SurgeJudge.judge(
            Equipment.inverter(10_800.0), Equipment.bank(), new Path(null, 0.006, 0.002, cutOffV));
    var sag = StringJudgeTest.finding(findings, "surge, low-voltage cut-off");
    assertEquals(expected, sag.severity());
    assertTrue(sag.text().contains("sags to 49.3 V"), sag.text());
    assertTrue(sag.text().contains("from 51.2 V (nominal)"), sag.text());
    assertEquals(
        Severity.PASS, StringJudgeTest.finding(findings, "surge, bank's limit").severity());
  }

  @Test
  void aSurgeBeyondTheBankIsACautionAndBeyondTheCableAFailure() {
    var findings =
        SurgeJudge.judge(
            Equipment.inverter(18_000.0), Equipment.bank(), new Path(51.2, 0.03, 0.01, 40.0));
    assertEquals(
        Severity.CAUTION, StringJudgeTest.finding(findings, "surge, bank's limit").severity());
    var sag = StringJudgeTest.finding(findings, "surge, low-voltage cut-off");
    assertEquals(Severity.FAIL, sag.severity());
    assertTrue(sag.text().contains("cannot be delivered"), sag.text());
  }

  @Test
  void whatIsNotStatedIsAskedFor() {
    var nothing = new Path(null, null, null, null);
    var sag =
        StringJudgeTest.finding(
            SurgeJudge.judge(Equipment.inverter(9000.0), Equipment.bank(), nothing),
            "surge, low-voltage cut-off");
    assertEquals(Severity.CAUTION, sag.severity());
    assertEquals(
        "not judged: state the bank's resistance, the cable from bank to inverter, the inverter's"
            + " low-voltage cut-off",
        sag.text());
    assertEquals(List.of(), SurgeJudge.judge(Equipment.inverter(null), Equipment.bank(), nothing));
  }

  @Property
  void moreResistanceSagsFurther(
      @ForAll @DoubleRange(min = 0.1, max = 20) double milliohm,
      @ForAll @DoubleRange(min = 100, max = 15000) double powerW) {
    double ohm = milliohm / 1000.0;
    double less = SurgeJudge.sagV(51.2, ohm, powerW);
    double more = SurgeJudge.sagV(51.2, ohm * 1.5, powerW);
    assertTrue(less < 51.2);
    assertTrue(Double.isNaN(more) || more < less);
  }
}
