package greyspell.power.step;

/**
 * What the hourly loop needs to know of an inverter: bus power = p (1 + linear) + quadratic
 * p²/continuous at AC power p; the no-load draw is booked apart as standing draw.
 *
 * @param continuousW most AC power
 * @param linearLossShare v, 1
 * @param quadraticLossShare r, 1
 */
public record InverterLimits(
    double continuousW, double linearLossShare, double quadraticLossShare) {
  /** Energy drawn from the bus in an hour to serve this much AC. */
  public double busWh(double acWh) {
    return acWh * (1.0 + linearLossShare) + quadraticLossShare * acWh * acWh / continuousW;
  }
}
