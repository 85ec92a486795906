package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.cause.Said;
import greyspell.cause.SaidValue.Clock;
import greyspell.cause.SaidValue.Day;
import greyspell.cause.SaidValue.Energy;
import greyspell.cause.SaidValue.Hours;
import greyspell.words.Units;
import greyspell.words.Words;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class SpellInShortTest {
  private static final Pattern VALUE = Pattern.compile("\\{(\\d+)");

  private static Set<String> values(String pattern) {
    var found = new HashSet<String>();
    var matcher = VALUE.matcher(pattern);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  @Test
  void pageOnesOwnWordsTellNoValueThatTheSentenceHasNot() {
    for (String language : Words.LANGUAGES) {
      Words words = Words.of(language, Units.METRIC);
      int own = 0;
      for (String key : words.keys()) {
        String full = key.startsWith(ClientPage.OWN) ? key.substring(ClientPage.OWN.length()) : "";
        if (words.has(full)) {
          own++;
          assertTrue(values(words.pattern(full)).containsAll(values(words.pattern(key))), key);
        }
      }
      assertTrue(own >= 15, language + ": " + own);
    }
  }

  @Test
  void aYearIsNamedOnceAndWhatHasNoShortWordsIsLeft() {
    var story =
        List.of(
            Said.of("story.began.full", new Day(LocalDate.of(2022, 12, 9), true), new Clock(15)),
            Said.of("story.longest", new Hours(7)),
            Said.of("story.cut", new Energy(82_700), new Hours(383)),
            Said.of(
                "story.recovered",
                new Day(LocalDate.of(2023, 2, 2), true),
                new Clock(13),
                new Energy(1),
                new Energy(2)));
    assertEquals(
        "The bank was last full on 9 December 2022. 82.7 kWh was missing, in 383 hours."
            + " On 2 February 2023 the bank came back to half.",
        SpellInShort.story(story, Words.of("en", Units.METRIC)));
  }
}
