package greyspell.array;

/**
 * The five numbers of the single-diode curve at one light and temperature, for a whole module.
 *
 * @param lightA current made by the light, IL
 * @param saturationA diode saturation current, I0
 * @param seriesOhm Rs
 * @param shuntOhm Rsh, infinite if nothing leaks
 * @param idealityV modified ideality voltage a = cells × ideality × kT/q
 */
public record DiodeParameters(
    double lightA, double saturationA, double seriesOhm, double shuntOhm, double idealityV) {}
