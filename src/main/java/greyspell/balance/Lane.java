package greyspell.balance;

/**
 * One of many designs that are run at once.
 *
 * @param solarFactor panels over those of the forcing; any number where no controller clips
 * @param design without detail
 * @param ownDrawWh drawn from the bus every hour beyond what the forcing says: a bank's own
 *     electronics grow with it
 */
public record Lane(double solarFactor, Design design, double ownDrawWh) {
  /** Drawing what the forcing says. */
  public Lane(double solarFactor, Design design) {
    this(solarFactor, design, 0.0);
  }
}
