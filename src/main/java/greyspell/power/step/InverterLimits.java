package greyspell.power.step;

/**
 * What the hourly loop needs to know of an inverter and the wires that feed it.
 *
 * <pre>
 * d   = p (1 + v) + r p² / Pn          into the inverter
 * bus = d + w d²                       off the bus
 *
 * p   AC power                              W     0 .. Pn      v, r   linear and quadratic loss   1
 * Pn  continuous power                      W                  w      R / V² of the wires         1/W
 * </pre>
 *
 * The no-load draw is booked apart as standing draw; what it loses in the wires is left out.
 *
 * @param continuousW most AC power
 * @param linearLossShare v, 1
 * @param quadraticLossShare r, 1
 * @param wireLossSharePerW w: 0 where no wire is stated
 */
public record InverterLimits(
    double continuousW,
    double linearLossShare,
    double quadraticLossShare,
    double wireLossSharePerW) {
  /** Without wires. */
  public InverterLimits(double continuousW, double linearLossShare, double quadraticLossShare) {
    this(continuousW, linearLossShare, quadraticLossShare, 0.0);
  }

  /** With wires of this resistance, there and back, at this voltage. */
  public InverterLimits withWires(double loopOhm, double voltageV) {
    return new InverterLimits(
        continuousW, linearLossShare, quadraticLossShare, loopOhm / (voltageV * voltageV));
  }

  /** Energy drawn from the bus in an hour to serve this much AC. */
  public double busWh(double acWh) {
    double inverterWh =
        acWh * (1.0 + linearLossShare) + quadraticLossShare * acWh * acWh / continuousW;
    return inverterWh + wireLossSharePerW * inverterWh * inverterWh;
  }

  /** What one more Wh of AC draws from the bus beside this much. */
  public double busPerWh(double acWh) {
    double intoWh = acWh * (1.0 + linearLossShare) + quadraticLossShare * acWh * acWh / continuousW;
    double slope = 1.0 + linearLossShare + 2.0 * quadraticLossShare * acWh / continuousW;
    return slope * (1.0 + 2.0 * wireLossSharePerW * intoWh);
  }
}
