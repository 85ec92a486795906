package greyspell.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide a text is about, without asking for a font: widths of a wide sans serif face, in
 * hundredths of the size, so that real text is rarely wider. Both backends lay out with it and so
 * agree.
 */
final class TextWidth {
  private static final byte[] PLAIN = {
    32, 40, 46, 84, 64, 95, 78, 27, 39, 39, 50, 84, 32, 36, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64,
    64, 64, 34, 34, 84, 84, 84, 53, 100, 68, 69, 70, 77, 63, 58, 77, 75, 29, 29, 66, 56, 86, 75, 79,
    60, 79, 69, 63, 61, 73, 68, 99, 69, 61, 69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35, 63,
    63, 28, 28, 58, 28, 97, 63, 61, 63, 63, 41, 52, 39, 63, 59, 82, 59, 59, 52, 64, 34, 64, 84
  };
  private static final double BOLD_FACTOR = 1.12;
  private static final int OTHER = 70;

  private TextWidth() {}

  static double of(String words, double size, boolean isBold) {
    double sum = 0.0;
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      sum += c >= 32 && c < 127 ? PLAIN[c - 32] : OTHER;
    }
    return sum * 0.01 * size * (isBold ? BOLD_FACTOR : 1.0);
  }

  /** Broken at spaces so that no line is wider than this (a single word may be). */
  static List<String> wrap(String words, double size, boolean isBold, double mostWidth) {
    var lines = new ArrayList<String>();
    int lineStart = 0;
    int lastBreak = -1;
    for (int i = 0; i <= words.length(); i++) {
      if (i < words.length() && (words.charAt(i) != ' ' || isBeforeUnit(words, i))) {
        continue;
      }
      if (lastBreak >= 0 && of(words.substring(lineStart, i), size, isBold) > mostWidth) {
        lines.add(words.substring(lineStart, lastBreak));
        lineStart = lastBreak + 1;
      }
      lastBreak = i;
    }
    lines.add(words.substring(lineStart));
    return lines;
  }

  /** A number is not parted from its unit. */
  private static boolean isBeforeUnit(String words, int space) {
    return words.startsWith(" kWh", space) || words.startsWith(" %", space);
  }
}
