package greyspell.study;

import greyspell.array.ArraySpec;
import greyspell.electrical.ConductorJudge;
import greyspell.electrical.ConductorRun;
import greyspell.electrical.RunLoad;
import greyspell.electrical.StringRules;
import greyspell.power.step.InverterLimits;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Wire;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What the stated wires lose, hour by hour: the square of the current times the resistance at the
 * wire's working temperature, the same resistance that the electrical check judges. On the bus the
 * bank's voltage is taken where it is followed, else the nominal one.
 */
final class Wires {
  private final Scenario scenario;

  Wires(Scenario scenario) {
    this.scenario = scenario;
  }

  /** Of a plane's cable to the controller, there and back; 0 where none is stated. */
  double arrayOhm(ArraySpec array) {
    for (Wire wire : scenario.electrical().conductors()) {
      if (wire.run().kind() == ConductorRun.Kind.ARRAY_TO_CONTROLLER
          && (wire.arrayName().isEmpty() || wire.arrayName().equals(array.name()))) {
        return ConductorJudge.workingOhm(wire.run(), ratedA(array));
      }
    }
    return 0.0;
  }

  /** At test conditions, at the voltage at which the controller works the plane. */
  double ratedA(ArraySpec array) {
    return RunLoad.ofArray(array, scenario.controller(), scenario.bank().nominalV()).ratedA();
  }

  /**
   * Lost between controllers and bank if all of this passes, each controller with a run of its own
   * and an even share; never more than passes.
   *
   * @param bankV of each hour, null for the nominal voltage
   */
  double[] toBankWh(double[] busWh, double @Nullable [] bankV) {
    var lostWh = new double[busWh.length];
    toBankWh(busWh, bankV, lostWh);
    return lostWh;
  }

  /** The same into an array that is overwritten. */
  void toBankWh(double[] busWh, double @Nullable [] bankV, double[] lostWh) {
    int count = scenario.controller().count();
    double ohm =
        ohm(
            ConductorRun.Kind.CONTROLLER_TO_BANK,
            RunLoad.ofController(
                    scenario.controller(),
                    StringRules.usual(null, null, scenario.bank()),
                    broughtW() / count)
                .ratedA());
    double nominalV = scenario.bank().nominalV();
    if (ohm > 0.0) {
      for (int h = 0; h < lostWh.length; h++) {
        double volt = bankV == null ? nominalV : bankV[h];
        double lost = busWh[h] * busWh[h] * (ohm / count) / (volt * volt);
        lostWh[h] = lost < busWh[h] ? lost : busWh[h];
      }
    } else {
      Arrays.fill(lostWh, 0.0);
    }
  }

  private double broughtW() {
    double sumW = 0.0;
    for (ArraySpec array : scenario.arrays()) {
      sumW += RunLoad.broughtW(array, scenario.controller(), scenario.bank().nominalV());
    }
    return sumW;
  }

  /** The inverter with the wires that feed it. */
  InverterLimits before(InverterLimits inverter) {
    double ratedA =
        RunLoad.ofInverter(scenario.inverter(), scenario.bank(), scenario.electrical().cutOffV())
            .ratedA();
    double ohm = ohm(ConductorRun.Kind.BANK_TO_INVERTER, ratedA);
    return ohm > 0.0 ? inverter.withWires(ohm, scenario.bank().nominalV()) : inverter;
  }

  private double ohm(ConductorRun.Kind kind, double ratedA) {
    for (Wire wire : scenario.electrical().conductors()) {
      if (wire.run().kind() == kind) {
        return ConductorJudge.workingOhm(wire.run(), ratedA);
      }
    }
    return 0.0;
  }
}
