package greyspell.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Tables and paragraphs of plain text, never wider than a terminal of a hundred columns. */
final class Columns {
  static final int WIDTH = 100;
  private static final String GAP = "  ";

  /** Stands for a blank at which no line ends: a number is not parted from its unit. */
  private static final char TIE = '\u00a0';

  private static final Pattern UNIT =
      Pattern.compile("(\\d) (?=(?:°C|°F|%|V|A|W|kW|kWh|K|m|ft|mm²|mΩ|AWG)(?![\\w]))");
  private static final String TIED = "$1" + TIE;

  private final List<String[]> rows = new ArrayList<>();

  Columns row(String... cells) {
    rows.add(cells);
    return this;
  }

  /** Right-aligned with one blank between, for tables of many columns; the first is as it is. */
  void writeTight(StringBuilder out) {
    int columns = rows.get(0).length;
    var width = new int[columns];
    for (String[] row : rows) {
      for (int c = 0; c < columns; c++) {
        width[c] = Math.max(width[c], row[c].length());
      }
    }
    for (String[] row : rows) {
      var line = new StringBuilder(" ");
      for (int c = 0; c < columns; c++) {
        line.append(' ').append(" ".repeat(width[c] - row[c].length())).append(row[c]);
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
  }

  /** Right-aligned, but for the last column where it holds words. */
  void write(StringBuilder out, boolean isLastLeft) {
    int columns = rows.get(0).length;
    var width = new int[columns];
    for (String[] row : rows) {
      for (int c = 0; c < columns; c++) {
        width[c] = Math.max(width[c], row[c].length());
      }
    }
    for (String[] row : rows) {
      var line = new StringBuilder();
      for (int c = 0; c < columns; c++) {
        String blank = " ".repeat(width[c] - row[c].length());
        boolean isLeft = isLastLeft && c == columns - 1;
        line.append(GAP).append(isLeft ? row[c] : blank.concat(row[c]));
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
  }

  /** A paragraph; its first line begins with {@code first}, the others are set in as far. */
  static void wrap(StringBuilder out, String first, String words) {
    int begin = out.length();
    String indent = " ".repeat(first.length());
    var line = new StringBuilder(first);
    boolean isEmpty = true;
    for (String word : UNIT.matcher(words).replaceAll(TIED).split(" ", -1)) {
      if (!isEmpty && line.length() + 1 + word.length() > WIDTH) {
        out.append(line).append('\n');
        line.setLength(0);
        line.append(indent);
        isEmpty = true;
      }
      if (!isEmpty) {
        line.append(' ');
      }
      line.append(word);
      isEmpty = false;
    }
    out.append(line).append('\n');
    for (int i = begin; i < out.length(); i++) {
      if (out.charAt(i) == TIE) {
        out.setCharAt(i, ' ');
      }
    }
  }
}
