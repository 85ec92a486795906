package greyspell.handover;

/** Size of a sheet. */
public enum Paper {
  A4("A4", 210.0, 297.0),
  LETTER("letter", 215.9, 279.4);

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

  /** Width of a picture, so that page one and its pictures fit two sheets. */
  double pictureMm() {
    return 0.41 * heightMm;
  }

  public double widthMm() {
    return widthMm;
  }

  public double heightMm() {
    return heightMm;
  }
}
