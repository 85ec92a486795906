package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whether page one can be read by those whom it is for, and each language by its own readers. */
class ReadingTest {
  /** Units that everyone meets on a bill or a label; kWh and W are explained on the page. */
  private static final Set<String> KNOWN = Set.of("kWh", "W", "kW");

  private static final double MOST_GRADE = 8.0;

  static List<String> sentencesOf(List<Block> blocks) {
    var said = new ArrayList<String>();
    for (Block block : blocks) {
      if (block instanceof Block.Text t) {
        said.add(t.text());
      } else if (block instanceof Block.Verdict v) {
        said.add(v.headline());
        said.addAll(v.more());
      } else if (block instanceof Block.Items i) {
        said.addAll(i.items());
      } else if (block instanceof Block.Heading h) {
        said.add(h.text() + ".");
      }
    }
    return said;
  }

  /**
   * Flesch-Kincaid grade level: 0.39 words a sentence + 11.8 syllables a word - 15.59 (Kincaid et
   * al. 1975, from memory). Syllables are counted as groups of vowels, a silent e left out.
   */
  private static double grade(String text) {
    int sentences = 0, words = 0, syllables = 0;
    for (String sentence : text.split("[.!?:]+(\\s|$)", -1)) {
      int before = words;
      for (String word : sentence.split("[^A-Za-z']+", -1)) {
        if (word.length() > 0) {
          words++;
          syllables += syllables(word.toLowerCase(Locale.ROOT));
        }
      }
      sentences += words > before ? 1 : 0;
    }
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
  }

  private static int syllables(String word) {
    String spoken =
        word.length() > 3 && word.endsWith("e") ? word.substring(0, word.length() - 1) : word;
    Matcher vowels = Pattern.compile("[aeiouy]+").matcher(spoken);
    int count = 0;
    while (vowels.find()) {
      count++;
    }
    return Math.max(1, count);
  }

  @Test
  void theFormulaKnowsEasyFromHard() {
    assertTrue(grade("The cat sat on the mat. It was warm.") < 2.0);
    assertTrue(
        grade("Institutional photovoltaic electrification necessitates comprehensive evaluation.")
            > 15.0);
  }

  @Test
  void pageOneIsPlainEnoughForASchoolchild() {
    String text = String.join(" ", sentencesOf(HandedOver.english().pages.client()));
    double grade = grade(text);
    assertTrue(grade <= MOST_GRADE, "grade " + grade + ": " + text);
  }

  @Test
  void noAbbreviationOnPageOneIsUnexplained() {
    String text = String.join(" ", sentencesOf(HandedOver.english().pages.client()));
    for (var appliance : HandedOver.english().result.scenario().load().appliances()) {
      text = text.replace(appliance.name(), "");
    }
    // the user's own word too
    text = text.replace(HandedOver.english().result.scenario().costs().currency(), "");
    var found = new TreeSet<String>();
    // two capitals together, or a unit with a capital inside
    Matcher short_ = Pattern.compile("\\b([A-Z]{2,}[a-z]*|k?[WV]h?|SOC|MPPT|Ah)\\b").matcher(text);
    while (short_.find()) {
      if (!KNOWN.contains(short_.group(1))) {
        found.add(short_.group(1));
      }
    }
    assertEquals(Set.of(), found, text);
    for (String unit : List.of("kWh", "W")) {
      assertTrue(text.contains("(" + unit + ")"), unit + " is not explained");
    }
  }
}
