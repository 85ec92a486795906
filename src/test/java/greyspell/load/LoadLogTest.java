package greyspell.load;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class LoadLogTest {
  private static final int MINUTES_IN_DAY = 1440;

  private static long minute(LocalDate date) {
    return date.toEpochDay() * MINUTES_IN_DAY;
  }

  /** Hourly values from 00:00; NaN leaves a hole. */
  private static LoadRecord hourly(LocalDate first, double... wh) {
    var starts = new long[wh.length];
    var kept = new double[wh.length];
    int n = 0;
    for (int h = 0; h < wh.length; h++) {
      if (!Double.isNaN(wh[h])) {
        starts[n] = minute(first) + h * 60L;
        kept[n++] = wh[h];
      }
    }
    return new LoadRecord(Arrays.copyOf(starts, n), Arrays.copyOf(kept, n), 60);
  }

  private static double[] numbered(int hours) {
    var wh = new double[hours];
    Arrays.setAll(wh, h -> h);
    return wh;
  }

  @Test
  void aRealDayThatWasMeasuredIsTakenAsMeasured() {
    LoadLog log = LoadLog.of(hourly(LocalDate.of(2018, 3, 5), numbered(240)));
    HourCalendar calendar = HourCalendar.of(2018, 1);
    double[] got = log.over(calendar);
    int from = calendar.hourOf(2018, 3, 5, 0);
    assertArrayEquals(numbered(240), Arrays.copyOfRange(got, from, from + 240));
    assertEquals(0, log.filledHours());
  }

  /**
   * Ten days from Monday 5 March 2018: on another Monday the nearer of the 5th and the 12th is
   * taken.
   */
  @Test
  void otherDaysTakeTheNearestDayOfTheSameWeekday() {
    LoadLog log = LoadLog.of(hourly(LocalDate.of(2018, 3, 5), numbered(240)));
    HourCalendar calendar = HourCalendar.of(2018, 1);
    double[] got = log.over(calendar);
    assertEquals(0.0, got[calendar.hourOf(2018, 2, 26, 0)]); // Monday before: the 5th
    assertEquals(7 * 24.0, got[calendar.hourOf(2018, 3, 19, 0)]); // Monday after: the 12th
    assertEquals(3 * 24.0 + 5, got[calendar.hourOf(2018, 7, 5, 5)]); // Thursdays: only the 8th
  }

  /** 4 January is nearer to late December than a day in early November. */
  @Test
  void nearnessGoesRoundTheTurnOfTheYear() {
    var wh = new double[24 * 365];
    Arrays.fill(wh, 1.0);
    Arrays.fill(wh, 0, 24 * 14, 2.0); // 1 to 14 January 2018
    Arrays.fill(wh, 24 * 280, wh.length, Double.NaN); // from 8 October nothing, but one hour
    wh[wh.length - 1] = 1.0;
    LoadRecord record = hourly(LocalDate.of(2018, 1, 1), Arrays.copyOf(wh, 24 * 280));
    double[] got = LoadLog.of(record).over(HourCalendar.of(2019, 1));
    assertEquals(2.0, got[24 * 360]); // 27 December 2019: January is nearer than October
    assertEquals(1.0, got[24 * 300]); // 28 October 2019
  }

  @Test
  void leapDayTakesADayOfItsWeekdayNearby() {
    LoadLog log = LoadLog.of(hourly(LocalDate.of(2019, 1, 1), numbered(24 * 365)));
    HourCalendar leap = HourCalendar.of(2020, 1);
    double[] got = log.over(leap);
    // 29 February 2020 is a Saturday and counts as the 28th; 2 March 2019 is the Saturday two days
    // on
    int secondOfMarch = 31 + 28 + 1;
    assertEquals(24.0 * secondOfMarch, got[leap.hourOf(2020, 2, 29, 0)]);
    assertEquals(24 * 366, got.length);
  }

  @Test
  void typicalYearsAreNeverTakenByDate() {
    // dated 2001 like the typical year; its 1 January is taken by weekday, which is the same day
    // here
    LoadLog log = LoadLog.of(hourly(LocalDate.of(2001, 1, 2), numbered(24 * 14)));
    double[] got = log.over(HourCalendar.typicalYear());
    assertEquals(6 * 24.0, got[0]); // Monday: 8 January, no 1 January in the log
    assertEquals(0.0, got[24]); // Tuesday 2 January
  }

  /** Half-hour steps of 100 Wh that begin at 22:15: only the whole days count, hours get 200 Wh. */
  @Test
  void stepsAreSpreadOverTheHoursTheyTouch() {
    int steps = 2 * 24 * 8 + 10;
    var starts = new long[steps];
    var wh = new double[steps];
    for (int i = 0; i < steps; i++) {
      starts[i] = minute(LocalDate.of(2018, 5, 1)) - 105 + 30L * i;
      wh[i] = i % 2 == 0 ? 50.0 : 150.0;
    }
    LoadLog log = LoadLog.of(new LoadRecord(starts, wh, 30));
    assertEquals(LocalDate.of(2018, 5, 1), log.firstDate());
    assertEquals(8, log.days());
    HourCalendar calendar = HourCalendar.of(2018, 1);
    double[] got = log.over(calendar);
    int from = calendar.hourOf(2018, 5, 1, 0);
    // 00:00-00:15 of an odd step (75), an even one (50), 00:45-01:00 of an odd one (75)
    assertEquals(200.0, got[from], 1e-9);
    assertEquals(200.0, got[from + 100], 1e-9);
  }

  @Test
  void shortHolesAreALineAndLongOnesTheWeeksAround() {
    double[] wh = numbered(24 * 22);
    Arrays.fill(wh, 40, 43, Double.NaN);
    Arrays.fill(wh, 200, 210, Double.NaN);
    Arrays.fill(wh, 400, 410, Double.NaN);
    LoadLog log = LoadLog.of(hourly(LocalDate.of(2018, 1, 1), wh));
    assertEquals(23, log.filledHours());
    double[] got = log.over(HourCalendar.of(2018, 1));
    assertEquals(40.0, got[40], 1e-9);
    assertEquals(42.0, got[42], 1e-9);
    assertEquals(0.5 * (32.0 + 368.0), got[200], 1e-9); // a week before and a week after
    assertEquals(241.0, got[409], 1e-9); // only the week before is in the log
  }

  @Test
  void anHourMeasuredByHalfIsScaledUp() {
    var starts = new long[24 * 4 * 8 - 2];
    var wh = new double[starts.length];
    Arrays.fill(wh, 10.0);
    for (int i = 0; i < starts.length; i++) {
      starts[i] = minute(LocalDate.of(2018, 1, 1)) + 15L * (i < 40 ? i : i + 2);
    }
    LoadLog log = LoadLog.of(new LoadRecord(starts, wh, 15));
    assertEquals(40.0, log.over(HourCalendar.of(2018, 1))[10], 1e-9);
    assertEquals(0, log.filledHours());
  }

  @Test
  void tooShortAndTooHoleyLogsAreRefusedInWords() {
    LoadRecord sixDays = hourly(LocalDate.of(2018, 1, 1), numbered(24 * 6 + 23));
    assertEquals("the log holds 6 whole days, at least 7 are needed", LoadLog.whyNot(sixDays));
    double[] holey = numbered(24 * 20);
    Arrays.fill(holey, 10, 24 * 19, Double.NaN);
    assertTrue(
        LoadLog.whyNot(hourly(LocalDate.of(2018, 1, 1), holey)).contains("hours 446 are missing"));
    assertThrows(IllegalArgumentException.class, () -> LoadLog.of(sixDays));
  }

  @Test
  void theLogIsAddedToTheSocketsTimesItsFactor() {
    LoadLog log = LoadLog.of(hourly(LocalDate.of(2018, 1, 1), numbered(24 * 7)));
    var plan = new LoadPlan(List.of(), new LogSpec("log.csv", 1.5), 0.3);
    LoadHours got = LoadHours.of(plan, log, Mild.of(HourCalendar.of(2018, 1)), 7L);
    assertEquals(15.0, got.acWh()[10], 1e-12);
    assertEquals(0.0, got.dcWh()[10]);
    assertEquals("measured log", got.books().get(0).name());
    assertThrows(
        IllegalArgumentException.class,
        () -> LoadHours.of(plan, null, Mild.of(HourCalendar.of(2018, 1)), 7L));
  }
}
