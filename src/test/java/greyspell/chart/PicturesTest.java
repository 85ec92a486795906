package greyspell.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.study.StudyResult;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** What the pictures say and hold; how their pixels look differs by machine. */
class PicturesTest {
  private static final StudyResult GREY = new SampleStudy().run();
  private static final StudyResult FULL = FullHome.RESULT;

  private static List<Picture> all() {
    var all = new ArrayList<>(Pictures.of(GREY));
    all.addAll(Pictures.of(FULL));
    return all;
  }

  @Test
  void everySvgIsWellFormedSmallAndSelfContained() {
    for (Picture p : all()) {
      String svg = Pictures.svg(p);
      var document = Xml.parse(svg);
      assertEquals(List.of(p.title()), Xml.texts(document, "title"), p.name());
      assertEquals(List.of(p.description()), Xml.texts(document, "desc"), p.name());
      assertTrue(svg.getBytes(StandardCharsets.UTF_8).length < 60_000, p.name());
      assertFalse(svg.contains("<script") || svg.contains("href"), p.name());
      assertEquals(1, count(svg, "http"), p.name() + ": only the name space");
      assertEquals("img", document.getDocumentElement().getAttribute("role"));
    }
  }

  @Test
  void titleStatesNumbersAndStandsInThePictureAsText() {
    for (Picture p : all()) {
      assertTrue(p.title().chars().anyMatch(Character::isDigit), p.title());
      String drawn = String.join(" ", Xml.texts(Xml.parse(Pictures.svg(p)), "text"));
      assertTrue(drawn.startsWith(p.title() + " "), drawn);
    }
  }

  @Test
  void pngIsReadableAndTwiceAsLarge() throws Exception {
    for (Picture p : all()) {
      var image = ImageIO.read(new ByteArrayInputStream(Pictures.png(p)));
      assertEquals(Math.round(2 * Look.WIDTH), image.getWidth());
      assertEquals(Math.round(2 * p.height()), image.getHeight());
    }
  }

  @Test
  void textsAreInsideThePicture() {
    for (Picture p : all()) {
      var texts = Xml.parse(Pictures.svg(p)).getElementsByTagName("text");
      for (int k = 0; k < texts.getLength(); k++) {
        var at = texts.item(k).getAttributes();
        double y = Double.parseDouble(at.getNamedItem("y").getNodeValue());
        double x = Double.parseDouble(at.getNamedItem("x").getNodeValue());
        double size = Double.parseDouble(at.getNamedItem("font-size").getNodeValue());
        boolean isBold = at.getNamedItem("font-weight") != null;
        double wide = TextWidth.of(texts.item(k).getTextContent(), size, isBold);
        var anchor = at.getNamedItem("text-anchor");
        double left =
            anchor == null ? x : anchor.getNodeValue().equals("end") ? x - wide : x - wide / 2;
        String what = p.name() + ": " + texts.item(k).getTextContent();
        assertTrue(left >= 0.0 && left + wide <= Look.WIDTH, what);
        assertTrue(y >= size * 0.7 && y <= p.height() - size * 0.2, what);
      }
    }
  }

  /** One more picture where the sun is not alone. */
  @Test
  void allSourcesAreShownWhereThereAreMore() {
    assertEquals(4, Pictures.of(GREY).size());
    assertEquals(Pictures.NAMES, Pictures.of(FULL).stream().map(Picture::name).toList());
    var sources = Pictures.of(FULL).get(4);
    assertTrue(sources.title().contains("the generator gave "), sources.title());
    String drawn = String.join(" ", Xml.texts(Xml.parse(Pictures.svg(sources)), "text"));
    for (String word : List.of("sun used", "second source", "generator", "not served")) {
      assertTrue(drawn.contains(word), word);
    }
    String fortnight = Pictures.svg(Pictures.of(FULL).get(1));
    assertTrue(fortnight.contains("generator ran"));
    assertFalse(Pictures.svg(Pictures.of(GREY).get(1)).contains("generator ran"));
  }

  @Test
  void picturesOfATypicalYearNameNoYear() {
    var sample = new SampleStudy();
    sample.calendar = HourCalendar.typicalYear();
    var pictures = Pictures.of(sample.run());
    assertTrue(
        pictures.get(3).title().matches("Something .* of the typical year, the most in \\w+"),
        pictures.get(3).title());
    for (Picture p : pictures) {
      assertFalse((p.title() + p.note() + p.description()).contains("2001"), p.title());
    }
  }

  @Test
  void aServedHouseHasItsOwnTitles() {
    var sample = new SampleStudy();
    sample.panelsW = 30_000.0;
    sample.bankWh = 200_000.0;
    var result = sample.run();
    assertTrue(result.outcome().shortfalls().isEmpty());
    var titles = Pictures.of(result).stream().map(Picture::title).toList();
    assertTrue(titles.get(0).endsWith("all of it was served"), titles.get(0));
    assertTrue(titles.get(1).contains("the bank carried it down to"), titles.get(1));
    assertTrue(titles.get(3).endsWith("nothing went unserved"), titles.get(3));
  }

  @Test
  void aMachineWithoutFontsIsExplainedAndOtherErrorsGoOn() {
    var fonts = new Error("Probable fatal error: No physical fonts found");
    var explained = Pictures.NoFonts.explain(fonts);
    assertSame(fonts, explained.getCause());
    assertTrue(String.valueOf(explained.getMessage()).contains("Install one"));
    var inner = new ExceptionInInitializerError(new RuntimeException("Fontconfig head is null"));
    assertSame(inner, Pictures.NoFonts.explain(inner).getCause());
    var other = new StackOverflowError("deep");
    assertSame(
        other, assertThrows(StackOverflowError.class, () -> Pictures.NoFonts.explain(other)));
  }

  private static int count(String text, String part) {
    return text.split(part, -1).length - 1;
  }
}
