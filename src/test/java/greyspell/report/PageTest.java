package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Pictures;
import greyspell.chart.SampleStudy;
import greyspell.chart.Say;
import greyspell.chart.Xml;
import greyspell.electrical.LocalCode;
import greyspell.study.ElectricalCheck;
import greyspell.study.StudyResult;
import java.util.List;
import org.junit.jupiter.api.Test;

class PageTest {
  private static String page(StudyResult result) {
    return PageWriter.html(
        result,
        ElectricalCheck.of(result.scenario(), result),
        Pictures.of(result).stream().map(Pictures::svg).toList());
  }

  private static Page made(StudyResult result, List<String> pictures) {
    return PageMaker.page(result, ElectricalCheck.of(result.scenario(), result), pictures);
  }

  @Test
  void sectionsComeInTheOrderOfTheStory() {
    var document = Xml.parse(page(new SampleStudy().run()));
    var heads = Xml.texts(document, "h2");
    assertEquals(
        List.of(
            "What running out means here",
            "Sun against need, month by month",
            heads.get(2),
            "Grey spells against the bank",
            "Energy books by month",
            "Always on",
            "Winter by winter",
            "How long a full bank lasts",
            "Where the light went",
            "Electrical check",
            "What was assumed",
            "Cautions",
            "How to read this page"),
        heads);
    assertTrue(heads.get(2).startsWith("The worst spell, day by day: "), heads.get(2));
    assertEquals(4, document.getElementsByTagName("svg").getLength());
  }

  @Test
  void nothingIsLoadedFromElsewhereAndNothingRuns() {
    String html = page(new SampleStudy().run());
    for (String bad :
        List.of("<script", "<link", "<img", "<iframe", "@import", "url(", "src=", "href=")) {
      assertFalse(html.contains(bad), bad);
    }
    String rest =
        html.replace("http://www.w3.org/2000/svg", "").replace("http://www.w3.org/1999/xhtml", "");
    assertFalse(rest.contains("http"), "only the two name spaces");
    assertFalse(rest.contains("//"), "no address without a scheme either");
  }

  @Test
  void wordsOfTheUserAreEscaped() {
    var sample = new SampleStudy();
    sample.name = "Söhne & <script>alert('x')</script>";
    sample.note = "\"quoted\" </p><b>";
    String html = page(sample.run());
    assertFalse(html.contains("<script"));
    var document = Xml.parse(html);
    assertTrue(Xml.texts(document, "h1").get(0).startsWith(sample.name));
    assertTrue(Xml.texts(document, "p").contains(sample.note));
  }

  @Test
  void everyAssumptionAndCautionStandsThere() {
    StudyResult result = new SampleStudy().run();
    var document = Xml.parse(page(result));
    var cells = Xml.texts(document, "td");
    for (var a : result.assumptions()) {
      assertTrue(Xml.texts(document, "code").contains(a.key()));
      assertTrue(cells.contains(a.value()) && cells.contains(a.why()), a.key());
    }
    var items = Xml.texts(document, "li");
    assertEquals(Cautions.all(result), items);
    String cautions = String.join(" ", items);
    for (String word :
        List.of(
            "not an electrical design",
            "local code",
            "licensed",
            "high d.c. voltage",
            "hydrogen",
            "carbon monoxide",
            "roof",
            "independent backup",
            "frost")) {
      assertTrue(cautions.contains(word), word);
    }
  }

  @Test
  void booksRowsClose() {
    var page = made(new SampleStudy().run(), List.of());
    for (var row : page.books().rows()) {
      var cells = row.cells();
      double used = number(cells.get(1));
      double out = 0.0;
      for (int k : new int[] {3, 4, 5, 6}) {
        out += number(cells.get(k));
      }
      assertEquals(used, out, 5 * 0.05 + 1e-9, cells.get(0));
    }
  }

  @Test
  void fromLightToSocketEveryLineIsSubtracted() {
    StudyResult result = new SampleStudy().run();
    var rows = made(result, List.of()).losses().rows();
    double left = 0.0;
    for (var row : rows) {
      double kwh = number(row.cells().get(1));
      if (left == 0.0) {
        left = kwh;
      } else if (row.isMarked()) {
        assertEquals(kwh, left, 0.05 * rows.size(), row.cells().get(0));
        left = kwh;
      } else {
        left -= kwh;
      }
    }
    assertEquals("Served to the house", rows.get(rows.size() - 1).cells().get(0));
  }

  @Test
  void fortnightTableIsDatedAndMarksTheDarkDays() {
    StudyResult result = new SampleStudy().run();
    var page = made(result, List.of());
    assertEquals(14, page.fortnight().rows().size());
    double unmet = 0.0;
    for (var row : page.fortnight().rows()) {
      unmet += number(row.cells().get(5));
      assertEquals(!row.cells().get(6).equals("0"), row.isMarked());
    }
    assertEquals(greyspell.chart.Fortnight.of(result).unmetWh() / 1000.0, unmet, 14 * 0.05 + 1e-9);
  }

  @Test
  void theSameNumbersStandOnPageTerminalAndResults() {
    StudyResult result = new SampleStudy().run();
    String html = page(result);
    String unmet = Say.kwh(result.outcome().total().unmetWh());
    assertTrue(html.contains(unmet) && Summary.text(result, List.of()).contains(unmet));
    assertTrue(Xml.texts(Xml.parse(html), "p").contains(Verdict.of(result).headline()));
  }

  @Test
  void aTypicalYearIsWellFormedAndNamesNoYear() {
    var sample = new SampleStudy();
    sample.calendar = HourCalendar.typicalYear();
    String html = page(sample.run());
    Xml.parse(html);
    assertFalse(html.contains("2001"));
  }

  private static double number(String cell) {
    return Double.parseDouble(cell.replace(",", ""));
  }

  @Test
  void theElectricalSectionHoldsEveryFindingWireAndWhoGoverns() {
    StudyResult result = new SampleStudy().run();
    ElectricalCheck check = ElectricalCheck.of(result.scenario(), result);
    var document = Xml.parse(page(result));
    var cells = Xml.texts(document, "td");
    for (var f : check.findings()) {
      assertTrue(cells.contains(f.text()) && cells.contains(f.reason()), f.subject());
    }
    var heads = Xml.texts(document, "h3");
    for (var run : check.runs()) {
      assertTrue(heads.contains(run.judged().run().name()), run.judged().run().name());
    }
    assertTrue(Xml.texts(document, "p").contains(LocalCode.GOVERNS));
    var rows = made(result, List.of()).electrical().findings().rows();
    assertEquals(check.worst().word(), rows.get(0).cells().get(0), "the worst stands first");
    double sumKwh = 0.0;
    var wires = made(result, List.of()).electrical().wires().rows();
    for (var row : wires.subList(0, wires.size() - 1)) {
      sumKwh += number(row.cells().get(4));
    }
    assertEquals(sumKwh, number(wires.get(wires.size() - 1).cells().get(4)), 0.15 + 1e-9);
  }
}
