package greyspell.report;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Fortnight;
import greyspell.chart.Say;
import greyspell.load.Priority;
import greyspell.outcome.Autonomy;
import greyspell.outcome.Figures;
import greyspell.outcome.Figures.Named;
import greyspell.outcome.GreySpell;
import greyspell.outcome.Outcome.MonthBooks;
import greyspell.outcome.Outcome.WinterBooks;
import greyspell.report.Page.Pair;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import greyspell.study.ElectricalCheck;
import greyspell.study.StudyResult;
import java.util.ArrayList;
import java.util.List;

/** Puts a result into the words and tables of the page. */
final class PageMaker {
  private static final int MOST_SPELLS = 8;
  private static final int EVENING = 18;
  private static final int MORNING = 6;

  private final StudyResult result;
  private final HourCalendar calendar;
  private final double usableWh;

  private PageMaker(StudyResult result) {
    this.result = result;
    calendar = Facts.calendar(result);
    usableWh = result.ledger().windowWh();
  }

  static Page page(StudyResult result, ElectricalCheck check, List<String> pictures) {
    return new PageMaker(result).make(check, pictures);
  }

  private Page make(ElectricalCheck check, List<String> pictures) {
    var verdict = Verdict.of(result);
    var fortnight = Fortnight.of(result);
    var alwaysOn = Facts.alwaysOn(result);
    var keys = new ArrayList<Pair>();
    for (var line : KeyFigures.of(result)) {
      keys.add(new Pair(line.label(), line.value()));
    }
    return new Page(
        result.scenario().name(),
        Facts.heading(result),
        result.scenario().note(),
        verdict.isAllServed(),
        verdict.headline(),
        verdict.more(),
        keys,
        runningOut(),
        pictures,
        fortnightTitle(fortnight),
        fortnightTable(fortnight),
        spellsSentence(),
        spells(),
        books(),
        booksNote(),
        "Always on: "
            + KeyFigures.alwaysOn(result)
            + ". This is what the system itself draws day and night, whether or not anything is"
            + " switched on.",
        alwaysOnParts(alwaysOn),
        winters(),
        autonomy(),
        greyAutonomy(),
        losses(),
        ElectricalPage.of(check, result),
        inputs(),
        result.assumptions(),
        Cautions.all(result),
        HowToRead.words());
  }

  // ---- what running out means

  private List<String> runningOut() {
    var out = new ArrayList<String>();
    var must = Facts.appliances(result, Priority.MUST_RUN);
    int hours = 0;
    int dark = 0;
    double sumC = 0.0;
    double coldestC = Double.MAX_VALUE;
    int nights = 0;
    int lastNight = -1;
    double[] air = result.weather().airTemperatureC();
    for (int h = 0; h < calendar.hours(); h++) {
      if (!(result.ledger().unmetWh(h) > 0.0)) {
        continue;
      }
      hours++;
      sumC += air[h];
      coldestC = Math.min(coldestC, air[h]);
      int hourOfDay = calendar.hourOfDay(h);
      if (hourOfDay >= EVENING || hourOfDay < MORNING) {
        dark++;
        int night = (h + 24 - EVENING) / 24;
        nights += night == lastNight ? 0 : 1;
        lastNight = night;
      }
    }
    if (hours == 0) {
      out.add(
          "In the weather looked at nothing went unserved. What follows is what to watch, should a"
              + " harder winter come.");
    } else {
      out.add(
          "Something was not served in "
              + Say.hours(hours)
              + " in all, "
              + Say.number(dark, 0)
              + " of them between "
              + EVENING
              + " h and "
              + MORNING
              + " h; "
              + Say.count(nights, "night was", "nights were")
              + " touched. Outside it was "
              + Say.number(sumC / hours, 0)
              + " °C on average in those hours, at the coldest "
              + Say.number(coldestC, 0)
              + " °C.");
    }
    if (!must.isEmpty()) {
      out.add(
          "What the house cannot do without, by its own list: " + String.join(", ", must) + ".");
    }
    out.add(
        "When the bank is down to its reserve, the model runs everything for part of the hour and leaves"
            + " everything off for the rest. A household would rather choose what stays on, and so lose"
            + " the least important things first.");
    return out;
  }

  // ---- the worst fortnight

  private String fortnightTitle(Fortnight f) {
    return (f.unmetHours() > 0
            ? "The worst spell, day by day"
            : "The hardest fortnight, day by day")
        + ": "
        + Say.dayMonth(calendar, f.fromHour())
        + " to "
        + Say.date(calendar, f.toHour() - 1);
  }

  private Table fortnightTable(Fortnight f) {
    var rows = new ArrayList<Row>();
    var ledger = result.ledger();
    for (int day = f.fromDay(); day < f.fromDay() + f.days(); day++) {
      double sunWh = 0.0;
      double needWh = 0.0;
      double unmetWh = 0.0;
      int hours = 0;
      for (int h = day * 24; h < day * 24 + 24; h++) {
        sunWh += ledger.forcing().solarBusWh()[h];
        needWh += ledger.askedWh(h) + ledger.forcing().standingWh()[h];
        unmetWh += ledger.unmetWh(h);
        hours += ledger.unmetWh(h) > 0.0 ? 1 : 0;
      }
      double chargeWh = ledger.chargeWh()[day * 24 + 23];
      rows.add(
          new Row(
              List.of(
                  Say.shortDate(calendar, day * 24),
                  Say.kwhCell(sunWh),
                  Say.kwhCell(needWh),
                  percentCell(chargeWh),
                  Say.kwhCell(chargeWh),
                  Say.kwhCell(unmetWh),
                  Integer.toString(hours)),
              hours > 0));
    }
    return new Table(
        List.of(
            "Day",
            "Sun, kWh",
            "Need, kWh",
            "Charge at midnight, %",
            "Charge, kWh",
            "Not served, kWh",
            "Hours"),
        rows);
  }

  private String percentCell(double chargeWh) {
    return Say.number(usableWh > 0.0 ? chargeWh / usableWh * 100.0 : 0.0, 0);
  }

  // ---- grey spells

  private String spellsSentence() {
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
        + " on the bus. What counts is not the greyest day but how many grey days come in a row.";
  }

  private Table spells() {
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

  // ---- books

  private Table books() {
    var rows = new ArrayList<Row>();
    int first = calendar.years() > 1 && result.scenario().site().isNorthern() ? 7 : 1;
    for (int k = 0; k < 12; k++) {
      int month = (first - 1 + k) % 12 + 1;
      var sums = new double[8];
      for (MonthBooks m : result.outcome().months()) {
        if (m.month() == month) {
          add(sums, m.figures());
        }
      }
      rows.add(booksRow(Say.shortMonth(month), sums, calendar.years()));
    }
    var year = new double[8];
    add(year, result.outcome().total());
    rows.add(booksRow("Year", year, calendar.years()));
    return new Table(
        List.of(
            "Month",
            "Sun used",
            "Sun left over",
            "House served",
            "Always on",
            "Losses",
            "Into store (+), out (-)",
            "Not served",
            "Hours not served"),
        rows);
  }

  private static void add(double[] sums, Figures f) {
    sums[0] += f.solarUsedWh();
    sums[1] += f.curtailedWh();
    sums[2] += f.servedWh();
    sums[3] += f.standingWh();
    sums[4] += Facts.conversionLossWh(f);
    sums[5] += f.endChargeWh() - f.startChargeWh();
    sums[6] += f.unmetWh();
    sums[7] += f.unmetHours();
  }

  private static Row booksRow(String name, double[] sums, int years) {
    var cells = new ArrayList<String>();
    cells.add(name);
    for (int k = 0; k < 7; k++) {
      cells.add(Say.kwhCell(sums[k] / years));
    }
    cells.add(Say.number(sums[7] / years, sums[7] % years == 0 ? 0 : 1));
    return new Row(cells, sums[7] > 0);
  }

  private String booksNote() {
    return (calendar.years() > 1
            ? "kWh in the average month of " + calendar.years() + " years."
            : "kWh a month.")
        + " Sun used = house served + always on + losses + into store, but for rounding. Losses: inverter,"
        + " into and out of the cells, rest.";
  }

  private static Table alwaysOnParts(Facts.AlwaysOn on) {
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

  // ---- winters, autonomy

  private Table winters() {
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

  private Table autonomy() {
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

  private String greyAutonomy() {
    Autonomy a = result.outcome().autonomy();
    if (a.greyWorstDays() >= a.longestD()) {
      return "In the weather that really came a full bank carried the house for "
          + KeyFigures.days(a.longestD(), a)
          + " from every start day (grey autonomy).";
    }
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
        + ".";
  }

  // ---- losses

  private Table losses() {
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
    for (Named loss : f.lossesWh()) {
      if (beforeBus.contains(loss.name())) {
        lossRow(rows, "less " + Say.name(loss.name()), loss.wh(), years, false);
      }
    }
    lossRow(rows, "Sun used on the bus", f.solarUsedWh(), years, true);
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

  // ---- inputs

  private List<Pair> inputs() {
    var s = result.scenario();
    var out = new ArrayList<Pair>();
    out.add(
        new Pair(
            "Place",
            s.site().name()
                + ", latitude "
                + Say.number(s.site().latitudeDeg(), 2)
                + "°, longitude "
                + Say.number(s.site().longitudeDeg(), 2)
                + "°, "
                + Say.number(s.site().elevationM(), 0)
                + " m"));
    var source = result.weather().source();
    out.add(
        new Pair(
            "Weather",
            s.weather().file()
                + " ("
                + source.format()
                + (source.place().isEmpty() ? "" : ", " + source.place())
                + "), "
                + Facts.years(calendar)
                + ", "
                + Say.hours(result.weather().gaps().missingHours())
                + " missing and filled"));
    for (String gap : result.weather().gaps().notes()) {
      out.add(new Pair("Gaps", gap));
    }
    for (var array : s.arrays()) {
      out.add(
          new Pair(
              "Panels, " + array.name(),
              array.modules()
                  + " × "
                  + array.module().name()
                  + " = "
                  + Say.kw(array.ratedPowerW())
                  + ", tilt "
                  + Say.number(array.tiltDeg(), 0)
                  + "°, facing "
                  + Say.number(array.azimuthDeg(), 0)
                  + "°"));
    }
    out.add(
        new Pair(
            "Bank",
            s.bank().name()
                + ", "
                + Say.kwh(s.bank().capacityWh())
                + ", of which "
                + Say.kwh(usableWh)
                + " above the reserve"));
    out.add(new Pair("Inverter", s.inverter().name() + ", " + Say.kw(s.inverter().continuousW())));
    out.add(new Pair("Start", result.startNote()));
    out.add(new Pair("Scenario file", s.file()));
    return out;
  }
}
