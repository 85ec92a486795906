package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files with something wrong in them. bad-files.txt holds the corpus: each case is a change to
 * good.yaml ({@code - old} becomes {@code + new}) and the faults that must come out, all of them,
 * word by word.
 */
class BadFilesTest {
  @TempDir Path temp;
  private TestFolder folder;

  @BeforeEach
  void makeFolder() {
    folder = new TestFolder(temp);
  }

  private record Case(String title, String text, String faults) {}

  private static List<Case> corpus() {
    var cases = new ArrayList<Case>();
    for (String block : TestFolder.resource("bad-files.txt").split("(?m)^=== ", -1)) {
      if (block.isBlank() || block.startsWith("#")) {
        continue;
      }
      String title = block.substring(0, block.indexOf('\n'));
      String text = TestFolder.good();
      var faults = new ArrayList<String>();
      String old = "";
      for (String line : block.substring(title.length() + 1).split("\n", -1)) {
        if (line.startsWith("- ")) {
          old = line.substring(2).replace("\\n", "\n").replace("\\t", "\t");
          assertTrue(text.contains(old), title + ": " + old);
        } else if (line.startsWith("+ ") || line.equals("+")) {
          String changed = line.length() < 2 ? "" : line.substring(2);
          text = text.replace(old, changed.replace("\\n", "\n").replace("\\t", "\t"));
        } else if (!line.isBlank()) {
          faults.add(line);
        }
      }
      cases.add(new Case(title, text, String.join("\n", faults)));
    }
    return cases;
  }

  @TestFactory
  List<DynamicTest> tellsEveryFault() {
    var tests = new ArrayList<DynamicTest>();
    for (Case one : corpus()) {
      tests.add(
          DynamicTest.dynamicTest(
              one.title(), () -> assertEquals(one.faults(), folder.faults(one.text()))));
    }
    assertTrue(tests.size() >= 40, "cases: " + tests.size());
    return tests;
  }

  @Test
  void emptyFile() {
    assertEquals(
        """
        home.yaml  the file is empty
            must hold a scenario in YAML
            Make a starter with: greyspell new FILE""",
        folder.faults("# nothing but a remark\n"));
  }

  @Test
  void missingFileAndFolder() {
    assertEquals(
        """
        none.yaml  no such file
            must be a file that exists
            Check the spelling and the folder.""",
        folder.faults(temp.resolve("none.yaml")));
    assertTrue(folder.faults(temp).contains("this is a folder"));
  }

  @Test
  void bytesThatAreNotUtf8() {
    byte[] bytes = "home: x\nnote: -16 \u00b0C\n".getBytes(StandardCharsets.ISO_8859_1);
    assertEquals(
        """
        home.yaml:2:11  bytes that are not UTF-8 text
            must be plain text in UTF-8
            Save it as UTF-8; the degree sign may also be written "deg" or "C".""",
        folder.faults(folder.file(bytes)));
  }

  @Test
  void hugeFileIsRefusedAtOnce() throws IOException {
    Path file = temp.resolve("huge.yaml");
    try (var huge = new RandomAccessFile(file.toFile(), "rw")) {
      huge.setLength(100_000_000L);
    }
    assertTimeout(
        Duration.ofSeconds(1),
        () ->
            assertTrue(folder.faults(file).startsWith("huge.yaml  the file is larger than 1 MB")));
    Files.delete(file);
  }

  @Test
  void binaryRubbish() {
    assertTrue(
        folder.faults("home: a\n\u0000\u0001\u0002\n").contains("a character that a text cannot"));
  }

  @Test
  void aliasBombsAndDeepNests() {
    String bomb =
        """
        a: &a [x,x]
        b: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]
        c: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]
        d: [*c,*c,*c,*c,*c,*c,*c,*c,*c]
        """;
    assertTrue(folder.faults(bomb).contains("nested or referred to too often"));
    assertTrue(folder.faults("[".repeat(5000)).contains("nested or referred to too often"));
    assertTrue(folder.faults("home: &x [*x]\n").contains("home: found a list"));
  }

  @Test
  void thousandsOfFaultsAreCounted() {
    var text = new StringBuilder(TestFolder.good());
    for (int i = 0; i < 1000; i++) {
      text.append("zzz").append(i).append(": 1\n");
    }
    assertTrue(folder.faults(text.toString()).contains("900 more faults"));
  }

  @Test
  void noLibrary() {
    Path alone =
        folder.file(
            TestFolder.good().replaceFirst("(?s)inverter:.*?loads:", "inverter: Some Box\nloads:"));
    var border = new Border();
    assertEquals(
        null,
        new Library(null)
            .entry(
                PowerKeys.INVERTER,
                "Some Box",
                new greyspell.quantity.Place("home.yaml", 3, 4),
                "inverter",
                border));
    assertTrue(
        folder
            .faults(alone)
            .contains("must be the name of one of the 11 entries in shared/inverters.yaml"));
  }
}
