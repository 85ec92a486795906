package greyspell.handover;

import greyspell.handover.Block.Row;
import greyspell.outcome.Figures;
import greyspell.outcome.Figures.Named;
import greyspell.outcome.Odds;
import greyspell.outcome.Outcome.MonthBooks;
import greyspell.report.RemedyCost;
import greyspell.scenario.Scenario.Costs;
import greyspell.study.Explanation;
import greyspell.study.Explanation.Remedy;
import greyspell.study.Explanation.WinterLine;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Energy books, autonomy, reliability, spells, options, losses. */
final class BooksPages {

  /** Losses on the way from the light to the sun that is used, by name. */
  private static final Set<String> BEFORE_USE =
      Set.of(
          "incidence",
          "shade",
          "soiling",
          "snow",
          "temperature_and_low_light_delta",
          "mismatch",
          "ageing",
          "array_wiring",
          "outside_window",
          "held_at_bank_voltage",
          "controller",
          "controller_wiring");

  private final Told told;
  private final Sheet sheet;
  private final Words words;
  private final Explanation why;

  private BooksPages(Told told, Sheet sheet) {
    this.told = told;
    this.sheet = sheet;
    words = sheet.words();
    why = told.explanation();
  }

  static void add(Told told, Sheet sheet) {
    var pages = new BooksPages(told, sheet);
    pages.months();
    pages.autonomy();
    pages.reliability();
    SpellPages.add(told, sheet);
    pages.options();
    pages.losses();
  }

  // ---- books by month

  private void months() {
    sheet.section("books");
    boolean hasMore = told.hasGenerator() || told.hasOther();
    var rows = new ArrayList<Row>();
    for (int month = 1; month <= 12; month++) {
      var figures = new ArrayList<Figures>();
      for (MonthBooks m : told.result().outcome().months()) {
        if (m.month() == month) {
          figures.add(m.figures());
        }
      }
      rows.add(books(words.month(month), figures, hasMore));
    }
    rows.add(books(words.say("year"), List.of(told.result().outcome().total()), hasMore));
    var head = new ArrayList<String>(List.of("head.month", "head.used"));
    if (hasMore) {
      head.add("head.others");
    }
    head.addAll(
        List.of(
            "head.left_over",
            "head.asked",
            "head.served",
            "head.always_on",
            "head.losses",
            "head.unmet",
            "head.hours"));
    sheet.table("section.books", head, rows, false);
    String note = words.say("books.note");
    Figures total = told.result().outcome().total();
    boolean isLetGo =
        total.loadWh() - total.servedWh() - total.unmetWh() >= sheet.leastShownWh() * told.years();
    sheet.add(Block.Text.small(isLetGo ? note + " " + words.say("books.let_go") : note));
  }

  private Row books(String name, List<Figures> figures, boolean hasMore) {
    var sums = new double[8];
    int hours = 0;
    for (Figures f : figures) {
      double lossWh =
          f.solarUsedWh()
              + f.beyond().otherUsedWh()
              + f.beyond().generatorWh()
              - f.servedWh()
              - f.standingWh()
              - (f.endChargeWh() - f.startChargeWh());
      double[] more = {
        f.solarUsedWh(),
        f.beyond().otherUsedWh() + f.beyond().generatorWh(),
        f.curtailedWh(),
        f.loadWh(),
        f.servedWh(),
        f.standingWh(),
        lossWh,
        f.unmetWh()
      };
      for (int k = 0; k < sums.length; k++) {
        sums[k] += more[k];
      }
      hours += f.unmetHours();
    }
    var cells = new ArrayList<String>();
    cells.add(name);
    for (int k = 0; k < sums.length; k++) {
      if (k != 1 || hasMore) {
        cells.add(sheet.kwh(sums[k] / told.years()));
      }
    }
    cells.add(words.number(hours / told.years(), told.years() == 1.0 ? 0 : 1));
    return new Row(cells, hours > 0);
  }

  // ---- autonomy

  private void autonomy() {
    sheet.section("autonomy");
    var a = told.result().outcome().autonomy();
    sheet.text(told.hasOther() ? "autonomy.dark.other" : "autonomy.dark");
    var rows = new ArrayList<Row>();
    for (int m = 1; m <= 12; m++) {
      rows.add(Row.of(words.month(m), days(a.darkDays().in(m), a.longestD())));
    }
    sheet.table("section.autonomy", List.of("head.month", "head.dark_days"), rows, false);
    sheet.text(
        "autonomy.grey",
        days(a.greyP50Days(), a.longestD()),
        days(a.greyP10Days(), a.longestD()),
        days(a.greyWorstDays(), a.longestD()));
    if (told.hasGenerator()) {
      sheet.text("autonomy.no_generator");
    }
  }

  private String days(double days, double longestD) {
    return days >= longestD
        ? words.say("autonomy.over", words.number(longestD, 0))
        : words.number(days, 1);
  }

  // ---- reliability

  private void reliability() {
    sheet.section("reliability");
    int winters = why.verdict().winters(), dark = why.verdict().darkWinters();
    if (winters > 0) {
      Odds odds = Odds.of(winters - dark, winters);
      sheet.text(
          odds.isOneSided() ? "reliability.one_sided" : "reliability.odds",
          words.number(winters - dark, 0),
          words.number(winters, 0),
          words.percent(odds.lowShare()),
          words.percent(odds.highShare()));
    }
    Figures total = told.result().outcome().total();
    double hoursShare = total.lossOfLoadProbabilityHours();
    double daysShare = total.lossOfLoadProbabilityDays();
    if (told.isDrawn()) {
      // the books are of the file, the winters below are not; each has a year of hours
      double yearDays = total.days() / told.years();
      hoursShare = why.verdict().meanUnmetHours() / (24.0 * yearDays);
      daysShare =
          why.winters().stream().mapToInt(WinterLine::unmetDays).average().orElse(0.0) / yearDays;
    }
    sheet.fact("reliability.lost_hours", words.percent(hoursShare));
    sheet.fact("reliability.lost_days", words.percent(daysShare));
    sheet.fact("reliability.unmet", words.energy(why.verdict().meanUnmetWh()));
    var rows = new ArrayList<Row>();
    for (WinterLine w : why.winters()) {
      rows.add(
          new Row(
              List.of(
                  sheet.winter(w.name()),
                  sheet.kwh(w.askedWh()),
                  sheet.kwh(w.unmetWh()),
                  words.number(w.unmetHours(), 0),
                  words.number(w.unmetDays(), 0),
                  words.percent(w.lowestChargeShare()),
                  words.number(w.generatorHours(), 0),
                  words.number(w.spells(), 0)),
              w.unmetHours() > 0));
    }
    sheet.table(
        "reliability.winters",
        List.of(
            "head.winter",
            "head.asked",
            "head.unmet",
            "head.hours",
            "head.days",
            "head.lowest",
            "head.generator_hours",
            "head.spells"),
        rows,
        false);
    sheet.small("reliability.note");
    sheet.items(why.uncertainties().stream().map(said -> words.say(said)).toList());
  }

  // ---- spells and options

  private void options() {
    sheet.section("options");
    sheet.text("options.tested");
    Costs costs = told.home().costs();
    boolean hasPrices = OptionCosts.areStated(costs);
    boolean hasRunning = costs.fuelPerLitreCost() != null && OptionCosts.doesRun(why.remedies());
    var cost = new OptionCosts(words);
    var rows = new ArrayList<Row>();
    for (Remedy r : why.remedies()) {
      var cells = new ArrayList<String>();
      String said = words.say(r.said());
      cells.add(
          r.isFound()
              ? RemedyCost.withWires(RemedyCost.withRunning(said, r, words), r.wires(), words)
              : said);
      cells.add(words.say(r.isFound() ? "yes" : "no"));
      cells.add(sheet.kwh(r.afterUnmetWh()));
      cells.add(words.number(r.afterUnmetHours(), 0));
      cells.add(words.number(r.afterDarkWinters(), 0));
      if (hasPrices) {
        cells.add(cost.once(r));
      }
      if (hasRunning) {
        cells.add(cost.moreYearly(r));
      }
      rows.add(new Row(cells, false));
    }
    var head =
        new ArrayList<String>(
            List.of(
                "head.change",
                "head.enough",
                "head.unmet_after",
                "head.hours_after",
                "head.dark_after"));
    if (hasPrices) {
      head.add("head.once");
    }
    if (hasRunning) {
      head.add("head.more_yearly");
    }
    sheet.table("section.options", head, rows, false);
    if (hasPrices || hasRunning) {
      sheet.add(Block.Text.small(cost.note(why.remedies(), costs, hasRunning)));
    }
    sheet.part("play.title");
    sheet.text("play.note");
    sheet.add(new Block.Play(told.grid(), PlayPanel.table(told.grid(), words)));
  }

  // ---- losses

  private void losses() {
    sheet.section("losses");
    Figures f = told.result().outcome().total();
    var rows = new ArrayList<Row>();
    rows.add(
        new Row(
            List.of(words.say("losses.nominal"), sheet.kwh(f.solarNominalWh() / told.years())),
            true));
    losses(rows, f, true);
    rows.add(Row.of(words.say("losses.clipped"), sheet.kwh(f.clippedWh() / told.years())));
    rows.add(Row.of(words.say("losses.left_over"), sheet.kwh(f.curtailedWh() / told.years())));
    rows.add(
        new Row(
            List.of(words.say("losses.used"), sheet.kwh(f.solarUsedWh() / told.years())), true));
    double othersWh = f.beyond().generatorWh() + f.beyond().otherUsedWh();
    if (othersWh > 0.0) {
      rows.add(Row.of(words.say("losses.others"), sheet.kwh(othersWh / told.years())));
    }
    losses(rows, f, false);
    rows.add(
        new Row(List.of(words.say("losses.served"), sheet.kwh(f.servedWh() / told.years())), true));
    sheet.table("section.losses", List.of("head.part", "head.kwh_year"), rows, false);
    sheet.small("losses.note");
  }

  /** Those before the sun is used, or those after. */
  private void losses(List<Row> rows, Figures figures, boolean isBefore) {
    for (Named loss : figures.lossesWh()) {
      if (BEFORE_USE.contains(loss.name()) == isBefore
          && Math.abs(loss.wh()) >= sheet.leastShownWh() * told.years()) {
        rows.add(Row.of(words.say("loss." + loss.name()), sheet.kwh(loss.wh() / told.years())));
      }
    }
  }
}
