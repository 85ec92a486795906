package greyspell.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HourCalendarTest {
  /**
   * In the south a winter is named by its year, and that may be the one that typical years bear.
   */
  @Test
  void aWinterIsOneWhateverItsName() {
    for (String name : new String[] {"winter 18", "2017/18", "2018", "2001"}) {
      HourCalendar winter = HourCalendar.oneWinter(name);
      assertTrue(winter.isOneWinter(), name);
      assertFalse(winter.isTypical(), name);
      assertEquals(name, winter.winters(false).get(0).name());
    }
    assertFalse(HourCalendar.of(2001, 1).isOneWinter());
    assertFalse(HourCalendar.typicalYear().isOneWinter());
    assertTrue(HourCalendar.typicalYear().isTypical());
  }
}
