package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import greyspell.chart.SampleStudy;
import greyspell.outcome.Band;
import greyspell.outcome.SomeWinters;
import greyspell.outcome.SpellClimate;
import greyspell.outcome.WinterBands;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterBook.Kind;
import greyspell.outcome.WinterRecord;
import greyspell.outcome.WinterSum;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Text, files and page of many winters say what the records hold. */
class ManyWintersReportTest {
  @TempDir Path temp;

  @Test
  void theVerdictIsACountWithAUsualAndTheWorstWinter() {
    WinterBook book = SomeMany.MEASURED.book();
    Verdict verdict = WinterVerdict.of(SomeMany.MEASURED);
    assertEquals(
        "Ran out in 4 of 10 winters; a usual winter is not short, the worst (2002/03) 8.4 kWh over "
            + book.worstFirst().get(0).unmetHours()
            + " hours.",
        verdict.headline());
    assertEquals(
        "6 of 10 winters went by without a shortfall: 60 % of them, and with so many looked at the chance a winter lies between 26 % and 88 % (at 95 % confidence). The interval is wide because 10 winters are few; it takes winters to come for like those measured.",
        verdict.more().get(0));
    assertFalse(verdict.isAllServed());
    assertTrue(verdict.text().contains("rides through 9 of 10; this one has 14.0 kWh"));
  }

  @Test
  void noShortfallStillAllowsARisk() {
    Verdict verdict = WinterVerdict.of(SomeMany.SERVED);
    assertEquals("No shortfall in 20 winters.", verdict.headline());
    assertTrue(verdict.isAllServed());
    assertEquals(
        "20 winters without a shortfall still allow a risk of up to 14 % a winter (at 95 % confidence). The interval counts only how many winters were drawn, not how few measured years they are drawn from.",
        verdict.more().get(0));
  }

  @Test
  void madeWintersSayThatTheRecipeIsNotCounted() {
    assertTrue(
        WinterVerdict.of(SomeMany.MADE)
            .text()
            .contains("not whether the recipe that made them is right"));
  }

  @Test
  void aMedicalLoadIsNeverCalledSafe() {
    var many = SomeMany.of(SomeWinters.book(20, 40_000.0), true);
    Verdict verdict = WinterVerdict.of(many);
    assertTrue(verdict.demand().contains("needs an independent backup of its own"));
    String text = WintersText.text(many, List.of());
    assertTrue(text.indexOf("independent backup") < text.indexOf("still allow a risk"));
  }

  @Test
  void oneWinterAloneIsNoEnsemble() {
    var one = SomeMany.of(SomeWinters.book(1, 14_000.0, Kind.MEASURED), false);
    String text = WintersText.text(one, List.of());
    assertTrue(
        text.contains("1 winter without a shortfall still allows a risk of up to 95 %"), text);
    assertFalse(text.contains("fitted tail"));
  }

  @Test
  void theTextFitsAHundredColumns() {
    for (var many : List.of(SomeMany.MADE, SomeMany.MEASURED, SomeMany.SERVED)) {
      for (String line :
          WintersText.text(many, List.of(temp.resolve("report.html"))).split("\n", -1)) {
        assertTrue(line.length() <= 100, line);
      }
    }
  }

  @Test
  void jsonHoldsTheRecordsAndTheBands() {
    WinterBook book = SomeMany.MADE.book();
    JsonNode json = SomeMany.json(SomeMany.MADE);
    assertEquals(60, json.get("per_winter").size());
    assertEquals(book.darkCount(), json.get("dark_winters").asInt());
    double unmetKwh = 0.0;
    for (JsonNode w : json.get("per_winter")) {
      unmetKwh += w.get("unmet_kwh").asDouble();
    }
    double unmetWh = book.winters().stream().mapToDouble(w -> w.wh(WinterSum.UNMET)).sum();
    assertEquals(unmetWh / 1000.0, unmetKwh, 60 * 5e-7);
    Band january = WinterBands.of(book).wh(WinterSum.SOLAR_USED, 1);
    JsonNode month = json.get("bands").get("per_month").get(0).get("solar_used_kwh");
    assertEquals(january.low() / 1000.0, month.get("p10").asDouble(), 1e-6);
    assertEquals(january.middle() / 1000.0, month.get("p50").asDouble(), 1e-6);
    assertEquals(january.high() / 1000.0, month.get("p90").asDouble(), 1e-6);
    assertEquals(365, json.get("lowest_charge_of_day_pct").get("p50").size());
    JsonNode tenth = json.get("grey_spells_return").get("riding_bank_kwh").get(2);
    assertEquals(10, tenth.get("once_in_winters").asInt());
    assertEquals(6, tenth.get("may_pass_winters").asInt());
    assertEquals(
        SpellClimate.of(book).bank().counted(10) / 1000.0, tenth.get("counted").asDouble(), 1e-6);
    assertTrue(tenth.get("fitted_low").asDouble() < tenth.get("fitted").asDouble());
  }

  @Test
  void csvHasARowAWinter() {
    WinterBook book = SomeMany.MEASURED.book();
    List<String> lines = WintersCsv.text(book).lines().toList();
    assertEquals(11, lines.size());
    List<String> headers = List.of(lines.get(0).split(",", -1));
    assertEquals(WintersCsv.headers(), headers);
    for (int k = 0; k < 10; k++) {
      WinterRecord w = book.winters().get(k);
      String[] cells = lines.get(k + 1).split(",", -1);
      assertEquals(headers.size(), cells.length);
      assertEquals(w.name(), cells[1]);
      double unmet = Double.parseDouble(cells[headers.indexOf("unmet_kwh")]);
      assertEquals(w.wh(WinterSum.UNMET) / 1000.0, unmet, 0.00051);
      String start = cells[headers.indexOf("longest_shortfall_start")];
      assertEquals(w.isDarkFree(), start.isEmpty());
    }
  }

  @Test
  void aRunOfManyWintersWritesTheirFilesAndOneOfAnotherTakesThemAway() throws Exception {
    var result = new SampleStudy().run();
    var told = new ArrayList<String>();
    ReportFiles.write(result, null, SomeMany.MADE, temp, true, told::add);
    for (String name :
        List.of(
            "winters.json",
            "winters.csv",
            "pictures/winters.svg",
            "pictures/winter-charge.png",
            "pictures/winter-banks.svg")) {
      assertTrue(Files.exists(temp.resolve(name)), name);
      assertTrue(told.contains(name), name);
    }
    String page = Files.readString(temp.resolve("report.html"));
    assertTrue(page.contains(WinterVerdict.of(SomeMany.MADE).headline()));
    assertTrue(page.contains("How often grey spells return"));
    assertTrue(page.contains("One of them in full: " + SomeMany.MADE.book().shown().name()));
    assertFalse(SomeMany.MADE.cautions().isEmpty());
    for (String caution : SomeMany.MADE.cautions()) {
      assertTrue(page.contains(caution), caution);
    }
    ReportFiles.write(result, null, null, temp, false, name -> {});
    assertFalse(Files.exists(temp.resolve("winters.json")));
    assertFalse(Files.exists(temp.resolve("winters.csv")));
    assertFalse(Files.exists(temp.resolve("pictures/winters.svg")));
    assertFalse(Files.readString(temp.resolve("report.html")).contains("How often grey spells"));
  }
}
