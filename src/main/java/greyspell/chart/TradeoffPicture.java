package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.chart.LabelPlacer.Box;
import greyspell.study.Tradeoff;
import greyspell.study.TradeoffAxes;
import greyspell.study.TradeoffMap;
import greyspell.study.WhatHelps;
import greyspell.study.WhatHelps.Zone;
import java.util.ArrayList;
import java.util.List;

/**
 * Panels across, storage up: lines of equal unmet hours and of equal cost, what stands, the least
 * banks that keep to the target, what helps more where, and what cannot be had.
 */
public final class TradeoffPicture extends Picture {
  private static final double HEIGHT = 610.0;
  private static final double LEFT = 64.0;
  private static final double RIGHT = Look.WIDTH - 62.0;
  private static final double ABOVE = 40.0;
  private static final double BELOW = 96.0;
  private static final int PANELS_TINT = 0xFAEBC4;
  private static final int STORAGE_TINT = 0xDDEEE8;
  private static final int[] TINTS = {PANELS_TINT, STORAGE_TINT, Look.PAPER};
  private static final int COST = 0x7A5A12;
  private static final int FINE = 160;

  /** Levels that people can picture, hours a year; the first stands for none. */
  private static final double[] LEVELS = {0.5, 6, 24, 72, 168, 336, 720, 1440, 2880, 5760};

  private final Tradeoff tradeoff;
  private final TradeoffMap map;
  private final TradeoffAxes axes;
  private final Contours hours;
  private final List<Label> labels = new ArrayList<>();
  private TradeoffFrame frame;

  /** Written once all lines are drawn, so that none crosses it. */
  private record Label(Contours.Path path, String words, boolean isBold, int colour) {}

  private TradeoffPicture(Tradeoff t) {
    super("tradeoff", TradeoffSay.title(t), note(t), describe(t), HEIGHT);
    tradeoff = t;
    map = t.map();
    axes = map.axes();
    // moved down in plot, once it is known where the title ends
    frame = new TradeoffFrame(axes, LEFT, ABOVE, RIGHT, HEIGHT - BELOW);
    hours = grid((i, j) -> Math.log1p(map.unmetHours(i, j)));
  }

  public static TradeoffPicture of(Tradeoff tradeoff) {
    return new TradeoffPicture(tradeoff);
  }

  private interface Cell {
    double at(int panel, int bank);
  }

  private Contours grid(Cell cell) {
    var values = new double[map.panels()][map.banks()];
    var across = new double[map.panels()];
    var up = new double[map.banks()];
    for (int i = 0; i < across.length; i++) {
      across[i] = axes.modules(i);
      for (int j = 0; j < up.length; j++) {
        up[j] = axes.storageWh(j);
        values[i][j] = cell.at(i, j);
      }
    }
    return new Contours(across, up, values);
  }

  private static String note(Tradeoff t) {
    return "Dark lines: hours of an average year in which something goes unserved, over "
        + TradeoffSay.weather(t)
        + ". Tinted: what the next step should be, "
        + (t.helps().isPerMoney()
            ? "the same money in panels or in packs"
            : "a string against a pack")
        + (t.map().hasGenerator() ? ", by the fuel that it saves" : "")
        + ". Dots: the smallest bank in whole packs that keeps to "
        + Say.hours((int) Math.round(t.asked().targetHours()))
        + " a year (hollow: beyond a limit)."
        + (t.costs().isKnown() ? " Thin dashed lines: the same cost beyond what stands" : "")
        + (t.costs().leavesOutControllers() ? ", without that of more controllers" : "")
        + (t.costs().isKnown() ? "." : "");
  }

  private static String describe(Tradeoff t) {
    TradeoffAxes axes = t.map().axes();
    int last = t.map().panels() - 1, most = t.map().banks() - 1;
    return "Map of panels against storage. What stands, "
        + TradeoffSay.point(axes, axes.presentPanels(), axes.presentBank())
        + ", leaves "
        + Say.hours((int) Math.round(t.map().unmetHours(axes.presentPanels(), axes.presentBank())))
        + " a year unserved; "
        + TradeoffSay.point(axes, last, most)
        + " leave "
        + Say.hours((int) Math.round(t.map().unmetHours(last, most)))
        + ". "
        + TradeoffSay.exchange(t)
        + ".";
  }

  @Override
  void plot(Canvas canvas, double plotTop, double height) {
    double top = plotTop + ABOVE, bottom = plotTop + height - BELOW;
    frame = new TradeoffFrame(axes, LEFT, top, RIGHT, bottom);
    var placer = new LabelPlacer(new Box(LEFT, top, RIGHT, bottom));
    tint(canvas);
    var cuts = new TradeoffCuts(tradeoff, frame);
    cuts.hatch(canvas);
    frame.draw(canvas);
    takePoints(placer);
    labels.clear();
    costLines(canvas);
    hourLines(canvas);
    flipLine(canvas);
    labels.forEach(label -> write(canvas, placer, label));
    dots(canvas);
    points(canvas, placer);
    zoneNames(canvas, placer);
    cuts.names(canvas, bottom + 58.0);
  }

  // what helps more where

  private void tint(Canvas canvas) {
    byte[] shade = new byte[FINE * FINE];
    WhatHelps helps = tradeoff.helps();
    Contours panels = grid(helps::panelsGain), packs = grid(helps::packGain);
    for (int row = 0; row < FINE; row++) {
      for (int column = 0; column < FINE; column++) {
        double m = frame.modules(LEFT + (column + 0.5) / FINE * (RIGHT - LEFT));
        double wh = frame.storageWh(frame.top + (row + 0.5) / FINE * (frame.bottom - frame.top));
        Zone zone = WhatHelps.zone(panels.at(m, wh), packs.at(m, wh), helps.leastGain());
        shade[row * FINE + column] = (byte) place(zone);
      }
    }
    canvas.cells(
        LEFT,
        frame.top,
        (RIGHT - LEFT) / FINE,
        (frame.bottom - frame.top) / FINE,
        FINE,
        FINE,
        shade,
        TINTS);
  }

  private static int place(Zone zone) {
    return switch (zone) {
      case PANELS -> 0;
      case STORAGE -> 1;
      case NEITHER -> 2;
    };
  }

  private void flipLine(Canvas canvas) {
    WhatHelps helps = tradeoff.helps();
    Contours difference =
        grid(
            (i, j) ->
                helps.zone(i, j) == Zone.NEITHER
                    ? Double.NaN
                    : helps.panelsGain(i, j) - helps.packGain(i, j));
    for (Contours.Path path : difference.lines(0.0)) {
      draw(canvas, path, Look.SUN_EDGE, 2.2, true);
    }
  }

  private void zoneNames(Canvas canvas, LabelPlacer placer) {
    WhatHelps helps = tradeoff.helps();
    Contours panels = grid(helps::panelsGain), packs = grid(helps::packGain);
    for (Zone zone : Zone.values()) {
      String words = TradeoffSay.helps(zone);
      double wide = TextWidth.of(words, Look.LABEL, true) + 10.0;
      boolean isDone = false;
      for (int k = 0; k < 2400 && !isDone; k++) {
        // places in an order that spreads over the whole map
        double x = LEFT + 8.0 + wide * 0.5 + halton(k, 2) * (RIGHT - LEFT - wide - 16.0);
        double y = frame.top + 16.0 + halton(k, 3) * (frame.bottom - frame.top - 32.0);
        boolean isInside = true;
        for (double dx : new double[] {-wide * 0.55, 0.0, wide * 0.55}) {
          for (double dy : new double[] {-14.0, 14.0}) {
            double m = frame.modules(x + dx), wh = frame.storageWh(y + dy);
            isInside &=
                WhatHelps.zone(panels.at(m, wh), packs.at(m, wh), helps.leastGain()) == zone;
          }
        }
        if (isInside
            && placer.takeIfFree(new Box(x - wide * 0.5, y - 9.0, x + wide * 0.5, y + 9.0))) {
          canvas.rect(x - wide * 0.5, y - 8.5, wide, 17.0, TINTS[place(zone)]);
          canvas.text(x, y + 4.0, words, Look.LABEL, true, Look.INK, Anchor.MIDDLE);
          isDone = true;
        }
      }
    }
  }

  private static double halton(int k, int base) {
    double value = 0.0, part = 1.0 / base;
    for (int rest = k + 1; rest > 0; rest /= base, part /= base) {
      value += part * (rest % base);
    }
    return value;
  }

  // lines

  private void hourLines(Canvas canvas) {
    double target = tradeoff.asked().targetHours();
    var levels = new ArrayList<Double>();
    for (double level : LEVELS) {
      if (Math.abs(level - target) > 0.3 * target) {
        levels.add(level);
      }
    }
    levels.add(target);
    for (double level : levels) {
      boolean isTarget = level == target;
      List<Contours.Path> paths = hours.lines(Math.log1p(level));
      for (Contours.Path path : paths) {
        draw(canvas, path, Look.HOUSE, isTarget ? 3.0 : 1.5, false);
      }
      if (!paths.isEmpty()) {
        labels.add(new Label(paths.get(0), hoursWords(level), isTarget, Look.HOUSE));
      }
    }
  }

  private static String hoursWords(double level) {
    return level < 1.0 ? "none" : Say.number(level, 0) + " h";
  }

  private void costLines(Canvas canvas) {
    if (!tradeoff.costs().isKnown()) {
      return;
    }
    Contours cost = grid(tradeoff.costs()::extraCost);
    double most = tradeoff.costs().extraCost(map.panels() - 1, map.banks() - 1);
    double step = Look.step(most);
    String currency = tradeoff.home().costs().currency();
    for (double level = step; level < most; level += step) {
      for (Contours.Path path : cost.lines(level)) {
        draw(canvas, path, COST, 1.0, true);
        labels.add(new Label(path, "+" + Say.number(level, 0) + " " + currency, false, COST));
      }
    }
  }

  private void draw(Canvas canvas, Contours.Path path, int colour, double width, boolean isDashed) {
    int n = path.count();
    var px = new double[n];
    var py = new double[n];
    int kept = 0;
    for (int k = 0; k < n; k++) {
      if (Double.isFinite(path.xAcross()[k]) && Double.isFinite(path.yUp()[k])) {
        px[kept] = frame.x(path.xAcross()[k]);
        py[kept++] = frame.y(path.yUp()[k]);
      }
    }
    if (!isDashed) {
      canvas.path(px, py, kept, colour, width);
      return;
    }
    dashes(canvas, px, py, kept, colour, width);
  }

  /** Dashes that go on over the corners of a line. */
  private static void dashes(
      Canvas canvas, double[] px, double[] py, int n, int colour, double width) {
    double on = 6.0, period = 10.0, gone = 0.0;
    var ends = new ArrayList<Double>();
    for (int k = 1; k < n; k++) {
      double length = Math.hypot(px[k] - px[k - 1], py[k] - py[k - 1]), from = 0.0;
      while (from < length) {
        double phase = gone % period;
        double part = Math.min(length - from, (phase < on ? on : period) - phase);
        part = Math.max(part, 1e-6);
        if (phase < on) {
          for (double s : new double[] {from, from + part}) {
            double share = Math.min(1.0, s / length);
            ends.add(px[k - 1] + share * (px[k] - px[k - 1]));
            ends.add(py[k - 1] + share * (py[k] - py[k - 1]));
          }
        }
        from += part;
        gone += part;
      }
    }
    double[] all = ends.stream().mapToDouble(Double::doubleValue).toArray();
    canvas.segments(all, all.length / 4, colour, width);
  }

  private void write(Canvas canvas, LabelPlacer placer, Label label) {
    Contours.Path path = label.path;
    double wide = TextWidth.of(label.words, Look.TICK, label.isBold) + 6.0;
    for (double share : new double[] {0.5, 0.62, 0.38, 0.74, 0.26, 0.86, 0.14, 0.94, 0.06}) {
      int k = (int) Math.round(share * (path.count() - 1));
      double px = frame.x(path.xAcross()[k]), py = frame.y(path.yUp()[k]);
      var box = new Box(px - wide * 0.5, py - 8.0, px + wide * 0.5, py + 8.0);
      if (placer.takeIfFree(box)) {
        canvas.rect(px - wide * 0.5, py - 7.5, wide, 15.0, Look.PAPER);
        canvas.text(
            px, py + 4.0, label.words, Look.TICK, label.isBold, label.colour, Anchor.MIDDLE);
        return;
      }
    }
  }

  // points

  private void takePoints(LabelPlacer placer) {
    double px = frame.x(axes.modules(axes.presentPanels())),
        py = frame.y(axes.storageWh(axes.presentBank()));
    placer.take(new Box(px - 12.0, py - 12.0, px + 12.0, py + 12.0));
    for (int i = 0; i < map.panels(); i++) {
      int bank = tradeoff.frontier().get(i);
      if (bank >= 0) {
        double dx = frame.x(axes.modules(i)), dy = frame.y(axes.storageWh(bank));
        placer.take(new Box(dx - 6.0, dy - 6.0, dx + 6.0, dy + 6.0));
      }
    }
  }

  private void dots(Canvas canvas) {
    for (int i = 0; i < map.panels(); i++) {
      int bank = tradeoff.frontier().get(i);
      if (bank >= 0) {
        boolean isAllowed = tradeoff.isAllowed(i, bank);
        canvas.circle(
            frame.x(axes.modules(i)),
            frame.y(axes.storageWh(bank)),
            4.5,
            isAllowed ? Look.HOUSE : Look.PAPER,
            Look.HOUSE,
            1.5);
      }
    }
  }

  private void points(Canvas canvas, LabelPlacer placer) {
    int p = axes.presentPanels(), c = axes.presentBank();
    double px = frame.x(axes.modules(p)), py = frame.y(axes.storageWh(c));
    canvas.diamond(px, py, 8.0, Look.UNMET, Look.PAPER);
    plate(canvas, placer, px, py, "now: " + Say.number(map.unmetHours(p, c), 0) + " h", Look.UNMET);
    int cheapest = tradeoff.cheapestPanels();
    if (cheapest >= 0) {
      int bank = tradeoff.frontier().get(cheapest);
      double qx = frame.x(axes.modules(cheapest)), qy = frame.y(axes.storageWh(bank));
      double cost = tradeoff.costs().extraCost(cheapest, bank);
      canvas.circle(qx, qy, 9.0, Look.PAPER, Look.INK, 2.0);
      canvas.circle(qx, qy, 4.5, Look.HOUSE, Look.HOUSE, 1.0);
      plate(
          canvas,
          placer,
          qx,
          qy,
          "cheapest: "
              + (cost < 0.0 ? "" : "+")
              + Say.number(cost, 0)
              + " "
              + tradeoff.home().costs().currency(),
          Look.INK);
    }
  }

  private static void plate(
      Canvas canvas, LabelPlacer placer, double x, double y, String words, int colour) {
    double wide = TextWidth.of(words, Look.LABEL, true) + 8.0;
    Box box = placer.place(x, y, 13.0, wide, 18.0);
    if (box == null) {
      box = new Box(x + 13.0, y - 9.0, x + 13.0 + wide, y + 9.0);
    }
    canvas.rect(box.left, box.top, wide, 18.0, Look.PAPER);
    canvas.text(
        box.left + wide * 0.5, box.top + 13.0, words, Look.LABEL, true, colour, Anchor.MIDDLE);
  }
}
