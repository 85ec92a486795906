package greyspell.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.outcome.Band;
import greyspell.outcome.SomeWinters;
import greyspell.outcome.SpellClimate;
import greyspell.outcome.WinterBook;
import greyspell.outcome.WinterBook.Kind;
import greyspell.outcome.WinterSum;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class WinterPicturesTest {
  private static final WinterBook MANY = SomeWinters.book(100, 14_000.0);
  private static final WinterBook FEW = SomeWinters.book(10, 14_000.0, Kind.MEASURED);
  private static final WinterBook SERVED = SomeWinters.book(40, 40_000.0);
  private static final WinterBook TWO = SomeWinters.book(2, 40_000.0, Kind.MEASURED);

  private static List<Picture> all() {
    var all = new ArrayList<Picture>();
    for (WinterBook book : List.of(MANY, FEW, SERVED, TWO)) {
      all.addAll(WinterPictures.of(book));
    }
    return all;
  }

  @Test
  void namesAreThoseThatAreTakenAway() {
    assertEquals(
        WinterPictures.NAMES, WinterPictures.of(MANY).stream().map(Picture::name).toList());
    assertEquals(List.of(), WinterPictures.of(SomeWinters.book(1, 14_000.0)));
  }

  @Test
  void figuresAlikeAreSaidOnce() {
    assertEquals(
        "4.0 % in a usual winter and hardly lower in one of ten",
        ChargeRibbonPicture.fall(new Band(0.04, 0.04, 0.2)));
    assertEquals("0 % even in a usual winter", ChargeRibbonPicture.fall(new Band(0.0, 0.0, 0.2)));
    assertEquals(
        "30 % in a usual winter and to 5.0 % or less in one of ten",
        ChargeRibbonPicture.fall(new Band(0.05, 0.3, 0.5)));
  }

  @Test
  void everySvgIsWellFormedAndItsTextsAreInside() {
    for (Picture p : all()) {
      String svg = Pictures.svg(p);
      var document = Xml.parse(svg);
      assertEquals(List.of(p.title()), Xml.texts(document, "title"), p.name());
      assertEquals(List.of(p.description()), Xml.texts(document, "desc"), p.name());
      assertTrue(svg.getBytes(StandardCharsets.UTF_8).length < 60_000, p.name());
      assertTrue(p.title().chars().anyMatch(Character::isDigit), p.title());
      assertFalse((p.title() + p.note() + p.description()).contains("unknown"), p.title());
      var texts = document.getElementsByTagName("text");
      for (int k = 0; k < texts.getLength(); k++) {
        var at = texts.item(k).getAttributes();
        double x = Double.parseDouble(at.getNamedItem("x").getNodeValue());
        double size = Double.parseDouble(at.getNamedItem("font-size").getNodeValue());
        boolean isBold = at.getNamedItem("font-weight") != null;
        double wide = TextWidth.of(texts.item(k).getTextContent(), size, isBold);
        var anchor = at.getNamedItem("text-anchor");
        double left =
            anchor == null ? x : anchor.getNodeValue().equals("end") ? x - wide : x - wide / 2;
        assertTrue(
            left >= 0.0 && left + wide <= Look.WIDTH,
            p.name() + ": " + texts.item(k).getTextContent());
      }
    }
  }

  @Test
  void pngIsReadable() throws Exception {
    for (Picture p : WinterPictures.of(FEW)) {
      var image = ImageIO.read(new ByteArrayInputStream(Pictures.png(p)));
      assertEquals(Math.round(2 * Look.WIDTH), image.getWidth());
    }
  }

  @Test
  void titlesTellTheRecords() {
    String dots = WinterPictures.of(MANY).get(0).title();
    var worst = MANY.worstFirst().get(0);
    assertEquals(
        "Something went unserved in "
            + MANY.darkCount()
            + " of 100 winters: in the worst, "
            + worst.name()
            + ", "
            + Say.kwh(worst.wh(WinterSum.UNMET)),
        dots);
    String banks = WinterPictures.of(MANY).get(2).title();
    double needWh = SpellClimate.of(MANY).bank().counted(10);
    assertEquals(
        "A bank of " + Say.kwh(needWh) + " rides through 90 of 100 winters; this one has 14.0 kWh",
        banks);
    assertTrue(
        WinterPictures.of(SERVED).get(0).title().startsWith("All of 40 winters were served"));
  }

  @Test
  void theDotsAreTheWintersAndTheShownOneIsNamed() {
    String svg = Pictures.svg(WinterPictures.of(FEW).get(0));
    String drawn = String.join(" ", Xml.texts(Xml.parse(svg), "text"));
    for (var w : FEW.winters()) {
      assertTrue(drawn.contains(w.name()), w.name());
    }
    assertTrue(
        drawn.contains(FEW.shown().name() + ", " + Say.kwh(FEW.shown().wh(WinterSum.UNMET))));
  }
}
