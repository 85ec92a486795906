package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.storage.step.CellStep;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** A bank by its voltage: textbook circuits, and what must hold whatever the numbers. */
class CellStepTest {
  private static final double ONE_MICRO_WH = 1e-6;

  private static CellStep cells(double ohm, double q, double cutOffV, double chargingV) {
    return new CellStep(new double[] {46.0, 49.0, 50.0, 53.0}, ohm, q, cutOffV, chargingV, 48.0);
  }

  /** 50 V behind 0.1 ohm at 20 A: 48 V, 960 W out of 1000 W; the other way 52 V, 1040 W. */
  @Test
  void workedByHand() {
    CellStep c = cells(0.1, 0.95, 0.0, Double.POSITIVE_INFINITY);
    assertEquals(1000.0, c.drawWh(960.0, 50.0), ONE_MICRO_WH);
    assertEquals(960.0, c.busOfDrawWh(1000.0, 50.0), ONE_MICRO_WH);
    assertEquals(48.0, c.terminalV(0.0, 960.0, 50.0), 1e-9);
    assertEquals(950.0, c.storedWh(1040.0, 50.0), ONE_MICRO_WH);
    assertEquals(1040.0, c.busOfStoredWh(950.0, 50.0), ONE_MICRO_WH);
    assertEquals(52.0, c.terminalV(1040.0, 0.0, 50.0), 1e-9);
    assertEquals(50.0, c.terminalV(0.0, 0.0, 50.0), 1e-9);
  }

  @Test
  void voltageRunsStraightBetweenItsPoints() {
    CellStep c = cells(0.1, 1.0, 0.0, Double.POSITIVE_INFINITY);
    assertEquals(46.0, c.openCircuitV(0.0));
    assertEquals(47.5, c.openCircuitV(1.0 / 6.0), 1e-12);
    assertEquals(49.0, c.openCircuitV(1.0 / 3.0), 1e-12);
    assertEquals(49.5, c.openCircuitV(0.5), 1e-12);
    assertEquals(53.0, c.openCircuitV(1.0));
    assertEquals(53.0, c.openCircuitV(1.0 + 1e-12), 1e-9);
  }

  /** Current from the drawn energy; what the cells give and the bus does not get is I²R. */
  @Property
  void onTheWayOutTheEnergyCloses(
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 0.2) double ohm,
      @ForAll @Scale(4) @DoubleRange(min = 40.0, max = 60.0) double ocV,
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 0.999) double ofTheMost) {
    double busWh = ofTheMost * Math.min(50_000.0, ocV * ocV / (4.0 * ohm));
    CellStep c = cells(ohm, 0.95, 0.0, Double.POSITIVE_INFINITY);
    double drawWh = c.drawWh(busWh, ocV), a = drawWh / ocV;
    assertEquals(drawWh, busWh + a * a * ohm, ONE_MICRO_WH);
    assertEquals(busWh, c.busOfDrawWh(drawWh, ocV), ONE_MICRO_WH);
    if (busWh > 0.0) {
      assertEquals(busWh, a * c.terminalV(0.0, busWh, ocV), ONE_MICRO_WH);
    }
    assertTrue(a * ohm <= 0.5 * ocV + 1e-9, "the smaller of the two currents");
  }

  @Property
  void drawingBackWhatWasDrawn(
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.2) double ohm,
      @ForAll @Scale(4) @DoubleRange(min = 40.0, max = 60.0) double ocV,
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 0.99) double ofHalfShort) {
    CellStep c = cells(ohm, 0.95, 0.0, Double.POSITIVE_INFINITY);
    double drawWh = ofHalfShort * ocV * ocV / (2.0 * ohm);
    assertEquals(drawWh, c.drawWh(c.busOfDrawWh(drawWh, ocV), ocV), ONE_MICRO_WH);
  }

  /** What the bus puts in and the cells do not store is I²R and the lost current. */
  @Property
  void onTheWayInTheEnergyCloses(
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 0.2) double ohm,
      @ForAll @Scale(4) @DoubleRange(min = 0.8, max = 1.0) double q,
      @ForAll @Scale(4) @DoubleRange(min = 40.0, max = 60.0) double ocV,
      @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 9000.0) double busWh) {
    CellStep c = cells(ohm, q, 0.0, Double.POSITIVE_INFINITY);
    double storedWh = c.storedWh(busWh, ocV), a = storedWh / (q * ocV);
    assertEquals(busWh, storedWh + (1.0 - q) * ocV * a + a * a * ohm, ONE_MICRO_WH);
    assertEquals(busWh, c.busOfStoredWh(storedWh, ocV), ONE_MICRO_WH);
    assertEquals(storedWh, c.storedWh(c.busOfStoredWh(storedWh, ocV), ocV), ONE_MICRO_WH);
    assertEquals(busWh, a * c.terminalV(busWh, 0.0, ocV), ONE_MICRO_WH);
  }

  @Property
  void theMostOutBringsTheTerminalsToTheCutOff(
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.2) double ohm,
      @ForAll @Scale(4) @DoubleRange(min = 46.5, max = 60.0) double ocV,
      @ForAll @Scale(4) @DoubleRange(min = 36.0, max = 46.0) double cutOffV) {
    CellStep c = cells(ohm, 0.95, cutOffV, Double.POSITIVE_INFINITY);
    assertEquals(cutOffV, c.terminalV(0.0, c.mostOutWh(ocV), ocV), 1e-9);
  }

  @Property
  void theMostInBringsTheTerminalsToTheChargingVoltage(
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.2) double ohm,
      @ForAll @Scale(4) @DoubleRange(min = 0.8, max = 1.0) double q,
      @ForAll @Scale(4) @DoubleRange(min = 44.0, max = 55.5) double ocV) {
    CellStep c = cells(ohm, q, 0.0, 56.0);
    assertEquals(56.0, c.terminalV(c.mostInWh(ocV), 0.0, ocV), 1e-9);
  }

  /**
   * Where no cut-off is stated the most is half the open-circuit voltage at half the short circuit.
   */
  @Test
  void withoutCutOffTheMostIsTheCircuitsOwn() {
    CellStep c = cells(0.1, 0.95, 0.0, Double.POSITIVE_INFINITY);
    assertEquals(6250.0, c.mostOutWh(50.0), ONE_MICRO_WH);
    assertEquals(12_500.0, c.drawWh(6250.0, 50.0), ONE_MICRO_WH);
    assertEquals(12_500.0, c.drawWh(7000.0, 50.0), "more is not to be had");
  }

  @Test
  void beyondTheLimitsNothingFlows() {
    CellStep c = cells(0.1, 0.95, 46.0, 56.0);
    assertEquals(0.0, c.mostOutWh(46.0));
    assertEquals(0.0, c.mostOutWh(45.0));
    assertEquals(0.0, c.mostInWh(56.0));
    assertEquals(0.0, c.mostInWh(57.0));
  }

  @Test
  void withoutResistanceVoltageNeverStandsInTheWay() {
    CellStep c = cells(0.0, 0.9, 46.0, 56.0);
    assertEquals(Double.POSITIVE_INFINITY, c.mostOutWh(50.0));
    assertEquals(Double.POSITIVE_INFINITY, c.mostInWh(50.0));
    assertEquals(700.0, c.drawWh(700.0, 50.0));
    assertEquals(630.0, c.storedWh(700.0, 50.0), ONE_MICRO_WH);
    assertEquals(50.0, c.terminalV(0.0, 700.0, 50.0), 1e-12);
  }
}
