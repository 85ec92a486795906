package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.study.TradeoffAxes;

/**
 * The frame of the map of panels against storage: where on the page a pair stands, and the axes.
 * Modules below, kW above, energy on the left, packs on the right; what stands is marked.
 */
final class TradeoffFrame {
  final double left;
  final double top;
  final double right;
  final double bottom;
  private final TradeoffAxes axes;

  /** Lengths in points of the page, y downwards. */
  TradeoffFrame(TradeoffAxes axes, double left, double top, double right, double bottom) {
    this.axes = axes;
    this.left = left;
    this.top = top;
    this.right = right;
    this.bottom = bottom;
  }

  double x(double modules) {
    double least = axes.modules(0), most = axes.modules(axes.panels().size() - 1);
    return most > least ? left + (modules - least) / (most - least) * (right - left) : left;
  }

  double y(double wh) {
    double least = axes.storageWh(0), most = axes.storageWh(axes.banks().size() - 1);
    return most > least ? bottom - (wh - least) / (most - least) * (bottom - top) : bottom;
  }

  double modules(double x) {
    double least = axes.modules(0), most = axes.modules(axes.panels().size() - 1);
    return least + (x - left) / (right - left) * (most - least);
  }

  double storageWh(double y) {
    double least = axes.storageWh(0), most = axes.storageWh(axes.banks().size() - 1);
    return least + (bottom - y) / (bottom - top) * (most - least);
  }

  /** Border, ticks and their figures. */
  void draw(Canvas canvas) {
    for (double[] l :
        new double[][] {
          {left, top, right, top},
          {left, bottom, right, bottom},
          {left, top, left, bottom},
          {right, top, right, bottom}
        }) {
      canvas.line(l[0], l[1], l[2], l[3], Look.AXIS, 1.0, false);
    }
    modulesAxis(canvas);
    storageAxis(canvas);
  }

  private void modulesAxis(Canvas canvas) {
    double lastX = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < axes.panels().size(); i++) {
      double x = x(axes.modules(i));
      canvas.line(x, bottom, x, bottom + 5.0, Look.AXIS, 1.0, false);
      canvas.line(x, top, x, top - 5.0, Look.AXIS, 1.0, false);
      boolean isPresent = i == axes.presentPanels();
      if (isPresent || (x - lastX > 40.0 && isFarFromPresent(x))) {
        lastX = x;
        int colour = isPresent ? Look.UNMET : Look.INK;
        canvas.text(
            x,
            bottom + 18.0,
            Say.number(axes.modules(i), 0),
            Look.TICK,
            isPresent,
            colour,
            Anchor.MIDDLE);
        canvas.text(
            x,
            top - 9.0,
            Say.number(axes.ratedW(i) / 1000.0, 1),
            Look.TICK,
            isPresent,
            colour,
            Anchor.MIDDLE);
      }
    }
    double middle = (left + right) * 0.5;
    canvas.text(
        middle, bottom + 35.0, "panels, modules", Look.LABEL, false, Look.INK, Anchor.MIDDLE);
    canvas.text(middle, top - 25.0, "panels, kW", Look.LABEL, false, Look.INK, Anchor.MIDDLE);
  }

  private boolean isFarFromPresent(double x) {
    return Math.abs(x - x(axes.modules(axes.presentPanels()))) > 30.0;
  }

  private void storageAxis(Canvas canvas) {
    double mostWh = axes.storageWh(axes.banks().size() - 1), leastWh = axes.storageWh(0);
    double stepWh = Look.step((mostWh - leastWh) / 1000.0) * 500.0;
    for (double wh = Math.ceil(leastWh / stepWh) * stepWh; wh <= mostWh; wh += stepWh) {
      canvas.line(left, y(wh), left - 5.0, y(wh), Look.AXIS, 1.0, false);
      canvas.text(
          left - 9.0,
          y(wh) + 4.0,
          Say.number(wh / 1000.0, stepWh < 1000.0 ? 1 : 0),
          Look.TICK,
          false,
          Look.INK,
          Anchor.END);
    }
    canvas.text(Look.MARGIN, top - 25.0, "bank, kWh", Look.LABEL, false, Look.INK, Anchor.START);
    double packWh = axes.packWh();
    int every = Math.max(1, (int) Math.ceil(18.0 / ((bottom - top) * packWh / (mostWh - leastWh))));
    for (int packs = (int) Math.ceil(leastWh / packWh); packs * packWh <= mostWh + 1.0; packs++) {
      boolean isPresent = Math.abs(packs * packWh - axes.storageWh(axes.presentBank())) < 1.0;
      if (packs % every == 0 || isPresent) {
        double y = y(packs * packWh);
        canvas.line(right, y, right + 5.0, y, Look.AXIS, 1.0, false);
        canvas.text(
            right + 9.0,
            y + 4.0,
            String.valueOf(packs),
            Look.TICK,
            isPresent,
            isPresent ? Look.UNMET : Look.INK,
            Anchor.START);
      }
    }
    canvas.text(
        Look.WIDTH - Look.MARGIN,
        top - 25.0,
        "bank, packs",
        Look.LABEL,
        false,
        Look.INK,
        Anchor.END);
  }
}
