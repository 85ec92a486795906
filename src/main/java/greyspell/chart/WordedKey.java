package greyspell.chart;

import greyspell.chart.Canvas.Anchor;
import java.util.List;

/** A key in one line, wrapped where it is too long. */
final class WordedKey {
  private static final double SWATCH = 16.0;
  private static final double TALL = 11.0;
  private static final double LINE = 18.0;
  private static final double GAP = 6.0;
  private static final double APART = 16.0;

  private final Canvas canvas;
  private final Span span;
  private double x;
  private double y;

  WordedKey(Canvas canvas, Span span, double y) {
    this.canvas = canvas;
    this.span = span;
    this.y = y;
    x = span.margin;
  }

  /** How tall a key of these words is, down to where the plot may begin. */
  static double height(Span span, List<String> all) {
    double x = span.margin, tall = LINE;
    for (String words : all) {
      double wide = SWATCH + GAP + TextWidth.of(words, Look.LABEL, false);
      if (x > span.margin && x + wide > span.right()) {
        x = span.margin;
        tall += LINE;
      }
      x += wide + APART;
    }
    return tall;
  }

  void crossed(String words, int colour) {
    place(words);
    double middle = x + SWATCH * 0.5;
    canvas.line(middle - 5.0, y, middle + 5.0, y + 10.0, colour, 2.0, false);
    canvas.line(middle - 5.0, y + 10.0, middle + 5.0, y, colour, 2.0, false);
    write(words);
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
    double wide = SWATCH + GAP + TextWidth.of(words, Look.LABEL, false);
    if (x > span.margin && x + wide > span.right()) {
      x = span.margin;
      y += LINE;
    }
  }

  private void write(String words) {
    canvas.text(x + SWATCH + GAP, y + 10.0, words, Look.LABEL, false, Look.INK, Anchor.START);
    x += SWATCH + GAP + TextWidth.of(words, Look.LABEL, false) + APART;
  }
}
