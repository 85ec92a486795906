package greyspell.handover;

/** Size of a sheet. */
public enum Paper {
  A4("A4", 210.0, 297.0),
  LETTER("letter", 215.9, 279.4);

  /** The style sheet for paper is held to these. */
  static final double SIDE_MM = 14.0;

  static final double GAP_MM = 7.0;

  private final String css;
  private final double widthMm;
  private final double heightMm;

  Paper(String css, double widthMm, double heightMm) {
    this.css = css;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** As a style sheet and the command line name it. */
  public String css() {
    return css;
  }

  /** Width of one of two columns, and so of a picture. */
  double columnMm() {
    return (widthMm - 2 * SIDE_MM - GAP_MM) / 2;
  }

  public double widthMm() {
    return widthMm;
  }

  public double heightMm() {
    return heightMm;
  }
}
