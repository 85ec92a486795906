package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterRecord;
import greyspell.outcome.WinterSum;
import greyspell.scenario.Scenario;
import greyspell.scenario.ScenarioEdit;
import greyspell.study.ManyWinters;
import greyspell.study.WintersWanted;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SweepCommandTest {
  private static final String CABIN = "scenarios/whin-cabin.yaml";
  private static final String COMBE = "scenarios/harrow-combe.yaml";

  @TempDir private Path temp = Path.of("");

  private Path table() {
    return temp.resolve("table.csv");
  }

  private Cli sweep(String... args) {
    var all = new ArrayList<String>(List.of("sweep"));
    all.addAll(List.of(args));
    all.addAll(List.of("--out", table().toString(), "--library", "shared"));
    return Cli.run(all.toArray(new String[0]));
  }

  private static JsonNode rows(Cli got) throws IOException {
    assertEquals(0, got.code, got.err);
    return new ObjectMapper().readTree(got.out).get("rows");
  }

  /** A changed scenario beside the weather that the shipped one names, run whole. */
  private JsonNode run(ScenarioEdit edit) throws IOException {
    Path folder = Files.createDirectories(temp.resolve("scenarios"));
    String text =
        edit.text()
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString());
    Path home = Files.writeString(folder.resolve("changed.yaml"), text);
    String out = temp.resolve("out").toString();
    Cli got =
        Cli.run(
            "run", home.toString(), "--json", "--no-pictures", "--out", out, "--library", "shared");
    assertEquals(0, got.code, got.err);
    return new ObjectMapper().readTree(got.out);
  }

  private static void holds(double told, JsonNode row, String column) {
    assertEquals(told, row.get(column).asDouble(), 0.000501, column);
  }

  @Test
  void figuresAreThoseOfRunOnTheChangedScenario() throws IOException {
    JsonNode rows =
        rows(
            sweep(
                COMBE,
                "--json",
                "--vary",
                "arrays[0].tilt=40 deg, 75 deg",
                "--vary",
                "generator.start_below=20 %, 45 %"));
    assertEquals(4, rows.size());
    var edit =
        ScenarioEdit.of(Path.of(COMBE))
            .set("arrays[0].tilt", "75 deg")
            .set("generator.start_below", "45 %");
    JsonNode row = rows.get(3);
    assertEquals("75", row.get("arrays[0].tilt (deg)").asText());
    assertEquals("45", row.get("generator.start_below (%)").asText());
    JsonNode told = run(edit);
    JsonNode total = told.get("total");
    double years = total.get("hours").asDouble() / 8766.0;
    double wholeYears = Math.rint(years);
    holds(total.get("unmet_hours").asDouble() / wholeYears, row, "unmet_hours_per_year");
    holds(total.get("unmet_kwh").asDouble() / wholeYears, row, "unmet_kwh_per_year");
    holds(total.get("shed_kwh").asDouble() / wholeYears, row, "shed_kwh_per_year");
    holds(total.get("load_kwh").asDouble() / wholeYears, row, "load_kwh_per_year");
    holds(total.get("generator_hours").asDouble() / wholeYears, row, "generator_hours_per_year");
    holds(total.get("generator_starts").asDouble() / wholeYears, row, "generator_starts_per_year");
    holds(total.get("generator_kwh").asDouble() / wholeYears, row, "generator_kwh_per_year");
    holds(total.get("generator_fuel_l").asDouble() / wholeYears, row, "generator_fuel_l_per_year");
    holds(total.get("curtailed_kwh").asDouble() / wholeYears, row, "curtailed_kwh_per_year");
    holds(total.get("lowest_charge_pct").asDouble(), row, "lowest_charge_pct");
    holds(told.get("usable_bank_kwh").asDouble(), row, "usable_bank_kwh");
    JsonNode grey = told.get("grey_autonomy_days");
    holds(grey.get("p10").asDouble(), row, "grey_autonomy_p10_days");
    holds(grey.get("worst").asDouble(), row, "grey_autonomy_worst_days");
    int dark = 0;
    int whole = 0;
    double worstKwh = 0.0;
    for (JsonNode winter : told.get("per_winter")) {
      if (winter.get("is_whole").asBoolean()) {
        whole++;
        dark += winter.get("unmet_hours").asInt() > 0 ? 1 : 0;
        worstKwh = Math.max(worstKwh, winter.get("unmet_kwh").asDouble());
      }
    }
    assertEquals(whole, row.get("whole_winters").asInt());
    assertEquals(dark, row.get("dark_winters").asInt());
    holds(worstKwh, row, "worst_winter_unmet_kwh");
    assertEquals(told.get("electrical").get("verdict").asText(), row.get("checks").asText());
    assertTrue(rows.get(0).get("generator_hours_per_year").asDouble() > 0.0);
    assertFalse(
        rows.get(0).get("generator_hours_per_year").equals(row.get("generator_hours_per_year")));
  }

  @Test
  void aBookOfHomesIsRunOnceEach() throws IOException {
    Cli got = sweep(CABIN, "scenarios/peat-hut.yaml");
    assertEquals(0, got.code, got.err);
    List<String> lines = Files.readAllLines(table());
    assertEquals(3, lines.size());
    assertTrue(lines.get(1).startsWith("Whin Cabin," + CABIN + ","), lines.get(1));
    assertTrue(lines.get(2).startsWith("Peat Hut,"), lines.get(2));
    assertTrue(got.out.startsWith("2 runs; unmet hours a year from "), got.out);
  }

  @Test
  void whatTheReaderRefusesIsARowWithItsFault() throws IOException {
    String[] asked = {CABIN, "--vary", "arrays[0].tilt=40 deg, 95 deg", "--warn-refused", "--json"};
    Cli got = sweep(asked);
    assertEquals(Main.FOUND, got.code, got.err);
    JsonNode rows = new ObjectMapper().readTree(got.out).get("rows");
    assertFalse(rows.get(0).has("fault"));
    assertTrue(rows.get(1).get("fault").asText().contains("tilt: found \"95 deg\""), got.out);
    assertFalse(rows.get(1).has("unmet_hours_per_year"));
  }

  @Test
  void filesAndValuesThatCannotBeReadAreToldTogether() throws IOException {
    Path broken = Files.writeString(temp.resolve("broken.yaml"), "home: X\n  bad: [1\n");
    Cli got =
        sweep(CABIN, broken.toString(), "nowhere.yaml", "--vary", "reserve=1..3 %", "--vary", "x");
    assertEquals(2, got.code, got.out);
    assertTrue(got.err.contains("broken.yaml:2:") && got.err.contains("nowhere.yaml"), got.err);
    assertTrue(got.err.contains("without a step") && got.err.contains("PATH=VALUES"), got.err);
    assertTrue(got.err.contains("4 faults"), got.err);
    assertFalse(Files.exists(table()));
  }

  @Test
  void oneAnswerIsNoSpan() {
    Cli got = sweep(CABIN);
    assertTrue(got.out.startsWith("1 run; unmet hours a year 1168."), got.out);
  }

  @Test
  void aSweepThatTellsNothingEndsWithOne() {
    assertEquals(0, sweep(CABIN, "--vary", "arrays[0].tilt=40 deg, 95 deg").code);
    Cli none = sweep(CABIN, "--vary", "bank=left out");
    assertEquals(Main.FOUND, none.code, none.out);
    assertTrue(none.out.contains("1 run was refused"), none.out);
    assertTrue(
        none.out.lines().allMatch(l -> l.startsWith("Written") || l.length() <= 100), none.out);
    Cli unknown = sweep(CABIN, "--vary", "nothing.of_this=1");
    assertEquals(Main.BAD_INPUT, unknown.code);
    assertTrue(unknown.err.contains(", seed\n"), unknown.err);
    assertTrue(unknown.err.lines().allMatch(l -> l.length() <= 100), unknown.err);
  }

  @Test
  void drawnWintersAreThoseOfRun() throws IOException {
    String path = "bank.in_parallel";
    JsonNode rows = rows(sweep(CABIN, "--winters", "12", "--vary", path + "=1, 3", "--json"));
    Scenario home = ScenarioEdit.of(Path.of(CABIN)).set(path, "3").scenario(Path.of("shared"));
    WinterBook book =
        ManyWinters.run(home, WintersWanted.of(home, 12), 1, (what, share) -> {}).book();
    JsonNode row = rows.get(1);
    assertEquals(12, row.get("whole_winters").asInt());
    assertEquals(book.darkCount(), row.get("dark_winters").asInt());
    int hours = 0;
    double wh = 0.0;
    for (WinterRecord winter : book.winters()) {
      hours += winter.unmetHours();
      wh += winter.wh(WinterSum.UNMET);
    }
    holds(hours / 12.0, row, "unmet_hours_per_year");
    holds(wh / 12000.0, row, "unmet_kwh_per_year");
    assertEquals(book.worstFirst().get(0).name(), row.get("worst_winter").asText());
    assertTrue(rows.get(0).get("dark_winters").asInt() >= book.darkCount());
  }

  @Test
  void absurdSizesAreRefusedWithTheirCount() {
    Cli got = sweep(CABIN, "--vary", "seed=1..1000 step 1", "--vary", "reserve=1..50 % step 1");
    assertEquals(Main.BAD_INPUT, got.code);
    assertTrue(got.err.contains("found 50000 runs: 1 home x 1000 x 50"), got.err);
    assertTrue(got.err.contains("--max-runs 50000"), got.err);
    assertFalse(Files.exists(table()));
    Cli below = sweep(CABIN, "--max-runs", "-1");
    assertEquals(Main.BAD_INPUT, below.code);
    assertTrue(below.err.contains("must be 1 or more"), below.err);
    assertEquals(Main.BAD_INPUT, sweep(CABIN, "--winters", "0").code);
    assertEquals(Main.BAD_INPUT, sweep("none.yaml").code);
    assertEquals(Main.BAD_INPUT, sweep(CABIN, "--vary", "bank.inparallel=1").code);
  }

  @Test
  void aKilledSweepGoesOnWhereItWas() throws IOException, InterruptedException {
    String[] asked = {CABIN, "--vary", "arrays[0].tilt=10..80 deg step 1"};
    assertEquals(0, sweep(asked).code);
    String whole = Files.readString(table());
    Files.delete(table());

    Path unfinished = temp.resolve("table.csv.unfinished");
    int kept = killAfterThreeRows(unfinished, asked);
    assertFalse(Files.exists(table()));
    Cli again = sweep(asked);
    assertEquals(0, again.code, again.err);
    assertTrue(again.err.contains(kept + " of 71 runs are there already"), again.err);
    assertEquals(whole, Files.readString(table()));
    assertFalse(Files.exists(unfinished));

    killAfterThreeRows(unfinished, asked);
    Cli other = sweep(CABIN, "--vary", "arrays[0].tilt=20 deg");
    assertTrue(other.err.contains("another question"), other.err);
    assertEquals(2, Files.readAllLines(table()).size());
  }

  /** In a process of its own; hands back how many whole rows it left. */
  private int killAfterThreeRows(Path unfinished, String... asked)
      throws IOException, InterruptedException {
    Files.deleteIfExists(table());
    var command = new ArrayList<String>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of("-cp", System.getProperty("java.class.path"), "greyspell.cli.Main", "sweep"));
    command.addAll(List.of(asked));
    command.addAll(List.of("--out", table().toString(), "--library", "shared"));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(temp.resolve("said.txt").toFile())
            .start();
    try {
      while (process.isAlive() && rows(unfinished) < 3) {
        Thread.sleep(5);
      }
    } finally {
      process.destroyForcibly();
      assertTrue(process.waitFor(20, TimeUnit.SECONDS));
    }
    int kept = rows(unfinished);
    assertTrue(kept >= 3, () -> "it was done too soon: " + kept);
    return kept;
  }

  private static int rows(Path unfinished) throws IOException {
    String text = Files.exists(unfinished) ? Files.readString(unfinished) : "";
    return Math.max(0, (int) text.chars().filter(c -> c == '\n').count() - 1);
  }
}
