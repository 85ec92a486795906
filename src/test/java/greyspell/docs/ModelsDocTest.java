package greyspell.docs;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Writes docs/models.md from the equation blocks in the Javadoc of the model classes. */
class ModelsDocTest {
  private static final List<String> ROOMS =
      List.of(
          "weather",
          "weather/ensemble",
          "sky",
          "array",
          "load",
          "storage",
          "storage/step",
          "power",
          "electrical",
          "balance",
          "outcome",
          "cause/log",
          "sizing",
          "study");

  private static final Pattern CLASS_DOC =
      Pattern.compile(
          "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:@\\w+(?:\\([^)]*\\))?\\s*)*(?:public )?(?:final |sealed |abstract )*(?:class|record|enum|interface) (\\w+)",
          Pattern.DOTALL);

  private static final String HEAD =
      """
      # The models

      Every equation that turns weather and data sheets into energy, with symbols, units, valid range and source. Written from the comments in the
      code by `mvn test -Ddocs=write`; a test fails when this page is behind. What each is held against stands in
      [validation.md](validation.md), words in [words.md](words.md).
      """;

  @Test
  void modelsPageIsInStep() throws IOException {
    var page = new StringBuilder(HEAD);
    int models = 0;
    for (String room : ROOMS) {
      page.append("\n## ").append(room).append('\n');
      try (var files = Files.list(Path.of("src/main/java/greyspell", room))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
          var doc = CLASS_DOC.matcher(Files.readString(file));
          if (doc.find() && doc.group(1).contains("<pre>")) {
            page.append("\n### ")
                .append(doc.group(2))
                .append("\n\n")
                .append(markdown(doc.group(1)));
            models++;
          }
        }
      }
    }
    assertTrue(models > 5, "models found: " + models);
    GeneratedDoc.check(Path.of("docs/models.md"), page.toString());
  }

  private static String markdown(String javadoc) {
    String text =
        Pattern.compile("(?m)^[ ]*\\*? ?").matcher(javadoc.replace("\n", "\n")).replaceAll("");
    text = text.replaceAll("(?m)^ *\\* ?", "");
    text = text.replaceAll("\\{@code ([^}]*)\\}", "`$1`");
    text = text.replaceAll("\\{@value ([^}]*)\\}", "`$1`");
    text = text.replaceAll("\\{@link(?:plain)? #?([^} ]*)(?: [^}]*)?\\}", "`$1`");
    text = text.replace("<pre>", "```").replace("</pre>", "```").replace("<p>", "");
    text = text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
    text =
        text.replaceAll("</?(?:ul|b|i|code)>", "").replaceAll("<li>", "- ").replaceAll("</li>", "");
    text = text.replaceAll("(?m)^@param (\\w+) ", "- `$1` ");
    text = text.replaceAll("(?m)[ ]+$", "");
    return text.strip() + "\n";
  }
}
