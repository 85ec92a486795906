package greyspell.calendar;

import java.util.Arrays;
import java.util.List;

/** Twelve values, January first. */
public final class Monthly {
  private final double[] values;

  private Monthly(double[] values) {
    if (values.length != 12) {
      throw new IllegalArgumentException("twelve values, January first, not " + values.length);
    }
    this.values = values;
  }

  public static Monthly of(double... values) {
    return new Monthly(values.clone());
  }

  public static Monthly constant(double value) {
    var values = new double[12];
    Arrays.fill(values, value);
    return new Monthly(values);
  }

  /** Value of a month, 1 to 12. */
  public double in(int month) {
    return values[month - 1];
  }

  public List<Double> list() {
    return Arrays.stream(values).boxed().toList();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Monthly m && Arrays.equals(values, m.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return Arrays.toString(values);
  }
}
