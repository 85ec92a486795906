package greyspell.weather;

import java.util.List;
import java.util.Locale;

/** Finds the valid name that a user most likely meant. */
final class NearName {
  private NearName() {}

  /** The nearest name by letters to add, drop or change. */
  static String of(String given, List<String> names) {
    String best = names.get(0);
    for (String name : names) {
      if (distance(given, name) < distance(given, best)) {
        best = name;
      }
    }
    return best;
  }

  static int distance(String given, String name) {
    String a = given.toLowerCase(Locale.ROOT);
    int[] row = new int[name.length() + 1];
    for (int j = 0; j <= name.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= name.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == name.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[name.length()];
  }
}
