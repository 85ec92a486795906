package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.electrical.Arrangement;
import greyspell.electrical.Finding;
import greyspell.electrical.Finding.Severity;
import greyspell.electrical.StringJudgement;
import greyspell.quantity.Show;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the modules are wired, and the voltages of a string from the hottest afternoon to the coldest
 * morning, held against the controller's window and the lowest limit: the best arrangement and the
 * ones beside it.
 */
public final class StringsPicture extends Picture {
  private static final double ROW = 96.0;
  private static final double HEAD = 44.0;
  private static final double FOOT = 40.0;
  private static final double DRAWING = 180.0;
  private static final double LEFT = Look.MARGIN + DRAWING + 40.0;
  private static final double RIGHT = Look.WIDTH - Look.MARGIN - 34.0;
  private static final double BAR = 18.0;
  private static final double WIDEST_BOX = 15.0;
  private static final double TALLEST_BOX = 20.0;
  private static final double BOX_GAP = 0.22;
  private static final int WINDOW = 0xE6EEDD;
  private static final int MOST_SHOWN = 4;

  private final StringJudgement judged;
  private final List<Arrangement> shown;
  private final double mostV;

  private StringsPicture(
      String title,
      String note,
      String description,
      StringJudgement judged,
      List<Arrangement> shown) {
    super("strings", title, note, description, HEAD + shown.size() * ROW + FOOT);
    this.judged = judged;
    this.shown = List.copyOf(shown);
    this.mostV = axisEnd(judged, shown);
  }

  /** Null if nothing was judged. */
  public static @Nullable StringsPicture of(StringJudgement judged) {
    if (!judged.isJudged() || judged.arrangements().isEmpty()) {
      return null;
    }
    List<Arrangement> shown = shown(judged);
    Double low = judged.rules().recordLowC();
    Double high = judged.rules().recordHighC();
    String note =
        "Each box is a module, each row a string. Bar: solid from the hottest afternoon ("
            + Show.temperature(high == null ? Double.NaN : high)
            + ") to the coldest morning ("
            + Show.temperature(low == null ? Double.NaN : low)
            + ") at work, hatched up to open circuit on that morning. Pale band: the voltages"
            + " between what the controller needs and where its tracking ends."
            + Look.ESTIMATE_ONLY;
    return new StringsPicture(title(judged), note, describe(shown), judged, shown);
  }

  private static String title(StringJudgement judged) {
    Arrangement best = judged.best();
    if (best == null) {
      int count = judged.arrangements().size();
      return (count == 1 ? "No arrangement of " : "None of " + count + " arrangements of ")
          + judged.module().name()
          + " suits "
          + judged.controller().name();
    }
    Double marginShare = best.marginShare();
    return "Best: "
        + best.words()
        + "; the coldest morning brings "
        + Show.voltage(best.coldOpenV())
        + (marginShare == null ? "" : ", " + Show.percent(marginShare) + " below the limit");
  }

  /** The best, its neighbours with as many modules, then others; from short strings to long. */
  static List<Arrangement> shown(StringJudgement judged) {
    var same = new ArrayList<Arrangement>();
    Arrangement best = judged.best();
    Arrangement first = best == null ? judged.arrangements().get(0) : best;
    for (Arrangement a : judged.arrangements()) {
      if (a.modules() == first.modules()) {
        same.add(0, a);
      }
    }
    int at = best == null ? same.size() / 2 : same.indexOf(best);
    int from = Math.max(0, Math.min(at - 1, same.size() - MOST_SHOWN));
    int to = Math.min(same.size(), from + MOST_SHOWN);
    // A string far beyond every limit would squeeze the others into a corner of the axis.
    while (to - from > 2 && to - 1 > at + 1) {
      to--;
    }
    return same.subList(from, to);
  }

  private static double axisEnd(StringJudgement judged, List<Arrangement> shown) {
    double most = 0.0;
    for (Arrangement a : shown) {
      most = Math.max(most, a.coldOpenV());
      Double limitV = a.limitV();
      most = limitV == null ? most : Math.max(most, limitV);
    }
    Double highest = judged.controller().highestTrackingV();
    most = highest == null ? most : Math.max(most, highest);
    double step = Look.step(most);
    return Math.ceil(most * 1.04 / step) * step;
  }

  private static String describe(List<Arrangement> shown) {
    var text = new StringBuilder();
    for (Arrangement a : shown) {
      Double limitV = a.limitV();
      text.append(a.words())
          .append(": works at ")
          .append(Show.voltage(a.hotPowerV()))
          .append(" to ")
          .append(Show.voltage(a.coldPowerV()))
          .append(", open circuit up to ")
          .append(Show.voltage(a.coldOpenV()))
          .append(limitV == null ? "" : ", limit " + Show.voltage(limitV))
          .append(", ")
          .append(a.verdict().word())
          .append(". ");
    }
    return text.toString().strip();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double bottom = top + HEAD + shown.size() * ROW;
    for (int k = 0; k < shown.size(); k++) {
      double y = top + HEAD + k * ROW;
      canvas.line(Look.MARGIN, y, RIGHT, y, Look.GRID, 1.0, false);
      modules(canvas, y, shown.get(k));
      voltages(canvas, y + 36.0, shown.get(k));
      words(canvas, y, shown.get(k));
    }
    axis(canvas, bottom);
    names(canvas, top + HEAD);
  }

  private double x(double voltageV) {
    return LEFT + (RIGHT - LEFT) * Math.min(voltageV, mostV) / mostV;
  }

  private void axis(Canvas canvas, double bottom) {
    canvas.line(LEFT, bottom, RIGHT, bottom, Look.AXIS, 1.0, false);
    double step = Look.step(mostV);
    for (double v = 0.0; v <= mostV * 1.0001; v += step) {
      canvas.line(x(v), bottom, x(v), bottom + 5.0, Look.AXIS, 1.0, false);
      canvas.text(
          x(v), bottom + 18.0, Show.voltage(v), Look.TICK, false, Look.FAINT_INK, Anchor.MIDDLE);
    }
  }

  /** What the lines through the rows are, at their tops. */
  private void names(Canvas canvas, double y) {
    Arrangement any = shown.get(0);
    double needed = x(any.neededV());
    canvas.line(needed, y - 8.0, needed, y, Look.CHARGE_EDGE, 1.6, false);
    canvas.text(
        needed,
        y - 12.0,
        "needs " + Show.voltage(any.neededV()),
        Look.LABEL,
        false,
        Look.INK,
        Anchor.START);
    Double limitV = any.limitV();
    if (limitV != null) {
      double limit = x(limitV);
      canvas.line(limit, y - 24.0, limit, y, Look.UNMET, 2.4, false);
      canvas.text(
          limit,
          y - 28.0,
          "limit of the " + any.limitName() + " " + Show.voltage(limitV),
          Look.LABEL,
          true,
          Look.INK,
          limit - LEFT < 240.0 ? Anchor.START : Anchor.END);
    }
  }

  /** Window, bar and limits of one row, then the numbers over them. */
  private void voltages(Canvas canvas, double y, Arrangement a) {
    Double highestV = judged.controller().highestTrackingV();
    Double limitV = a.limitV();
    double needed = x(a.neededV());
    double end = x(highestV != null ? highestV : limitV != null ? limitV : mostV);
    double stripY = y - 5.0;
    double strip = BAR + 10.0;
    if (end > needed) {
      canvas.rect(needed, stripY, end - needed, strip, WINDOW);
    }
    double hot = x(a.hotPowerV());
    double cold = x(a.coldPowerV());
    double open = x(a.coldOpenV());
    canvas.rect(hot, y, Math.max(1.5, cold - hot), BAR, Look.HOUSE);
    canvas.rect(cold, y, Math.max(1.0, open - cold), BAR, Look.PAPER);
    boolean isTooHigh = limitV != null && a.coldOpenV() > limitV;
    canvas.hatch(cold, y, open - cold, BAR, 5.0, isTooHigh ? Look.UNMET : Look.HOUSE, false);
    canvas.line(needed, stripY, needed, stripY + strip, Look.CHARGE_EDGE, 1.6, false);
    if (limitV != null) {
      canvas.line(x(limitV), stripY, x(limitV), stripY + strip, Look.UNMET, 2.4, false);
    }
    plate(canvas, hot - 4.0, y, Show.voltage(a.hotPowerV()), false, Anchor.END);
    plate(canvas, open + 4.0, y, Show.voltage(a.coldOpenV()), true, Anchor.START);
  }

  /** A number on a plate, so that a line behind it does not cross its digits. */
  private static void plate(
      Canvas canvas, double x, double y, String words, boolean isBold, Anchor to) {
    double wide = TextWidth.of(words, Look.TICK, isBold) + 2.0;
    canvas.rect(to == Anchor.END ? x - wide : x - 1.0, y + 2.0, wide, BAR - 4.0, Look.PAPER);
    canvas.text(x, y + 13.0, words, Look.TICK, isBold, Look.INK, to);
  }

  private void words(Canvas canvas, double y, Arrangement a) {
    canvas.text(
        LEFT,
        y + 22.0,
        verdict(a),
        Look.LABEL,
        judged.isBest(a) || a.verdict().isRefused(),
        a.verdict().isRefused() ? Look.UNMET : Look.INK,
        Anchor.START);
    Double share = a.controllerShare();
    canvas.text(
        LEFT,
        y + 78.0,
        Show.current(a.operatingA())
            + " at work, "
            + Show.current(a.circuitA())
            + " for bright sun"
            + (share == null
                ? ""
                : "; array " + Show.percent(share) + " of the controller's power"),
        Look.TICK,
        false,
        Look.FAINT_INK,
        Anchor.START);
  }

  private String verdict(Arrangement a) {
    var subjects = new ArrayList<String>();
    for (Finding f : a.findings()) {
      if (f.severity() == a.verdict() && f.severity() != Severity.PASS) {
        subjects.add(f.subject());
      }
    }
    String words = (judged.isBest(a) ? "best, " : "") + a.verdict().word();
    if (subjects.isEmpty()) {
      return words;
    }
    String full = words + ": " + String.join("; ", subjects);
    return TextWidth.of(full, Look.LABEL, true) < RIGHT - LEFT
        ? full
        : words
            + ": "
            + subjects.get(0)
            + (subjects.size() > 1 ? " and " + (subjects.size() - 1) + " more" : "");
  }

  private void modules(Canvas canvas, double y, Arrangement a) {
    canvas.text(
        Look.MARGIN, y + 18.0, a.words(), Look.LABEL, judged.isBest(a), Look.INK, Anchor.START);
    double across = Math.min(WIDEST_BOX, DRAWING / a.inSeries());
    double down = Math.min(TALLEST_BOX, (ROW - 34.0) / a.inParallel());
    double wide = across * (1.0 - BOX_GAP);
    double tall = down * (1.0 - BOX_GAP);
    for (int row = 0; row < a.inParallel(); row++) {
      double boxY = y + 26.0 + row * down;
      double middle = boxY + tall * 0.5;
      canvas.line(
          Look.MARGIN,
          middle,
          Look.MARGIN + a.inSeries() * across,
          middle,
          Look.FAINT_INK,
          1.0,
          false);
      for (int k = 0; k < a.inSeries(); k++) {
        canvas.rect(
            Look.MARGIN + k * across + across * BOX_GAP * 0.5, boxY, wide, tall, Look.HOUSE);
      }
    }
  }
}
