package greyspell.scenario;

import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A folder with weather files beside which a scenario text can be read. */
final class TestFolder {
  static final Path PROJECT = Path.of("").toAbsolutePath();
  static final Path LIBRARY = PROJECT.resolve("shared");

  private final Path folder;

  TestFolder(Path folder) {
    this.folder = folder;
    try {
      Files.writeString(folder.resolve("sample.csv"), "not read by the scenario reader\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String good() {
    return resource("good.yaml");
  }

  static String resource(String name) {
    try (InputStream in = TestFolder.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Path file(String text) {
    return file(text.getBytes(StandardCharsets.UTF_8));
  }

  Path file(byte[] bytes) {
    try {
      return Files.write(folder.resolve("home.yaml"), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Scenario read(String text) {
    return ScenarioReader.read(file(text), LIBRARY);
  }

  /** All faults, the folder left out of their places. */
  String faults(String text) {
    return faults(file(text));
  }

  String faults(Path file) {
    try {
      ScenarioReader.read(file, LIBRARY);
      return "";
    } catch (BadInput e) {
      var lines = new ArrayList<String>();
      for (Fault fault : e.faults()) {
        lines.add(fault.text());
      }
      return String.join("\n", lines)
          .replace(folder.toString() + "/", "")
          .replace(PROJECT + "/", "");
    }
  }

  /** Place and finding of each fault. */
  List<String> findings(String text) {
    var lines = new ArrayList<String>();
    for (String line : faults(text).split("\n", -1)) {
      if (!line.startsWith("    ") && !line.isEmpty()) {
        lines.add(line.replace("home.yaml:", ""));
      }
    }
    return lines;
  }
}
