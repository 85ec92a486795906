package greyspell.report;

import greyspell.balance.Ledger;
import greyspell.balance.LedgerColumn;
import greyspell.balance.NamedHours;
import greyspell.calendar.HourCalendar;
import greyspell.study.StudyResult;
import greyspell.weather.WeatherSeries;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The hourly books as CSV. Flows are printed to 0.1 Wh, and what rounding drops is carried into the
 * column's next hour, so that a column's sum is right to 0.1 Wh however many rows it has. Charge,
 * what waits, voltage and temperature, which are not summed, are rounded by themselves. Columns of
 * generator, second source, rules and voltage stand only in homes that have one of them.
 */
final class LedgerCsv {
  static final String LOCAL_TIME = "local_standard_time";
  static final String UTC = "utc";
  static final String AIR = "air_temperature_c";
  static final String BANK = "bank_temperature_c";
  static final String BANK_V = "bank_v";

  private static final class Column {
    private final String header;
    private final double[] values;
    private final boolean isFlow;

    private Column(String header, double[] values, boolean isFlow) {
      this.header = header;
      this.values = values;
      this.isFlow = isFlow;
    }
  }

  private LedgerCsv() {}

  static List<String> headers(StudyResult result) {
    var headers = new ArrayList<String>(List.of(LOCAL_TIME, UTC));
    for (Column c : columns(result)) {
      headers.add(c.header);
    }
    return headers;
  }

  private static List<Column> columns(StudyResult result) {
    Ledger ledger = result.ledger();
    WeatherSeries weather = result.weather();
    var columns = new ArrayList<Column>();
    columns.add(new Column(AIR, weather.airTemperatureC(), false));
    columns.add(new Column(BANK, ledger.forcing().bankTemperatureC(), false));
    if (ledger.isFull()) {
      columns.add(new Column(BANK_V, ledger.bankV(), false));
    }
    for (LedgerColumn c : LedgerColumn.values()) {
      if (c.isFull() && !ledger.isFull()) {
        continue;
      }
      boolean isFlow = c != LedgerColumn.CHARGE && c != LedgerColumn.WAITING;
      columns.add(new Column(c.header(), c.of(ledger), isFlow));
      if (c == LedgerColumn.SOLAR_NOMINAL) {
        for (NamedHours loss : ledger.forcing().arrayLosses()) {
          columns.add(new Column(loss.name() + "_wh", loss.wh(), true));
        }
      }
    }
    return columns;
  }

  static void write(StudyResult result, OutputStream to) throws IOException {
    HourCalendar calendar = Facts.calendar(result);
    var columns = columns(result);
    int n = columns.size();
    var values = new double[n][];
    var isFlow = new boolean[n];
    var carryTenths = new double[n];
    for (int c = 0; c < n; c++) {
      values[c] = columns.get(c).values;
      isFlow[c] = columns.get(c).isFlow;
    }
    int offsetMinutes = (int) Math.round(result.weather().source().utcOffsetH() * 60.0);
    try (var out = new RowWriter(to)) {
      out.text(String.join(",", headers(result))).sign('\n');
      for (int day = 0; day < calendar.days(); day++) {
        LocalDate date = calendar.date(day * 24);
        byte[] before = iso(date.minusDays(1));
        byte[] today = iso(date);
        byte[] after = iso(date.plusDays(1));
        for (int h = 0; h < 24; h++) {
          out.bytes(today).twoDigits(h).sign(':').twoDigits(0).sign(',');
          int minute = h * 60 - offsetMinutes;
          byte[] utcDate = minute < 0 ? before : minute >= 1440 ? after : today;
          int utcMinute = Math.floorMod(minute, 1440);
          out.bytes(utcDate).twoDigits(utcMinute / 60).sign(':').twoDigits(utcMinute % 60);
          out.sign('Z');
          row(out, values, isFlow, carryTenths, day * 24 + h);
        }
      }
    }
  }

  private static void row(
      RowWriter out, double[][] values, boolean[] isFlow, double[] carryTenths, int hour)
      throws IOException {
    for (int c = 0; c < values.length; c++) {
      out.sign(',');
      double exact = values[c][hour] * 10.0;
      if (exact == 0.0) {
        out.sign('0');
      } else if (isFlow[c]) {
        exact += carryTenths[c];
        long tenths = (long) Math.floor(exact + 0.5);
        carryTenths[c] = exact - tenths;
        out.tenths(tenths);
      } else {
        out.tenths((long) Math.floor(exact + 0.5));
      }
    }
    out.sign('\n');
  }

  private static byte[] iso(LocalDate date) {
    return (date + "T").getBytes(StandardCharsets.US_ASCII);
  }
}
