package greyspell.study;

import greyspell.balance.Ledger;
import greyspell.outcome.Outcome;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything that one run of a scenario gives; pages and pictures are made from this alone.
 *
 * @param assumptions the scenario's defaults and those of the weather and the run
 * @param cautions unusual things about scenario, weather and result, and the usual warnings
 * @param startNote how the first hour's charge was found, a sentence
 */
public record StudyResult(
    Scenario scenario,
    WeatherSeries weather,
    Ledger ledger,
    Outcome outcome,
    List<Assumption> assumptions,
    List<String> cautions,
    String startNote) {

  /** With one more caution, before all others. */
  public StudyResult withFirstCaution(String caution) {
    var all = new ArrayList<String>();
    all.add(caution);
    all.addAll(cautions);
    return new StudyResult(
        scenario, weather, ledger, outcome, assumptions, List.copyOf(all), startNote);
  }
}
