package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonToken;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ExplainCommandTest {
  private static final String MESA = "scenarios/tamarisk-mesa.yaml";

  @Test
  void tellsCausesSpellsAndRemediesAndWarns() {
    Cli ran = Cli.run("explain", MESA, "--warn");
    assertEquals(1, ran.code, ran.err);
    for (String part :
        new String[] {
          "in a half winter",
          "nobody's fault",
          "The dark spells, worst first",
          "The bank was last full on",
          "What would prevent all of them",
          "What costs nothing and helps",
          "another may be darker than all of them"
        }) {
      assertTrue(ran.out.contains(part), part + " in\n" + ran.out);
    }
    ran.out.lines().forEach(line -> assertTrue(line.length() <= 100, line));
  }

  @Test
  void jsonIsWhole() throws Exception {
    Cli ran = Cli.run("explain", MESA, "--json", "--language", "de");
    assertEquals(0, ran.code, ran.err);
    int causes = 0, edits = 0;
    try (var json = new JsonFactory().createParser(ran.out)) {
      for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
        if (token == JsonToken.FIELD_NAME) {
          causes += json.currentName().equals("cause") ? 1 : 0;
          edits += json.currentName().equals("edits") ? 1 : 0;
        }
      }
    }
    assertTrue(causes >= 8 && edits >= 4, causes + " causes, " + edits + " edits");
    assertTrue(ran.out.contains("kurze Tage"));
  }

  @Test
  void refusesMoreWintersThanItRuns() {
    Cli ran = Cli.run("explain", MESA, "--winters", "101");
    assertEquals(2, ran.code);
    assertTrue(ran.err.contains("--winters  found 101"), ran.err);
  }

  @Test
  void numbersDrawnWintersOnce() {
    Cli ran = Cli.run("explain", "scenarios/whin-cabin.yaml", "--winters", "2");
    assertFalse(ran.out.contains("winter winter"), ran.out);
    assertTrue(ran.out.contains(", winter "), ran.out);
  }

  @Test
  void refusesALanguageThatIsNotThere() {
    Cli ran = Cli.run("explain", MESA, "--language", "xx");
    assertEquals(2, ran.code);
    assertTrue(ran.err.contains("must be one of en, de"), ran.err);
  }

  @Test
  void pagesAreWrittenAndBadFormsRefusedBeforeAnythingIs(@TempDir Path dir) throws Exception {
    Path out = dir.resolve("out");
    Cli units = Cli.run("explain", MESA, "--out", out.toString(), "--units", "furlongs");
    assertEquals(2, units.code);
    assertTrue(units.err.contains("must be metric or us"), units.err);
    Cli paper = Cli.run("explain", MESA, "--out", out.toString(), "--paper", "a3");
    assertEquals(2, paper.code);
    assertTrue(paper.err.contains("must be a4 or letter"), paper.err);
    assertFalse(Files.exists(out));

    Cli ran = Cli.run("explain", MESA, "--out", out.toString(), "--units", "us");
    assertEquals(0, ran.code, ran.err);
    assertTrue(Files.readString(out.resolve("explanation.html")).contains(" °F"));
    assertTrue(Files.size(out.resolve("explanation.pdf")) > 20_000);
  }
}
