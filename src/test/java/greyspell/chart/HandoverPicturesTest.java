package greyspell.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.study.Explanation.Part;
import greyspell.study.Explanation.Shares;
import greyspell.study.WinterCause;
import greyspell.words.Units;
import greyspell.words.Words;
import java.util.List;
import org.junit.jupiter.api.Test;

class HandoverPicturesTest {
  private static final Words EN = Words.of("en", Units.METRIC);

  private static Part part(WinterCause cause, double wh) {
    return new Part(cause, wh, 0.0, wh / 1000.0, wh, List.of());
  }

  @Test
  void smallCausesAreSummedBeforeAnyIsLeftOutSoThatTheWholeIsReached() {
    var shares =
        new Shares(
            1000.0,
            List.of(
                part(WinterCause.SHORT_DAYS, 600.0),
                part(WinterCause.STANDBY, 370.0),
                part(WinterCause.SOILING, 18.0),
                part(WinterCause.WIRING, 4.0),
                part(WinterCause.PANEL_LOSSES, 4.0),
                part(WinterCause.SMALLER_TOGETHER, 4.0)),
            0.0,
            true,
            64);
    var both = HandoverPictures.causes(shares, EN);
    var column = Xml.texts(Xml.parse(Pictures.svg(both.column())), "text");
    assertTrue(column.containsAll(List.of("60 %", "37 %", "3.0 %")), column.toString());
    var page = Xml.texts(Xml.parse(Pictures.svg(both.page())), "text").toString();
    assertTrue(page.contains("1.8 %") && page.contains("1.2 %"), page);
    assertTrue(both.page().description().contains("1.2 %"));
  }

  @Test
  void noTwoNeighboursOnAScaleReadAlike() {
    for (double most : List.of(0.03, 0.18, 0.25, 0.9, 2.9, 17.0, 400.0)) {
      double step = Look.step(most);
      int decimals = Look.decimals(step);
      assertEquals(step, Double.parseDouble(EN.number(step, decimals)), 1e-9 * step);
    }
    assertEquals(0, Look.decimals(5.0));
  }
}
