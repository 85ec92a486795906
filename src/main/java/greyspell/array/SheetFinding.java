package greyspell.array;

/**
 * Something about a data sheet that does not fit.
 *
 * @param suspect the figure that is likely wrong, in the words of the sheet
 * @param finding what is off, in words and numbers
 */
public record SheetFinding(Severity severity, String suspect, String finding) {
  /** How bad it is. */
  public enum Severity {
    /** No such module exists, or two figures contradict each other: results would be wrong. */
    FAIL,
    /** Unusual, but possible. */
    CAUTION
  }
}
