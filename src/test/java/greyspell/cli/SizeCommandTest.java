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

class SizeCommandTest {
  private static final String CABIN = "scenarios/whin-cabin.yaml";
  private static final String FARM = "scenarios/grandfell-farm.yaml";

  @TempDir private Path temp = Path.of("");

  private static Cli size(String... args) {
    var all = new String[args.length + 3];
    all[0] = "size";
    System.arraycopy(args, 0, all, 1, args.length);
    all[args.length + 1] = "--library";
    all[args.length + 2] = "shared";
    return Cli.run(all);
  }

  @Test
  void verdictFirstThenTheFrontierAndTheHandMethod() {
    Cli got = size(CABIN, "--unmet-hours", "100", "--controllers-may-grow");
    assertEquals(0, got.code, got.err);
    for (String line : got.out.split("\n", -1)) {
      assertTrue(line.length() <= 100, line);
    }
    String flat = got.out.replaceAll("\\s+", " ");
    assertTrue(flat.startsWith("Whin Cabin 4 modules (800 W) with 2 packs (5.1 kWh) do not keep"));
    assertTrue(flat.contains("Given the panels: 4 modules (800 W) meet it with no bank"), flat);
    assertTrue(flat.contains("more panels would, with"), flat);
    assertTrue(flat.contains("costs.per_module, costs.per_pack"), flat);
    assertTrue(flat.contains("Pairs of which neither can be smaller"), flat);
    assertTrue(flat.contains("By hand beside it"), flat);
    assertTrue(flat.contains("Where they part:"), flat);
    assertTrue(flat.contains("no wire, fuse or breaker is sized here"), flat);
    assertFalse(flat.contains("NaN") || flat.contains("Infinity") || flat.contains("null"), flat);
  }

  @Test
  void withoutRoomOnTheControllerItSaysWhatEndsThePanels() {
    Cli got = size(CABIN, "--unmet-hours", "100");
    assertEquals(0, got.code, got.err);
    assertTrue(got.out.contains("short-circuit current"), got.out);
    assertTrue(got.out.contains("--controllers-may-grow"), got.out);
    got = size("scenarios/kelp-point.yaml", "--unmet-hours", "100");
    assertFalse(got.out.contains("--controllers-may-grow"), "its controller has no second");
  }

  @Test
  void figuresForOtherProgramsAndTheFrontierAsCsv() throws IOException {
    Cli got = size(FARM, "--unmet-hours", "150", "--json", "--out", temp.resolve("out").toString());
    assertEquals(0, got.code, got.err);
    JsonNode read = new ObjectMapper().readTree(got.out);
    assertEquals("Grandfell Farm", read.get("home").asText());
    assertEquals(150.0, read.get("targets").get(0).get("unmet_hours_per_year_at_most").asDouble());
    int rows = Files.readAllLines(temp.resolve("out/frontier.csv")).size();
    assertEquals(read.get("frontier").size() + 1, rows);
    assertEquals(got.out, Files.readString(temp.resolve("out/size.json")));
    for (JsonNode pair : read.get("frontier")) {
      assertTrue(pair.get("unmet_hours_per_year").asDouble() <= 150.0);
    }
  }

  /** The cabin in another folder, its weather named by its whole path. */
  private Path copy() throws IOException {
    String text = Files.readString(Path.of(CABIN));
    Path samples = Path.of("weather-samples").toAbsolutePath();
    return Files.writeString(
        temp.resolve("cabin.yaml"), text.replace("../weather-samples", samples.toString()));
  }

  @Test
  void theWrittenScenarioKeepsToTheTarget() throws IOException {
    String from = copy().toString();
    Path to = temp.resolve("sized.yaml");
    String[] asked = {from, "--unmet-hours", "100", "--controllers-may-grow"};
    Cli got = size(asked[0], asked[1], asked[2], asked[3], "--write", to.toString());
    assertEquals(0, got.code, got.err);
    assertTrue(
        got.out.contains("Written: " + to + ", with the fewest panels for the bank: 20 modules"),
        got.out);
    String text = Files.readString(to);
    assertTrue(text.contains("winter is cold enough without it"), "comments stay");
    assertTrue(text.contains("in_parallel: 10"), text);
    assertTrue(text.contains("count: 3"), text);
    Cli again = size(to.toString(), "--unmet-hours", "100", "--warn", "--json");
    assertEquals(0, again.code, again.err);
    JsonNode now = new ObjectMapper().readTree(again.out);
    assertTrue(now.get("present_meets_target").asBoolean());
    assertEquals(20, now.get("present").get("modules").asInt());
  }

  @Test
  void whatIsNotThereIsNotWritten() throws IOException {
    String from = copy().toString();
    Path to = temp.resolve("none.yaml");
    Cli got = size(from, "--unmet-hours", "100", "--take", "bank", "--write", to.toString());
    assertEquals(2, got.code, got.out);
    assertTrue(got.err.contains("--write"), got.err);
    assertFalse(Files.exists(to));
    // the weather is named relative to the scenario: elsewhere it would not be found
    got = size("scenarios/tamarisk-mesa.yaml", "--unmet-hours", "9", "--write", to.toString());
    assertEquals(2, got.code, got.out);
    assertTrue(got.err.contains("none.yaml"), got.err);
    assertFalse(Files.exists(to));
  }

  @Test
  void anyPairOfTheTableCanBeWritten() throws IOException {
    String from = copy().toString();
    Path to = temp.resolve("pair.yaml");
    String[] asked = {from, "--unmet-hours", "100", "--controllers-may-grow"};
    Cli got =
        size(asked[0], asked[1], asked[2], asked[3], "--take", "13", "--write", to.toString());
    assertEquals(2, got.code, got.out);
    assertTrue(got.err.replaceAll("\\s+", " ").contains("(10, 12, 14, 20): --take 10"), got.err);
    assertFalse(Files.exists(to));
    got = size(asked[0], asked[1], asked[2], asked[3], "--take", "14", "--write", to.toString());
    assertEquals(0, got.code, got.err);
    Cli again = size(to.toString(), "--unmet-hours", "100", "--warn", "--json");
    assertEquals(0, again.code, again.err);
    JsonNode now = new ObjectMapper().readTree(again.out).get("present");
    assertEquals(14, now.get("modules").asInt());
    assertEquals(3, now.get("packs").asInt());
    assertEquals(2, now.get("controllers").asInt());
  }

  @Test
  void whatCannotBeWrittenIsSaidBeforeTheSearch() {
    Cli got = size(CABIN, "--any-size", "1kWh", "--write", "sized.yaml");
    assertEquals(2, got.code, got.out);
    assertTrue(got.err.contains("whole packs"), got.err);
    got = size(CABIN, "--take", "bank");
    assertEquals(2, got.code, got.out);
    assertTrue(got.err.contains("--write FILE"), got.err);
  }

  @Test
  void withoutAPriceItSaysAtWhichTheAnswerChanges() throws IOException {
    Cli got = size(CABIN, "--unmet-hours", "100", "--controllers-may-grow");
    String flat = got.out.replaceAll("\\s+", " ");
    assertTrue(
        flat.contains(
            "Cheapest if a pack costs at most as much as 0.5 modules: 10 modules (2.00 kW) with 8"
                + " packs (20 kWh); at most as much as 2 modules: 12 modules"),
        flat);
    assertTrue(flat.contains("What more controllers cost is left aside in that."), flat);
    got = size(CABIN, "--unmet-hours", "100", "--controllers-may-grow", "--json");
    JsonNode read = new ObjectMapper().readTree(got.out).get("cheapest_by_price");
    assertEquals("pack_in_modules", read.get("price_of").asText());
    assertEquals(6.0, read.get("ranges").get(2).get("up_to").asDouble(), 1e-9);
    assertTrue(read.get("ranges").get(3).get("up_to").isNull());
  }

  @Test
  void noRoomForAnyPanelsIsNoPairAtAll() {
    String flat = size(CABIN, "--roof", "1").out.replaceAll("\\s+", " ");
    assertTrue(flat.contains("There is room for 1 module; the next step has 2."), flat);
    assertTrue(flat.contains("banks for the panels that are there"), flat);
    assertFalse(flat.contains("of 0 pairs"), flat);
  }

  @Test
  void warnsWhereAsked() {
    assertEquals(Main.FOUND, size(CABIN, "--unmet-hours", "10", "--warn").code);
  }

  @Test
  void sizesForManyWintersAndSaysWhatTheyAllow() {
    Cli got =
        size(
            CABIN,
            "--dark-winters",
            "1 in 4",
            "--winters",
            "8",
            "--controllers-may-grow",
            "--without-generator");
    assertEquals(0, got.code, got.err);
    String flat = got.out.replaceAll("\\s+", " ");
    assertTrue(flat.contains("8 whole winters allow 2"), flat);
    assertTrue(flat.contains("19 times in 20"), flat);
  }

  @Test
  void badOptionsAreToldTogether() {
    Cli got =
        size(CABIN, "--dark-winters", "often", "--roof", "0", "--plane", "shed", "--take", "all");
    assertEquals(2, got.code);
    assertTrue(got.err.contains("--dark-winters") && got.err.contains("--roof"), got.err);
    assertTrue(got.err.contains("gable") && got.err.contains("--take"), got.err);
  }
}
