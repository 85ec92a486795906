package greyspell.handover;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.util.Set;

/**
 * Where a line on paper may end: at a space, unless it stands between a number and its unit, and
 * after a hyphen or a slash between letters. Times ("15:00") and fractions ("1/2 hp") stay whole.
 */
final class LineBreaks implements FSTextBreaker {
  private static final Set<String> UNITS =
      Set.of(
          "kWh", "kW", "Wh", "W", "V", "A", "Ah", "%", "°C", "°F", "K", "m", "ft", "hp", "PS",
          "mm²");

  private static final char NO_BREAK = '\u00a0';

  private String text = "";
  private int at;

  @Override
  public void setText(String newText) {
    text = newText;
    at = 0;
  }

  /** The next place, the text's end being the last; -1 beyond it. */
  @Override
  public int next() {
    if (at >= text.length()) {
      return -1;
    }
    at++;
    while (at < text.length() && !mayBreak(at)) {
      at++;
    }
    return at;
  }

  /** For the screen, whose lines end where they like: numbers and units joined. */
  static String joined(String words) {
    var breaks = new LineBreaks();
    breaks.setText(words);
    var out = new StringBuilder(words);
    for (int place = 2; place < words.length(); place++) {
      if (words.charAt(place - 1) == ' ' && breaks.isBeforeUnit(place)) {
        out.setCharAt(place - 1, NO_BREAK);
      }
    }
    return out.toString();
  }

  private boolean mayBreak(int place) {
    char before = text.charAt(place - 1), after = text.charAt(place);
    if (Character.isWhitespace(before)) {
      return !Character.isWhitespace(after) && !isBeforeUnit(place);
    }
    boolean isJoint = before == '-' || before == '/' || before == '_';
    return isJoint
        && place >= 2
        && Character.isLetter(text.charAt(place - 2))
        && Character.isLetter(after);
  }

  private boolean isBeforeUnit(int place) {
    if (place < 2 || !Character.isDigit(text.charAt(place - 2))) {
      return false;
    }
    int end = place;
    while (end < text.length() && " ,.;:)".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return UNITS.contains(text.substring(place, end));
  }
}
