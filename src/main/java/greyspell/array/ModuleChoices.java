package greyspell.array;

import greyspell.quantity.Check;

/**
 * Which published models describe the module.
 *
 * @param heatLossWm2K Faiman u0
 * @param windHeatLossWm2KPerMs Faiman u1
 */
public record ModuleChoices(
    CellHeat cellHeat, PowerCurve powerCurve, double heatLossWm2K, double windHeatLossWm2KPerMs) {
  public ModuleChoices {
    Check.positive("heatLossWm2K", heatLossWm2K);
    Check.notNegative("windHeatLossWm2KPerMs", windHeatLossWm2KPerMs);
  }

  public enum CellHeat {
    FAIMAN,
    NOMINAL_CELL_TEMPERATURE
  }

  public enum PowerCurve {
    SINGLE_DIODE,
    TEMPERATURE_COEFFICIENT
  }

  public static ModuleChoices usual() {
    return new ModuleChoices(CellHeat.FAIMAN, PowerCurve.SINGLE_DIODE, 25.0, 6.84);
  }
}
