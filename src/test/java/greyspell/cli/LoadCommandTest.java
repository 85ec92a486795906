package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LoadCommandTest {
  @TempDir private Path temp = Path.of("");

  @Test
  void tellsEveryHomeInAHundredColumns() throws IOException {
    try (var homes = Files.list(Path.of("scenarios"))) {
      for (Path home : homes.filter(f -> f.toString().endsWith(".yaml")).toList()) {
        Cli got = Cli.run("load", home.toString());
        assertEquals(0, got.code, got.err);
        for (String line : got.out.split("\n", -1)) {
          assertTrue(line.length() <= 100, home + ": " + line);
        }
        for (String part : new String[] {"asks for", "Wh a day in each month", "Always on"}) {
          assertTrue(got.out.contains(part), home + ": " + part);
        }
      }
    }
  }

  @Test
  void writesItsFilesAndTheirSumsAgree() throws IOException {
    Path out = temp.resolve("load");
    Cli got = Cli.run("load", "scenarios/alder-fold.yaml", "--json", "--out", out.toString());
    assertEquals(0, got.code, got.err);
    for (String name : new String[] {"load.txt", "load.json", "load.svg"}) {
      assertTrue(Files.size(out.resolve(name)) > 1000, name);
    }
    assertEquals(got.out, Files.readString(out.resolve("load.json")));
    JsonNode json = new ObjectMapper().readTree(got.out);
    double sum = 0.0;
    for (JsonNode load : json.get("loads")) {
      sum += load.get("load_kwh_per_year").asDouble();
      assertTrue(
          load.get("low_kwh_per_year").asDouble() <= load.get("high_kwh_per_year").asDouble());
      assertEquals(12, load.get("wh_per_day").size());
    }
    assertEquals(json.get("load_kwh_per_year").asDouble(), sum, 1e-4);
    double decemberWh = 0.0;
    for (JsonNode wh : json.get("winter_day").get("wh")) {
      decemberWh += wh.asDouble();
    }
    double booksWh = 0.0;
    for (JsonNode load : json.get("loads")) {
      booksWh += load.get("wh_per_day").get(11).asDouble();
    }
    assertEquals(booksWh, decemberWh, 1e-3, "the profile is the month's day");
  }

  @Test
  void everyTypicalHomeIsAudited() {
    for (String kind : new String[] {"cabin", "couple", "family", "smallholding", "all_electric"}) {
      Path file = temp.resolve(kind + ".yaml");
      assertEquals(0, Cli.run("new", "--no-questions", "--home", kind, file.toString()).code);
      Cli got = Cli.run("load", file.toString(), "--library", "shared");
      assertEquals(0, got.code, got.err);
    }
    Cli wrong = Cli.run("new", "--home", "famly", temp.resolve("x.yaml").toString());
    assertEquals(Main.BAD_INPUT, wrong.code);
    assertTrue(wrong.err.contains("Nearest: \"family\""), wrong.err);
  }

  @Test
  void everyKeyIsExplained() throws IOException {
    String docs = Files.readString(Path.of("docs/loads.md"));
    Cli got = Cli.run("load", "scenarios/alder-fold.yaml", "--json");
    var keys = java.util.regex.Pattern.compile("\"([a-z_]+)\" :").matcher(got.out);
    int seen = 0;
    while (keys.find()) {
      String key = keys.group(1);
      assertTrue(docs.contains("`" + key + "`") || docs.contains("`" + key + "[]`"), key);
      seen++;
    }
    assertTrue(seen > 50);
  }
}
