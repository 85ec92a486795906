package greyspell.study;

import greyspell.array.ArrayLoss;
import greyspell.array.ControllerChain;
import greyspell.array.ControllerHours;
import greyspell.array.SolarHours;
import greyspell.balance.NamedHours;
import greyspell.scenario.Scenario;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;

/**
 * All planes of a home and their controllers, hour by hour; the wires to the bank come after. The
 * arrays are not written.
 */
final class PanelHours {
  private final double[] nominalWh;
  private final List<NamedHours> losses;
  private final double[] availableWh;
  private final ControllerHours controller;
  private final List<StudyResult.PlaneBooks> planes;

  private PanelHours(
      double[] nominalWh,
      List<NamedHours> losses,
      double[] availableWh,
      ControllerHours controller,
      List<StudyResult.PlaneBooks> planes) {
    this.nominalWh = nominalWh;
    this.losses = losses;
    this.availableWh = availableWh;
    this.controller = controller;
    this.planes = List.copyOf(planes);
  }

  /** From planes in the scenario's order. */
  static PanelHours of(Scenario scenario, List<SolarHours> planes, Without without) {
    var books = new ArrayList<StudyResult.PlaneBooks>();
    for (int k = 0; k < planes.size(); k++) {
      books.add(StudyResult.PlaneBooks.of(scenario.arrays().get(k).name(), planes.get(k)));
    }
    List<SolarHours> rest = planes.stream().map(p -> p.without(without.arrayLosses())).toList();
    SolarHours solar = rest.size() == 1 ? rest.get(0) : SolarHours.sum(rest);
    ControllerHours controller =
        new ControllerChain(scenario.controller(), scenario.bank().nominalV())
            .run(solar.availableWh());
    without.giveBack(controller);
    return new PanelHours(solar.nominalWh(), losses(solar), solar.availableWh(), controller, books);
  }

  /** The same for who asks for no more than what comes to the bus: no losses and no books. */
  static PanelHours brief(Scenario scenario, List<SolarHours> planes, Without without) {
    EnumSet<ArrayLoss> out = without.arrayLosses();
    double[] availableWh = planes.get(0).availableWithoutWh(out);
    for (int k = 1; k < planes.size(); k++) {
      double[] more = planes.get(k).availableWithoutWh(out);
      var sum = new double[more.length];
      for (int h = 0; h < sum.length; h++) {
        sum[h] = availableWh[h] + more[h];
      }
      availableWh = sum;
    }
    ControllerHours controller =
        new ControllerChain(scenario.controller(), scenario.bank().nominalV()).run(availableWh);
    without.giveBack(controller);
    return new PanelHours(new double[0], List.of(), availableWh, controller, List.of());
  }

  private static List<NamedHours> losses(SolarHours solar) {
    return Arrays.stream(ArrayLoss.values())
        .map(loss -> new NamedHours(loss.key(), solar.lossWh(loss)))
        .toList();
  }

  double[] nominalWh() {
    return nominalWh;
  }

  /** Between nominal and available. */
  List<NamedHours> losses() {
    return losses;
  }

  /** At the controllers' input. */
  double[] availableWh() {
    return availableWh;
  }

  ControllerHours controller() {
    return controller;
  }

  /** Sums of each plane. */
  List<StudyResult.PlaneBooks> planes() {
    return planes;
  }
}
