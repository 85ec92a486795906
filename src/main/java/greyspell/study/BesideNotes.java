package greyspell.study;

import greyspell.calendar.HourCalendar;
import greyspell.power.PeakCheck;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;

/** What of the peaks, the bank and the generator has to be said as a caution. */
final class BesideNotes {
  private BesideNotes() {}

  static List<String> cautions(Scenario scenario, HourCalendar calendar, Besides besides) {
    var cautions = new ArrayList<String>();
    peaks(scenario, calendar, besides.peaks(), cautions);
    cautions.addAll(besides.fullCharge().cautions(scenario.bank()));
    return cautions;
  }

  private static void peaks(
      Scenario scenario, HourCalendar calendar, PeakCheck peaks, List<String> cautions) {
    double years = calendar.years();
    Integer above = peaks.hoursAboveSurge();
    Double surgeW = scenario.inverter().surgeW();
    if (above != null && above > 0 && surgeW != null) {
      cautions.add(
          "Motor starts: in "
              + Math.round(above / years)
              + " hours a year what may start beside what may run asks for more than the inverter's surge power of "
              + Show.power(surgeW)
              + " (most "
              + Show.power(peaks.worstPeakW())
              + ", on "
              + calendar.date(peaks.worstHour())
              + "). An inverter that is asked for more switches off; start one motor at a time.");
    }
    if (peaks.hoursAboveContinuous() > 0) {
      cautions.add(
          "Peaks: in "
              + Math.round(peaks.hoursAboveContinuous() / years)
              + " hours a year what may run together asks for more than the inverter holds, "
              + Show.power(scenario.inverter().continuousW())
              + " (most "
              + Show.power(peaks.worstRunningW())
              + "), though the hour's mean may be less. The books count the hour's mean.");
    }
  }
}
