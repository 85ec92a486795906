package greyspell.report;

import greyspell.study.StudyResult;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/** What every page must warn of, one a line in {@code cautions.txt}, after the result's own. */
public final class Cautions {
  private Cautions() {}

  static List<String> all(StudyResult result) {
    var all = new LinkedHashSet<>(result.cautions());
    all.addAll(usual());
    return List.copyOf(all);
  }

  static List<String> usual() {
    return usual("en");
  }

  /** What every page must warn of, in a language by its code. */
  public static List<String> usual(String language) {
    var lines = new ArrayList<String>();
    String name = "/greyspell/report/cautions" + Checklist.ending(language);
    var file = Cautions.class.getResourceAsStream(name);
    if (file == null) {
      throw new IllegalStateException(name + " is not in the program");
    }
    try (var reader = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (!line.isBlank()) {
          lines.add(line.strip());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return lines;
  }
}
