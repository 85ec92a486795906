package greyspell.study;

import greyspell.array.ControllerKind;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.Ledger;
import greyspell.electrical.ConductorRun;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.storage.step.BankDetail;
import java.util.ArrayList;
import java.util.List;

/**
 * One home through all hours of its weather: forcing, design and the books of the last lap.
 *
 * @param home what was made on the way to the forcing
 */
record HomeRun(HomeForcing home, Forcing forcing, Design design, Laps laps) {
  /** What has to be said is added to the two lists. */
  static HomeRun of(
      Scenario scenario,
      HomeLight light,
      Without without,
      List<Assumption> assumptions,
      List<String> cautions) {
    Design design = new HomeDesign(scenario, without).make(light, cautions);
    var home = new HomeForcing(scenario, light, without, assumptions, cautions);
    return of(scenario, home, design, without, design.bank().windowWh());
  }

  /** For sums alone, one of many like it: with a guess at the charge to which it settles. */
  static Ledger books(Scenario scenario, HomeLight light, Without without, double guessWh) {
    Design design = new HomeDesign(scenario, without).make(light, new ArrayList<>());
    var home = new HomeForcing(scenario, light, without, new ArrayList<>(), new ArrayList<>());
    return of(scenario, home, design, without, guessWh).laps().ledger();
  }

  private static HomeRun of(
      Scenario scenario, HomeForcing home, Design design, Without without, double guessWh) {
    Forcing forcing = home.make();
    Laps laps = Laps.run(forcing, design, scenario.startChargeFraction(), guessWh);
    if (followsVoltage(scenario, design) && !without.isVoltageOut(scenario.controller().kind())) {
      forcing = home.atVoltage(laps.ledger().bankV(), forcing);
      laps = Laps.run(forcing, design, scenario.startChargeFraction(), guessWh);
    }
    return new HomeRun(home, forcing, design, laps);
  }

  /**
   * Whether the bank's voltage, which only the loop knows, changes what reaches the bus: then the
   * panels are worked out again with the voltages of a first run. A third pass would change little
   * more: StudyTest.
   */
  static boolean followsVoltage(Scenario scenario, Design design) {
    BankDetail bank = design.detail().bank();
    return bank != null
        && bank.cells() != null
        && (scenario.controller().kind() == ControllerKind.PWM
            || scenario.electrical().conductors().stream()
                .anyMatch(w -> w.run().kind() == ConductorRun.Kind.CONTROLLER_TO_BANK));
  }
}
