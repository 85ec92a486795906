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
import org.jspecify.annotations.Nullable;

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
    Forcing forcing = home.make();
    double fullWh = design.bank().windowWh();
    if (isAgain(scenario, design, without)) {
      forcing = again(scenario, home, forcing, design, fullWh);
    }
    Laps laps = Laps.run(forcing, design, scenario.startChargeFraction(), fullWh);
    return new HomeRun(home, forcing, design, laps);
  }

  /**
   * {@link Ledger#brief} books of one of many runs.
   *
   * @param guessWh at the charge to which it settles, above the reserve; a full bank if null
   */
  static Ledger brief(
      Scenario scenario, HomeLight light, Without without, @Nullable Double guessWh) {
    Design design = new HomeDesign(scenario, without).make(light, new ArrayList<>());
    var home = new HomeForcing(scenario, light, without, new ArrayList<>(), new ArrayList<>());
    Forcing forcing = home.makeBrief();
    double firstWh = guessWh == null ? design.bank().windowWh() : guessWh;
    if (isAgain(scenario, design, without)) {
      forcing = again(scenario, home, forcing, design, firstWh);
    }
    return Laps.brief(forcing, design, scenario.startChargeFraction(), firstWh).ledger();
  }

  /** The forcing at the voltages of a first run. */
  private static Forcing again(
      Scenario scenario, HomeForcing home, Forcing forcing, Design design, double firstWh) {
    Laps first = Laps.brief(forcing, design, scenario.startChargeFraction(), firstWh);
    return home.atVoltage(first.ledger().bankV(), forcing);
  }

  private static boolean isAgain(Scenario scenario, Design design, Without without) {
    return followsVoltage(scenario, design) && !without.isVoltageOut(scenario.controller().kind());
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
