package greyspell.handover;

import greyspell.balance.Ledger;
import greyspell.calendar.HourCalendar;
import greyspell.cause.Said;
import greyspell.cause.SpellDay;
import greyspell.chart.HandoverPictures;
import greyspell.handover.Block.Figure;
import greyspell.handover.Block.Row;
import greyspell.handover.Block.Verdict;
import greyspell.load.Priority;
import greyspell.report.RemedyCost;
import greyspell.study.Besides.LoadAnswers;
import greyspell.study.Explanation;
import greyspell.study.Explanation.MonthLine;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Remedy;
import greyspell.study.Explanation.Shares;
import greyspell.study.Explanation.WinterLine;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Page one: for those who live in the house. In the order in which people ask. */
final class ClientPage {
  private static final int MOST_REMEDIES = 3;
  private static final int MOST_FREE = 3;

  /** For those who check the method; these stand with the reliability. */
  private static final Set<String> UNSURE_BEHIND =
      Set.of("unsure.shares", "unsure.shares.drawn", "unsure.need", "unsure.usual_sky");

  /** Before the key of a sentence that page one tells in fewer words. */
  static final String OWN = "client.";

  private static final double LEAST_SHARE = 0.005;
  private static final int EVENING = 18;
  private static final int MORNING = 6;

  private final Told told;
  private final Explanation why;
  private final Words words;
  private final Sheet sheet;

  private ClientPage(Told told, Words words) {
    this.told = told;
    why = told.explanation();
    this.words = words;
    sheet = new Sheet(words, told.kwhDecimals());
  }

  static List<Block> of(Told told, Words words) {
    var page = new ClientPage(told, words);
    page.verdict();
    page.runningOut();
    page.sunAndNeed();
    page.worstSpell();
    page.sheet.add(new Block.NewColumn());
    page.causes();
    page.remedies();
    page.free();
    page.unsure();
    page.next();
    return page.sheet.blocks();
  }

  private void verdict() {
    var more = new ArrayList<String>();
    WinterLine worst = null;
    for (WinterLine w : why.winters()) {
      worst = worst == null || w.unmetWh() > worst.unmetWh() ? w : worst;
    }
    if (worst != null && worst.unmetHours() > 0 && why.winters().size() > 1) {
      more.add(
          words.say(
              "client.worst_winter",
              sheet.winter(worst.name()),
              words.energy(worst.unmetWh()),
              words.hours(worst.unmetHours())));
    }
    sheet.add(new Verdict(words.say(why.verdict().said()), more, why.spells().isEmpty()));
    for (Said caution : why.cautions()) {
      sheet.add(Block.Text.safety(words.say(caution)));
    }
  }

  // ---- what running out means

  private void runningOut() {
    sheet.part("client.running_out");
    Ledger ledger = told.result().ledger();
    HourCalendar calendar = told.calendar();
    double[] air = told.result().weather().airTemperatureC();
    int hours = 0, dark = 0;
    double coldestC = Double.MAX_VALUE;
    for (int h = 0; h < ledger.hours(); h++) {
      if (ledger.isUnmet(h)) {
        hours++;
        int hour = calendar.hourOfDay(h);
        dark += hour >= EVENING || hour < MORNING ? 1 : 0;
        coldestC = Math.min(coldestC, air[h]);
      }
    }
    String off = words.hours((double) Math.round(why.verdict().meanUnmetHours()));
    if (why.verdict().meanUnmetHours() == 0.0) {
      sheet.text("client.all_served");
    } else if (hours == 0 || told.isDrawn()) {
      sheet.text("client.hours_only", off);
    } else {
      sheet.text(
          "client.hours", off, words.percent((double) dark / hours), words.temperature(coldestC));
    }
    needed();
    if (told.hasGenerator()) {
      sheet.text(
          "client.generator",
          words.hours(why.verdict().meanGeneratorHours()),
          words.fuel(why.verdict().meanFuelL()));
    }
  }

  private void needed() {
    var must =
        told.home().load().appliances().stream()
            .filter(a -> a.priority() == Priority.MUST_RUN)
            .map(a -> words.name(a.name()))
            .distinct()
            .toList();
    if (!must.isEmpty()) {
      sheet.text("client.must_run", String.join("; ", must));
    }
  }

  // ---- sun and need

  private void sunAndNeed() {
    sheet.part("client.sun_and_need");
    sheet.text("client.days_not_seasons");
    sheet.add(
        new Figure(
            HandoverPictures.months(why, words),
            sheet.made("client.sun_and_need", Keys.sunNeed(told.hasOther()), monthRows(), false)));
  }

  private List<Row> monthRows() {
    var rows = new ArrayList<Row>();
    for (MonthLine m : why.months()) {
      rows.add(
          new Row(
              List.of(
                  words.month(m.month()),
                  sheet.kwh(m.solarWh() + m.otherWh()),
                  sheet.kwh(m.curtailedWh()),
                  sheet.kwh(m.needWh()),
                  sheet.kwh(m.unmetWh())),
              m.unmetWh() > 0.0));
    }
    return rows;
  }

  // ---- the worst spell

  private void worstSpell() {
    sheet.part("client.worst");
    if (why.spells().isEmpty()) {
      sheet.text("client.no_spell");
      return;
    }
    Explanation.Spell worst = why.spells().get(0);
    sheet.add(Block.Text.of(SpellInShort.story(worst.story(), words)));
    sheet.add(
        new Figure(
            HandoverPictures.spell(worst, words),
            sheet.made("client.worst", Keys.spellDays(told.hasOther()), spellRows(worst), false)));
  }

  private List<Row> spellRows(Explanation.Spell spell) {
    var rows = new ArrayList<Row>();
    for (SpellDay d : spell.spell().days()) {
      rows.add(
          new Row(
              List.of(
                  words.day(d.date()),
                  sheet.kwh(d.solarBusWh() + d.otherWh()),
                  sheet.kwh(d.needWh()),
                  words.percent(d.endChargeShare()),
                  sheet.kwh(d.unmetWh()),
                  words.number(d.unmetHours(), 0)),
              d.unmetHours() > 0));
    }
    return rows;
  }

  // ---- causes and remedies

  private void causes() {
    Shares shares = why.shares();
    if (shares == null || shares.parts().isEmpty()) {
      return;
    }
    sheet.part("client.causes");
    var rows = new ArrayList<Row>();
    for (Part part : shares.parts()) {
      rows.add(
          Row.of(
              words.say(part.cause().key()),
              words.say(part.cause().isSeason() ? "cause.kind.season" : "cause.kind.fixable"),
              sheet.kwh(part.wh()),
              words.percent(part.ofWholeShare())));
    }
    String split =
        words.say(
            "client.causes.split",
            words.percent(shares.seasonShare()),
            words.percent(shares.fixableShare()));
    boolean hasMinus = shares.parts().stream().anyMatch(p -> p.ofWholeShare() <= -LEAST_SHARE);
    double restShare = shares.wholeWh() > 0.0 ? shares.restWh() / shares.wholeWh() : 0.0;
    if (restShare >= LEAST_SHARE) {
      split += " " + words.say("client.causes.rest", words.percent(restShare));
    }
    sheet.add(Block.Text.of(hasMinus ? split + " " + words.say("client.causes.minus") : split));
    sheet.add(
        new Figure(
            HandoverPictures.causes(shares, words),
            sheet.made("client.causes", Keys.CAUSES, rows, false)));
  }

  private void remedies() {
    var paid = why.remedies().stream().filter(r -> r.isFound() && !r.isFree()).toList();
    sheet.part("client.remedies");
    if (why.verdict().darkWinters() == 0 && why.spells().isEmpty()) {
      sheet.text("client.remedies.none_needed");
      return;
    }
    if (paid.isEmpty()) {
      sheet.text("client.remedies.none_found");
      return;
    }
    sheet.text("client.remedies.tested");
    String currency = told.home().costs().currency();
    sheet.items(
        paid.stream()
            .limit(MOST_REMEDIES)
            .map(r -> RemedyCost.after(changed(r), r.cost(), currency, words))
            .toList());
    if (paid.size() > MOST_REMEDIES) {
      sheet.text("client.remedies.see");
    }
  }

  private String changed(Remedy remedy) {
    String change = RemedyCost.withRunning(brief(remedy.said()), remedy, words);
    return remedy.wires().isEmpty() ? change : words.say("client.remedies.wires", change);
  }

  private void free() {
    List<Remedy> free = why.free().stream().limit(MOST_FREE).toList();
    if (!free.isEmpty()) {
      sheet.part("client.free");
      sheet.text("client.free.now", words.energy(why.verdict().meanUnmetWh()));
      sheet.items(free.stream().map(this::then).toList());
    }
  }

  /** A change and what it comes to, from its own run. */
  private String then(Remedy remedy) {
    String change = brief(remedy.said());
    return remedy.afterUnmetWh() > 0.0
        ? words.say("client.then", change, words.energy(remedy.afterUnmetWh()))
        : words.say("client.then.nothing", change);
  }

  /** In this page's own words where it has some; the same values. */
  private String brief(Said said) {
    String own = OWN + said.key();
    return words.has(own) ? words.say(new Said(own, said.values())) : words.say(said);
  }

  // ---- what stays open

  private void unsure() {
    sheet.part("client.unsure");
    var items = new ArrayList<String>();
    why.uncertainties().stream()
        .filter(said -> !UNSURE_BEHIND.contains(said.key()))
        .forEach(said -> items.add(brief(said)));
    items.add(words.say("client.unsure.peaks"));
    sheet.items(items);
  }

  private void next() {
    sheet.part("client.next");
    var items = new ArrayList<String>();
    LoadAnswers loads = told.result().besides().loads();
    if (loads != null && loads.narrowest() != null) {
      items.add(words.say("client.next.measure", words.name(loads.narrowest())));
    }
    items.add(words.say("client.next.family"));
    items.add(words.say("client.next.licensed"));
    sheet.items(items);
    sheet.small("client.words");
  }
}
