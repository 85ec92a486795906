package greyspell.chart;

/**
 * Where a picture is drawn: as SVG text or as a bitmap. Lengths in picture units, origin top left,
 * y downward; colours are 0xRRGGBB. Everything is opaque, so that both backends and paper agree.
 */
interface Canvas {
  /** Where a text's anchor point lies. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  void rect(double x, double y, double width, double height, int fill);

  void line(double x1, double y1, double x2, double y2, int colour, double width, boolean isDashed);

  /** Many separate lines of one colour: x1, y1, x2, y2 each. */
  void segments(double[] ends, int count, int colour, double width);

  /** An open line through n points. */
  void path(double[] x, double[] y, int n, int colour, double width);

  void polygon(double[] x, double[] y, int n, int fill);

  void circle(double centreX, double centreY, double radius, int fill, int edge, double width);

  /** A square that stands on its corner, so that it differs from a circle without colour. */
  default void diamond(double centreX, double centreY, double radius, int fill, int edge) {
    double r = radius * 1.25;
    double[] x = {centreX, centreX + r, centreX, centreX - r, centreX};
    double[] y = {centreY - r, centreY, centreY + r, centreY, centreY - r};
    polygon(x, y, 4, fill);
    path(x, y, 5, edge, 1.2);
  }

  void text(double x, double y, String words, double size, boolean isBold, int colour, Anchor to);

  /**
   * A grid of shaded cells, row 0 at the top.
   *
   * @param shade index into {@code palette}, row by row
   */
  void cells(
      double x,
      double y,
      double cellWidth,
      double cellHeight,
      int columns,
      int rows,
      byte[] shade,
      int[] palette);

  /** Slanting lines inside a rectangle, and its outline. */
  default void hatch(
      double x, double y, double width, double height, double spacing, int colour, boolean falls) {
    if (width <= 0.0 || height <= 0.0) {
      return;
    }
    int most = (int) ((width + height) / spacing) + 1;
    var ends = new double[4 * (most + 5)];
    int n = 0;
    for (double c = spacing * 0.5; c < width + height; c += spacing) {
      // the line u + v = c cut to the rectangle, u to the right, v upward from the lower left
      // corner
      double u1 = Math.max(0.0, c - height);
      double u2 = Math.min(width, c);
      double v1 = c - u1;
      double v2 = c - u2;
      ends[n++] = x + u1;
      ends[n++] = falls ? y + height - v1 : y + v1;
      ends[n++] = x + u2;
      ends[n++] = falls ? y + height - v2 : y + v2;
    }
    double[] corners = {x, y, x + width, y, x + width, y + height, x, y + height, x, y};
    for (int k = 0; k < 4; k++) {
      System.arraycopy(corners, 2 * k, ends, n, 4);
      n += 4;
    }
    segments(ends, n / 4, colour, 1.0);
  }
}
