package greyspell.published;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/**
 * The validation data (not shipped): real weather and loads. Tests that need a file skip with a
 * message where it is absent.
 */
public final class ValidationData {
  private ValidationData() {}

  /** Folder given by the system property {@code greyspell.validation}. */
  public static Path folder() {
    return Path.of(System.getProperty("greyspell.validation", "../shared/weather"));
  }

  public static boolean has(String relative) {
    return Files.isReadable(folder().resolve(relative));
  }

  /** The file, or the test is skipped. */
  public static Path file(String relative) {
    Path file = folder().resolve(relative);
    Assumptions.assumeTrue(
        Files.isReadable(file),
        () ->
            "skipped: the validation data (not shipped) has no "
                + file
                + "; set -Dgreyspell.validation=FOLDER");
    return file;
  }
}
