package greyspell.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadLogReaderTest {
  private static final long NOON = LocalDate.of(2017, 11, 1).toEpochDay() * 1440 + 720;

  private static LoadRecord parse(String text, double utcOffsetH) {
    return LoadLogReader.parse(text, "log.csv", utcOffsetH);
  }

  private static String refusal(String text) {
    return refusal(() -> parse(text, 0.0));
  }

  private static String refusal(Executable reading) {
    return String.valueOf(assertThrows(BadInput.class, reading).getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "local_start, load_wh, 0, 250",
    "local_end, load_wh, -30, 250",
    "utc_start, load_wh, -480, 250",
    "utc_end, load_kwh, -510, 250000",
    "local_start, load_w, 0, 125"
  })
  void columnsAndUnits(String time, String value, long shift, double wh) {
    LoadRecord got =
        parse(time + "," + value + "\n2017-11-01 12:00,250\n2017-11-01 12:30,100\n", -8.0);
    assertEquals(2, got.steps());
    assertEquals(30, got.stepMinutes());
    assertEquals(NOON + shift, got.startMinute(0));
    assertEquals(wh, got.wh(0), 1e-9);
  }

  /** A log of another clock would be moved by hours, and nobody told. */
  @Test
  void aClockThatIsNotTheSitesIsRefused() {
    String rows = "local_start,load_wh\n2017-11-01 12:00,250\n2017-11-01 12:30,100\n";
    String unread = refusal("# from the meter\n # utc_offset: CEST\n" + rows);
    assertTrue(unread.contains("log.csv:2:16  utc_offset: found \"CEST\""), unread);
    assertTrue(unread.contains("must be hours from -14 to +14"), unread);
    String other = refusal("# utc_offset: -6,,\n" + rows);
    assertTrue(other.contains("log.csv:1:15  utc_offset: found \"-6\""), other);
    assertTrue(other.contains("must be the site's, 0:"), other);
    assertTrue(other.contains("a column utc_start"), other);
    long noon = parse(rows, -6.0).startMinute(0);
    assertEquals(noon, parse("# utc_offset: -06:00\n" + rows, -6.0).startMinute(0));
    String utc = rows.replace("local", "utc");
    assertEquals(
        parse(utc, 0.0).startMinute(0), parse("# utc_offset: -6\n" + utc, 0.0).startMinute(0));
  }

  @Test
  void otherColumnsCommentsQuotesAndEmptyValues() {
    LoadRecord got =
        parse(
            String.join(
                "\r\n",
                "\uFEFF# a comment",
                "",
                "volts,\"Load_Wh\" , local_end",
                "230,10.5,2017-11-01T12:00:00",
                "229,,2017-11-01 13:00",
                "231,1e2,2017-11-01 24:00"),
            0.0);
    assertEquals(2, got.steps());
    assertEquals(60, got.stepMinutes());
    assertEquals(NOON - 60, got.startMinute(0));
    assertEquals(NOON + 660, got.startMinute(1));
    assertEquals(100.0, got.wh(1));
  }

  @Test
  void everyFaultHasItsPlace() {
    String text =
        """
        local_start,load_wh
        2017-11-01 12:00,1
        2017-13-01 13:00,1
        2017-11-01 13:00,-4
        2017-11-01 13:00,ten
        2017-11-01 14:00
        2017-11-01 12:00,1
        2017-11-01 14:00,NaN
        """;
    String message = refusal(text);
    assertTrue(message.contains("log.csv:3:1  local_start: found \"2017-13-01 13:00\""), message);
    assertTrue(message.contains("log.csv:4:18  load_wh: found \"-4\""), message);
    assertTrue(message.contains("log.csv:5:18  load_wh: found \"ten\""), message);
    assertTrue(message.contains("log.csv:6:1  found 1 cells"), message);
    assertTrue(message.contains("log.csv:7:1  local_start: found \"2017-11-01 12:00\""), message);
    assertTrue(message.contains("log.csv:8:18  load_wh: found \"NaN\""), message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''                                                            | an empty file",
        "time;load                                                     | log.csv:1:1  found the columns",
        "local_start,load_wh                                           | 0 rows of values",
        "local_start,load_wh/2017-11-01 12:00,1                        | 1 rows of values",
        "local_start,load_wh/2017-11-01 12:00,1/2017-11-02 12:00,1     | rows 1440 minutes apart",
        "local_start,load_wh/2017-11-01 12:00,/2017-11-01 13:00,       | no value in 2 rows",
        "local_start,load_wh/2017-11-01 12:00,1/2017-11-01 12:10,1/2017-11-01 12:25,1"
            + " | log.csv:4:1  15 minutes after the row before",
        "local_start,load_wh/2017-11-01 12:00,1/2017-11-01 13:00,1/9017-11-01 12:00,1"
            + " | times more than 100 years apart"
      })
  void refusals(String text, String expected) {
    String message = refusal(text.replace('/', '\n'));
    assertTrue(message.contains(expected), message);
  }

  @Test
  void aFileWithoutLineEndsIsNotReadWhole() {
    assertTrue(refusal("x".repeat(50_000)).contains("a line of more than 10000 characters"));
  }

  @Test
  void faultsStopAtTwenty() {
    String text = "local_start,load_wh\n" + "rubbish,1\n".repeat(1000);
    assertEquals(20, assertThrows(BadInput.class, () -> parse(text, 0.0)).faults().size());
  }

  @Test
  void filesAreReadAndMadeWhole(@TempDir Path folder) throws IOException {
    var text = new StringBuilder("local_start,load_kwh\n");
    for (int h = 0; h < 24 * 7; h++) {
      text.append(String.format(Locale.ROOT, "2018-01-%02d %02d:00,0.25%n", 1 + h / 24, h % 24));
    }
    Path file = folder.resolve("log.csv");
    Files.writeString(file, text);
    assertEquals(7, LoadLogReader.read(file, "log.csv", 1.0).days());

    Files.writeString(file, text.substring(0, 2000));
    assertTrue(
        refusal(() -> LoadLogReader.read(file, "log.csv", 1.0))
            .contains("whole days, at least 7 are needed"));
    Files.write(file, "local_start,load_wh\n\u00e9".getBytes(StandardCharsets.ISO_8859_1));
    assertTrue(refusal(() -> LoadLogReader.read(file, "log.csv", 1.0)).contains("not UTF-8 text"));
    assertTrue(
        refusal(() -> LoadLogReader.read(folder.resolve("none"), "none", 1.0))
            .startsWith("none  no such file"));
    assertTrue(
        refusal(() -> LoadLogReader.read(folder, "dir", 1.0)).startsWith("dir  cannot be read"));
  }
}
