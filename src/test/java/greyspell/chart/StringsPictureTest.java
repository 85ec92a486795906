package greyspell.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.electrical.Arrangement;
import greyspell.electrical.Equipment;
import greyspell.electrical.StringJudge;
import greyspell.electrical.Wanted;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class StringsPictureTest {
  @Test
  void theBestStandsBetweenItsNeighbours() {
    var judged = Objects.requireNonNull(LookAtStrings.samples().get("strings-250"));
    assertEquals(
        List.of(3, 4, 6),
        StringsPicture.shown(judged).stream().map(Arrangement::inSeries).toList());
    Picture picture = Objects.requireNonNull(StringsPicture.of(judged));
    assertEquals(
        "Best: 4 in series, 3 strings; the coldest morning brings 169 V, 32 % below the limit",
        picture.title());
    assertTrue(
        picture
            .description()
            .contains(
                "6 in series, 2 strings: works at 159.7 V to 220.7 V, open circuit up to 253.6 V, limit 250 V, fail."),
        picture.description());
  }

  @Test
  void textsOfEverySampleAreInsideThePicture() {
    for (var sample : LookAtStrings.samples().values()) {
      Picture p = Objects.requireNonNull(StringsPicture.of(sample));
      var texts = Xml.parse(Pictures.svg(p)).getElementsByTagName("text");
      assertTrue(texts.getLength() > 8);
      for (int k = 0; k < texts.getLength(); k++) {
        var at = texts.item(k).getAttributes();
        double x = Double.parseDouble(at.getNamedItem("x").getNodeValue());
        double size = Double.parseDouble(at.getNamedItem("font-size").getNodeValue());
        double wide =
            TextWidth.of(
                texts.item(k).getTextContent(), size, at.getNamedItem("font-weight") != null);
        var anchor = at.getNamedItem("text-anchor");
        double left =
            anchor == null ? x : anchor.getNodeValue().equals("end") ? x - wide : x - wide / 2;
        assertTrue(left >= 0.0 && left + wide <= Look.WIDTH, texts.item(k).getTextContent());
      }
    }
  }

  @Test
  void oneModuleIsDrawnAndNoneFits() {
    var judged = Objects.requireNonNull(LookAtStrings.samples().get("strings-one"));
    Picture p = Objects.requireNonNull(StringsPicture.of(judged));
    assertEquals("strings", p.name());
    assertTrue(p.title().startsWith("No arrangement of Test 410 suits"), p.title());
  }

  @Test
  void nothingJudgedIsNoPicture() {
    assertNull(
        StringsPicture.of(
            StringJudge.judge(
                Equipment.M410, Equipment.c150(), Equipment.rules(null, 30.0), Wanted.modules(6))));
  }
}
