package greyspell.load;

import java.io.IOException;
import java.io.Reader;
import java.util.List;

/** Lines of bounded length, so that a file of rubbish without line ends is not read whole. */
final class LogLines {
  static final int LONGEST = 10_000;
  private static final char BYTE_ORDER_MARK = 0xFEFF; // some spreadsheets begin a file with it
  private final Reader text;
  private final char[] buffer = new char[8192];
  private final StringBuilder line = new StringBuilder();
  private int at;
  private int filled;

  LogLines(Reader text) {
    this.text = text;
  }

  boolean next() throws IOException {
    line.setLength(0);
    boolean hasAny = false;
    while (line.length() <= LONGEST) {
      if (at == filled) {
        filled = text.read(buffer);
        at = 0;
        if (filled < 0) {
          filled = 0;
          return hasAny;
        }
      }
      char c = buffer[at++];
      hasAny = true;
      if (c == '\n') {
        return true;
      }
      if (c != '\r' && c != BYTE_ORDER_MARK) {
        line.append(c);
      }
    }
    return true;
  }

  boolean isTooLong() {
    return line.length() > LONGEST;
  }

  boolean isBlankOrComment() {
    int first = 0;
    while (first < line.length() && line.charAt(first) <= ' ') {
      first++;
    }
    return first == line.length() || line.charAt(first) == '#';
  }

  String text() {
    return line.toString();
  }

  /** Cells without the blanks and quotes around them, and the column at which each begins. */
  void split(List<String> cells, List<Integer> columns) {
    cells.clear();
    columns.clear();
    int from = 0;
    while (from <= line.length()) {
      int to = line.indexOf(",", from);
      if (to < 0) {
        to = line.length();
      }
      String cell = line.substring(from, to).trim();
      if (cell.length() >= 2 && cell.startsWith("\"") && cell.endsWith("\"")) {
        cell = cell.substring(1, cell.length() - 1).trim();
      }
      cells.add(cell);
      columns.add(from + 1);
      from = to + 1;
    }
  }
}
