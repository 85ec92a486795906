package greyspell.chart;

import greyspell.quantity.Show;
import greyspell.study.ExchangeRate;
import greyspell.study.Tradeoff;
import greyspell.study.TradeoffAxes;
import greyspell.study.WhatHelps.Zone;

/** What a map of panels against storage says, in sentences that picture and terminal share. */
public final class TradeoffSay {
  private static final double TELLING_WH = 1000.0;

  private TradeoffSay() {}

  /** "3 winters", "these 3 years" where none is whole. */
  public static String weather(Tradeoff t) {
    return t.winters().isEmpty()
        ? Say.count(t.years(), "year", "years")
        : Say.count(t.winters().size(), "winter", "winters");
  }

  /** The exchange rate at the home as it stands, one sentence without its full stop. */
  public static String exchange(Tradeoff t) {
    ExchangeRate r = t.rate();
    String string = string(r), left = Say.kwh(t.map().presentWh());
    if (t.map().presentWh() < 1.0 && !t.map().hasGenerator()) {
      return "Nothing goes unserved in these "
          + weather(t)
          + ": here neither more panels nor more storage buys anything";
    }
    if (t.map().hasGenerator()) {
      return "Here "
          + string
          + " saves "
          + hours(r.stringSavesHours())
          + " of the generator a year ("
          + Say.number(r.stringSavesL(), 0)
          + " l), one more pack ("
          + Say.kwh(r.packWh())
          + ") "
          + Say.number(r.packSavesHours(), 0)
          + " ("
          + Say.number(r.packSavesL(), 0)
          + " l)";
    }
    if (r.isStringWorthNothing() && r.isPackWorthNothing()) {
      return "Here "
          + string
          + " and one more pack are both worth nothing that counts: "
          + left
          + " a year stays unserved with either";
    }
    if (r.stringModules() == 0 || r.isStringWorthNothing()) {
      return "Here more panels are worth nothing; one more pack ("
          + Say.kwh(r.packWh())
          + ") saves "
          + Say.kwh(r.packSavesWh())
          + " of the "
          + left
          + " that go unserved in a year";
    }
    if (r.isPackWorthNothing()) {
      return "Here a larger bank is worth nothing; "
          + string
          + " saves "
          + Say.kwh(r.stringSavesWh())
          + " of the "
          + left
          + " that go unserved in a year";
    }
    if (Double.isInfinite(r.stringWorthWh())) {
      return "Here "
          + string
          + " saves "
          + Say.kwh(r.stringSavesWh())
          + " a year, more than any bank of this map can";
    }
    return "Here " + string + " is worth " + Say.kwh(r.stringWorthWh()) + " of bank";
  }

  private static String hours(double hours) {
    return Say.hours((int) Math.round(hours));
  }

  /** What is best for the home as it stands, a clause; empty where the rest says it. */
  private static String best(Tradeoff t) {
    Zone now = t.helps().present();
    boolean isBoth = !t.rate().isStringWorthNothing() && !t.rate().isPackWorthNothing();
    if (now == Zone.NEITHER || !(isBoth || t.map().hasGenerator()) || !t.helps().isPerMoney()) {
      return "";
    }
    return ", and for the same money "
        + bestNow(t)
        + (t.controllerCostBelow() == null ? "" : ", the controller not counted");
  }

  /** What helps more at the home as it stands. */
  public static String bestNow(Tradeoff t) {
    boolean isRefused = t.helps().present() == Zone.PANELS && !t.rate().isStringBuildable();
    return t.helps().isAlike()
        ? "both help alike"
        : isRefused
            ? "panels would help more, were the string not refused,"
            : helps(t.helps().present());
  }

  /** Nominal energy of a bank: "30.7 kWh", as it was bought. */
  public static String storage(double wh) {
    return Show.trimmed(wh / 1000.0, 1) + " kWh";
  }

  /** "one more string (6 panels)". */
  public static String string(ExchangeRate r) {
    return "one more string (" + Say.count(r.stringModules(), "panel", "panels") + ")";
  }

  /** Where more panels, beside this bank, no longer help; empty if that is not on the map. */
  public static String panelsEnd(Tradeoff t) {
    ExchangeRate r = t.rate();
    TradeoffAxes axes = t.map().axes();
    if (r.panelsHelpTo() == 0
        || t.map().presentWh() < 1.0
        || r.panelsHelpTo() <= axes.modules(axes.presentPanels())) {
      return "";
    }
    return "beyond "
        + r.panelsHelpTo()
        + " panels another string "
        + nothing(r)
        + (r.leftWithAllPanelsWh() >= r.leastThatCountsWh()
            ? ": "
                + Say.kwh(r.leftWithAllPanelsWh())
                + " a year are left then, in spells darker than any panels make up for"
            : ": then next to nothing goes unserved");
  }

  /** Where a larger bank, beside these panels, no longer helps; empty if not on the map. */
  public static String storageEnd(Tradeoff t) {
    ExchangeRate r = t.rate();
    TradeoffAxes axes = t.map().axes();
    if (r.storageHelpsToWh() <= axes.storageWh(axes.presentBank()) || t.map().presentWh() < 1.0) {
      return "";
    }
    return "beyond "
        + Say.kwh(r.storageHelpsToWh())
        + " another pack "
        + nothing(r)
        + (r.leftWithAllStorageWh() >= r.leastThatCountsWh()
            ? ": "
                + Say.kwh(r.leftWithAllStorageWh())
                + " a year are left then, because there is no sun to store"
            : ": then next to nothing goes unserved");
  }

  /** What counts as nothing is told where it is more than a kWh a year. */
  private static String nothing(ExchangeRate r) {
    return r.leastThatCountsWh() <= TELLING_WH
        ? "is worth nothing"
        : "saves less than " + Say.kwh(r.leastThatCountsWh()) + " a year";
  }

  /** A sentence, with the finding. */
  static String title(Tradeoff t) {
    String first = exchange(t), end = panelsEnd(t);
    int colon = end.indexOf(':');
    boolean isSaid = end.isEmpty() || first.contains("worth nothing");
    if (t.rate().stringModules() > 0
        && !t.rate().isStringBuildable()
        && !first.contains("worth nothing")) {
      return first + ", but the string rules refuse it.";
    }
    return first + (isSaid ? best(t) : "; " + (colon < 0 ? end : end.substring(0, colon))) + ".";
  }

  /** "24 modules and 30.7 kWh". */
  public static String point(TradeoffAxes axes, int panel, int bank) {
    return Say.count(axes.modules(panel), "module", "modules")
        + " and "
        + storage(axes.storageWh(bank));
  }

  /** "6 packs", "6.3 packs". */
  public static String packs(TradeoffAxes axes, int bank) {
    double packs = axes.storageWh(bank) / axes.packWh();
    return Show.trimmed(packs, 1) + (Math.abs(packs - 1.0) < 0.05 ? " pack" : " packs");
  }

  /** What helps most in a zone. */
  public static String helps(Zone zone) {
    return switch (zone) {
      case PANELS -> "panels help more";
      case STORAGE -> "storage helps more";
      case NEITHER -> "neither helps";
    };
  }
}
