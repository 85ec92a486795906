package greyspell.electrical;

/** The sentence that stands on every page with an electrical figure. */
public final class LocalCode {
  public static final String GOVERNS =
      "Local code and the authority that enforces it govern, and licensed practice decides: nothing"
          + " here claims that a code is met, and no size of wire, fuse or breaker is recommended.";

  private LocalCode() {}
}
