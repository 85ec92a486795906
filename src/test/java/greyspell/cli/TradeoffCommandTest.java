package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import greyspell.chart.Xml;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TradeoffCommandTest {
  private static final String CABIN = "scenarios/whin-cabin.yaml";
  private static final String FOLD = "scenarios/alder-fold.yaml";

  @TempDir private Path temp = Path.of("");

  private static Cli run(String... args) {
    var all = new java.util.ArrayList<>(List.of("tradeoff"));
    all.addAll(List.of(args));
    all.addAll(List.of("--library", "shared"));
    return Cli.run(all.toArray(String[]::new));
  }

  @Test
  void tellsInAHundredColumnsAndDraws() throws IOException {
    Path out = temp.resolve("map");
    Cli got = run(FOLD, "--roof", "36", "--budget", "6000", "--out", out.toString());
    assertEquals(0, got.code, got.err);
    for (String line : got.out.split("\n", -1)) {
      assertTrue(line.length() <= 100 || line.startsWith("Written"), line);
    }
    assertTrue(got.out.contains("one more string (6 panels) is worth"), got.out);
    String svg = Files.readString(out.resolve("tradeoff.svg"));
    String words = String.join("\n", Xml.texts(Xml.parse(svg), "text"));
    for (String wanted :
        List.of("roof: room for 36 modules", "budget: more than 6,000 EUR", "24 h", "panels, kW")) {
      assertTrue(words.contains(wanted), wanted + " in " + words);
    }
    List<String> rows = Files.readAllLines(out.resolve("map.csv"));
    int columns = rows.get(0).split(",", -1).length;
    for (String row : rows) {
      assertEquals(columns, row.split(",", -1).length, row);
    }
    assertTrue(rows.size() > 400);
  }

  @Test
  void theAxesAreThoseAskedFor() throws IOException {
    Cli got =
        run(
            FOLD,
            "--panels",
            "18..42",
            "--storage",
            "10..50kWh",
            "--storage-step",
            "2.56kWh",
            "--json");
    assertEquals(0, got.code, got.err);
    JsonNode json = new ObjectMapper().readTree(got.out);
    double lastKwh = 0.0;
    for (JsonNode point : json.get("map")) {
      int modules = point.get("modules").asInt();
      double kwh = point.get("bank_kwh").asDouble();
      assertTrue(
          modules >= 18 && modules <= 42 && kwh >= 10.0 - 1e-9 && kwh <= 50.0, point.toString());
      if (kwh > lastKwh && lastKwh > 0.0) {
        assertEquals(2.56, kwh - lastKwh, 1e-9);
      }
      lastKwh = kwh;
    }
    assertEquals(24, json.get("present").get("modules").asInt());
    assertTrue(json.get("exchange").get("string_worth_bank_kwh").asDouble() > 0.0);
  }

  @Test
  void withoutPricesAStringIsWeighedAgainstAPack() {
    Cli got = run("scenarios/kelp-point.yaml", "--budget", "100");
    assertEquals(0, got.code, got.err);
    assertTrue(got.out.contains("a string against a pack"), got.out);
    assertTrue(got.out.contains("the budget is left out"), got.out);
    assertTrue(got.out.contains("that string is refused"), got.out);
  }

  @Test
  void drawnWintersAreCounted() {
    Cli got = run(CABIN, "--winters", "6");
    assertEquals(0, got.code, got.err);
    assertTrue(got.out.contains("6 winters"), got.out);
  }

  @Test
  void aWrongRangeIsToldOnceInTheWordsThatWereTyped() {
    Cli got = run(CABIN, "--storage", "5..x");
    assertEquals(Main.BAD_INPUT, got.code);
    assertEquals(1, got.err.split("--storage", -1).length - 1, got.err);
    assertTrue(got.err.contains("found \"5..x\""), got.err);
    assertFalse(got.err.contains("5 x"), got.err);
    Cli below = run(CABIN, "--storage", "0..5kWh");
    assertEquals(Main.BAD_INPUT, below.code);
    assertTrue(below.err.contains("must be above 0"), below.err);
  }

  @Test
  void aHomeWithAGeneratorKeepsToAHundredColumnsToo() {
    Cli got = run("scenarios/harrow-combe.yaml");
    assertEquals(0, got.code, got.err);
    assertTrue(got.out.contains("winter tilt"), got.out);
    for (String line : got.out.split("\n", -1)) {
      assertTrue(line.length() <= 100, line);
    }
  }

  @Test
  void whatMakesNoSenseIsRefusedBeforeAnythingIsWritten() {
    Path out = temp.resolve("none");
    Cli got =
        run(
            CABIN,
            "--panels",
            "60..12",
            "--storage",
            "much",
            "--panel-step",
            "0",
            "--unmet-hours",
            "-1",
            "--out",
            out.toString());
    assertEquals(Main.BAD_INPUT, got.code);
    for (String option : List.of("--panels", "--storage", "--panel-step", "--unmet-hours")) {
      assertTrue(got.err.contains(option), got.err);
    }
    assertFalse(Files.exists(out));
    Cli plane = run(CABIN, "--plane", "roof");
    assertEquals(Main.BAD_INPUT, plane.code);
    assertTrue(plane.err.contains("gable"), plane.err);
  }
}
