package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Say;
import greyspell.outcome.Autonomy;
import greyspell.outcome.Figures;
import greyspell.outcome.Figures.Beyond;
import greyspell.power.PeakCheck;
import greyspell.quantity.Show;
import greyspell.study.Fuel;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/**
 * The figures that stand under the verdict, on the page and, as far as they fit, on the terminal.
 */
final class KeyFigures {
  private static final double NOTABLE_SHARE = 0.01;

  /**
   * One of them.
   *
   * @param isSpare what the terminal leaves out first where there is much to say
   */
  record Line(String label, String value, boolean isSpare) {
    Line(String label, String value) {
      this(label, value, false);
    }
  }

  private KeyFigures() {}

  static List<Line> of(StudyResult result) {
    HourCalendar calendar = Facts.calendar(result);
    Figures f = result.outcome().total();
    int years = calendar.years();
    int dark = Facts.darkMonth(result);
    double usableWh = result.ledger().windowWh();
    var lines = new ArrayList<Line>();
    lines.add(
        new Line(
            "The house asks for",
            Say.kwh(f.loadWh() / f.days())
                + " a day, in "
                + Say.month(dark)
                + " "
                + Say.kwh(Facts.darkMonthLoadWhPerDay(result))));
    var answers = new Answers(result);
    lines.add(new Line("Always on, the system", alwaysOn(result)));
    lines.add(new Line("10 W less saves, a year", answers.tenWattsLess()));
    lines.add(
        new Line(
            "Not served" + (years > 1 ? ", " + years + " years" : ""),
            f.unmetHours() == 0
                ? "0 kWh, 0 hours"
                : Say.kwh(f.unmetWh())
                    + ", "
                    + Say.hours(f.unmetHours())
                    + ", "
                    + Say.percent(f.unmetShare())
                    + " of what was asked"));
    if (answers.isRanged()) {
      lines.add(new Line("As sure as the loads", answers.range()));
    }
    if (!answers.measureFirst().isEmpty()) {
      lines.add(new Line("Measure first", answers.measureFirst()));
    }
    helpers(result, lines);
    service(result, lines);
    lines.add(
        new Line(
            "Loss-of-load probability",
            Say.percent(f.lossOfLoadProbabilityHours())
                + " of hours, "
                + Say.percent(f.lossOfLoadProbabilityDays())
                + " of days",
            true));
    Autonomy a = result.outcome().autonomy();
    lines.add(
        new Line(
            "Dark autonomy, " + Say.month(dark),
            days(a.darkDays().in(dark), a)
                + " on a full bank ("
                + Say.kwh(usableWh)
                + ") with no sun"));
    lines.add(
        new Line(
            "Grey autonomy",
            a.greyWorstDays() >= a.longestD()
                ? days(a.longestD(), a) + " from every start day"
                : "middle "
                    + days(a.greyP50Days(), a)
                    + ", 1 in 10 under "
                    + Say.number(a.greyP10Days(), a.greyP10Days() < 100.0 ? 1 : 0)
                    + ", worst "
                    + Say.days(a.greyWorstDays())
                    + " from "
                    + Say.shortDateYear(calendar, a.greyWorstFromDay() * 24)));
    lines.add(
        new Line(
            "Lowest charge",
            Say.percent(usableWh > 0.0 ? f.lowestChargeWh() / usableWh : 0.0)
                + " ("
                + Say.kwh(f.lowestChargeWh())
                + (f.unmetEmptyWh() > 0.0 && f.lowestChargeWh() > NOTABLE_SHARE * usableWh
                    ? ", held back by the cold"
                    : " above the reserve")
                + "), first on "
                + Say.date(calendar, f.lowestChargeHour()),
            true));
    peaks(result, lines);
    lines.add(
        new Line(
            "Sun left over",
            Say.percent(f.solarAvailableWh() > 0.0 ? f.curtailedWh() / f.solarAvailableWh() : 0.0)
                + " of what the panels could give ("
                + Say.kwh(f.curtailedWh() / years)
                + " a year)",
            true));
    lines.add(
        new Line("Full cycles", Say.number(f.equivalentFullCycles() / years, 0) + " a year", true));
    return lines;
  }

  private static void helpers(StudyResult result, List<Line> lines) {
    double years = Facts.calendar(result).years();
    Beyond b = result.outcome().total().beyond();
    if (result.besides().fuel() != null) {
      Fuel fuel = result.fuelBetween(0, result.ledger().hours());
      double litresL = fuel.fuelL() / years;
      lines.add(
          new Line(
              "Generator, a year",
              Say.number(b.generatorHours() / years, 0)
                  + " h, "
                  + Say.number(b.generatorStarts() / years, 0)
                  + " starts, "
                  + Say.kwh(b.generatorWh() / years)
                  + ", "
                  + GeneratorPage.fuelWords(litresL)
                  + (fuel.fuelCost() == null
                      ? ""
                      : ", "
                          + GeneratorPage.money(
                              fuel.fuelCost() / years, result.scenario().costs().currency()))));
    }
    if (Facts.hasOther(result)) {
      double allWh = b.otherUsedWh() + b.otherCurtailedWh();
      lines.add(
          new Line(
              "Second source, a year",
              Say.kwh(b.otherUsedWh() / years)
                  + " used, "
                  + Say.percent(allWh > 0.0 ? b.otherCurtailedWh() / allWh : 0.0)
                  + " left over"));
    }
    if (!result.scenario().load().policy().isIdle()) {
      lines.add(
          new Line(
              "By rule, a year",
              Say.kwh(b.shedWh() / years)
                  + " let go, "
                  + Say.kwh(b.putOffWh() / years)
                  + " put off, "
                  + Say.kwh(b.madeUpWh() / years)
                  + " made up",
              true));
    }
  }

  /** The bank in the last year that was asked for, and when it is worn. */
  private static void service(StudyResult result, List<Line> lines) {
    var service = result.besides().service();
    if (service.isEmpty()) {
      return;
    }
    var last = service.get(service.size() - 1);
    Double worn = result.besides().replacementYears();
    lines.add(
        new Line(
            "Bank in year " + last.number(),
            Say.percent(last.healthShare())
                + " of new, "
                + Say.kwh(last.unmet().wh())
                + " short a year"
                + (worn == null ? "" : "; replace " + Say.number(worn, 1) + " years from now")));
  }

  private static void peaks(StudyResult result, List<Line> lines) {
    PeakCheck peaks = result.besides().peaks();
    Double surgeW = result.scenario().inverter().surgeW();
    Integer aboveSurge = peaks.hoursAboveSurge();
    boolean isAbove = peaks.hoursAboveContinuous() > 0 || (aboveSurge != null && aboveSurge > 0);
    lines.add(
        new Line(
            "Peaks within the hour",
            Show.power(peaks.worstRunningW())
                + " (inverter "
                + Show.power(result.scenario().inverter().continuousW())
                + "), at a start "
                + Show.power(peaks.worstPeakW())
                + (surgeW == null ? "" : " (surge " + Show.power(surgeW) + ")"),
            !isAbove));
  }

  /** "142 W = 3.4 kWh a day = 38 % of December's need". */
  static String alwaysOn(StudyResult result) {
    var on = Facts.alwaysOn(result);
    return Say.number(on.meanW(), on.meanW() < 9.95 ? 1 : 0)
        + " W = "
        + Say.kwh(on.meanW() * 24.0)
        + " a day = "
        + Say.percent(on.needShare())
        + " of "
        + Say.month(Facts.darkMonth(result))
        + "'s need";
  }

  static String days(double days, Autonomy autonomy) {
    return days >= autonomy.longestD()
        ? "over " + Say.number(autonomy.longestD(), 0) + " days"
        : Say.days(days);
  }
}
