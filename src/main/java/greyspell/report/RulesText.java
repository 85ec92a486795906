package greyspell.report;

import greyspell.chart.Say;
import greyspell.operate.RuleCard;
import greyspell.operate.RuleCard.Price;
import greyspell.operate.RuleCard.Told;
import greyspell.quantity.Show;
import java.util.List;

/** Rules for the fridge door, with both prices. */
public final class RulesText {
  static final String ONE_WINTER =
      "Rules are found on some winters and tried on others; this weather holds fewer than two whole ones. Ask for more: --winters 20.";

  private RulesText() {}

  public static String of(RuleCard card) {
    var out = new StringBuilder(card.home().name()).append(": rules for the grey weeks\n\n");
    if (card.tried().isEmpty()) {
      Columns.wrap(out, "", ONE_WINTER);
      return out.toString();
    }
    if (card.rules().isEmpty()) {
      Columns.wrap(
          out,
          "",
          "No simple rule avoids enough outage for what it asks to give up: either little goes dark here, or what could stay off is small.");
    }
    int number = 1;
    for (Told told : card.rules()) {
      Columns.wrap(out, " " + number++ + ". ", told.rule().words());
      Columns.wrap(out, "    ", price(card, told.tried()));
    }
    out.append('\n');
    out.append("Read it so\n");
    for (String line : reading(card)) {
      Columns.wrap(out, "  ", line);
    }
    return out.toString();
  }

  /** What the rules so far do in a winter of those on which they were tried. */
  static String price(RuleCard card, Price p) {
    List<String> tried = card.tried();
    return "With it "
        + (tried.size() == 1 ? "the winter " + tried.get(0) : "an average winter")
        + " has "
        + Show.number(p.withUnmetHours(), 0)
        + " dark hours instead of "
        + Show.number(p.unmetHours(), 0)
        + " and "
        + Say.kwhNumber(p.unmetWithWh())
        + " instead of "
        + Say.kwh(p.unmetWh())
        + " unserved; the family leaves "
        + Say.kwh(p.givenUpWh())
        + " off on "
        + Say.count((int) Math.round(p.rulesDays()), "day", "days")
        + (p.avoidedWh() > 0.0
            ? ", "
                + Show.number(p.givenUpPerAvoidedFactor(), 1)
                + " kWh for each kWh of outage avoided."
            : ": "
                + (tried.size() == 1 ? "this winter" : "these winters")
                + " it would have been for nothing.")
        + (card.hasGenerator()
            ? " Fuel: " + Show.number(p.fuelL(), 0) + " → " + Show.number(p.fuelWithL(), 0) + " L."
            : "");
  }

  static List<String> reading(RuleCard card) {
    var lines = new java.util.ArrayList<String>();
    lines.add(
        (card.rules().isEmpty() ? "" : "Each line counts its rule together with those above it. ")
            + "Found on "
            + Say.count(card.learnt().size(), "winter", "winters")
            + ", tried on "
            + Say.count(card.tried().size(), "other", "others")
            + (card.tried().size() < 5 ? ": few; --winters 20 gives more to go by." : "."));
    boolean isSkyAsked = card.rules().stream().anyMatch(told -> told.rule().ifGrey());
    lines.add(
        "The charge is what the monitor shows."
            + (isSkyAsked
                ? " A grey day ahead is one whose sun brings less than the house asks for; here it is known, a forecast only guesses it."
                : ""));
    lines.add("Advice, not automation: the house decides. Freezing pipes come before any rule.");
    if (card.medical()) {
      lines.add("A load here is medical: no rule is enough for it. Keep an independent backup.");
    }
    return lines;
  }
}
