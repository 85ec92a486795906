package greyspell.report;

import greyspell.cause.DarkSpell;
import greyspell.cause.SpellDay;
import greyspell.study.Explanation;
import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Remedy;
import greyspell.study.Explanation.Shares;
import greyspell.study.Explanation.Spell;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;

/** Why the lights went out and what would have kept them on, for the terminal. */
public final class ExplainText {
  private static final int SPELLS_TOLD = 1;
  private static final int SPELLS_LISTED = 12;
  private static final int REMEDIES_LISTED = 12;
  private static final int FREE_LISTED = 5;
  private static final String INDENT = "  ";
  private static final double LEAST_SHARE = 0.005;

  private final Explanation told;
  private final Words words;
  private final StringBuilder out = new StringBuilder();

  private ExplainText(Explanation told, Words words) {
    this.told = told;
    this.words = words;
  }

  public static String of(Explanation told, Words words) {
    var text = new ExplainText(told, words);
    text.write();
    return text.out.toString();
  }

  private void write() {
    out.append(told.home().name()).append("\n\n");
    told.cautions().forEach(c -> Columns.wrap(out, "! ", words.say(c)));
    Columns.wrap(out, "", words.say(told.verdict().said()));
    Columns.wrap(out, "", words.say(told.weather()));
    Shares shares = told.shares();
    if (shares != null) {
      causes(shares);
      list();
      for (Spell spell : told.spells().subList(0, Math.min(SPELLS_TOLD, told.spells().size()))) {
        story(spell);
      }
      remedies("explain.text.all", told.remedies(), REMEDIES_LISTED);
      remedies("explain.text.free", told.free(), FREE_LISTED);
    }
    head("explain.text.unsure");
    told.uncertainties().forEach(u -> Columns.wrap(out, "- ", words.say(u)));
  }

  private void head(String key) {
    out.append('\n').append(words.pattern(key)).append("\n\n");
  }

  private void causes(Shares shares) {
    head("explain.text.causes");
    var table = new Columns();
    table.row(
        words.pattern("explain.text.share"),
        words.energy(shares.wholeWh()),
        shares.isExact() ? "" : words.pattern("explain.text.error"),
        words.pattern("explain.text.alone"),
        "");
    causes(table, shares, true);
    causes(table, shares, false);
    if (shares.wholeWh() > 0.0 && shares.restWh() / shares.wholeWh() >= LEAST_SHARE) {
      table.row(
          words.percent(shares.restWh() / shares.wholeWh()),
          words.energy(shares.restWh()),
          "",
          "",
          words.pattern("explain.text.rest"));
    }
    table.write(out, true);
    Columns.wrap(out, "", words.pattern("explain.text.overlap"));
    members(shares);
    shares.helped().forEach(h -> Columns.wrap(out, "", words.say(h)));
  }

  /** The sum of a kind, its causes below it. */
  private void causes(Columns table, Shares shares, boolean isSeason) {
    double sumShare = isSeason ? shares.seasonShare() : shares.fixableShare();
    table.row(
        words.percent(sumShare),
        words.energy(sumShare * shares.wholeWh()),
        "",
        "",
        words.pattern(isSeason ? "cause.kind.season" : "cause.kind.fixable") + ":");
    for (Part part : shares.parts()) {
      if (part.cause().isSeason() == isSeason && Math.abs(part.ofWholeShare()) >= LEAST_SHARE) {
        table.row(
            words.percent(part.ofWholeShare()),
            words.energy(part.wh()),
            shares.isExact() ? "" : "± " + words.energy(part.standardErrorWh()),
            words.energy(part.aloneWh()),
            INDENT + words.pattern(part.cause().key()));
      }
    }
  }

  private void members(Shares shares) {
    for (Part part : shares.parts()) {
      if (!part.members().isEmpty()) {
        List<String> names = part.members().stream().map(m -> words.pattern(m.key())).toList();
        Columns.wrap(out, "", words.say("explain.text.members", String.join("; ", names)));
      }
    }
  }

  /** In one line: the shares of a single spell. */
  private void spellCauses(Shares shares) {
    var told = new ArrayList<String>();
    for (Part part : shares.parts()) {
      if (Math.abs(part.ofWholeShare()) >= LEAST_SHARE) {
        told.add(words.pattern(part.cause().key()) + " " + words.percent(part.ofWholeShare()));
      }
    }
    if (shares.wholeWh() > 0.0 && shares.restWh() / shares.wholeWh() >= LEAST_SHARE) {
      told.add(
          words.pattern("explain.text.rest")
              + " "
              + words.percent(shares.restWh() / shares.wholeWh()));
    }
    Columns.wrap(
        out,
        "",
        words.say(
                "explain.text.spell_causes",
                words.energy(shares.wholeWh()),
                String.join("; ", told),
                words.percent(shares.seasonShare()))
            + (shares.isExact()
                ? ""
                : " " + words.say("explain.text.spell_error", words.energy(shares.errorWh()))));
  }

  private void list() {
    head("explain.text.spells");
    var table = new Columns();
    List<Spell> spells = told.spells();
    for (Spell spell : spells.subList(0, Math.min(SPELLS_LISTED, spells.size()))) {
      DarkSpell s = spell.spell();
      table.row(
          words.energy(s.unmetWh()),
          words.hours(s.unmetHours()),
          dates(spell)
              + ", "
              + words.say(
                  told.isInWholeWinter(spell) ? "explain.text.of_winter" : "explain.text.of_half",
                  spell.winter().replaceFirst("^winter ", ""))); // drawn ones are numbered
    }
    table.write(out, true);
    if (spells.size() > SPELLS_LISTED) {
      Columns.wrap(
          out,
          "  ",
          words.say("explain.text.more", Integer.toString(spells.size() - SPELLS_LISTED)));
    }
  }

  private String dates(Spell spell) {
    List<SpellDay> days = spell.spell().days();
    return words.shortDay(days.get(0).date())
        + " – "
        + words.shortDay(days.get(days.size() - 1).date());
  }

  private void story(Spell spell) {
    head("explain.text.worst");
    var sentences = new ArrayList<String>();
    spell.story().forEach(s -> sentences.add(words.say(s)));
    Columns.wrap(out, "", String.join(" ", sentences));
    out.append('\n');
    spellCauses(spell.shares());
    out.append('\n');
    days(spell);
    remedies("explain.text.this", spell.remedies(), REMEDIES_LISTED);
  }

  private void days(Spell spell) {
    var table = new Columns();
    table.row(
        words.pattern("explain.text.day"),
        words.pattern("explain.text.panels"),
        words.pattern("explain.text.need"),
        words.pattern("explain.text.bank"),
        words.pattern("explain.text.unserved"));
    for (SpellDay day : spell.spell().days()) {
      boolean isServed = day.unmetHours() == 0;
      table.row(
          words.shortDay(day.date()),
          words.energy(day.solarBusWh()),
          words.energy(day.needWh()),
          words.percent(day.endChargeShare()),
          isServed ? "" : words.energy(day.unmetWh()));
    }
    table.write(out, false);
  }

  private void remedies(String key, List<Remedy> remedies, int most) {
    if (!remedies.isEmpty()) {
      head(key);
      for (Remedy remedy : remedies.subList(0, Math.min(most, remedies.size()))) {
        String said = words.say(remedy.said()) + " " + words.say(remedy.effect());
        String currency = told.home().costs().currency();
        Columns.wrap(
            out,
            "- ",
            remedy.isFound()
                ? RemedyCost.withWires(
                    RemedyCost.after(said, remedy.cost(), currency, words), remedy.wires(), words)
                : said);
      }
      if (remedies.size() > most) {
        Columns.wrap(
            out, "  ", words.say("explain.text.more", Integer.toString(remedies.size() - most)));
      }
    }
  }
}
