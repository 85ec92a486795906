package greyspell.report;

import greyspell.quantity.BadInput;
import greyspell.quantity.Place;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** One text file, written whole or not at all. */
public final class TextFile {
  private TextFile() {}

  public static void write(Path file, String text) {
    if (Files.isDirectory(file)) {
      throw BadInput.of(
          Place.of(file.toString()), "this is a folder", "must be a file", "Name a file in it.");
    }
    Path parent = file.getParent();
    Path folder = parent == null ? Path.of(".") : parent;
    try (var deliver = new Deliver(folder)) {
      deliver.write(file.getFileName().toString(), text.getBytes(StandardCharsets.UTF_8));
      deliver.done();
    }
  }
}
