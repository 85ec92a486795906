package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.study.ElectricalCheck;
import greyspell.words.Units;
import greyspell.words.Words;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The edition in US units has no metric one left, cross-sections of cable aside. */
class UsEditionTest {
  private static final Pattern METRIC =
      Pattern.compile("°C|\\blitres?\\b|\\d k?m(?![\\p{L}\\d²³/])|kilomet|\\bmetres?\\b");

  private static String text(Words words) {
    HandedOver handed = HandedOver.english();
    var check = ElectricalCheck.of(handed.result.scenario(), handed.result);
    Pages pages = Handover.pages(handed.result, handed.explanation, check, words);
    return PageText.screen(pages, words)
        .replaceAll("(?s)<style>.*?</style>|<script.*?</script>", " ")
        .replaceAll("<[^>]*>", " ")
        .replace('\u00a0', ' ');
  }

  @Test
  void noMetricUnitIsLeft() {
    String metric = text(Words.of("en", Units.METRIC)), us = text(Words.of("en", Units.US));
    assertTrue(METRIC.matcher(metric).find());
    List<String> left =
        METRIC
            .matcher(us)
            .results()
            .map(
                m -> us.substring(Math.max(0, m.start() - 50), Math.min(us.length(), m.end() + 20)))
            .toList();
    assertEquals(List.of(), left);
    assertTrue(us.contains("0.16 gallons for each kWh"), "fuel of the new generator");
    assertTrue(us.contains("at 3 °F ("), "strings in the cold");
    assertTrue(us.contains("mm² copper"), "cables as they are stated");
  }

  /** Whoever searches for "off" types three letters. */
  @Test
  void thePdfHasNoLigatures() throws IOException {
    try (var document = Loader.loadPDF(HandedOver.english().pdf())) {
      String text = new PDFTextStripper().getText(document);
      assertFalse(Pattern.compile("[\\uFB00-\\uFB06]").matcher(text).find());
      assertTrue(text.contains("off"));
    }
  }
}
