package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.study.Tradeoff;
import greyspell.study.TradeoffAxes;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What of a map cannot be had: hatched, each limit in its own way, and named below. */
final class TradeoffCuts {
  private static final double SWATCH = 18.0;
  private static final int HATCH = 0xA3AEB5;

  private final Tradeoff tradeoff;
  private final TradeoffAxes axes;
  private final TradeoffFrame frame;
  private final List<Cut> cuts = new ArrayList<>();

  /** A limit; the hatch differs in spacing and slant. */
  private record Cut(String words, double spacingPx, boolean isFalling, Inside inside) {}

  private interface Inside {
    boolean holds(double modules, double storageWh);
  }

  TradeoffCuts(Tradeoff tradeoff, TradeoffFrame frame) {
    this.tradeoff = tradeoff;
    this.frame = frame;
    axes = tradeoff.map().axes();
    rules();
    roof();
    budget();
    controllers();
  }

  private double between(int panel) {
    return panel <= 0 ? axes.modules(0) : 0.5 * (axes.modules(panel - 1) + axes.modules(panel));
  }

  private void rules() {
    if (axes.buildable() < axes.panels().size()) {
      double from = between(axes.buildable());
      cuts.add(
          new Cut(
              "string rules: not more than "
                  + axes.modules(Math.max(0, axes.buildable() - 1))
                  + " modules on the controller",
              5.0,
              true,
              (m, wh) -> m > from));
    }
  }

  private void controllers() {
    int now = tradeoff.home().controller().count();
    for (int i = 0; i < axes.buildable(); i++) {
      int needed = axes.panels().get(i).controllers();
      if (needed > now) {
        double from = between(i),
            to = between(Math.min(axes.buildable(), axes.panels().size() - 1));
        boolean isToEnd = axes.buildable() == axes.panels().size();
        cuts.add(
            new Cut(
                "needs " + (needed == now + 1 ? "another controller" : "more controllers"),
                20.0,
                true,
                (m, wh) -> m > from && (isToEnd || m <= to)));
        return;
      }
    }
  }

  private void roof() {
    Integer roof = tradeoff.asked().roofModules();
    if (roof != null && roof < axes.modules(axes.panels().size() - 1)) {
      cuts.add(
          new Cut("roof: room for " + roof + " modules", 6.0, false, (m, wh) -> m > roof + 0.5));
    }
  }

  private void budget() {
    Double budget = tradeoff.asked().budgetCost();
    if (budget == null || !tradeoff.costs().isKnown()) {
      return;
    }
    int panels = axes.panels().size(), banks = axes.banks().size();
    var across = new double[panels];
    var up = new double[banks];
    var cost = new double[panels][banks];
    for (int i = 0; i < panels; i++) {
      across[i] = axes.modules(i);
      for (int j = 0; j < banks; j++) {
        up[j] = axes.storageWh(j);
        cost[i][j] = tradeoff.costs().extraCost(i, j);
      }
    }
    var grid = new Contours(across, up, cost);
    cuts.add(
        new Cut(
            "budget: more than " + Say.number(budget, 0) + " " + tradeoff.home().costs().currency(),
            10.0,
            false,
            (m, wh) -> grid.at(m, wh) > budget));
  }

  /** Slanting lines wherever a limit holds. */
  void hatch(Canvas canvas) {
    for (Cut cut : cuts) {
      var ends = new ArrayList<Double>();
      double wide = frame.right - frame.left, tall = frame.bottom - frame.top;
      for (double c = cut.spacingPx; c < wide + tall; c += cut.spacingPx * 1.4) {
        double from = Math.max(0.0, c - tall), to = Math.min(wide, c), begin = Double.NaN;
        for (double u = from; u <= to + 1.0; u += 2.0) {
          double v = c - u;
          double py = cut.isFalling ? frame.bottom - v : frame.top + v;
          boolean isIn =
              u <= to && first(frame.modules(frame.left + u), frame.storageWh(py)) == cut;
          if (isIn && Double.isNaN(begin)) {
            begin = u;
          } else if (!isIn && !Double.isNaN(begin)) {
            add(ends, cut, c, begin, Math.min(u - 2.0, to));
            begin = Double.NaN;
          }
        }
        if (!Double.isNaN(begin)) {
          add(ends, cut, c, begin, to);
        }
      }
      double[] all = ends.stream().mapToDouble(Double::doubleValue).toArray();
      canvas.segments(all, all.length / 4, HATCH, 0.9);
    }
  }

  /** Of several limits the first one is hatched, so that lines do not cross; null for none. */
  private @Nullable Cut first(double modules, double storageWh) {
    for (Cut cut : cuts) {
      if (cut.inside.holds(modules, storageWh)) {
        return cut;
      }
    }
    return null;
  }

  private void add(List<Double> ends, Cut cut, double c, double fromU, double toU) {
    for (double u : new double[] {fromU, toU}) {
      ends.add(frame.left + u);
      ends.add(cut.isFalling ? frame.bottom - (c - u) : frame.top + (c - u));
    }
  }

  /** The key, from left to right and on to another line where it is long. */
  void names(Canvas canvas, double y) {
    double x = frame.left, line = y;
    for (Cut cut : cuts) {
      double wide = 26.0 + TextWidth.of(cut.words, Look.LABEL, false) + 20.0;
      if (x > frame.left && x + wide > Look.WIDTH - Look.MARGIN) {
        x = frame.left;
        line += 19.0;
      }
      canvas.rect(x, line - 10.0, SWATCH, 12.0, Look.PAPER);
      canvas.hatch(
          x, line - 10.0, SWATCH, 12.0, Math.min(9.0, cut.spacingPx), Look.AXIS, cut.isFalling);
      canvas.text(x + 25.0, line + 1.0, cut.words, Look.LABEL, false, Look.INK, Anchor.START);
      x += wide;
    }
  }
}
