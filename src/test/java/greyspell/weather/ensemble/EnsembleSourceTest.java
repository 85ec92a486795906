package greyspell.weather.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.Monthly;
import greyspell.quantity.BadInput;
import greyspell.weather.WeatherFacts;
import greyspell.weather.WeatherSeries;
import greyspell.weather.WeatherSource;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Winters from years: whole ones as they are, spliced ones that could have been. */
class EnsembleSourceTest {
  private static final int YEARS = 8;

  /** Made years stand in for measured ones. */
  private static final WeatherSeries SERIES =
      EnsembleSeries.of(
          EnsembleSource.of(Climates.maritime(), SynthesisChoices.USUAL, YEARS, 3), 2011, YEARS);

  private static final ClimateSite SITE = Climates.maritime().site();

  private static double[] global(WeatherSeries series) {
    double[] column = series.globalHorizontalWm2();
    assertNotNull(column);
    return column;
  }

  @Test
  void wholeWintersAreThoseOfTheFile() {
    WinterSource source = EnsembleSource.measured(SERIES, SITE);
    assertEquals(YEARS - 1, source.years());
    assertEquals("2012/13", source.name(1));
    var year = new WeatherYear();
    source.fill(1, year);
    int autumn = SERIES.calendar().hourOf(2012, 12, 31, 0);
    int spring = SERIES.calendar().hourOf(2013, 1, 1, 0);
    assertArrayEquals(
        Arrays.copyOfRange(global(SERIES), autumn, autumn + 24),
        Arrays.copyOfRange(year.globalHorizontalWm2(), 364 * 24, 365 * 24),
        0.0);
    assertArrayEquals(
        Arrays.copyOfRange(SERIES.airTemperatureC(), spring, spring + 24 * 31),
        Arrays.copyOfRange(year.airTemperatureC(), 0, 24 * 31),
        0.0);
    assertEquals(181 * 24, year.seamHour());
    assertThrows(IllegalArgumentException.class, () -> source.fill(YEARS - 1, year));
  }

  @Test
  void aSeriesHoldsTheWintersWholeAndTheMeansExactly() {
    WinterSource source = EnsembleSource.of(Climates.maritime(), SynthesisChoices.USUAL, YEARS, 3);
    var year = new WeatherYear();
    source.fill(4, year);
    int december = SERIES.calendar().hourOf(2015, 12, 1, 0);
    int january = SERIES.calendar().hourOf(2016, 1, 1, 0);
    assertArrayEquals(
        Arrays.copyOfRange(year.globalHorizontalWm2(), 334 * 24, 365 * 24),
        Arrays.copyOfRange(global(SERIES), december, december + 31 * 24),
        0.0);
    assertArrayEquals(
        Arrays.copyOfRange(year.globalHorizontalWm2(), 0, 31 * 24),
        Arrays.copyOfRange(global(SERIES), january, january + 31 * 24),
        0.0);
    double[] means = WeatherFacts.overYears(WeatherFacts.monthlyDailyGlobalKwhm2(SERIES));
    for (int month = 1; month <= 12; month++) {
      double wanted = Climates.maritime().dailyGlobalWhm2().in(month) / 1000.0;
      // leap days are means of their neighbours
      assertEquals(wanted, means[month - 1], month == 2 ? 0.02 : 1e-9);
    }
    int leapDay = SERIES.calendar().hourOf(2012, 2, 29, 12);
    double beside = 0.5 * (global(SERIES)[leapDay - 24] + global(SERIES)[leapDay + 24]);
    assertEquals(beside, global(SERIES)[leapDay], 1e-9);
    assertTrue(WeatherFacts.temperatureJumps(SERIES, 8.0).isEmpty());
  }

  @Test
  void splicedHoursAreMeasuredHoursInTheirSeason() {
    WinterSource source = EnsembleSource.spliced(SERIES, SITE, 300, 5);
    var days = new MeasuredDays(SERIES, SITE);
    var year = new WeatherYear();
    int moved = 0;
    for (int y = 0; y < 20; y++) {
      source.fill(y, year);
      for (int day = 0; day < 365; day++) {
        double[] dayC = Arrays.copyOfRange(year.airTemperatureC(), day * 24, day * 24 + 24);
        boolean isFound = false;
        for (int donor = 0; donor < days.days() && !isFound; donor++) {
          int off = Math.abs(donor % 365 - day);
          isFound =
              Math.min(off, 365 - off) <= 5
                  && Arrays.equals(
                      dayC, Arrays.copyOfRange(days.airTemperatureC, donor * 24, donor * 24 + 24));
        }
        moved += isFound ? 0 : 1;
      }
      for (int hour = 0; hour < WeatherYear.HOURS; hour++) {
        double wm2 = year.globalHorizontalWm2()[hour];
        assertTrue(wm2 >= 0.0 && wm2 <= days.sun.aboveWm2[hour] + 1e-9, "hour " + hour);
      }
    }
    // only the day after a joint is bent: about one in forty
    assertTrue(moved > 60 && moved < 20 * 18, "days that are no measured day: " + moved);
  }

  @Test
  void splicedYearsAreManyAndDifferentAndTheSameAgain() {
    WinterSource source = EnsembleSource.spliced(SERIES, SITE, 300, 5);
    var sums = new double[300];
    var year = new WeatherYear();
    for (int y = 299; y >= 0; y--) {
      source.fill(y, year);
      sums[y] = Arrays.stream(year.globalHorizontalWm2()).sum();
    }
    assertTrue(Arrays.stream(sums).distinct().count() > 290);
    EnsembleSource.spliced(SERIES, SITE, 300, 5).fill(123, year);
    assertEquals(sums[123], Arrays.stream(year.globalHorizontalWm2()).sum(), 0.0);
    // no part of the years is favoured: the mean stays that of the file
    double perYear = Arrays.stream(global(SERIES)).sum() / SERIES.calendar().days() * 365.0;
    assertEquals(perYear, Arrays.stream(sums).average().orElseThrow(), 0.02 * perYear);
  }

  /** Joints are continuous: no step that measured hours do not have. */
  @Test
  void jointsHaveNoSteps() {
    double measuredK = largestStepK(SERIES.airTemperatureC(), -1);
    WinterSource source = EnsembleSource.spliced(SERIES, SITE, 100, 5);
    var year = new WeatherYear();
    for (int y = 0; y < 100; y++) {
      source.fill(y, year);
      assertTrue(largestStepK(year.airTemperatureC(), year.seamHour()) < measuredK + 0.6, "" + y);
    }
  }

  private static double largestStepK(double[] temperatureC, int seamHour) {
    double largest = 0.0;
    for (int hour = 1; hour < temperatureC.length; hour++) {
      if (hour != seamHour) {
        largest = Math.max(largest, Math.abs(temperatureC[hour] - temperatureC[hour - 1]));
      }
    }
    return largest;
  }

  @Test
  void fewYearsAreToldToBeTooFew() {
    WeatherSeries one =
        EnsembleSeries.of(
            EnsembleSource.of(Climates.maritime(), SynthesisChoices.USUAL, 1, 3), 2011, 1);
    WinterSource like = EnsembleSource.like(one, SITE, 50, 5);
    assertTrue(like.notes().get(0).contains("too few to tell a bad winter"), "" + like.notes());
    assertTrue(like.describe().startsWith("made from monthly means"));
    var figures = new WinterFigures(like, 50, 700.0);
    double spread =
        WinterFigures.quantile(figures.decemberKwhm2, 0.9)
            / WinterFigures.quantile(figures.decemberKwhm2, 0.1);
    assertTrue(spread > 1.3, "variance by rule: " + spread);
    assertTrue(
        EnsembleSource.like(SERIES, SITE, 50, 5).describe().startsWith("spliced from 8 years"));
    assertThrows(IllegalArgumentException.class, () -> EnsembleSource.spliced(one, SITE, 50, 5));
    assertEquals(1, EnsembleSource.measured(one, SITE).years());
  }

  @Test
  void theSouthHasItsSeamAtNewYear() {
    WinterSource source = EnsembleSource.of(Climates.south(), SynthesisChoices.USUAL, 4, 3);
    WeatherSeries series = EnsembleSeries.of(source, 2011, 4);
    WinterSource measured = EnsembleSource.measured(series, source.site());
    assertEquals(4, measured.years());
    assertEquals("2013", measured.name(2));
    var year = new WeatherYear();
    measured.fill(2, year);
    assertEquals(0, year.seamHour());
    assertEquals(
        global(series)[series.calendar().hourOf(2013, 6, 1, 12)],
        year.globalHorizontalWm2()[151 * 24 + 12],
        0.0);
    EnsembleSource.spliced(series, source.site(), 20, 3).fill(19, year);
    assertFalse(Arrays.stream(year.globalHorizontalWm2()).anyMatch(w -> Double.isNaN(w)));
  }

  @Test
  void aPlaceMustBeKnown() {
    var source = new WeatherSource("w.csv", "plain CSV", "", null, null, null, 0.0);
    BadInput said = assertThrows(BadInput.class, () -> ClimateSite.of(source, null, 5.0));
    assertTrue(said.faults().get(0).expected().contains("latitude and longitude are needed"));
    assertThrows(BadInput.class, () -> ClimateSite.of(source, 78.0, 5.0));
    assertEquals(52.0, ClimateSite.of(source, 52.0, 5.0).latitudeDeg(), 0.0);
  }

  @Test
  void theSpreadOfYearsIsThatOfTheirMonthsAndMadeYearsMeetIt() {
    Monthly spread = YearSpread.of(SERIES);
    var december = new double[YEARS];
    for (int y = 0; y < YEARS; y++) {
      december[y] = WeatherFacts.monthlyDailyGlobalKwhm2(SERIES)[y][11];
    }
    double wanted = deviation(december);
    assertEquals(wanted, spread.in(12), 1e-12);
    int many = 400;
    WinterSource made =
        EnsembleSource.of(
            Climates.maritime(), SynthesisChoices.USUAL.withYearSpread(spread), many, 5);
    var decembers = new double[many];
    var year = new WeatherYear();
    for (int y = 0; y < many; y++) {
      made.fill(y, year);
      for (int h = 334 * 24; h < 365 * 24; h++) {
        decembers[y] += year.globalHorizontalWm2()[h];
      }
    }
    assertEquals(wanted, deviation(decembers), 0.15 * wanted);
    WeatherSeries few = EnsembleSeries.of(made, 2011, YearSpread.LEAST_YEARS - 1);
    assertThrows(IllegalArgumentException.class, () -> YearSpread.of(few));
  }

  /** Over the mean. */
  private static double deviation(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    double square = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(square / (values.length - 1)) / mean;
  }
}
