package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.Monthly;
import greyspell.sky.UsualSky.LeftOut;
import greyspell.weather.WeatherReader;
import greyspell.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

final class UsualSkyTest {
  private static final Site SITE =
      new Site("test", 53.2, 6.1, 60.0, 1.0, Monthly.constant(0.2), Horizon.OPEN, null, null);
  private static final SkyChoices CHOICES = SkyChoices.usual();
  private final WeatherSeries weather =
      WeatherReader.read(Path.of("weather-samples/grey-maritime.csv"), "grey-maritime.csv", 1.0);
  private final SunPath sun = SunPath.of(SITE, weather.calendar());
  private final Radiation came = Radiation.of(weather, sun, SITE, CHOICES);
  private final UsualSky sky = UsualSky.of(List.of(came), List.of(sun), SITE, CHOICES);
  private final double[] cloudlessWm2 = CloudlessHours.globalWm2(sun, SITE.elevationM(), CHOICES);

  @Test
  void withoutAnyCloudTheSkyIsClear() {
    double[] clear = sky.globalWm2(came, sun, sun, new LeftOut(true, true, false));
    for (int h = 0; h < clear.length; h++) {
      double expected = Math.max(cloudlessWm2[h], came.globalHorizontalWm2()[h]);
      assertEquals(expected, clear[h], 1e-9);
    }
  }

  @Test
  void usualCloudBringsTheSameLightOverTheSeasonSpreadEvenly() {
    double[] usual = sky.globalWm2(came, sun, sun, new LeftOut(false, true, false));
    for (int month = 1; month <= 12; month++) {
      double usualSum = 0.0, cameSum = 0.0;
      for (int h = 0; h < usual.length; h++) {
        if (weather.calendar().month(h) == month) {
          usualSum += usual[h];
          cameSum += came.globalHorizontalWm2()[h];
        }
      }
      // the window reaches half a month over the ends of each month
      assertEquals(1.0, usualSum / cameSum, 0.12, "month " + month);
      double share = sky.usualShare(30 * month - 15);
      assertTrue(share > 0.2 && share < 0.9, "share " + share);
    }
    for (int h = 0; h < usual.length; h++) {
      double share = sky.usualShare(weather.calendar().dayOfYear(h));
      assertEquals(share * cloudlessWm2[h], cloudlessWm2[h] > 0.0 ? usual[h] : 0.0, 1e-9);
    }
  }

  @Test
  void withoutTheUsualCloudNoHourIsDuller() {
    double[] left = sky.globalWm2(came, sun, sun, new LeftOut(true, false, false));
    int brighter = 0;
    for (int h = 0; h < left.length; h++) {
      assertTrue(left[h] >= came.globalHorizontalWm2()[h] - 1e-9);
      brighter += left[h] > came.globalHorizontalWm2()[h] + 1.0 ? 1 : 0;
    }
    assertTrue(brighter > left.length / 4);
  }

  @Test
  void midsummersSunShinesThroughEachDaysOwnCloud() {
    LeftOut out = new LeftOut(false, false, true);
    SunPath longDays = sky.sun(sun, out);
    double[] light = sky.globalWm2(came, sun, longDays, out);
    int midsummer = weather.calendar().hourOf(weather.calendar().firstYear(), 6, 21, 0);
    for (int day = 0; day < weather.calendar().days(); day++) {
      double cloudless = 0.0, was = 0.0, is = 0.0, summer = 0.0;
      for (int i = 0; i < 24; i++) {
        int h = day * 24 + i;
        assertEquals(sun.sunlitShare()[midsummer + i], longDays.sunlitShare()[h], 0.0);
        cloudless += cloudlessWm2[h];
        was += cloudlessWm2[h] > 0.0 ? came.globalHorizontalWm2()[h] : 0.0;
        is += light[h];
        summer += cloudlessWm2[midsummer + i];
      }
      assertEquals(was / cloudless, is / summer, 1e-9);
    }
  }
}
