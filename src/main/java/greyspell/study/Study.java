package greyspell.study;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Ledger;
import greyspell.outcome.OutcomeReader;
import greyspell.power.InverterCurve;
import greyspell.quantity.Show;
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
  private static final int MOST_LAPS = 10;
  private static final double SAME_CHARGE_WH = 0.01;

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
    Forcing forcing =
        new HomeForcing(scenario, study.weather, study.assumptions, study.cautions).make();
    Design design = study.design();
    steps.step("hour by hour", 0.8);
    var ledger = new Ledger(forcing, design.bank().windowWh());
    String startNote = study.runFromStart(forcing, design, ledger);
    steps.step("reading the books", 0.95);
    return new StudyResult(
        scenario,
        study.weather,
        ledger,
        OutcomeReader.read(ledger, design, scenario.site().isNorthern()),
        List.copyOf(study.assumptions),
        List.copyOf(study.cautions),
        startNote);
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
    if (!inverter.note().isEmpty()) {
      assumptions.add(
          new Assumption(
              "inverter.efficiency",
              inverter.note(),
              "standby of "
                  + Show.power(scenario.inverter().noLoadW())
                  + " as you state, where the sheet's points hold "
                  + Show.power(scenario.inverter().sheetNoLoadW())
                  + ": the losses while it runs are drawn through the points all the same"));
    }
    return new Design(scenario.bank().limits(), new Wires(scenario).before(inverter.limits()));
  }

  /**
   * From the stated charge, or round and round until the first hour starts as the last one ends.
   */
  private String runFromStart(Forcing forcing, Design design, Ledger ledger) {
    double windowWh = design.bank().windowWh();
    Double stated = scenario.startChargeFraction();
    if (stated != null) {
      HourLoop.run(forcing, design, stated * windowWh, ledger);
      return "The first hour starts at "
          + Show.percent(stated)
          + " of the usable bank, as the scenario says.";
    }
    double startWh = windowWh;
    for (int lap = 1; lap <= MOST_LAPS; lap++) {
      double endWh = HourLoop.run(forcing, design, startWh, ledger);
      if (Math.abs(endWh - startWh) <= SAME_CHARGE_WH) {
        return "The first hour starts at the charge at which the last one ends ("
            + (windowWh > 0.0 ? Show.percent(endWh / windowWh) : "0 %")
            + " of the usable bank): the weather was run "
            + lap
            + (lap == 1 ? " time." : " times.");
      }
      startWh = endWh;
    }
    return "The first hour starts at "
        + Show.energy(startWh)
        + "; after "
        + MOST_LAPS
        + " laps the charge still drifts.";
  }
}
