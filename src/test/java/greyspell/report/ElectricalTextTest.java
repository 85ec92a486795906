package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.electrical.Finding.Severity;
import greyspell.electrical.LocalCode;
import greyspell.study.ElectricalCheck;
import greyspell.study.StringStudy;
import java.util.List;
import org.junit.jupiter.api.Test;

class ElectricalTextTest {
  private static final List<String> ALL =
      List.of(
          StringsText.of(LookAtElectrical.twelve(), StringStudy.Energy.NO_WEATHER),
          StringsText.of(LookAtElectrical.unstated(), StringStudy.Energy.NO_WEATHER),
          CheckText.of("Test house", LookAtElectrical.check(), false),
          CheckText.of("Test house", LookAtElectrical.check(), true));

  @Test
  void everyTextFitsATerminalAndSaysWhoGoverns() {
    for (String text : ALL) {
      for (String line : text.split("\n", -1)) {
        assertTrue(line.length() <= 100, line);
        assertEquals(line.stripTrailing(), line);
      }
      assertTrue(text.replaceAll("\\s+", " ").contains(LocalCode.GOVERNS), text);
      assertFalse(text.matches("(?s).*\\d\\n +(?:°C|%|V|A|W|kWh) .*"), text);
    }
  }

  /** Sizes are judged and compared; nothing tells which to take. */
  @Test
  void noSizeIsRecommended() {
    for (String text : ALL) {
      String plain = text.replaceAll("\\s+", " ").replace(LocalCode.GOVERNS, "");
      assertFalse(plain.matches("(?i).*\\b(recommend|should use|choose|suitable size).*"), plain);
    }
  }

  @Test
  void arrangementsStandInATable() {
    String text = ALL.get(0);
    assertTrue(
        text.contains(
            "     4        3  169.0  180.0    250    32 %  106.5   57.6   52.1  4.92 kW  caution, best"),
        text);
    assertTrue(text.contains("\n4 in series, 3 strings (4.92 kW): one caution\n"), text);
    assertTrue(text.contains("Record low -22 °C (-7.6 °F)"), text);
    assertTrue(
        text.replaceAll("\\s+", " ")
            .contains("Best: 4 in series, 3 strings. Highest voltage of 2 allowed"));
  }

  @Test
  void whatIsMissingIsAskedForAndNothingIsJudged() {
    assertTrue(ALL.get(1).contains("! State the record low"));
    assertFalse(ALL.get(1).contains("verdict"));
  }

  @Test
  void theSizeTableMarksWhatIsStatedAndLossesAddUp() {
    String text = ALL.get(3);
    assertTrue(text.contains("  ×  10 AWG   5.23 V       2.8 %  137 W  70.2 kWh\n"), text);
    assertTrue(text.contains("25 m (82 ft) one way: fail"), text);
    double sumWh = 0.0;
    for (ElectricalCheck.Run run : LookAtElectrical.runs()) {
      sumWh += run.yearLossWh();
    }
    assertEquals(72.1, sumWh / 1000.0, 0.05);
    assertTrue(text.contains("All stated runs together lose 72.1 kWh a year."), text);
  }

  @Test
  void checkCountsAndShowsWhatFailsFirst() {
    String text = CheckText.of("Test house", LookAtElectrical.check(), false);
    assertTrue(text.startsWith("Test house: 1 failure, 1 unknown, 3 cautions, 17 passed\n"), text);
    assertTrue(text.indexOf("FAIL") > 0 && text.indexOf("FAIL") < text.indexOf("not judged"), text);
    assertFalse(text.contains("  ok "), text);
    assertTrue(text.contains("Motor starts: no surge stated\n"), text);
    assertTrue(CheckText.of("h", LookAtElectrical.check(), true).contains("  ok "));
    assertEquals(Severity.FAIL, LookAtElectrical.check().worst());
  }

  @Test
  void everyItemOfTheChecklistHasAReason() {
    var items = Checklist.items();
    assertTrue(items.size() >= 12);
    for (var item : items) {
      assertTrue(item.reason().length() > 40, item.name());
    }
    String names = items.toString().toLowerCase(java.util.Locale.ROOT);
    for (String word :
        List.of(
            "ground",
            "disconnect",
            "overcurrent",
            "surge",
            "ventilation",
            "cold charging",
            "connectors",
            "under load",
            "medical")) {
      assertTrue(names.contains(word), word);
    }
  }
}
