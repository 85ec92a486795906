package greyspell.handover;

import greyspell.handover.Block.Fact;
import greyspell.handover.Block.Row;
import greyspell.load.LoadPolicy;
import greyspell.report.Cautions;
import greyspell.report.Checklist;
import greyspell.scenario.Scenario.Assumption;
import greyspell.study.Besides.LoadAnswers;
import greyspell.study.Besides.ServiceYear;
import greyspell.study.Unmet;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Sensitivity, assumptions, maintenance, rules, safety, and who signs. */
final class ClosingPages {
  private final Told told;
  private final Sheet sheet;
  private final Words words;

  private ClosingPages(Told told, Sheet sheet) {
    this.told = told;
    this.sheet = sheet;
    words = sheet.words();
  }

  static void add(Told told, Sheet sheet) {
    var pages = new ClosingPages(told, sheet);
    pages.sensitivity();
    pages.assumptions();
    pages.maintenance();
    pages.operator();
    pages.safety();
    pages.revision();
  }

  // ---- sensitivity

  private void sensitivity() {
    sheet.section("sensitivity");
    var rows = new ArrayList<Row>();
    var total = told.result().outcome().total();
    rows.add(
        row(
            "sensitivity.as_stated",
            total.unmetWh() / told.years(),
            total.unmetHours() / told.years()));
    LoadAnswers loads = told.result().besides().loads();
    if (loads != null) {
      rows.add(row("sensitivity.low", loads.low()));
      rows.add(row("sensitivity.high", loads.high()));
    }
    rows.add(row("sensitivity.ten_watts", told.result().besides().tenWattsLess()));
    List<ServiceYear> service = told.result().besides().service();
    if (!service.isEmpty()) {
      ServiceYear last = service.get(service.size() - 1);
      rows.add(
          new Row(
              List.of(
                  words.say(
                      "sensitivity.aged",
                      words.number(last.number(), 0),
                      words.percent(last.healthShare())),
                  sheet.kwh(last.unmet().wh()),
                  words.number(last.unmet().unmetHours(), 0)),
              false));
    }
    sheet.table(
        "section.sensitivity", List.of("head.change", "head.unmet", "head.hours"), rows, false);
    if (loads != null && loads.narrowest() != null) {
      sheet.text(
          "sensitivity.measure",
          words.name(loads.narrowest()),
          words.energy(loads.narrowestLow().wh()),
          words.energy(loads.narrowestHigh().wh()));
    }
  }

  private Row row(String key, Unmet unmet) {
    return row(key, unmet.wh(), unmet.unmetHours());
  }

  private Row row(String key, double wh, double hours) {
    return Row.of(words.say(key), sheet.kwh(wh), words.number(hours, 0));
  }

  // ---- assumptions

  private void assumptions() {
    sheet.section("assumptions");
    List<Assumption> all = told.result().assumptions();
    if (all.isEmpty()) {
      sheet.text("assumptions.none");
      return;
    }
    sheet.text("assumptions.some");
    var rows = new ArrayList<Row>();
    for (Assumption a : all) {
      rows.add(Row.of(a.key(), value(a), sheet.translated(a.why())));
    }
    sheet.table("section.assumptions", List.of("head.key", "head.value", "head.why"), rows, true);
  }

  private String value(Assumption a) {
    String own = sheet.value(a);
    return own == null ? words.say("only_english") : own;
  }

  // ---- maintenance, rules

  private void maintenance() {
    sheet.section("maintenance");
    var rows = new ArrayList<Row>();
    for (String key :
        List.of("week", "month", "autumn", "winter", "spring", "year", "five_years")) {
      rows.add(Row.of(words.say("maintenance." + key), words.say("maintenance." + key + ".text")));
    }
    if (told.hasGenerator()) {
      rows.add(Row.of(words.say("maintenance.engine"), words.say("maintenance.engine.text")));
    }
    Double replaced = told.result().besides().replacementYears();
    rows.add(
        Row.of(
            words.say("maintenance.bank"),
            replaced == null
                ? words.say(
                    "maintenance.bank.text",
                    words.percent(told.home().bank().life().endOfLifeShare()))
                : words.say("maintenance.bank.years", words.number(replaced, 1))));
    sheet.table("section.maintenance", List.of("head.when", "head.what"), rows, true);
    sheet.small("maintenance.note");
  }

  private void operator() {
    sheet.section("operator");
    var items = new ArrayList<String>();
    LoadPolicy policy = told.home().load().policy();
    rule(items, "operator.wait_off", policy.shedCanWaitBelowShare());
    rule(items, "operator.should_off", policy.shedShouldRunBelowShare());
    rule(items, "operator.wait_for", policy.canWaitAboveShare());
    var generator = told.home().generator();
    if (generator != null) {
      rule(items, "operator.generator", generator.rules().startBelowShare());
    }
    for (int k = 1; k <= 5; k++) {
      items.add(words.say("operator." + k));
    }
    sheet.items(items);
    sheet.text("operator.tested", told.home().file());
  }

  private void rule(List<String> items, String key, @Nullable Double share) {
    if (share != null && share > 0.0) {
      items.add(words.say(key, words.percent(share)));
    }
  }

  // ---- safety, revision

  private void safety() {
    sheet.section("safety");
    sheet.add(Block.Text.safety(words.say("safety.code")));
    sheet.items(cautions());
    sheet.part("safety.checklist");
    checklist(Checklist.items(words.language()));
    if (told.hasGenerator()) {
      sheet.part("safety.generator");
      checklist(Checklist.generator(words.language()));
    }
  }

  /** Those about this home first, then the usual ones. */
  private List<String> cautions() {
    List<String> own = told.result().cautions();
    var all = new ArrayList<String>();
    int missing = 0;
    for (String caution : own) {
      String told = words.translated(caution);
      missing += told == null ? 1 : 0;
      if (told != null) {
        all.add(told);
      }
    }
    if (missing > 0) {
      all.add(words.say("safety.elsewhere", words.number(missing, 0)));
    }
    for (String usual : Cautions.usual(words.language())) {
      if (!own.contains(usual)) {
        all.add(words.ready(usual));
      }
    }
    return all;
  }

  private void checklist(List<Checklist.Item> items) {
    sheet.add(
        new Block.Facts(
            items.stream().map(i -> new Fact(i.name(), words.ready(i.reason()))).toList()));
  }

  private void revision() {
    sheet.section("revision");
    sheet.fact("revision.program", told.version());
    sheet.fact("revision.scenario", told.home().file());
    sheet.fact("revision.hash", told.inputsHash());
    sheet.small("revision.note");
    var lines = new ArrayList<String>();
    for (String key : List.of("revision_number", "designer", "licensed", "client")) {
      lines.add(words.say("sign." + key));
    }
    sheet.add(new Block.SignLines(lines));
  }
}
