package greyspell.storage.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class CellStepTest {
  private static final CellStep BANK =
      new CellStep(new double[] {48.0, 50.0, 52.0}, 0.02, 0.98, 57.6, 46.0);

  @Test
  void voltageWithoutLoadRunsStraightBetweenItsPoints() {
    assertEquals(48.0, BANK.openV(-0.1));
    assertEquals(49.0, BANK.openV(0.25), 1e-12);
    assertEquals(51.0, BANK.openV(0.75), 1e-12);
    assertEquals(52.0, BANK.openV(1.2));
  }

  /**
   * 50 V, 20 mΩ, 100 A: 48 V and 4800 W out, 200 W lost; in 52 V, 5200 W, 200 W + 2 % of 5000 W.
   */
  @Test
  void powersAreThoseOfOhmsLaw() {
    assertEquals(48.0, BANK.voltageV(4800.0, 0.5, 1.0), 1e-9);
    assertEquals(200.0, BANK.outLossWh(4800.0, 0.5, 1.0), 1e-9);
    assertEquals(52.0, BANK.voltageV(-5200.0, 0.5, 1.0), 1e-9);
    assertEquals(300.0, BANK.inLossWh(5200.0, 0.5, 1.0), 1e-9);
    assertEquals(0.0, BANK.outLossWh(0.0, 0.5, 1.0));
    assertEquals(0.0, BANK.inLossWh(0.0, 0.5, 1.0));
  }

  /** Cut-off 46 V: 4 V over 20 mΩ are 200 A, 9200 W. Charging at 57.6 V: 7.6 V, 380 A, 21 888 W. */
  @Test
  void limitsAreAtTheTwoVoltages() {
    assertEquals(9200.0, BANK.mostOutWh(0.5, 1.0), 1e-9);
    assertEquals(46.0, BANK.voltageV(9200.0, 0.5, 1.0), 1e-9);
    assertEquals(21_888.0, BANK.mostInWh(0.5, 1.0), 1e-9);
    assertEquals(57.6, BANK.voltageV(-21_888.0, 0.5, 1.0), 1e-9);
    assertEquals(4600.0, BANK.mostOutWh(0.5, 2.0), 1e-9);
    var low = new CellStep(new double[] {40.0, 60.0}, 0.02, 1.0, 57.6, 46.0);
    assertEquals(0.0, low.mostOutWh(0.2, 1.0));
    assertEquals(0.0, low.mostInWh(1.0, 1.0));
    var deep = new CellStep(new double[] {50.0, 50.0}, 0.02, 1.0, 57.6, 10.0);
    assertEquals(50.0 * 50.0 / 0.08, deep.mostOutWh(0.5, 1.0), 1e-9);
    assertEquals(25.0, deep.voltageV(1e9, 0.5, 1.0), 1e-9);
  }

  @Test
  void statedEfficienciesGoBeforeTheResistance() {
    CellStep stated = BANK.withStated(0.95, 0.9);
    assertEquals(50.0, stated.inLossWh(1000.0, 0.5, 1.0), 1e-9);
    assertEquals(100.0, stated.outLossWh(900.0, 0.5, 1.0), 1e-9);
    assertEquals(950.0, stated.outOfCellsWh(950.0 / 0.9, 0.5, 1.0), 1e-9);
    assertEquals(1000.0, stated.intoCellsWh(950.0, 0.5, 1.0), 1e-9);
    assertEquals(BANK.voltageV(3000.0, 0.4, 1.0), stated.voltageV(3000.0, 0.4, 1.0));
    assertThrows(IllegalArgumentException.class, () -> BANK.withStated(0.0, 0.9));
  }

  @Property(tries = 200)
  void whatGoesThroughTheCellsComesBack(
      @ForAll @DoubleRange(min = 0.0, max = 1.0) @Scale(8) double share,
      @ForAll @DoubleRange(min = 0.3, max = 5.0) @Scale(8) double factor,
      @ForAll @DoubleRange(min = 0.0, max = 1.0) @Scale(8) double strength) {
    double out = strength * BANK.mostOutWh(share, factor);
    double cells = out + BANK.outLossWh(out, share, factor);
    assertEquals(out, BANK.outOfCellsWh(cells, share, factor), 1e-9 * (1.0 + out));
    double in = strength * BANK.mostInWh(share, factor);
    double stored = in - BANK.inLossWh(in, share, factor);
    assertTrue(stored >= 0.0 && stored <= in);
    assertEquals(in, BANK.intoCellsWh(stored, share, factor), 1e-9 * (1.0 + in));
    assertTrue(BANK.voltageV(out, share, factor) >= 46.0 - 1e-9);
    assertTrue(BANK.voltageV(-in, share, factor) <= 57.6 + 1e-9);
  }

  @Test
  void refusesWhatNoBankCanBe() {
    assertThrows(
        IllegalArgumentException.class, () -> new CellStep(new double[] {1.0}, 0.1, 1.0, 2.0, 1.0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new CellStep(new double[] {1.0, Double.NaN}, 0.1, 1.0, 2.0, 1.0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new CellStep(new double[] {1.0, 1.0}, 0.0, 1.0, 2.0, 1.0));
  }
}
