package greyspell.report;

import greyspell.chart.Say;
import greyspell.outcome.Figures;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import greyspell.study.Besides.LoadAnswers;
import greyspell.study.StudyResult;
import greyspell.study.Unmet;
import java.util.ArrayList;
import java.util.List;

/** What the runs with one thing changed say: 10 W less, and loads that are not sure. */
final class Answers {
  private static final double LEAST_TOLD_WH = 50.0;
  private static final double STEP_W = 10.0;

  private final StudyResult result;
  private final boolean hasGenerator;

  Answers(StudyResult result) {
    this.result = result;
    hasGenerator = result.scenario().generator() != null;
  }

  /** The run itself, as an average year. */
  Unmet likely() {
    Figures f = result.outcome().total();
    double years = Facts.calendar(result).years();
    return new Unmet(
        f.unmetWh() / years,
        f.unmetHours() / years,
        f.beyond().shedWh() / years,
        f.beyond().generatorWh() / years);
  }

  /** "3.1 kWh of shortfall and 5.2 kWh of generator". */
  String tenWattsLess() {
    Unmet now = likely();
    Unmet less = result.besides().tenWattsLess();
    var saved = new ArrayList<String>();
    save(saved, now.wh() - less.wh(), "of shortfall");
    save(saved, now.letGoWh() - less.letGoWh(), "let go");
    save(saved, now.generatorWh() - less.generatorWh(), "of generator");
    String all = Facts.alwaysOn(result).meanW() < STEP_W ? " (it is less than 10 W in all)" : "";
    return saved.isEmpty() ? "no shortfall in this weather" : Say.list(saved) + all;
  }

  private static void save(List<String> saved, double wh, String what) {
    if (wh >= LEAST_TOLD_WH) {
      saved.add(Say.kwh(wh) + " " + what);
    }
  }

  boolean isRanged() {
    return result.besides().loads() != null;
  }

  /** "between 3.1 and 98 kWh short a year (likely 44)"; empty where all is measured. */
  String range() {
    LoadAnswers loads = result.besides().loads();
    if (loads == null) {
      return "";
    }
    return loads.high().wh() == 0.0
        ? "0 kWh short even with all of them at the high end"
            + (hasGenerator
                ? ", by "
                    + Say.kwhNumber(loads.low().generatorWh())
                    + " to "
                    + Say.kwh(loads.high().generatorWh())
                    + " of generator"
                : "")
        : "between "
            + Say.kwhNumber(loads.low().wh())
            + " and "
            + Say.kwh(loads.high().wh())
            + " short a year (likely "
            + Say.kwhNumber(loads.likely().wh())
            + ")";
  }

  /** "39 to 63 kWh short a year by hob alone"; empty where none moves the answer. */
  String measureFirst() {
    LoadAnswers loads = result.besides().loads();
    return loads == null || loads.narrowest() == null
        ? ""
        : Say.kwhNumber(loads.narrowestLow().wh())
            + " to "
            + Say.kwh(loads.narrowestHigh().wh())
            + " short a year by “"
            + loads.narrowest()
            + "” alone";
  }

  /** On the page, where there is room. */
  List<String> sentences() {
    LoadAnswers loads = result.besides().loads();
    if (loads == null) {
      return List.of("Every load of the scenario is stated without a range, so none was tried.");
    }
    var out = new ArrayList<String>();
    out.add(
        "The loads are known only as well as their evidence says. "
            + "By the low and the high ends of their ranges the house is "
            + range()
            + (loads.high().wh() == 0.0 && hasGenerator ? " a year." : "."));
    String narrowest = loads.narrowest();
    out.add(
        narrowest == null
            ? "No single one of the least certain loads moves that answer by itself."
            : "Measuring “"
                + narrowest
                + "” would narrow the answer most: it alone moves it from "
                + Say.kwhNumber(loads.narrowestLow().wh())
                + " to "
                + Say.kwh(loads.narrowestHigh().wh())
                + " a year. A plug-in meter for a week, in winter, is enough for most appliances.");
    return List.copyOf(out);
  }

  /** No rows where all is measured. */
  Table table() {
    var head = new ArrayList<String>(List.of("Loads", "Not served, kWh a year", "Hours"));
    boolean isRuled = !result.scenario().load().policy().isIdle();
    if (isRuled) {
      head.add("Let go, kWh");
    }
    if (hasGenerator) {
      head.add("Generator, kWh");
    }
    var rows = new ArrayList<Row>();
    LoadAnswers loads = result.besides().loads();
    if (loads != null) {
      rows.add(row("all at the low end", loads.low(), isRuled, false));
      rows.add(row("as stated (likely)", loads.likely(), isRuled, true));
      rows.add(row("all at the high end", loads.high(), isRuled, false));
      if (loads.narrowest() != null) {
        rows.add(row("only " + loads.narrowest() + ", low", loads.narrowestLow(), isRuled, false));
        rows.add(
            row("only " + loads.narrowest() + ", high", loads.narrowestHigh(), isRuled, false));
      }
    }
    return new Table(head, rows);
  }

  private Row row(String name, Unmet unmet, boolean isRuled, boolean isMarked) {
    var cells = new ArrayList<String>();
    cells.add(name);
    cells.add(Say.kwhCell(unmet.wh()));
    cells.add(Say.number(unmet.unmetHours(), 0));
    if (isRuled) {
      cells.add(Say.kwhCell(unmet.letGoWh()));
    }
    if (hasGenerator) {
      cells.add(Say.kwhCell(unmet.generatorWh()));
    }
    return new Row(cells, isMarked);
  }
}
