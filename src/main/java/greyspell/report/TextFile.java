package greyspell.report;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** One text file, written whole or not at all. */
public final class TextFile {
  private TextFile() {}

  public static void write(Path file, String text) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      throw new IllegalArgumentException("no file: " + file);
    }
    try (var deliver = new Deliver(folder)) {
      deliver.write(file.getFileName().toString(), text.getBytes(StandardCharsets.UTF_8));
      deliver.done();
    }
  }
}
