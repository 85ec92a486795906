package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import java.io.IOException;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkyChecksTest {
  private static final HourCalendar YEAR = HourCalendar.typicalYear();

  /** A year with clear and grey days, as a clock that goes wrong by this much would tell it. */
  static double[] year(double latitudeDeg, double wrongH) {
    SunPath sun = SunPath.of(latitudeDeg, 0.0, 0.0, YEAR).later(wrongH);
    var random = new Random(7);
    var global = new double[YEAR.hours()];
    double day = 1.0;
    for (int h = 0; h < global.length; h++) {
      if (h % 24 == 0) {
        day = 0.2 + 0.8 * random.nextDouble();
      }
      double cloud = day > 0.7 ? 1.0 : 0.5 + 0.5 * random.nextDouble();
      global[h] =
          HaurwitzClearSky.globalWm2(sun.cosZenith()[h]) * sun.sunlitShare()[h] * day * cloud;
    }
    return global;
  }

  @Test
  void aGoodYearHasNothingToReport() {
    SkyChecks checks = SkyChecks.of(year(47.0, 0.0), SunPath.of(47.0, 0.0, 0.0, YEAR));
    assertEquals(0, checks.nightHours());
    assertEquals(0, checks.tooBrightHours());
  }

  @Test
  void countsNightLightAndTooMuchLight() {
    SunPath sun = SunPath.of(47.0, 0.0, 0.0, YEAR);
    double[] global = year(47.0, 0.0);
    global[0] = 8.0;
    assertEquals(0, SkyChecks.of(global, sun).nightHours(), "twilight");
    global[0] = 8.1;
    global[23] = 100.0;
    assertEquals(2, SkyChecks.of(global, sun).nightHours());
    int noon = 100 * 24 + 12;
    global[noon] = 1.1 * sun.extraterrestrialHorizontalWm2(noon) + 19.9;
    assertEquals(0, SkyChecks.of(global, sun).tooBrightHours());
    global[noon] += 0.2;
    assertEquals(1, SkyChecks.of(global, sun).tooBrightHours());
  }

  /**
   * Own construction on typical years (validation data, not shipped): a few hours of twilight and
   * cloud edges at most.
   */
  @ParameterizedTest
  @CsvSource({
    "epw/USA_CO_Denver.Intl.AP.725650_TMY3.epw",
    "epw/USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3.epw",
    "epw/USA_MN_Minneapolis-St.Paul.Intl.AP.726580_TMY3.epw",
    "epw/NZL_Canterbury-Christchurch.CC.937800_NIWA.epw",
    "epw/PRI_San.Juan.Intl.AP.785260_TMY3.epw",
    "epw/ETH_Addis.Ababa-Bole.634500_SWERA.epw",
    "epw/USA_AK_Barrow-Post-Rogers.AP.700260_TMY3.epw",
  })
  void realYearsHaveNothingToReport(String file) throws IOException {
    var epw = SkyFixtures.Epw.read(greyspell.published.ValidationData.file(file));
    SunPath sun = SunPath.of(epw.site, YEAR);
    double[] global = java.util.Objects.requireNonNull(epw.weather.globalHorizontalWm2());
    SkyChecks checks = SkyChecks.of(global, sun);
    assertTrue(checks.nightHours() < 24, "night hours " + checks.nightHours());
    assertTrue(checks.tooBrightHours() < 24, "too bright " + checks.tooBrightHours());
  }
}
