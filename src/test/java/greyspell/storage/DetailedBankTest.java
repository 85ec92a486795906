package greyspell.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.storage.VoltageCurve.VoltageAt;
import greyspell.storage.step.CellStep;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DetailedBankTest {
  private static BankSpec plain(Chemistry chemistry) {
    double volt = chemistry == Chemistry.LITHIUM_IRON_PHOSPHATE ? 51.2 : 48.0;
    return new BankSpec(
        "b",
        chemistry,
        1,
        10_000.0,
        volt,
        1.0,
        0.2,
        0.95,
        0.95,
        2000.0,
        3000.0,
        0.0,
        List.of(new BankSpec.CapacityAt(25.0, 1.0)),
        0.0,
        0.0,
        new Enclosure.Indoors(20.0));
  }

  private static CellSheet usualCells(BankSpec bank, boolean isLossStated) {
    CellDefaults usual = CellDefaults.of(bank.chemistry());
    return new CellSheet(
        VoltageCurve.usual(bank.chemistry(), usual.cells(bank.nominalV())),
        usual.resistanceOhm(bank.nominalV(), bank.capacityWh()),
        usual.resistanceByTemperature(),
        usual.coulombicEfficiency(),
        isLossStated,
        usual.taperFromShare(),
        usual.taperTopShare());
  }

  @ParameterizedTest
  @EnumSource(Chemistry.class)
  void theUsualCurveRisesAroundTheNominalVoltage(Chemistry chemistry) {
    CellDefaults usual = CellDefaults.of(chemistry);
    var curve = new VoltageCurve(VoltageCurve.usual(chemistry, 1.0));
    double before = 0.0;
    for (double volt : curve.table()) {
      assertTrue(volt >= before);
      before = volt;
    }
    assertEquals(101, curve.table().length);
    assertEquals(1.0, curve.openV(0.5) / usual.cellV(), 0.05);
    assertTrue(curve.openV(1.0) < usual.chargingCellV());
    assertTrue(curve.openV(0.0) > usual.cutOffCellV());
    assertEquals(curve.openV(0.25), curve.table()[25], 1e-12);
  }

  /** Flooded: specific gravity 1.265 when full plus 0.845 V. */
  @Test
  void floodedVoltageFollowsTheAcid() {
    var curve = new VoltageCurve(VoltageCurve.usual(Chemistry.LEAD_ACID_FLOODED, 6.0));
    assertEquals(6.0 * (1.265 + 0.845), curve.openV(1.0), 1e-9);
    assertEquals(6.0 * (1.12 + 0.845), curve.openV(0.0), 1e-9);
  }

  /** Of a voltage that slopes this much, share of energy and share of charge are near. */
  @ParameterizedTest
  @EnumSource(Chemistry.class)
  void shareOfEnergyIsNearlyShareOfCharge(Chemistry chemistry) {
    double[] table = new VoltageCurve(VoltageCurve.usual(chemistry, 1.0)).table();
    double all = 0.0;
    for (int i = 0; i < 100; i++) {
      all += 0.5 * (table[i] + table[i + 1]);
    }
    double sum = 0.0;
    for (int i = 0; i < 100; i++) {
      assertEquals(i / 100.0, sum / all, 0.02);
      sum += 0.5 * (table[i] + table[i + 1]);
    }
  }

  /** Losses from the resistance come out where the chemistry's usual efficiencies lie. */
  @ParameterizedTest
  @EnumSource(Chemistry.class)
  void usualLossesLieInTheUsualRange(Chemistry chemistry) {
    BankSpec bank = plain(chemistry);
    bank = bank.inDetail(usualCells(bank, false), null);
    double thereAndBack = bank.chargeEfficiency() * bank.dischargeEfficiency();
    boolean isLithium = chemistry == Chemistry.LITHIUM_IRON_PHOSPHATE;
    assertTrue(
        thereAndBack > (isLithium ? 0.95 : 0.75) && thereAndBack < (isLithium ? 0.995 : 0.90),
        chemistry + " " + thereAndBack);
    CellStep step = CellModel.step(bank, null, null);
    assertEquals(
        1000.0 * (1.0 / bank.dischargeEfficiency() - 1.0), step.outLossWh(1000.0, 0.5, 1.0), 1e-6);
    assertTrue(
        step.mostOutWh(0.5, 1.0) > bank.maxDischargeW(), "voltage does not bind in the middle");
    assertTrue(step.mostInWh(0.5, 1.0) > bank.maxChargeW());
  }

  @Test
  void statedLossesStay() {
    BankSpec bank = plain(Chemistry.LITHIUM_IRON_PHOSPHATE);
    bank = bank.inDetail(usualCells(bank, true), null);
    assertEquals(0.95, bank.chargeEfficiency());
    assertEquals(50.0, CellModel.step(bank, null, null).inLossWh(1000.0, 0.5, 1.0), 1e-9);
    assertTrue(bank.isDetailed());
  }

  @Test
  void voltagesAreStatedOrUsual() {
    BankSpec bank = plain(Chemistry.LITHIUM_IRON_PHOSPHATE);
    bank = bank.inDetail(usualCells(bank, false), null);
    double usual = CellModel.step(bank, null, null).mostInWh(0.5, 1.0);
    assertTrue(CellModel.step(bank, 56.0, null).mostInWh(0.5, 1.0) < usual);
    assertEquals(0.0, CellModel.step(bank, null, 60.0).mostOutWh(0.5, 1.0));
    BankSpec simple = plain(Chemistry.LITHIUM_IRON_PHOSPHATE);
    assertThrows(IllegalArgumentException.class, () -> CellModel.step(simple, null, null));
    assertNull(CellModel.tanks(simple));
    assertFalse(simple.isDetailed());
  }

  /** 80 %: capacity 0.8, resistance 1 / 0.64. */
  @Test
  void aTiredBankHoldsLessAndResistsMore() {
    BankSpec bank = plain(Chemistry.LEAD_ACID_FLOODED);
    CellSheet cells = usualCells(bank, false);
    var tanks = new KineticSheet(0.55, 0.24, 11_500.0);
    BankSpec tired = bank.inDetail(cells, tanks).withHealth(0.8);
    assertEquals(9200.0, tired.contentWh(), 1e-9);
    // a reserve of a fifth of the sheet's 10 kWh; what the tanks hold beyond it is never used
    assertEquals(8000.0 * 0.8, tired.usableWh(), 1e-9);
    assertEquals(8000.0 * 0.8, tired.limits().windowWh(), 1e-9);
    assertEquals(9200.0 - 6400.0, tired.reserveWh(), 1e-9);
    assertEquals(1.0, tired.chargeShare(tired.usableWh()), 1e-12);
    assertEquals(2800.0 / 9200.0, tired.chargeShare(0.0), 1e-12);
    CellSheet aged = tired.cells();
    assertNotNull(aged);
    assertEquals(cells.resistanceOhm() / 0.64, aged.resistanceOhm(), 1e-12);
    CellSheet worse = tired.withHealth(0.6).cells();
    assertNotNull(worse);
    assertEquals(cells.resistanceOhm() / 0.36, worse.resistanceOhm(), 1e-12);
    assertEquals(8000.0 * 0.8, plain(Chemistry.LEAD_ACID_FLOODED).withHealth(0.8).usableWh(), 1e-9);
    assertNotNull(CellModel.tanks(tired));
    assertEquals(0.8, CellModel.taper(tired).fromShare());
  }

  @Test
  void resistanceFollowsTheTemperature() {
    BankSpec bank = plain(Chemistry.LITHIUM_IRON_PHOSPHATE);
    double[] got =
        usualCells(bank, false).resistanceFactors(new double[] {-40.0, -5.0, 25.0, 60.0});
    assertArrayEquals(new double[] {4.5, 2.55, 1.0, 0.8}, got, 1e-12);
  }

  @Test
  void sheetsRefuseWhatNoCellCanBe() {
    BankSpec bank = plain(Chemistry.LEAD_ACID_SEALED);
    CellSheet good = usualCells(bank, false);
    assertThrows(IllegalArgumentException.class, () -> good.withResistanceOhm(0.0));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new CellSheet(
                List.of(new VoltageAt(0.0, 50.0), new VoltageAt(1.0, 49.0)),
                0.01,
                good.resistanceByTemperature(),
                0.9,
                false,
                0.8,
                0.05));
    assertThrows(IllegalArgumentException.class, () -> new KineticSheet(0.5, 0.2, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> bank.withHealth(0.0));
  }

  // ---- cold, ground, mass -----------------------------------------------------------------------

  @Test
  void chargingIsDeratedBetweenTwoTemperatures() {
    BankSpec p = plain(Chemistry.LITHIUM_IRON_PHOSPHATE);
    var slope =
        new BankSpec(
            p.name(),
            p.chemistry(),
            1,
            p.capacityWh(),
            p.nominalV(),
            1.0,
            0.2,
            0.95,
            0.95,
            2000.0,
            3000.0,
            0.0,
            p.capacityByTemperature(),
            0.0,
            0.0,
            p.enclosure(),
            10.0,
            1.0,
            null,
            null,
            p.life());
    double[] atC = {-1.0, 0.0, 2.5, 5.0, 10.0, 30.0};
    assertArrayEquals(
        new double[] {0.0, 0.0, 0.25, 0.5, 1.0, 1.0},
        ColdLimits.of(slope, atC).chargeShare(),
        1e-12);
    assertArrayEquals(
        new double[] {0.0, 1.0, 1.0, 1.0, 1.0, 1.0}, ColdLimits.of(p, atC).chargeShare());
  }

  /** A pure yearly wave of 10 °C about 8 °C comes down as the equation says. */
  @Test
  void theGroundFollowsTheYearLateAndFlat() {
    int hours = 2 * 8760;
    var airC = new double[hours];
    for (int h = 0; h < hours; h++) {
      airC[h] =
          8.0
              - 10.0 * Math.cos(2.0 * Math.PI * (h + 0.5) / 8760.0)
              + 5.0 * Math.sin(2.0 * Math.PI * h / 24.0);
    }
    double d = GroundTemperature.dampingDepthM(0.5e-6, 8760.0);
    assertEquals(2.24, d, 0.005);
    double[] got = GroundTemperature.of(airC, 2.0, 0.5e-6);
    for (int h = 0; h < hours; h += 500) {
      double angle = 2.0 * Math.PI * (h + 0.5) / 8760.0 - 2.0 / d;
      assertEquals(8.0 - 10.0 * Math.exp(-2.0 / d) * Math.cos(angle), got[h], 1e-6);
    }
    assertArrayEquals(
        got, new Enclosure.InGround(2.0, Enclosure.Soil.DAMP).follow(airC).temperatureC());
    double[] deep = GroundTemperature.of(airC, 30.0, 0.5e-6);
    assertEquals(8.0, deep[1234], 1e-4);
  }

  @Test
  void shortWeatherHasItsMeanInTheGround() {
    double[] got = GroundTemperature.of(new double[] {0.0, 10.0, 20.0}, 1.0, 0.5e-6);
    assertArrayEquals(new double[] {10.0, 10.0, 10.0}, got, 1e-12);
    assertEquals(0, GroundTemperature.of(new double[0], 1.0, 0.5e-6).length);
  }

  /** 240 kg of 1000 J/kgK that lose 2 W/K: 33.3 hours. */
  @Test
  void massGivesTheLag() {
    assertEquals(100.0 / 3.0, Enclosure.lagH(240.0, 1000.0, 2.0), 1e-12);
  }
}
