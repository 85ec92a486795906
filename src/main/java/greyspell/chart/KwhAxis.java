package greyspell.chart;

import greyspell.chart.Canvas.Anchor;

/** Lines and figures of a scale of kWh a day, behind bars that stand on its zero. */
final class KwhAxis {
  private KwhAxis() {}

  /**
   * Draws it.
   *
   * @param left where the bars begin; the figures stand before it
   * @param titleY base line of the unit's words
   * @param bottom of the bars
   * @param barsTop where {@code mostWh} lies
   */
  static void draw(
      Canvas canvas, double left, double titleY, double barsTop, double bottom, double mostWh) {
    double perWh = (bottom - barsTop) / mostWh;
    canvas.text(Look.MARGIN, titleY, "kWh a day", Look.TICK, false, Look.FAINT_INK, Anchor.START);
    double stepKwh = Look.step(mostWh / 1000.0);
    for (double kwh = 0.0; kwh * 1000.0 <= mostWh; kwh += stepKwh) {
      double y = bottom - kwh * 1000.0 * perWh;
      int colour = kwh == 0.0 ? Look.AXIS : Look.GRID;
      canvas.line(left, y, Look.WIDTH - Look.MARGIN, y, colour, 1.0, false);
      canvas.text(
          left - 7.0,
          y + 4.0,
          Say.number(kwh, stepKwh < 1.0 ? 1 : 0),
          Look.TICK,
          false,
          Look.FAINT_INK,
          Anchor.END);
    }
  }
}
