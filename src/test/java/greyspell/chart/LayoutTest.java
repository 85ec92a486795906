package greyspell.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.chart.LabelPlacer.Box;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Placing, wrapping, printing of numbers, and the bitmap writer. */
class LayoutTest {
  @Property(tries = 200)
  void labelsCoverNeitherDotsNorEachOther(@ForAll long seed) {
    var random = new Random(seed);
    var bounds = new Box(0, 0, 400, 200);
    var placer = new LabelPlacer(bounds);
    var dots = new ArrayList<double[]>();
    for (int k = 0; k < 25; k++) {
      double[] dot = {random.nextDouble() * 400, random.nextDouble() * 200};
      dots.add(dot);
      placer.take(new Box(dot[0] - 4, dot[1] - 4, dot[0] + 4, dot[1] + 4));
    }
    var placed = new ArrayList<Box>();
    for (double[] dot : dots) {
      Box box = placer.place(dot[0], dot[1], 6, 80, 14);
      if (box == null) {
        continue;
      }
      assertTrue(bounds.holds(box));
      for (double[] other : dots) {
        assertFalse(box.overlaps(new Box(other[0] - 4, other[1] - 4, other[0] + 4, other[1] + 4)));
      }
      placed.forEach(earlier -> assertFalse(box.overlaps(earlier)));
      placed.add(box);
    }
  }

  @Test
  void aLabelWithoutRoomIsLeftOut() {
    assertNull(new LabelPlacer(new Box(0, 0, 50, 50)).place(25, 25, 5, 80, 14));
  }

  @Test
  void linesBreakBetweenWordsButNotBeforeAUnit() {
    var lines =
        TextWidth.wrap(
            "the bank was 41 kWh short", 10, false, TextWidth.of("the bank was 41", 10, false));
    assertEquals(List.of("the bank was", "41 kWh short"), lines);
    assertEquals(List.of("one"), TextWidth.wrap("one", 10, false, 1));
  }

  @Test
  void numbersForPeople() {
    assertEquals("41 kWh", Say.kwh(41_234));
    assertEquals("3.4 kWh", Say.kwh(3_400));
    assertEquals("0 kWh", Say.kwh(0));
    assertEquals("0.012 kWh", Say.kwh(12));
    assertEquals("12,346 kWh", Say.kwh(12_345_678));
    assertEquals("-0.3", Say.kwhCell(-280));
    assertEquals("0.0", Say.kwhCell(-20));
    assertEquals("38 %", Say.percent(0.381));
    assertEquals("0.5 %", Say.percent(0.0048));
    assertEquals("under 0.1 %", Say.percent(0.0001));
    assertEquals("0 %", Say.percent(0));
    assertEquals("1 hour", Say.hours(1));
    assertEquals("1,000 hours", Say.hours(1000));
    assertEquals("unknown", Say.number(Double.NaN, 1));
  }

  @Test
  void datesOfATypicalYearHaveNoYear() {
    assertEquals("3 December", Say.date(HourCalendar.typicalYear(), 336 * 24));
    assertEquals("3 December 2022", Say.date(HourCalendar.of(2022, 1), 336 * 24));
    assertEquals("3 Dec 2022", Say.shortDateYear(HourCalendar.of(2022, 1), 336 * 24));
  }

  @Test
  void bitmapComesBackPixelByPixel() throws Exception {
    var random = new Random(5);
    var rgb = new int[37 * 23];
    for (int k = 0; k < rgb.length; k++) {
      rgb[k] = random.nextInt(1 << 24);
    }
    var image = ImageIO.read(new ByteArrayInputStream(Png.encode(37, 23, rgb)));
    for (int k = 0; k < rgb.length; k++) {
      assertEquals(rgb[k], image.getRGB(k % 37, k / 37) & 0xFFFFFF);
    }
  }

  @Test
  void textIsEscapedAndControlSignsAreDropped() {
    assertEquals("&lt;b&gt; &amp; &quot;x&quot; y", SvgCanvas.escape("<b> & \"x\"\u0001y"));
  }

  @Test
  void shadesGetLighterWithChargeAndDifferInGrey() {
    int[] ramp = Look.chargeRamp();
    for (int k = 1; k < ramp.length; k++) {
      assertTrue(lightness(ramp[k]) > lightness(ramp[k - 1]) + 5, "step " + k);
    }
    assertTrue(lightness(Look.SUN) - lightness(Look.HOUSE) > 60);
    assertTrue(lightness(Look.ALWAYS_ON) - lightness(Look.HOUSE) > 60);
    assertTrue(lightness(Look.LOSSES) - lightness(Look.ALWAYS_ON) > 30);
  }

  /** Grey value that a black-and-white printer makes of it (BT.601 weights), 0 to 255. */
  private static double lightness(int rgb) {
    return 0.299 * (rgb >> 16) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255);
  }
}
