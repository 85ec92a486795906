package greyspell.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.Monthly;
import greyspell.electrical.Finding.Severity;
import greyspell.load.ApplianceSpec;
import greyspell.load.Evidence;
import greyspell.load.Priority;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LoadJudgeTest {
  private static final ApplianceSpec HOB = appliance("Hob", 5500.0, null, Priority.CAN_WAIT);
  private static final ApplianceSpec FRIDGE = appliance("Fridge", 120.0, 700.0, Priority.MUST_RUN);

  /** Continuous 6000 W, surge 9000 W. */
  @Test
  void theLargestLoadIsHeldAgainstContinuousPower() {
    var fits = LoadJudge.judge(List.of(FRIDGE, HOB), Equipment.inverter(9000.0));
    assertEquals(Severity.PASS, StringJudgeTest.finding(fits, "largest load").severity());
    var oven = appliance("Oven", 6100.0, null, Priority.CAN_WAIT);
    var over = LoadJudge.judge(List.of(HOB, oven), Equipment.inverter(9000.0));
    var finding = StringJudgeTest.finding(over, "largest load");
    assertEquals(Severity.FAIL, finding.severity());
    assertTrue(finding.text().startsWith("Oven takes 6.10 kW"), finding.text());
  }

  /** A pump of 8900 W at start on 9000 W: alone yes, beside a fridge of 120 W no; 9100 W never. */
  @Test
  void theHardestStartIsHeldAgainstSurgePower() {
    assertEquals(Severity.CAUTION, start(8900.0, 9000.0));
    assertEquals(Severity.PASS, start(8880.0, 9000.0));
    assertEquals(Severity.FAIL, start(9100.0, 9000.0));
    assertEquals(Severity.CAUTION, start(8900.0, null));
  }

  private static Severity start(double pumpW, @Nullable Double inverterW) {
    var pump = appliance("Pump", 1500.0, pumpW, Priority.SHOULD_RUN);
    return StringJudgeTest.finding(
            LoadJudge.judge(List.of(FRIDGE, pump), Equipment.inverter(inverterW)), "hardest start")
        .severity();
  }

  @Test
  void aMedicalLoadIsNeverSilentlyPassed() {
    var breathing =
        new ApplianceSpec(
            "Breathing aid",
            1,
            40.0,
            0.0,
            null,
            1.0,
            List.of(new ApplianceSpec.HourSpan(0.0, 8.0)),
            EnumSet.allOf(DayOfWeek.class),
            Monthly.constant(1.0),
            Priority.MUST_RUN,
            Evidence.LABEL,
            true,
            true);
    var findings = LoadJudge.judge(List.of(breathing), Equipment.inverter(9000.0));
    assertEquals(1, findings.size());
    assertEquals(Severity.CAUTION, findings.get(0).severity());
    assertTrue(findings.get(0).reason().contains("independent backup"));
  }

  private static ApplianceSpec appliance(
      String name, double powerW, @Nullable Double surgeW, Priority priority) {
    return new ApplianceSpec(
        name,
        1,
        powerW,
        0.0,
        surgeW,
        0.5,
        List.of(new ApplianceSpec.HourSpan(0.0, 24.0)),
        EnumSet.allOf(DayOfWeek.class),
        Monthly.constant(1.0),
        priority,
        Evidence.LABEL,
        false,
        false);
  }
}
