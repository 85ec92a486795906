package greyspell.array;

/** How hot the cells get under light: a choice of two published models. */
public sealed interface CellTemperature permits FaimanCell, NominalCell {
  /**
   * Cell temperature under this light.
   *
   * @param irradianceWm2 light on the module, 0 or more
   * @param windMs at the module, 0 or more
   */
  double cellC(double irradianceWm2, double airC, double windMs);

  static CellTemperature of(ModuleSpec module, ModuleChoices choices) {
    return switch (choices.cellHeat()) {
      case FAIMAN -> new FaimanCell(choices.heatLossWm2K(), choices.windHeatLossWm2KPerMs());
      case NOMINAL_CELL_TEMPERATURE -> new NominalCell(module.nominalCellC());
    };
  }
}
