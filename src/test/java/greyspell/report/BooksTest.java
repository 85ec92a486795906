package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import greyspell.balance.LedgerColumn;
import greyspell.chart.FullHome;
import greyspell.chart.SampleStudy;
import greyspell.study.ElectricalCheck;
import greyspell.study.StudyResult;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Ledger, months and results say the same as the ledger in memory, and docs/results.md says what
 * they say.
 */
class BooksTest {
  private static final StudyResult GREY = new SampleStudy().run();
  private static final List<String> LEDGER = lines();
  private static final JsonNode JSON = json(GREY);
  private static final StudyResult FULL = FullHome.RESULT;
  private static final JsonNode FULL_JSON = json(FULL);

  private static List<String> lines() {
    try {
      var out = new ByteArrayOutputStream();
      LedgerCsv.write(GREY, out);
      return out.toString(StandardCharsets.UTF_8).lines().toList();
    } catch (java.io.IOException e) {
      throw new AssertionError(e);
    }
  }

  private static JsonNode json(StudyResult result) {
    try {
      var out = new ByteArrayOutputStream();
      ResultsJson.write(result, ElectricalCheck.of(result.scenario(), result), out);
      return new ObjectMapper().readTree(out.toByteArray());
    } catch (java.io.IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Those that this home, which the fast loop follows, has. */
  private static List<LedgerColumn> columns() {
    return Arrays.stream(LedgerColumn.values()).filter(c -> !c.isFull()).toList();
  }

  @Test
  void ledgerHasARowAnHourInBothTimes() {
    assertEquals(GREY.ledger().hours() + 1, LEDGER.size());
    assertEquals(String.join(",", LedgerCsv.headers(GREY)), LEDGER.get(0));
    assertTrue(LEDGER.get(1).startsWith("2021-01-01T00:00,2020-12-31T23:00Z,"), LEDGER.get(1));
    assertTrue(LEDGER.get(2).startsWith("2021-01-01T01:00,2021-01-01T00:00Z,"));
    assertTrue(LEDGER.get(LEDGER.size() - 1).startsWith("2023-12-31T23:00,2023-12-31T22:00Z,"));
    int columns = LEDGER.get(0).split(",", -1).length;
    for (String line : LEDGER) {
      assertEquals(columns, line.split(",", -1).length);
    }
  }

  @Test
  void ledgerSumsAreRightToATenthOfAWattHour() {
    var header = List.of(LEDGER.get(0).split(",", -1));
    var sums = new double[header.size()];
    for (String line : LEDGER.subList(1, LEDGER.size())) {
      String[] cells = line.split(",", -1);
      for (int c = 2; c < cells.length; c++) {
        sums[c] += Double.parseDouble(cells[c]);
      }
    }
    for (LedgerColumn column : columns()) {
      int c = header.indexOf(column.header());
      assertTrue(c > 0, column.header());
      if (column != LedgerColumn.CHARGE) {
        double exact = Arrays.stream(column.of(GREY.ledger())).sum();
        assertEquals(exact, sums[c], 0.051, column.header());
      }
    }
  }

  @Test
  void ledgerValuesAreRightToATenth() {
    var header = List.of(LEDGER.get(0).split(",", -1));
    for (int h = 0; h < GREY.ledger().hours(); h += 17) {
      String[] cells = LEDGER.get(h + 1).split(",", -1);
      for (LedgerColumn column : columns()) {
        double printed = Double.parseDouble(cells[header.indexOf(column.header())]);
        assertEquals(column.of(GREY.ledger())[h], printed, 0.1001, column.header());
      }
    }
  }

  @Test
  void monthsAddUp() {
    var lines = MonthsCsv.text(GREY).lines().toList();
    assertEquals(37, lines.size());
    assertTrue(lines.get(1).startsWith("2021-01,31,"));
    assertTrue(lines.get(36).startsWith("2023-12,31,"));
    var header = List.of(lines.get(0).split(",", -1));
    double unmet = 0.0;
    double used = 0.0;
    for (String line : lines.subList(1, 37)) {
      String[] cells = line.split(",", -1);
      assertEquals(header.size(), cells.length);
      unmet += Double.parseDouble(cells[header.indexOf("unmet_kwh")]);
      used += Double.parseDouble(cells[header.indexOf("solar_used_kwh")]);
    }
    assertEquals(GREY.outcome().total().unmetWh() / 1000.0, unmet, 36 * 0.0005);
    assertEquals(GREY.outcome().total().solarUsedWh() / 1000.0, used, 36 * 0.0005);
  }

  @Test
  void resultsEqualTheLedgerAndClose() {
    var total = JSON.get("total");
    double used = Arrays.stream(LedgerColumn.SOLAR_USED.of(GREY.ledger())).sum() / 1000.0;
    assertEquals(used, total.get("solar_used_kwh").asDouble(), 1e-6);
    var losses = total.get("losses_kwh");
    double out =
        total.get("served_kwh").asDouble()
            + total.get("standing_kwh").asDouble()
            + losses.get("inverter").asDouble()
            + losses.get("charging").asDouble()
            + losses.get("discharging").asDouble()
            + losses.get("self_discharge").asDouble()
            + total.get("end_charge_kwh").asDouble()
            - total.get("start_charge_kwh").asDouble();
    assertEquals(used, out, 1e-5);
    assertEquals(
        total.get("load_kwh").asDouble(),
        total.get("served_kwh").asDouble() + total.get("unmet_kwh").asDouble(),
        3e-6);
    double shortfalls = 0.0;
    for (JsonNode s : total.get("shortfalls")) {
      shortfalls += s.get("kwh").asDouble();
    }
    assertEquals(total.get("unmet_kwh").asDouble(), shortfalls, 1e-3);
  }

  /** docs/results.md: "The books close". Each sum is rounded to a millionth. */
  @Test
  void theBooksOfAFullHomeClose() {
    assertTrue(FULL.ledger().isFull());
    List<JsonNode> stretches = new java.util.ArrayList<>();
    stretches.add(FULL_JSON.get("total"));
    FULL_JSON.get("per_winter").forEach(stretches::add);
    for (JsonNode f : stretches) {
      var losses = f.get("losses_kwh");
      double out = of(f, "served_kwh") + of(f, "standing_kwh");
      for (String loss :
          List.of(
              "inverter",
              "inverter_wiring",
              "generator_charger",
              "charging",
              "discharging",
              "self_discharge")) {
        out += of(losses, loss);
      }
      out += of(f, "end_charge_kwh") - of(f, "start_charge_kwh");
      double in = of(f, "solar_used_kwh") + of(f, "other_used_kwh") + of(f, "generator_kwh");
      assertEquals(in, out, 1e-5);
      double unmet = 0.0;
      for (String why : List.of("empty", "rate", "inverter", "cut_off", "slow", "asleep")) {
        unmet += of(f, "unmet_" + why + "_kwh");
      }
      assertEquals(of(f, "unmet_kwh"), unmet, 1e-5);
    }
    for (String used :
        List.of(
            "generator_kwh",
            "generator_fuel_cost",
            "other_used_kwh",
            "shed_kwh",
            "put_off_kwh",
            "made_up_kwh",
            "unmet_empty_kwh",
            "curtailed_absorption_kwh")) {
      assertTrue(of(FULL_JSON.get("total"), used) > 0.0, used + " is meant to be seen");
    }
  }

  /**
   * Asked = served + not served + let go + what waits more than before: the identity of the
   * documents without what waited too long, which put off less made up less the change of what
   * waits leaves.
   */
  @Test
  void whatAFullHomeAskedForIsAccountedFor() {
    var total = FULL_JSON.get("total");
    double[] waitingWh = LedgerColumn.WAITING.of(FULL.ledger());
    double waitsKwh = waitingWh[waitingWh.length - 1] / 1000.0;
    assertEquals(
        of(total, "load_kwh"),
        of(total, "served_kwh") + of(total, "unmet_kwh") + of(total, "shed_kwh") + waitsKwh,
        1e-5);
  }

  @Test
  void whatStandsBesideTheBooks() {
    var range = FULL_JSON.get("load_range");
    double low = of(range.get("low"), "unmet_kwh_per_year");
    double likely = of(range.get("likely"), "unmet_kwh_per_year");
    assertTrue(low < likely && likely < of(range.get("high"), "unmet_kwh_per_year"));
    assertEquals(of(FULL_JSON.get("total"), "unmet_kwh") / 3.0, likely, 2e-6);
    assertEquals("hob", range.get("measure_first").asText());
    var service = FULL_JSON.get("bank").get("service_years");
    assertEquals(8, service.size());
    assertEquals(100.0, of(service.get(0), "capacity_pct"));
    assertEquals(likely, of(service.get(0), "unmet_kwh_per_year"), 2e-6);
    double lowestV = Double.MAX_VALUE;
    for (double v : FULL.ledger().bankV()) {
      lowestV = v > 0.0 ? Math.min(lowestV, v) : lowestV;
    }
    assertEquals(lowestV, of(FULL_JSON.get("bank"), "lowest_v"), 1e-6);
    assertTrue(of(FULL_JSON.get("always_on").get("ten_watts_less"), "unmet_kwh_per_year") < likely);
    var total = FULL_JSON.get("total");
    assertEquals(
        of(total, "generator_fuel_l"), of(total, "generator_fuel_gal") * 3.785411784, 1e-5);
    assertEquals(of(total, "generator_fuel_l") * 1.8, of(total, "generator_fuel_cost"), 1e-5);
  }

  private static double of(JsonNode node, String key) {
    return node.get(key).asDouble();
  }

  @Test
  void wintersAddUpToTheTotal() {
    for (String key :
        List.of("hours", "load_kwh", "unmet_kwh", "unmet_hours", "curtailed_kwh", "bank_in_kwh")) {
      double sum = 0.0;
      for (JsonNode w : JSON.get("per_winter")) {
        sum += w.get(key).asDouble();
      }
      assertEquals(JSON.get("total").get(key).asDouble(), sum, 1e-5, key);
    }
    assertEquals(4, JSON.get("per_winter").size());
    assertEquals("2020/21", JSON.get("per_winter").get(0).get("winter").asText());
    assertEquals(1, JSON.get("format").asInt());
    assertEquals(12, JSON.get("dark_autonomy_days").size());
    assertEquals(5, JSON.get("weather").get("missing_hours").asInt());
    assertTrue(JSON.get("cautions").size() > 8);
    assertEquals(2, JSON.get("assumptions").size());
  }

  /** The public promise: these keys stay. */
  @Test
  void promisedKeysAreThere() {
    for (String key :
        List.of(
            "scenario",
            "weather",
            "per_winter",
            "total",
            "dark_autonomy_days",
            "grey_autonomy_days",
            "assumptions",
            "cautions",
            "format")) {
      assertTrue(JSON.has(key), key);
    }
    for (String key :
        List.of(
            "load_kwh",
            "served_kwh",
            "unmet_kwh",
            "unmet_hours",
            "unmet_inverter_kwh",
            "solar_available_kwh",
            "solar_used_kwh",
            "curtailed_kwh",
            "clipped_kwh",
            "losses_kwh",
            "bank_in_kwh",
            "bank_out_kwh",
            "lowest_charge_pct",
            "lowest_charge_at",
            "equivalent_full_cycles",
            "shortfalls",
            "grey_spells",
            "loss_of_load_probability_hours",
            "loss_of_load_probability_days",
            "generator_hours",
            "generator_fuel_l")) {
      assertTrue(JSON.get("total").has(key), key);
      assertTrue(JSON.get("per_winter").get(0).has(key), key);
    }
  }

  @Test
  void everyKeyAndColumnIsDocumentedAndNoOther() throws Exception {
    String docs = Files.readString(Path.of("docs/results.md"));
    var losses = new TreeSet<String>();
    var written = new TreeSet<String>();
    names(GREY, JSON, written, losses);
    names(FULL, FULL_JSON, written, losses);
    keys(SomeMany.json(SomeMany.MADE), written);
    written.addAll(WintersCsv.headers());
    Set<String> documented = new TreeSet<>();
    for (String line : docs.lines().filter(l -> l.startsWith("| `")).toList()) {
      // the names of the first cell, and of the meaning those that name an inner key
      var names = Pattern.compile("`([a-z0-9_]+)`").matcher(line);
      while (names.find()) {
        documented.add(names.group(1));
      }
    }
    documented.removeAll(losses);
    documented.removeAll(
        Set.of("months", "fortnight", "charge", "sources", "measured", "spliced", "made"));
    var missing = new LinkedHashSet<>(written);
    missing.removeAll(documented);
    assertEquals(Set.of(), missing, "written but not in docs/results.md");
    documented.removeAll(written);
    assertEquals(Set.of(), documented, "in docs/results.md but not written");
  }

  /** Every key and column that a run writes, but for the losses, which are told by name apart. */
  private static void names(
      StudyResult result, JsonNode json, Set<String> written, Set<String> losses) {
    var keys = new TreeSet<String>();
    json.get("total").get("losses_kwh").fieldNames().forEachRemaining(losses::add);
    keys(json, keys);
    keys.removeAll(losses);
    keys.addAll(LedgerCsv.headers(result));
    for (var loss : result.ledger().forcing().arrayLosses()) {
      keys.remove(loss.name() + "_wh");
    }
    for (String column : MonthsCsv.headers(result.outcome().total())) {
      if (!column.endsWith("_loss_kwh")) {
        keys.add(column);
      }
    }
    written.addAll(keys);
  }

  private static void keys(JsonNode node, Set<String> into) {
    node.fieldNames().forEachRemaining(into::add);
    node.forEach(child -> keys(child, into));
  }

  @Test
  void rowWriterPrintsTenths() throws Exception {
    var out = new ByteArrayOutputStream();
    try (var rows = new RowWriter(out)) {
      for (long tenths : new long[] {0, 1, 10, 123, -5, -1230, 99_999_999_999L}) {
        rows.tenths(tenths).sign(' ');
      }
    }
    assertEquals("0 0.1 1 12.3 -0.5 -123 9999999999.9 ", out.toString(StandardCharsets.UTF_8));
  }
}
