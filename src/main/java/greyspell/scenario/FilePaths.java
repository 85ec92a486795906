package greyspell.scenario;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Files that a scenario names, relative to its own folder. */
final class FilePaths {
  private final Path folder;

  FilePaths(Path scenarioFile) {
    Path parent = scenarioFile.getParent();
    this.folder = parent == null ? Path.of("") : parent;
  }

  /** Empty after a fault. */
  String resolved(Block block, Key key) {
    if (!block.has(key)) {
      block.missing(key);
      return "";
    }
    String text = block.text(key);
    try {
      Path path = folder.resolve(text).normalize();
      if (text.isBlank() || Files.isRegularFile(path)) {
        return path.toString();
      }
      block
          .border()
          .fault(
              block.place(key),
              Border.found(key.name, text),
              Files.isDirectory(path)
                  ? "must be a file, and this is a folder"
                  : "must be a file that exists, and there is none at "
                      + Border.shown(path.toString()),
              "The path is relative to the scenario file's folder.");
    } catch (InvalidPathException e) {
      block
          .border()
          .fault(block.place(key), Border.found(key.name, text), "must be the path of a file", "");
    }
    return "";
  }
}
