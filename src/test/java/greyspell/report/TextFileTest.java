package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFileTest {
  @TempDir private Path temp = Path.of("");

  @Test
  void writesWholeAndOver() throws IOException {
    Path file = temp.resolve("new/page.md");
    TextFile.write(file, "one");
    TextFile.write(file, "two");
    assertEquals("two", Files.readString(file));
  }

  /** The folder is named as the user named it, not the one above it. */
  @Test
  void aFolderInItsPlaceIsRefused() {
    BadInput fault = assertThrows(BadInput.class, () -> TextFile.write(temp, "text"));
    assertEquals(
        temp + "  this is a folder\n    must be a file\n    Name a file in it.",
        fault.getMessage());
  }
}
