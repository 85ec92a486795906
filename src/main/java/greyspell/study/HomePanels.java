package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerInput;
import greyspell.array.ControllerKind;
import greyspell.array.ControllerSpec;
import greyspell.array.PowerModel;
import greyspell.array.SolarChain;
import greyspell.array.SolarHours;
import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import greyspell.scenario.Scenario;
import greyspell.sky.PlaneIrradiance;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The panels of a home in one light, kept for the next home that has the same. */
final class HomePanels {
  private final Scenario scenario;
  private final HomeLight light;
  private final WeatherSeries weather;
  private final Without without;
  private final List<PowerModel> models;

  /** How much is worked out of them. */
  enum Detail {
    /** Every loss by name. */
    WHOLE,
    /** What reaches the bus alone. */
    BRIEF,
    /** Every loss, to rounding, from one string: where only the numbers of strings change. */
    BY_STRINGS
  }

  /**
   * Nothing is worked out yet.
   *
   * @param models of each plane
   */
  HomePanels(Scenario scenario, HomeLight light, Without without, List<PowerModel> models) {
    this.scenario = scenario;
    this.light = light;
    weather = light.weather();
    this.without = without;
    this.models = models;
  }

  /**
   * All planes and their controllers.
   *
   * @param bankV of each hour, null for the nominal voltage
   */
  PanelHours hours(Wires wires, double @Nullable [] bankV, Detail detail) {
    // one that tracks works the panels at their own best voltage, whatever the bank's
    double @Nullable [] heldAtV = scenario.controller().kind() == ControllerKind.PWM ? bankV : null;
    return heldAtV != null || detail == Detail.BY_STRINGS
        ? worked(wires, heldAtV, detail)
        : light.keptPanels().get(key(wires, detail), () -> worked(wires, null, detail));
  }

  private PanelHours worked(Wires wires, double @Nullable [] bankV, Detail detail) {
    var planes = new ArrayList<SolarHours>();
    for (int k = 0; k < models.size(); k++) {
      planes.add(plane(scenario.arrays().get(k), models.get(k), wires, bankV, detail));
    }
    return detail == Detail.BRIEF
        ? PanelHours.brief(scenario, planes, without)
        : PanelHours.of(scenario, planes, without);
  }

  private FieldKey key(Wires wires, Detail detail) {
    List<Double> wiresOhm = scenario.arrays().stream().map(wires::arrayOhm).toList();
    return new FieldKey(
        scenario.arrays(),
        scenario.controller(),
        scenario.bank().nominalV(),
        wiresOhm,
        without.ofPanels(),
        detail);
  }

  private SolarHours plane(
      ArraySpec array, PowerModel model, Wires wires, double @Nullable [] bankV, Detail detail) {
    if (bankV != null) {
      return inLight(array, model, wires, bankV);
    }
    if (detail == Detail.BY_STRINGS) {
      // one string is worked out in this light, and serves any number of them
      ArraySpec string = array.withStrings(array.module(), array.inSeries(), 1);
      double stringOhm = wires.arrayOhm(string);
      double ohmShare = stringOhm > 0.0 ? wires.arrayOhm(array) / stringOhm : 1.0;
      return kept(string, model, wires).strings(array.inParallel(), ohmShare);
    }
    return kept(array, model, wires);
  }

  private SolarHours kept(ArraySpec array, PowerModel model, Wires wires) {
    var key =
        new PlaneKey(
            array,
            scenario.controller().withCount(1),
            scenario.bank().nominalV(),
            wires.arrayOhm(array));
    return light.kept().get(key, () -> inLight(array, model, wires, null));
  }

  private SolarHours inLight(
      ArraySpec array, PowerModel model, Wires wires, double @Nullable [] bankV) {
    PlaneIrradiance onPlane = light.on(array);
    if (scenario.controller().kind() == ControllerKind.PWM
        && !SolarChain.isVoltageKnown(array.module())) {
      throw BadInput.of(
          Place.of(scenario.file()),
          "module " + array.module().name() + " on a controller that does not track",
          "needs a data sheet from which the panel's curve can be worked out",
          "Look at its voltages, currents and coefficients, or choose a controller with tracking: mppt.");
    }
    return SolarChain.run(
        array,
        model.power(),
        weather.calendar(),
        onPlane.frontWm2(),
        onPlane.absorbedWm2(),
        weather.airTemperatureC(),
        weather.windMs(),
        SnowOn.share(array, weather, onPlane.frontWm2()),
        bankV != null
            ? ControllerInput.atBankVoltage(bankV)
            : ControllerInput.of(scenario.controller(), scenario.bank().nominalV()),
        wires.arrayOhm(array));
  }

  /** What a plane brings in this light depends on no more than this. */
  private record PlaneKey(
      ArraySpec array, ControllerSpec controller, double nominalV, double wireOhm) {}

  /** The same of all planes together and their controllers. */
  private record FieldKey(
      List<ArraySpec> arrays,
      ControllerSpec controller,
      double nominalV,
      List<Double> wiresOhm,
      Set<Effect> leftOut,
      Detail detail) {}
}
