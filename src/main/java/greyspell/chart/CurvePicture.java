package greyspell.chart;

import greyspell.array.CurvePoint;
import greyspell.array.CurveTrace;
import greyspell.chart.Canvas.Anchor;
import greyspell.chart.LabelPlacer.Box;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Current and power of panels against their voltage, side by side, with every summit of the power
 * marked; a table below tells the numbers of each line.
 */
final class CurvePicture extends Picture {
  static final int MOST_LINES = 5;
  private static final int[] COLOURS = {
    Look.HOUSE, Look.SUN_EDGE, Look.UNMET, Look.CHARGE_EDGE, Look.ALWAYS_ON
  };
  // the last is too pale for small print
  private static final int[] INKS = {
    Look.HOUSE, Look.SUN_EDGE, Look.UNMET, Look.CHARGE_EDGE, Look.FAINT_INK
  };
  private static final double PANEL_HEIGHT = 268.0;
  private static final double ROW = 17.0;
  private static final double TABLE_TOP = 34.0;
  private static final double GUTTER = 62.0;
  private static final double LEFT = 46.0;
  private static final double DOT = 4.0;
  private static final double CROWDED = 7.0;

  private final List<CurveLine> lines;

  CurvePicture(String name, String title, String note, List<CurveLine> lines) {
    super(
        name,
        title,
        note + Look.ESTIMATE_ONLY,
        describe(lines),
        PANEL_HEIGHT + TABLE_TOP + ROW * (lines.size() + 1) + 6.0);
    if (lines.isEmpty() || lines.size() > MOST_LINES) {
      throw new IllegalArgumentException(lines.size() + " lines, must be 1 to " + MOST_LINES);
    }
    this.lines = List.copyOf(lines);
  }

  /** "305 W at 32.9 V". */
  static String say(CurvePoint point) {
    return watts(point.powerW()) + " at " + volts(point.voltageV());
  }

  static String watts(double powerW) {
    return Say.number(powerW, powerW < 99.5 ? 1 : 0) + " W";
  }

  static String volts(double voltageV) {
    return Say.number(voltageV, 1) + " V";
  }

  static String amps(double currentA) {
    return Say.number(currentA, 2) + " A";
  }

  private static String describe(List<CurveLine> lines) {
    var text = new StringBuilder("Current and power against voltage.");
    for (CurveLine line : lines) {
      CurveTrace trace = line.trace();
      text.append(' ')
          .append(line.name())
          .append(": most power ")
          .append(say(trace.maxPower()))
          .append(", open circuit ")
          .append(volts(trace.openCircuitV()))
          .append(", short circuit ")
          .append(amps(trace.shortCircuitA()))
          .append(others(trace))
          .append('.');
    }
    return text.toString();
  }

  /** The lower summits, empty if there are none. */
  static String others(CurveTrace trace) {
    var text = new StringBuilder();
    CurvePoint best = trace.maxPower();
    for (CurvePoint summit : trace.summits()) {
      if (!summit.equals(best)) {
        text.append(text.isEmpty() ? ", lower summits " : " and ").append(say(summit));
      }
    }
    return text.toString();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double wide = (Look.WIDTH - Look.MARGIN - LEFT - GUTTER) * 0.5;
    double mostV = 1e-9;
    double mostA = 1e-9;
    double mostW = 1e-9;
    for (CurveLine line : lines) {
      CurveTrace trace = line.trace();
      mostV = Math.max(mostV, trace.openCircuitV());
      mostA = Math.max(mostA, trace.shortCircuitA());
      mostW = Math.max(mostW, trace.maxPower().powerW());
    }
    double bottom = top + PANEL_HEIGHT;
    panel(canvas, new Panel(LEFT, top + 22.0, wide, bottom, mostV * 1.04, mostA * 1.16, false));
    panel(
        canvas,
        new Panel(
            LEFT + wide + GUTTER, top + 22.0, wide, bottom, mostV * 1.04, mostW * 1.16, true));
    table(canvas, bottom + TABLE_TOP + 12.0);
  }

  /** Where a panel stands and what its ends mean. */
  private static final class Panel {
    final double left;
    final double top;
    final double wide;
    final double bottom;
    final double mostV;
    final double mostValue;
    final boolean isPower;

    Panel(
        double left,
        double top,
        double wide,
        double bottom,
        double mostV,
        double mostValue,
        boolean isPower) {
      this.left = left;
      this.top = top;
      this.wide = wide;
      this.bottom = bottom;
      this.mostV = mostV;
      this.mostValue = mostValue;
      this.isPower = isPower;
    }

    double x(double voltageV) {
      return left + voltageV / mostV * wide;
    }

    double y(double value) {
      return bottom - value / mostValue * (bottom - top);
    }

    double y(CurvePoint point) {
      return y(isPower ? point.powerW() : point.currentA());
    }

    Box bounds() {
      return new Box(left + 2.0, top - 4.0, left + wide, bottom - 2.0);
    }
  }

  private void panel(Canvas canvas, Panel panel) {
    axes(canvas, panel);
    var placer = new LabelPlacer(panel.bounds());
    var shapes = new ArrayList<Shape>();
    for (int k = 0; k < lines.size(); k++) {
      CurveTrace trace = lines.get(k).trace();
      int n = trace.voltageV().length;
      var x = new double[n];
      var y = new double[n];
      for (int i = 0; i < n; i++) {
        double v = trace.voltageV()[i];
        double a = Math.max(0.0, trace.currentA()[i]);
        x[i] = panel.x(v);
        y[i] = panel.y(panel.isPower ? v * a : a);
      }
      canvas.path(x, y, n, COLOURS[k], 2.0);
      takeLine(placer, x, y);
      shapes.add(new Shape(x, y));
    }
    for (int k = 0; k < lines.size(); k++) {
      CurvePoint best = lines.get(k).trace().maxPower();
      for (CurvePoint summit : lines.get(k).trace().summits()) {
        double x = panel.x(summit.voltageV());
        double y = panel.y(summit);
        placer.take(new Box(x - DOT, y - DOT, x + DOT, y + DOT));
        if (summit.equals(best)) {
          canvas.circle(x, y, DOT, COLOURS[k], Look.PAPER, 1.0);
        } else {
          canvas.circle(x, y, DOT - 0.5, Look.PAPER, COLOURS[k], 1.5);
        }
      }
    }
    for (int k = 0; k < lines.size(); k++) {
      CurveTrace trace = lines.get(k).trace();
      if (panel.isPower) {
        for (CurvePoint summit : trace.summits()) {
          label(canvas, placer, panel.x(summit.voltageV()), panel.y(summit), say(summit), k);
        }
      } else {
        nameLine(canvas, placer, shapes, k);
      }
    }
  }

  private void axes(Canvas canvas, Panel panel) {
    double stepValue = Look.step(panel.mostValue);
    int decimals = stepValue < 0.095 ? 2 : stepValue < 0.95 ? 1 : 0;
    for (double value = 0.0; value <= panel.mostValue; value += stepValue) {
      double y = panel.y(value);
      canvas.line(
          panel.left,
          y,
          panel.left + panel.wide,
          y,
          value == 0.0 ? Look.AXIS : Look.GRID,
          1.0,
          false);
      canvas.text(
          panel.left - 6.0,
          y + 4.0,
          Say.number(value, decimals),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.END);
    }
    canvas.text(
        panel.left - 6.0,
        panel.top - 10.0,
        panel.isPower ? "Power, W" : "Current, A",
        Look.TICK,
        false,
        Look.FAINT_INK,
        Anchor.START);
    double stepV = Look.step(panel.mostV);
    for (double v = 0.0; v <= panel.mostV; v += stepV) {
      canvas.line(panel.x(v), panel.bottom, panel.x(v), panel.bottom + 4.0, Look.AXIS, 1.0, false);
      canvas.text(
          panel.x(v),
          panel.bottom + 16.0,
          Say.number(v, stepV < 0.95 ? 1 : 0),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.MIDDLE);
    }
    canvas.text(
        panel.left + panel.wide,
        panel.bottom + 29.0,
        "Voltage, V",
        Look.TICK,
        false,
        Look.FAINT_INK,
        Anchor.END);
  }

  /** Room that a line covers, in small squares along it. */
  private static void takeLine(LabelPlacer placer, double[] x, double[] y) {
    for (int i = 1; i < x.length; i++) {
      int parts = 1 + (int) (Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]) / 4.0);
      for (int part = 0; part <= parts; part++) {
        double t = (double) part / parts;
        double px = x[i - 1] + t * (x[i] - x[i - 1]);
        double py = y[i - 1] + t * (y[i] - y[i - 1]);
        placer.take(new Box(px - 1.5, py - 1.5, px + 1.5, py + 1.5));
      }
    }
  }

  /** A line as drawn. */
  private static final class Shape {
    final double[] x;
    final double[] y;

    Shape(double[] x, double[] y) {
      this.x = x;
      this.y = y;
    }

    boolean isNear(double px, double py) {
      for (int i = 0; i < x.length; i++) {
        if (Math.abs(x[i] - px) < CROWDED && Math.abs(y[i] - py) < CROWDED) {
          return true;
        }
      }
      return false;
    }
  }

  /**
   * Beside the line, at the first free place from its left end on where it runs alone; else at the
   * first free place.
   */
  private void nameLine(Canvas canvas, LabelPlacer placer, List<Shape> shapes, int line) {
    Shape own = shapes.get(line);
    String name = lines.get(line).name();
    double wide = TextWidth.of(name, Look.LABEL, true);
    for (boolean isAlone : new boolean[] {true, false}) {
      for (int way = 0; way < 3; way++) {
        for (int i = 0; i < own.x.length; i++) {
          // over the line, under it, then left of and under it
          double left = way == 2 ? own.x[i] - wide - 4.0 : own.x[i] + 4.0;
          double boxTop = way == 0 ? own.y[i] - Look.LABEL - 3.0 : own.y[i] + 3.0;
          if ((!isAlone || isAlone(shapes, line, own.x[i], own.y[i]))
              && placer.takeIfFree(new Box(left, boxTop, left + wide, boxTop + Look.LABEL))) {
            canvas.text(
                left, boxTop + Look.LABEL - 2.0, name, Look.LABEL, true, INKS[line], Anchor.START);
            return;
          }
        }
      }
    }
  }

  private static boolean isAlone(List<Shape> shapes, int line, double x, double y) {
    for (int k = 0; k < shapes.size(); k++) {
      if (k != line && shapes.get(k).isNear(x, y)) {
        return false;
      }
    }
    return true;
  }

  private static void label(
      Canvas canvas, LabelPlacer placer, double x, double y, String words, int line) {
    double wide = TextWidth.of(words, Look.TICK, false);
    @Nullable Box box = null;
    for (double gap = 5.0; box == null && gap < 42.0; gap += 6.0) {
      box = placer.place(x, y, gap, wide, Look.TICK);
    }
    if (box != null) {
      canvas.text(box.left, box.bottom - 2.0, words, Look.TICK, false, INKS[line], Anchor.START);
    }
  }

  private void table(Canvas canvas, double top) {
    double[] columns = {LEFT + 34.0, 330.0, 420.0, 500.0, 610.0, Look.WIDTH - Look.MARGIN};
    String[] heads = {"", "most power", "at", "and", "open circuit", "short circuit"};
    for (int c = 1; c < heads.length; c++) {
      canvas.text(columns[c], top, heads[c], Look.TICK, false, Look.FAINT_INK, Anchor.END);
    }
    for (int k = 0; k < lines.size(); k++) {
      double y = top + ROW * (k + 1);
      CurveTrace trace = lines.get(k).trace();
      CurvePoint best = trace.maxPower();
      canvas.line(LEFT, y - 4.0, LEFT + 24.0, y - 4.0, COLOURS[k], 3.0, false);
      String[] cells = {
        lines.get(k).name(),
        watts(best.powerW()),
        volts(best.voltageV()),
        amps(best.currentA()),
        volts(trace.openCircuitV()),
        amps(trace.shortCircuitA())
      };
      for (int c = 0; c < cells.length; c++) {
        canvas.text(
            columns[c],
            y,
            cells[c],
            Look.LABEL,
            c <= 1,
            c == 0 ? INKS[k] : Look.INK,
            c == 0 ? Anchor.START : Anchor.END);
      }
    }
  }
}
