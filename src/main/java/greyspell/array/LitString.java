package greyspell.array;

import greyspell.quantity.Check;

/**
 * A string whose modules all see the same light.
 *
 * @param diode of one module
 * @param bypassGroups bypass diodes in a module, usually 3
 * @param irradianceWm2 light that reaches the cells
 */
public record LitString(
    SingleDiode diode, int inSeries, int bypassGroups, double irradianceWm2, double cellC) {
  /** Usual number of bypass diodes in a module (common practice, no source). */
  public static final int USUAL_BYPASS_GROUPS = 3;

  public LitString {
    Check.within("inSeries", inSeries, 1, 10_000);
    Check.within("bypassGroups", bypassGroups, 1, 10);
  }

  public CellGroup cells() {
    return new CellGroup(diode, 1.0 / bypassGroups, inSeries * bypassGroups, irradianceWm2, cellC);
  }
}
