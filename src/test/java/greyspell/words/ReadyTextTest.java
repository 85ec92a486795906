package greyspell.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ReadyTextTest {
  private static final Words METRIC = Words.of("en", Units.METRIC);
  private static final Words US = Words.of("en", Units.US);
  private static final Words DE = Words.of("de", Units.METRIC);

  @Test
  void usReadersSeeFahrenheitFeetAndGallons() {
    assertEquals(
        "6 in series reach 248.3 V at 3 °F (264.8 V by the handbook's table)",
        US.ready("6 in series reach 248.3 V at -16 °C (264.8 V by the handbook's table)"));
    assertEquals("cells at 145 °F; the", US.ready("cells at 62.8 °C; the"));
    assertEquals("over 72 ft one way: 1.3 %", US.ready("over 22 m one way: 1.3 %"));
    assertEquals("over 4.9 ft one way", US.ready("over 1.5 m one way"));
    assertEquals("0.16 gallons for each", US.ready("0.6 litres for each"));
    assertEquals("within 12.4 miles", US.ready("within 20 km"));
    assertEquals("14 to 104 °F", US.ready("-10 to 40 °C"));
    assertEquals("often 32 °F. Their", US.ready("often 0 °C. Their"));
  }

  @Test
  void anOfficialFigureThatIsGivenInBothStandsOnce() {
    assertEquals("at least 20 ft), exhaust", US.ready("at least 6 m, 20 ft), exhaust"));
  }

  @Test
  void areasDifferencesAndValuesPerUnitStay() {
    for (String text :
        new String[] {
          "70 mm² copper bears 230 A",
          "25 W/m2K",
          "3 K warmer",
          "2.5 mΩ of bank",
          "8 m² of roof",
          "6 m/s of wind",
          "12 months",
          "unit A12 m"
        }) {
      assertEquals(text, US.ready(text));
    }
  }

  @Test
  void metricEnglishStaysAndGermanHasADecimalComma() {
    String text = "0.6 litres at -16.5 °C over 22 m";
    assertEquals(text, METRIC.ready(text));
    assertEquals("0,2", DE.ready("0.2"));
    assertEquals("[-40, 3,5]", DE.ready("[-40, 3.5]"));
    assertEquals("version 1.2.3", DE.ready("version 1.2.3"));
    assertEquals("75 °C", DE.ready("75 °C"));
  }
}
