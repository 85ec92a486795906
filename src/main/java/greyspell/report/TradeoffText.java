package greyspell.report;

import greyspell.chart.Say;
import greyspell.chart.TradeoffSay;
import greyspell.quantity.Show;
import greyspell.study.ExchangeRate;
import greyspell.study.OtherWay;
import greyspell.study.SunAndStore;
import greyspell.study.Tradeoff;
import greyspell.study.TradeoffAxes;
import greyspell.study.TradeoffMap;
import greyspell.study.WhatHelps;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Panels against storage in words, for the terminal. */
public final class TradeoffText {
  private final Tradeoff t;
  private final TradeoffMap map;
  private final TradeoffAxes axes;
  private final StringBuilder out = new StringBuilder();

  private TradeoffText(Tradeoff t) {
    this.t = t;
    map = t.map();
    axes = map.axes();
  }

  /**
   * For the terminal.
   *
   * @param files that were written
   */
  public static String of(Tradeoff t, List<Path> files) {
    var text = new TradeoffText(t);
    text.write();
    if (!files.isEmpty()) {
      text.out.append("\nWritten: ");
      text.out.append(String.join(", ", files.stream().map(Path::toString).toList())).append('\n');
    }
    return text.out.toString();
  }

  private void write() {
    out.append(t.home().name()).append(": panels against storage, replayed over ");
    out.append(TradeoffSay.weather(t)).append("\n\n");
    int p = axes.presentPanels(), c = axes.presentBank();
    say(
        "What stands: "
            + TradeoffSay.point(axes, p, c)
            + " ("
            + Say.kw(axes.ratedW(p))
            + ", "
            + TradeoffSay.packs(axes, c)
            + "). In an average year "
            + Say.kwh(map.unmetWh(p, c))
            + " goes unserved, in "
            + Say.hours((int) Math.round(map.unmetHours(p, c)))
            + (map.generatorHours(p, c) > 0.0
                ? "; the generator runs "
                    + Say.hours((int) Math.round(map.generatorHours(p, c)))
                    + " and burns "
                    + litres(map.fuelL(p, c))
                : "")
            + ".");
    out.append('\n');
    exchange();
    out.append('\n');
    flips();
    out.append('\n');
    frontier();
    others();
    limits();
    t.notes().forEach(this::say);
  }

  private void say(String words) {
    Columns.wrap(out, "", words);
  }

  private void exchange() {
    ExchangeRate r = t.rate();
    say(TradeoffSay.exchange(t) + ".");
    if (r.stringModules() > 0 && !r.isStringBuildable()) {
      say("But that string is refused: see where panels end, below.");
    }
    if (map.presentWh() >= 1.0) {
      say(
          "In a year "
              + TradeoffSay.string(r)
              + " saves "
              + Say.kwh(Math.max(0.0, r.stringSavesWh()))
              + " of what goes unserved, one more pack ("
              + Say.kwh(r.packWh())
              + ") "
              + Say.kwh(Math.max(0.0, r.packSavesWh()))
              + worthModules(r)
              + ".");
    }
    for (String end : List.of(TradeoffSay.panelsEnd(t), TradeoffSay.storageEnd(t))) {
      if (!end.isEmpty()) {
        say(
            (end.contains("panels another") ? "With this bank, " : "With these panels, ")
                + end
                + ".");
      }
    }
  }

  private static String worthModules(ExchangeRate r) {
    if (r.isPackWorthNothing() || r.isStringWorthNothing()) {
      return "";
    }
    return Double.isInfinite(r.packWorthModules())
        ? ", more than any number of panels on this map"
        : ", as much as "
            + Show.trimmed(r.packWorthModules(), 1)
            + (r.packWorthModules() < 1.05 && r.packWorthModules() > 0.95 ? " panel" : " panels");
  }

  private static String litres(double fuelL) {
    return Show.number(fuelL, 0) + " l";
  }

  private void flips() {
    SunAndStore sun = t.sun();
    WhatHelps helps = t.helps();
    String measure = map.hasGenerator() ? "By the fuel that they save, " : "";
    String weighed =
        helps.isPerMoney() ? "For the same money " : "Step for step, a string against a pack, ";
    var words =
        new StringBuilder(measure.isEmpty() ? weighed : measure + weighed.toLowerCase(Locale.ROOT));
    words.append(TradeoffSay.bestNow(t)).append(" here");
    Double controller = t.controllerCostBelow();
    if (controller != null) {
      String currency = t.home().costs().currency();
      words.append(" as long as the controller that the string takes costs less than ");
      words.append(Show.money(currency, controller)).append(" (costs.per_controller, not stated)");
    }
    if (helps.flipsAtModules() > 0) {
      words.append("; with this bank that changes at ").append(helps.flipsAtModules());
      words.append(" modules (").append(TradeoffSay.helps(helps.afterMoreModules())).append(')');
    }
    if (helps.flipsAtStorageWh() > 0.0) {
      words.append("; with these panels at ").append(TradeoffSay.storage(helps.flipsAtStorageWh()));
      words.append(" (").append(TradeoffSay.helps(helps.afterMoreStorage())).append(')');
    }
    if (helps.flipsAtModules() == 0 && helps.flipsAtStorageWh() <= 0.0) {
      words.append(controller == null ? ", and that" : "; controllers not counted, that");
      words.append(" stays so for more of either on this map");
    }
    say(words.append('.').toString());
    say(
        "In "
            + Say.month(sun.month())
            + ", the leanest month, the sun brings "
            + Show.number(sun.supplyPerNeedShare(), 2)
            + " times what is needed ("
            + Say.kwh(sun.needWhPerDay())
            + " a day), and a full bank lasts "
            + Say.days(sun.storageDays())
            + " without sun. These two guide; what is said above is decided by the replayed spells alone.");
  }

  private void frontier() {
    String target = Say.hours((int) Math.round(t.asked().targetHours())) + " a year";
    var table = new Columns();
    boolean isPriced = t.costs().isKnown();
    table.row(
        isPriced
            ? new String[] {
              "modules",
              "kW",
              "bank kWh",
              "packs",
              t.home().costs().currency() + " beyond now",
              "hours",
              ""
            }
            : new String[] {"modules", "kW", "bank kWh", "packs", "hours", ""});
    int rows = 0, cheapest = t.cheapestPanels();
    for (int i = 0; i < map.panels(); i++) {
      int j = t.frontier().get(i);
      if (j < 0) {
        continue;
      }
      rows++;
      var cells =
          new ArrayList<>(
              List.of(
                  Say.number(axes.modules(i), 0),
                  Say.number(axes.ratedW(i) / 1000.0, 1),
                  Say.kwhCell(axes.storageWh(j)),
                  Show.trimmed(axes.storageWh(j) / axes.packWh(), 1)));
      if (isPriced) {
        cells.add(Say.number(t.costs().extraCost(i, j), 0));
      }
      cells.add(Say.number(map.unmetHours(i, j), 0));
      String why = why(i, j);
      cells.add(i == cheapest ? "cheapest" + (why.isEmpty() ? "" : ", " + why) : why);
      table.row(cells.toArray(String[]::new));
    }
    if (rows == 0) {
      say("Nothing on this map keeps to " + target + ".");
    } else {
      say("The smallest bank that keeps to " + target + ":");
      table.write(out, true);
    }
    out.append('\n');
  }

  /** What forbids a point, or what it takes. */
  private String why(int panel, int bank) {
    if (panel >= axes.buildable()) {
      return "refused by the string rules";
    }
    if (!t.isAllowed(panel, bank)) {
      Integer roof = t.asked().roofModules();
      return roof != null && axes.modules(panel) > roof
          ? "no room on the roof"
          : "beyond the budget";
    }
    int controllers = axes.panels().get(panel).controllers();
    return controllers <= t.home().controller().count()
        ? ""
        : controllers
            + " controllers"
            + (t.costs().leavesOutControllers() ? ", the added not in the sum" : "");
  }

  private void others() {
    if (!t.others().isEmpty()) {
      say(
          "Other ways, in a year, on the same scale (worth: bank that would do as much, beside these panels):");
      var table = new Columns();
      boolean hasGenerator = t.home().generator() != null;
      table.row(
          hasGenerator
              ? new String[] {"saves kWh", "worth kWh", "generator h", "fuel l", ""}
              : new String[] {"saves kWh", "worth kWh", ""});
      for (OtherWay way : t.others()) {
        var cells = new ArrayList<>(List.of(Say.kwhCell(way.savesWh()), worth(way)));
        if (hasGenerator) {
          cells.add(change(-way.savesHours()));
          cells.add(change(-way.savesL()));
        }
        cells.add(way.name());
        table.row(cells.toArray(String[]::new));
      }
      table.write(out, true);
    }
    if (t.home().generator() == null && map.presentWh() >= 1.0) {
      say(
          "A generator that fills every gap would give "
              + Say.kwh(map.presentWh())
              + " a year, spread over "
              + Say.hours(
                  (int) Math.round(map.unmetHours(axes.presentPanels(), axes.presentBank())))
              + (isAllServed() ? "." : "; no pair on this map does as much."));
    }
    out.append('\n');
  }

  private boolean isAllServed() {
    return map.unmetWh(map.panels() - 1, map.banks() - 1) < 1.0;
  }

  private static String change(double more) {
    return (more >= 0.5 ? "+" : "") + Say.number(more, 0);
  }

  private String worth(OtherWay way) {
    if (Double.isInfinite(way.worthWh())) {
      return way.worthWh() > 0.0 ? "more than any" : "less than any";
    }
    return Math.abs(way.savesWh()) < t.rate().leastThatCountsWh()
        ? "nothing"
        : Say.kwhCell(way.worthWh());
  }

  private void limits() {
    if (!axes.end().isEmpty()) {
      say("Where panels end: " + axes.end());
    }
    Integer roof = t.asked().roofModules();
    if (roof != null) {
      say("The roof has room for " + roof + " modules.");
    }
    Double budget = t.asked().budgetCost();
    if (budget != null && t.costs().isKnown()) {
      say(
          "The budget is "
              + Say.number(budget, 0)
              + " "
              + t.home().costs().currency()
              + " beyond what stands.");
    }
  }
}
