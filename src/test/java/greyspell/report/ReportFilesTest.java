package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.chart.SampleStudy;
import greyspell.quantity.BadInput;
import greyspell.study.StudyResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFilesTest {
  private static final StudyResult GREY = new SampleStudy().run();

  @TempDir Path temp;

  private static List<String> tree(Path dir) throws IOException {
    try (var files = Files.walk(dir)) {
      return files
          .filter(Files::isRegularFile)
          .map(f -> dir.relativize(f).toString().replace('\\', '/'))
          .sorted()
          .collect(Collectors.toList());
    }
  }

  @Test
  void writesEverythingAndTellsOfIt() throws Exception {
    var told = new TreeSet<String>();
    Path dir = temp.resolve("new/out");
    var written = ReportFiles.write(GREY, dir, true, told::add);
    assertEquals(dir.resolve("report.html"), written.get(0));
    var expected = new ArrayList<>(List.of("ledger.csv", "months.csv"));
    for (String p : List.of("charge", "fortnight", "grey-spells", "months")) {
      expected.add("pictures/" + p + ".png");
      expected.add("pictures/" + p + ".svg");
    }
    expected.addAll(List.of("report.html", "results.json"));
    assertEquals(expected, tree(dir));
    assertEquals(expected.size(), written.size());
    assertEquals(new TreeSet<>(expected), told);
  }

  @Test
  void withoutPicturesThePageSaysSo() throws Exception {
    ReportFiles.write(GREY, temp, false, name -> {});
    assertEquals(List.of("ledger.csv", "months.csv", "report.html", "results.json"), tree(temp));
    String page = Files.readString(temp.resolve("report.html"));
    assertTrue(page.contains("asked for without pictures"));
    assertFalse(page.contains("<svg"));
  }

  @Test
  void olderFilesAreReplaced() throws Exception {
    Files.writeString(temp.resolve("report.html"), "old");
    Files.writeString(temp.resolve("my-notes.txt"), "kept");
    ReportFiles.write(GREY, temp, false, name -> {});
    assertFalse(Files.readString(temp.resolve("report.html")).startsWith("old"));
    assertEquals("kept", Files.readString(temp.resolve("my-notes.txt")));
  }

  /** Pictures of another run beside these books would tell another story. */
  @Test
  void picturesOfAnEarlierRunDoNotStay() throws Exception {
    ReportFiles.write(GREY, temp, true, name -> {});
    Files.writeString(temp.resolve("pictures/mine.svg"), "kept");
    ReportFiles.write(GREY, temp, false, name -> {});
    assertEquals(
        List.of("ledger.csv", "months.csv", "pictures/mine.svg", "report.html", "results.json"),
        tree(temp));
  }

  @Test
  void aPlaceThatCannotBeWrittenIsNamedAndNothingIsLeft() throws Exception {
    Path file = Files.writeString(temp.resolve("a-file"), "x");
    Path dir = file.resolve("out");
    var bad = assertThrows(BadInput.class, () -> ReportFiles.write(GREY, dir, true, name -> {}));
    assertEquals(dir.toString(), bad.faults().get(0).place().file());
    assertTrue(String.valueOf(bad.getMessage()).contains("cannot write here"));
    assertEquals(List.of("a-file"), tree(temp));
  }

  @Test
  void afterAFailureNoneOfTheFilesIsThere() throws Exception {
    Path dir = temp.resolve("out");
    Files.createDirectories(dir.resolve("results.json").resolve("in-the-way"));
    assertThrows(BadInput.class, () -> ReportFiles.write(GREY, dir, true, name -> {}));
    assertEquals(List.of(), tree(dir));
    assertFalse(Files.exists(dir.resolve("pictures")));
  }

  @Test
  void aFaultWhileWritingLeavesNothing() throws Exception {
    Path dir = temp.resolve("gone");
    assertThrows(
        IllegalStateException.class,
        () ->
            ReportFiles.write(
                GREY,
                dir,
                false,
                name -> {
                  throw new IllegalStateException("told " + name);
                }));
    assertFalse(Files.exists(dir));
  }

  @Test
  void weatherTablesAndPicturesAreWritten() throws Exception {
    WeatherFiles.write(new SampleStudy().weather(), temp, true);
    assertEquals(
        List.of(
            "weather-days.png",
            "weather-months.csv",
            "weather-months.png",
            "weather-temperature.png",
            "weather-years.csv"),
        tree(temp));
  }
}
