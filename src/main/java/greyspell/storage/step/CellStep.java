package greyspell.storage.step;

import greyspell.quantity.Check;

/**
 * Voltage, losses and limits of a bank within one hour, from its voltage without load and its
 * resistance.
 *
 * <pre>
 * out   P = (E - I R) I      I = 2 P / [E + sqrt(E² - 4 R P)]        loss = I² R
 * in    P = (E + I R) I      I = 2 P / [E + sqrt(E² + 4 R P)]        loss = I² R + (1 - ec) E I
 * most out   P = Vc (E - Vc) / R,  at most E² / (4 R)                0 where E is not above Vc
 * most in    P = Vh (Vh - E) / R                                     0 where E is not below Vh
 *
 * E   voltage without load at the hour's start    V       from a table over the charge, straight lines between
 * R   resistance at its temperature               Ohm     above 0
 * ec  coulombic efficiency, taken when charging   1       above 0 to 1
 * Vc  low-voltage cut-off     Vh  charging voltage        V
 * P   at the bus    W         I   A
 * </pre>
 *
 * The charge is held for the hour, so E does not fall within it. Where an efficiency is stated it
 * gives the loss in place of these, and the voltages stay. A draw that no voltage can deliver is
 * reckoned at the greatest that can: the caller holds it below {@link #mostOutWh}. Share of charge
 * and share of energy are taken for the same; at a sloping voltage they differ by up to two points.
 *
 * <p>Source: Ohm's law with a load of constant power. Held by CellStepTest.
 */
public final class CellStep {
  private final double[] openV;
  private final double steps;
  private final double resistanceOhm;
  private final double coulombicEfficiency;
  private final double chargingV;
  private final double cutOffV;
  private final double inLossShare;
  private final double outLossShare;
  private final boolean isLossStated;

  /**
   * Losses from the resistance.
   *
   * @param openV without load at equal steps of charge from empty to full, two or more; copied
   * @param resistanceOhm of the whole bank at 25 °C
   */
  public CellStep(
      double[] openV,
      double resistanceOhm,
      double coulombicEfficiency,
      double chargingV,
      double cutOffV) {
    this(openV, resistanceOhm, coulombicEfficiency, chargingV, cutOffV, Double.NaN, Double.NaN);
  }

  private CellStep(
      double[] openV,
      double resistanceOhm,
      double coulombicEfficiency,
      double chargingV,
      double cutOffV,
      double chargeEfficiency,
      double dischargeEfficiency) {
    Check.within("steps of openV", openV.length, 2, 100_000);
    for (double v : openV) {
      Check.positive("openV", v);
    }
    this.openV = openV.clone();
    this.steps = openV.length - 1.0;
    this.resistanceOhm = Check.positive("resistanceOhm", resistanceOhm);
    this.coulombicEfficiency =
        Check.within("coulombicEfficiency", coulombicEfficiency, Double.MIN_VALUE, 1.0);
    this.chargingV = Check.positive("chargingV", chargingV);
    this.cutOffV = Check.notNegative("cutOffV", cutOffV);
    this.isLossStated = !Double.isNaN(chargeEfficiency);
    this.inLossShare = 1.0 - chargeEfficiency;
    this.outLossShare = 1.0 / dischargeEfficiency - 1.0;
  }

  /** The same with losses from stated efficiencies. */
  public CellStep withStated(double chargeEfficiency, double dischargeEfficiency) {
    return new CellStep(
        openV,
        resistanceOhm,
        coulombicEfficiency,
        chargingV,
        cutOffV,
        Check.within("chargeEfficiency", chargeEfficiency, Double.MIN_VALUE, 1.0),
        Check.within("dischargeEfficiency", dischargeEfficiency, Double.MIN_VALUE, 1.0));
  }

  /** Of the whole bank at 25 °C. */
  public double resistanceOhm() {
    return resistanceOhm;
  }

  /** Charge that stays of what goes in. */
  public double coulombicEfficiency() {
    return coulombicEfficiency;
  }

  public double chargingV() {
    return chargingV;
  }

  public double cutOffV() {
    return cutOffV;
  }

  /** True if efficiencies give the losses, not the resistance. */
  public boolean isLossStated() {
    return isLossStated;
  }

  /** Lost of what the bus puts in, where stated; else NaN. */
  public double inLossShare() {
    return inLossShare;
  }

  /** Lost beside what the bus gets, as a share of it, where stated; else NaN. */
  public double outLossShare() {
    return outLossShare;
  }

  /** Without load; level outside 0 to 1. */
  public double openV(double chargeShare) {
    if (!(chargeShare > 0.0)) {
      return openV[0];
    }
    if (chargeShare >= 1.0) {
      return openV[openV.length - 1];
    }
    double at = chargeShare * steps;
    int i = (int) at;
    return openV[i] + (at - i) * (openV[i + 1] - openV[i]);
  }

  /** Of the whole bank, by which temperature changes the resistance. */
  public double ohm(double resistanceFactor) {
    return resistanceOhm * resistanceFactor;
  }

  /**
   * Lost when an hour gives this much to the bus.
   *
   * @param resistanceFactor by which temperature changes the resistance
   */
  public double outLossWh(double busWh, double chargeShare, double resistanceFactor) {
    return outLossAtWh(busWh, openV(chargeShare), ohm(resistanceFactor));
  }

  /** The same at an open voltage and resistance that are known: a loop asks several times. */
  public double outLossAtWh(double busWh, double volt, double ohm) {
    if (isLossStated) {
      return busWh * outLossShare;
    }
    double currentA = outA(busWh, volt, ohm);
    return currentA * currentA * ohm;
  }

  /** Lost when an hour takes this much from the bus. */
  public double inLossWh(double busWh, double chargeShare, double resistanceFactor) {
    return inLossAtWh(busWh, openV(chargeShare), ohm(resistanceFactor));
  }

  /** The same at a known open voltage and resistance. */
  public double inLossAtWh(double busWh, double volt, double ohm) {
    if (isLossStated) {
      return busWh * inLossShare;
    }
    double currentA = inA(busWh, volt, ohm);
    return busWh - volt * currentA * coulombicEfficiency;
  }

  /**
   * What an hour gives to the bus when it takes this much from the cells: undoes {@link
   * #outLossWh}. At most what the cells can give at half their voltage.
   */
  public double outOfCellsWh(double cellsWh, double chargeShare, double resistanceFactor) {
    return outOfCellsAtWh(cellsWh, openV(chargeShare), ohm(resistanceFactor));
  }

  /** The same at a known open voltage and resistance. */
  public double outOfCellsAtWh(double cellsWh, double volt, double ohm) {
    if (isLossStated) {
      return cellsWh / (1.0 + outLossShare);
    }
    double currentA = cellsWh / volt;
    double bestA = 0.5 * volt / ohm;
    currentA = currentA < bestA ? currentA : bestA;
    return currentA * (volt - currentA * ohm);
  }

  /**
   * What an hour takes from the bus to bring this much into the cells: undoes {@link #inLossWh}.
   */
  public double intoCellsWh(double cellsWh, double chargeShare, double resistanceFactor) {
    return intoCellsAtWh(cellsWh, openV(chargeShare), ohm(resistanceFactor));
  }

  /** The same at a known open voltage and resistance. */
  public double intoCellsAtWh(double cellsWh, double volt, double ohm) {
    if (isLossStated) {
      return cellsWh / (1.0 - inLossShare);
    }
    double currentA = cellsWh / (volt * coulombicEfficiency);
    return currentA * (volt + currentA * ohm);
  }

  /** Most that an hour gives to the bus before the voltage is down at the cut-off. */
  public double mostOutWh(double chargeShare, double resistanceFactor) {
    return mostOutAtWh(openV(chargeShare), ohm(resistanceFactor));
  }

  /** The same at a known open voltage and resistance. */
  public double mostOutAtWh(double volt, double ohm) {
    if (!(volt > cutOffV)) {
      return 0.0;
    }
    double atV = cutOffV > 0.5 * volt ? cutOffV : 0.5 * volt;
    return atV * (volt - atV) / ohm;
  }

  /** Most that an hour takes from the bus before the voltage is up at the charging voltage. */
  public double mostInWh(double chargeShare, double resistanceFactor) {
    return mostInAtWh(openV(chargeShare), ohm(resistanceFactor));
  }

  /** The same at a known open voltage and resistance. */
  public double mostInAtWh(double volt, double ohm) {
    double aboveV = chargingV - volt;
    return aboveV > 0.0 ? chargingV * aboveV / ohm : 0.0;
  }

  /**
   * At the bank's terminals.
   *
   * @param busWh given to the bus, negative when charging
   */
  public double voltageV(double busWh, double chargeShare, double resistanceFactor) {
    return voltageAtV(busWh, openV(chargeShare), ohm(resistanceFactor));
  }

  /** The same at a known open voltage and resistance. */
  public double voltageAtV(double busWh, double volt, double ohm) {
    return busWh >= 0.0 ? volt - outA(busWh, volt, ohm) * ohm : volt + inA(-busWh, volt, ohm) * ohm;
  }

  private static double outA(double powerW, double volt, double ohm) {
    double under = volt * volt - 4.0 * ohm * powerW;
    return under > 0.0 ? 2.0 * powerW / (volt + Math.sqrt(under)) : 0.5 * volt / ohm;
  }

  private static double inA(double powerW, double volt, double ohm) {
    return 2.0 * powerW / (volt + Math.sqrt(volt * volt + 4.0 * ohm * powerW));
  }
}
