package greyspell.array;

/** One point of a current-voltage curve. */
public record CurvePoint(double voltageV, double currentA) {
  public double powerW() {
    return voltageV * currentA;
  }
}
