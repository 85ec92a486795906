package greyspell.report;

import static tech.tablesaw.aggregate.AggregateFunctions.max;
import static tech.tablesaw.aggregate.AggregateFunctions.mean;
import static tech.tablesaw.aggregate.AggregateFunctions.min;

import greyspell.calendar.HourCalendar;
import greyspell.chart.Say;
import greyspell.chart.WeatherDays;
import greyspell.weather.WeatherSeries;
import java.io.StringWriter;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.numbers.NumberColumnFormatter;

/**
 * What a weather file holds, month by month and year by year. The table library takes its time to
 * start; only {@code weather inspect} comes here.
 */
public final class WeatherTables {
  private static final String SKY = "sky";
  private static final String MEAN = "mean_c";
  private static final String COLDEST = "coldest_c";
  private static final String WARMEST = "warmest_c";
  private static final String MONTH = "month";
  private static final String YEAR = "year";

  private final boolean hasSun;
  private final HourCalendar calendar;
  private final Table days;

  private WeatherTables(WeatherSeries weather) {
    var source = WeatherDays.of(weather);
    hasSun = source.hasSun();
    calendar = source.calendar();
    int n = source.days();
    var year = IntColumn.create(YEAR, n);
    var month = IntColumn.create(MONTH, n);
    var sky = DoubleColumn.create(SKY, n);
    var meanC = DoubleColumn.create(MEAN, n);
    var coldestC = DoubleColumn.create(COLDEST, n);
    var warmestC = DoubleColumn.create(WARMEST, n);
    for (int day = 0; day < n; day++) {
      year.set(day, calendar.year(day * 24));
      month.set(day, calendar.month(day * 24));
      sky.set(day, source.sky(day));
      meanC.set(day, source.meanC(day));
      coldestC.set(day, source.coldestC(day));
      warmestC.set(day, source.warmestC(day));
    }
    days = Table.create("days", year, month, sky, meanC, coldestC, warmestC);
  }

  public static WeatherTables of(WeatherSeries weather) {
    return new WeatherTables(weather);
  }

  /** Sun (or cloud) and temperature of the calendar months, over all years. */
  Table byMonth() {
    Table sky = days.summarize(SKY, mean, min, max).by(MONTH).sortAscendingOn(MONTH);
    Table air = days.summarize(MEAN, mean).by(MONTH).sortAscendingOn(MONTH);
    Table cold = days.summarize(COLDEST, min).by(MONTH).sortAscendingOn(MONTH);
    Table warm = days.summarize(WARMEST, max).by(MONTH).sortAscendingOn(MONTH);
    var names = StringColumn.create("month");
    for (int m = 1; m <= 12; m++) {
      names.append(Say.shortMonth(m));
    }
    String what = hasSun ? "sun_kwh_m2_day" : "cloud_pct";
    return Table.create(
        hasSun
            ? "Sun on level ground in kWh/m² a day (peak-sun hours), and temperature"
            : "Cloud cover and temperature",
        names,
        rounded(sky, "Mean [sky]", what, 2),
        rounded(sky, "Min [sky]", hasSun ? "dullest_day" : "clearest_day", 2),
        rounded(sky, "Max [sky]", hasSun ? "brightest_day" : "cloudiest_day", 2),
        rounded(air, "Mean [mean_c]", "mean_c", 1),
        rounded(cold, "Min [coldest_c]", "coldest_hour_c", 1),
        rounded(warm, "Max [warmest_c]", "warmest_hour_c", 1));
  }

  /** One row a year: the mean day of each month. */
  Table byYear() {
    Table cells = days.summarize(SKY, mean).by(YEAR, MONTH).sortAscendingOn(YEAR, MONTH);
    Table whole = days.summarize(SKY, mean).by(YEAR).sortAscendingOn(YEAR);
    Table air = days.summarize(MEAN, mean).by(YEAR).sortAscendingOn(YEAR);
    Table cold = days.summarize(COLDEST, min).by(YEAR).sortAscendingOn(YEAR);
    var years = StringColumn.create(YEAR);
    for (int y = 0; y < calendar.years(); y++) {
      years.append(calendar.isTypical() ? "typical" : Integer.toString(calendar.firstYear() + y));
    }
    Table table =
        Table.create(hasSun ? "Sun by year, kWh/m² a day" : "Cloud cover by year, %", years);
    var values = cells.numberColumn("Mean [sky]");
    for (int m = 0; m < 12; m++) {
      var column = DoubleColumn.create(Say.shortMonth(m + 1));
      for (int y = 0; y < calendar.years(); y++) {
        column.append(round(values.getDouble(y * 12 + m), 2));
      }
      column.setPrintFormatter(formatter(2));
      table.addColumns(column);
    }
    table.addColumns(
        rounded(whole, "Mean [sky]", "all", 2),
        rounded(air, "Mean [mean_c]", "mean_c", 1),
        rounded(cold, "Min [coldest_c]", "coldest_hour_c", 1));
    return table;
  }

  /** Both tables for a terminal. */
  public String text() {
    return plain(byMonth()) + "\n" + plain(byYear());
  }

  public String monthsCsv() {
    return csv(byMonth());
  }

  public String yearsCsv() {
    return csv(byYear());
  }

  /** Columns as narrow as they can be, so that a year of months fits on a terminal. */
  private static String plain(Table table) {
    int columns = table.columnCount();
    var cells = new String[table.rowCount() + 1][columns];
    var width = new int[columns];
    for (int c = 0; c < columns; c++) {
      cells[0][c] = table.column(c).name();
      for (int r = 0; r < table.rowCount(); r++) {
        cells[r + 1][c] = table.getString(r, c);
      }
      for (String[] row : cells) {
        width[c] = Math.max(width[c], row[c].length());
      }
    }
    var out = new StringBuilder(table.name()).append('\n');
    for (String[] row : cells) {
      for (int c = 0; c < columns; c++) {
        out.append("  ").append(" ".repeat(width[c] - row[c].length())).append(row[c]);
      }
      out.append('\n');
    }
    return out.toString();
  }

  private static String csv(Table table) {
    var out = new StringWriter();
    table.write().csv(out);
    return out.toString();
  }

  private static DoubleColumn rounded(Table from, String column, String name, int decimals) {
    var out = DoubleColumn.create(name);
    for (double value : from.numberColumn(column).asDoubleArray()) {
      out.append(round(value, decimals));
    }
    out.setPrintFormatter(formatter(decimals));
    return out;
  }

  private static NumberColumnFormatter formatter(int decimals) {
    return new NumberColumnFormatter(
        new DecimalFormat(
            decimals == 1 ? "0.0" : "0.00", DecimalFormatSymbols.getInstance(Locale.ROOT)));
  }

  private static double round(double value, int decimals) {
    double scale = Math.pow(10.0, decimals);
    return Math.rint(value * scale) / scale;
  }
}
