package greyspell.chart;

import greyspell.chart.Canvas.Anchor;

/** The ground on which bars of twelve months stand: kWh a day upwards, months along the foot. */
final class MonthBars {
  private static final double LEFT = 52.0;
  private static final double SWATCH = 18.0;
  private static final double SWATCH_TALL = 12.0;

  private final Canvas canvas;
  private final double mostWh;
  private final double right = Look.WIDTH - Look.MARGIN;
  private final double top;
  private final double bottom;
  private double keyX = LEFT;

  /**
   * @param top where the greatest bar may end
   * @param bottom where all bars stand
   * @param mostWh of a bar that reaches the top
   */
  MonthBars(Canvas canvas, double top, double bottom, double mostWh) {
    this.canvas = canvas;
    this.top = top;
    this.bottom = bottom;
    this.mostWh = mostWh;
  }

  double top() {
    return top;
  }

  /** Where energy above the foot lies. */
  double y(double wh) {
    return bottom - tall(wh);
  }

  double tall(double wh) {
    return wh * (bottom - top) / mostWh;
  }

  /** Width that a month has for its bars and the gap beside them. */
  double slot() {
    return (right - LEFT) / 12.0;
  }

  /** Left edge of what a month has, first month 0. */
  double x(int place) {
    return LEFT + place * slot();
  }

  /** Lines and figures of the scale, the unit so far above the bars. */
  void scale(double unitAbove) {
    canvas.text(
        Look.MARGIN, top - unitAbove, "kWh a day", Look.TICK, false, Look.FAINT_INK, Anchor.START);
    double stepKwh = Look.step(mostWh / 1000.0);
    for (double kwh = 0.0; kwh * 1000.0 <= mostWh; kwh += stepKwh) {
      double y = y(kwh * 1000.0);
      canvas.line(LEFT, y, right, y, kwh == 0.0 ? Look.AXIS : Look.GRID, 1.0, false);
      canvas.text(
          LEFT - 7.0,
          y + 4.0,
          Say.number(kwh, stepKwh < 1.0 ? 1 : 0),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.END);
    }
  }

  /** Name of a month under the middle of its bars, marked or not. */
  void name(double middle, int month, boolean isMarked) {
    canvas.text(
        middle,
        bottom + 18.0,
        Say.shortMonth(month),
        Look.LABEL,
        isMarked,
        isMarked ? Look.UNMET : Look.INK,
        Anchor.MIDDLE);
  }

  /** What was not served, standing on {@code y}, never too flat to be seen; tells where it ends. */
  double unmet(double x, double y, double width, double wh) {
    if (!(wh > 0.0)) {
      return y;
    }
    double shown = Math.max(tall(wh), 2.0);
    notServed(x, y - shown, width, shown);
    return y - shown;
  }

  private void notServed(double x, double y, double width, double height) {
    canvas.rect(x, y, width, height, Look.UNMET_PALE);
    canvas.hatch(x, y, width, height, 4.0, Look.UNMET, true);
  }

  /** A figure on top of a bar. */
  void figure(double middle, double y, double wh, int colour) {
    canvas.text(middle, y - 5.0, Say.kwhCell(wh), Look.TICK, true, colour, Anchor.MIDDLE);
  }

  /** One entry of the key, behind those before it. */
  void key(double y, String words, int fill) {
    canvas.rect(keyX, y, SWATCH, SWATCH_TALL, fill);
    words(y, words);
  }

  void keyHatched(double y, String words, double spacing, int colour) {
    canvas.rect(keyX, y, SWATCH, SWATCH_TALL, Look.PAPER);
    canvas.hatch(keyX, y, SWATCH, SWATCH_TALL, spacing, colour, false);
    words(y, words);
  }

  void keyNotServed(double y) {
    notServed(keyX, y, SWATCH, SWATCH_TALL);
    words(y, "not served");
  }

  private void words(double y, String words) {
    canvas.text(keyX + 24.0, y + 10.5, words, Look.LABEL, false, Look.INK, Anchor.START);
    keyX += 24.0 + TextWidth.of(words, Look.LABEL, false) + 16.0;
  }
}
