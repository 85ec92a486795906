package greyspell.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * What was seen on the validation data (not shipped): words and figures kept beside the tests that
 * hold them.
 */
final class ValidationDataNotes {
  private ValidationDataNotes() {}

  static String text() {
    try (var in = ValidationDataNotes.class.getResourceAsStream("/published/validation-data.md")) {
      return in == null ? "" : "\n" + new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
