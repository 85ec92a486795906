package greyspell.handover;

import java.util.List;

/**
 * How the client's part is set on paper.
 *
 * @param sizePt of its letters
 * @param isParted whether its second column begins with the causes; else wherever the first is full
 * @param pictureShare width of its pictures, of the column's
 */
record Fit(double sizePt, boolean isParted, double pictureShare) {
  /** Smaller letters are not set. */
  static final double LEAST_PT = 8.5;

  /** The first with which the part fits one page is taken, else the last: front and back. */
  static final List<Fit> TRIED =
      List.of(
          new Fit(9.8, true, 1.0),
          new Fit(9.2, true, 1.0),
          new Fit(8.8, true, 1.0),
          new Fit(LEAST_PT, true, 1.0),
          new Fit(LEAST_PT, true, 0.88),
          new Fit(LEAST_PT, true, 0.8),
          new Fit(LEAST_PT, false, 0.88),
          new Fit(9.2, false, 1.0));
}
