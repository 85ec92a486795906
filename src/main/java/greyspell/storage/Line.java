package greyspell.storage;

/** Straight lines between points, level outside them. */
final class Line {
  private final double[] x;
  private final double[] y;

  /** Both copied; x rises. */
  Line(double[] x, double[] y) {
    this.x = x.clone();
    this.y = y.clone();
  }

  double at(double atX) {
    int last = x.length - 1;
    if (!(atX > x[0])) {
      return y[0];
    }
    for (int i = 1; i <= last; i++) {
      if (atX < x[i]) {
        return y[i - 1] + (atX - x[i - 1]) / (x[i] - x[i - 1]) * (y[i] - y[i - 1]);
      }
    }
    return y[last];
  }
}
