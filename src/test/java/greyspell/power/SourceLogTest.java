package greyspell.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceLogTest {
  private static SourceLog read(String text) {
    return SourceLogReader.parse(text, "stream.csv", 1.0);
  }

  private static String faults(String text) {
    return String.valueOf(assertThrows(BadInput.class, () -> read(text)).getMessage());
  }

  /** A whole year whose value is its hour's number. */
  private static String year(int hours) {
    var text = new StringBuilder("source_w\n");
    for (int h = 0; h < hours; h++) {
      text.append(h).append('\n');
    }
    return text.toString();
  }

  // ---- reading ----------------------------------------------------------------------------------

  @Test
  void readsTimesGapsCommentsAndOtherColumns() {
    SourceLog log =
        read(
            """
            # stream turbine
            flow,local_start,source_w
            1,2018-02-01 00:00,100

            1,2018-02-01T01:00:00,
            1,2018-02-01 04:00,"60.5"
            """);
    assertEquals(5, log.hours());
    assertEquals(LocalDateTime.of(2018, 2, 1, 0, 0), log.start());
    assertEquals(3, log.missingHours());
    assertEquals(List.of(new SourceLog.Gap(LocalDateTime.of(2018, 2, 1, 1, 0), 3)), log.gaps());
    SourceHours laid = log.on(HourCalendar.of(2018, 1));
    assertEquals(100.0, laid.wh()[31 * 24]);
    assertEquals(60.5, laid.wh()[31 * 24 + 4]);
    assertEquals(160.5, Arrays.stream(laid.wh()).sum(), 1e-9);
    assertEquals(8760 - 2, laid.absentHours());
  }

  @Test
  void timesOfUtcAndHourEndsAreMoved() {
    LocalDateTime first = LocalDateTime.of(2018, 2, 1, 0, 0);
    assertEquals(first, read("utc_start,source_w\n2018-01-31 23:00Z,1\n").start());
    assertEquals(first, read("utc_end,source_w\n2018-01-31 24:00,1\n").start());
    assertEquals(first, read("local_end,source_w\n2018-02-01 01:00,1\n").start());
  }

  @Test
  void everyFaultHasItsLineAndColumn() {
    assertEquals(
        """
        stream.csv:2:1  local_start: found "1 Feb"
            must be a time such as 2017-11-01 00:00
        stream.csv:3:18  source_w: found "-3"
            must be watts, 0 or more
            Leave the cell empty where nothing was measured.
        stream.csv:5:1  local_start: found "2018-02-01 01:30"
            must lie on a whole hour of local standard time
            Give the mean power of each hour, one row an hour.
        stream.csv:6:1  local_start: found "2018-02-01 01:00" after a later or equal time
            times must rise
            A clock with daylight saving repeats an hour in autumn: use standard time or UTC.
        stream.csv:7:1  found 1 cell
            must have at least 2
            Was the file cut off?""",
        faults(
            """
            local_start,source_w
            1 Feb,3
            2018-02-01 00:00,-3
            2018-02-01 01:00,3
            2018-02-01 01:30,3
            2018-02-01 01:00,3
            2018-02-01
            """));
    assertTrue(faults("").startsWith("stream.csv  an empty file"));
    assertTrue(
        faults("local_start,watts\n")
            .startsWith("stream.csv:1:1  found the columns \"local_start, watts\""));
    assertTrue(faults("local_start,source_w\n").startsWith("stream.csv  no value in 0 rows"));
    assertTrue(faults("local_start,source_w\n2018-02-01 00:00,1d\n").contains("found \"1d\""));
    assertTrue(
        faults("local_start,source_w\n1918-02-01 00:00,1\n2118-02-01 00:00,1\n")
            .contains("Is a year mistyped?"));
    assertTrue(faults("source_w\n1\n2\n").contains("2 rows without a time column"));
  }

  @Test
  void aClockThatIsNotTheSitesIsRefused() {
    String rows = "local_start,source_w\n2018-02-01 00:00,1\n";
    assertEquals(
        """
        stream.csv:1:15  utc_offset: found "CEST"
            must be hours from -14 to +14, such as -6, 5.5 or +05:30
            Use standard time, not summer time.""",
        faults("# utc_offset: CEST\n" + rows));
    assertEquals(
        """
        stream.csv:2:15  utc_offset: found "-6"
            must be the site's, 1: local times are read on it
            Write the times in the site's standard time, or as UTC in a column utc_start.""",
        faults("# a stream\n# utc_offset: -6\n" + rows));
    assertEquals(read(rows).start(), read("# utc_offset: +01:00\n" + rows).start());
    String utc = "utc_start,source_w\n2018-02-01 00:00,1\n";
    assertEquals(read(utc).start(), read("# utc_offset: -6\n" + utc).start());
    var year = new StringBuilder("# utc_offset: -6\nsource_w\n");
    year.append("1\n".repeat(8760));
    assertTrue(faults(year.toString()).contains("must be the site's, 1"));
  }

  @Test
  void readsAFileAndNamesOneThatIsNotThere(@TempDir Path temp) throws IOException {
    Path file = temp.resolve("stream.csv");
    Files.writeString(file, "\uFEFF" + year(8760));
    assertEquals(8760, SourceLogReader.read(file, "stream.csv", 0.0).hours());
    BadInput bad =
        assertThrows(
            BadInput.class, () -> SourceLogReader.read(temp.resolve("no.csv"), "no.csv", 0.0));
    assertTrue(String.valueOf(bad.getMessage()).startsWith("no.csv  no such file"));
  }

  // ---- laid over the weather's years ------------------------------------------------------------

  @Test
  void oneYearRepeatsByDayAndHour() {
    SourceLog log = read(year(8760));
    HourCalendar calendar = HourCalendar.of(2019, 2); // 2020 has a 29 February
    SourceHours laid = log.on(calendar);
    assertEquals(0, laid.absentHours());
    assertEquals(calendar.hours(), laid.repeatedHours());
    assertEquals(500.0, laid.wh()[500]);
    assertEquals(500.0, laid.wh()[8760 + 500]);
    int leapDay = calendar.hourOf(2020, 2, 29, 7);
    assertEquals(laid.wh()[leapDay - 24], laid.wh()[leapDay], "29 February from the 28th");
    assertEquals(laid.wh()[calendar.hourOf(2019, 3, 1, 0)], laid.wh()[leapDay + 17]);
    assertEquals(8759.0, laid.wh()[calendar.hours() - 1]);
    assertEquals(8760, log.on(HourCalendar.typicalYear()).wh().length);
  }

  @Test
  void aLeapYearOfRowsHoldsIts29February() {
    SourceHours laid = read(year(8784)).on(HourCalendar.of(2020, 1));
    assertEquals(8783.0, laid.wh()[8783]);
    assertEquals(0, laid.absentHours());
  }

  @Test
  void realYearsAreTakenAsTheyWereAndGapsAreNamed() {
    var text = new StringBuilder("local_start,source_w\n");
    HourCalendar two = HourCalendar.of(2017, 2);
    for (int h = 0; h < two.hours(); h++) {
      if (h < 8760 + 30 || h >= 8760 + 33) {
        text.append(two.start(h)).append(',').append(h < 8760 ? 100 : 200).append('\n');
      }
    }
    SourceLog log = read(text.toString());
    SourceHours laid = log.on(HourCalendar.of(2018, 2));
    assertEquals(200.0, laid.wh()[0]);
    assertEquals(0.0, laid.wh()[30], "a gap is not filled from another year");
    assertEquals(100.0, laid.wh()[8760], "2019 from the first year of the log");
    assertEquals(8760, laid.repeatedHours());
    assertEquals(3, laid.absentHours());
    assertEquals(
        "17520 hours from 1 January 2017; 8760 hours of the weather lie outside and take the same"
            + " day and hour of the log; no value for 3 h from 2 January 2018 6:00; 3 hours without"
            + " a value count as nothing",
        laid.told());
  }
}
