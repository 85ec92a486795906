package greyspell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code run} through many winters, on the command line and from the scenario. */
class RunWintersTest {
  private static final String HOME = "scenarios/alder-fold.yaml";

  @TempDir private Path temp = Path.of("");

  private Cli run(String scenario, String... more) {
    var args = new ArrayList<String>();
    args.add("run");
    args.add(scenario);
    args.add("--out");
    args.add(temp.resolve("out").toString());
    args.add("--no-pictures");
    args.add("--library");
    args.add("shared");
    args.addAll(List.of(more));
    return Cli.run(args.toArray(new String[0]));
  }

  private Path scenario(String weather) throws IOException {
    String text = Files.readString(Path.of(HOME));
    Path samples = Path.of("weather-samples").toAbsolutePath();
    return Files.writeString(
        temp.resolve("home.yaml"),
        text.replaceFirst("(?m)^weather:.*$", "weather: " + weather)
            .replace("SAMPLES", samples.toString()));
  }

  @Test
  void theOneThatComesOnceInTenYearsIsShownInFullUnderItsName() throws IOException {
    Cli got = run(HOME, "--winters", "20", "--how", "made");
    assertEquals(0, got.code, got.err);
    assertTrue(got.out.contains("of 20 winters"), got.out);
    String page = Files.readString(temp.resolve("out/report.html"));
    assertTrue(page.contains("hardest of 20 winters"), "the page says which is shown");
    assertFalse(
        page.contains("typical year") || page.contains("2001"), "a drawn winter is no year");
    assertTrue(Files.exists(temp.resolve("out/results.json")));
  }

  /** Each pack eats more than it carries over: said, not told as too few winters. */
  @Test
  void noBankIsToldAsNone() throws IOException {
    String hungry =
        Files.readString(Path.of(HOME))
            .replace(
                "battery: Quarrel QR-51100 ", "battery: {from: Quarrel QR-51100, standby: 9 W} ")
            .replace("../weather-samples", Path.of("weather-samples").toAbsolutePath().toString());
    Path file = Files.writeString(temp.resolve("hungry.yaml"), hungry);
    String said = run(file.toString(), "--winters", "10", "--how", "made").out;
    assertTrue(said.contains("No bank of the same packs, however many, carries 9 of 10"), said);
    assertTrue(
        said.lines().anyMatch(l -> l.matches(" *Bank that rides through.* none +none +none")),
        said);
    assertTrue(said.contains("no tail of banks is fitted"), said);
  }

  @Test
  void aSingleWinterIsToldInASentence() {
    String said = run(HOME, "--winters", "1", "--how", "made").out.replaceAll("\\s+", " ");
    assertTrue(said.matches(".*Ran out in 1 of 1 winter: it was [\\d.]+ kWh short over .*"), said);
  }

  @Test
  void measuredOnesAreCounted() {
    Cli got = run(HOME, "--how", "measured");
    assertEquals(0, got.code, got.err);
    assertTrue(got.out.contains("Ran out in 2 of 2 winters"), got.out);
    assertTrue(got.out.contains("2022/23"), got.out);
  }

  @Test
  void theScenarioMayAskForThemAndTheCommandLineGoesBefore() throws IOException {
    String home =
        scenario("{file: SAMPLES/grey-maritime.csv, winters: 6, how: made, seed: 3}").toString();
    assertTrue(run(home).out.contains("6 winters, made from monthly means, seed 3"));
    assertTrue(run(home, "--winters", "4").out.contains("4 winters, made"));
  }

  @Test
  void monthlyMeansAloneAreEnough() throws IOException {
    var means = new StringBuilder("# latitude: 53\n# longitude: 6\n# utc_offset: 1\n");
    means.append("month,global_kwhm2_day,temperature_c\n");
    double[] kwh = {0.6, 1.3, 2.5, 4.1, 5.0, 5.2, 5.0, 4.2, 3.0, 1.6, 0.8, 0.5};
    for (int m = 0; m < 12; m++) {
      means.append(m + 1).append(',').append(kwh[m]).append(',').append(10).append('\n');
    }
    Files.writeString(temp.resolve("means.csv"), means);
    String home = scenario("{means: means.csv}").toString();
    Cli got = run(home);
    assertEquals(0, got.code, got.err);
    assertTrue(got.out.contains("100 winters, made from monthly means"), got.out);
    assertEquals(0, Cli.run("check", home, "--library", "shared").code);
    assertEquals(0, Cli.run("load", home, "--library", "shared").code);
  }

  @Test
  void severalFilesAreSeveralYears() throws IOException {
    Path first = temp.resolve("a.csv"), second = temp.resolve("b.csv");
    var lines = Files.readAllLines(Path.of("weather-samples/grey-maritime.csv"));
    int head = 0;
    while (lines.get(head).startsWith("#")) {
      head++;
    }
    int cut = head + 1 + 8760;
    Files.write(first, lines.subList(0, cut));
    var rest = new ArrayList<>(lines.subList(0, head + 1));
    rest.addAll(lines.subList(cut, lines.size()));
    Files.write(second, rest);
    Cli joined = run(scenario("{file: [a.csv, b.csv]}").toString());
    assertEquals(0, joined.code, joined.err);
    assertTrue(joined.out.contains("2 of 2 winters"), joined.out);
  }

  @Test
  void warnsOfAnyWinter() {
    assertEquals(
        Main.FOUND, run(HOME, "--winters", "3", "--how", "made", "--warn-above", "0").code);
    assertEquals(0, run(HOME, "--winters", "3", "--how", "made", "--warn-above", "8760").code);
  }

  @Test
  void refusesWhatMakesNoSense() throws IOException {
    Cli none = run(HOME, "--winters", "0");
    assertEquals(Main.BAD_INPUT, none.code);
    assertTrue(none.err.contains("must be 1 to 10000"), none.err);
    Cli misspelt = run(HOME, "--how", "spliced_");
    assertEquals(Main.BAD_INPUT, misspelt.code);
    assertTrue(misspelt.err.contains("Did you mean spliced?"), misspelt.err);
    assertFalse(Files.exists(temp.resolve("out")));
  }
}
