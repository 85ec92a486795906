package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.chart.LabelPlacer.Box;
import greyspell.outcome.ExtremeTail;
import greyspell.outcome.ReturnCurve;
import greyspell.outcome.SpellClimate;
import greyspell.outcome.WinterBook;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The bank that each winter would have needed, against how often such a winter returns. */
final class ReturnPicture extends Picture {
  private static final double LEFT = 52.0;
  private static final double WH_PER_KWH = 1000.0;
  private static final double[] TICKS = {
    2, 10, 5, 100, 20, 50, 1000, 200, 500, 1.1, 1.01, 1.5, 10_000, 2000, 5000
  };
  private static final int LEAST_TO = 20;
  private static final int STEPS = 60;
  private static final int TAIL_PALE = 0xDCE6EC;

  private final ReturnCurve curve;
  private final double usableWh;
  private final double fromY;
  private final double toY;
  private final int beyond;

  private ReturnPicture(
      String title, String note, String description, ReturnCurve curve, double usableWh) {
    super("winter-banks", title, note, description, 330.0);
    this.curve = curve;
    this.usableWh = usableWh;
    int n = curve.winters(), infinite = 0;
    while (infinite < n && !(curve.value(infinite) < Double.POSITIVE_INFINITY)) {
      infinite++;
    }
    beyond = infinite;
    fromY = ExtremeTail.reduced(curve.onceIn(n - 1)) - 0.2;
    toY = ExtremeTail.reduced(Math.max(LEAST_TO, curve.onceIn(0) * 1.6));
  }

  static ReturnPicture of(WinterBook book) {
    ReturnCurve curve = SpellClimate.of(book).bank();
    int n = curve.winters(), mayPass = curve.mayPass(WinterBook.SHOWN_ONCE_IN);
    double needWh = curve.counted(WinterBook.SHOWN_ONCE_IN);
    String through =
        mayPass == 0
            ? "all " + Say.number(n, 0) + " winters"
            : Say.number(n - mayPass, 0) + " of " + Say.number(n, 0) + " winters";
    String title =
        (needWh < Double.POSITIVE_INFINITY
                ? "A bank of " + Say.kwh(needWh) + " rides through " + through
                : "No bank rides through " + through)
            + "; this one has "
            + Say.kwh(book.usableBankWh());
    String note =
        "Each dot is a winter: the usable bank that, full when it began, would have carried it without a"
            + " generator"
            + (book.isRidingExact() ? "" : ", roughly")
            + "."
            + (curve.tail() == null
                ? ""
                : curve.isTailDoubtful()
                    ? " Line: fitted tail, which these winters do not follow well; pale: its 90 % band."
                    : " Line: fitted tail; pale: its 90 % band, for the luck of so many winters.");
    return new ReturnPicture(title, note, describe(curve), curve, book.usableBankWh());
  }

  private static String describe(ReturnCurve curve) {
    var parts = new ArrayList<String>();
    ExtremeTail tail = curve.tail();
    for (int onceIn : SpellClimate.ONCE_IN) {
      String counted =
          curve.mayPass(onceIn) > 0 && curve.counted(onceIn) < Double.POSITIVE_INFINITY
              ? Say.kwh(curve.counted(onceIn)) + " by count"
              : "";
      String fitted = tail == null ? "" : Say.kwh(tail.value(onceIn)) + " by the fitted tail";
      String both =
          String.join(", ", List.of(counted, fitted).stream().filter(s -> !s.isEmpty()).toList());
      if (!both.isEmpty()) {
        parts.add("once in " + onceIn + " winters " + both);
      }
    }
    return parts.isEmpty()
        ? "Usable bank that is needed: more than any gives, or too few winters to tell."
        : "Usable bank that is needed or more: " + String.join("; ", parts) + ".";
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double right = Look.WIDTH - Look.MARGIN, plotTop = top + 24.0, bottom = top + height - 46.0;
    ExtremeTail tail = curve.tail();
    double mostWh = Math.max(usableWh, beyond < curve.winters() ? curve.value(beyond) : 0.0);
    if (tail != null) {
      mostWh = Math.max(mostWh, tail.value(onceIn(toY)) * 1.02);
    }
    mostWh = Math.max(mostWh, 1.0) * 1.08;
    double perWh = (bottom - plotTop) / mostWh, perY = (right - LEFT) / (toY - fromY);
    if (tail != null) {
      band(canvas, tail, plotTop, bottom, perWh, perY);
    }
    axes(canvas, plotTop, bottom, mostWh, perWh, perY);
    if (tail != null) {
      tailLine(canvas, tail, bottom, perWh, perY);
    }
    var placer = new LabelPlacer(new Box(LEFT + 2.0, plotTop - 12.0, right, bottom - 2.0));
    double lineY = bottom - usableWh * perWh;
    canvas.line(LEFT, lineY, right, lineY, Look.CHARGE_EDGE, 2.0, false);
    placer.take(new Box(LEFT, lineY - 2.0, right, lineY + 2.0));
    dots(canvas, placer, bottom, perWh, perY);
    takeTail(placer, tail, bottom, perWh, perY);
    labels(canvas, placer, plotTop, bottom, lineY, perWh, perY);
  }

  private double x(double onceIn, double perY) {
    return LEFT + (ExtremeTail.reduced(onceIn) - fromY) * perY;
  }

  private static double onceIn(double y) {
    return 1.0 / -Math.expm1(-Math.exp(-y));
  }

  private double tailY(int step) {
    return fromY + (toY - fromY) * step / STEPS;
  }

  private void band(
      Canvas canvas, ExtremeTail tail, double plotTop, double bottom, double perWh, double perY) {
    var xs = new double[2 * (STEPS + 1)];
    var ys = new double[2 * (STEPS + 1)];
    for (int k = 0; k <= STEPS; k++) {
      double onceIn = onceIn(tailY(k)), at = LEFT + (tailY(k) - fromY) * perY;
      xs[k] = at;
      ys[k] = Math.max(plotTop, Math.min(bottom, bottom - tail.high(onceIn) * perWh));
      xs[2 * STEPS + 1 - k] = at;
      ys[2 * STEPS + 1 - k] =
          Math.max(plotTop, Math.min(bottom, bottom - tail.low(onceIn) * perWh));
    }
    canvas.polygon(xs, ys, xs.length, TAIL_PALE);
  }

  private void tailLine(Canvas canvas, ExtremeTail tail, double bottom, double perWh, double perY) {
    var xs = new double[STEPS + 1];
    var ys = new double[STEPS + 1];
    int n = 0;
    for (int k = 0; k <= STEPS; k++) {
      double wh = tail.value(onceIn(tailY(k)));
      if (wh >= 0.0) {
        xs[n] = LEFT + (tailY(k) - fromY) * perY;
        ys[n++] = bottom - wh * perWh;
      }
    }
    canvas.path(xs, ys, n, Look.HOUSE, 1.6);
  }

  private void takeTail(
      LabelPlacer placer, @Nullable ExtremeTail tail, double bottom, double perWh, double perY) {
    for (int k = 0; k <= STEPS && tail != null; k++) {
      double at = LEFT + (tailY(k) - fromY) * perY;
      double y = bottom - tail.value(onceIn(tailY(k))) * perWh;
      placer.take(new Box(at - 3.0, y - 2.0, at + 3.0, y + 2.0));
    }
  }

  private void axes(
      Canvas canvas, double plotTop, double bottom, double mostWh, double perWh, double perY) {
    double right = Look.WIDTH - Look.MARGIN, step = Look.step(mostWh / WH_PER_KWH);
    for (double kwh = 0.0; kwh * WH_PER_KWH <= mostWh; kwh += step) {
      double y = bottom - kwh * WH_PER_KWH * perWh;
      canvas.line(LEFT, y, right, y, kwh == 0.0 ? Look.AXIS : Look.GRID, 1.0, false);
      canvas.text(
          LEFT - 7.0,
          y + 4.0,
          Say.number(kwh, step < 1.0 ? 1 : 0),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.END);
    }
    var placer = new LabelPlacer(new Box(0.0, 0.0, Look.WIDTH, 2.0));
    for (double onceIn : TICKS) {
      double at = x(onceIn, perY);
      if (at >= LEFT && at <= right && placer.takeIfFree(new Box(at - 17.0, 0.0, at + 17.0, 1.0))) {
        canvas.line(at, bottom, at, bottom + 4.0, Look.AXIS, 1.0, false);
        canvas.text(
            at,
            bottom + 17.0,
            onceIn < 2.0 ? Double.toString(onceIn) : Say.number(onceIn, 0),
            Look.TICK,
            false,
            Look.FAINT_INK,
            Anchor.MIDDLE);
      }
    }
    canvas.text(
        right,
        bottom + 34.0,
        "once in so many winters",
        Look.LABEL,
        false,
        Look.FAINT_INK,
        Anchor.END);
    canvas.text(
        Look.MARGIN, plotTop - 10.0, "kWh usable", Look.TICK, false, Look.FAINT_INK, Anchor.START);
  }

  private void dots(Canvas canvas, LabelPlacer placer, double bottom, double perWh, double perY) {
    int n = curve.winters();
    double dot = n > 200 ? 2.2 : n > 40 ? 3.0 : 4.0;
    for (int rank = n - 1; rank >= beyond; rank--) {
      double at = x(curve.onceIn(rank), perY), y = bottom - curve.value(rank) * perWh;
      placer.take(new Box(at - dot, y - dot, at + dot, y + dot));
      if (curve.value(rank) > usableWh) {
        // a pale edge would wipe out the dots beside it where they stand close
        canvas.diamond(at, y, dot, Look.UNMET, n > 40 ? Look.UNMET : Look.PAPER);
      } else {
        canvas.circle(at, y, dot, 0xDDE5EA, Look.FAINT_INK, 1.1);
      }
    }
  }

  private void labels(
      Canvas canvas,
      LabelPlacer placer,
      double plotTop,
      double bottom,
      double lineY,
      double perWh,
      double perY) {
    double right = Look.WIDTH - Look.MARGIN;
    beyond(canvas, placer, plotTop, right);
    line(canvas, placer, lineY, right);
    for (int onceIn : SpellClimate.ONCE_IN) {
      double countedWh = curve.counted(onceIn);
      if (curve.mayPass(onceIn) == 0 || !(countedWh < Double.POSITIVE_INFINITY)) {
        continue;
      }
      int n = curve.winters(), rank = curve.mayPass(onceIn);
      String words =
          "carries "
              + Say.number(n - rank, 0)
              + " of "
              + Say.number(n, 0)
              + ": "
              + Say.kwh(countedWh);
      double wide = TextWidth.of(words, Look.LABEL, false);
      double at = x(curve.onceIn(rank), perY), y = bottom - countedWh * perWh;
      canvas.circle(at, y, 5.0, Look.PAPER, Look.INK, 2.0);
      Box box = placer.place(at, y, 12.0, wide, 14.0);
      if (box != null) {
        canvas.text(box.left, box.top + 11.0, words, Look.LABEL, false, Look.INK, Anchor.START);
      }
    }
  }

  private void beyond(Canvas canvas, LabelPlacer placer, double plotTop, double right) {
    if (beyond > 0) {
      String words =
          Say.count(beyond, "winter needs", "winters need") + " more than any bank gives";
      double wide = TextWidth.of(words, Look.LABEL, false);
      // where their dots would be: above all others, at the rare end
      placer.take(new Box(right - wide, plotTop - 11.0, right, plotTop + 3.0));
      canvas.text(right, plotTop, words, Look.LABEL, false, Look.UNMET, Anchor.END);
    }
  }

  private void line(Canvas canvas, LabelPlacer placer, double lineY, double right) {
    String words = "this bank, " + Say.kwh(usableWh);
    double wide = TextWidth.of(words, Look.LABEL, true);
    for (double x = right - wide - 4.0; x > LEFT; x -= 20.0) {
      for (double y : new double[] {lineY + 4.0, lineY - 18.0}) {
        if (placer.takeIfFree(new Box(x, y, x + wide, y + 14.0))) {
          canvas.text(x, y + 11.0, words, Look.LABEL, true, Look.CHARGE_EDGE, Anchor.START);
          return;
        }
      }
    }
  }
}
