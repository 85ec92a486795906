package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.published.ValidationData;
import greyspell.sky.CloudTable.Row;
import greyspell.sky.CloudTable.Season;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CloudTableTest {
  private static final HourCalendar YEARS = HourCalendar.of(2014, 6);

  private static Row row(Season season, double sunDeg, double clear, double covered) {
    var shares = new java.util.ArrayList<Double>();
    for (int okta = 0; okta <= 8; okta++) {
      shares.add(clear + okta / 8.0 * (covered - clear));
    }
    return new Row(season, sunDeg, shares);
  }

  @Test
  void straightLinesBetweenPoints() {
    var table =
        new CloudTable(
            List.of(
                row(Season.ALL, 30.0, 1.0, 0.4),
                row(Season.REST, 50.0, 1.0, 0.6),
                row(Season.WINTER, 10.0, 1.2, 0.2)));
    assertEquals(1.0, table.clearShare(0.0, 30.0, false), 1e-12);
    assertEquals(0.4, table.clearShare(1.0, 30.0, false), 1e-12);
    assertEquals(0.5, table.clearShare(1.0, 40.0, false), 1e-12, "half way up");
    assertEquals(0.75, table.clearShare(0.5, 40.0, false), 1e-12, "half covered too");
    assertEquals(0.6, table.clearShare(1.0, 80.0, false), 1e-12, "above the rows");
    assertEquals(0.4, table.clearShare(1.0, 5.0, false), 1e-12, "below the rows");
    assertEquals(0.2, table.clearShare(1.0, 5.0, true), 1e-12, "winter has its own");
    assertEquals(0.3, table.clearShare(1.0, 20.0, true), 1e-12);
  }

  @Test
  void wintersAreOfTheHemisphere() {
    assertTrue(CloudTable.isWinter(12, true) && !CloudTable.isWinter(12, false));
    assertTrue(CloudTable.isWinter(6, false) && !CloudTable.isWinter(6, true));
  }

  @Test
  void refusesTablesWithHoles() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new CloudTable(List.of(row(Season.WINTER, 10.0, 1.0, 0.4))));
    var one = row(Season.ALL, 10.0, 1.0, 0.4);
    assertThrows(IllegalArgumentException.class, () -> new CloudTable(List.of(one, one)));
    assertThrows(
        IllegalArgumentException.class, () -> new Row(Season.ALL, 10.0, List.of(1.0, 0.4)));
    assertThrows(IllegalArgumentException.class, () -> row(Season.ALL, 10.0, Double.NaN, 0.4));
  }

  /** Weather in which cloud leaves a known share: the fit must find it again. */
  @Test
  void aFitFindsTheTableThatMadeTheWeather() {
    var truth =
        new CloudTable(
            List.of(row(Season.WINTER, 20.0, 1.0, 0.3), row(Season.REST, 20.0, 1.0, 0.5)));
    Site site = SkyFixtures.site(-30.0, 171.0, 300.0, 12.0);
    SunPath sun = SunPath.of(site, YEARS);
    var random = new Random(5);
    var columns = new WeatherSeries.Columns();
    double[] cloud = new double[YEARS.hours()];
    for (int h = 0; h < cloud.length; h++) {
      cloud[h] = random.nextInt(9) / 8.0;
    }
    columns.cloudShare = cloud;
    WeatherSeries cloudy = SkyFixtures.weather(YEARS, columns);
    assertNull(CloudCalibration.find(cloudy, sun, site), "no irradiance to fit on");
    columns.globalHorizontalWm2 =
        Radiation.fromCloud(cloudy, sun, site, SkyChoices.usual().withTable(truth));
    WeatherSeries weather = SkyFixtures.weather(YEARS, columns);
    CloudCalibration found = CloudCalibration.find(weather, sun, site);
    assertNotNull(found);
    for (Row row : found.table().rows()) {
      for (int okta = 0; okta <= 8; okta++) {
        boolean isWinter = row.season() == Season.WINTER;
        assertEquals(truth.clearShare(okta / 8.0, 20.0, isWinter), row.shares().get(okta), 0.0011);
      }
    }
    assertNotNull(found.onOtherYears());
    assertEquals(0.0, found.onOtherYears().yearShare(), 0.001);
    assertTrue(Math.abs(found.classic().winterShare()) > 0.1);
  }

  private static WeatherSeries measured(String name) {
    return WeatherReader.read(ValidationData.file("measured/" + name), name, 0.0);
  }

  /** The table in the program is the fit on the station (validation data, not shipped). */
  @Test
  void lowlandIsTheFitOnItsStation() {
    WeatherSeries weather = measured("de-bilt-2011-2020.csv.gz");
    Site site = SkyFixtures.site(52.10, 5.18, 2.0, 0.0);
    CloudTable fit =
        CloudFit.find(weather, SunPath.of(site, weather.calendar()), site, CloudFit.Years.ALL);
    assertNotNull(fit);
    assertEquals(fit.rows(), CloudTable.lowland().rows());
  }

  /**
   * On a station that neither was fitted on (validation data, not shipped). Own construction; the
   * bounds were chosen after the results (table: year 0.0 %, dark four months -2.2 %, months 10.8
   * %; curve: -16.0 %, -23.1 %, 21.6 %) had been seen, so they hold what was found and prove no
   * more.
   */
  @Test
  void theTableMeetsAnotherStationWhereTheCurveIsTooDark() {
    WeatherSeries weather = measured("maastricht-2011-2020.csv.gz");
    Site site = SkyFixtures.site(50.91, 5.76, 114.0, 0.0);
    SunPath sun = SunPath.of(site, weather.calendar());
    SkyChoices usual = SkyChoices.usual();
    CloudErrors curve = CloudErrors.of(weather, sun, site, usual);
    CloudErrors table = CloudErrors.of(weather, sun, site, usual.withTable(CloudTable.lowland()));
    assertEquals(0.0, table.yearShare(), 0.005);
    assertEquals(-0.023, table.winterShare(), 0.005);
    assertEquals(0.108, table.monthsShare(), 0.005);
    assertEquals(-0.160, curve.yearShare(), 0.005);
    assertEquals(-0.231, curve.winterShare(), 0.005);
    assertEquals(0.216, curve.monthsShare(), 0.005);
    assertTrue(table.daysShare() < curve.daysShare() && table.hoursShare() < curve.hoursShare());
  }
}
