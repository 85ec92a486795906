package greyspell.outcome;

/**
 * A run of days in which the panels bring less than the house asks, both on the bus.
 *
 * @param fromDay first day, counted from 0
 * @param days how many
 * @param shortWh what the panels brought too little in all, on the bus
 * @param unmetWh what was not served during these days
 */
public record GreySpell(int fromDay, int days, double shortWh, double unmetWh) {}
