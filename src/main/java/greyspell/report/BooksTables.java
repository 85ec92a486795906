package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Say;
import greyspell.outcome.Figures;
import greyspell.outcome.Figures.Named;
import greyspell.outcome.Outcome.MonthBooks;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/** The page's tables of energy: the books by month, and from light to socket. */
final class BooksTables {
  private final StudyResult result;
  private final HourCalendar calendar;
  private final boolean hasOther;
  private final boolean hasGenerator;
  private final boolean isRuled;

  BooksTables(StudyResult result) {
    this.result = result;
    calendar = Facts.calendar(result);
    hasOther = Facts.hasOther(result);
    hasGenerator = result.besides().fuel() != null;
    isRuled = !result.scenario().load().policy().isIdle();
  }

  /** Sums of the columns of the books, in Wh, and the hours. */
  private static final class Sums {
    private final double[] wh = new double[13];
    private int unmetHours;

    private void add(Figures f) {
      double[] more = {
        f.solarUsedWh(),
        f.beyond().otherUsedWh(),
        f.beyond().generatorWh(),
        f.curtailedWh(),
        f.servedWh(),
        f.standingWh(),
        Facts.conversionLossWh(f),
        f.endChargeWh() - f.startChargeWh(),
        f.unmetWh(),
        f.loadWh(),
        f.beyond().shedWh(),
        f.beyond().putOffWh(),
        f.beyond().madeUpWh()
      };
      for (int k = 0; k < wh.length; k++) {
        wh[k] += more[k];
      }
      unmetHours += f.unmetHours();
    }
  }

  private static final List<String> COLUMNS =
      List.of(
          "Sun used",
          "Second source",
          "Generator",
          "Sun left over",
          "House served",
          "Always on",
          "Losses",
          "Into store (+), out (-)",
          "Not served");

  private boolean isShown(int column) {
    return switch (column) {
      case 1 -> hasOther;
      case 2 -> hasGenerator;
      default -> true;
    };
  }

  /** A calendar month of all years, or the whole year. */
  private static final class Month {
    private final String name;
    private final Sums sums = new Sums();

    private Month(String name) {
      this.name = name;
    }
  }

  private List<Month> months() {
    var months = new ArrayList<Month>();
    int first = calendar.years() > 1 && result.scenario().site().isNorthern() ? 7 : 1;
    for (int k = 0; k < 12; k++) {
      int number = (first - 1 + k) % 12 + 1;
      var month = new Month(Say.shortMonth(number));
      for (MonthBooks m : result.outcome().months()) {
        if (m.month() == number) {
          month.sums.add(m.figures());
        }
      }
      months.add(month);
    }
    var year = new Month("Year");
    year.sums.add(result.outcome().total());
    months.add(year);
    return months;
  }

  Table books() {
    var rows = new ArrayList<Row>();
    for (Month month : months()) {
      rows.add(row(month.name, month.sums));
    }
    var head = new ArrayList<String>();
    head.add("Month");
    for (int column = 0; column < COLUMNS.size(); column++) {
      if (isShown(column)) {
        head.add(COLUMNS.get(column));
      }
    }
    head.add("Hours");
    return new Table(head, rows);
  }

  private Row row(String name, Sums sums) {
    int years = calendar.years();
    var cells = new ArrayList<String>();
    cells.add(name);
    for (int column = 0; column < COLUMNS.size(); column++) {
      if (isShown(column)) {
        cells.add(Say.kwhCell(sums.wh[column] / years));
      }
    }
    double hours = (double) sums.unmetHours / years;
    cells.add(Say.number(hours, sums.unmetHours % years == 0 ? 0 : 1));
    return new Row(cells, sums.unmetHours > 0);
  }

  String booksNote() {
    return (calendar.years() > 1
            ? "kWh in the average month of " + calendar.years() + " years."
            : "kWh a month.")
        + " Sun used"
        + (hasOther ? " + second source" : "")
        + (hasGenerator ? " + generator" : "")
        + " = house served + always on + losses + into store, but for rounding. Hours: in which something"
        + " was not served. Losses: inverter,"
        + (hasGenerator ? " generator's charger," : "")
        + " into and out of the cells, rest.";
  }

  /** What the rules let go and moved, by month; no rows in a home without rules. */
  Table rules() {
    var rows = new ArrayList<Row>();
    if (isRuled) {
      for (Month month : months()) {
        double[] wh = month.sums.wh;
        double[] shown = {wh[9], wh[4], wh[8], wh[10], wh[11], wh[12]};
        var cells = new ArrayList<String>();
        cells.add(month.name);
        for (double x : shown) {
          cells.add(Say.kwhCell(x / calendar.years()));
        }
        rows.add(new Row(cells, false));
      }
    }
    return new Table(
        List.of(
            "Month", "House asked", "House served", "Not served", "Let go", "Put off", "Made up"),
        rows);
  }

  /** Why something was not served; no rows where all was served. */
  Table reasons() {
    Figures f = result.outcome().total();
    var rows = new ArrayList<Row>();
    reason(rows, "the bank was down to its reserve", f.unmetEmptyWh());
    reason(rows, "the bank's discharge limit", f.unmetRateWh());
    reason(rows, "the inverter was too small", f.unmetInverterWh());
    reason(rows, "the voltage fell to the cut-off", f.beyond().unmetCutOffWh());
    reason(rows, "the charge could not be reached in time", f.beyond().unmetSlowWh());
    reason(rows, "too little to wake the inverter", f.beyond().unmetAsleepWh());
    return new Table(
        List.of("Not served because", "kWh a year", "% of what was asked"), List.copyOf(rows));
  }

  private void reason(List<Row> rows, String words, double wh) {
    double loadWh = result.outcome().total().loadWh();
    if (wh > 0.0 && loadWh > 0.0) {
      rows.add(
          new Row(
              List.of(
                  words,
                  Say.number(wh / calendar.years() / 1000.0, 1),
                  Say.number(wh / loadWh * 100.0, 1)),
              false));
    }
  }

  static Table alwaysOnParts(Facts.AlwaysOn on) {
    var rows = new ArrayList<Row>();
    for (Named part : on.partsW()) {
      rows.add(
          new Row(
              List.of(
                  Say.name(part.name()),
                  Say.number(part.wh(), 1),
                  Say.number(part.wh() * 24.0 / 1000.0, 2)),
              false));
    }
    return new Table(List.of("Draws all the time", "W", "kWh a day"), rows);
  }

  Table losses() {
    Figures f = result.outcome().total();
    double years = calendar.years();
    var rows = new ArrayList<Row>();
    var before = result.ledger().forcing().arrayLosses();
    var names = new ArrayList<String>();
    before.forEach(n -> names.add(n.name()));
    var beforeBus = List.of("controller", "controller_wiring");
    lossRow(rows, "Light on the panels times their rated power", f.solarNominalWh(), years, true);
    for (Named loss : f.lossesWh()) {
      if (names.contains(loss.name())) {
        lossRow(rows, "less " + Say.name(loss.name()), loss.wh(), years, false);
      }
    }
    lossRow(rows, "At the controller's input", f.solarAvailableWh(), years, true);
    lossRow(rows, "less clipped: above the controller's limits", f.clippedWh(), years, false);
    lossRow(rows, "less left over: bank full", f.curtailedFullWh(), years, false);
    lossRow(rows, "less left over: charge limit", f.curtailedRateWh(), years, false);
    lossRow(rows, "less left over: bank too cold", f.curtailedColdWh(), years, false);
    lossRow(
        rows,
        "less left over: bank takes less near full",
        f.beyond().curtailedAbsorptionWh(),
        years,
        false);
    for (Named loss : f.lossesWh()) {
      if (beforeBus.contains(loss.name())) {
        lossRow(rows, "less " + Say.name(loss.name()), loss.wh(), years, false);
      }
    }
    lossRow(rows, "Sun used on the bus", f.solarUsedWh(), years, true);
    if (hasOther || hasGenerator) {
      double otherWh = f.beyond().otherUsedWh();
      double generatorWh = f.beyond().generatorWh();
      lossRow(rows, "plus second source", otherWh, years, false);
      lossRow(rows, "plus generator", generatorWh, years, false);
      lossRow(rows, "From all sources", f.solarUsedWh() + otherWh + generatorWh, years, true);
    }
    for (Named loss : f.lossesWh()) {
      if (!names.contains(loss.name()) && !beforeBus.contains(loss.name())) {
        lossRow(rows, "less " + Say.name(loss.name()), loss.wh(), years, false);
      }
    }
    lossRow(rows, "less put into store", f.endChargeWh() - f.startChargeWh(), years, false);
    lossRow(rows, "Served to the house", f.servedWh(), years, true);
    return new Table(List.of("From light to socket", "kWh a year", "% of the first line"), rows);
  }

  /** What is nothing all the time is left out. */
  private void lossRow(List<Row> rows, String name, double wh, double years, boolean isSum) {
    if (wh == 0.0 && !isSum) {
      return;
    }
    double nominalWh = result.outcome().total().solarNominalWh();
    rows.add(
        new Row(
            List.of(
                name,
                Say.number(wh / years / 1000.0, 1),
                nominalWh > 0.0 ? Say.number(wh / nominalWh * 100.0, 1) : "–"),
            isSum));
  }
}
