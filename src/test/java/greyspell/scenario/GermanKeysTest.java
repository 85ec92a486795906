package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.words.German;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is taken for every key of the scenario file that is left out, and why, in German. */
class GermanKeysTest {
  /** A figure with its unit, a span of hours: the same in all languages. */
  private static final String FIGURE = "-?[\\d.]+( [^ ]{1,7})?|[\\d:-]+";

  @Test
  void reasonsAndValues() {
    Set<String> sentences = new LinkedHashSet<>();
    for (Shape shape : Vocabulary.shapes()) {
      for (Key key : shape.keys()) {
        if (key.need == Key.Need.DEFAULT && !key.why.isEmpty()) {
          sentences.add(key.why);
          if (!key.usual.matches(FIGURE)
              && !key.words.contains(key.usual)
              && key.kind != Key.Kind.FLAG) {
            sentences.add(key.usual);
          }
        }
      }
    }
    assertTrue(sentences.size() > 60, sentences.size() + " sentences");
    German.check(sentences, List.of("stated", "resistance"));
  }

  /**
   * Appliances are called what they are; modules, batteries and the like by their makers' names.
   */
  @Test
  void theLibrarysAppliances() throws IOException {
    Set<String> names = new LinkedHashSet<>();
    for (String line : Files.readAllLines(Path.of("shared/appliances.yaml"))) {
      if (line.startsWith("- name: ")) {
        names.add(line.substring("- name: ".length()).replace("\"", ""));
      }
    }
    assertTrue(names.size() > 90, names.size() + " appliances");
    German.check(names, List.of());
  }
}
