package greyspell.scenario;

import greyspell.quantity.Place;
import greyspell.scenario.WeatherChoice.WeatherPath;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.nodes.Node;

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
    return text.isBlank() && key.need == Key.Need.REQUIRED
        ? ""
        : resolved(block, key, text, block.place(key));
  }

  /** A file, or a list of them; those that are not there are faults. Empty if left out. */
  List<WeatherPath> all(Block block, Key key) {
    var files = new ArrayList<WeatherPath>();
    if (!block.has(key)) {
      return files;
    }
    if (!block.isList(key)) {
      files.add(new WeatherPath(block.text(key), resolved(block, key)));
      return files;
    }
    List<Node> items = block.list(key);
    if (items.isEmpty()) {
      block
          .border()
          .fault(
              block.place(key),
              key.name + ": found an empty list",
              "must hold the path of a file",
              "");
    }
    for (Node item : items) {
      String text = block.textBelow(key, item);
      if (text != null) {
        Place place = Block.placeIn(item, block.file(key));
        files.add(new WeatherPath(text.strip(), resolved(block, key, text.strip(), place)));
      }
    }
    return files;
  }

  private String resolved(Block block, Key key, String text, Place place) {
    try {
      Path path = folder.resolve(text).normalize();
      if (Files.isRegularFile(path)) {
        return path.toString();
      }
      block
          .border()
          .fault(
              place,
              Border.found(key.name, text),
              Files.isDirectory(path)
                  ? "must be a file, and this is a folder"
                  : "must be a file that exists, and there is none at "
                      + Border.shown(path.toString()),
              "The path is relative to the scenario file's folder.");
    } catch (InvalidPathException e) {
      block.border().fault(place, Border.found(key.name, text), "must be the path of a file", "");
    }
    return "";
  }
}
