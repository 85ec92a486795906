package greyspell.report;

import greyspell.array.ArraySpec;
import greyspell.cause.log.Finding;
import greyspell.cause.log.SunFit;
import greyspell.power.InverterSpec;
import greyspell.quantity.Show;
import greyspell.study.LogDay;
import greyspell.study.LogStudy;
import java.util.ArrayList;
import java.util.List;

/** The lines of a scenario that would say what a log says. They are printed, never written. */
final class LogKeys {
  private final LogStudy study;

  LogKeys(LogStudy study) {
    this.study = study;
  }

  /** {@code key: value}, and after # what stands there now. */
  List<String> lines() {
    var lines = new ArrayList<String>();
    for (Finding finding : study.namedByWeight()) {
      double value = finding.estimate().value();
      switch (finding.about()) {
        case ARRAY -> soiling(value, lines);
        case SHADE -> shade(lines);
        case LOAD, DRAW -> growth(value, lines);
        case ALWAYS_ON_LOAD -> alwaysOn(value, lines);
        case STANDBY -> standby(value, lines);
        case BANK -> {
          double now = study.home().bank().healthShare();
          lines.add(line("bank: health", Show.percent(now * value), Show.percent(now)));
        }
        case CHARGING -> {
          double now = study.home().bank().chargeEfficiency();
          lines.add(
              line(
                  "bank: charge_efficiency",
                  Show.percent(Math.min(1.0, now * value)),
                  Show.percent(now)));
        }
      }
    }
    return lines;
  }

  private static String line(String key, String value, String now) {
    return key + ": " + value + "    # now " + now;
  }

  private int month() {
    return study.coverage().first().plusDays(study.coverage().hours() / 48).getMonthValue();
  }

  private void soiling(double factor, List<String> lines) {
    for (ArraySpec plane : study.home().arrays()) {
      double now = plane.soilingFraction().in(month());
      double share = 1.0 - (1.0 - now) * factor;
      if (share >= 0.0) {
        lines.add(
            line("arrays, " + plane.name() + ": soiling", Show.percent(share), Show.percent(now)));
      }
    }
  }

  /** By its energy over the log's weeks: the file knows shade by month, not by hour. */
  private void shade(List<String> lines) {
    SunFit sun = study.diagnosis().sun();
    if (sun == null || sun.shade() == null || study.days().isEmpty()) {
      return;
    }
    double expected = 0.0, fitted = 0.0;
    for (LogDay day : study.days()) {
      if (!Double.isNaN(day.expectedSolarWh())) {
        expected += day.expectedSolarWh();
        fitted += day.fittedSolarWh();
      }
    }
    boolean isArrayNamed = study.named().stream().anyMatch(f -> f.about() == Finding.About.ARRAY);
    double lost = 1.0 - fitted / expected / (isArrayNamed ? sun.factor().value() : 1.0);
    for (ArraySpec plane : study.home().arrays()) {
      double now = plane.shadeFraction().in(month());
      double share = 1.0 - (1.0 - now) * (1.0 - lost);
      lines.add(
          line("arrays, " + plane.name() + ": shade", Show.percent(share), Show.percent(now)));
    }
  }

  private void growth(double factor, List<String> lines) {
    double now = study.home().load().growthFraction();
    lines.add(line("loads: growth", Show.percent((1.0 + now) * factor - 1.0), Show.percent(now)));
  }

  private void alwaysOn(double watts, List<String> lines) {
    if (watts > 0.0) {
      lines.add(
          "loads: appliances: - {name: always on by the log, power: "
              + Show.power(watts)
              + ", hours: 00:00-24:00}    # one more");
    }
  }

  private void standby(double watts, List<String> lines) {
    InverterSpec inverter = study.home().inverter();
    double each = watts / inverter.count();
    double day = inverter.standbyDayW() / inverter.count();
    double night = inverter.standbyNightW() / inverter.count();
    lines.add(
        line("inverter: standby_day", Show.power(Math.max(0.0, day + each)), Show.power(day)));
    lines.add(
        line(
            "inverter: standby_night", Show.power(Math.max(0.0, night + each)), Show.power(night)));
  }
}
