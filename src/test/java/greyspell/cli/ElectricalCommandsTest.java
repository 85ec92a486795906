package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import greyspell.electrical.LocalCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ElectricalCommandsTest {
  private static final String CABIN = "scenarios/whin-cabin.yaml";
  private static final List<String> BARE =
      List.of(
          "strings",
          "--module",
          "Orrin Bay OB-410H",
          "--controller",
          "Sable Ridge SR-D100",
          "--library",
          "shared",
          "--bank-voltage",
          "51.2V",
          "--record-low=-16C",
          "--record-high",
          "34C");

  @TempDir private Path folder = Path.of("");

  private static Cli bare(String... more) {
    var args = new ArrayList<>(BARE);
    args.addAll(List.of(more));
    return Cli.run(args.toArray(String[]::new));
  }

  private static String flat(Cli said) {
    return said.out.replaceAll("\\s+", " ");
  }

  private static void assertGoodText(Cli said) {
    assertTrue(said.out.lines().allMatch(l -> l.length() <= 100), said.out);
    assertTrue(flat(said).contains(LocalCode.GOVERNS), said.out);
  }

  private static void assertRefused(Cli said, String... words) {
    assertEquals(2, said.code, said.out + said.err);
    assertFalse(said.err.contains("Exception"), said.err);
    for (String word : words) {
      assertTrue(said.err.contains(word), said.err);
    }
  }

  private String changed(String what, String by) throws IOException {
    String text =
        Files.readString(Path.of(CABIN))
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString());
    String changed = text.replaceAll(what, by);
    assertFalse(changed.equals(text), what);
    return Files.writeString(folder.resolve("home.yaml"), changed).toString();
  }

  // ---- check ------------------------------------------------------------------------------------

  @Test
  void aSoundHomePassesOnOneScreen() {
    Cli said = Cli.run("check", CABIN);
    assertEquals(0, said.code, said.out + said.err);
    assertTrue(said.out.startsWith("Whin Cabin: no failures, "), said.out);
    assertTrue(said.out.lines().count() <= 40, said.out);
    assertGoodText(said);
  }

  @Test
  void allShowsWhatPassedAndTheChecklist() {
    Cli said = Cli.run("check", CABIN, "--all");
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("  ok      gable: coldest morning, controller: "), said.out);
    assertTrue(said.out.contains("  [ ] Grounding: "), said.out);
    assertGoodText(said);
  }

  @Test
  void aStringTooLongIsExitCodeOne() throws IOException {
    Cli said = Cli.run("check", changed("in_series: \\d+", "in_series: 30"), "--library", "shared");
    assertEquals(1, said.code, said.out + said.err);
    assertTrue(said.out.contains("FAIL "), said.out);
    assertTrue(flat(said).contains("too high"), said.out);
  }

  /** 20.4 V × 9.8 A is 200 W, not 230 W: told once by the check, and before the strings. */
  @Test
  void aMisreadStickerIsToldOnceAndByStringsToo() throws IOException {
    String home =
        changed("module: Larkhill LH-200M", "module: {from: Larkhill LH-200M, rated_power: 230 W}");
    Cli checked = Cli.run("check", home, "--library", "shared");
    assertEquals(1, checked.code, checked.out + checked.err);
    assertTrue(flat(checked).contains("FAIL Larkhill LH-200M: rated power: "), checked.out);
    assertFalse(checked.out.contains("misread"), checked.out);
    Cli strings = Cli.run("strings", home, "--library", "shared");
    assertTrue(flat(strings).contains("FAIL Larkhill LH-200M: rated power: "), strings.out);
  }

  @Test
  void aMedicalLoadIsToldOnce() {
    Cli said = Cli.run("check", "scenarios/kelp-point.yaml");
    assertTrue(said.out.contains("CAUTION medical load: "), said.out);
    assertFalse(said.out.contains("marked medical"), said.out);
  }

  /** Bare, the charging voltage is not known: 1.2 × 51.2 V = 61.4 V is taken and said so. */
  @Test
  void aChargingVoltageThatIsTakenIsSaid() {
    String[] bare = {
      "strings",
      "--module=Orrin Bay OB-410H",
      "--controller=Sable Ridge SR-D100",
      "--modules=12",
      "--bank-voltage=51.2V",
      "--record-low=-16C",
      "--record-high=34C"
    };
    Cli said = Cli.run(bare);
    assertEquals(0, said.code, said.err);
    assertTrue(flat(said).contains("charging voltage: not stated: 61.4 V is taken"), said.out);
    assertTrue(said.out.contains("Best: 4 in series, 3 strings."), said.out);
    String[] stated = Arrays.copyOf(bare, bare.length + 1);
    stated[bare.length] = "--charging-voltage=56.8V";
    assertFalse(Cli.run(stated).out.contains("not stated"));
  }

  /** Who only asks for the energy is told too: on the screen, and first on the page. */
  @Test
  void runSaysFirstWhatFails() throws IOException {
    String home = changed("in_series: \\d+", "in_series: 30");
    String out = folder.resolve("out").toString();
    Cli said = Cli.run("run", home, "--library", "shared", "--no-pictures", "--out", out);
    assertEquals(0, said.code, said.out + said.err);
    assertTrue(said.out.contains("The electrical check fails: "), said.out);
    var json = new ObjectMapper().readTree(Path.of(out, "results.json").toFile());
    String first = json.get("cautions").get(0).asText();
    assertTrue(first.startsWith("The electrical check fails: "), first);
    assertTrue(first.contains("coldest morning, controller"), first);
  }

  /** Weather colder than the stated record shows that the record is misread. */
  @Test
  void runSaysThatTheWeatherIsBeyondTheRecords() throws IOException {
    String home =
        changed(
            "record_low: -14 °C( *)\n( *)record_high: 32 °C",
            "record_low: 5 °C\n$2record_high: 9 °C");
    String out = folder.resolve("out").toString();
    Cli said = Cli.run("run", home, "--library", "shared", "--no-pictures", "--out", out);
    assertEquals(0, said.code, said.out + said.err);
    String cautions =
        new ObjectMapper()
            .readTree(Path.of(out, "results.json").toFile())
            .get("cautions")
            .toString();
    assertTrue(cautions.contains("colder than the site's record_low of 5 °C"), cautions);
    assertTrue(cautions.contains("hotter than the site's record_high of 9 °C"), cautions);
  }

  @Test
  void jsonHoldsTheSameFindings() throws IOException {
    Cli said = Cli.run("check", CABIN, "--json");
    var json = new ObjectMapper().readTree(said.out);
    assertEquals("Whin Cabin", json.get("name").asText());
    var electrical = json.get("electrical");
    assertTrue(electrical.get("findings").size() > 10);
    assertTrue(List.of("pass", "caution").contains(electrical.get("verdict").asText()));
    assertEquals(LocalCode.GOVERNS, electrical.get("governs").asText());
  }

  @Test
  void missingRecordsAreAskedForNeverGuessed() throws IOException {
    String file = changed("(?m)^ *record_(low|high):.*\n", "");
    Cli check = Cli.run("check", file, "--library", "shared");
    assertEquals(1, check.code, check.err);
    assertTrue(check.out.startsWith("Whin Cabin: no failures, 2 unknown, "), check.out);
    assertTrue(flat(check).contains("never guessed"), check.out);
    assertTrue(flat(check).contains("record_low: -16 °C"), check.out);
    Cli strings = Cli.run("strings", file, "--library", "shared");
    assertEquals(1, strings.code, strings.err);
    assertTrue(strings.out.contains("! State the record low"), strings.out);
  }

  /** One rule in both commands: what cannot be judged is not passed. */
  @Test
  void anUnstatedHighestVoltageIsNotPassedByEither() throws IOException {
    String file =
        changed(
            "(?m)^controller:.*$",
            "controller: {max_output_current: 50 A, max_short_circuit_current: 60 A}");
    Cli check = Cli.run("check", file, "--library", "shared");
    assertEquals(1, check.code, check.out + check.err);
    assertTrue(check.out.contains("UNKNOWN gable: coldest morning, controller"), check.out);
    assertTrue(flat(check).contains("state absolute_maximum_voltage"), check.out);
    Cli strings = Cli.run("strings", file, "--library", "shared");
    assertEquals(1, strings.code, strings.out + strings.err);
    assertFalse(strings.out.contains("Best: "), strings.out);
    assertTrue(flat(strings).contains("what cannot be judged is not passed"), strings.out);
    assertTrue(flat(strings).contains("state absolute_maximum_voltage"), strings.out);
    assertGoodText(strings);
  }

  /** Below -40 °C the handbook's table has no figure, and the column says why. */
  @Test
  void belowTheTablesEndTheColumnSaysWhy() {
    Cli said =
        Cli.run("strings", "scenarios/alder-fold.yaml", "--library", "shared", "--record-low=-45C");
    assertTrue(flat(said).contains("which ends at -40 °C, hence \"-\""), said.out);
    assertGoodText(said);
  }

  @Test
  void anyNumberOfModulesFitsTheScreen() {
    assertGoodText(bare("--modules", "1000"));
    assertGoodText(bare("--modules", "997"));
  }

  @Test
  void badInputIsRefused() {
    assertRefused(Cli.run("check", "none.yaml"), "none.yaml");
    assertRefused(Cli.run("strings", "none.yaml"), "none.yaml");
  }

  // ---- strings ----------------------------------------------------------------------------------

  @Test
  void stringsOfAScenario() {
    Cli said = Cli.run("strings", CABIN);
    assertEquals(0, said.code, said.out + said.err);
    assertTrue(said.out.contains("Best: "), said.out);
    assertGoodText(said);
  }

  @Test
  void everyPlaneIsJudgedAndOneCanBeNamed() {
    Cli all = Cli.run("strings", "scenarios/alder-fold.yaml");
    assertTrue(all.out.contains("Plane \"barn roof\", one of 2"), all.out);
    assertTrue(all.out.contains("Plane \"yard frame\", one of 2"), all.out);
    assertGoodText(all);
    Cli one = Cli.run("strings", "scenarios/alder-fold.yaml", "--array", "yard frame");
    assertFalse(one.out.contains("barn roof"), one.out);
    assertRefused(
        Cli.run("strings", "scenarios/alder-fold.yaml", "--array", "yard fram"),
        "Did you mean \"yard frame\"?");
    assertRefused(
        Cli.run("strings", "scenarios/alder-fold.yaml", "--modules", "6"), "--array", "barn roof");
  }

  /** Energy of each choice, and where the built one's difference comes from. */
  @Test
  void stringsSayWhatEachArrangementBringsInAYear() {
    Cli said = Cli.run("strings", "scenarios/alder-fold.yaml", "--array", "barn roof");
    assertTrue(said.out.contains("kWh a year  verdict"), said.out);
    assertTrue(
        flat(said).matches(".* 9 2 372.5 397.2 450 17 % 244.8 80.0 34.7 77\\d\\d pass, best .*"),
        said.out);
    assertTrue(flat(said).contains("As built, 6 in series, 3 strings: 77"), said.out);
    assertTrue(flat(said).contains("bring 33 kWh a year more (34 kWh less heat in"), said.out);
    assertTrue(flat(said).contains("of this plane as if alone"), said.out);
    assertFalse(said.out.contains("does not track"), said.out);
    assertGoodText(said);
  }

  /** Six modules instead of the eighteen that are there. */
  @Test
  void otherNumbersAreNotAsBuilt() {
    Cli said =
        Cli.run("strings", "scenarios/alder-fold.yaml", "--array", "barn roof", "--modules", "6");
    assertFalse(said.out.contains("As built"), said.out);
    assertTrue(said.out.contains("The best, 6 in series, one string: "), said.out);
    assertGoodText(said);
  }

  @Test
  void aControllerThatDoesNotTrackIsComparedWithOneThatDoes() {
    Cli said = Cli.run("strings", "scenarios/peat-hut.yaml");
    assertTrue(
        flat(said)
            .matches(
                ".*does not track. One that tracks at every voltage, with the same limits and"
                    + " efficiency, would bring \\d+ kWh a year more, \\d+ %\\. .*"),
        said.out);
    assertGoodText(said);
  }

  @Test
  void withoutAStatedWireItIsSaidThatItsHeatIsMissing() throws IOException {
    Cli said =
        Cli.run(
            "strings",
            changed("(?m)^ *- .run: array_to_controller.*\n", ""),
            "--library",
            "shared");
    assertTrue(flat(said).contains("The wire to the controller is not stated"), said.out);
    assertFalse(Cli.run("strings", CABIN).out.contains("is not stated"));
  }

  /** What is safe does not hang on the weather. */
  @Test
  void weatherThatCannotBeReadOnlyHidesTheEnergy() throws IOException {
    Path weather = Files.writeString(folder.resolve("broken.csv"), "no weather\n1\n");
    Cli said =
        Cli.run(
            "strings", changed("(?m)^weather: \\S+", "weather: " + weather), "--library", "shared");
    assertEquals(0, said.code, said.out + said.err);
    assertTrue(
        flat(said).contains("kWh a year are left out, because the weather cannot be read: "),
        said.out);
    assertFalse(said.out.contains("kWh a year  verdict"), said.out);
    assertGoodText(said);
  }

  /** Worked: 410 W modules, 5 kW are at least 13; 15 as 5 x 3 is the only one that fits 250 V. */
  @Test
  void bareModuleAndControllerByPower() {
    Cli said = bare("--power", "5kW");
    assertEquals(0, said.code, said.out + said.err);
    assertTrue(flat(said).contains("Best: 5 in series, 3 strings."), said.out);
    assertTrue(said.out.contains("charged at up to 61.4 V"), said.out);
    assertTrue(flat(said).contains("kWh a year are left out: they need a scenario"), said.out);
    assertTrue(said.out.contains(" array  verdict"), said.out);
    assertGoodText(said);
  }

  @Test
  void fahrenheitAndItsTwinGiveTheSame() {
    Cli said = bare("--modules", "12");
    Cli other =
        Cli.run(
            "strings",
            "--module",
            "Orrin Bay OB-410H",
            "--controller",
            "Sable Ridge SR-D100",
            "--library",
            "shared",
            "--bank-voltage",
            "51.2V",
            "--record-low",
            "3.2F",
            "--record-high",
            "93.2F",
            "--modules",
            "12");
    assertEquals(said.out, other.out);
  }

  @Test
  void whereNothingFitsTheExitCodeIsOne() {
    Cli said = bare("--modules", "13");
    assertEquals(1, said.code, said.err);
    assertTrue(said.out.contains("None of 2 is allowed"), said.out);
  }

  @Test
  void wrongOptionsAreToldAtOnceWithWhatIsRight() {
    assertRefused(Cli.run("strings"), "--module", "--modules");
    assertRefused(bare("--modules", "0"), "--modules");
    assertRefused(bare("--modules", "4", "--power", "5kW"), "--power");
    assertRefused(bare("--power", "5 V"), "--power", "5 V");
    assertRefused(bare("--power", "1 GW"), "--power");
    assertRefused(bare("--modules", "4", "--at", "25 C"), "--at", "1000 W/m2 25 C");
    assertRefused(bare("--modules", "4", "--hour", "24"), "--hour");
    assertRefused(
        Cli.run(
            "strings",
            "--module",
            "Orin Bay OB-410H",
            "--controller",
            "Sable Ridge SR-D100",
            "--library",
            "shared",
            "--bank-voltage",
            "51V",
            "--modules",
            "4"),
        "--module",
        "Orrin Bay OB-410H");
    assertRefused(
        bare("--modules", "4", "--charging-voltage", "hot", "--no-dwelling-limit"),
        "--charging-voltage");
  }

  @Test
  void picturesAreWritten() throws IOException {
    Cli said =
        bare(
            "--modules",
            "12",
            "--pictures",
            folder.resolve("p").toString(),
            "--at",
            "800 W/m2 45 C",
            "--at",
            "100 W/m² 5 °C");
    assertEquals(0, said.code, said.err);
    for (String name : List.of("strings", "module-curves", "shade")) {
      assertTrue(Files.size(folder.resolve("p/" + name + ".png")) > 10_000, name);
      assertTrue(said.out.contains(name + ".svg"), said.out);
    }
    String curves = Files.readString(folder.resolve("p/module-curves.svg"));
    assertTrue(curves.contains("800 W/m², 45 °C") && curves.contains("100 W/m², 5 °C"));
  }

  /** Alder Fold has two planes with the same module. */
  @Test
  void twoPlanesAreComparedApartAndJoined() throws IOException {
    Cli said =
        Cli.run(
            "strings",
            "scenarios/alder-fold.yaml",
            "--array",
            "barn roof",
            "--pictures",
            folder.resolve("p").toString());
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("on inputs of their own"), said.out);
    // the best would be nine in series
    String shade = Files.readString(folder.resolve("p/shade.svg"));
    assertTrue(shade.contains("One string as built, 6 in series"), shade);
    String svg = Files.readString(folder.resolve("p/planes.svg"));
    assertTrue(svg.contains("Shown at 9 h on "), svg);
    assertRefused(
        Cli.run("strings", CABIN, "--pictures", Path.of("README.md").resolve("x").toString()),
        "README.md");
  }
}
