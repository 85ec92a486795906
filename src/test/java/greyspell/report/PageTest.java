package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.chart.FullHome;
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
            "How sure this is",
            "Sun against need, month by month",
            heads.get(3),
            "Grey spells against the bank",
            "Energy books by month",
            "Always on, the system itself",
            "Winter by winter",
            "How long a full bank lasts",
            "The bank",
            "Peaks within the hour",
            "Where the light went",
            "Electrical check",
            "What was assumed",
            "Cautions",
            "How to read this page"),
        heads);
    assertTrue(heads.get(3).startsWith("The worst spell, day by day: "), heads.get(3));
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

  /** Of the sample, and of a home with every source and loss there is. */
  @Test
  void booksRowsClose() {
    for (StudyResult result : List.of(new SampleStudy().run(), FullHome.RESULT)) {
      var books = made(result, List.of()).books();
      for (var row : books.rows()) {
        double in = 0.0;
        double out = 0.0;
        for (int k = 1; k < row.cells().size(); k++) {
          double kwh = number(row.cells().get(k));
          switch (books.head().get(k)) {
            case "Sun used", "Second source", "Generator" -> in += kwh;
            case "House served", "Always on", "Losses", "Into store (+), out (-)" -> out += kwh;
            default -> {}
          }
        }
        assertTrue(in > 0.0);
        assertEquals(in, out, 7 * 0.05 + 1e-9, row.cells().get(0));
      }
    }
  }

  @Test
  void fromLightToSocketEveryLineIsSubtracted() {
    for (StudyResult result : List.of(new SampleStudy().run(), FullHome.RESULT)) {
      var rows = made(result, List.of()).losses().rows();
      double left = 0.0;
      for (var row : rows) {
        double kwh = number(row.cells().get(1));
        String name = row.cells().get(0);
        if (left == 0.0) {
          left = kwh;
        } else if (row.isMarked()) {
          assertEquals(kwh, left, 0.05 * rows.size(), name);
          left = kwh;
        } else {
          left += name.startsWith("plus ") ? kwh : -kwh;
        }
      }
      assertEquals("Served to the house", rows.get(rows.size() - 1).cells().get(0));
    }
  }

  @Test
  void rulesRowsCloseButForWhatWaits() {
    var rows = made(FullHome.RESULT, List.of()).rules().rows();
    assertEquals(13, rows.size());
    for (var row : rows) {
      double asked = number(row.cells().get(1));
      double told = 0.0;
      for (int k = 2; k <= 4; k++) {
        told += number(row.cells().get(k));
      }
      // the waits of a month's end are less than one run of the washing machine, 0.45 kWh
      assertEquals(asked, told, 0.45 + 4 * 0.05 + 1e-9, row.cells().get(0));
    }
    assertTrue(made(new SampleStudy().run(), List.of()).rules().rows().isEmpty());
  }

  @Test
  void aMedicalLoadIsDemandedABackupForRightUnderTheVerdict() {
    String html = page(FullHome.RESULT);
    int demand = html.indexOf("independent backup of its own");
    assertTrue(demand > html.indexOf("class=\"headline\""));
    assertTrue(demand < html.indexOf("<dl>"), "before the figures");
    assertTrue(html.contains("safety demand"));
    assertFalse(page(new SampleStudy().run()).contains("safety demand"));
  }

  @Test
  void aGeneratorHasItsBooksAndWhatKillsBesideThem() {
    String html = page(FullHome.RESULT);
    var document = Xml.parse(html);
    assertEquals(5, document.getElementsByTagName("svg").getLength());
    assertTrue(Xml.texts(document, "h2").contains("The generator"));
    var terms = Xml.texts(document, "dt");
    var reasons = Xml.texts(document, "dd");
    for (var item : Checklist.generator()) {
      assertTrue(terms.contains(item.name()) && reasons.contains(item.reason()), item.name());
    }
    var generator = made(FullHome.RESULT, List.of()).generator();
    assertNotNull(generator);
    String lines = String.join(" ", generator.lines());
    assertTrue(lines.contains("served with its help") && lines.contains("counted without it"));
    var rows = generator.winters().rows();
    var total = rows.get(rows.size() - 1).cells();
    for (int k : new int[] {1, 2, 3, 4, 5, 6, 7}) {
      double sum = 0.0;
      for (var row : rows.subList(0, rows.size() - 1)) {
        sum += number(row.cells().get(k));
      }
      double half = k < 3 ? 0.0 : k < 6 ? 0.05 : 0.5;
      assertEquals(number(total.get(k)), sum, half * rows.size() + 1e-9, "column " + k);
    }
    assertFalse(page(new SampleStudy().run()).contains("The generator</h2>"));
  }

  @Test
  void theBankIsFollowedYearByYear() {
    var bank = made(FullHome.RESULT, List.of()).bank();
    assertEquals(8, bank.service().rows().size());
    assertTrue(bank.serviceNote().contains("as a shape, not as a promise"), bank.serviceNote());
    assertTrue(bank.lines().get(0).startsWith("The lowest voltage"), bank.lines().get(0));
    assertTrue(bank.lines().get(1).contains("without a full charge"), bank.lines().get(1));
    double before = 101.0;
    for (var row : bank.service().rows()) {
      assertTrue(number(row.cells().get(1)) < before, "capacity only falls");
      before = number(row.cells().get(1));
    }
    var plain = made(new SampleStudy().run(), List.of()).bank();
    assertTrue(plain.service().rows().isEmpty() && plain.serviceNote().isEmpty());
    assertEquals(1, plain.lines().size(), "no voltage where none is followed");
  }

  @Test
  void whatIsNotSureAndWhatToMeasureFirst() {
    var page = made(FullHome.RESULT, List.of());
    String words = String.join(" ", page.surety());
    assertTrue(words.contains("Measuring “hob” would narrow the answer most"), words);
    assertEquals(5, page.range().rows().size());
    assertTrue(made(new SampleStudy().run(), List.of()).range().rows().isEmpty());
    var peaks = page.peaks().rows();
    assertTrue(peaks.get(0).isMarked() && peaks.get(1).isMarked(), "1.6 kW is too little here");
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
