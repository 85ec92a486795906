package greyspell.array;

import greyspell.quantity.Check;

/**
 * Equal groups of cells in a row, each with its own bypass diode, under the same light.
 *
 * @param diode of the whole module
 * @param moduleShare part of a module's cells that one bypass diode spans, above 0 to 1
 * @param count how many such groups follow each other
 * @param irradianceWm2 light that reaches the cells
 */
public record CellGroup(
    SingleDiode diode, double moduleShare, int count, double irradianceWm2, double cellC) {
  public CellGroup {
    Check.within("moduleShare", moduleShare, Double.MIN_VALUE, 1.0);
    Check.within("count", count, 1, 100_000);
    Check.notNegative("irradianceWm2", irradianceWm2);
    Check.within("cellC", cellC, -100.0, 150.0);
  }
}
