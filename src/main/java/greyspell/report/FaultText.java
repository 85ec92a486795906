package greyspell.report;

import greyspell.quantity.Fault;

/** A fault as it is shown on a terminal. */
public final class FaultText {
  private static final String INDENT = "    ";

  private FaultText() {}

  /**
   * The lines of {@link Fault#text}, those that explain no wider than a terminal; the first stays
   * whole, so that editors can jump to its place.
   */
  public static String of(Fault fault) {
    var text = new StringBuilder();
    fault.text().lines().forEach(line -> add(text, line));
    return text.toString().stripTrailing();
  }

  private static void add(StringBuilder text, String line) {
    if (text.length() > 0 && line.startsWith(INDENT)) {
      Columns.wrap(text, INDENT, line.substring(INDENT.length()));
    } else {
      text.append(line).append('\n');
    }
  }
}
