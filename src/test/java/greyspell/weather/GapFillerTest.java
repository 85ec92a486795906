package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rules for missing hours. Temperature is the day of the year, so that filled values show. */
class GapFillerTest {
  private static final double ROUNDING = 1e-12;
  private static final LocalDateTime GAP = LocalDateTime.of(2019, 7, 4, 10, 0);
  private static final int GAP_HOUR = (184 * 24) + 10;

  @TempDir Path folder;
  SmallFiles files = new SmallFiles(Path.of("."));

  @BeforeEach
  void useTheFolder() {
    files = new SmallFiles(folder);
  }

  private static boolean isOut(LocalDateTime time, LocalDateTime from, int hours) {
    return !time.isBefore(from) && time.isBefore(from.plusHours(hours));
  }

  private static String gapInTemperature(LocalDateTime from, int hours) {
    return SmallFiles.csv(
        "utc_start,ghi_wm2,tair_c",
        t -> t + "Z,0," + (isOut(t, from, hours) ? "" : t.getDayOfYear() / 10.0 + t.getHour()));
  }

  private static double value(int hour) {
    return (hour / 24 + 1) / 10.0 + hour % 24;
  }

  @Test
  void threeHoursAreFilledByAStraightLine() throws IOException {
    WeatherSeries series = files.read(gapInTemperature(GAP, 3), 0.0);
    double[] temperatureC = series.airTemperatureC();
    for (int hour = GAP_HOUR; hour < GAP_HOUR + 3; hour++) {
      assertEquals(value(hour), temperatureC[hour], ROUNDING);
    }
    assertEquals(
        new GapReport(3, 3, List.of("air temperature: 3 hours filled by a straight line")),
        series.gaps());
  }

  @Test
  void fourHoursAreFilledFromTheDaysAround() throws IOException {
    WeatherSeries series = files.read(gapInTemperature(GAP, 4), 0.0);
    double[] temperatureC = series.airTemperatureC();
    for (int hour = GAP_HOUR; hour < GAP_HOUR + 4; hour++) {
      assertEquals((value(hour - 24) + value(hour + 24)) / 2.0, temperatureC[hour], ROUNDING);
    }
    assertEquals(
        "air temperature: 4 hours filled from the same hour of the days before and after; longest"
            + " run 4 hours, from 2019-07-04 10:00 to 2019-07-04 14:00 (UTC+0)",
        series.gaps().notes().get(0));
  }

  @Test
  void fiveDaysAreFilledFromTheNearestDaysThatHaveAValue() throws IOException {
    WeatherSeries series = files.read(gapInTemperature(GAP, 120), 0.0);
    double[] temperatureC = series.airTemperatureC();
    assertEquals(120, series.gaps().longestGapHours());
    // the third missing day at 10:00: three days back and three days on
    int hour = GAP_HOUR + 48;
    assertEquals((value(hour - 72) + value(hour + 72)) / 2.0, temperatureC[hour], ROUNDING);
  }

  @Test
  void moreThanFiveDaysAreRefused() {
    assertEquals(
        """
        w.csv:4428:1  air temperature: no value for 121 hours, from 2019-07-04 10:00 to 2019-07-09 11:00 (UTC+0)
            at most 120 missing hours in one run can be filled
        w.csv  no year of 2019 is free of such runs
            whole years without a run of more than 120 missing hours are needed
            Use another file, or a typical year of the place.""",
        files.refusal(gapInTemperature(GAP, 121), 0.0));
  }

  @Test
  void aGapAtTheEndTakesTheDayBefore() throws IOException {
    LocalDateTime end = LocalDateTime.of(2019, 12, 31, 22, 0);
    WeatherSeries series = files.read(gapInTemperature(end, 2), 0.0);
    assertEquals(value(8759 - 24), series.airTemperatureC()[8759], ROUNDING);
  }

  @Test
  void irradianceIsFilledByTheSameRules() throws IOException {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c",
            t -> t + "Z," + (isOut(t, GAP, 2) ? "" : t.getHour() * 10) + ",5");
    double[] globalWm2 = files.read(text, 0.0).globalHorizontalWm2();
    assertNotNull(globalWm2);
    assertEquals(100.0, globalWm2[GAP_HOUR], ROUNDING);
    assertEquals(110.0, globalWm2[GAP_HOUR + 1], ROUNDING);
  }

  @Test
  void aColumnThatIsNotNeededIsLeftOutInstead() throws IOException {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c,wind_ms",
            t -> t + "Z,0,5," + (isOut(t, GAP, 300) ? "" : "4"));
    WeatherSeries series = files.read(text, 0.0);
    assertNull(series.windMs());
    assertEquals(0, series.gaps().missingHours());
    assertEquals(
        "wind speed: left out, it has no value for 300 hours, from 2019-07-04 10:00 to 2019-07-16"
            + " 22:00 (UTC+0), more than can be filled",
        series.gaps().notes().get(0));
  }

  @Test
  void cloudIsNeededWhereThereIsNoIrradiance() {
    String text =
        SmallFiles.csv(
            "utc_start,tair_c,cloud_okta", t -> t + "Z,5," + (isOut(t, GAP, 300) ? "" : "4"));
    assertTrue(files.refusal(text, 0.0).contains("cloud cover: no value for 300 hours"));
  }

  @Test
  void refusesHoursThatNeverHaveAValue() {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c",
            t -> t + "Z," + (t.getHour() > 18 || t.getHour() < 4 ? "" : "100") + ",5");
    String message = files.refusal(text, 0.0);
    assertTrue(message.contains("no day within 15 days has a value at the same hour"), message);
  }

  @Test
  void tellsWhichYearsCouldBeKept() {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c",
            LocalDateTime.of(2017, 1, 1, 0, 0),
            3 * 8760,
            60,
            t -> t + "Z,0," + (isOut(t, GAP.minusYears(1), 200) ? "" : "5"));
    assertTrue(
        files.refusal(text, 0.0).contains("free of such runs: 2017, 2019\n"),
        files.refusal(text, 0.0));
  }

  @Test
  void countsAnHourOnceThoughTwoColumnsLackIt() throws IOException {
    String text =
        SmallFiles.csv("utc_start,ghi_wm2,tair_c", t -> t + (isOut(t, GAP, 2) ? "Z,," : "Z,0,5"));
    GapReport gaps = files.read(text, 0.0).gaps();
    assertEquals(2, gaps.missingHours());
    assertEquals(2, gaps.notes().size());
  }
}
