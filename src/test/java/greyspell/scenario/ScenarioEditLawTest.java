package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.nodes.Node;

/** Over every shipped home and every value written in it. */
final class ScenarioEditLawTest {
  static List<Path> homes() throws IOException {
    try (var files = Files.list(Path.of("scenarios"))) {
      return files
          .filter(f -> f.toString().endsWith(".yaml"))
          .sorted(Comparator.comparing(Path::toString))
          .toList();
    }
  }

  private static List<String> paths(String text) {
    Node root = YamlFile.compose(text, "test");
    var paths = new ArrayList<String>();
    for (String path : EditCheck.values(root, Vocabulary.SCENARIO, "").keySet()) {
      if (isOfKeys(path)) {
        paths.add(path);
      }
    }
    return paths;
  }

  /** Not the points of a curve, the months of a list, the directions of a horizon. */
  private static boolean isOfKeys(String path) {
    return !path.endsWith("]") && !path.startsWith("site.horizon");
  }

  private static List<String> comments(String text) {
    return text.lines()
        .filter(line -> line.contains("#"))
        .map(line -> line.substring(line.indexOf('#')))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("homes")
  void setToWhatItIsChangesNothingThatIsRead(Path home) {
    var edit = ScenarioEdit.of(home);
    String before = ScenarioReader.read(home).toString();
    List<String> paths = paths(edit.text());
    assertTrue(paths.size() > 30);
    for (String path : paths) {
      ScenarioEdit same = edit.set(path, String.valueOf(edit.written(path)));
      assertEquals(edit.written(path), same.written(path), path);
      assertEquals(comments(edit.text()), comments(same.text()), path);
      assertEquals(edit.text().lines().count(), same.text().lines().count());
    }
    ScenarioEdit all = edit;
    for (String path : paths) {
      all = all.set(path, String.valueOf(all.written(path)));
    }
    assertEquals(before, all.scenario(null).toString());
  }

  @ParameterizedTest
  @MethodSource("homes")
  void setThenReadGivesTheValueInEitherStyle(Path home) {
    var random = new Random(11);
    for (String lineBreak : List.of("\n", "\r\n")) {
      var edit = ScenarioEdit.ofText(ScenarioEdit.of(home).text().replace("\n", lineBreak), home);
      for (String path : paths(edit.text())) {
        String value = words(random);
        ScenarioEdit changed = edit.set(path, value);
        assertEquals(value, changed.written(path), path);
        assertEquals(comments(edit.text()), comments(changed.text()), path);
        String back = changed.set(path, String.valueOf(edit.written(path))).text();
        assertEquals(edit.text().replace("\"", ""), back.replace("\"", ""));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("homes")
  void everythingWrittenCanBeTakenOutAndKeysPutIn(Path home) {
    var edit = ScenarioEdit.of(home);
    for (String path : paths(edit.text())) {
      int dot = path.lastIndexOf('.');
      boolean isBare =
          dot > 0 && !String.valueOf(edit.written(path.substring(0, dot))).startsWith("{");
      if (!isBare && !path.endsWith(".from")) {
        assertNull(edit.remove(path).written(path), path);
      }
    }
    for (int i = 0; i < edit.count("loads.appliances"); i++) {
      String path = "loads.appliances[" + i + "]";
      assertEquals("a, b: c", edit.set(path + ".note", "a, b: c").written(path + ".note"));
      assertEquals(edit.count("loads.appliances") - 1, edit.remove(path).count("loads.appliances"));
    }
    for (int i = 0; i < edit.count("arrays"); i++) {
      String path = "arrays[" + i + "].module.note";
      assertEquals("#1", edit.set(path, "#1").written(path));
    }
    String generator = "from: X\nstart_below: 30 %   # mine";
    ScenarioEdit with = edit.set("generator", generator);
    assertEquals("30 %", with.written("generator.start_below"));
    assertTrue(
        with.set("generator.start_below", "40 %").text().contains("40 %   # mine"),
        with.set("generator.start_below", "40 %").text().toString());
  }

  private static String words(Random random) {
    String signs = "ab ,:{}[]\"'\\%&*!|>-?°é\u00e9 @`~3.";
    var out = new StringBuilder("x");
    for (int i = random.nextInt(12); i >= 0; i--) {
      out.append(signs.charAt(random.nextInt(signs.length())));
    }
    return out.append('y').toString();
  }
}
