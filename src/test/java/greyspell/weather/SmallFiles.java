package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.quantity.BadInput;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Weather files of one year in a few strokes, for tests that change one row of them. */
final class SmallFiles {
  static final double UTC = 0.0;
  private static final LocalDateTime COMMON_YEAR = LocalDateTime.of(2019, 1, 1, 0, 0);

  private final Path folder;

  SmallFiles(Path folder) {
    this.folder = folder;
  }

  WeatherSeries read(String text, double siteUtcOffsetH) throws IOException {
    return read(text, StandardCharsets.UTF_8, siteUtcOffsetH);
  }

  WeatherSeries read(String text, Charset charset, double siteUtcOffsetH) throws IOException {
    Path file = folder.resolve("w.csv");
    Files.write(file, text.getBytes(charset));
    return WeatherReader.read(file, "w.csv", siteUtcOffsetH);
  }

  /** The message of the refusal. */
  String refusal(String text, double siteUtcOffsetH) {
    String message = assertThrows(BadInput.class, () -> read(text, siteUtcOffsetH)).getMessage();
    return message == null ? "" : message;
  }

  /** Plain CSV: a row an hour from the start of 2019, 8760 rows; null leaves the row out. */
  static String csv(String header, Function<LocalDateTime, String> row) {
    return csv(header, COMMON_YEAR, 8760, 60, row);
  }

  static String csv(
      String header,
      LocalDateTime from,
      int rows,
      int stepMin,
      Function<LocalDateTime, String> row) {
    var text = new StringBuilder(header).append('\n');
    for (int i = 0; i < rows; i++) {
      String line = row.apply(from.plusMinutes((long) i * stepMin));
      if (!line.isEmpty()) {
        text.append(line).append('\n');
      }
    }
    return text.toString();
  }

  /** One row of an EPW file; the values of a test stand in it by month, day and hour. */
  static final class EpwRow {
    int year = 2019;
    int month;
    int day;
    int hour;
    int minute;
    String temperatureC = "10.0";
    String globalWm2 = "0";
    String directWm2 = "0";
    String diffuseWm2 = "0";
    String windMs = "3.0";
    String totalTenths = "10";
    String opaqueTenths = "5";
    String snowCm = "0";
    boolean isLeftOut;

    boolean is(int m, int d, int h) {
      return month == m && day == d && hour == h;
    }

    String text() {
      return String.format(
          Locale.ROOT,
          "%d,%d,%d,%d,%d,A7A7,%s,2.0,80,99000,0,0,300,%s,%s,%s,0,0,0,0,90,%s,%s,%s,16.0,7620,9,"
              + "999999999,89,0.0600,%s,88,0.420,0.0,1.0",
          year,
          month,
          day,
          hour,
          minute,
          temperatureC,
          globalWm2,
          directWm2,
          diffuseWm2,
          windMs,
          totalTenths,
          opaqueTenths,
          snowCm);
    }
  }

  static final String EPW_HEAD =
      """
      LOCATION,Otter Narrows,-,XXX,made,0,46.3,-93.8,-6.0,390.0
      DESIGN CONDITIONS,0
      TYPICAL/EXTREME PERIODS,0
      GROUND TEMPERATURES,0
      HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0
      COMMENTS 1,"made, for a test"
      COMMENTS 2,
      DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31
      """;

  static String epw(UnaryOperator<EpwRow> change) {
    return epw(EPW_HEAD, COMMON_YEAR, 8760, 1, change);
  }

  static String epw(
      String head, LocalDateTime from, int hours, int perHour, UnaryOperator<EpwRow> change) {
    var text = new StringBuilder(head);
    for (int i = 0; i < hours * perHour; i++) {
      LocalDateTime start = from.plusHours(i / perHour);
      var row = new EpwRow();
      row.year = start.getYear();
      row.month = start.getMonthValue();
      row.day = start.getDayOfMonth();
      row.hour = start.getHour() + 1;
      row.minute = (i % perHour + 1) * 60 / perHour;
      EpwRow changed = change.apply(row);
      if (!changed.isLeftOut) {
        text.append(changed.text()).append('\n');
      }
    }
    return text.toString();
  }

  static final String TMY3_HEAD =
      """
      999001,"TAMARIND, PORT",XX,-8.0,37.100,-121.500,12
      Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),TotCld (tenths),OpqCld (tenths),Dry-bulb (C),Wspd (m/s)
      """;

  /** TMY3 with the columns that are read; years differ by month. */
  static String tmy3(String head, Function<EpwRow, String> line) {
    var text = new StringBuilder(head);
    for (int i = 0; i < 8760; i++) {
      LocalDateTime start = COMMON_YEAR.plusHours(i);
      var row = new EpwRow();
      row.year = 1990 + start.getMonthValue() % 5;
      row.month = start.getMonthValue();
      row.day = start.getDayOfMonth();
      row.hour = start.getHour() + 1;
      String text1 = line.apply(row);
      if (!text1.isEmpty()) {
        text.append(text1).append('\n');
      }
    }
    return text.toString();
  }

  static String tmy3Line(EpwRow row) {
    return String.format(
        Locale.ROOT,
        "%02d/%02d/%d,%02d:00,%s,%s,%s,%s,%s,%s,%s",
        row.month,
        row.day,
        row.year,
        row.hour,
        row.globalWm2,
        row.directWm2,
        row.diffuseWm2,
        row.totalTenths,
        row.opaqueTenths,
        row.temperatureC,
        row.windMs);
  }
}
