package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.weather.WeatherSeries;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RadiationTest {
  private static final HourCalendar YEAR = HourCalendar.typicalYear();
  private static final Site SITE = SkyFixtures.site(47.6, 0.0, 100.0, 0.0);
  private static final SunPath SUN = SunPath.of(SITE, YEAR);
  private static final int NOON = 172 * 24 + 12;

  @Test
  void takesMeasuredBeamAndSkyAsTheyAre() {
    double[] cos = SUN.cosZenith();
    Radiation got = at(NOON, 800.0 * cos[NOON] + 100.0, 800.0, 100.0);
    assertEquals(800.0, got.directNormalWm2()[NOON]);
    assertEquals(100.0, got.diffuseHorizontalWm2()[NOON]);
    assertEquals(0, got.resplitHours());
  }

  @Test
  void leavesSmallDisagreementAlone() {
    double global = 1.03 * (800.0 * SUN.cosZenith()[NOON] + 100.0);
    Radiation got = at(NOON, global, 800.0, 100.0);
    assertEquals(800.0, got.directNormalWm2()[NOON]);
    assertEquals(global, got.globalHorizontalWm2()[NOON]);
  }

  @Test
  void splitsAnewWhatCannotBeTrue() {
    Radiation got = at(NOON, 300.0, 800.0, 100.0);
    assertEquals(1, got.resplitHours());
    Radiation alone = at(NOON, 300.0, null, null);
    assertEquals(alone.directNormalWm2()[NOON], got.directNormalWm2()[NOON]);
    assertEquals(alone.diffuseHorizontalWm2()[NOON], got.diffuseHorizontalWm2()[NOON]);
  }

  @Test
  void completesFromOneOfTwo() {
    double cos = SUN.cosZenith()[NOON];
    Radiation sky = at(NOON, 500.0, null, 200.0);
    assertEquals(200.0, sky.diffuseHorizontalWm2()[NOON]);
    assertEquals(300.0 / cos, sky.directNormalWm2()[NOON], 1e-9);
    Radiation beam = at(NOON, 500.0, 400.0, null);
    assertEquals(400.0, beam.directNormalWm2()[NOON]);
    assertEquals(500.0 - 400.0 * cos, beam.diffuseHorizontalWm2()[NOON], 1e-9);
    Radiation tooMuchBeam = at(NOON, 200.0, 900.0, null);
    assertEquals(200.0 / cos, tooMuchBeam.directNormalWm2()[NOON], 1e-9);
    assertEquals(0.0, tooMuchBeam.diffuseHorizontalWm2()[NOON], 1e-9);
    Radiation tooMuchSky = at(NOON, 200.0, null, 900.0);
    assertEquals(200.0, tooMuchSky.diffuseHorizontalWm2()[NOON]);
    assertEquals(0.0, tooMuchSky.directNormalWm2()[NOON]);
  }

  @Test
  void splitsGlobalByErbs() {
    double above = SUN.extraterrestrialHorizontalWm2(NOON);
    Radiation got = at(NOON, 0.5 * above, null, null);
    assertEquals(0.6591 * 0.5 * above, got.diffuseHorizontalWm2()[NOON], 1e-4 * above);
    assertEquals(
        0.5 * above,
        got.diffuseHorizontalWm2()[NOON] + got.directNormalWm2()[NOON] * SUN.cosZenith()[NOON],
        1e-9);
  }

  @Test
  void aLowSunMakesNoGiantBeam() {
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = new double[YEAR.hours()];
    java.util.Arrays.fill(columns.globalHorizontalWm2, 150.0);
    Radiation got = radiation(columns);
    for (int h = 0; h < YEAR.hours(); h++) {
      double beam = got.directNormalWm2()[h];
      double level = beam * SUN.cosZenith()[h];
      assertTrue(beam >= 0.0 && beam <= 0.85 * SUN.extraterrestrialNormalWm2()[h]);
      assertEquals(150.0, level + got.diffuseHorizontalWm2()[h], 1e-9, "what falls on the level");
      if (SUN.sunlitShare()[h] == 0.0) {
        assertEquals(0.0, beam);
      }
    }
  }

  @Test
  void sensorsBelowZeroAtNightAreDark() {
    Radiation got = at(0, -3.0, -1.0, -2.0);
    assertEquals(0.0, got.globalHorizontalWm2()[0]);
    assertEquals(0.0, got.directNormalWm2()[0]);
    assertEquals(0.0, got.diffuseHorizontalWm2()[0]);
    assertEquals(6.0, at(0, 6.0, null, null).diffuseHorizontalWm2()[0], "twilight is sky light");
  }

  @Test
  void beamIsNeverBrighterThanAboveTheAir() {
    Radiation got = at(NOON, 1400.0, 1600.0, 10.0);
    assertTrue(got.directNormalWm2()[NOON] <= SUN.extraterrestrialNormalWm2()[NOON]);
  }

  @Test
  void cloudTakesItsShareOfTheClearSky() {
    double[] clear = fromCloud(0.0, SkyChoices.usual());
    double[] half = fromCloud(0.5, SkyChoices.usual());
    double[] full = fromCloud(1.0, SkyChoices.usual());
    var mild =
        new SkyChoices(
            SkyChoices.ClearSky.HAURWITZ,
            0.6,
            2.0,
            SkyChoices.Tilt.PEREZ,
            SkyChoices.usual().linkeTurbidity(),
            0.6);
    double[] mildFull = fromCloud(1.0, mild);
    for (int h = 0; h < clear.length; h++) {
      assertEquals(0.9290 * clear[h], half[h], 1e-4 * clear[h]);
      assertEquals(0.25 * clear[h], full[h], 1e-9);
      if (SUN.sunlitShare()[h] == 0.0) {
        assertEquals(0.0, clear[h]);
      } else if (SUN.sunlitShare()[h] == 1.0) {
        assertEquals(0.4 * HaurwitzClearSky.globalWm2(SUN.cosZenith()[h]), mildFull[h], 1e-9);
      }
    }
    assertTrue(clear[NOON] > 800.0 && clear[NOON] < 1000.0);
  }

  @Test
  void refusesWeatherOfAnotherLength() {
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = new double[HourCalendar.of(2016, 1).hours()];
    WeatherSeries leap = SkyFixtures.weather(HourCalendar.of(2016, 1), columns);
    assertThrows(
        IllegalArgumentException.class, () -> Radiation.of(leap, SUN, SITE, SkyChoices.usual()));
  }

  private static double[] fromCloud(double share, SkyChoices choices) {
    var columns = new WeatherSeries.Columns();
    columns.cloudShare = new double[YEAR.hours()];
    java.util.Arrays.fill(columns.cloudShare, share);
    return Radiation.of(SkyFixtures.weather(YEAR, columns), SUN, SITE, choices)
        .globalHorizontalWm2();
  }

  /** 300 W/m2 at noon and 100 at midnight: a quarter of the light has no sun. */
  @Test
  void lightWithoutSunIsMeasured() {
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = one(NOON, 300.0);
    columns.globalHorizontalWm2[NOON - 12] = 100.0;
    assertEquals(0.25, radiation(columns).nightLightShare(), 1e-12);
    assertEquals(0.0, at(NOON, 300.0, null, null).nightLightShare());
  }

  private static Radiation at(
      int hour, double global, @Nullable Double direct, @Nullable Double diffuse) {
    var columns = new WeatherSeries.Columns();
    columns.globalHorizontalWm2 = one(hour, global);
    columns.directNormalWm2 = direct == null ? null : one(hour, direct);
    columns.diffuseHorizontalWm2 = diffuse == null ? null : one(hour, diffuse);
    return radiation(columns);
  }

  private static double[] one(int hour, double value) {
    var values = new double[YEAR.hours()];
    values[hour] = value;
    return values;
  }

  private static Radiation radiation(WeatherSeries.Columns columns) {
    return Radiation.of(SkyFixtures.weather(YEAR, columns), SUN, SITE, SkyChoices.usual());
  }
}
