package greyspell.report;

import greyspell.balance.LedgerColumn;
import greyspell.calendar.HourCalendar;
import greyspell.chart.Fortnight;
import greyspell.chart.Say;
import greyspell.outcome.Autonomy;
import greyspell.outcome.Figures;
import greyspell.outcome.GreySpell;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/** The page's tables of hard times: the worst fortnight, grey spells, winters, autonomy. */
final class WinterTables {
  private static final int MOST_SPELLS = 8;

  private final StudyResult result;
  private final HourCalendar calendar;
  private final double usableWh;

  WinterTables(StudyResult result) {
    this.result = result;
    calendar = Facts.calendar(result);
    usableWh = result.ledger().windowWh();
  }

  // ---- the worst fortnight

  String fortnightTitle(Fortnight f) {
    return (f.unmetHours() > 0
            ? "The worst spell, day by day"
            : "The hardest fortnight, day by day")
        + ": "
        + Say.dayMonth(calendar, f.fromHour())
        + " to "
        + Say.date(calendar, f.toHour() - 1);
  }

  Table fortnightTable(Fortnight f) {
    var rows = new ArrayList<Row>();
    var ledger = result.ledger();
    boolean hasOther = Facts.hasOther(result);
    boolean hasGenerator = result.besides().fuel() != null;
    double[] otherWh = LedgerColumn.OTHER_AVAILABLE.of(ledger);
    for (int day = f.fromDay(); day < f.fromDay() + f.days(); day++) {
      double sunWh = 0.0;
      double needWh = 0.0;
      double unmetWh = 0.0;
      double secondWh = 0.0;
      double generatorWh = 0.0;
      int hours = 0;
      for (int h = day * 24; h < day * 24 + 24; h++) {
        sunWh += ledger.forcing().solarBusWh()[h];
        needWh += ledger.askedWh(h) + ledger.forcing().standingWh()[h];
        unmetWh += ledger.unmetWh(h);
        secondWh += hasOther ? otherWh[h] : 0.0;
        generatorWh += ledger.generatorWh(h);
        hours += ledger.isUnmet(h) ? 1 : 0;
      }
      double chargeWh = ledger.chargeWh()[day * 24 + 23];
      var cells = new ArrayList<String>();
      cells.add(Say.shortDate(calendar, day * 24));
      cells.add(Say.kwhCell(sunWh));
      if (hasOther) {
        cells.add(Say.kwhCell(secondWh));
      }
      if (hasGenerator) {
        cells.add(Say.kwhCell(generatorWh));
      }
      cells.add(Say.kwhCell(needWh));
      cells.add(percentCell(chargeWh));
      cells.add(Say.kwhCell(chargeWh));
      cells.add(Say.kwhCell(unmetWh));
      cells.add(Integer.toString(hours));
      rows.add(new Row(cells, hours > 0));
    }
    var head = new ArrayList<String>(List.of("Day", "Sun, kWh"));
    if (hasOther) {
      head.add("Second source, kWh");
    }
    if (hasGenerator) {
      head.add("Generator, kWh");
    }
    head.addAll(
        List.of("Need, kWh", "Charge at midnight, %", "Charge, kWh", "Not served, kWh", "Hours"));
    return new Table(head, rows);
  }

  private String percentCell(double chargeWh) {
    return Say.number(usableWh > 0.0 ? chargeWh / usableWh * 100.0 : 0.0, 0);
  }

  // ---- grey spells

  String spellsSentence() {
    var spells = result.outcome().greySpells();
    if (spells.isEmpty()) {
      return "There was no grey spell: on every day the panels brought what was needed.";
    }
    int beat = 0;
    for (GreySpell s : spells) {
      beat += s.unmetWh() > 0.0 ? 1 : 0;
    }
    return beat
        + " of "
        + Say.count(spells.size(), "grey spell", "grey spells")
        + " beat the bank. A full bank puts "
        + Say.kwh(usableWh * result.scenario().bank().dischargeEfficiency())
        + " on the bus. What counts is not the greyest day but how many grey days come in a row."
        + (result.besides().fuel() != null || Facts.hasOther(result)
            ? " How much a spell is short is counted with the sun alone, without any other source."
            : "");
  }

  Table spells() {
    var rows = new ArrayList<Row>();
    var spells = result.outcome().greySpells();
    for (GreySpell s : spells.subList(0, Math.min(MOST_SPELLS, spells.size()))) {
      rows.add(
          new Row(
              List.of(
                  Say.shortDateYear(calendar, s.fromDay() * 24),
                  Integer.toString(s.days()),
                  Say.kwhCell(s.shortWh()),
                  Say.kwhCell(s.unmetWh())),
              s.unmetWh() > 0.0));
    }
    return new Table(List.of("From", "Days", "Short, kWh", "Not served, kWh"), rows);
  }

  // ---- winters, autonomy

  Table winters() {
    var rows = new ArrayList<Row>();
    for (WinterBooks w : result.outcome().winters()) {
      Figures f = w.figures();
      var shortfalls = Facts.shortfallsIn(result, w.winter().fromHour(), w.winter().toHour());
      rows.add(
          new Row(
              List.of(
                  w.winter().name() + (w.winter().isWhole() ? "" : " (part)"),
                  Say.kwhCell(f.loadWh()),
                  Say.kwhCell(f.unmetWh()),
                  Say.percent(f.unmetShare()),
                  Integer.toString(f.unmetHours()),
                  Integer.toString(shortfalls.size()),
                  shortfalls.isEmpty() ? "–" : Integer.toString(Facts.longest(shortfalls).hours()),
                  percentCell(f.lowestChargeWh())
                      + " on "
                      + Say.shortDate(calendar, f.lowestChargeHour())),
              f.unmetHours() > 0));
    }
    return new Table(
        List.of(
            calendar.years() > 1 ? "Winter" : "Year",
            "Asked, kWh",
            "Not served, kWh",
            "Share",
            "Hours",
            "Shortfalls",
            "Longest, hours",
            "Lowest charge, %"),
        rows);
  }

  Table autonomy() {
    Autonomy a = result.outcome().autonomy();
    var head = new ArrayList<String>();
    var cells = new ArrayList<String>();
    head.add("Month");
    cells.add("Days");
    for (int m = 1; m <= 12; m++) {
      head.add(Say.shortMonth(m));
      double days = a.darkDays().in(m);
      cells.add(days >= a.longestD() ? "over " + Say.number(a.longestD(), 0) : Say.number(days, 1));
    }
    return new Table(head, List.of(new Row(cells, false)));
  }

  String greyAutonomy() {
    Autonomy a = result.outcome().autonomy();
    if (a.greyWorstDays() >= a.longestD()) {
      return "In the weather that really came a full bank carried the house for "
          + KeyFigures.days(a.longestD(), a)
          + " from every start day (grey autonomy).";
    }
    String alone =
        result.besides().fuel() != null || Facts.hasOther(result)
            ? " Both are counted with sun and bank alone, without any other source."
            : "";
    return "Started with a full bank at midnight of each day in turn, in the weather that really came (grey autonomy), the"
        + " middle start was carried for "
        + KeyFigures.days(a.greyP50Days(), a)
        + ", one start in ten for less than "
        + KeyFigures.days(a.greyP10Days(), a)
        + ", nine in ten for less than "
        + KeyFigures.days(a.greyP90Days(), a)
        + ". The worst start, on "
        + Say.date(calendar, a.greyWorstFromDay() * 24)
        + ", was carried for "
        + KeyFigures.days(a.greyWorstDays(), a)
        + "."
        + alone;
  }
}
