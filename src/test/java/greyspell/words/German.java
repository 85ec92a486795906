package greyspell.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Whether what a room has written in English is German on a German page. */
public final class German {
  public static final Words WORDS = Words.of("de", Units.METRIC);

  /** Words of the English sentences that no German one has. */
  private static final Set<String> ENGLISH = english();

  private German() {}

  private static Set<String> english() {
    var english = new TreeSet<String>();
    List<String> lines = ReadyWords.lines("ready_de.txt");
    for (int k = 0; k < lines.size(); k += 2) {
      english.addAll(words(lines.get(k)));
    }
    for (int k = 1; k < lines.size(); k += 2) {
      english.removeAll(words(lines.get(k)));
    }
    WORDS.keys().forEach(key -> english.removeAll(words(WORDS.pattern(key))));
    return english;
  }

  /** Units and keys of the scenario file (full_charge_every) aside. */
  private static List<String> words(String text) {
    String plain = text.replaceAll("\\{\\d+[#!]?}|[A-Za-z]+(_[A-Za-z0-9]+)+", " ");
    return List.of(plain.toLowerCase(Locale.ROOT).split("[^a-zäöüß']+", -1)).stream()
        .filter(word -> word.length() > 1)
        .toList();
  }

  /** English words in a German text, the names aside. */
  public static Set<String> englishIn(String german, Collection<String> names) {
    String text = german;
    for (String name : names) {
      text = text.replace(name, " ");
    }
    var found = new TreeSet<>(words(text));
    found.retainAll(ENGLISH);
    return found;
  }

  /** Fails with all sentences that have no German, or English words left in it. */
  public static void check(Collection<String> sentences, Collection<String> names) {
    var wrong = new LinkedHashSet<String>();
    for (String english : sentences) {
      String german = WORDS.translated(english);
      if (german == null) {
        wrong.add("NONE: " + english);
      } else if (!englishIn(german, names).isEmpty()) {
        wrong.add(englishIn(german, names) + ": " + german);
      }
    }
    assertEquals("", String.join("\n", wrong));
  }
}
