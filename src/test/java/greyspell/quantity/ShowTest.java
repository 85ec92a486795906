package greyspell.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ShowTest {
  @Test
  void energyIsInKilowattHours() {
    assertEquals("0.85 kWh", Show.energy(850));
    assertEquals("0.085 kWh", Show.energy(85));
    assertEquals("12.3 kWh", Show.energy(12_340));
    assertEquals("2140 kWh", Show.energy(2_140_400));
    assertEquals("10.0 kWh", Show.energy(9_996));
    assertEquals("0.00 kWh", Show.energy(0));
    assertEquals("-4.25 kWh", Show.energy(-4250));
  }

  @Test
  void powerIsInWattsBelowAKilowatt() {
    assertEquals("142 W", Show.power(142.3));
    assertEquals("0.5 W", Show.power(0.5));
    assertEquals("6.20 kW", Show.power(6200));
    assertEquals("1.00 kW", Show.power(999.7));
  }

  @Test
  void sharesAreInPercent() {
    assertEquals("38 %", Show.percent(0.3812));
    assertEquals("4.2 %", Show.percent(0.0421));
    assertEquals("0.03 %", Show.percent(0.00034));
    assertEquals("10 %", Show.percent(0.0996));
    assertEquals("0 %", Show.percent(0));
  }

  @Test
  void smallWordsFollowTheNumber() {
    assertEquals("1 day", Show.days(1.0));
    assertEquals("2.4 days", Show.days(2.4));
    assertEquals("12 days", Show.days(12.2));
    assertEquals("1 hour", Show.hours(1.0));
    assertEquals("-16 °C", Show.temperature(-16.0));
    assertEquals("51.2 V", Show.voltage(51.2));
    assertEquals("EUR 1,200", Show.money("EUR", 1200.4));
    assertEquals("EUR 999", Show.money("EUR", 999.4));
    assertEquals("EUR -1,234,567", Show.money("EUR", -1234567.0));
    assertEquals("0.95", Show.money("", 0.95));
  }

  @Test
  void datesAreInEnglishWhateverTheMachineSpeaks() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertEquals("28 November 2017", Show.date(LocalDate.of(2017, 11, 28)));
      assertEquals("Nov", Show.shortMonth(11));
      assertEquals("51.2 V", Show.voltage(51.2));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void neverPrintsMinusZeroOrNaN() {
    assertEquals("0.0", Show.number(-0.04, 1));
    assertEquals("not known", Show.number(Double.NaN, 1));
    assertEquals("unlimited", Show.number(Double.POSITIVE_INFINITY, 1));
    assertEquals("4", Show.trimmed(4.0, 3));
    assertEquals("100", Show.trimmed(100.0, 0));
  }
}
