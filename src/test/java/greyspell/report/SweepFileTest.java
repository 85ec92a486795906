package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SweepFileTest {
  private static final List<String> HEADER = List.of("home", "value", "fault");

  @TempDir private Path temp = Path.of("");

  private Path table() {
    return temp.resolve("deep/table.csv");
  }

  private SweepFile open(String stamp) {
    return SweepFile.open(table(), stamp, HEADER.size(), 4);
  }

  private void leaveTwoRows() {
    try (SweepFile file = open("abc")) {
      file.append(2, List.of("Häuschen, klein", "30", ""));
      file.append(0, List.of("B", "1", "said \"no\""));
    }
  }

  private static BitSet runs(int... numbers) {
    var set = new BitSet();
    Arrays.stream(numbers).forEach(set::set);
    return set;
  }

  @Test
  void rowsAreTakenOverAndWrittenInOrder() throws IOException {
    leaveTwoRows();
    try (SweepFile file = open("abc")) {
      assertEquals(runs(0, 2), file.done());
      assertFalse(file.isOfAnotherQuestion());
      file.append(1, List.of("C", "2", ""));
      file.append(3, List.of("D", "3", ""));
      file.finish(HEADER);
    }
    assertEquals(
        List.of(
            "home,value,fault",
            "B,1,\"said \"\"no\"\"\"",
            "C,2,",
            "\"Häuschen, klein\",30,",
            "D,3,"),
        Files.readAllLines(table()));
    try (var files = Files.list(table().getParent())) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void atWhateverByteItWasCutTheWholeRowsBeforeAreKept() throws IOException {
    leaveTwoRows();
    Path part = SweepFile.unfinished(table());
    byte[] whole = Files.readAllBytes(part);
    String text = new String(whole, StandardCharsets.UTF_8);
    int head = text.indexOf('\n') + 1;
    int first =
        head
            + text.substring(head, text.indexOf('\n', head) + 1)
                .getBytes(StandardCharsets.UTF_8)
                .length;
    for (int cut = 0; cut <= whole.length; cut++) {
      Files.write(part, Arrays.copyOf(whole, cut));
      try (SweepFile file = open("abc")) {
        BitSet kept = cut == whole.length ? runs(0, 2) : cut >= first ? runs(2) : runs();
        assertEquals(kept, file.done(), "cut at " + cut);
        file.append(3, List.of("D", "3", ""));
      }
      try (SweepFile file = open("abc")) {
        assertTrue(file.done().get(3), "cut at " + cut);
        assertEquals(HEADER.size(), file.rows().get(0).size());
      }
    }
  }

  /** A sweep that was refused before its first row leaves nothing behind. */
  @Test
  void nothingStaysWhereNoRowWasFinished() {
    open("abc").close();
    assertFalse(Files.exists(SweepFile.unfinished(table())));
  }

  @Test
  void rowsOfAnotherQuestionAreNotTaken() {
    leaveTwoRows();
    try (SweepFile file = open("xyz")) {
      assertTrue(file.isOfAnotherQuestion());
      assertEquals(runs(), file.done());
    }
    try (SweepFile file = open("xyz")) {
      assertFalse(file.isOfAnotherQuestion());
    }
  }

  @Test
  void whatIsNoRowOfItEndsTheTaking() throws IOException {
    for (String odd : List.of("9,a,b,c\n", "1,a\n", "x,a,b,c\n", "\0\0\0\n", "1\n")) {
      leaveTwoRows();
      Files.writeString(SweepFile.unfinished(table()), odd, StandardOpenOption.APPEND);
      try (SweepFile file = open("abc")) {
        assertEquals(runs(0, 2), file.done());
      }
      Files.delete(SweepFile.unfinished(table()));
    }
  }

  @Test
  void twoSweepsDoNotWriteOneTable() {
    try (SweepFile file = open("abc")) {
      String told = String.valueOf(assertThrows(BadInput.class, () -> open("abc")).getMessage());
      assertTrue(told.contains("another sweep"), told);
      file.append(0, List.of("B", "1", ""));
    }
  }

  @Test
  void aFolderIsNoTable() {
    String told =
        String.valueOf(
            assertThrows(BadInput.class, () -> SweepFile.open(temp, "abc", 3, 4)).getMessage());
    assertTrue(told.contains("this is a folder"), told);
  }
}
