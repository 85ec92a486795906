package greyspell.storage.step;

/**
 * A bank by its voltage: open-circuit voltage against charge, one resistance, and the share of the
 * charging current that is stored.
 *
 * <pre>
 * out:  P = (U - I R) I     cells give U I
 * in:   P = (U + I R) I     cells store q U I
 *
 * P  at the bus                                     W
 * U  open-circuit voltage at the charge at which the hour starts      V
 * R  internal resistance of the whole bank          ohm    0 or more
 * q  coulombic efficiency                           1      above 0 to 1
 * </pre>
 *
 * Source: circuit theory (textbook).
 *
 * @param openCircuitV at equal steps of charge from empty to full, two or more, never falling
 * @param resistanceOhm R
 * @param coulombicEfficiency q
 * @param cutOffV below which the bank is disconnected, 0 for never
 * @param chargingV highest charging voltage, infinite for none
 * @param nominalV for which currents were stated
 */
@SuppressWarnings("ArrayRecordComponent") // plain parameters for the loop, never compared
public record CellStep(
    double[] openCircuitV,
    double resistanceOhm,
    double coulombicEfficiency,
    double cutOffV,
    double chargingV,
    double nominalV) {
  /** Open-circuit voltage at a charge, 0 to 1 of the full bank. */
  public double openCircuitV(double share) {
    double place = share * (openCircuitV.length - 1);
    int below = (int) place;
    if (below >= openCircuitV.length - 1) {
      return openCircuitV[openCircuitV.length - 1];
    }
    return openCircuitV[below] + (place - below) * (openCircuitV[below + 1] - openCircuitV[below]);
  }

  /** Taken from the cells to give this to the bus; at most half the short-circuit current. */
  public double drawWh(double busWh, double ocV) {
    if (resistanceOhm <= 0.0) {
      return busWh;
    }
    double root = ocV * ocV - 4.0 * resistanceOhm * busWh;
    double a = root > 0.0 ? 2.0 * busWh / (ocV + Math.sqrt(root)) : ocV / (2.0 * resistanceOhm);
    return ocV * a;
  }

  /** What the bus gets when this is taken from the cells. */
  public double busOfDrawWh(double drawWh, double ocV) {
    double a = drawWh / ocV;
    return (ocV - a * resistanceOhm) * a;
  }

  /** Stored when the bus puts this in. */
  public double storedWh(double busWh, double ocV) {
    double a = 2.0 * busWh / (ocV + Math.sqrt(ocV * ocV + 4.0 * resistanceOhm * busWh));
    return coulombicEfficiency * ocV * a;
  }

  /** What the bus puts in to store this. */
  public double busOfStoredWh(double storedWh, double ocV) {
    double a = storedWh / (coulombicEfficiency * ocV);
    return (ocV + a * resistanceOhm) * a;
  }

  /** Most for the bus before the voltage falls to the cut-off. */
  public double mostOutWh(double ocV) {
    double lowestV = cutOffV > 0.5 * ocV ? cutOffV : 0.5 * ocV;
    if (ocV <= lowestV) {
      return 0.0;
    }
    return resistanceOhm > 0.0
        ? lowestV * (ocV - lowestV) / resistanceOhm
        : Double.POSITIVE_INFINITY;
  }

  /** Most from the bus before the voltage rises to the charging voltage. */
  public double mostInWh(double ocV) {
    if (ocV >= chargingV) {
      return 0.0;
    }
    return resistanceOhm > 0.0
        ? chargingV * (chargingV - ocV) / resistanceOhm
        : Double.POSITIVE_INFINITY;
  }

  /** At the terminals over the hour: in above 0 or out above 0. */
  public double terminalV(double inWh, double outWh, double ocV) {
    if (outWh > 0.0) {
      return ocV - drawWh(outWh, ocV) / ocV * resistanceOhm;
    }
    return ocV + storedWh(inWh, ocV) / (coulombicEfficiency * ocV) * resistanceOhm;
  }
}
