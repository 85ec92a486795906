package greyspell.report;

import greyspell.chart.Say;
import greyspell.quantity.Show;
import greyspell.sizing.HandMethod;
import greyspell.study.SizeResult;
import greyspell.study.SizeResult.Point;
import java.util.ArrayList;

/** The standards' hand method, a line a step, and where it parts from the hours. */
final class SizeHandText {
  private static final double WH_PER_KWH = 1000.0;
  private static final double NEAR_SHARE = 0.1;

  private final SizeResult result;
  private final HandMethod hand;
  private int step;

  SizeHandText(SizeResult result) {
    this.result = result;
    hand = result.hand();
  }

  void write(StringBuilder out) {
    HandMethod.Asked in = hand.asked();
    out.append("\nBy hand beside it, as the standards for stand-alone systems do it:\n");
    line(
        out,
        "need: "
            + kwh(in.needWhPerDay().in(hand.loadMonth()))
            + " kWh a day on the bus in a mean "
            + Say.month(hand.loadMonth())
            + ", the month of greatest need, / "
            + Show.voltage(in.bankV())
            + " = "
            + ah(hand.loadAhPerDay())
            + " a day");
    line(
        out,
        "reserve: "
            + ah(hand.loadAhPerDay())
            + " × "
            + Show.trimmed(in.reserveDays(), 1)
            + " days without sun = "
            + ah(hand.carriedAh()));
    line(
        out,
        "depth: the most of "
            + ah(hand.carriedAh())
            + " / "
            + percent(in.depthShare())
            + " depth of discharge = "
            + ah(hand.byDepthAh())
            + ", a day's "
            + ah(hand.loadAhPerDay())
            + " / "
            + percent(in.dailyDepthShare())
            + " daily depth = "
            + ah(hand.byDailyDepthAh())
            + ", "
            + ah(hand.carriedAh())
            + " / "
            + percent(in.endOfLifeShare())
            + " at the end of its life = "
            + ah(hand.byEndOfLifeAh())
            + "; the "
            + hand.ruling()
            + " rules");
    line(
        out,
        "cold: × "
            + Show.trimmed(in.coldFactor(), 3)
            + " for the bank in its coldest month = "
            + ah(hand.inTheColdAh()));
    line(
        out,
        "margin: × "
            + Show.trimmed(1.0 + in.marginShare(), 2)
            + " = "
            + ah(hand.withMarginAh())
            + ", "
            + kwh(hand.withMarginAh() * in.bankV())
            + " kWh");
    line(out, "rate: " + rate());
    line(
        out,
        "strings side by side: "
            + kwh(hand.capacityAh() * in.bankV())
            + " kWh / "
            + kwh(in.packWh())
            + " kWh a pack, rounded up = "
            + Say.count(hand.packs(), "pack", "packs"));
    line(out, "array-to-load ratio now: " + ratio());
    line(out, "array: " + modules());
    out.append('\n');
    Columns.wrap(out, "Where they part: ", parting());
    Columns.wrap(
        out,
        "Sources: ",
        "the two ratios from IEEE 1013-2000, read on an opened page; the formulas from memory of the"
            + " worksheets of IEEE 1013 and AS/NZS 4509.2, not compared with a copy. "
            + Show.trimmed(in.reserveDays(), 1)
            + " days and a ratio of "
            + Say.number(in.wantedRatio(), 2)
            + ": --reserve-days and --array-to-load state others.");
  }

  private void line(StringBuilder out, String words) {
    step++;
    Columns.wrap(out, "  " + step + "  ", words);
  }

  private String rate() {
    String begin =
        "the greatest hour takes "
            + Say.number(hand.mostA(), 1)
            + " A, which would empty it in "
            + Say.number(hand.emptiedInH(), hand.emptiedInH() < 9.95 ? 1 : 0)
            + " hours, ";
    if (hand.isSlow()) {
      return begin + "no faster than the 20 hours that sheets hold for: no derating";
    }
    return hand.rateShare() >= 1.0
        ? begin
            + "faster than the 20 hours that sheets hold for; lithium is taken to give as much at any"
            + " rate that its limits allow: no derating"
        : begin
            + "faster than the 20 hours that sheets hold for: / "
            + percent(hand.rateShare())
            + " that it gives at that rate = "
            + ah(hand.capacityAh())
            + ", "
            + kwh(hand.capacityAh() * hand.asked().bankV())
            + " kWh";
  }

  private String ratio() {
    HandMethod.Asked in = hand.asked();
    int month = hand.arrayMonth();
    return kwh(in.arrayWhPerDay().in(month))
        + " kWh a day from "
        + Say.count(in.modules(), "module", "modules")
        + (hand.hasOther()
            ? " and " + kwh(in.otherWhPerDay().in(month)) + " from the " + other()
            : "")
        + " / "
        + kwh(in.needWhPerDay().in(month))
        + " kWh asked in a mean "
        + Say.month(month)
        + (hand.hasOther()
            ? ", the month that asks for most panels = "
            : ", the month in which it is lowest = ")
        + Say.number(hand.nowRatio(), 3);
  }

  private String other() {
    var source = result.home().otherSource();
    return source == null ? "second source" : source.name();
  }

  private String modules() {
    HandMethod.Asked in = hand.asked();
    int month = hand.arrayMonth();
    String wanted = Say.number(in.wantedRatio(), 2) + " wanted";
    String sum =
        hand.hasOther()
            ? "("
                + wanted
                + " × "
                + kwh(in.needWhPerDay().in(month))
                + " kWh - "
                + kwh(in.otherWhPerDay().in(month))
                + " kWh) / "
                + kwh(in.arrayWhPerDay().in(month))
                + " kWh × "
                + in.modules()
            : wanted + " / " + Say.number(hand.nowRatio(), 3) + " × " + in.modules();
    return sum
        + " = "
        + (Double.isFinite(hand.modules())
            ? Say.number(hand.modules(), 1) + " modules" + asStrings()
            : "no number of modules helps");
  }

  private String asStrings() {
    Point pair = result.handPair();
    return pair == null ? ", more than can be built here" : ", as whole strings " + pair.modules();
  }

  private String parting() {
    var text = new StringBuilder();
    Point pair = result.handPair();
    if (pair != null) {
      text.append("run hour by hour, the hand method's pair, ")
          .append(SizeText.panels(pair))
          .append(" with ")
          .append(SizeText.bank(pair))
          .append(", leaves ")
          .append(SizeText.hours(pair.tally().unmetHoursPerYear()))
          .append(" hours a year unmet and ")
          .append(result.isHandPairEnough() ? "keeps to" : "misses")
          .append(" the target. ");
    }
    Point least = result.leastBank();
    if (least != null && least.packs() != null) {
      text.append(
              result.isByRule()
                  ? "The target itself asks for "
                  : "With the panels that are there the hours ask for ")
          .append(Say.count(least.packs(), "pack", "packs"))
          .append(", the hand method for ")
          .append(hand.packs())
          .append(". ");
    } else if (least == null) {
      text.append(
          "With the panels that are there the hours find no bank; the hand method, which never asks"
              + " how the bank is filled again, still names one. ");
    }
    return text.append(why()).append(' ').append(added()).toString();
  }

  /** The rule looks at a mean month and at days without any sun, the hours at spells. */
  private String why() {
    if (!result.deficit().isKnown()) {
      return "The rule reckons with a mean month and so many wholly dark days; the hours follow what comes.";
    }
    double needWh = hand.asked().needWhPerDay().in(hand.loadMonth());
    double spellD = result.deficit().deepestWh() / needWh;
    double rule = hand.asked().reserveDays();
    String longest =
        "The longest run of lacking sun here draws "
            + Say.kwh(result.deficit().deepestWh())
            + " from a full bank, "
            + Say.days(spellD)
            + " of the house";
    if (spellD > rule * (1.0 + NEAR_SHARE) && isLessThanByHand()) {
      return longest
          + ", more than the "
          + Show.trimmed(rule, 1)
          + " of the rule; but the target lets a part of it go unserved.";
    }
    if (spellD > rule * (1.0 + NEAR_SHARE)) {
      return longest
          + ", where the rule keeps "
          + Show.trimmed(rule, 1)
          + ": in a mean month sunny days pay for grey ones, but grey ones come together and last"
          + " longer than any bank sized for a few dark days.";
    }
    if (spellD < rule * (1.0 - NEAR_SHARE)) {
      return longest
          + ", less than the "
          + Show.trimmed(rule, 1)
          + " of the rule: even grey days bring some sun, and the rule counts none.";
    }
    return longest + ", about what the rule keeps: here the two agree.";
  }

  private boolean isLessThanByHand() {
    Point least = result.leastBank();
    return least != null
        && least.capacityWh() < hand.packs() * hand.asked().packWh() * (1.0 - NEAR_SHARE);
  }

  /** What the hand method adds and the hours do not. */
  private String added() {
    double factor = hand.capacityAh() / (hand.byDepthAh() * hand.asked().coldFactor());
    var parts = new ArrayList<String>();
    if (!hand.ruling().equals(HandMethod.BY_DEPTH)) {
      parts.add(hand.ruling());
    }
    parts.add("margin");
    if (hand.rateShare() < 1.0) {
      parts.add("rate");
    }
    return "To what depth of discharge and cold ask for, the hand method adds "
        + percent(factor - 1.0)
        + " ("
        + Say.list(parts)
        + "); the hours run the bank as it is now.";
  }

  private static String ah(double ah) {
    return Say.number(ah, ah < 999.5 ? 1 : 0) + " Ah";
  }

  private static String kwh(double wh) {
    return Say.number(wh / WH_PER_KWH, 2);
  }

  private static String percent(double share) {
    return Say.percent(share);
  }
}
