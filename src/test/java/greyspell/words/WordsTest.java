package greyspell.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.cause.Said;
import greyspell.cause.SaidValue.Day;
import greyspell.cause.SaidValue.Days;
import greyspell.cause.SaidValue.Energy;
import greyspell.cause.SaidValue.Litres;
import greyspell.cause.SaidValue.Temperature;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {
  private static final Words EN = Words.of("en", Units.METRIC);
  private static final Words DE = Words.of("de", Units.METRIC);

  @Test
  void allLanguagesHaveTheSameKeysAndNoneIsEmpty() {
    for (String language : Words.LANGUAGES) {
      Words words = Words.of(language, Units.METRIC);
      assertEquals(EN.keys(), words.keys(), language);
      for (String key : words.keys()) {
        assertFalse(words.pattern(key).isBlank(), language + ": " + key);
      }
    }
  }

  @Test
  void allLanguagesHaveTheSamePlacesForValues() {
    for (String language : Words.LANGUAGES) {
      Words words = Words.of(language, Units.METRIC);
      for (String key : EN.keys()) {
        assertEquals(
            Pattern.places(EN.pattern(key)),
            Pattern.places(words.pattern(key)),
            language + ": " + key);
      }
    }
  }

  @Test
  void numbersAreWrittenAsTheLanguageDoes() {
    assertEquals("2,140", EN.number(2140.0, 0));
    assertEquals("2.140", DE.number(2140.0, 0));
    assertEquals("-1,234,567.5", EN.number(-1234567.5, 1));
    assertEquals("12,3 kWh", DE.energy(12_300.0));
    assertEquals("1 day", EN.days(1.0));
    assertEquals("2.4 days", EN.days(2.4));
    assertEquals("1 Stunde", DE.hours(1.0));
    assertEquals("4.2 %", EN.percent(0.042));
    assertEquals("unlimited", EN.number(Double.POSITIVE_INFINITY, 0));
  }

  @Test
  void datesAreWrittenAsTheLanguageDoes() {
    LocalDate day = LocalDate.of(2017, 11, 28);
    assertEquals("28 November 2017", EN.date(day));
    assertEquals("28. November 2017", DE.date(day));
    assertEquals("28. Nov.", DE.shortDay(day));
    assertEquals("28 November", EN.show(new Day(day, false)));
  }

  @Test
  void usUnitsAreShown() {
    Words us = Words.of("en", Units.US);
    assertEquals("3 °F", us.show(new Temperature(-16.0)));
    assertEquals("2.64 gallons", us.show(new Litres(10.0)));
    assertEquals("197 ft", us.length(60.0));
    assertEquals("-16 °C", EN.show(new Temperature(-16.0)));
  }

  @Test
  void placesAreFilled() {
    assertEquals("1 day of 3", Pattern.fill("{0} {0|day|days} of {1}", List.of("1", "3")));
    assertEquals("2 days", Pattern.fill("{0} {0|day|days}", List.of("2")));
    assertThrows(IllegalArgumentException.class, () -> Pattern.fill("{1}", List.of("a")));
  }

  @Test
  void aSentenceWithoutWordsIsAFault() {
    assertThrows(
        IllegalArgumentException.class, () -> EN.say(Said.of("no.such.key", new Energy(1.0))));
    assertThrows(IllegalArgumentException.class, () -> Words.of("xx", Units.METRIC));
    assertEquals("4.2 days", EN.show(new Days(4.2)));
  }
}
