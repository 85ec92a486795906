package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.published.ValidationData;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SunClockTest {
  private static final HourCalendar YEAR = HourCalendar.typicalYear();

  private static SunClock clock(double[] global, SunPath sun) {
    SunClock clock = SunClock.find(global, sun);
    assertNotNull(clock);
    return clock;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0, 0.5, -0.5, 1.0, -3.25, 8.0, -8.0, 11.0})
  void tellsHowMuchToAddToAWrongClock(double wrongH) {
    for (double latitudeDeg : new double[] {-44.0, 5.0, 52.0}) {
      SunPath sun = SunPath.of(latitudeDeg, 0.0, 0.0, YEAR);
      SunClock clock = clock(SkyChecksTest.year(latitudeDeg, wrongH), sun);
      assertEquals(60.0 * wrongH, clock.shiftMin(), 2.0);
      assertEquals(wrongH != 0.0, clock.isWrong());
      assertEquals(40, clock.days());
    }
  }

  /** A clock that is far from the sun's by law, as in the west of a wide country, is no fault. */
  @Test
  void aZoneFarFromTheSunIsRight() {
    for (double offsetH : new double[] {2.5, -3.0, 11.0}) {
      SunPath sun = SunPath.of(40.0, 0.0, offsetH, YEAR);
      var global = new double[YEAR.hours()];
      for (int h = 0; h < global.length; h++) {
        global[h] = 0.8 * sun.extraterrestrialHorizontalWm2(h);
      }
      assertEquals(0.0, clock(global, sun).shiftMin(), 1.0);
    }
  }

  @Test
  void noClearDaysNoClock() {
    SunPath sun = SunPath.of(47.0, 0.0, 0.0, YEAR);
    assertNull(SunClock.find(new double[YEAR.hours()], sun));
    double[] global = SkyChecksTest.year(47.0, 0.0);
    for (int h = 0; h < global.length; h++) {
      global[h] *= h % 2 == 0 ? 1.0 : 0.4;
    }
    assertNull(SunClock.find(global, sun), "light that flickers");
  }

  /**
   * Own construction on real files (validation data, not shipped), as their heads name the zone and
   * with the zone wrong by half an hour and an hour: never an alarm, always an alarm, and told
   * within eight minutes (a bound chosen after the results were seen). Each year of the longer
   * files stands for itself.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "epw/ETH_Addis.Ababa-Bole.634500_SWERA.epw, 0, 0",
    "epw/NZL_Canterbury-Christchurch.CC.937800_NIWA.epw, 0, 0",
    "epw/PRI_San.Juan.Intl.AP.785260_TMY3.epw, 0, 0",
    "epw/USA_AK_Barrow-Post-Rogers.AP.700260_TMY3.epw, 0, 0",
    "epw/USA_CA_San.Francisco.Intl.AP.724940_TMY3.epw, 0, 0",
    "epw/USA_CO_Denver.Intl.AP.725650_TMY3.epw, 0, 0",
    "epw/USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw, 0, 0",
    "epw/USA_MN_Minneapolis-St.Paul.Intl.AP.726580_TMY3.epw, 0, 0",
    "epw/USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3.epw, 0, 0",
    "measured/de-bilt-2011-2020.csv.gz, 52.10, 5.18",
    "measured/maastricht-2011-2020.csv.gz, 50.91, 5.76",
    "measured/london-2011-2012.csv.gz, 51.51, -0.12",
    "measured/tharandt-1998.csv.gz, 50.96, 13.57",
    "measured/bondville-1998.csv.gz, 40.01, -88.37",
    "measured/ford-dry-lake-2015.csv.gz, 33.65, -115.1",
  })
  void realZonesAreRightAndWrongOnesAreCaught(String file, double north, double east) {
    WeatherSeries weather = WeatherReader.readOnItsOwnClock(ValidationData.file(file), file);
    Double latitudeDeg = weather.source().latitudeDeg();
    Double longitudeDeg = weather.source().longitudeDeg();
    double[] all = weather.globalHorizontalWm2();
    assertNotNull(all);
    HourCalendar calendar = weather.calendar();
    for (int y = 0; y < calendar.years(); y++) {
      double[] global =
          Arrays.copyOfRange(all, calendar.firstHourOfYear(y), calendar.firstHourOfYear(y + 1));
      var one = calendar.isTypical() ? calendar : HourCalendar.of(calendar.firstYear() + y, 1);
      for (double wrongMin : new double[] {0.0, 30.0, -30.0, 60.0, -60.0}) {
        SunPath sun =
            SunPath.of(
                latitudeDeg == null ? north : latitudeDeg,
                longitudeDeg == null ? east : longitudeDeg,
                weather.source().utcOffsetH() + wrongMin / 60.0,
                one);
        SunClock clock = clock(global, sun);
        assertEquals(wrongMin, clock.shiftMin(), 8.0, "year " + y);
        if (wrongMin == 0.0) {
          assertFalse(clock.isWrong(), "false alarm, year " + y + ": " + clock);
        } else {
          assertTrue(clock.isWrong(), clock.toString());
        }
      }
    }
  }
}
