package greyspell.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.power.InverterCurve.Fit;
import greyspell.power.InverterSpec.EfficiencyAt;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class InverterCurveTest {
  private static Fit fit(double standbyW, EfficiencyAt... points) {
    return InverterCurve.fit(
        new InverterSpec("unit", 1, 2000.0, null, standbyW, standbyW, List.of(points)));
  }

  /** 92 % at half load with 20 W standby: 1/0.92 - 1 - 0.01/0.5 = 0.066957 of linear loss. */
  @Test
  void onePointGivesALinearLoss() {
    Fit got = fit(20.0, new EfficiencyAt(0.5, 0.92));
    assertEquals(1.0 / 0.92 - 1.02, got.limits().linearLossShare(), 1e-12);
    assertEquals(0.0, got.limits().quadraticLossShare());
    assertEquals(0.92, got.curve().efficiency(0.5), 1e-12);
    assertTrue(got.cautions().isEmpty());
  }

  @Test
  void twoPointsAreMetExactly() {
    Fit got = fit(10.0, new EfficiencyAt(0.3, 0.94), new EfficiencyAt(1.0, 0.91));
    assertEquals(0.94, got.curve().efficiency(0.3), 1e-12);
    assertEquals(0.91, got.curve().efficiency(1.0), 1e-12);
    assertTrue(got.cautions().isEmpty());
  }

  /** What the loop draws plus the standby is AC over the data sheet's efficiency. */
  @Test
  void theLoopsDrawAndTheStandbyMakeUpTheEfficiency() {
    Fit got = fit(10.0, new EfficiencyAt(0.3, 0.94), new EfficiencyAt(1.0, 0.91));
    assertEquals(600.0 / 0.94, got.limits().busWh(600.0) + 10.0, 1e-9);
    assertEquals(2000.0 / 0.91, got.limits().busWh(2000.0) + 10.0, 1e-9);
  }

  @Test
  void pointsThatContradictTheStandbyAreACautionAndGiveNoNegativeLoss() {
    // 100 W of standby is 5 % of full power: at a tenth of it, at most 67 % are left
    Fit got = fit(100.0, new EfficiencyAt(0.1, 0.93), new EfficiencyAt(1.0, 0.90));
    assertTrue(got.limits().linearLossShare() >= 0.0);
    assertTrue(got.limits().quadraticLossShare() >= 0.0);
    assertTrue(
        got.cautions().get(0).startsWith("inverter unit: 93.0 % at 10 % load does not suit"));
  }

  /** Points and 30 W of standby of one sheet; at home it is switched off by hand. */
  @Test
  void aHomesSmallerStandbyIsNoContradictionOfTheSheet() {
    List<EfficiencyAt> points =
        List.of(
            new EfficiencyAt(0.1, 0.84), new EfficiencyAt(0.5, 0.92), new EfficiencyAt(1.0, 0.91));
    Fit sheet = fit(30.0, points.toArray(EfficiencyAt[]::new));
    assertTrue(sheet.cautions().isEmpty() && sheet.note().isEmpty());
    Fit bare = fit(0.2, points.toArray(EfficiencyAt[]::new));
    assertFalse(bare.cautions().isEmpty(), "alone, 0.2 W and these points do not agree");
    Fit home =
        InverterCurve.fit(
            new InverterSpec("unit", 1, 2000.0, null, 0.2, 0.1, points, null, null, 30.0));
    assertTrue(home.cautions().isEmpty(), home.cautions().toString());
    assertTrue(home.note().endsWith(" of full load"), home.note());
    assertEquals(bare.limits(), home.limits(), "the hours are reckoned as before");
    // a sheet that contradicts itself is told all the same
    Fit wrong =
        InverterCurve.fit(
            new InverterSpec(
                "unit",
                1,
                2000.0,
                null,
                0.2,
                0.1,
                List.of(new EfficiencyAt(0.1, 0.93), new EfficiencyAt(1.0, 0.90)),
                null,
                null,
                100.0));
    assertTrue(wrong.cautions().get(0).contains("does not suit its standby of 100 W"));
    // more than the sheet's is measured: then the points are held against it
    Fit more =
        InverterCurve.fit(
            new InverterSpec("unit", 1, 2000.0, null, 200.0, 200.0, points, null, null, 200.0));
    assertFalse(more.cautions().isEmpty());
  }

  @Test
  void risingEfficiencyGivesNoNegativeQuadraticLoss() {
    Fit got = fit(0.0, new EfficiencyAt(0.2, 0.90), new EfficiencyAt(1.0, 0.95));
    assertEquals(0.0, got.limits().quadraticLossShare());
    assertTrue(got.limits().linearLossShare() > 0.0);
  }

  @Test
  void theSamePointTwiceIsOnePoint() {
    Fit got = fit(20.0, new EfficiencyAt(0.5, 0.92), new EfficiencyAt(0.5, 0.92));
    assertEquals(0.92, got.curve().efficiency(0.5), 1e-12);
  }

  /** Own construction: 10 W idle are 240 Wh a day, 87.6 kWh a year. */
  @Test
  void standbyOfAYear() {
    var inverter =
        new InverterSpec("i", 1, 2000, null, 10.0, 10.0, List.of(new EfficiencyAt(0.5, 0.92)));
    double[] wh = inverter.standbyWh(new double[8760]);
    assertEquals(240.0, Arrays.stream(wh, 0, 24).sum(), 1e-9);
    assertEquals(87_600.0, Arrays.stream(wh).sum(), 1e-6);
  }

  @Test
  void standbyFollowsDaylight() {
    var inverter =
        new InverterSpec("i", 1, 2000, null, 30.0, 6.0, List.of(new EfficiencyAt(0.5, 0.92)));
    double[] wh = inverter.standbyWh(new double[] {0.0, 0.25, 1.0});
    assertEquals(6.0, wh[0], 1e-12);
    assertEquals(12.0, wh[1], 1e-12);
    assertEquals(30.0, wh[2], 1e-12);
    assertEquals(30.0, inverter.noLoadW());
  }

  @Test
  void refusesImpossibleFigures() {
    assertThrows(IllegalArgumentException.class, () -> new EfficiencyAt(0.0, 0.9));
    assertThrows(IllegalArgumentException.class, () -> new EfficiencyAt(0.5, 1.1));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new InverterSpec("i", 1, Double.NaN, null, 1, 1, List.of(new EfficiencyAt(0.5, 0.9))));
  }
}
