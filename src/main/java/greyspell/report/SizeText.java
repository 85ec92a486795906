package greyspell.report;

import greyspell.chart.Say;
import greyspell.outcome.Odds;
import greyspell.quantity.Show;
import greyspell.scenario.Scenario;
import greyspell.sizing.Tally;
import greyspell.sizing.Target;
import greyspell.sizing.Target.AutonomyDays;
import greyspell.sizing.Target.DarkWinters;
import greyspell.sizing.Target.LossDays;
import greyspell.sizing.Target.UnmetHours;
import greyspell.study.SizeResult;
import greyspell.study.SizeResult.Point;
import java.util.ArrayList;
import java.util.List;

/** What size a target takes, in words for the terminal. */
public final class SizeText {
  private static final double DECEMBER_SHORT = 0.995;

  private final SizeResult result;
  private final StringBuilder out = new StringBuilder();

  private SizeText(SizeResult result) {
    this.result = result;
  }

  /**
   * The whole text.
   *
   * @param weather which winters, a sentence; what must be said of them
   */
  public static String of(SizeResult result, String weather, List<String> cautions) {
    return new SizeText(result).text(weather, cautions);
  }

  private String text(String weather, List<String> cautions) {
    String name = result.home().name();
    out.append(name).append("\n\n");
    Columns.wrap(out, "", verdict());
    out.append('\n');
    Columns.wrap(out, "Given the panels: ", givenPanels());
    Columns.wrap(out, "Given the bank:   ", givenBank());
    Columns.wrap(out, "Cheapest pair:    ", cheapest());
    new SizeTable(result).write(out);
    out.append('\n');
    Columns.wrap(out, "The target: ", meaning(weather));
    if (!result.steps().end().isEmpty()) {
      Columns.wrap(
          out,
          "Panels: ",
          result.steps().end()
              + (result.steps().wouldMoreControllersDo()
                  ? " More controllers of the same kind would bear them: --controllers-may-grow."
                  : ""));
    }
    Columns.wrap(out, "Looked at: ", looked());
    medical(cautions);
    new SizeHandText(result).write(out);
    out.append('\n');
    Columns.wrap(
        out,
        "",
        "This is an estimate of energy, no electrical design: no wire, fuse or breaker is sized here."
            + " More strings or packs change currents that a licensed person must review; run"
            + " \"greyspell check\" on the changed scenario.");
    return out.toString();
  }

  // ---- verdict ----------------------------------------------------------------------------------

  private String verdict() {
    Tally tally = result.present().tally();
    return capital(pair(result.present()))
        + (result.isPresentEnough() ? " keep to the target" : " do not keep to the target")
        + " ("
        + targets()
        + "): "
        + left(tally)
        + (result.isPresentEnough() ? " All counted in the weather that was gone through." : "");
  }

  /** "613 unmet hours a year, 2 of 2 whole winters dark, at worst on 48 days.". */
  private static String left(Tally tally) {
    var parts = new ArrayList<String>();
    parts.add(hours(tally.unmetHoursPerYear()) + " unmet hours a year");
    if (tally.wholeWinters() > 0) {
      parts.add(
          Say.number(tally.darkWinters(), 0)
              + " of "
              + Say.count(tally.wholeWinters(), "whole winter dark", "whole winters dark"));
    }
    if (tally.mostLossDays() > 0) {
      parts.add(
          Say.count(tally.mostLossDays(), "day of loss", "days of loss") + " in the worst winter");
    }
    if (tally.generatorHours() > 0) {
      parts.add("the generator " + hours(tally.generatorHoursPerYear()) + " hours a year");
    }
    return String.join(", ", parts) + ".";
  }

  static String hours(double perYear) {
    return Say.number(perYear, perYear > 0.0 && perYear < 9.95 ? 1 : 0);
  }

  private String targets() {
    var all = new ArrayList<String>();
    for (Target target : result.targets()) {
      all.add(words(target));
    }
    return Say.list(all);
  }

  static String words(Target target) {
    if (target instanceof UnmetHours t) {
      return "at most " + Show.trimmed(t.mostPerYear(), 1) + " unmet hours a year";
    } else if (target instanceof LossDays t) {
      return t.mostPerWinter() == 0
          ? "no day of loss in any winter"
          : "at most " + Say.count(t.mostPerWinter(), "day", "days") + " of loss in any winter";
    } else if (target instanceof DarkWinters t) {
      return t.most() == 0
          ? "no dark winter"
          : "at most " + Say.count(t.most(), "dark winter", "dark winters") + " in " + t.of();
    } else if (target instanceof AutonomyDays t) {
      return Show.trimmed(t.least(), 1) + " days of autonomy without sun";
    }
    throw new IllegalArgumentException(target.toString());
  }

  // ---- the three answers ------------------------------------------------------------------------

  private String givenPanels() {
    Point least = result.leastBank();
    String panels = panels(result.present());
    if (least != null) {
      return panels
          + (result.present().modules() == 1 ? " needs " : " need ")
          + bank(least)
          + change(least.capacityWh() - result.present().capacityWh())
          + ": "
          + left(least.tally());
    }
    Point most = result.largestBank();
    var text = new StringBuilder(panels);
    text.append(
        result.present().modules() == 1
            ? " meets it with no bank up to "
            : " meet it with no bank up to ");
    if (most != null) {
      text.append(bank(most)).append(": with that one ").append(left(most.tally()));
    }
    String why = shortMonth().isEmpty() ? longSpell() : shortMonth();
    text.append(why.isEmpty() ? "" : " ").append(why);
    if (!result.frontier().isEmpty()) {
      Point first = result.frontier().get(0);
      int more = first.modules() - result.present().modules();
      text.append(' ')
          .append(
              more > 0
                  ? Say.count(more, "more panel would", "more panels would")
                      + ", with "
                      + bank(first)
                      + "."
                  : "");
    }
    return text.toString().stripTrailing();
  }

  /** Where the panels bring less than is asked even in a mean month. */
  private String shortMonth() {
    var hand = result.hand();
    if (hand.nowRatio() >= DECEMBER_SHORT) {
      return "";
    }
    int month = hand.arrayMonth();
    return "In a mean "
        + Say.month(month)
        + " they bring "
        + Say.kwh(hand.asked().arrayWhPerDay().in(month))
        + " a day where "
        + Say.kwh(hand.asked().needWhPerDay().in(month))
        + " is asked: a bank only moves what there is.";
  }

  private String longSpell() {
    if (!result.deficit().isKnown()) {
      return "";
    }
    var hand = result.hand();
    double days = result.deficit().deepestWh() / hand.asked().needWhPerDay().in(hand.loadMonth());
    return "The spells are longer than that: the longest run of lacking sun draws "
        + Say.kwh(result.deficit().deepestWh())
        + " from a full bank, "
        + Say.days(days)
        + " of what the house asks.";
  }

  private String givenBank() {
    Point fewest = result.fewestPanels();
    Point now = result.present();
    if (result.isByRule()) {
      var hand = result.hand();
      return "the rule sees bank and array apart; for an array-to-load ratio of "
          + Say.number(hand.asked().wantedRatio(), 2)
          + " it asks for "
          + Say.number(Math.ceil(hand.modules() - 1e-9), 0)
          + " modules, and those that are there have "
          + Say.number(hand.nowRatio(), 2)
          + ".";
    }
    if (result.steps().steps().isEmpty()) {
      return "no panels can be told: " + result.steps().end();
    }
    if (fewest != null) {
      int more = fewest.modules() - now.modules();
      return capital(bank(now))
          + (packsAreOne(now) ? " needs " : " need ")
          + panels(fewest)
          + (more == 0
              ? " (those that are there)"
              : " (" + Say.number(Math.abs(more), 0) + (more > 0 ? " more" : " fewer") + ")")
          + controllers(fewest)
          + ": "
          + left(fewest.tally());
    }
    var last = result.steps().steps().get(result.steps().count() - 1);
    return capital(bank(now))
        + (packsAreOne(now) ? " meets" : " meet")
        + " it with no number of panels that can be built, up to "
        + Say.count(last.modules(), "module", "modules")
        + ".";
  }

  private static boolean packsAreOne(Point point) {
    Integer packs = point.packs();
    return packs == null || packs == 1;
  }

  private String cheapest() {
    Point best = result.cheapest();
    if (best != null) {
      Double cost = best.cost();
      Double now = result.present().cost();
      String currency = result.home().costs().currency();
      return pair(best)
          + controllers(best)
          + ", "
          + (cost == null ? "" : Show.money(currency, cost))
          + (now == null ? "" : " where what is there comes to " + Show.money(currency, now))
          + ", by your prices"
          + (best.tally().generatorHours() > 0 ? "; fuel is not in it" : "")
          + ": "
          + left(best.tally());
    }
    if (result.isByRule()) {
      return "none is told: the rule looks at no weather, so it cannot weigh panels against storage.";
    }
    if (result.frontier().isEmpty()) {
      return "no pair that was looked at meets the target.";
    }
    return SizePrices.words(result);
  }

  // ---- what it rests on -------------------------------------------------------------------------

  private String meaning(String weather) {
    var text = new StringBuilder(capital(targets())).append(". ");
    int winters = result.wholeWinters();
    for (Target target : result.targets()) {
      if (target instanceof UnmetHours) {
        text.append(
            "An hour counts when anything asked for is not served in it, however little; the mean of ");
        text.append(Say.count(result.years(), "year", "years")).append(". ");
      } else if (target instanceof LossDays) {
        text.append(
            "A day counts when anything is not served in any of its hours; every whole winter must keep to it. ");
      } else if (target instanceof DarkWinters t) {
        text.append("A winter is dark when anything at all is not served in it; ");
        text.append(Say.count(winters, "whole winter allows ", "whole winters allow "));
        text.append(t.allowed(winters)).append(". ");
        if (t.most() > 0 && winters < t.of()) {
          text.append("So few cannot tell ")
              .append(t.most())
              .append(" in ")
              .append(t.of())
              .append(": draw more, as with --winters ")
              .append(10 * t.of())
              .append(". ");
        }
        Odds odds = Odds.of(winters - t.allowed(winters), winters);
        text.append("With as many dark as that, the risk a winter lies between ")
            .append(Say.percent(1.0 - odds.highShare()))
            .append(" and ")
            .append(Say.percent(1.0 - odds.lowShare()))
            .append(" as far as ")
            .append(Say.count(winters, "winter", "winters"))
            .append(" can tell (19 times in 20). ");
      } else if (target instanceof AutonomyDays) {
        text.append(
            "The usable energy of a full bank over the mean need of the month in which it lasts shortest: the standards' rule, which looks at no weather and so says nothing of the panels. ");
      }
    }
    text.append(weather);
    text.append(" It is a count, no promise for other winters.");
    return text.toString();
  }

  private String looked() {
    return (result.possible() > 0
            ? Say.number(result.tried(), 0) + " of " + Say.count(result.possible(), "pair", "pairs")
            : Say.count(result.tried(), "bank", "banks") + " for the panels that are there")
        + ", each as \"run\" tells it, "
        + (result.isBySums()
            ? "by sums without the hourly books."
            : "by the full loop: this home has what sums leave out (a bank by its voltage, a generator, rules or a second source), so a larger size need not be better and its neighbours were tried too.");
  }

  private void medical(List<String> cautions) {
    for (String caution : cautions) {
      Columns.wrap(out, "Caution: ", caution);
    }
  }

  // ---- words ------------------------------------------------------------------------------------

  /** "20 modules (8.2 kW) with 4 packs (20.5 kWh)". */
  public static String pair(Point point) {
    return panels(point) + " with " + bank(point);
  }

  static String panels(Point point) {
    return Say.count(point.modules(), "module", "modules")
        + " ("
        + Show.power(point.ratedW())
        + ")";
  }

  static String bank(Point point) {
    Integer packs = point.packs();
    return packs == null
        ? "a bank of " + Say.kwh(point.capacityWh())
        : Say.count(packs, "pack", "packs") + " (" + Say.kwh(point.capacityWh()) + ")";
  }

  private String controllers(Point point) {
    int more = point.controllers() - result.present().controllers();
    Scenario home = point.home();
    return more <= 0
        ? ""
        : " on "
            + point.controllers()
            + " controllers, whose standby of "
            + Show.power(home.controller().standbyOfAllW())
            + " counts";
  }

  private static String change(double moreWh) {
    return Math.abs(moreWh) < 1.0
        ? ", as it is"
        : moreWh > 0.0
            ? ", " + Say.kwh(moreWh) + " more than now"
            : ", " + Say.kwh(-moreWh) + " less than now";
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
