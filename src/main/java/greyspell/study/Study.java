package greyspell.study;

import greyspell.balance.Ledger;
import greyspell.outcome.OutcomeReader;
import greyspell.power.InverterCurve;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;

/**
 * One home through its weather: the whole flow, straight down the page. Scenario and weather become
 * forcing and design, these a ledger, the ledger an outcome. Read this first.
 */
public final class Study {
  private final Scenario scenario;
  private final HomeLight light;
  private final List<Assumption> assumptions;
  private final List<String> cautions;

  /** Told what is being done and how much of the run lies behind, 0 to 1. */
  public interface Steps {
    void step(String what, double doneShare);
  }

  private Study(Scenario scenario, HomeLight light) {
    this.scenario = scenario;
    this.light = light;
    assumptions = new ArrayList<>(scenario.assumptions());
    cautions = new ArrayList<>(scenario.cautions());
  }

  /** Runs a home through all hours of its weather. */
  public static StudyResult run(Scenario scenario, Steps steps) {
    steps.step("reading the weather", 0.0);
    WeatherSeries weather = read(scenario);
    TypicalRank rank = TypicalRank.of(scenario, weather);
    return run(scenario, weather, rank == null ? List.of() : List.of(rank.words()), steps);
  }

  /** Runs a home through all hours of some weather. */
  static StudyResult run(Scenario scenario, WeatherSeries weather, Steps steps) {
    return run(scenario, weather, List.of(), steps);
  }

  private static StudyResult run(
      Scenario scenario, WeatherSeries weather, List<String> first, Steps steps) {
    steps.step("sun and sky", 0.3);
    var study = new Study(scenario, HomeLight.of(scenario, weather));
    study.cautions.addAll(0, first);
    study.noteEfficiency();
    steps.step("hour by hour", 0.6);
    HomeRun ran = study.ran();
    steps.step("reading the books", 0.95);
    Ledger ledger = ran.laps().ledger();
    Besides besides =
        new Again(scenario, ran.home(), ran.forcing(), ran.design(), ledger).besides(weather);
    study.cautions.addAll(BesideNotes.cautions(scenario, ran.forcing().calendar(), besides));
    return new StudyResult(
        scenario,
        weather,
        ledger,
        OutcomeReader.read(ledger, ran.design(), scenario.site().isNorthern()),
        besides,
        ran.home().planeBooks(),
        List.copyOf(study.assumptions),
        List.copyOf(study.cautions),
        ran.laps().note());
  }

  private HomeRun ran() {
    return HomeRun.of(scenario, light, Without.NOTHING, assumptions, cautions);
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

  static WeatherSeries read(Scenario scenario) {
    return HomeWeather.read(scenario);
  }
}
