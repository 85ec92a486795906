package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {
  private static final String HOME = "scenarios/whin-cabin.yaml";
  private static final String LOG = "scenarios/whin-cabin-log.csv";

  @TempDir private Path temp = Path.of("");

  @Test
  void tellsInAHundredColumnsWhatTheDocumentShows() throws IOException {
    Cli got = Cli.run("compare", HOME, "--log", LOG);
    assertEquals(0, got.code, got.err);
    for (String line : got.out.split("\n", -1)) {
      assertTrue(line.length() <= 100, line);
    }
    String document = Files.readString(Path.of("docs/compare.md"));
    int from = document.indexOf("What differs\n");
    String shown = document.substring(from, document.indexOf("```", from));
    assertTrue(
        got.out.contains(shown), "docs/compare.md shows\n" + shown + "\nbut it is\n" + got.out);
    assertTrue(got.out.contains("standby_night: "), "lines to try");
    assertEquals(1, Cli.run("compare", HOME, "--log", LOG, "--warn").code);
  }

  @Test
  void writesItsFilesAndTheyAgree() throws IOException {
    Path out = temp.resolve("compared");
    Cli got = Cli.run("compare", HOME, "--log", LOG, "--json", "--out", out.toString());
    assertEquals(0, got.code, got.err);
    for (String name : new String[] {"compare.txt", "compare.svg", "compare-days.csv"}) {
      assertTrue(Files.size(out.resolve(name)) > 2000, name);
    }
    assertEquals(got.out, Files.readString(out.resolve("compare.json")));
    JsonNode json = new ObjectMapper().readTree(got.out);
    int differ = 0;
    for (JsonNode finding : json.get("findings")) {
      differ += finding.get("differs").asBoolean() ? 1 : 0;
      assertTrue(finding.get("low").asDouble() <= finding.get("value").asDouble());
    }
    assertEquals(2, differ);
    assertTrue(
        json.get("charge_error_pct").get("all_together").asDouble()
            < json.get("charge_error_pct").get("as_the_scenario").asDouble());
    assertEquals(24, json.get("by_hour").size());
    long days = Files.readAllLines(out.resolve("compare-days.csv")).size() - 1L;
    assertEquals(63, days);
  }

  @Test
  void badInputEndsInWordsAndWritesNothing() throws IOException {
    Path out = temp.resolve("none");
    Cli absent = Cli.run("compare", HOME, "--log", "no-such.csv", "--out", out.toString());
    assertEquals(2, absent.code);
    assertTrue(absent.err.contains("no such file"), absent.err);
    Path file = Files.writeString(temp.resolve("l.csv"), "when,watts\n1,2\n");
    Cli unknown = Cli.run("compare", HOME, "--log", file.toString(), "--out", out.toString());
    assertEquals(2, unknown.code);
    assertFalse(Files.exists(out));
    assertEquals(2, Cli.run("compare", HOME).code, "--log is needed");
  }
}
