package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** Our own number and date arithmetic against Java's. */
class LinesLawTest {
  private static Lines line(String text) throws IOException {
    var lines = new Lines(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    assertTrue(lines.next());
    lines.split();
    return lines;
  }

  @Property
  void readsDecimalsAsJavaDoes(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
      @ForAll @IntRange(max = 9) int places)
      throws IOException {
    String text = String.format(Locale.ROOT, "%." + places + "f", value);
    Lines lines = line("a, " + text + " ,b");
    assertTrue(lines.isNumber(1));
    assertEquals(Double.parseDouble(text), lines.value(), 0.0);
  }

  @Property
  void readsAnyDoubleAsJavaDoes(@ForAll @DoubleRange(min = -1e300, max = 1e300) double value)
      throws IOException {
    Lines lines = line(Double.toString(value));
    assertTrue(lines.isNumber(0));
    assertEquals(value, lines.value(), 0.0);
  }

  @Property
  void takesNoTextForANumberThatJavaWouldNotTake(
      @ForAll @StringLength(min = 1, max = 6) String text) throws IOException {
    String visible = text.replaceAll("[,\"\\s\\p{Cntrl}]", "x");
    Lines lines = line(visible);
    if (lines.isNumber(0)) {
      assertEquals(Double.parseDouble(visible), lines.value(), 0.0);
    }
  }

  @Property
  void countsDaysAsJavaDoes(
      @ForAll @IntRange(min = 1800, max = 2200) int year,
      @ForAll @IntRange(min = 1, max = 12) int month,
      @ForAll @IntRange(min = 1, max = 31) int day) {
    boolean isDate = day <= LocalDate.of(year, month, 1).lengthOfMonth();
    assertEquals(isDate, Dates.isDate(year, month, day));
    if (isDate) {
      assertEquals(LocalDate.of(year, month, day).toEpochDay(), Dates.epochDay(year, month, day));
    }
  }

  @Property
  void anyTextIsSplitWithoutFailing(@ForAll @StringLength(max = 60) String text)
      throws IOException {
    String oneLine = text.replace('\n', ' ') + "\n";
    var lines = new Lines(new ByteArrayInputStream(oneLine.getBytes(StandardCharsets.UTF_8)));
    while (lines.next()) {
      int fields = lines.split();
      assertTrue(fields >= 1);
      for (int f = 0; f < fields; f++) {
        assertFalse(lines.length(f) < 0);
        assertTrue(lines.column(f) >= 1);
      }
    }
  }
}
