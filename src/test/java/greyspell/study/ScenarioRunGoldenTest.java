package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import greyspell.outcome.Figures;
import greyspell.outcome.GreySpell;
import greyspell.outcome.Outcome;
import greyspell.scenario.ScenarioReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every shipped home runs, its books close each hour, and its figures stay what they were. {@code
 * -Dgolden=write} rewrites the figures and fails that run; a commit that changes them says why.
 */
class ScenarioRunGoldenTest {
  static Stream<Path> homes() throws IOException {
    try (var files = Files.list(Path.of("scenarios"))) {
      List<Path> homes = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
      assertTrue(homes.size() >= 4);
      return homes.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("homes")
  void runsAndClosesAndStaysTheSame(Path home) throws IOException {
    StudyResult result = Study.run(ScenarioReader.read(home), (what, done) -> {});
    Ledgers.assertEveryHourCloses(result.ledger());
    Map<String, Double> figures = figures(result.outcome());
    String name = String.valueOf(home.getFileName()).replace(".yaml", ".txt");
    Path golden = Path.of("src/test/resources/golden", name);
    if ("write".equals(System.getProperty("golden"))) {
      var text = new StringBuilder();
      figures.forEach((key, value) -> text.append(key).append(' ').append(value).append('\n'));
      Files.writeString(golden, text);
      fail(golden + " was rewritten; run again without -Dgolden=write");
    }
    var expected = new LinkedHashMap<String, Double>();
    for (String line : Files.readAllLines(golden)) {
      expected.put(
          line.substring(0, line.indexOf(' ')),
          Double.valueOf(line.substring(line.indexOf(' ') + 1)));
    }
    var gone = new TreeSet<>(expected.keySet());
    gone.removeAll(figures.keySet());
    var added = new TreeSet<>(figures.keySet());
    added.removeAll(expected.keySet());
    assertEquals("[] []", gone + " " + added, "figures gone, figures new");
    expected.forEach(
        (key, value) ->
            assertEquals(
                value,
                figures.getOrDefault(key, Double.NaN),
                1e-9 * Math.max(1.0, Math.abs(value)),
                key));
  }

  private static Map<String, Double> figures(Outcome outcome) {
    var out = new LinkedHashMap<String, Double>();
    add("total", outcome.total(), out);
    outcome.winters().forEach(w -> add(w.winter().name().replace(' ', '_'), w.figures(), out));
    for (int month = 1; month <= 12; month++) {
      out.put("dark_days." + month, outcome.autonomy().darkDays().in(month));
    }
    out.put("grey_p10_days", outcome.autonomy().greyP10Days());
    out.put("grey_p50_days", outcome.autonomy().greyP50Days());
    out.put("grey_worst_days", outcome.autonomy().greyWorstDays());
    out.put("shortfalls", (double) outcome.shortfalls().size());
    out.put("grey_spells", (double) outcome.greySpells().size());
    for (int i = 0; i < Math.min(3, outcome.greySpells().size()); i++) {
      GreySpell spell = outcome.greySpells().get(i);
      out.put("spell." + i + ".from_day", (double) spell.fromDay());
      out.put("spell." + i + ".days", (double) spell.days());
      out.put("spell." + i + ".short_wh", spell.shortWh());
    }
    return out;
  }

  private static void add(String name, Figures f, Map<String, Double> out) {
    out.put(name + ".load_wh", f.loadWh());
    out.put(name + ".unmet_wh", f.unmetWh());
    out.put(name + ".unmet_inverter_wh", f.unmetInverterWh());
    out.put(name + ".unmet_hours", (double) f.unmetHours());
    out.put(name + ".solar_nominal_wh", f.solarNominalWh());
    out.put(name + ".solar_available_wh", f.solarAvailableWh());
    out.put(name + ".clipped_wh", f.clippedWh());
    out.put(name + ".curtailed_wh", f.curtailedWh());
    out.put(name + ".bank_in_wh", f.bankInWh());
    out.put(name + ".standing_wh", f.standingWh());
    out.put(name + ".lowest_charge_wh", f.lowestChargeWh());
    f.lossesWh().forEach(loss -> out.put(name + ".loss." + loss.name() + "_wh", loss.wh()));
  }
}
