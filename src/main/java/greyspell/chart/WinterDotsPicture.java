package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.chart.LabelPlacer.Box;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterRecord;
import greyspell.outcome.WinterSum;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Every winter as a dot, the mildest to the left: energy not served upward or, where all were
 * served, how low the charge fell. The winter that is shown in full wears a ring.
 */
final class WinterDotsPicture extends Picture {
  private static final double LEFT = 52.0;
  private static final int MOST_NAMES = 12;
  private static final double MOST_DOT = 4.5;
  private static final double LEAST_DOT = 2.2;
  private static final double WH_PER_KWH = 1000.0;

  private final List<WinterRecord> sorted;
  private final WinterRecord shown;
  private final boolean isDark;

  private WinterDotsPicture(
      String title,
      String note,
      String description,
      List<WinterRecord> sorted,
      WinterRecord shown,
      boolean isDark) {
    super("winters", title, note, description, 270.0);
    this.sorted = sorted;
    this.shown = shown;
    this.isDark = isDark;
  }

  static WinterDotsPicture of(WinterBook book) {
    boolean isDark = book.darkCount() > 0;
    var sorted = new ArrayList<>(book.worstFirst());
    java.util.Collections.reverse(sorted);
    if (!isDark) {
      sorted.sort(Comparator.comparingDouble(WinterRecord::lowestShareOfAll).reversed());
    }
    WinterRecord worst = sorted.get(sorted.size() - 1);
    String count = Say.count(book.count(), "winter", "winters");
    String title =
        isDark
            ? "Something went unserved in "
                + book.darkCount()
                + " of "
                + count
                + ": in the worst, "
                + worst.name()
                + ", "
                + Say.kwh(worst.wh(WinterSum.UNMET))
            : "All of "
                + count
                + " were served; in "
                + worst.name()
                + " the charge fell lowest, to "
                + Say.percent(worst.lowestShareOfAll());
    String note =
        "A dot is a winter with the year around it, the mildest to the left. "
            + (isDark
                ? "Dark diamonds: something went unserved; pale dots: nothing did. "
                : "Upward: the lowest charge of the winter in % of the usable bank. ")
            + "The ring marks the winter that is shown in full.";
    return new WinterDotsPicture(
        title, note, describe(sorted, book, isDark), List.copyOf(sorted), book.shown(), isDark);
  }

  private static String describe(List<WinterRecord> sorted, WinterBook book, boolean isDark) {
    int n = sorted.size();
    var text = new StringBuilder();
    text.append(Say.count(n, "winter", "winters")).append(", from the mildest to the worst: ");
    int[] ranks = {0, n / 2, n - 1};
    String[] words = {"the mildest ", "the middle one ", "the worst "};
    for (int k = 0; k < ranks.length; k++) {
      WinterRecord w = sorted.get(ranks[k]);
      text.append(words[k]).append(say(w, isDark)).append(k < 2 ? ", " : ". ");
    }
    return text.append("Shown in full: ").append(say(book.shown(), isDark)).append('.').toString();
  }

  private static String say(WinterRecord w, boolean isDark) {
    return w.name()
        + " "
        + (isDark
            ? Say.kwh(w.wh(WinterSum.UNMET)) + " not served"
            : Say.percent(w.lowestShareOfAll()));
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double right = Look.WIDTH - Look.MARGIN;
    double plotTop = top + 24.0, bottom = top + height - 36.0;
    ToDoubleFunction<WinterRecord> size =
        isDark ? w -> w.wh(WinterSum.UNMET) / WH_PER_KWH : w -> w.lowestShareOfAll() * 100.0;
    double most = 1e-6;
    for (WinterRecord w : sorted) {
      most = Math.max(most, size.applyAsDouble(w));
    }
    most = isDark ? most * 1.12 : 100.0;
    double perUnit = (bottom - plotTop) / most;
    scale(canvas, plotTop, bottom, most, perUnit);
    double each = (right - LEFT) / sorted.size();
    double dot = Math.max(LEAST_DOT, Math.min(MOST_DOT, each * 0.45));
    var placer = new LabelPlacer(new Box(LEFT + 2.0, plotTop - 12.0, right, bottom - 2.0));
    for (int k = 0; k < sorted.size(); k++) {
      WinterRecord w = sorted.get(k);
      double x = LEFT + (k + 0.5) * each, y = bottom - size.applyAsDouble(w) * perUnit;
      placer.take(new Box(x - dot, y - dot, x + dot, y + dot));
      if (w.isDarkFree()) {
        canvas.circle(x, y, dot, 0xDDE5EA, Look.FAINT_INK, 1.1);
      } else {
        canvas.diamond(x, y, dot, Look.UNMET, each < 8.0 ? Look.UNMET : Look.PAPER);
      }
    }
    labels(canvas, placer, bottom, perUnit, each, dot, size);
    names(canvas, bottom, each);
  }

  private void scale(Canvas canvas, double plotTop, double bottom, double most, double perUnit) {
    double right = Look.WIDTH - Look.MARGIN;
    double step = isDark ? Look.step(most) : 25.0;
    for (double value = 0.0; value <= most + 1e-9; value += step) {
      double y = bottom - value * perUnit;
      canvas.line(LEFT, y, right, y, value == 0.0 ? Look.AXIS : Look.GRID, 1.0, false);
      canvas.text(
          LEFT - 7.0,
          y + 4.0,
          Say.number(value, step < 1.0 ? 1 : 0),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.END);
    }
    canvas.text(
        Look.MARGIN,
        plotTop - 10.0,
        isDark ? "kWh not served" : "lowest charge, %",
        Look.TICK,
        false,
        Look.FAINT_INK,
        Anchor.START);
  }

  /** The ring first, then the worst and the middle one: each once. */
  private void labels(
      Canvas canvas,
      LabelPlacer placer,
      double bottom,
      double perUnit,
      double each,
      double dot,
      ToDoubleFunction<WinterRecord> size) {
    int n = sorted.size();
    int[] ranks = {sorted.indexOf(shown), n - 1, n / 2};
    for (int k = 0; k < ranks.length; k++) {
      WinterRecord w = sorted.get(ranks[k]);
      double x = LEFT + (ranks[k] + 0.5) * each, y = bottom - size.applyAsDouble(w) * perUnit;
      if (k == 0) {
        ring(canvas, x, y, dot + 4.0);
        placer.take(new Box(x - dot - 5.0, y - dot - 5.0, x + dot + 5.0, y + dot + 5.0));
      } else if (ranks[k] == ranks[0]) {
        continue;
      }
      String words = (k == 2 ? "middle: " : "") + w.name() + ", " + value(w);
      double wide = TextWidth.of(words, Look.LABEL, k == 0);
      Box box = placer.place(x, y, dot + 7.0, wide, 14.0);
      if (box != null) {
        canvas.text(box.left, box.top + 11.0, words, Look.LABEL, k == 0, Look.INK, Anchor.START);
      }
    }
  }

  private String value(WinterRecord w) {
    return isDark ? Say.kwh(w.wh(WinterSum.UNMET)) : Say.percent(w.lowestShareOfAll());
  }

  private static void ring(Canvas canvas, double x, double y, double radius) {
    int parts = 32;
    var xs = new double[parts + 1];
    var ys = new double[parts + 1];
    for (int k = 0; k <= parts; k++) {
      double turn = 2.0 * Math.PI * k / parts;
      xs[k] = x + radius * Math.cos(turn);
      ys[k] = y + radius * Math.sin(turn);
    }
    canvas.path(xs, ys, parts + 1, Look.INK, 1.8);
  }

  private void names(Canvas canvas, double bottom, double each) {
    int n = sorted.size();
    if (n <= MOST_NAMES) {
      for (int k = 0; k < n; k++) {
        tick(canvas, LEFT + (k + 0.5) * each, bottom, sorted.get(k).name(), Anchor.MIDDLE);
      }
      return;
    }
    for (int tenth = 1; tenth < 10; tenth++) {
      double x = LEFT + n * each * tenth / 10.0;
      canvas.line(x, bottom, x, bottom + 4.0, Look.AXIS, 1.0, false);
      if (tenth == 1 || tenth == 5 || tenth == 9) {
        String words = tenth == 5 ? "half of the winters" : tenth == 1 ? "a tenth" : "nine tenths";
        tick(canvas, x, bottom, words, Anchor.MIDDLE);
      }
    }
    tick(canvas, Look.WIDTH - Look.MARGIN, bottom, "worst", Anchor.END);
  }

  private static void tick(Canvas canvas, double x, double bottom, String words, Anchor anchor) {
    canvas.text(x, bottom + 18.0, words, Look.TICK, false, Look.FAINT_INK, anchor);
  }
}
