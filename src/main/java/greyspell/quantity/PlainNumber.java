package greyspell.quantity;

import org.jspecify.annotations.Nullable;

/** A number as a table or a header holds it. */
public final class PlainNumber {
  private PlainNumber() {}

  /** A finite decimal number, or null; no exponent, no hexadecimal, no NaN. */
  public static @Nullable Double of(String text) {
    if (text.isEmpty()) {
      return null;
    }
    for (int i = 0; i < text.length(); i++) {
      if ("0123456789+-.".indexOf(text.charAt(i)) < 0) {
        return null;
      }
    }
    try {
      return Double.valueOf(text);
    } catch (NumberFormatException e) {
      return null;
    }
  }
}
