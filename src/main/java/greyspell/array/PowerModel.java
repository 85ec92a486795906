package greyspell.array;

import java.util.ArrayList;
import java.util.List;

/**
 * The power model that a module gets, and what to be told about it.
 *
 * @param cautions what the data sheet does not allow, in words; empty if all is well
 */
public record PowerModel(ModulePower power, List<String> cautions) {
  public PowerModel {
    cautions = List.copyOf(cautions);
  }

  /**
   * As chosen; where no single-diode curve fits the sheet, the temperature-coefficient model takes
   * its place and a caution says so.
   */
  public static PowerModel of(ModuleSpec module, ModuleChoices choices) {
    return switch (choices.powerCurve()) {
      case TEMPERATURE_COEFFICIENT ->
          new PowerModel(new TemperatureCoefficientPower(module), List.of());
      case SINGLE_DIODE -> ofDiode(module);
    };
  }

  private static PowerModel ofDiode(ModuleSpec module) {
    DiodeFit fit = DataSheetFit.of(module);
    SingleDiode diode = fit.diode();
    if (diode != null) {
      return new PowerModel(new SingleDiodePower(module, diode), fit.cautions());
    }
    var cautions = new ArrayList<>(fit.cautions());
    cautions.add(
        "module "
            + module.name()
            + ": "
            + fit.failure()
            + "; its power follows rating and temperature coefficient instead");
    return new PowerModel(new TemperatureCoefficientPower(module), cautions);
  }
}
