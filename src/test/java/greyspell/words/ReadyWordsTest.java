package greyspell.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadyWordsTest {
  private static final Words GERMAN = Words.of("de", Units.METRIC);

  @Test
  void everySentenceHasItsTranslationWithTheSamePlacesInOrder() {
    for (String language : Words.LANGUAGES) {
      if (!language.equals("en")) {
        List<String> lines = ReadyWords.lines("ready_" + language + ".txt");
        assertEquals(0, lines.size() % 2);
        var seen = new HashSet<String>();
        for (int k = 0; k < lines.size(); k += 2) {
          String english = lines.get(k);
          assertTrue(seen.add(english), "twice: " + english);
          assertEquals(Pattern.places(english), Pattern.places(lines.get(k + 1)), english);
          int at = -1;
          for (int place : Pattern.places(english)) {
            int found = english.indexOf("{" + place + "}");
            assertTrue(found > at, "out of order: " + english);
            at = found;
          }
        }
      }
    }
  }

  @Test
  void valuesAreTakenOverWithTheLanguagesPointAndUnits() {
    String english =
        "6 in series work at 163.2 V with cells at 62.8 °C; the tracking window begins"
            + " at 80 V: 83.2 V of room";
    assertEquals(
        "6 in Reihe arbeiten bei 163,2 V mit Zellen von 62,8 °C; der Arbeitsbereich beginnt bei"
            + " 80 V: 83,2 V Spielraum",
        GERMAN.translated(english));
    assertEquals(
        "6 in Reihe arbeiten bei 163,2 V mit Zellen von 145 °F; der Arbeitsbereich beginnt bei"
            + " 80 V: 83,2 V Spielraum",
        Words.of("de", Units.US).translated(english));
  }

  @Test
  void namesStayAndTheProgramsOwnWordsWithinAreTranslatedToo() {
    assertEquals(
        "Module zum Regler, Scheune: Erwärmung",
        GERMAN.translated("array to controller, Scheune: heat"));
    assertEquals(
        "Vier Reihen nebeneinander: Jede braucht Überstromschutz",
        GERMAN.translated("Four strings side by side: each needs overcurrent protection"));
    assertEquals(
        "Kettle $1 nimmt 2,00 kW; der Wechselrichter hält 5,00 kW",
        GERMAN.translated("Kettle $1 takes 2.00 kW; the inverter holds 5.00 kW"));
  }

  @Test
  void theParagraphOfACodeKeepsItsPoint() {
    assertEquals(
        "Faktoren nach NEC 690.8, Ausgaben 2017 bis 2023 (aus dem Gedächtnis)",
        GERMAN.translated("factors of NEC 690.8, 2017 to 2023 editions (from memory)"));
  }

  @Test
  void whatIsNotInTheListIsNotMadeUpAndEnglishStays() {
    assertNull(GERMAN.translated("a sentence that nobody wrote"));
    assertEquals("a sentence", Words.of("en", Units.METRIC).translated("a sentence"));
  }
}
