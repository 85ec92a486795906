package greyspell.chart;

/**
 * How wide a picture is drawn: over the whole page, or in a column half as wide, where the same
 * letters stand on fewer units so that they stay as large.
 */
enum Span {
  PAGE(Look.WIDTH, Look.MARGIN, Look.TITLE, 21.0),
  COLUMN(Look.COLUMN_WIDTH, 2.0, Look.COLUMN_TITLE, 16.0);

  final double width;
  final double margin;
  final double titleSize;
  final double titleLine;

  Span(double width, double margin, double titleSize, double titleLine) {
    this.width = width;
    this.margin = margin;
    this.titleSize = titleSize;
    this.titleLine = titleLine;
  }

  /** Where the plot ends, in picture units. */
  double right() {
    return width - margin;
  }

  boolean isColumn() {
    return this == COLUMN;
  }

  /** The name of a picture of this span. */
  String name(String picture) {
    return isColumn() ? picture + "-column" : picture;
  }
}
