package greyspell.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;

class SweepValuesTest {
  private static List<String> values(String text) {
    return Variation.parse("bank.x=" + text).values();
  }

  @Test
  void listsArePartedByCommasOutsideQuotesAndBraces() {
    assertEquals(List.of("200 W", "300 W"), values("200 W, 300 W"));
    assertEquals(List.of("4"), values(" 4 "));
    assertEquals(
        List.of("\"06:00-08:00, 18:00-22:00\"", "07:00-23:00"),
        values("\"06:00-08:00, 18:00-22:00\", 07:00-23:00"));
    assertEquals(
        List.of("{place: outdoors, lag: 8 h}", "[1 %, 2 %]", "left out"),
        values("{place: outdoors, lag: 8 h}, [1 %, 2 %], left out"));
    assertEquals(List.of("Owner's own", "Other's"), values("Owner's own, Other's"));
  }

  @Test
  void rangesHaveExactSteps() {
    assertEquals(List.of("4", "6", "8", "10", "12"), values("4..12 step 2"));
    assertEquals(List.of("30 deg", "40 deg", "50 deg"), values("30..50 deg step 10"));
    assertEquals(List.of("30 deg", "40 deg", "50 deg"), values("30 deg .. 50 deg step 10 deg"));
    assertEquals(List.of("0.1 kW", "0.2 kW", "0.3 kW"), values("0.1..0.35 kW step 0.1"));
    assertEquals(List.of("-5 °C", "0 °C", "5 °C"), values("-5..5 °C step 5"));
    assertEquals(List.of("10 %", "5 %", "0 %"), values("10..0 % step 5"));
    assertEquals(List.of("1", "2", "3", "9"), values("1..3 step 1, 9"));
    assertEquals(List.of("../w.csv"), values("../w.csv"));
    assertEquals(List.of("0.2 %/K", "0.4 %/K"), values("0.2..0.4 %/K step 0.2"));
  }

  private static void refused(String variation, String word) {
    String told =
        String.valueOf(assertThrows(BadInput.class, () -> Variation.parse(variation)).getMessage());
    assertTrue(told.contains(word), told);
  }

  @Test
  void whatIsNoVariationIsRefusedInWords() {
    refused("bank.in_parallel", "PATH=VALUES");
    refused("=3", "PATH=VALUES");
    refused("a=", "or no value");
    refused("a=1,,2", "between two commas");
    refused("a=1..5", "without a step");
    refused("a=1..5 step 0", "step of 0");
    refused("a=1 W..5 kW step 1", "two units");
    refused("a=0..1 step 0.0000001", "10000000 steps");
  }

  @Test
  void pathsMayHoldNamesWithEqualsSigns() {
    Variation odd = Variation.parse("loads.appliances[Lamp = old].power=1 W");
    assertEquals("loads.appliances[Lamp = old].power", odd.path());
    assertEquals(List.of("1 W"), odd.values());
  }

  @Test
  void aUnitThatAllShareIsKnown() {
    assertEquals("deg", SweepValues.sharedUnit(List.of("30 deg", "40 deg")));
    assertEquals("W/K", SweepValues.sharedUnit(List.of("30 W/K", "4.5 W/K")));
    assertEquals("", SweepValues.sharedUnit(List.of("3", "-4.5")));
    assertEquals("4.5", SweepValues.number("4.5 W/K"));
    assertNull(SweepValues.sharedUnit(List.of("30 W", "1 kW")));
    assertNull(SweepValues.sharedUnit(List.of("30 W", "left out")));
    assertNull(SweepValues.sharedUnit(List.of("07:00-23:00")));
    assertNull(SweepValues.sharedUnit(List.of("4 AWG, thick")));
    assertNull(SweepValues.sharedUnit(List.of("2/0 AWG")));
  }
}
