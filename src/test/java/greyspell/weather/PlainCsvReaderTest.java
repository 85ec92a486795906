package greyspell.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Our plain CSV: clocks, columns, refusals. */
class PlainCsvReaderTest {
  private static final double EXACT = 0.0;
  private static final double ROUNDING = 1e-12;
  private static final LocalDateTime SUNNY = LocalDateTime.of(2019, 7, 4, 12, 0);
  private static final LocalDateTime YEAR = LocalDateTime.of(2019, 1, 1, 0, 0);

  @TempDir Path folder;
  SmallFiles files = new SmallFiles(Path.of("."));

  @BeforeEach
  void useTheFolder() {
    files = new SmallFiles(folder);
  }

  /** 640 W/m2 in the hour that starts on 4 July at 12:00 of the rows' own clock, else 0. */
  private static String sun(LocalDateTime start, String stamp) {
    return stamp + "," + (start.equals(SUNNY) ? "640" : "0") + ",10";
  }

  private static double[] global(WeatherSeries series) {
    double[] column = series.globalHorizontalWm2();
    assertNotNull(column);
    return column;
  }

  private static void holdsSun(WeatherSeries series, int hourOfDay) {
    assertEquals(640.0, global(series)[series.calendar().hourOf(2019, 7, 4, hourOfDay)], EXACT);
  }

  @Test
  void aStartIsTheStartOfItsHour() throws IOException {
    String text = SmallFiles.csv("utc_start,ghi_wm2,tair_c", t -> sun(t, t + "Z"));
    holdsSun(files.read(text, SmallFiles.UTC), 12);
    WeatherSeries east = files.read(text, 2.0);
    holdsSun(east, 14);
    assertEquals(2.0, east.source().utcOffsetH(), EXACT);
    holdsSun(files.read(text, -6.0), 6);
  }

  @Test
  void anEndIsTheEndOfItsHour() throws IOException {
    String text = SmallFiles.csv("utc_end,ghi_wm2,tair_c", t -> sun(t, t.plusHours(1) + "Z"));
    holdsSun(files.read(text, SmallFiles.UTC), 12);
    holdsSun(files.read(text, 2.0), 14);
  }

  @Test
  void localTimesAreStandardTimeOfTheStatedOffset() throws IOException {
    String text =
        SmallFiles.csv("# utc_offset: -6\nlocal_start,ghi_wm2,tair_c", t -> sun(t, t.toString()));
    holdsSun(files.read(text, -6.0), 12);
    holdsSun(files.read(text, -7.0), 11);
    String ends =
        SmallFiles.csv(
            "# utc_offset: -6\nlocal_end,ghi_wm2,tair_c", t -> sun(t, t.plusHours(1).toString()));
    holdsSun(files.read(ends, -6.0), 12);
  }

  @Test
  void twentyFourOClockIsTheMidnightThatEndsTheDay() throws IOException {
    String text =
        SmallFiles.csv(
            "# utc_offset: +05:30\nlocal_end,ghi_wm2,tair_c",
            t ->
                sun(t, t.getHour() == 23 ? t.toLocalDate() + "T24:00" : t.plusHours(1).toString()));
    WeatherSeries series = files.read(text, 5.5);
    holdsSun(series, 12);
    assertEquals(0, series.gaps().missingHours());
    assertEquals(5.5, series.source().utcOffsetH(), EXACT);
  }

  @Test
  void aHalfHourOfTheSiteThatTheFileHasNotIsKeptAndTold() throws IOException {
    String text = SmallFiles.csv("utc_start,ghi_wm2,tair_c", t -> sun(t, t + "Z"));
    WeatherSeries series = files.read(text, 5.5);
    assertEquals(5.0, series.source().utcOffsetH(), EXACT);
    holdsSun(series, 17);
    assertEquals(
        "clock: the hours of the file begin at other minutes than the site's (UTC+5:30); the series"
            + " keeps them, on UTC+5",
        series.gaps().notes().get(0));
  }

  @Test
  void stampsAtHalfPastKeepTheirOwnClock() throws IOException {
    String text = SmallFiles.csv("utc_start,ghi_wm2,tair_c", t -> sun(t, t.plusMinutes(30) + "Z"));
    WeatherSeries halfHourZone = files.read(text, 5.5);
    assertEquals(5.5, halfHourZone.source().utcOffsetH(), EXACT);
    holdsSun(halfHourZone, 18);
    WeatherSeries wholeHourZone = files.read(text, 1.0);
    assertEquals(0.5, wholeHourZone.source().utcOffsetH(), EXACT);
    holdsSun(wholeHourZone, 13);
  }

  @Test
  void tenMinutesMakeHoursOfTheSitesOwnClock() throws IOException {
    // 60, 120 ... 360 W/m2 in the six rows from 12:00 UTC; 5:40 east of UTC they fall into two
    // hours
    String text =
        SmallFiles.csv(
            "utc_end,ghi_wm2,tair_c",
            YEAR.minusDays(1),
            367 * 144,
            10,
            t ->
                t.plusMinutes(10)
                    + "Z,"
                    + (t.toLocalDate().equals(SUNNY.toLocalDate()) && t.getHour() == 12
                        ? 6 * (t.getMinute() + 10)
                        : 0)
                    + ",10");
    WeatherSeries series = files.read(text, 5.0 + 40.0 / 60.0);
    int hour = series.calendar().hourOf(2019, 7, 4, 17);
    assertEquals((60.0 + 120.0) / 6.0, global(series)[hour], ROUNDING);
    assertEquals((180.0 + 240.0 + 300.0 + 360.0) / 6.0, global(series)[hour + 1], ROUNDING);
    assertTrue(
        series
            .gaps()
            .notes()
            .contains(
                "rows are 10 minutes apart: averaged to hours, of which at least 75 % must have a value"));
  }

  @Test
  void anHourNeedsThreeQuartersOfItsRows() throws IOException {
    Function<LocalDateTime, String> row =
        t -> {
          boolean isThreeQuarters = t.getHour() == 12 && t.getMinute() == 15;
          boolean isHalf = t.getHour() == 15 && t.getMinute() >= 30;
          boolean isOut =
              t.toLocalDate().equals(SUNNY.toLocalDate()) && (isThreeQuarters || isHalf);
          return t + "Z," + (isOut ? "" : "400") + ",10";
        };
    String text = SmallFiles.csv("utc_start,ghi_wm2,tair_c", YEAR, 8760 * 4, 15, row);
    WeatherSeries series = files.read(text, SmallFiles.UTC);
    assertEquals(1, series.gaps().missingHours());
  }

  @Test
  void aMissingSecondRowDoesNotChangeTheInterval() throws IOException {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c", t -> t.equals(YEAR.plusHours(1)) ? "" : sun(t, t + "Z"));
    WeatherSeries series = files.read(text, SmallFiles.UTC);
    assertEquals(1, series.gaps().missingHours());
    holdsSun(series, 12);
  }

  @Test
  void leapDaysAndSeveralYearsAreKept() throws IOException {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c",
            LocalDateTime.of(2019, 1, 1, 0, 0),
            (365 + 366 + 365) * 24,
            60,
            t -> t + "Z," + (t.getMonthValue() == 2 && t.getDayOfMonth() == 29 ? 50 : 0) + ",1");
    WeatherSeries series = files.read(text, SmallFiles.UTC);
    assertEquals(3, series.calendar().years());
    assertEquals(26_304, series.hours());
    assertEquals(50.0, global(series)[series.calendar().hourOf(2020, 2, 29, 23)], EXACT);
    assertEquals(0.0, global(series)[series.calendar().hourOf(2020, 3, 1, 0)], EXACT);
  }

  @Test
  void partialYearsAtTheEndsAreLeftOut() throws IOException {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c",
            LocalDateTime.of(2018, 11, 1, 0, 0),
            (61 + 365 + 40) * 24,
            60,
            t -> sun(t, t + "Z"));
    WeatherSeries series = files.read(text, SmallFiles.UTC);
    assertEquals(2019, series.calendar().firstYear());
    assertEquals(1, series.calendar().years());
    assertEquals(
        List.of(
            "2018 left out: not whole, the rows begin at 2018-11-01 00:00",
            "2020 left out: not whole, the rows end at 2020-02-10 00:00"),
        series.gaps().notes());
  }

  @Test
  void aYearThatBeginsAFewHoursLateIsFilled() throws IOException {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c", t -> t.isBefore(YEAR.plusHours(5)) ? "" : sun(t, t + "Z"));
    WeatherSeries series = files.read(text, SmallFiles.UTC);
    assertEquals(5, series.gaps().missingHours());
    assertEquals(8760, series.hours());
  }

  @Test
  void refusesLessThanAYear() {
    String text = SmallFiles.csv("utc_start,ghi_wm2,tair_c", YEAR, 2000, 60, t -> sun(t, t + "Z"));
    assertEquals(
        """
        w.csv  no whole calendar year: the rows run from 2019-01-01 00:00 to 2019-03-25 08:00 (UTC+0)
            needed is at least one year from 1 January to 31 December
            Name all files that follow each other, or export again what is cut off.""",
        files.refusal(text, SmallFiles.UTC));
  }

  @Test
  void cloudAndTemperatureAloneAreEnough() throws IOException {
    String text =
        SmallFiles.csv(
            "utc_start,cloud_okta,tair_c", t -> t + "Z," + (t.equals(SUNNY) ? "9" : "4") + ",10");
    WeatherSeries series = files.read(text, SmallFiles.UTC);
    assertNull(series.globalHorizontalWm2());
    double[] cloud = series.cloudShare();
    assertNotNull(cloud);
    assertEquals(0.5, cloud[0], EXACT);
    assertEquals(1.0, cloud[series.calendar().hourOf(2019, 7, 4, 12)], EXACT);
    assertEquals(
        "cloud cover: 1 value of 9 okta (sky invisible) read as overcast",
        series.gaps().notes().get(0));
  }

  @Test
  void cloudInTenthsAndPerCent() throws IOException {
    WeatherSeries tenths =
        files.read(
            SmallFiles.csv("utc_start,cloud_tenths,tair_c", t -> t + "Z,3,10"), SmallFiles.UTC);
    WeatherSeries percent =
        files.read(
            SmallFiles.csv("utc_start,tair_c,cloud_pct", t -> t + "Z,10,37.5"), SmallFiles.UTC);
    double[] first = tenths.cloudShare();
    double[] second = percent.cloudShare();
    assertNotNull(first);
    assertNotNull(second);
    assertEquals(0.3, first[0], ROUNDING);
    assertEquals(0.375, second[0], ROUNDING);
  }

  @Test
  void readsKeysSnowAndWindInAnyOrder() throws IOException {
    String head =
        """
        # a remark: nothing
        # place: Otter Narrows (invented)
        # latitude: 46.3
        # longitude: -93.8 deg
        # elevation: 390 m
        "snow_cm","wind_ms","tair_c","ghi_wm2","utc_start\"""";
    WeatherSeries series =
        files.read(SmallFiles.csv(head, t -> "12, 3.5 ,\"-4\",0," + t + "Z"), SmallFiles.UTC);
    assertEquals("Otter Narrows (invented)", series.source().place());
    assertEquals(Double.valueOf(46.3), series.source().latitudeDeg());
    assertEquals(Double.valueOf(-93.8), series.source().longitudeDeg());
    assertEquals(Double.valueOf(390.0), series.source().elevationM());
    double[] snow = series.snowDepthM();
    double[] wind = series.windMs();
    assertNotNull(snow);
    assertNotNull(wind);
    assertEquals(0.12, snow[8759], ROUNDING);
    assertEquals(3.5, wind[8759], EXACT);
    assertEquals(-4.0, series.airTemperatureC()[0], EXACT);
  }

  @Test
  void anEmptyColumnIsNotInTheSource() throws IOException {
    WeatherSeries series =
        files.read(
            SmallFiles.csv("utc_start,ghi_wm2,dni_wm2,tair_c,snow_cm", t -> t + "Z,0,,10,"),
            SmallFiles.UTC);
    assertNull(series.directNormalWm2());
    assertNull(series.snowDepthM());
    assertTrue(
        files
            .refusal(SmallFiles.csv("utc_start,ghi_wm2,tair_c", t -> t + "Z,0,"), SmallFiles.UTC)
            .contains("no air temperature\n    needed"));
  }

  @Test
  void valuesBelowZeroAtNightAreDark() throws IOException {
    WeatherSeries series =
        files.read(
            SmallFiles.csv(
                "utc_start,ghi_wm2,tair_c", t -> t + (t.equals(SUNNY) ? "Z,-2.4,10" : "Z,0,10")),
            SmallFiles.UTC);
    assertEquals(0.0, global(series)[series.calendar().hourOf(2019, 7, 4, 12)], EXACT);
    assertEquals(
        "global horizontal irradiance: 1 value below zero set to zero",
        series.gaps().notes().get(0));
  }

  @Test
  void refusesNonNumbers() {
    String message =
        files.refusal(
            SmallFiles.csv(
                "utc_start,ghi_wm2,tair_c", t -> t + (t.equals(SUNNY) ? "Z,NaN,-inf" : "Z,0,10")),
            SmallFiles.UTC);
    assertTrue(
        message.startsWith(
            """
            w.csv:4430:19  ghi_wm2: found "NaN"
                must be a number; blank means missing
                Leave the field empty where there is no value.
            w.csv:4430:23  tair_c: found "-inf\""""),
        message);
  }

  @Test
  void refusesCodesAndWrongUnits() {
    String message =
        files.refusal(
            SmallFiles.csv(
                "utc_start,ghi_wm2,tair_c",
                t -> t + (t.equals(SUNNY) ? "Z,-999,10" : t.equals(YEAR) ? "Z,0,290" : "Z,0,10")),
            SmallFiles.UTC);
    assertTrue(
        message.contains(
            "ghi_wm2: found \"-999\"\n    must be -50 to 2000 wm2\n    Leave the field empty where"
                + " there is no value; codes such as -999 are not known."),
        message);
    assertTrue(
        message.contains("tair_c: found \"290\"\n    must be -90 to 60 c\n    Check the unit"),
        message);
  }

  @Test
  void aStrayValueInAColumnThatIsNotNeededCountsAsMissing() throws IOException {
    Function<LocalDateTime, String> one = t -> t + (t.equals(SUNNY) ? "Z,0,10,11" : "Z,0,10,2");
    WeatherSeries series =
        files.read(SmallFiles.csv("utc_start,ghi_wm2,tair_c,cloud_okta", one), SmallFiles.UTC);
    assertEquals(
        "cloud cover: 1 impossible value taken as missing, the first in line 4430: \"11\"",
        series.gaps().notes().get(0));
    String message =
        files.refusal(
            SmallFiles.csv("utc_start,ghi_wm2,tair_c,cloud_okta", t -> t + "Z,0,10,11"),
            SmallFiles.UTC);
    assertEquals(
        """
        w.csv:2:24  cloud_okta: found "11", the first of 8760 such values
            must be 0 to 9 okta
            Check the unit of the column, or take it out.""",
        message);
  }

  @Test
  void halfAnEighthMoreThanTheSkyIsNoCover() throws IOException {
    assertTrue(
        files
            .refusal(SmallFiles.csv("utc_start,tair_c,cloud_okta", t -> t + "Z,10,8.5"), 0)
            .contains("cloud_okta: found \"8.5\""));
  }

  @Test
  void namesTheNearestColumn() {
    String message =
        files.refusal(
            "utc_end,ghi_wm,tair_c,cloud_octa\n2019-01-01T01:00Z,0,1,2\n", SmallFiles.UTC);
    assertTrue(
        message.startsWith(
            "w.csv:1:9  unknown column \"ghi_wm\"\n    the columns are utc_start, utc_end,"),
        message);
    assertTrue(message.contains("Did you mean ghi_wm2? Take out columns"), message);
    assertTrue(message.contains("w.csv:1:23  unknown column \"cloud_octa\""), message);
    assertTrue(message.contains("Did you mean cloud_okta?"), message);
  }

  @Test
  void refusesHeadsThatLackWhatIsNeeded() {
    assertTrue(files.refusal("ghi_wm2,tair_c\n0,1\n", 0).contains("no time column"));
    assertTrue(files.refusal("utc_end,ghi_wm2\n", 0).contains("no column tair_c"));
    assertTrue(
        files.refusal("utc_end,tair_c\n", 0).contains("neither global irradiance nor cloud cover"));
    assertTrue(
        files
            .refusal("local_end,ghi_wm2,tair_c\n", 0)
            .contains("column \"local_end\" without a UTC offset"));
    assertTrue(
        files
            .refusal("utc_end,utc_start,ghi_wm2,tair_c\n", 0)
            .contains("column \"utc_start\" beside utc_end"));
    assertTrue(
        files
            .refusal("utc_end,ghi_wm2,tair_c,cloud_okta,cloud_pct\n", 0)
            .contains("column \"cloud_pct\" beside cloud_okta"));
    assertTrue(files.refusal("utc_end,ghi_wm2,tair_c\n", 0).contains("no rows under the header"));
    assertTrue(files.refusal("utc_end;ghi_wm2;tair_c\n", 0).contains("separated by semicolons"));
    assertTrue(
        files
            .refusal("# utc_ofset: 3\nlocal_end,ghi_wm2,tair_c\n", 0)
            .contains("unknown key \"utc_ofset\""));
    assertTrue(
        files
            .refusal("# utc_offset: 25\nlocal_end,ghi_wm2,tair_c\n", 0)
            .contains("utc_offset: found \"25\"\n    must be hours from -14 to +14"));
    assertTrue(
        files
            .refusal("# latitude: 95\nutc_end,ghi_wm2,tair_c\n", 0)
            .contains("latitude: found \"95\"\n    must be a number from -90 to 90 deg"));
  }

  @Test
  void aTypicalYearIsOneCommonYear() throws IOException {
    String head = "# typical_year: yes\nutc_start,ghi_wm2,tair_c";
    assertTrue(files.read(SmallFiles.csv(head, t -> sun(t, t + "Z")), 0.0).calendar().isTypical());
    String two = SmallFiles.csv(head, YEAR, (365 + 366) * 24, 60, t -> sun(t, t + "Z"));
    assertTrue(
        files.refusal(two, 0.0).startsWith("w.csv  typical_year: yes, but rows of 2019 to 2020"));
    assertTrue(
        files
            .refusal(two.replace("year: yes", "year: perhaps"), 0.0)
            .startsWith("w.csv:1:17  typical_year: found \"perhaps\""));
  }

  @Test
  void refusesTimesOfTheWrongKind() {
    String utc = files.refusal("utc_end,ghi_wm2,tair_c\n2019-01-01T01:00,0,1\n", 0);
    assertTrue(utc.contains("must be UTC such as 2015-05-01T01:00Z"), utc);
    String local =
        files.refusal("# utc_offset: 1\nlocal_end,ghi_wm2,tair_c\n2019-01-01T01:00Z,0,1\n", 0);
    assertTrue(
        local.contains("If the times are UTC, name the column utc_start or utc_end."), local);
    assertTrue(
        files.refusal("utc_end,ghi_wm2,tair_c\n2019-02-29T01:00Z,0,1\n", 0).contains("found"));
    assertTrue(files.refusal("utc_end,ghi_wm2,tair_c\n1.5.2019 01:00,0,1\n", 0).contains("found"));
  }

  @Test
  void anHourThatComesTwiceSmellsOfDaylightSaving() {
    String text =
        SmallFiles.csv(
            "# utc_offset: 1\nlocal_start,ghi_wm2,tair_c",
            t -> sun(t, (t.equals(SUNNY) ? t.minusHours(1) : t).toString()));
    String message = files.refusal(text, 1.0);
    assertTrue(
        message.startsWith(
            """
            w.csv:4431:1  the same time as line 4430
                each row must be later than the row before
                An hour that comes twice in autumn is a sign of daylight saving"""),
        message);
  }

  @Test
  void refusesTimeThatGoesBack() {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c", t -> sun(t, (t.equals(SUNNY) ? t.minusDays(3) : t) + "Z"));
    assertTrue(
        files
            .refusal(text, 0)
            .startsWith("w.csv:4430:1  time goes back 4260 minutes against line 4429"),
        files.refusal(text, 0));
  }

  @Test
  void refusesDailyRowsAndMixedIntervals() {
    String daily = SmallFiles.csv("utc_start,ghi_wm2,tair_c", YEAR, 365, 1440, t -> t + "Z,100,10");
    assertTrue(files.refusal(daily, 0).contains("rows are 1440 minutes apart"));
    String mixed =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c",
            t -> sun(t, (t.equals(SUNNY) ? t.plusMinutes(20) : t) + "Z"));
    assertTrue(
        files.refusal(mixed, 0).contains("rows must be 60 minutes apart"), files.refusal(mixed, 0));
  }

  @Test
  void refusesALastLineThatIsCutOff() {
    String text = SmallFiles.csv("utc_start,ghi_wm2,tair_c", t -> sun(t, t + "Z"));
    assertEquals(
        """
        w.csv:8761:1  1 field
            must be 3, as many as the header row has
            The last line looks cut off: export or copy the file again.""",
        files.refusal(text.substring(0, text.length() - 10), 0));
  }

  @Test
  void showsTwentyFaultsAndCountsTheRest() {
    String text =
        SmallFiles.csv(
            "utc_start,ghi_wm2,tair_c",
            t -> t + "Z,0," + (t.getMonthValue() == 3 && t.getHour() == 1 ? "x" : "10"));
    String message = files.refusal(text, 0);
    assertTrue(
        message.endsWith("w.csv  and 11 more\n    only the first 20 faults are shown"), message);
    String rubbish = SmallFiles.csv("utc_start,ghi_wm2,tair_c", t -> t + "Z,x,y");
    assertTrue(
        files
            .refusal(rubbish, 0)
            .endsWith(
                "and at least 980 more\n    only the first 20 faults are shown; the rest was not read"));
  }
}
