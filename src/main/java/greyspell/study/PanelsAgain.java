package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.array.ControllerChain;
import greyspell.array.ControllerHours;
import greyspell.array.ControllerInput;
import greyspell.array.ControllerKind;
import greyspell.array.PowerModel;
import greyspell.array.SolarChain;
import greyspell.balance.Forcing;
import greyspell.scenario.Scenario;
import greyspell.sky.PlaneIrradiance;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The panels of a home in weather that is written over again and again: the chain of {@link
 * HomeForcing} without the books of the single losses, into arrays that are used again.
 * ManyWintersTest holds that both come to the same.
 */
final class PanelsAgain {
  private final Scenario home;
  private final HomeLight light;
  private final WeatherSeries weather;
  private final Wires wires;
  private final List<Plane> planes = new ArrayList<>();
  private final ControllerChain controller;
  private final ControllerHours controlled;
  private final double[] wiresWh;

  /** One plane with its own arrays. */
  private record Plane(
      ArraySpec array,
      PowerModel model,
      PlaneIrradiance light,
      SolarChain chain,
      double cableOhm) {}

  PanelsAgain(Scenario home, HomeLight light, List<PowerModel> models) {
    this.home = home;
    this.light = light;
    weather = light.weather();
    wires = new Wires(home);
    for (int k = 0; k < models.size(); k++) {
      ArraySpec array = home.arrays().get(k);
      SolarChain chain = SolarChain.availableOnly(weather.hours());
      planes.add(new Plane(array, models.get(k), light.on(array), chain, wires.arrayOhm(array)));
    }
    controller = new ControllerChain(home.controller(), home.bank().nominalV());
    controlled = ControllerHours.empty(weather.hours());
    wiresWh = new double[weather.hours()];
  }

  /** Columns whose arrays {@link #fill} writes, beside those of a home that is made. */
  Forcing.Columns columns(Forcing made) {
    Forcing.Columns columns = made.columns();
    columns.arrayLosses = List.of();
    columns.controllerParts = List.of();
    columns.solarNominalWh = new double[0];
    columns.solarAvailableWh = new double[weather.hours()];
    columns.controllerLossWh = new double[weather.hours()];
    columns.solarBusWh = new double[weather.hours()];
    columns.clippedWh = controlled.clippedWh();
    return columns;
  }

  /** The light falls on the planes anew. */
  void shine() {
    for (Plane plane : planes) {
      plane.light().again(light.radiation(), weather);
    }
  }

  /**
   * Solar energy to the bus; once the light has fallen.
   *
   * @param bankV of each hour where it is followed, null for the nominal voltage
   */
  void fill(Forcing.Columns columns, double @Nullable [] bankV) {
    for (int k = 0; k < planes.size(); k++) {
      double[] planeWh = availableWh(planes.get(k), bankV);
      for (int h = 0; h < planeWh.length; h++) {
        columns.solarAvailableWh[h] =
            k == 0 ? planeWh[h] : columns.solarAvailableWh[h] + planeWh[h];
      }
    }
    controller.fill(columns.solarAvailableWh, controlled);
    double[] busWh = controlled.busWh();
    double[] lossWh = controlled.lossWh();
    wires.toBankWh(busWh, bankV, wiresWh);
    for (int h = 0; h < busWh.length; h++) {
      columns.controllerLossWh[h] = lossWh[h] + wiresWh[h];
      columns.solarBusWh[h] = busWh[h] - wiresWh[h];
    }
  }

  private double[] availableWh(Plane plane, double @Nullable [] bankV) {
    PlaneIrradiance onPlane = plane.light();
    return plane
        .chain()
        .fill(
            plane.array(),
            plane.model().power(),
            weather.calendar(),
            onPlane.frontWm2(),
            onPlane.absorbedWm2(),
            weather.airTemperatureC(),
            weather.windMs(),
            SnowOn.share(plane.array(), weather, onPlane.frontWm2()),
            bankV != null && home.controller().kind() == ControllerKind.PWM
                ? ControllerInput.atBankVoltage(bankV)
                : ControllerInput.of(home.controller(), home.bank().nominalV()),
            plane.cableOhm())
        .availableWh();
  }
}
