package greyspell.outcome;

/**
 * The least usable bank that would have ridden through a winter: full at the winter's start and
 * never empty while something was asked for, without a generator and without letting anything go.
 * With nothing lost at rest and nothing locked by cold it is the deepest running deficit. The draw
 * of the bank's own electronics grows with it.
 *
 * @param leastWh usable energy, Wh; 0 if the sun alone was always enough; infinite if no bank helps
 * @param isLimited true if inverter or discharge limit leave something unserved whatever the bank
 * @param isExact false where the hourly run follows what is left out here: the bank's voltage, a
 *     generator, rules, an inverter that sleeps
 */
public record RidingBank(double leastWh, boolean isLimited, boolean isExact) {}
