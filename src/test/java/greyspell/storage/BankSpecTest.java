package greyspell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.storage.BankSpec.CapacityAt;
import greyspell.storage.step.BankLimits;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BankSpecTest {
  private static final List<CapacityAt> POINTS =
      List.of(new CapacityAt(-20.0, 0.6), new CapacityAt(0.0, 0.8), new CapacityAt(25.0, 1.05));

  private static BankSpec bank(double reserve, double selfDischarge, List<CapacityAt> points) {
    return new BankSpec(
        "b",
        Chemistry.LITHIUM_IRON_PHOSPHATE,
        2,
        10_000.0,
        51.2,
        1.0,
        reserve,
        0.95,
        0.95,
        5000.0,
        6000.0,
        selfDischarge,
        points,
        0.0,
        5.0,
        new Enclosure.Indoors(18.0));
  }

  /** 10 kWh of which 80 % is usable, 95 % out, 312.5 W: 24.32 hours (own construction). */
  @Test
  void hoursThatAFullBankLasts() {
    BankLimits limits = bank(0.2, 0.0, POINTS).limits();
    assertEquals(8000.0, limits.windowWh());
    assertEquals(24.32, limits.windowWh() * limits.dischargeEfficiency() / 312.5, 1e-12);
  }

  /** 3 % in 30 days (own construction). */
  @Test
  void selfDischargeOfAnHourMakesUpAMonth() {
    double kept = bank(0.2, 0.03, POINTS).limits().keptPerHourShare();
    assertEquals(0.999957696, kept, 1e-9);
    assertEquals(0.97, Math.pow(kept, 720.0), 1e-9);
  }

  @Test
  void limitsAreThoseOfTheSheet() {
    assertEquals(
        new BankLimits(9000.0, 0.95, 0.95, 5000.0, 6000.0, 1.0), bank(0.1, 0.0, POINTS).limits());
  }

  @Test
  void capacityFollowsStraightLinesAndIsLevelOutside() {
    var curve = new CapacityCurve(POINTS);
    assertEquals(0.6, curve.capacityShare(-40.0));
    assertEquals(0.7, curve.capacityShare(-10.0), 1e-12);
    assertEquals(0.8, curve.capacityShare(0.0), 1e-12);
    assertEquals(0.9, curve.capacityShare(10.0), 1e-12);
    assertEquals(1.05, curve.capacityShare(60.0));
    assertEquals(0.5, new CapacityCurve(List.of(new CapacityAt(20.0, 0.5))).capacityShare(-5.0));
  }

  @Test
  void coldLocksAShareAndStopsCharging() {
    ColdLimits got =
        ColdLimits.of(bank(0.2, 0.0, POINTS), new double[] {-30.0, -0.001, 0.0, 10.0, 25.0, 40.0});
    double[] locked = {0.4, 0.20001, 0.2, 0.1, 0.0, 0.0};
    double[] charge = {0.0, 0.0, 1.0, 1.0, 1.0, 1.0};
    for (int h = 0; h < locked.length; h++) {
      assertEquals(locked[h], got.lockedShare()[h], 1e-9);
      assertEquals(charge[h], got.chargeShare()[h]);
    }
  }

  @Test
  void refusesWhatNoBankCanBe() {
    assertThrows(IllegalArgumentException.class, () -> bank(1.0, 0.0, POINTS));
    assertThrows(IllegalArgumentException.class, () -> bank(Double.NaN, 0.0, POINTS));
    assertThrows(IllegalArgumentException.class, () -> bank(0.2, 1.0, POINTS));
    assertThrows(IllegalArgumentException.class, () -> bank(0.2, 0.0, List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> bank(0.2, 0.0, List.of(new CapacityAt(0.0, 0.8), new CapacityAt(0.0, 0.9))));
  }

  /** Size factors as the class says, from memory: guidance, not a published bar. */
  @Test
  void leadAcidShareIsOneOverTheSizeFactor() {
    var curve =
        new CapacityCurve(BankDefaults.of(Chemistry.LEAD_ACID_SEALED).capacityByTemperature());
    assertEquals(1.0 / 1.52, curve.capacityShare(-3.9), 1e-12);
    assertEquals(1.0 / 1.19, curve.capacityShare(10.0), 1e-12);
    assertEquals(1.0, curve.capacityShare(25.0), 1e-12);
  }

  @ParameterizedTest
  @EnumSource(Chemistry.class)
  void defaultsAreAcceptedAndExplained(Chemistry chemistry) {
    BankDefaults usual = BankDefaults.of(chemistry);
    double thereAndBack = usual.chargeEfficiency() * usual.dischargeEfficiency();
    boolean isLithium = chemistry == Chemistry.LITHIUM_IRON_PHOSPHATE;
    assertTrue(
        thereAndBack >= (isLithium ? 0.92 : 0.70) && thereAndBack <= (isLithium ? 0.96 : 0.85));
    assertTrue(usual.capacityWhy().contains("from memory"));
    assertEquals(8000.0, bank(0.2, 0.03, usual.capacityByTemperature()).usableWh());
    var curve = new CapacityCurve(usual.capacityByTemperature());
    double zero = curve.capacityShare(0.0);
    assertTrue(isLithium ? zero >= 0.8 && zero <= 0.9 : Math.abs(1.0 / zero - 1.40) < 0.02);
    for (double c = -40.0; c < 40.0; c += 1.0) {
      assertTrue(curve.capacityShare(c) <= curve.capacityShare(c + 1.0));
    }
  }
}
