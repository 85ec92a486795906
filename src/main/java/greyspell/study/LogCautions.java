package greyspell.study;

import greyspell.cause.log.ClockFit;
import greyspell.cause.log.Finding;
import greyspell.cause.log.LogDiagnosis;
import greyspell.cause.log.SeenHours;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.study.LogWeeks.Span;
import greyspell.weather.MonitorColumn;
import greyspell.weather.MonitorLog;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What stands in the way of believing what a log seems to say, in sentences. */
final class LogCautions {
  private static final int DAY = 24;

  private LogCautions() {}

  static void house(Scenario home, MonitorLog log, List<String> cautions) {
    if (home.generator() != null && !log.has(MonitorColumn.GENERATOR)) {
      cautions.add(
          "The home has a generator and the log has no column of it: the hours in which it ran are"
              + " read as sun or as a light load. Map its power as \"generator\".");
    }
    if (log.has(MonitorColumn.GENERATOR) && LogRun.charger(home) == null) {
      cautions.add(
          "The scenario states no charger: of what the generator gave "
              + Show.percent(LogRun.USUAL_CHARGER_EFFICIENCY)
              + " are taken to reach the bus.");
    }
    if (!log.has(MonitorColumn.CHARGE)) {
      cautions.add(
          "The log has no charge: sun that a full bank could not take cannot be told from dirt, so"
              + " the panels are not judged, nor is the bank.");
    }
    if (!log.has(MonitorColumn.SOLAR)) {
      cautions.add("The log has no solar power: the panels are not judged.");
    }
    if (!log.has(MonitorColumn.LOAD)) {
      cautions.add(
          "The log has no load: a higher load cannot be told from a higher draw of the system itself.");
    }
  }

  static void weather(@Nullable ClockFit clock, boolean isUnlike, List<String> cautions) {
    if (isUnlike) {
      cautions.add(
          "Seen and expected sun hardly move together: the weather file does not seem to be that of"
              + " this house and these weeks (a made or a typical year, or a place too far away). Do not"
              + " believe what is said of the panels.");
    }
    if (clock != null && clock.jumps()) {
      cautions.add(
          "The clock of the log seems to change within it, by about an hour, as daylight saving does:"
              + " export it in UTC or in standard time.");
    }
  }

  /** Figures that no house has. */
  static void plausible(LogDiagnosis diagnosis, List<String> cautions) {
    for (Finding finding : diagnosis.findings()) {
      double value = finding.estimate().value();
      boolean isFactor = finding.about().assumed() == 1.0;
      if (finding.isNamed() && isFactor && (value < 0.4 || value > 2.5)) {
        cautions.add(
            "Some figures are far from any house like this one. Is it the log of this home? Is a unit in"
                + " the map the wrong one (W for kW), or solar_at or load_at (docs/compare.md)?");
        return;
      }
    }
  }

  static void span(SeenHours seen, Span span, List<String> cautions) {
    int outside = seen.hours() - span.hours();
    if (outside >= DAY) {
      cautions.add(
          outside / DAY
              + " days of the log lie outside the weather file and were not read: use weather that holds them.");
    }
  }
}
