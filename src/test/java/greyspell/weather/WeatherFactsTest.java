package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.calendar.HourCalendar;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One year of 100 W/m2 and 10 C, changed in a few places. */
class WeatherFactsTest {
  private static final double ROUNDING = 1e-9;
  private static final WeatherSource SOURCE =
      new WeatherSource("x", "test", "", null, null, null, 0.0);

  private static WeatherSeries series(double[] globalWm2, double[] temperatureC) {
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = globalWm2;
    columns.airTemperatureC = temperatureC;
    return new WeatherSeries(HourCalendar.of(2019, 1), SOURCE, GapReport.NONE, columns);
  }

  private static double[] all(double value) {
    var values = new double[8760];
    Arrays.fill(values, value);
    return values;
  }

  private static double[] risingC() {
    var values = new double[8760];
    for (int hour = 0; hour < values.length; hour++) {
      values[hour] = hour * 0.001;
    }
    return values;
  }

  @Test
  void monthsAreMeansOfDays() {
    double[] globalWm2 = all(100.0);
    Arrays.fill(globalWm2, 0, 31 * 24, 50.0);
    double[][] months = WeatherFacts.monthlyDailyGlobalKwhm2(series(globalWm2, risingC()));
    assertEquals(1.2, months[0][0], ROUNDING);
    assertEquals(2.4, months[0][1], ROUNDING);
    assertEquals(1.2, WeatherFacts.overYears(months)[0], ROUNDING);
  }

  @Test
  void dullSpellsComeLongestFirst() {
    double[] globalWm2 = all(100.0);
    Arrays.fill(globalWm2, 10 * 24, 13 * 24, 10.0);
    Arrays.fill(globalWm2, 360 * 24, 365 * 24, 10.0);
    assertEquals(
        List.of(new WeatherFacts.DullSpell(360 * 24, 5), new WeatherFacts.DullSpell(10 * 24, 3)),
        WeatherFacts.dullSpells(series(globalWm2, risingC()), 1000.0));
  }

  @Test
  void findsJumpsAndRepeatedDays() {
    double[] temperatureC = risingC();
    temperatureC[100] += 20.0;
    System.arraycopy(temperatureC, 200 * 24, temperatureC, 201 * 24, 24);
    WeatherSeries series = series(all(0.0), temperatureC);
    List<WeatherFacts.TemperatureJump> jumps = WeatherFacts.temperatureJumps(series, 10.0);
    assertEquals(2, jumps.size());
    assertEquals(100, jumps.get(0).hour());
    assertEquals(20.001, jumps.get(0).stepK(), ROUNDING);
    assertEquals(-19.999, jumps.get(1).stepK(), ROUNDING);
    assertEquals(List.of(201 * 24), WeatherFacts.repeatedDays(series));
    assertEquals(100, WeatherFacts.hourOfMost(temperatureC));
    assertEquals(0, WeatherFacts.hourOfLeast(temperatureC));
  }

  @Test
  void refusesToSumWhatIsNotThere() {
    var columns = new WeatherSeries.Columns();
    columns.cloudShare = all(0.5);
    columns.airTemperatureC = risingC();
    var cloudOnly = new WeatherSeries(HourCalendar.of(2019, 1), SOURCE, GapReport.NONE, columns);
    assertThrows(IllegalArgumentException.class, () -> WeatherFacts.dailyGlobalWhm2(cloudOnly));
  }
}
