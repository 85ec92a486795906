package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {
  private static final String CABIN = "scenarios/whin-cabin.yaml";

  @TempDir private Path folder = Path.of("");

  private String in(String name) {
    return folder.resolve(name).toString();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "run",
        "new",
        "check",
        "strings",
        "weather",
        "weather inspect",
        "weather make",
        "weather convert",
        "weather calibrate"
      })
  void everyCommandHasHelpWithAnExample(String command) {
    String[] args = (command + " --help").strip().split(" ");
    Cli said = Cli.run(args);
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("Example: greyspell "), said.out);
    assertTrue(said.out.lines().allMatch(l -> l.length() <= 100), said.out);
    var named =
        Pattern.compile("(scenarios|weather-samples)/[a-z0-9-]+\\.(yaml|csv)").matcher(said.out);
    while (named.find()) {
      assertTrue(Files.exists(Path.of(named.group())), "the example names " + named.group());
    }
  }

  @Test
  void runWritesEverything() throws IOException {
    Cli said = Cli.run("run", CABIN, "--out", in("o"));
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("The lights went out in 2 of 2 winters"), said.out);
    for (String file : List.of("ledger.csv", "months.csv", "results.json", "report.html")) {
      assertTrue(Files.size(folder.resolve("o").resolve(file)) > 1000, file);
    }
    for (String picture : List.of("months", "fortnight", "grey-spells", "charge")) {
      assertTrue(Files.exists(folder.resolve("o/pictures/" + picture + ".svg")), picture);
      assertTrue(Files.exists(folder.resolve("o/pictures/" + picture + ".png")), picture);
    }
    try (Stream<Path> all = Files.walk(folder)) {
      assertFalse(all.anyMatch(f -> f.toString().endsWith(".part")), "nothing half-written");
    }
  }

  @Test
  void jsonIsTheResultsFile() throws IOException {
    Cli said = Cli.run("run", CABIN, "--out", in("o"), "--no-pictures", "--json");
    assertEquals(0, said.code, said.err);
    var json = new ObjectMapper().readTree(said.out);
    assertEquals(1, json.get("format").asInt());
    assertEquals(json, new ObjectMapper().readTree(folder.resolve("o/results.json").toFile()));
  }

  @Test
  void quietIsSilent() {
    Cli said = Cli.run("run", CABIN, "--out", in("o"), "--no-pictures", "--quiet");
    assertEquals("0", said.code + said.out + said.err);
  }

  @Test
  void aWarningThatWasAskedForIsExitCodeOne() {
    assertEquals(
        1, Cli.run("run", CABIN, "--out", in("o"), "--no-pictures", "--warn-above", "10").code);
    assertEquals(
        0, Cli.run("run", CABIN, "--out", in("o"), "--no-pictures", "--warn-above", "8760").code);
  }

  @Test
  void numbersAreRefusedInPlainWords() {
    for (String[] bad :
        new String[][] {
          {"run", "--winters", "ten", "must be a whole number"},
          {"sweep", "--max-runs", "1.5", "must be a whole number"},
          {"run", "--winters", "99999999999", "too large"},
          {"size", "--unmet-hours", "few", "must be a number"},
          {"size", "--unmet-hours", "NaN", "must be a number"}
        }) {
      Cli said = Cli.run(bad[0], CABIN, bad[1], bad[2]);
      assertEquals(2, said.code, said.err);
      assertTrue(said.err.contains("'" + bad[1] + "'") && said.err.contains(bad[3]), said.err);
      assertFalse(said.err.contains(" int") || said.err.contains("double"), said.err);
    }
  }

  @Test
  void aWarningBelowNoHoursIsRefused() {
    Cli said = Cli.run("run", CABIN, "--out", in("o"), "--warn-above", "-1");
    assertEquals(2, said.code);
    assertTrue(said.err.contains("--warn-above  found -1"), said.err);
  }

  @Test
  void newShowsACommandThatCanBeCopiedAlsoWithBlanksInTheName() {
    Cli said = Cli.run("new", in("my home.yaml"), "--no-questions");
    assertTrue(said.out.contains("greyspell run \"" + in("my home.yaml") + "\""), said.out);
  }

  @Test
  void newWritesAScenarioThatRunsAsItIs() {
    Cli said = Cli.run("new", in("home.yaml"), "--no-questions");
    assertEquals(0, said.code, said.err);
    Cli run =
        Cli.run("run", in("home.yaml"), "--library", "shared", "--out", in("o"), "--no-pictures");
    assertEquals(0, run.code, run.err);
  }

  @Test
  void newNeverTouchesAnExistingFile() throws IOException {
    Files.writeString(folder.resolve("home.yaml"), "mine");
    Cli said = Cli.run("new", in("home.yaml"), "--no-questions");
    assertEquals(2, said.code);
    assertEquals("mine", Files.readString(folder.resolve("home.yaml")));
  }

  @Test
  void weatherIsInspected() {
    Cli said =
        Cli.run("weather", "inspect", "weather-samples/grey-maritime.csv", "--pictures", in("w"));
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("Missing hours: 0"), said.out);
    assertTrue(said.out.contains("28 days from 9 December 2022"), said.out);
    assertTrue(said.out.contains("Nothing looks wrong."), said.out);
    assertTrue(Files.exists(folder.resolve("w/weather-days.png")));
  }

  /**
   * The clock of the file is moved by two hours: the sun test must see it, and --warn make it exit
   * code 1.
   */
  @Test
  void aWrongClockIsFound() throws IOException {
    String text = Files.readString(Path.of("weather-samples/high-plateau.csv"));
    Files.writeString(
        folder.resolve("late.csv"), text.replace("# utc_offset: -7", "# utc_offset: -5"));
    Cli said = Cli.run("weather", "inspect", in("late.csv"), "--warn");
    assertEquals(1, said.code, said.err);
    assertTrue(said.out.contains("fit the sun when the file's times are moved by"), said.out);
  }

  /** Half an hour, as a head that names the wrong zone: inspect and run both tell it. */
  @Test
  void aZoneThatIsHalfAnHourOffIsFound() throws IOException {
    String text = Files.readString(Path.of("weather-samples/grey-maritime.csv"));
    String zone = text.lines().filter(l -> l.startsWith("# utc_offset:")).findFirst().orElse("");
    double offsetH = Double.parseDouble(zone.substring(zone.indexOf(':') + 1));
    Files.writeString(
        folder.resolve("half.csv"), text.replace(zone, "# utc_offset: " + (offsetH + 0.5)));
    Cli inspected = Cli.run("weather", "inspect", in("half.csv"), "--warn");
    assertEquals(1, inspected.code, inspected.err);
    assertTrue(inspected.out.contains("are moved by +"), inspected.out);
    String home =
        Files.readString(Path.of(CABIN))
            .replaceAll("(?m)^weather: .*$", "weather: " + in("half.csv").replace("\\", "/"));
    Files.writeString(folder.resolve("home.yaml"), home);
    Cli ran =
        Cli.run("run", in("home.yaml"), "--library", "shared", "--out", in("o"), "--no-pictures");
    assertEquals(0, ran.code, ran.err);
    assertTrue(
        Files.readString(folder.resolve("o/results.json")).contains("against the sun of the site"),
        ran.out);
  }

  @Test
  void weatherIsConverted() throws IOException {
    Files.writeString(
        folder.resolve("map.yaml"),
        """
        utc_offset: -7
        remarks: "#"
        time: local_start
        time_format: yyyy-MM-ddTHH:mm
        stamp: start
        ghi: ghi_wm2, W/m2
        tair: tair_c, C
        """);
    Cli said =
        Cli.run(
            "weather",
            "convert",
            "weather-samples/high-plateau.csv",
            "--columns",
            in("map.yaml"),
            "--out",
            in("w.csv"));
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("0 of "), said.out);
    List<String> rows = Files.readAllLines(folder.resolve("w.csv"));
    assertTrue(rows.contains("local_start,ghi_wm2,tair_c"), rows.subList(0, 5).toString());
    assertRefused(
        Cli.run("weather", "convert", in("w.csv"), "--out", in("no/such.csv")), "such.csv");
    assertRefused(
        Cli.run("weather", "convert", in("w.csv"), "--columns", in("w.csv"), "--out", in("x.csv")),
        "w.csv:");
  }

  /** What calibrate prints is a block that a scenario takes. */
  @Test
  void cloudIsCalibrated() throws IOException {
    Cli said = Cli.run("weather", "calibrate", "weather-samples/grey-maritime.csv");
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("# classic curve"), said.out);
    Files.writeString(
        folder.resolve("dull.csv"),
        Files.readString(Path.of("weather-samples/grey-maritime.csv"))
            .replace("cloud_okta", "wind_ms")
            .replaceFirst(",wind_ms,", ",snow_cm,"));
    assertRefused(Cli.run("weather", "calibrate", in("dull.csv")), "dull.csv");
    String home =
        Files.readString(Path.of(CABIN))
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString());
    Files.writeString(folder.resolve("home.yaml"), home + "\n" + said.out);
    Cli ran =
        Cli.run("run", in("home.yaml"), "--library", "shared", "--out", in("o"), "--no-pictures");
    assertEquals(0, ran.code, ran.err);
  }

  @Test
  void weatherIsMadeFromMonthlyMeans() throws IOException {
    var means =
        new StringBuilder(
            """
            # place: Mewsand (invented)
            # latitude: 53.2
            # longitude: 6.1
            # utc_offset: 1
            month,global_kwhm2_day,temperature_c
            """);
    double[] global = {.62, 1.29, 2.51, 4.11, 5.02, 5.18, 5.05, 4.25, 2.98, 1.62, .79, .48};
    for (int m = 1; m <= 12; m++) {
      means.append(m).append(',').append(global[m - 1]).append(",9.5\n");
    }
    Files.writeString(folder.resolve("means.csv"), means);
    Cli said =
        Cli.run(
            "weather", "make", "--means", in("means.csv"), "--years", "4", "--out", in("made.csv"));
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("4 years, made from monthly means, seed 1."), said.out);
    assertTrue(said.out.contains("Note: made weather"), said.out);
    Cli seen = Cli.run("weather", "inspect", in("made.csv"), "--warn");
    assertEquals(0, seen.code, seen.out + seen.err);
    assertTrue(seen.out.contains("0.48"), "December's mean is met: " + seen.out);
    assertRefused(
        Cli.run(
            "weather",
            "make",
            "--means",
            in("means.csv"),
            "--memory",
            "none",
            "--out",
            in("x.csv")),
        "grey-spells or one-lag");
  }

  @Test
  void weatherIsMadeLikeAFile() throws IOException {
    String sample = "weather-samples/grey-maritime.csv";
    Cli said =
        Cli.run("weather", "make", "--like", sample, "--years", "5", "--out", in("like.csv"));
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("spliced from 3 years of " + sample), said.out);
    Cli seen = Cli.run("weather", "inspect", in("like.csv"), "--warn");
    assertEquals(0, seen.code, seen.out + seen.err);
    assertRefused(Cli.run("weather", "make", "--out", in("x.csv")), "must have one of them");
    assertRefused(
        Cli.run("weather", "make", "high-plateau", "--like", sample, "--out", in("x.csv")),
        "must have one of them");
    assertRefused(
        Cli.run("weather", "make", "--like", in("none.csv"), "--out", in("x.csv")), "none.csv");
    assertRefused(
        Cli.run("weather", "make", "--like", sample, "--latitude", "91", "--out", in("x.csv")),
        "--latitude");
    assertRefused(
        Cli.run("weather", "make", "high-plateau", "--memory", "one-lag", "--out", in("x.csv")),
        "goes with --means only");
    assertRefused(
        Cli.run("weather", "make", "high-plateau", "--latitude", "50", "--out", in("x.csv")),
        "go with --like only");
    assertRefused(
        Cli.run("weather", "make", "--means", in("none.csv"), "--out", in("x.csv")),
        "Check the spelling");
  }

  @Test
  void weatherIsMadeTheSameTwice() throws IOException {
    for (String name : List.of("a.csv", "b.csv")) {
      Cli said =
          Cli.run(
              "weather", "make", "high-plateau", "--years", "1", "--seed", "5", "--out", in(name));
      assertEquals(0, said.code, said.err);
    }
    assertEquals(-1, Files.mismatch(folder.resolve("a.csv"), folder.resolve("b.csv")));
  }

  @Test
  void aMistypedCommandIsToldTheNearest() {
    Cli said = Cli.run("rum", CABIN);
    assertEquals(2, said.code);
    assertTrue(said.err.contains("Did you mean: greyspell run?"), said.err);
  }

  // ---- bad input: a clear message, exit code 2, no stack trace, nothing half-written
  // -------------

  private void assertRefused(Cli said, String... words) throws IOException {
    assertEquals(2, said.code, said.out + said.err);
    assertFalse(said.err.contains("\tat ") || said.err.contains("Exception"), said.err);
    for (String word : words) {
      assertTrue(said.err.contains(word), said.err);
    }
    assertFalse(Files.exists(folder.resolve("o")), "nothing is written");
  }

  private Cli runChanged(String what, String by) throws IOException {
    String text =
        Files.readString(Path.of(CABIN))
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString());
    assertTrue(text.contains(what), what);
    Files.writeString(folder.resolve("home.yaml"), text.replace(what, by));
    return Cli.run("run", in("home.yaml"), "--library", "shared", "--out", in("o"));
  }

  @Test
  void badScenariosAreRefused() throws IOException {
    Files.writeString(folder.resolve("empty.yaml"), "");
    assertRefused(Cli.run("run", in("empty.yaml"), "--out", in("o")), "empty.yaml");
    assertRefused(Cli.run("run", in("none.yaml"), "--out", in("o")), "none.yaml");
    assertRefused(Cli.run("run", folder.toString(), "--out", in("o")));
    assertRefused(Cli.run("run", "README.md", "--out", in("o")), "README.md");
    assertRefused(runChanged("reserve:", "reserv:"), "home.yaml:", "reserve");
    assertRefused(runChanged("latitude: 53.0", "latitude: NaN"), "latitude");
    assertRefused(runChanged("latitude: 53.0", "latitude: .inf"), "latitude");
    assertRefused(runChanged("latitude: 53.0", "latitude: [1, 2]"), "latitude");
    assertRefused(runChanged("in_series: ", "in_series: -"), "in_series");
    assertRefused(runChanged("grey-maritime.csv", "no-such.csv"), "no-such.csv");
  }

  @Test
  void badWeatherIsRefused() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("weather-samples/grey-maritime.csv"));
    Files.write(folder.resolve("cut.csv"), lines.subList(0, 3000));
    assertRefused(Cli.run("weather", "inspect", in("cut.csv")), "cut.csv");
    assertRefused(
        runChanged(
            Path.of("weather-samples").toAbsolutePath() + "/grey-maritime.csv", in("cut.csv")),
        "cut.csv");
    Files.writeString(folder.resolve("nothing.csv"), "");
    assertRefused(Cli.run("weather", "inspect", in("nothing.csv")), "nothing.csv");
    assertRefused(
        Cli.run("weather", "make", "grey-maritme", "--out", in("x.csv")), "grey-maritime");
    assertRefused(
        Cli.run("weather", "make", "grey-maritime", "--years", "0", "--out", in("x.csv")),
        "--years");
    assertRefused(
        Cli.run("weather", "make", "grey-maritime", "--out", in("no/such/x.csv")), "x.csv");
  }

  @Test
  void aHundredMegabytesOfRubbishAreRefused() throws IOException {
    Path file = folder.resolve("rubbish");
    var block = new byte[1 << 20];
    new java.util.Random(1).nextBytes(block);
    try (var out = Files.newOutputStream(file)) {
      for (int i = 0; i < 100; i++) {
        out.write(block);
      }
    }
    assertRefused(Cli.run("run", file.toString(), "--out", in("o")), "rubbish");
    assertRefused(Cli.run("weather", "inspect", file.toString()), "rubbish");
  }

  @Test
  void aPlaceThatCannotBeWrittenIsRefused() throws IOException {
    Files.writeString(folder.resolve("file"), "not a folder");
    Cli said = Cli.run("run", CABIN, "--out", in("file"), "--no-pictures");
    assertRefused(said, "file");
    assertEquals("not a folder", Files.readString(folder.resolve("file")));
  }

  /** Unusual but possible: told, not refused. */
  @Test
  void panelsThatFaceAwayFromTheEquatorAreACaution() throws IOException {
    String text =
        Files.readString(Path.of(CABIN))
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString());
    Files.writeString(
        folder.resolve("home.yaml"), text.replaceFirst("azimuth: [^\n#]*", "azimuth: N "));
    Cli said =
        Cli.run(
            "run",
            in("home.yaml"),
            "--library",
            "shared",
            "--out",
            in("o"),
            "--no-pictures",
            "--json");
    assertEquals(0, said.code, said.err);
    assertTrue(said.out.contains("away from the equator"), "caution");
  }
}
