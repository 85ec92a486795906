package greyspell.study;

import greyspell.calendar.HourCalendar;
import greyspell.power.Charger;
import greyspell.power.SourceHours;
import greyspell.power.SourceLogReader;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.scenario.Scenario.Assumption;
import greyspell.scenario.Scenario.OtherSource;
import java.nio.file.Path;
import java.util.List;

/** What a second source, wind or water, puts on the bus; its log is read once where it is kept. */
final class OtherSourceHours {
  /** For a source on the sockets' side of an inverter whose charger is not stated. */
  private static final double USUAL_CHARGER_EFFICIENCY = 0.9; // common practice, no source

  private OtherSourceHours() {}

  private record SourceKey(OtherSource other) {}

  /** Of each hour; what was assumed is added to the list. */
  static double[] busWh(
      Scenario scenario,
      OtherSource other,
      HourCalendar calendar,
      Kept kept,
      List<Assumption> assumptions) {
    SourceHours hours =
        kept.get(
            new SourceKey(other),
            () ->
                SourceLogReader.read(
                        Path.of(other.resolvedPath()), other.file(), scenario.site().utcOffsetH())
                    .on(calendar));
    assumptions.add(new Assumption("other_source", other.name(), hours.told()));
    if (other.isDirectCurrent()) {
      return hours.wh();
    }
    Charger charger = scenario.inverter().charger();
    double efficiency = charger == null ? USUAL_CHARGER_EFFICIENCY : charger.efficiency();
    double[] wh = hours.wh().clone();
    for (int h = 0; h < wh.length; h++) {
      wh[h] *= efficiency;
    }
    assumptions.add(
        new Assumption(
            "other_source.bus",
            "taken to the bus through the charger at " + Show.percent(efficiency),
            "what it feeds straight to the sockets is not told apart, so its gain is on the low side"));
    return wh;
  }
}
