package greyspell.outcome;

/**
 * An unbroken run of hours in which something asked for was not served.
 *
 * @param fromHour first hour
 * @param hours how many
 * @param unmetWh not served in all
 */
public record Shortfall(int fromHour, int hours, double unmetWh) {}
