package greyspell.study;

import greyspell.array.ControllerKind;
import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.electrical.ConductorRun;
import greyspell.outcome.OutcomeReader;
import greyspell.power.InverterCurve;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.storage.step.BankDetail;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One home through its weather: the whole flow, straight down the page. Scenario and weather become
 * forcing and design, these a ledger, the ledger an outcome. Read this first.
 */
public final class Study {
  private final Scenario scenario;
  private final WeatherSeries weather;
  private final HomeLight light;
  private final Without without;
  private final List<Assumption> assumptions;
  private final List<String> cautions;

  /** Told what is being done and how much of the run lies behind, 0 to 1. */
  public interface Steps {
    void step(String what, double doneShare);
  }

  private Study(Scenario scenario, HomeLight light, Without without) {
    this.scenario = scenario;
    this.light = light;
    weather = light.weather();
    this.without = without;
    assumptions = new ArrayList<>(scenario.assumptions());
    cautions = new ArrayList<>(scenario.cautions());
  }

  /** Runs a home through all hours of its weather. */
  public static StudyResult run(Scenario scenario, Steps steps) {
    steps.step("reading the weather", 0.0);
    WeatherSeries weather = read(scenario);
    steps.step("sun and sky", 0.3);
    var study = new Study(scenario, HomeLight.of(scenario, weather), Without.NOTHING);
    Design design = study.design();
    HomeForcing home = study.home();
    Forcing forcing = home.make();
    steps.step("hour by hour", 0.8);
    Laps laps = Laps.run(forcing, design, scenario.startChargeFraction());
    if (study.followsVoltage(design)) {
      forcing = home.atVoltage(laps.ledger().bankV(), forcing);
      laps = Laps.run(forcing, design, scenario.startChargeFraction());
    }
    steps.step("reading the books", 0.95);
    Besides besides = new Again(scenario, home, forcing, design, laps.ledger()).besides(weather);
    study.cautions.addAll(BesideNotes.cautions(scenario, forcing.calendar(), besides));
    return new StudyResult(
        scenario,
        weather,
        laps.ledger(),
        OutcomeReader.read(laps.ledger(), design, scenario.site().isNorthern()),
        besides,
        home.planeBooks(),
        List.copyOf(study.assumptions),
        List.copyOf(study.cautions),
        laps.note());
  }

  /** Only what goes unserved, with some of nature or equipment left out. */
  static Unmet unmet(Scenario scenario, HomeLight light, Set<Effect> leftOut) {
    var study = new Study(scenario, light, new Without(leftOut));
    Design design = study.design();
    HomeForcing home = study.home();
    Forcing forcing = home.make();
    Laps laps = Laps.run(forcing, design, scenario.startChargeFraction());
    if (study.followsVoltage(design)) {
      forcing = home.atVoltage(laps.ledger().bankV(), forcing);
      laps = Laps.run(forcing, design, scenario.startChargeFraction());
    }
    return Unmet.of(laps.ledger());
  }

  private HomeForcing home() {
    return new HomeForcing(scenario, light, without, assumptions, cautions);
  }

  private Design design() {
    noteEfficiency();
    return new HomeDesign(scenario, without).make(weather, cautions);
  }

  /** Where the home's own standby moves the efficiencies that are used. */
  private void noteEfficiency() {
    String used = InverterCurve.fit(scenario.inverter()).note();
    if (!used.isEmpty()) {
      assumptions.add(
          new Assumption(
              "inverter.efficiency",
              used,
              "standby of "
                  + Show.power(scenario.inverter().noLoadW())
                  + " as you state, where the sheet's points hold "
                  + Show.power(scenario.inverter().sheetNoLoadW())
                  + ": the losses while it runs are drawn through the points all the same"));
    }
  }

  /**
   * Whether the bank's voltage, which only the loop knows, changes what reaches the bus: then the
   * panels are worked out again with the voltages of a first run. A third pass would change little
   * more: StudyTest.
   */
  private boolean followsVoltage(Design design) {
    BankDetail bank = design.detail().bank();
    return bank != null
        && bank.cells() != null
        && (scenario.controller().kind() == ControllerKind.PWM
            || scenario.electrical().conductors().stream()
                .anyMatch(w -> w.run().kind() == ConductorRun.Kind.CONTROLLER_TO_BANK));
  }

  static WeatherSeries read(Scenario scenario) {
    return WeatherReader.read(
        Path.of(scenario.weather().resolvedPath()),
        scenario.weather().resolvedPath(),
        scenario.site().utcOffsetH());
  }
}
