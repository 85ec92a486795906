package greyspell.balance;

/**
 * One of many designs that are run at once.
 *
 * @param solarFactor panels over those of the forcing; any number where no controller clips
 * @param design without detail
 */
public record Lane(double solarFactor, Design design) {}
