package greyspell.scenario;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import greyspell.quantity.BadInput;
import greyspell.quantity.Fault;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to a good file, the answer is a scenario or a list of faults. */
class ScenarioFuzzTest {
  private static final int RUNS = 1500;
  private static final long SEED = 20260117L;
  private static final String[] SCRAPS = {
    ":",
    "-",
    "{",
    "}",
    "[",
    "]",
    ",",
    "\"",
    "'",
    "\n",
    "\t",
    " ",
    "#",
    "&a",
    "*a",
    "!x",
    "|",
    ">",
    "%",
    "°",
    "0",
    "-1",
    "1e308",
    "NaN",
    "~",
    "null",
    "yes",
    "kWh",
    "from: ",
    "\u0000",
    "\ud83d",
    "? ",
    "<<: ",
    "---\n",
    "...",
    "@",
    "9999999999999999999"
  };

  @TempDir Path temp;

  @Test
  void mutatedTextsNeverBreakTheReader() {
    var folder = new TestFolder(temp);
    var random = new Random(SEED);
    var texts = List.of(TestFolder.good(), withLibrary());
    for (int run = 0; run < RUNS; run++) {
      String text = texts.get(run % texts.size());
      int changes = 1 + random.nextInt(4);
      for (int i = 0; i < changes; i++) {
        text = changed(text, random);
      }
      read(folder.file(text), "seed " + SEED + " run " + run + "\n" + text);
    }
  }

  @Test
  void mutatedBytesNeverBreakTheReader() {
    var folder = new TestFolder(temp);
    var random = new Random(SEED + 1);
    for (int run = 0; run < RUNS / 5; run++) {
      byte[] bytes = TestFolder.good().getBytes(StandardCharsets.UTF_8);
      for (int i = 0; i < 1 + run % 5; i++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      read(folder.file(bytes), "seed " + (SEED + 1) + " run " + run);
    }
  }

  private static String withLibrary() {
    return TestFolder.good()
        .replaceAll("(?s)    module:\n.*?controller", "    module: Orrin Bay OB-410H\ncontroller")
        .replaceAll("(?s)inverter:.*?loads:", "inverter: {from: Kestrel Mere KM-5K}\nloads:")
        .replace("    - name: fridge", "    - from: Chest freezer");
  }

  private static void read(Path file, String what) {
    try {
      assertNotNull(ScenarioReader.read(file, TestFolder.LIBRARY));
    } catch (BadInput e) {
      assertFalse(e.faults().isEmpty(), what);
      for (Fault fault : e.faults()) {
        assertFalse(fault.expected().isBlank(), () -> fault + "\n" + what);
      }
    } catch (RuntimeException | StackOverflowError e) {
      throw new AssertionError(what, e);
    }
  }

  private static String changed(String text, Random random) {
    if (text.isEmpty()) {
      return "home: x";
    }
    int at = random.nextInt(text.length());
    return switch (random.nextInt(6)) {
      case 0 -> text.substring(0, at) + scrap(random) + text.substring(at);
      case 1 ->
          text.substring(0, at)
              + text.substring(Math.min(text.length(), at + 1 + random.nextInt(6)));
      case 2 ->
          text.substring(0, at) + scrap(random) + text.substring(Math.min(text.length(), at + 1));
      case 3 -> withoutLine(text, random);
      case 4 -> swappedLines(text, random);
      default -> afterColon(text, random);
    };
  }

  private static String scrap(Random random) {
    return SCRAPS[random.nextInt(SCRAPS.length)];
  }

  private static String withoutLine(String text, Random random) {
    List<String> lines = lines(text);
    lines.remove(random.nextInt(lines.size()));
    return String.join("\n", lines);
  }

  private static String swappedLines(String text, Random random) {
    List<String> lines = lines(text);
    Collections.swap(lines, random.nextInt(lines.size()), random.nextInt(lines.size()));
    return String.join("\n", lines);
  }

  /** A value becomes a scrap. */
  private static String afterColon(String text, Random random) {
    List<String> lines = lines(text);
    int i = random.nextInt(lines.size());
    int colon = lines.get(i).indexOf(": ");
    if (colon >= 0) {
      lines.set(i, lines.get(i).substring(0, colon + 2) + scrap(random));
    }
    return String.join("\n", lines);
  }

  private static List<String> lines(String text) {
    return new ArrayList<>(List.of(text.split("\n", -1)));
  }
}
