package greyspell.docs;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Writes docs/validation.md from every published check in the test tree. */
class ValidationDocTest {
  private static final String HEAD =
      """
      # Held against the outside

      Every line is a test: a value from a published source, what this program computes for it, and how far the two may be apart. The allowed
      difference is half the last printed digit of the source, the source's own stated error, or a bar of our own where the line's head says so. "From
      memory" marks a source of which no copy was opened here. "Worked out apart" and "recomputed" mark a source that gives the equation only: the figure
      under "printed" is then our own, worked out with other code, and agreement shows that the equation is programmed as it was read, no more. This page is written by the tests (`mvn test -Ddocs=write`) and a test fails when it is behind the code.

      Checks on real measured weather, on weather files of the open formats and on building-energy reference results need data that is not
      shipped ("the validation data"); they stand at the end of this page in words, and run wherever that data lies at
      `-Dgreyspell.validation=FOLDER`.
      """;

  @Test
  void validationPageIsInStep() throws ReflectiveOperationException, IOException {
    var rooms = new TreeMap<String, TreeMap<String, List<PublishedCheck>>>();
    int count = 0;
    for (var type : new ClassFileImporter().importPackages("greyspell")) {
      Class<?> reflected = type.reflect();
      if (!PublishedChecks.class.isAssignableFrom(reflected) || reflected.isInterface()) {
        continue;
      }
      var constructor = reflected.getDeclaredConstructor();
      constructor.setAccessible(true);
      for (var check : ((PublishedChecks) constructor.newInstance()).checks()) {
        rooms
            .computeIfAbsent(check.room(), r -> new TreeMap<>())
            .computeIfAbsent(check.source(), s -> new ArrayList<>())
            .add(check);
        count++;
      }
    }
    assertTrue(count > 0, "no published check found");
    var page = new StringBuilder(HEAD);
    rooms.forEach(
        (room, sources) -> {
          page.append("\n## ").append(room).append('\n');
          sources.forEach(
              (source, checks) -> {
                page.append("\n**").append(source).append("**\n\n");
                page.append("| case | unit | printed | here | allowed |\n|---|---|---|---|---|\n");
                for (var check : checks) {
                  page.append("| ").append(check.what().replace("|", "/"));
                  page.append(" | ").append(check.unit());
                  page.append(" | ").append(plain(check.expected()));
                  page.append(" | ").append(rounded(check.got().getAsDouble(), check.tolerance()));
                  page.append(" | ").append(plain(check.tolerance())).append(" |\n");
                }
              });
        });
    page.append(ValidationDataNotes.text());
    GeneratedDoc.check(Path.of("docs/validation.md"), page.toString());
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** To a tenth of what is allowed, so that the last bits of a machine do not show. */
  private static String rounded(double value, double tolerance) {
    int digits = tolerance > 0.0 ? (int) Math.ceil(-Math.log10(tolerance)) + 1 : 9;
    return BigDecimal.valueOf(value)
        .setScale(Math.max(0, digits), RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
