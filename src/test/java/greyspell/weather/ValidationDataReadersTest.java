package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.published.ValidationData;
import greyspell.quantity.BadInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reads the validation data (not shipped): real stations and typical years. The expected figures
 * were worked out from the files apart from this program, when the data was gathered; they are held
 * to their last printed digit.
 */
class ValidationDataReadersTest {
  private static final double HALF_HUNDREDTH = 0.005;
  private static final double ONE_DEGREE = 1.0;

  private static WeatherSeries read(String file, double siteUtcOffsetH) {
    return WeatherReader.read(ValidationData.file(file), file, siteUtcOffsetH);
  }

  private static double december(WeatherSeries series, int year) {
    return WeatherFacts.monthlyDailyGlobalKwhm2(series)[year - series.calendar().firstYear()][11];
  }

  private static double lowestC(WeatherSeries series) {
    double[] temperatureC = series.airTemperatureC();
    return temperatureC[WeatherFacts.hourOfLeast(temperatureC)];
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          measured/de-bilt-2011-2020.csv.gz    | 0  | 2011 | 10 | 4  | 3
          measured/maastricht-2011-2020.csv.gz | 0  | 2011 | 10 | 41 | 21
          measured/london-2011-2012.csv.gz     | 0  | 2011 | 2  | 0  | 0
          measured/tharandt-1998.csv.gz        | 1  | 1998 | 1  | 80 | 43
          measured/bondville-1998.csv.gz       | -6 | 1998 | 1  | 24 | 18
          measured/ford-dry-lake-2015.csv.gz   | -8 | 2015 | 1  | 2  | 1
          """)
  void readsMeasuredYears(
      String file, double offsetH, int firstYear, int years, int missing, int longest) {
    WeatherSeries series = read(file, offsetH);
    assertEquals(firstYear, series.calendar().firstYear());
    assertEquals(years, series.calendar().years());
    assertEquals(missing, series.gaps().missingHours());
    assertEquals(longest, series.gaps().longestGapHours());
    assertEquals(offsetH, series.source().utcOffsetH(), 0.0);
  }

  @Test
  void deBiltDecembersSwingFromDullToBright() {
    WeatherSeries series = read("measured/de-bilt-2011-2020.csv.gz", 0.0);
    assertEquals(0.34, december(series, 2017), HALF_HUNDREDTH);
    assertEquals(0.60, december(series, 2019), HALF_HUNDREDTH);
    assertEquals(48, WeatherFacts.dullSpells(series, 1000.0).get(0).days());
  }

  @Test
  void maastrichtHadFortySixDullDays() {
    WeatherSeries series = read("measured/maastricht-2011-2020.csv.gz", 0.0);
    assertEquals(0.35, december(series, 2017), HALF_HUNDREDTH);
    assertEquals(0.78, december(series, 2016), HALF_HUNDREDTH);
    WeatherFacts.DullSpell longest = WeatherFacts.dullSpells(series, 1000.0).get(0);
    assertEquals(46, longest.days());
    assertEquals("2017-11-29", series.calendar().date(longest.firstHour()).toString());
    assertTrue(
        series
            .gaps()
            .notes()
            .contains(
                "cloud cover: 1 impossible value taken as missing, the first in line 81483: \"10\""),
        series.gaps().toString());
  }

  /** December summed apart from the file's rows: 49.562 kWh/m2 in 31 days. */
  @Test
  void bondvilleDecemberIsTheSumOfItsRows() {
    WeatherSeries series = read("measured/bondville-1998.csv.gz", -6.0);
    assertEquals(49.562 / 31.0, december(series, 1998), 0.0005 / 31.0);
  }

  @Test
  void lyngbyIsRefusedWithEachGap() {
    var refusal =
        assertThrows(BadInput.class, () -> read("measured/lyngby-2015-2025-gaps.csv.gz", 1.0));
    String message = refusal.getMessage();
    assertNotNull(message);
    assertTrue(
        message.contains(
            "global horizontal irradiance: no value for 27048 hours, from 2021-03-01 01:00 to"
                + " 2024-04-01 01:00 (UTC+1)"),
        message);
    assertTrue(
        message.contains(
            "air temperature: no value for 489 hours, from 2017-12-22 01:00 to 2018-01-11 10:00"),
        message);
    assertTrue(message.contains("free of such runs: 2016\n"), message);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ETH_Addis.Ababa-Bole.634500_SWERA                 | 3   | false
          NZL_Canterbury-Christchurch.CC.937800_NIWA        | 12  | false
          PRI_San.Juan.Intl.AP.785260_TMY3                  | -4  | true
          USA_AK_Barrow-Post-Rogers.AP.700260_TMY3          | -9  | true
          USA_CA_San.Francisco.Intl.AP.724940_TMY3          | -8  | true
          USA_CO_Denver.Intl.AP.725650_TMY3                 | -7  | true
          USA_IL_Chicago-OHare.Intl.AP.725300_TMY3          | -6  | true
          USA_MN_Minneapolis-St.Paul.Intl.AP.726580_TMY3    | -6  | true
          USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3         | -8  | true
          """)
  void readsTypicalYears(String name, double offsetH, boolean hasSnow) {
    WeatherSeries series = read("epw/" + name + ".epw", offsetH);
    assertTrue(series.calendar().isTypical());
    assertEquals(8760, series.hours());
    assertEquals(0, series.gaps().missingHours());
    assertNotNull(series.directNormalWm2());
    assertNotNull(series.diffuseHorizontalWm2());
    assertNotNull(series.windMs());
    assertEquals(hasSnow, series.snowDepthM() != null);
    assertEquals(offsetH, series.source().utcOffsetH(), 0.0);
  }

  @Test
  void typicalYearsAreAsGathered() {
    WeatherSeries seattle = read("epw/USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3.epw", -8.0);
    assertEquals(0.89, december(seattle, seattle.calendar().firstYear()), HALF_HUNDREDTH);
    assertEquals(8, WeatherFacts.dullSpells(seattle, 1000.0).get(0).days());
    WeatherSeries minneapolis =
        read("epw/USA_MN_Minneapolis-St.Paul.Intl.AP.726580_TMY3.epw", -6.0);
    assertEquals(-31.0, lowestC(minneapolis), ONE_DEGREE);
    WeatherSeries barrow = read("epw/USA_AK_Barrow-Post-Rogers.AP.700260_TMY3.epw", -9.0);
    double[] months = WeatherFacts.monthlyDailyGlobalKwhm2(barrow)[0];
    assertEquals(0.0, months[11], HALF_HUNDREDTH);
    assertEquals(0.0, months[0], HALF_HUNDREDTH);
    WeatherSeries addis = read("epw/ETH_Addis.Ababa-Bole.634500_SWERA.epw", 3.0);
    double[] year = WeatherFacts.monthlyDailyGlobalKwhm2(addis)[0];
    for (double month : year) {
      assertTrue(month >= year[6], "July is the dullest month");
    }
  }

  /** ASHRAE 140-2020: the weather drivers are Denver's typical year, horizontal 1663 to 1670. */
  @ParameterizedTest
  @CsvSource({"WD100", "WD600"})
  void weatherDriversGiveTheStandardsYear(String name) {
    WeatherSeries series = read("standard140/" + name + ".epw", -7.0);
    double[] globalWm2 = series.globalHorizontalWm2();
    assertNotNull(globalWm2);
    double kwhm2 = 0.0;
    for (double wm2 : globalWm2) {
      kwhm2 += wm2 / 1000.0;
    }
    assertTrue(kwhm2 >= 1662.5 && kwhm2 < 1670.5, "annual " + kwhm2);
  }
}
