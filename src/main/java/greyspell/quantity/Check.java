package greyspell.quantity;

/**
 * Argument checks for values that the border has already accepted: a failure here is a fault of the
 * program. Written so that NaN fails. The message is built only on the failing path.
 */
public final class Check {
  private Check() {}

  public static double within(String name, double value, double low, double high) {
    if (value >= low && value <= high) {
      return value;
    }
    throw outside(name, value, low, high);
  }

  public static int within(String name, int value, int low, int high) {
    if (value >= low && value <= high) {
      return value;
    }
    throw outside(name, value, low, high);
  }

  /** Above zero and finite. */
  public static double positive(String name, double value) {
    return within(name, value, Double.MIN_VALUE, Double.MAX_VALUE);
  }

  /** Zero or above, and finite. */
  public static double notNegative(String name, double value) {
    return within(name, value, 0.0, Double.MAX_VALUE);
  }

  public static double finite(String name, double value) {
    return within(name, value, -Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** A share of 1. */
  public static double share(String name, double value) {
    return within(name, value, 0.0, 1.0);
  }

  private static IllegalArgumentException outside(
      String name, double value, double low, double high) {
    return new IllegalArgumentException(name + " is " + value + ", must be " + low + " to " + high);
  }
}
