package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.chart.FullHome;
import greyspell.chart.SampleStudy;
import greyspell.study.StudyResult;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class SummaryTest {
  private static void fitsOneScreen(String text) {
    var lines = text.lines().toList();
    assertTrue(lines.size() <= 24, lines.size() + " lines");
    for (String line : lines) {
      assertTrue(line.length() <= 100, line);
    }
  }

  @Test
  void verdictComesFirstAndEveryKeyFigureFits() {
    StudyResult result = new SampleStudy().run();
    String text = Summary.text(result, List.of(Path.of("out", "report.html")));
    fitsOneScreen(text);
    var lines = text.lines().toList();
    assertTrue(lines.get(0).startsWith("Heron Cabin"));
    assertTrue(lines.get(2).startsWith("The lights went out in 2 of 2 winters"), lines.get(2));
    for (var figure : KeyFigures.of(result)) {
      assertTrue(text.contains("  " + figure.label() + " "), figure.label());
      assertTrue(text.contains(figure.value()), figure.value());
    }
    assertEquals(
        3, lines.stream().filter(l -> l.matches(".*\\d+ days? +\\S+ kWh short.*")).count());
    assertTrue(lines.get(lines.size() - 1).startsWith("Written to out; open report.html"));
  }

  /** What is unusual about this home is seen without opening the page. */
  @Test
  void theFirstCautionIsShown() {
    StudyResult result = new SampleStudy().run();
    var caution = "barn roof: panels face away from the equator.";
    var cautioned =
        new StudyResult(
            result.scenario(),
            result.weather(),
            result.ledger(),
            result.outcome(),
            result.besides(),
            result.planes(),
            result.assumptions(),
            List.of(caution, "Another."),
            result.startNote());
    String text = Summary.text(cautioned, List.of());
    fitsOneScreen(text);
    assertTrue(text.contains("  Cautions, 2 on the page   " + caution), text);
  }

  /** What nothing else tells stays; what the page has as well is left out. */
  @Test
  void aFullHomeFitsAndSaysWhatMatters() {
    String text = Summary.text(FullHome.RESULT, List.of(Path.of("out", "report.html")));
    fitsOneScreen(text);
    for (String label :
        List.of(
            "Always on, the system",
            "10 W less saves, a year",
            "Not served, 3 years",
            "As sure as the loads",
            "Measure first",
            "Generator, a year",
            "Second source, a year",
            "Bank in year " + FullHome.RESULT.besides().service().size())) {
      assertTrue(text.contains("  " + label + " "), label + " in " + text);
    }
    assertTrue(text.contains(" US gallons)") && text.contains(" EUR"), text);
    assertTrue(text.contains("independent backup"), text);
    assertEquals(
        0, text.lines().filter(l -> l.endsWith("…") && !l.contains("Caution")).count(), text);
  }

  @Test
  void everythingAtOnceStillFits() {
    var sample = new SampleStudy();
    sample.name = "The house with the longest name that anyone ever gave to a house ".repeat(4);
    sample.latitudeDeg = -43.0;
    sample.inverterW = 900.0;
    sample.maxDischargeW = 700.0;
    sample.isMedical = true;
    fitsOneScreen(
        Summary.text(
            sample.run(), List.of(Path.of("a/very/long/path/".repeat(20), "report.html"))));
  }
}
