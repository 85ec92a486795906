package greyspell.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A committed document that must equal what the tests make of the code. {@code -Ddocs=write}
 * rewrites it, and fails that run once.
 */
public final class GeneratedDoc {
  private GeneratedDoc() {}

  public static void check(Path file, String made) throws IOException {
    String committed = Files.exists(file) ? Files.readString(file) : "";
    if (committed.equals(made)) {
      return;
    }
    if ("write".equals(System.getProperty("docs"))) {
      Files.writeString(file, made);
      fail(file + " was rewritten; read the difference and run again without -Ddocs=write");
    }
    assertEquals(committed, made, file + " is behind the code: run mvn test -Ddocs=write");
  }
}
