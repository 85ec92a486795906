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
            int found = english.replaceAll("(\\d)[#!]}", "$1}").indexOf("{" + place + "}");
            assertTrue(found > at, "out of order: " + english);
            at = found;
          }
        }
      }
    }
  }

  /** None is taken for another, however short that one is and wherever it stands. */
  @Test
  void everySentenceFindsItsOwnTranslation() {
    List<String> lines = ReadyWords.lines("ready_de.txt");
    ReadyWords words = ReadyWords.of(lines);
    for (int k = 0; k < lines.size(); k += 2) {
      for (String whatever : new String[] {"Q7", "-12.5 °C", "Sow pump, 1/3 hp", "east (upper)"}) {
        String english = lines.get(k), german = lines.get(k + 1);
        for (int place : Pattern.places(english)) {
          english =
              english.replace("{" + place + "}", whatever).replace("{" + place + "#}", "17.5");
          english = english.replace("{" + place + "!}", "new panels");
          String value =
              lines.get(k).contains("{" + place + "#}")
                  ? "17.5"
                  : lines.get(k).contains("{" + place + "!}") ? "neue Module" : whatever;
          german = german.replace("{" + place + "}", value);
        }
        assertEquals(german, words.in(english));
      }
    }
  }

  @Test
  void theSentenceWithTheMostFixedWordsHolds() {
    var words =
        ReadyWords.of(List.of("{0}: {1}", "kurz {0} {1}", "{0}: heat of {1}", "lang {0} {1}"));
    assertEquals("lang a b", words.in("a: heat of b"));
    assertEquals("kurz a cold", words.in("a: cold"));
  }

  @Test
  void aPlaceMayAskForANumberOrASentence() {
    var words = ReadyWords.of(List.of("{0#} bars, {1!}", "{0} Stangen, {1}", "two", "zwei"));
    assertEquals("3.5 Stangen, zwei", words.in("3.5 bars, two"));
    assertNull(words.in("some bars, two"));
    assertNull(words.in("3.5 bars, three"));
  }

  @Test
  void partsAreTranslatedAllOrNoneAndAFullStopMayLack() {
    var words = ReadyWords.of(List.of("one", "eins", "It is {0}.", "Es ist {0}."));
    assertEquals("eins; Es ist grau.", words.in("one; It is grau."));
    assertNull(words.in("one; three"));
    assertEquals("Es ist grau", words.in("It is grau"));
  }

  @Test
  void datesAreTheLanguages() {
    assertEquals(
        "8760 Stunden ab 3. März 2019; kein Wert für 5 h ab 1. Mai 2019 7:00",
        GERMAN.translated("8760 hours from 3 March 2019; no value for 5 h from 1 May 2019 7:00"));
    assertEquals(
        "8760 hours from 3 March 2019",
        Words.of("en", Units.US).translated("8760 hours from 3 March 2019"));
  }

  @Test
  void aThingWithoutANameIsCalledInTheLanguage() {
    assertEquals("gemessenes Protokoll", GERMAN.name("measured log"));
    assertEquals("byre roof", GERMAN.name("byre roof"));
    assertEquals("measured log", Words.of("en", Units.METRIC).name("measured log"));
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
