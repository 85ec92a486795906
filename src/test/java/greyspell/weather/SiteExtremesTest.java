package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.published.ValidationData;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SiteExtremesTest {
  private static final String PLACE = "LOCATION,Tarn Head,-,ARD,Made,1,53.1,-1.9,0.0,210.0";

  /** Invented figures in the order of such a header. */
  private static final String LINE =
      "DESIGN CONDITIONS,1,Handbook,,Heating,12,-2.6,Extremes,10,9,8,27,-7.5,31,3,2,-10,33,-12,34.5,-14,36,-17.4,37.6";

  @Test
  void takesTheFiftyYearFigures() {
    assertEquals(
        new SiteExtremes(-17.4, 37.6, "Tarn Head", 53.1, -1.9, 210.0),
        SiteExtremes.parse(PLACE, LINE));
  }

  /** Headers of another age: one figure fewer before the pairs, one more behind. */
  @Test
  void takesThePairsWhereTheyStand() {
    String later = LINE.replace("10,9,8,27,", "10,9,8,").concat(",-16.5");
    assertEquals(
        new SiteExtremes(-17.4, 37.6, "Tarn Head", 53.1, -1.9, 210.0),
        SiteExtremes.parse(PLACE, later));
  }

  /** Pairs that do not spread with the years are something else. */
  @Test
  void takesNothingWhereThePairsDoNotSpread() {
    assertNull(SiteExtremes.parse(PLACE, LINE.replace("-12,34.5", "-9,34.5")));
    assertNull(SiteExtremes.parse(PLACE, LINE.replace("-12,34.5", "-12,32")));
    assertNull(SiteExtremes.parse(PLACE, LINE.replace("37.6", "64")));
    assertNull(SiteExtremes.parse(PLACE, LINE.replace("-7.5,31,3,2", "-7.5,31,-3,2")));
  }

  @Test
  void takesNothingThatIsMissingOrCannotBe() {
    assertNull(SiteExtremes.parse(PLACE, "DESIGN CONDITIONS,0"));
    assertNull(SiteExtremes.parse(PLACE, LINE.substring(0, LINE.lastIndexOf(','))));
    assertNull(SiteExtremes.parse(PLACE, LINE.replace("-17.4", "17.4")));
    assertNull(SiteExtremes.parse(PLACE, LINE.replace("37.6", "n/a")));
    assertNull(SiteExtremes.parse(PLACE.replace("210.0", ""), LINE));
    assertNull(SiteExtremes.parse("LOCATION,Tarn Head", LINE));
    assertNull(SiteExtremes.find(Path.of("weather-samples/grey-maritime.csv")));
    assertNull(SiteExtremes.find(Path.of("no-such-file")));
  }

  /** A typical year stays within its place's 50-year extremes. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "epw/USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3.epw",
        "epw/USA_MN_Minneapolis-St.Paul.Intl.AP.726580_TMY3.epw",
        "epw/NZL_Canterbury-Christchurch.CC.937800_NIWA.epw"
      })
  void aTypicalYearLiesWithin(String name) {
    Path file = ValidationData.file(name);
    SiteExtremes extremes = SiteExtremes.find(file);
    assertNotNull(extremes);
    for (double airC : WeatherReader.readOnItsOwnClock(file, name).airTemperatureC()) {
      assertTrue(airC >= extremes.lowC() && airC <= extremes.highC());
    }
  }
}
