package greyspell.report;

import greyspell.chart.Say;
import greyspell.outcome.Band;
import greyspell.outcome.ExtremeTail;
import greyspell.outcome.ReturnCurve;
import greyspell.outcome.SpellClimate;
import greyspell.outcome.SpellClimate.HowOften;
import greyspell.outcome.WinterBands;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterRecord;
import greyspell.outcome.WinterSum;
import greyspell.report.Page.Row;
import greyspell.report.Page.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** The tables of many winters, for the terminal and the page. */
final class ManyTables {
  private static final String NOT_TOLD = "–";
  private static final String NONE = "none";
  private static final int MONTHS = 12;

  private final WinterBook book;
  private final WinterBands bands;
  private final SpellClimate climate;

  ManyTables(WinterBook book) {
    this.book = book;
    bands = WinterBands.of(book);
    climate = SpellClimate.of(book);
  }

  /** What lies in the middle, and how far winters stray. */
  Table bands() {
    var rows = new ArrayList<Row>();
    add(rows, "Not served, kWh", bands.wh(WinterSum.UNMET), Say::kwhCell);
    add(rows, "Hours in which something was not served", bands.unmetHours(), ManyTables::whole);
    add(rows, "Days with such an hour", bands.unmetDays(), ManyTables::whole);
    add(rows, "Longest shortfall, hours", bands.longestShortfallHours(), ManyTables::whole);
    add(rows, "Lowest charge, %", bands.lowestShare(), share -> whole(share * 100.0));
    add(rows, "From the panels to the bus, kWh", bands.wh(WinterSum.SOLAR_USED), Say::kwhCell);
    addUsed(rows, "From the second source, kWh", WinterSum.OTHER_USED);
    addUsed(rows, "From the generator, kWh", WinterSum.GENERATOR);
    if (bands.generatorHours().high() > 0.0) {
      add(rows, "Generator, hours", bands.generatorHours(), ManyTables::whole);
    }
    addUsed(rows, "Let go by rule, kWh", WinterSum.LET_GO);
    return new Table(
        List.of("Of a winter and the year around it", "1 in 10 below", "Usual", "1 in 10 above"),
        rows);
  }

  private void addUsed(List<Row> rows, String word, WinterSum sum) {
    Band band = bands.wh(sum);
    if (band.high() > 0.0) {
      add(rows, word, band, Say::kwhCell);
    }
  }

  private static void add(List<Row> rows, String word, Band band, DoubleFunction<String> say) {
    rows.add(
        new Row(
            List.of(word, say.apply(band.low()), say.apply(band.middle()), say.apply(band.high())),
            false));
  }

  private static String whole(double value) {
    return Say.number(value, 0);
  }

  /** Need, sun and shortfall month by month. */
  Table months() {
    var rows = new ArrayList<Row>();
    for (int k = 0; k < MONTHS; k++) {
      int month = (book.isNorthern() ? k + 6 : k) % MONTHS + 1;
      Band unmet = bands.wh(WinterSum.UNMET, month), hours = bands.unmetHours(month);
      rows.add(
          new Row(
              List.of(
                  Say.month(month),
                  Say.kwhCell(bands.wh(WinterSum.LOAD, month).middle()),
                  spread(bands.wh(WinterSum.SOLAR_USED, month), Say::kwhCell),
                  spread(unmet, Say::kwhCell),
                  spread(hours, ManyTables::whole)),
              unmet.high() > 0.0));
    }
    return new Table(
        List.of("Month", "House asked, kWh", "Panels gave, kWh", "Not served, kWh", "Hours of it"),
        rows);
  }

  /** "3.1 · 4.0 · 5.2". */
  private static String spread(Band band, DoubleFunction<String> say) {
    if (band.high() == 0.0) {
      return "0";
    }
    return say.apply(band.low())
        + " · "
        + say.apply(band.middle())
        + " · "
        + say.apply(band.high());
  }

  /** What is reached or passed once in so many winters. */
  Table returns() {
    var head = new ArrayList<String>();
    head.add("Reached once in");
    for (int onceIn : SpellClimate.ONCE_IN) {
      head.add(onceIn + " winters");
    }
    var rows = new ArrayList<Row>();
    rows.add(counted("Longest grey spell, days", climate.length(), ManyTables::whole));
    addTail(rows, climate.length(), days -> Say.number(days, 1));
    rows.add(counted("Deepest grey spell, kWh short", climate.depth(), Say::kwhCell));
    addTail(rows, climate.depth(), wh -> Say.number(wh / 1000.0, 1));
    rows.add(counted("Bank that rides through, kWh usable", climate.bank(), Say::kwhCell));
    rows.add(mayPass());
    ExtremeTail tail = climate.bank().tail();
    if (tail != null) {
      rows.add(fitted("By the fitted tail, kWh", tail::value));
      rows.add(fitted("  from, 90 % band", tail::low));
      rows.add(fitted("  to", tail::high));
    }
    return new Table(head, rows);
  }

  /** A spell's tail in one row, with its band: what is designed for is the bank. */
  private static void addTail(List<Row> rows, ReturnCurve curve, DoubleFunction<String> say) {
    ExtremeTail tail = curve.tail();
    if (tail == null) {
      return;
    }
    var cells = new ArrayList<String>();
    cells.add(curve.isTailDoubtful() ? "  fitted, 90 % band; fits badly" : "  fitted, 90 % band");
    for (int onceIn : SpellClimate.ONCE_IN) {
      cells.add(
          say.apply(Math.max(0.0, tail.low(onceIn)))
              + " to "
              + say.apply(Math.max(0.0, tail.high(onceIn))));
    }
    rows.add(new Row(cells, false));
  }

  private Row counted(String word, ReturnCurve curve, DoubleFunction<String> say) {
    var cells = new ArrayList<String>();
    cells.add(word);
    for (int onceIn : SpellClimate.ONCE_IN) {
      double value = curve.counted(onceIn);
      String size = value < Double.POSITIVE_INFINITY ? say.apply(value) : NONE;
      cells.add(curve.mayPass(onceIn) > 0 ? size : NOT_TOLD);
    }
    return new Row(cells, curve == climate.bank());
  }

  private Row mayPass() {
    var cells = new ArrayList<String>();
    cells.add("  winters that it still fails");
    for (int onceIn : SpellClimate.ONCE_IN) {
      int fail = climate.bank().mayPass(onceIn);
      boolean isThere = climate.bank().counted(onceIn) < Double.POSITIVE_INFINITY;
      cells.add(fail > 0 && isThere ? ofAll(fail) : NOT_TOLD);
    }
    return new Row(cells, false);
  }

  private String ofAll(int winters) {
    return Say.number(winters, 0) + " of " + Say.number(book.count(), 0);
  }

  private static Row fitted(String word, DoubleFunction<Double> size) {
    var cells = new ArrayList<String>();
    cells.add(word);
    for (int onceIn : SpellClimate.ONCE_IN) {
      cells.add(Say.kwhCell(Math.max(0.0, size.apply(onceIn))));
    }
    return new Row(cells, false);
  }

  /** What the tail's line may be worth; empty if there is nothing to say. */
  String tailNote() {
    ExtremeTail tail = climate.bank().tail();
    if (tail == null) {
      return book.count() < ExtremeTail.LEAST_WINTERS
          ? "Of fewer than " + ExtremeTail.LEAST_WINTERS + " winters no tail is fitted."
          : climate.bank().value(0) < Double.POSITIVE_INFINITY
              ? ""
              : "Where a winter needs more than any bank of these packs gives, no tail of banks is fitted.";
    }
    return "The tail is "
        + (tail.shape() == 0.0 ? "Gumbel's" : "a generalized extreme-value distribution")
        + ", fitted by L-moments; its band counts the luck of "
        + WinterVerdict.winters(book.count())
        + " only."
        + (climate.bank().isTailDoubtful()
            ? " These winters do not follow it well: go by the counted row, and take the fitted one as no more than"
                + " a hint."
            : "");
  }

  Table byLength() {
    return howOften(
        "Grey spells of at least", climate.byLength(), d -> Say.count((int) d, "day", "days"));
  }

  Table byDepth() {
    return howOften("Grey spells short by at least", climate.byDepth(), Say::kwh);
  }

  private Table howOften(String head, List<HowOften> sizes, DoubleFunction<String> say) {
    var rows = new ArrayList<Row>();
    for (HowOften size : sizes) {
      rows.add(
          new Row(
              List.of(
                  say.apply(size.least()),
                  Say.number((double) size.spells() / book.count(), 1),
                  ofAll(size.winters())),
              false));
    }
    return new Table(List.of(head, "A winter", "In winters"), rows);
  }

  /** The winters by name, worst first; at most so many, the one shown in full marked. */
  Table worst(int most, @Nullable WinterRecord shown) {
    var rows = new ArrayList<Row>();
    List<WinterRecord> worst = book.worstFirst();
    for (WinterRecord w : worst.subList(0, Math.min(most, worst.size()))) {
      rows.add(row(w, w == shown));
    }
    if (shown != null && worst.indexOf(shown) >= most) {
      rows.add(row(shown, true));
    }
    return new Table(
        List.of(
            "Winter",
            "Not served, kWh",
            "Hours",
            "Longest, h",
            "Lowest charge, %",
            "Longest grey spell, days",
            "Bank to ride through, kWh"),
        rows);
  }

  private static Row row(WinterRecord w, boolean isMarked) {
    double bankWh = w.ridingBank().leastWh();
    return new Row(
        List.of(
            w.name(),
            Say.kwhCell(w.wh(WinterSum.UNMET)),
            whole(w.unmetHours()),
            whole(w.longestShortfall().hours()),
            whole(w.lowestShareOfAll() * 100.0),
            whole(w.spells().stream().mapToInt(s -> s.days()).max().orElse(0)),
            bankWh < Double.POSITIVE_INFINITY ? Say.kwhCell(bankWh) : NONE),
        isMarked);
  }
}
