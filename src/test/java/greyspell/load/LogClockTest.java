package greyspell.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

/** Logs written by a clock with daylight saving. */
class LogClockTest {
  private static long minute(String time) {
    return LocalDateTime.parse(time).toEpochSecond(ZoneOffset.UTC) / 60;
  }

  private static LoadRecord read(String zone, double utcOffsetH, String... rows) {
    return LoadLogReader.parse(
        "local_start,load_wh\n" + String.join("\n", rows) + "\n", "log.csv", utcOffsetH, zone);
  }

  /** 25 March 2018, 02:00 became 03:00: what reads 03:00 is 02:00 standard time. */
  @Test
  void springLeavesAnHourOut() {
    for (String zone : new String[] {"eu", "EU", "Europe/Berlin"}) {
      LoadRecord got =
          read(zone, 1.0, "2018-03-25 01:00,1", "2018-03-25 03:00,2", "2018-03-25 04:00,3");
      assertEquals(3, got.steps());
      assertEquals(minute("2018-03-25T01:00"), got.startMinute(0));
      assertEquals(minute("2018-03-25T02:00"), got.startMinute(1));
      assertEquals(minute("2018-03-25T03:00"), got.startMinute(2));
    }
  }

  /** 28 October 2018, 03:00 became 02:00: the hour from 02:00 comes twice. */
  @Test
  void autumnDoublesAnHour() {
    LoadRecord got =
        read(
            "eu",
            1.0,
            "2018-10-28 01:30,1",
            "2018-10-28 02:00,2",
            "2018-10-28 02:30,3",
            "2018-10-28 02:00,4",
            "2018-10-28 02:30,5",
            "2018-10-28 03:00,6");
    assertEquals(6, got.steps());
    for (int i = 0; i < 6; i++) {
      assertEquals(minute("2018-10-28T00:30") + 30L * i, got.startMinute(i), "row " + i);
      assertEquals(i + 1.0, got.wh(i));
    }
  }

  /** In 2018 from 11 March to 4 November, 02:00 on the clock. */
  @Test
  void theOtherRule() {
    for (String zone : new String[] {"us", "America/Chicago"}) {
      LoadRecord spring = read(zone, -6.0, "2018-03-11 01:00,1", "2018-03-11 03:00,2");
      assertEquals(60, spring.startMinute(1) - spring.startMinute(0));
      LoadRecord autumn =
          read(
              zone,
              -6.0,
              "2018-11-04 00:00,1",
              "2018-11-04 01:00,2",
              "2018-11-04 01:00,3",
              "2018-11-04 02:00,4");
      assertEquals(minute("2018-11-03T23:00"), autumn.startMinute(0));
      assertEquals(minute("2018-11-04T02:00"), autumn.startMinute(3));
    }
  }

  /** A zone may lie hours from the site's standard time: the clock is turned all the way. */
  @Test
  void fromAnotherZone() {
    LoadRecord got = read("Europe/London", 1.0, "2018-01-05 12:00,1", "2018-01-05 13:00,1");
    assertEquals(minute("2018-01-05T13:00"), got.startMinute(0));
  }

  @Test
  void aValueInTheHourThatIsLeftOutTellsOfStandardTime() {
    BadInput bad =
        assertThrows(
            BadInput.class,
            () ->
                read("eu", 1.0, "2018-03-25 01:00,1", "2018-03-25 02:00,2", "2018-03-25 03:00,2"));
    String text = String.valueOf(bad.getMessage());
    assertTrue(text.contains("log.csv:3:1"), text);
    assertTrue(text.contains("in spring it leaves this hour out"), text);
    LoadRecord filled =
        read("eu", 1.0, "2018-03-25 01:00,1", "2018-03-25 02:00,0", "2018-03-25 03:00,2");
    assertEquals(2, filled.steps(), "a meter's own filling is no measurement");
  }

  @Test
  void universalTimeIsNotTurned() {
    LoadRecord got =
        LoadLogReader.parse(
            "utc_start,load_wh\n2018-07-01 00:00,1\n2018-07-01 01:00,1\n", "x", 1.0, "eu");
    assertEquals(minute("2018-07-01T01:00"), got.startMinute(0));
  }

  @Test
  void knowsItsZones() {
    assertTrue(LoadLogReader.isZone("eu"));
    assertTrue(LoadLogReader.isZone("Pacific/Auckland"));
    assertFalse(LoadLogReader.isZone("Atlantis/Centre"));
  }
}
