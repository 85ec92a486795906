package greyspell.balance;

/**
 * What a run without a ledger leaves: sums over its hours and the state at its end. Each equals the
 * sum over {@link HourLoop}'s ledger.
 *
 * @param unmetInverterWh beyond the inverter
 * @param unmetRateWh beyond the bank's discharge limit
 * @param unmetEmptyWh bank empty, or what it holds locked by cold
 * @param curtailedWh solar energy not taken, at the controller's input
 * @param bankOutWh given by the bank to the bus
 * @param lowestChargeWh above the reserve, at the end of any hour
 * @param endChargeWh above the reserve, after the last hour
 * @param unmetHours hours in which something asked for was not served
 * @param longestHours of these, the longest unbroken run
 */
public record RunSums(
    double unmetInverterWh,
    double unmetRateWh,
    double unmetEmptyWh,
    double curtailedWh,
    double bankOutWh,
    double lowestChargeWh,
    double endChargeWh,
    int unmetHours,
    int longestHours) {

  /** Asked for and not served, whatever the reason. */
  public double unmetWh() {
    return unmetInverterWh + unmetRateWh + unmetEmptyWh;
  }
}
