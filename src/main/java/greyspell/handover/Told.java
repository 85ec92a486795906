package greyspell.handover;

import greyspell.balance.Forcing;
import greyspell.calendar.HourCalendar;
import greyspell.scenario.Scenario;
import greyspell.study.ElectricalCheck;
import greyspell.study.Explanation;
import greyspell.study.LoadAudit;
import greyspell.study.PlayGrid;
import greyspell.study.StudyResult;

/**
 * All that the pages tell of.
 *
 * @param inputsHash of scenario, weather and library as they were read, for the revision
 * @param version of the program
 */
record Told(
    StudyResult result,
    Explanation explanation,
    ElectricalCheck check,
    LoadAudit audit,
    PlayGrid grid,
    String inputsHash,
    String version) {
  Scenario home() {
    return result.scenario();
  }

  Forcing forcing() {
    return result.ledger().forcing();
  }

  HourCalendar calendar() {
    return forcing().calendar();
  }

  double years() {
    return calendar().years();
  }

  /** Month with the shortest days: 12 in the north, 6 in the south. */
  int darkMonth() {
    return home().site().isNorthern() ? 12 : 6;
  }

  int brightMonth() {
    return 18 - darkMonth();
  }

  /** Whether verdict and winters are of drawn weather, while the books are of the file's. */
  boolean isDrawn() {
    return explanation.weather().key().equals("weather.drawn");
  }

  boolean hasOther() {
    return home().otherSource() != null;
  }

  /** Of kWh in tables: so many that a day of this house does not read as nought. */
  int kwhDecimals() {
    double dayWh = audit.daily(audit.yearlyWh());
    return dayWh < 300.0 ? 3 : dayWh < 1500.0 ? 2 : 1;
  }

  boolean hasGenerator() {
    return home().generator() != null;
  }
}
