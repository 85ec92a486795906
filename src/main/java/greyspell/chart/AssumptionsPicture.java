package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import greyspell.ladder.Bar;
import greyspell.ladder.Ladder;
import greyspell.study.Unmet;
import java.util.List;

/** How far each assumption moves what goes unserved, what moves it most at the top. */
final class AssumptionsPicture extends Picture {
  private static final double ROW = 44.0, BAR = 14.0, LEFT = 190.0, RIGHT = 60.0, AXIS = 30.0;

  private final List<Bar> bars;
  private final double presentWh;

  private AssumptionsPicture(
      String title, String note, String description, List<Bar> bars, double presentWh) {
    super("assumptions", title, note, description, AXIS + ROW * bars.size() + 22.0);
    this.bars = List.copyOf(bars);
    this.presentWh = presentWh;
  }

  static AssumptionsPicture of(Ladder ladder) {
    List<Bar> bars = ladder.bars().stream().filter(b -> b.widthWh() > 0.0).toList();
    double presentWh = wh(ladder.present().unmet());
    Bar most = bars.get(0);
    String title =
        ladder.present().scenario().name()
            + ": most hangs on "
            + most.what()
            + ", from "
            + Say.kwh(wh(most.low()))
            + " to "
            + Say.kwh(wh(most.high()))
            + " a year";
    var told = new StringBuilder(title).append(". ");
    for (Bar bar : bars) {
      told.append(bar.what())
          .append(", ")
          .append(bar.lowWords())
          .append(" to ")
          .append(bar.highWords())
          .append(": ")
          .append(Say.kwh(wh(bar.low())))
          .append(" to ")
          .append(Say.kwh(wh(bar.high())))
          .append(". ");
    }
    return new AssumptionsPicture(
        title,
        "What goes unserved or comes from a generator in a year, each assumption alone moved to the ends of its range; the"
            + " short upright line is the home as stated.",
        told.toString(),
        bars,
        presentWh);
  }

  private static double wh(Unmet unmet) {
    return unmet.wh() + unmet.generatorWh();
  }

  @Override
  void plot(Canvas canvas, double top, double height) {
    double mostWh = presentWh;
    for (Bar bar : bars) {
      mostWh = Math.max(mostWh, Math.max(wh(bar.low()), wh(bar.high())));
    }
    double perWh = (Look.WIDTH - Look.MARGIN - RIGHT - LEFT) / mostWh;
    double bottom = top + ROW * bars.size();
    scale(canvas, top, bottom, mostWh, perWh);
    for (int k = 0; k < bars.size(); k++) {
      bar(canvas, bars.get(k), top + ROW * k + 6.0, perWh);
    }
  }

  private static void scale(Canvas canvas, double top, double bottom, double mostWh, double perWh) {
    double step = Look.step(mostWh / 1000.0);
    for (double kwh = 0.0; kwh * 1000.0 <= mostWh; kwh += step) {
      double x = LEFT + kwh * 1000.0 * perWh;
      canvas.line(x, top, x, bottom, kwh == 0.0 ? Look.AXIS : Look.GRID, 1.0, false);
      canvas.text(
          x,
          bottom + 16.0,
          Say.number(kwh, step < 1.0 ? 1 : 0),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.MIDDLE);
    }
    canvas.text(
        Look.WIDTH - Look.MARGIN,
        bottom + 16.0,
        "kWh a year",
        Look.TICK,
        false,
        Look.FAINT_INK,
        Anchor.END);
  }

  private void bar(Canvas canvas, Bar bar, double y, double perWh) {
    double low = LEFT + wh(bar.low()) * perWh, high = LEFT + wh(bar.high()) * perWh;
    double left = Math.min(low, high), right = Math.max(low, high);
    canvas.rect(left, y, Math.max(1.5, right - left), BAR, Look.ALWAYS_ON);
    double present = LEFT + presentWh * perWh;
    canvas.line(present, y - 4.0, present, y + BAR + 4.0, Look.INK, 1.8, false);
    canvas.text(Look.MARGIN, y + 12.0, bar.what(), Look.LABEL, true, Look.INK, Anchor.START);
    String atLeft = low <= high ? bar.lowWords() : bar.highWords();
    String atRight = low <= high ? bar.highWords() : bar.lowWords();
    double under = y + BAR + 13.0;
    boolean isNarrow =
        right - left
            < TextWidth.of(atLeft, Look.TICK, false)
                + TextWidth.of(atRight, Look.TICK, false)
                + 14.0;
    if (isNarrow) {
      canvas.text(
          right < 0.6 * Look.WIDTH ? right + 8.0 : left - 8.0,
          y + 11.0,
          atLeft + " to " + atRight,
          Look.TICK,
          false,
          Look.FAINT_INK,
          right < 0.6 * Look.WIDTH ? Anchor.START : Anchor.END);
    } else {
      canvas.text(left, under, atLeft, Look.TICK, false, Look.FAINT_INK, Anchor.START);
      canvas.text(right, under, atRight, Look.TICK, false, Look.FAINT_INK, Anchor.END);
    }
  }
}
