package greyspell.quantity;

/**
 * One thing wrong with what a user handed in.
 *
 * @param place where it stands
 * @param found what was read, in the user's own spelling: {@code tilt: found "95 deg"}
 * @param expected what would have been right: {@code must be 0 to 90 deg from horizontal}
 * @param mend one way to mend it, a sentence
 */
public record Fault(Place place, String found, String expected, String mend) {
  /** Three lines, the place first so that editors can jump to it. */
  public String text() {
    return place + "  " + found + "\n    " + expected + (mend.isEmpty() ? "" : "\n    " + mend);
  }
}
