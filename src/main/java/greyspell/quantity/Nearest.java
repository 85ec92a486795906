package greyspell.quantity;

import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The word that a mistyped one was probably meant to be. */
public final class Nearest {
  private static final int LONGEST = 80;

  private Nearest() {}

  /** Null if none is near: more than about a third of the letters would have to change. */
  public static @Nullable String of(String word, Collection<String> known) {
    String best = null;
    int fewest = Integer.MAX_VALUE;
    String lower = lower(word);
    for (String candidate : known) {
      int edits = edits(lower, lower(candidate));
      if (edits < fewest) {
        fewest = edits;
        best = candidate;
      }
    }
    return fewest <= Math.max(1, word.length() / 3) ? best : null;
  }

  private static String lower(String word) {
    String lower = word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    return lower.length() > LONGEST ? lower.substring(0, LONGEST) : lower;
  }

  /** Letters to insert, drop, change or swap with their neighbour. */
  static int edits(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, 1 + Math.min(last[j], row[j - 1]));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] spare = before;
      before = last;
      last = row;
      row = spare;
    }
    return last[b.length()];
  }
}
