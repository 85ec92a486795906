package greyspell.handover;

import greyspell.cause.Said;
import greyspell.cause.SaidValue;
import greyspell.cause.SaidValue.Day;
import greyspell.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * The story of a spell as page one tells it: fewer words about the same values. A sentence for
 * which the page has no words of its own is left to the pages behind.
 */
final class SpellInShort {
  private SpellInShort() {}

  static String story(List<Said> story, Words words) {
    var told = new ArrayList<String>();
    int year = Integer.MIN_VALUE;
    for (Said sentence : story) {
      if (words.has(ClientPage.OWN + sentence.key())) {
        var values = new ArrayList<SaidValue>();
        for (SaidValue value : sentence.values()) {
          values.add(value instanceof Day day ? withoutYear(day, year) : value);
          year = value instanceof Day day ? day.date().getYear() : year;
        }
        told.add(words.say(new Said(ClientPage.OWN + sentence.key(), values)));
      }
    }
    return String.join(" ", told);
  }

  /** A year that has just been named is not named again. */
  private static Day withoutYear(Day day, int named) {
    return new Day(day.date(), day.isYearShown() && day.date().getYear() != named);
  }
}
