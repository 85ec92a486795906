package greyspell.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.power.GeneratorRules.Policy;
import greyspell.power.step.GeneratorLimits;
import java.time.DayOfWeek;
import java.time.Month;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class GeneratorRunTest {
  private static final HourCalendar YEAR = HourCalendar.of(2018, 1); // begins on a Monday

  private static GeneratorLimits limits(GeneratorRules rules, double elevationM, double airC) {
    var air = new double[YEAR.hours()];
    Arrays.fill(air, airC);
    return GeneratorRun.limits(Engines.diesel(), rules, elevationM, air, YEAR);
  }

  private static int hours(boolean[] permitted, int from, int to) {
    int hours = 0;
    for (int h = from; h < to; h++) {
      hours += permitted[h] ? 1 : 0;
    }
    return hours;
  }

  @Test
  void handsTheRulesOn() {
    GeneratorLimits got =
        limits(Engines.rules(Policy.AUTO, RunTimes.ALWAYS, RunTimes.ALWAYS), 1500.0, 10.0);
    assertEquals(8760, got.hours());
    assertEquals(4000.0 * 0.825, got.mostW()[4000], 1e-9);
    assertEquals(8760, hours(got.permitted(), 0, 8760));
    assertEquals(3000.0, got.chargerMostAcW());
    assertEquals(0.9, got.chargerEfficiency());
    assertEquals(0.2, got.startBelowShare());
    assertEquals(0.8, got.stopAboveShare());
    assertEquals(2, got.minimumRunH());
  }

  @Test
  void quietHoursAreQuietFromTheirFirstMinute() {
    boolean[] got =
        limits(Engines.rules(Policy.AUTO, Engines.daily(7.5, 21.5), RunTimes.ALWAYS), 0, 10)
            .permitted();
    assertFalse(got[7]);
    assertTrue(got[8]);
    assertTrue(got[20]);
    assertFalse(got[21]);
    assertEquals(13 * 365, hours(got, 0, 8760));
  }

  @Test
  void spansThatMeetWithinAnHourAreOne() {
    var met =
        new RunTimes(
            List.of(new RunTimes.Span(7.0, 9.5), new RunTimes.Span(9.5, 11.0)),
            EnumSet.allOf(DayOfWeek.class),
            EnumSet.allOf(Month.class));
    assertEquals(4, hours(met.hours(YEAR), 0, 24));
    assertEquals(4, met.longestH());
  }

  /** Friday 22:00 to Saturday 02:00, in January: the first Friday is the 5th. */
  @Test
  void aSpanPastMidnightBelongsToTheDayOnWhichItStarts() {
    var fridays =
        new RunTimes(
            List.of(new RunTimes.Span(22.0, 2.0)),
            EnumSet.of(DayOfWeek.FRIDAY),
            EnumSet.of(Month.JANUARY));
    boolean[] got = fridays.hours(YEAR);
    int friday = 4 * 24;
    assertEquals(4, hours(got, friday, friday + 48));
    assertTrue(got[friday + 22] && got[friday + 25]);
    assertFalse(got[friday + 1] || got[friday + 26]);
    assertEquals(4 * 4, hours(got, 0, 8760));
    assertEquals(4, fridays.longestH());
  }

  @Test
  void byHandItRunsOnlyWhenSomeoneIsAtHome() {
    RunTimes permitted = Engines.daily(8.0, 20.0);
    RunTimes home = Engines.daily(17.0, 23.0);
    assertEquals(
        12 * 365,
        hours(limits(Engines.rules(Policy.AUTO, permitted, home), 0, 10).permitted(), 0, 8760));
    boolean[] byHand = limits(Engines.rules(Policy.MANUAL, permitted, home), 0, 10).permitted();
    assertEquals(3 * 365, hours(byHand, 0, 8760));
    assertTrue(byHand[17] && byHand[19]);
    assertFalse(byHand[16] || byHand[20]);
  }

  @Test
  void refusesAnotherLength() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            GeneratorRun.limits(
                Engines.diesel(),
                Engines.rules(Policy.AUTO, RunTimes.ALWAYS, RunTimes.ALWAYS),
                0.0,
                new double[24],
                YEAR));
  }
}
