package greyspell.report;

import greyspell.chart.Say;
import greyspell.load.ApplianceSpec;
import greyspell.outcome.Band;
import greyspell.outcome.Odds;
import greyspell.outcome.ReturnCurve;
import greyspell.outcome.SpellClimate;
import greyspell.outcome.WinterBands;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterRecord;
import greyspell.outcome.WinterSum;
import greyspell.study.ManyWinters;
import java.util.ArrayList;
import java.util.List;

/** The answer of many winters in plain words: a count, a usual winter, the worst, and the odds. */
final class WinterVerdict {
  private final ManyWinters many;
  private final WinterBook book;

  private WinterVerdict(ManyWinters many) {
    this.many = many;
    book = many.book();
  }

  static Verdict of(ManyWinters many) {
    return new WinterVerdict(many).make();
  }

  private Verdict make() {
    var more = new ArrayList<String>();
    more.add(odds(book));
    shown(more);
    bank(more);
    generator(more);
    letGo(more);
    return new Verdict(headline(book), demand(), List.copyOf(more), book.darkCount() == 0);
  }

  static String headline(WinterBook book) {
    int dark = book.darkCount();
    if (dark == 0) {
      return "No shortfall in "
          + winters(book.count())
          + (isHelped(book) ? ", with the generator's help." : ".");
    }
    double emptyWh = 0.0;
    for (WinterRecord w : book.winters()) {
      emptyWh += w.wh(WinterSum.UNMET_EMPTY);
    }
    String many = Say.number(dark, 0) + " of " + winters(book.count());
    return (emptyWh > 0.0
            ? "Ran out in " + many
            : "Something went unserved in " + many + ", though the bank was never empty")
        + usual(book)
        + ".";
  }

  private static String usual(WinterBook book) {
    Band unmet = WinterBands.of(book).wh(WinterSum.UNMET);
    WinterRecord worst = book.worstFirst().get(0);
    String kwh = Say.kwh(worst.wh(WinterSum.UNMET));
    String over = " over " + Say.hours(worst.unmetHours());
    if (book.count() == 1) {
      return ": it was " + kwh + " short" + over;
    }
    return (unmet.middle() > 0.0
            ? "; a usual winter is " + Say.kwh(unmet.middle()) + " short, "
            : "; a usual winter is not short, ")
        + "the worst ("
        + worst.name()
        + ") "
        + kwh
        + over;
  }

  static String winters(int n) {
    return Say.count(n, "winter", "winters");
  }

  private static boolean isHelped(WinterBook book) {
    return book.winters().stream().anyMatch(w -> w.months().generatorHours() > 0);
  }

  /** What the count allows to be said of a winter to come. */
  static String odds(WinterBook book) {
    return interval(Odds.of(book)) + " " + limits(book);
  }

  private static String interval(Odds odds) {
    if (odds.darkFree() == odds.winters()) {
      return winters(odds.winters())
          + " without a shortfall still "
          + (odds.winters() == 1 ? "allows" : "allow")
          + " a risk of up to "
          + Say.percent(1.0 - odds.lowShare())
          + " a winter (at 95 % confidence).";
    }
    String seen =
        Say.number(odds.darkFree(), 0)
            + " of "
            + winters(odds.winters())
            + " went by without a shortfall: ";
    if (odds.darkFree() == 0) {
      return seen
          + "the chance of one that does is at most "
          + Say.percent(odds.highShare())
          + " a winter (at 95 % confidence).";
    }
    return seen
        + Say.percent(odds.share())
        + " of them, and with so many looked at the chance a winter lies between "
        + Say.percent(odds.lowShare())
        + " and "
        + Say.percent(odds.highShare())
        + " (at 95 % confidence).";
  }

  private static String limits(WinterBook book) {
    return switch (book.kind()) {
      case MEASURED ->
          "The interval is wide because "
              + (book.count() == 1 ? "one winter is" : book.count() + " winters are")
              + " few; it takes winters to come for like those measured.";
      case SPLICED ->
          "The interval counts only how many winters were drawn, not how few measured years they are drawn"
              + " from.";
      case MADE ->
          "The interval counts only how many winters were drawn, not whether the recipe that made them is"
              + " right for this place.";
    };
  }

  private void shown(List<String> more) {
    WinterRecord shown = book.shown();
    if (shown.isDarkFree() || book.count() < 2) {
      return;
    }
    more.add(
        (shown == book.worstFirst().get(0)
                ? "The worst of them, "
                : "The winter that comes once in ten years, ")
            + shown.name()
            + ", is "
            + Say.kwh(shown.wh(WinterSum.UNMET))
            + " short over "
            + Say.hours(shown.unmetHours())
            + " on "
            + Say.count(shown.months().unmetDays(), "day", "days")
            + ", at the longest "
            + Say.hours(shown.longestShortfall().hours())
            + " in a row.");
  }

  /** What bank would have been enough, beside the one that is there. */
  private void bank(List<String> more) {
    ReturnCurve curve = SpellClimate.of(book).bank();
    int count = book.count(), mayFail = curve.mayPass(WinterBook.SHOWN_ONCE_IN);
    double needWh = curve.counted(WinterBook.SHOWN_ONCE_IN);
    String through =
        mayFail == 0
            ? (count == 1 ? "this winter" : "all " + count)
            : Say.number(count - mayFail, 0) + " of " + Say.number(count, 0);
    if (!(needWh < Double.POSITIVE_INFINITY)) {
      more.add(
          "No bank of the same packs, however many, carries "
              + through
              + ": what cold locks in it, what it loses at rest and what its own electronics draw"
              + " grow with it.");
      return;
    }
    more.add(
        (book.isRidingExact()
                ? "A bank of "
                : "Without what generator, rules and voltage change, a bank of about ")
            + Say.kwh(needWh)
            + " usable, full when the winter begins, rides through "
            + through
            + "; this one has "
            + Say.kwh(book.usableBankWh())
            + ".");
  }

  private void generator(List<String> more) {
    if (!isHelped(book)) {
      return;
    }
    Band hours = WinterBands.of(book).generatorHours();
    more.add(
        "The generator ran "
            + Say.number(hours.middle(), 0)
            + " hours in a usual winter and over "
            + Say.number(hours.high(), 0)
            + " in one of ten; what is said of shortfalls is with its help.");
  }

  private void letGo(List<String> more) {
    Band letGo = WinterBands.of(book).wh(WinterSum.LET_GO);
    if (letGo.high() > 0.0) {
      more.add(
          "By the house's own rules "
              + Say.kwh(letGo.middle())
              + " was let go in a usual winter; it is not counted as a shortfall.");
    }
  }

  private String demand() {
    List<String> medical =
        many.scenario().load().appliances().stream()
            .filter(ApplianceSpec::isMedical)
            .map(ApplianceSpec::name)
            .distinct()
            .toList();
    return medical.isEmpty()
        ? ""
        : "A medical load depends on this system ("
            + String.join(", ", medical)
            + "): it needs an independent backup of its own. No count of winters and no chance makes the"
            + " system enough for it.";
  }
}
