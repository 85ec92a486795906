package greyspell.handover;

import greyspell.cause.SpellDay;
import greyspell.handover.Block.Row;
import greyspell.study.Explanation;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The spells in which something was off, the worst of them day by day, and their causes. */
final class SpellPages {
  private static final int MOST_SPELLS = 20;
  private static final double LEAST_SHARE = 0.005;

  private final Told told;
  private final Sheet sheet;
  private final Words words;
  private final Explanation why;

  private SpellPages(Told told, Sheet sheet) {
    this.told = told;
    this.sheet = sheet;
    words = sheet.words();
    why = told.explanation();
  }

  static void add(Told told, Sheet sheet) {
    new SpellPages(told, sheet).spells();
  }

  private void spells() {
    sheet.section("spells");
    if (why.spells().isEmpty()) {
      sheet.text("client.no_spell");
      return;
    }
    var rows = new ArrayList<Row>();
    List<Explanation.Spell> spells = why.spells();
    int most = Math.min(MOST_SPELLS, spells.size());
    boolean hasHalf = false;
    for (Explanation.Spell s : spells.subList(0, most)) {
      boolean isHalf = !why.isInWholeWinter(s);
      hasHalf |= isHalf;
      List<SpellDay> days = s.spell().days();
      rows.add(
          Row.of(
              isHalf
                  ? words.say("spells.half", sheet.winter(s.winter()))
                  : sheet.winter(s.winter()),
              words.day(days.get(0).date()),
              words.number(days.size(), 0),
              words.number(s.spell().unmetHours(), 0),
              sheet.kwh(s.spell().unmetWh()),
              s.shares().parts().isEmpty()
                  ? "–"
                  : words.say(s.shares().parts().get(0).cause().key())));
    }
    sheet.table(
        "section.spells",
        List.of(
            "head.winter", "head.from", "head.days", "head.hours", "head.unmet", "head.main_cause"),
        rows,
        false);
    belowSpells(spells.subList(most, spells.size()), hasHalf);
    worst(spells.get(0));
    causes();
  }

  private void belowSpells(List<Explanation.Spell> leftOut, boolean hasHalf) {
    var notes = new ArrayList<String>();
    if (hasHalf) {
      notes.add(words.say("spells.half.note"));
    }
    if (!leftOut.isEmpty()) {
      double wh = leftOut.stream().mapToDouble(s -> s.spell().unmetWh()).sum();
      notes.add(words.say("spells.more", words.number(leftOut.size(), 0), words.energy(wh)));
    }
    if (!notes.isEmpty()) {
      sheet.add(Block.Text.small(String.join(" ", notes)));
    }
  }

  /** Of all that was missing: page one draws them, here they stand one by one. */
  private void causes() {
    Explanation.Shares shares = why.shares();
    if (shares == null || shares.parts().isEmpty()) {
      return;
    }
    sheet.part("client.causes");
    var rows = new ArrayList<Row>();
    boolean isDrawn = !shares.isExact();
    for (Explanation.Part part : shares.parts()) {
      var cells = new ArrayList<String>();
      cells.add(words.say(part.cause().key()));
      cells.add(words.say(part.cause().isSeason() ? "cause.kind.season" : "cause.kind.fixable"));
      cells.add(sheet.kwh(part.wh()));
      if (isDrawn) {
        cells.add(error(part.standardErrorWh()));
      }
      cells.add(words.percent(part.ofWholeShare()));
      cells.add(sheet.kwh(part.aloneWh()));
      rows.add(new Row(cells, false));
    }
    if (shares.wholeWh() > 0.0 && shares.restWh() >= LEAST_SHARE * shares.wholeWh()) {
      rows.add(rest(shares, isDrawn));
    }
    var head = new ArrayList<String>(List.of("head.cause", "head.whose", "head.kwh_all"));
    if (isDrawn) {
      head.add("head.error");
    }
    head.addAll(List.of("head.share", "head.alone"));
    sheet.table("client.causes", head, rows, false);
    String note = words.say("causes.note");
    sheet.add(Block.Text.small(isDrawn ? note + " " + words.say("causes.drawn") : note));
    shares.helped().forEach(sheet::said);
  }

  /** What is missing without any of the causes, or the shares would not reach the whole. */
  private Row rest(Explanation.Shares shares, boolean isDrawn) {
    var cells = new ArrayList<String>(List.of(words.say("explain.text.rest"), "–"));
    cells.add(sheet.kwh(shares.restWh()));
    if (isDrawn) {
      cells.add("–");
    }
    cells.add(words.percent(shares.restWh() / shares.wholeWh()));
    cells.add("–");
    return new Row(cells, false);
  }

  /** Never "0.0": drawn shares are never that sure. */
  private String error(double wh) {
    return wh < sheet.leastShownWh() ? "< " + sheet.kwh(2.0 * sheet.leastShownWh()) : sheet.kwh(wh);
  }

  private void worst(Explanation.Spell spell) {
    sheet.part("client.worst");
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
    sheet.table("client.worst", Keys.spellDays(told.hasOther()), rows, false);
    sheet.add(
        Block.Text.of(
            String.join(" ", spell.story().stream().map(said -> words.say(said)).toList())));
  }
}
