package greyspell.study;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.outcome.OutcomeReader;
import greyspell.power.InverterCurve;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One home through its weather: the whole flow, straight down the page. Scenario and weather become
 * forcing and design, these a ledger, the ledger an outcome. Read this first.
 */
public final class Study {
  private final Scenario scenario;
  private final WeatherSeries weather;
  private final List<Assumption> assumptions;
  private final List<String> cautions;

  /** Told what is being done and how much of the run lies behind, 0 to 1. */
  public interface Steps {
    void step(String what, double doneShare);
  }

  private Study(Scenario scenario, WeatherSeries weather) {
    this.scenario = scenario;
    this.weather = weather;
    assumptions = new ArrayList<>(scenario.assumptions());
    cautions = new ArrayList<>(scenario.cautions());
  }

  /** Runs a home through all hours of its weather. */
  public static StudyResult run(Scenario scenario, Steps steps) {
    steps.step("reading the weather", 0.0);
    var study = new Study(scenario, read(scenario));
    steps.step("sun and sky", 0.3);
    var home = new HomeForcing(scenario, study.weather, study.assumptions, study.cautions);
    Forcing forcing = home.make();
    Design design = study.design();
    steps.step("hour by hour", 0.8);
    Laps laps = Laps.run(forcing, design, scenario.startChargeFraction());
    steps.step("reading the books", 0.95);
    return new StudyResult(
        scenario,
        study.weather,
        laps.ledger(),
        OutcomeReader.read(laps.ledger(), design, scenario.site().isNorthern()),
        home.planeBooks(),
        List.copyOf(study.assumptions),
        List.copyOf(study.cautions),
        laps.note());
  }

  private static WeatherSeries read(Scenario scenario) {
    return WeatherReader.read(
        Path.of(scenario.weather().resolvedPath()),
        scenario.weather().resolvedPath(),
        scenario.site().utcOffsetH());
  }

  private Design design() {
    InverterCurve.Fit inverter = InverterCurve.fit(scenario.inverter());
    for (String caution : inverter.cautions()) {
      if (!cautions.contains(caution)) {
        cautions.add(caution);
      }
    }
    return new Design(scenario.bank().limits(), new Wires(scenario).before(inverter.limits()));
  }
}
