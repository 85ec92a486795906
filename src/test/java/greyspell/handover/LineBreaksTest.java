package greyspell.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineBreaksTest {
  private static List<String> pieces(String text) {
    var breaks = new LineBreaks();
    breaks.setText(text);
    var pieces = new ArrayList<String>();
    int from = 0;
    for (int to = breaks.next(); to >= 0; to = breaks.next()) {
      pieces.add(text.substring(from, to));
      from = to;
    }
    assertEquals(text.length(), from);
    return pieces;
  }

  @Test
  void aNumberIsNotPartedFromItsUnit() {
    assertEquals(
        List.of("needs ", "7.78 kWh ", "a ", "day, ", "28 %."),
        pieces("needs 7.78 kWh a day, 28 %."));
  }

  @Test
  void timesAndFractionsStayWholeAndJoinedWordsMayBreak() {
    assertEquals(List.of("from ", "15:00"), pieces("from 15:00"));
    assertEquals(List.of("pump, ", "1/2 hp"), pieces("pump, 1/2 hp"));
    assertEquals(List.of("-8.7 °C"), pieces("-8.7 °C"));
    assertEquals(List.of("grey-", "maritime.csv"), pieces("grey-maritime.csv"));
  }

  @Test
  void onTheScreenASpaceBeforeAUnitIsOneThatDoesNotBreak() {
    assertEquals(
        "Then 6.24\u00a0kWh a year, 28\u00a0%, 5 of 2 winters",
        LineBreaks.joined("Then 6.24 kWh a year, 28 %, 5 of 2 winters"));
    assertEquals("", LineBreaks.joined(""));
  }

  @Test
  void nothingBreaksNowhere() {
    assertEquals(List.of(), pieces(""));
    assertEquals(List.of("a  ", "b "), pieces("a  b "));
  }
}
