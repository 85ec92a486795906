package greyspell.outcome;

/**
 * The least usable bank that would have ridden through a winter: full at the winter's start and
 * never empty while something was asked for, without a generator and without letting anything go.
 * It is the deepest running deficit of the winter.
 *
 * @param leastWh usable energy, Wh; 0 if the sun alone was always enough
 * @param isLimited true if inverter or discharge limit leave something unserved whatever the bank
 */
public record RidingBank(double leastWh, boolean isLimited) {}
