package greyspell.chart;

import greyspell.chart.Canvas.Anchor;

/** A key in one line, wrapped where it is too long. */
final class WordedKey {
  private static final double SWATCH = 16.0;
  private static final double TALL = 11.0;
  private static final double LINE = 18.0;

  private final Canvas canvas;
  private double x = Look.MARGIN;
  private double y;

  WordedKey(Canvas canvas, double y) {
    this.canvas = canvas;
    this.y = y;
  }

  void filled(String words, int fill) {
    place(words);
    canvas.rect(x, y, SWATCH, TALL, fill);
    write(words);
  }

  void hatched(String words, int ground, int colour, boolean falls) {
    place(words);
    canvas.rect(x, y, SWATCH, TALL, ground);
    canvas.hatch(x, y, SWATCH, TALL, falls ? 4.0 : 5.0, colour, falls);
    write(words);
  }

  void lined(String words, int colour) {
    place(words);
    canvas.line(x, y + TALL * 0.5, x + SWATCH, y + TALL * 0.5, colour, 2.2, false);
    write(words);
  }

  private void place(String words) {
    double wide = SWATCH + 6.0 + TextWidth.of(words, Look.LABEL, false);
    if (x > Look.MARGIN && x + wide > Look.WIDTH - Look.MARGIN) {
      x = Look.MARGIN;
      y += LINE;
    }
  }

  private void write(String words) {
    canvas.text(x + SWATCH + 6.0, y + 10.0, words, Look.LABEL, false, Look.INK, Anchor.START);
    x += SWATCH + 6.0 + TextWidth.of(words, Look.LABEL, false) + 16.0;
  }
}
