package greyspell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.weather.GapReport;
import greyspell.weather.WeatherSeries;
import greyspell.weather.WeatherSource;
import org.junit.jupiter.api.Test;

class WeatherTablesTest {
  /** Each hour 100 W/m² times the month: 2.4 kWh/m² a day times the month; air = month in °C. */
  private static WeatherSeries steps(HourCalendar calendar, boolean hasSun) {
    var columns = new WeatherSeries.Columns();
    var sky = new double[calendar.hours()];
    var air = new double[calendar.hours()];
    for (int h = 0; h < sky.length; h++) {
      sky[h] = hasSun ? 100.0 * calendar.month(h) : calendar.month(h) / 20.0;
      air[h] = calendar.month(h) + (calendar.hourOfDay(h) == 5 ? -10.0 : 0.0);
    }
    columns.airTemperatureC = air;
    if (hasSun) {
      columns.globalHorizontalWm2 = sky;
    } else {
      columns.cloudShare = sky;
    }
    return new WeatherSeries(
        calendar,
        new WeatherSource("steps.csv", "plain CSV", "", null, null, null, 0.0),
        GapReport.NONE,
        columns);
  }

  @Test
  void monthsHoldMeansAndExtremes() {
    var lines =
        WeatherTables.of(steps(HourCalendar.of(2023, 2), true)).monthsCsv().lines().toList();
    assertEquals(
        "month,sun_kwh_m2_day,dullest_day,brightest_day,mean_c,coldest_hour_c,warmest_hour_c",
        lines.get(0));
    assertEquals("Jan,2.4,2.4,2.4,0.6,-9.0,1.0", lines.get(1));
    assertEquals("Dec,28.8,28.8,28.8,11.6,2.0,12.0", lines.get(12));
    assertEquals(13, lines.size());
  }

  @Test
  void yearsHoldTheMonthsAcross() {
    var tables = WeatherTables.of(steps(HourCalendar.of(2023, 2), true));
    var lines = tables.yearsCsv().lines().toList();
    assertTrue(lines.get(0).startsWith("year,Jan,Feb,"));
    assertTrue(lines.get(2).startsWith("2024,2.4,4.8,7.2,"), lines.get(2));
    assertTrue(tables.text().contains("peak-sun hours"));
  }

  @Test
  void cloudStandsInWhereThereIsNoSun() {
    var tables = WeatherTables.of(steps(HourCalendar.typicalYear(), false));
    assertTrue(tables.monthsCsv().startsWith("month,cloud_pct,clearest_day,cloudiest_day,"));
    assertTrue(tables.monthsCsv().contains("\nDec,60.0,"), tables.monthsCsv());
    assertTrue(tables.yearsCsv().contains("\ntypical,5.0,"), tables.yearsCsv());
  }
}
