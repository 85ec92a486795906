package greyspell.load;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import greyspell.load.ApplianceSpec.HourSpan;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class LoadHoursTest {
  private static final HourCalendar Y2018 = HourCalendar.of(2018, 1); // 1 January is a Monday
  private static final Set<DayOfWeek> EVERY_DAY = EnumSet.allOf(DayOfWeek.class);
  private static final Monthly ALWAYS = Monthly.constant(1.0);

  private static ApplianceSpec appliance(
      int quantity,
      double powerW,
      double standbyW,
      double duty,
      Set<DayOfWeek> days,
      Monthly months,
      HourSpan... hours) {
    return new ApplianceSpec(
        "thing",
        quantity,
        powerW,
        standbyW,
        null,
        duty,
        List.of(hours),
        days,
        months,
        Priority.SHOULD_RUN,
        Evidence.LABEL,
        false,
        false);
  }

  private static LoadHours hours(HourCalendar calendar, ApplianceSpec... appliances) {
    return LoadHours.of(new LoadPlan(List.of(appliances), null, 0.0), null, Mild.of(calendar), 1L);
  }

  /**
   * Two lamps of 10 W from 18:30 to 22:15 are 75 Wh a day: 10 in the half hour, 5 in the quarter.
   */
  @Test
  void fractionalHours() {
    double[] wh =
        hours(Y2018, appliance(2, 10, 0, 1, EVERY_DAY, ALWAYS, new HourSpan(18.5, 22.25))).acWh();
    assertEquals(0.0, wh[17]);
    assertEquals(10.0, wh[18], 1e-12);
    assertEquals(20.0, wh[19], 1e-12);
    assertEquals(20.0, wh[21], 1e-12);
    assertEquals(5.0, wh[22], 1e-12);
    assertEquals(0.0, wh[23]);
    assertEquals(75.0 * 365, Arrays.stream(wh).sum(), 1e-6);
  }

  /** A span within one hour: 12:15 to 12:45 of 1000 W is 500 Wh. */
  @Test
  void spanWithinOneHour() {
    double[] wh =
        hours(Y2018, appliance(1, 1000, 0, 1, EVERY_DAY, ALWAYS, new HourSpan(12.25, 12.75)))
            .acWh();
    assertEquals(500.0, wh[12], 1e-9);
    assertEquals(500.0, Arrays.stream(wh, 0, 24).sum(), 1e-9);
  }

  /** 5 W at rest, 100 W half of the time from 8 to 10: 2 × (50 + 2.5) + 22 × 5 = 215 Wh. */
  @Test
  void standbyOutsideRunningTime() {
    LoadHours got = hours(Y2018, appliance(1, 100, 5, 0.5, EVERY_DAY, ALWAYS, new HourSpan(8, 10)));
    assertEquals(52.5, got.acWh()[8], 1e-12);
    assertEquals(5.0, got.acWh()[10], 1e-12);
    assertEquals(215.0 * 365, got.books().get(0).yearlyWh(), 1e-6);
    assertEquals(115.0 * 365, got.books().get(0).standbyYearlyWh(), 1e-6);
  }

  @Test
  void standbyAloneNeedsNoSpans() {
    assertEquals(
        7.0 * 8760,
        Arrays.stream(hours(Y2018, appliance(1, 0, 7, 1, EVERY_DAY, ALWAYS)).acWh()).sum(),
        1e-6);
  }

  /** Friday 22 to 6 runs on into Saturday, and only then. */
  @Test
  void pastMidnightBelongsToTheDayItStartsOn() {
    double[] wh =
        hours(
                Y2018,
                appliance(1, 100, 0, 1, EnumSet.of(DayOfWeek.FRIDAY), ALWAYS, new HourSpan(22, 6)))
            .acWh();
    int friday = 4 * 24;
    assertEquals(0.0, Arrays.stream(wh, 0, friday + 22).sum());
    assertEquals(800.0, Arrays.stream(wh, friday + 22, friday + 30).sum(), 1e-9);
    assertEquals(0.0, Arrays.stream(wh, friday + 30, friday + 7 * 24 + 22).sum());
    assertEquals(52 * 800.0, Arrays.stream(wh).sum(), 1e-6);
  }

  /** The calendar's first night: 31 December 2017 was a Sunday. */
  @Test
  void theFirstNightRunsOnFromTheDayBefore() {
    var span = new HourSpan(23, 2);
    assertEquals(
        100.0,
        hours(Y2018, appliance(1, 100, 0, 1, EnumSet.of(DayOfWeek.SUNDAY), ALWAYS, span)).acWh()[1],
        1e-12);
    assertEquals(
        0.0,
        hours(Y2018, appliance(1, 100, 0, 1, EnumSet.of(DayOfWeek.MONDAY), ALWAYS, span))
            .acWh()[1]);
  }

  @Test
  void aNightsMonthIsThatOfItsEvening() {
    Monthly january = Monthly.of(1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    double[] wh =
        hours(Y2018, appliance(1, 100, 0, 1, EVERY_DAY, january, new HourSpan(20, 4))).acWh();
    int february = Y2018.hourOf(2018, 2, 1, 0);
    assertEquals(400.0, Arrays.stream(wh, february, february + 24).sum(), 1e-9);
    assertEquals(0.0, Arrays.stream(wh, february + 24, wh.length).sum());
    // of 1 January itself only the evening: the night before was December's
    assertEquals(400.0, Arrays.stream(wh, 0, 24).sum(), 1e-9);
  }

  @Test
  void overlappingSpansCountOnce() {
    double[] wh =
        hours(
                Y2018,
                appliance(
                    1,
                    100,
                    0,
                    1,
                    EVERY_DAY,
                    ALWAYS,
                    new HourSpan(6, 9),
                    new HourSpan(8, 10.5),
                    new HourSpan(22, 7.5)))
            .acWh();
    // 22 to 10:30 next day: 12.5 hours
    assertEquals(1250.0, Arrays.stream(wh, 24, 48).sum(), 1e-9);
    assertEquals(50.0, wh[24 + 10], 1e-9);
  }

  @Test
  void wholeDayAndMidnightEnd() {
    assertEquals(
        2400.0,
        Arrays.stream(
                hours(Y2018, appliance(1, 100, 0, 1, EVERY_DAY, ALWAYS, new HourSpan(0, 24)))
                    .acWh(),
                0,
                24)
            .sum(),
        1e-9);
    assertEquals(
        200.0,
        Arrays.stream(
                hours(Y2018, appliance(1, 100, 0, 1, EVERY_DAY, ALWAYS, new HourSpan(22, 0)))
                    .acWh(),
                0,
                24)
            .sum(),
        1e-9);
  }

  /** 2020 has 366 days, 52 Mondays, and 29 days in February. */
  @Test
  void leapYearWeekdaysAndMonths() {
    HourCalendar leap = HourCalendar.of(2020, 1);
    LoadHours mondays =
        hours(
            leap,
            appliance(1, 100, 0, 1, EnumSet.of(DayOfWeek.MONDAY), ALWAYS, new HourSpan(10, 11)));
    assertEquals(5200.0, Arrays.stream(mondays.acWh()).sum(), 1e-6);
    Monthly half = Monthly.of(1, 0.5, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1);
    LoadHours daily = hours(leap, appliance(1, 100, 0, 1, EVERY_DAY, half, new HourSpan(10, 11)));
    assertEquals(29 * 50.0, daily.books().get(0).monthlyWh().in(2), 1e-9);
    assertEquals(31 * 100.0, daily.books().get(0).monthlyWh().in(3), 1e-9);
  }

  @Test
  void typicalYearBeginsOnItsCalendarsWeekday() {
    HourCalendar typical = HourCalendar.typicalYear();
    double[] wh =
        hours(
                typical,
                appliance(
                    1, 60, 0, 1, EnumSet.of(typical.dayOfWeek(0)), ALWAYS, new HourSpan(0, 1)))
            .acWh();
    assertEquals(60.0, wh[0], 1e-12);
    assertEquals(53 * 60.0, Arrays.stream(wh).sum(), 1e-6);
  }

  @Test
  void directCurrentIsKeptApart() {
    var fridge =
        new ApplianceSpec(
            "fridge",
            1,
            50,
            0,
            null,
            0.4,
            List.of(new HourSpan(0, 24)),
            EVERY_DAY,
            ALWAYS,
            Priority.MUST_RUN,
            Evidence.MEASURED,
            true,
            false);
    LoadHours got = hours(Y2018, fridge);
    assertEquals(0.0, Arrays.stream(got.acWh()).sum());
    assertEquals(0.4 * 50 * 8760, Arrays.stream(got.dcWh()).sum(), 1e-6);
    assertTrue(got.books().get(0).isDirectCurrent());
  }

  @Test
  void variationKeepsEachYearsEnergyAndIsTheSeeds() {
    HourCalendar years = HourCalendar.of(2015, 4);
    ApplianceSpec weekdayWork =
        appliance(
            1,
            800,
            3,
            1,
            EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
            Monthly.of(1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.5, 0.6, 0.7, 0.8, 0.9, 1),
            new HourSpan(9, 17));
    double[] plain = hours(years, weekdayWork).acWh();
    var plan = new LoadPlan(List.of(weekdayWork), null, 0.25);
    double[] varied = LoadHours.of(plan, null, Mild.of(years), 42L).acWh();
    for (int y = 0; y < 4; y++) {
      double plainWh =
          Arrays.stream(plain, years.firstHourOfYear(y), years.firstHourOfYear(y + 1)).sum();
      double variedWh =
          Arrays.stream(varied, years.firstHourOfYear(y), years.firstHourOfYear(y + 1)).sum();
      assertEquals(plainWh, variedWh, 1e-9 * plainWh);
    }
    assertArrayEquals(varied, LoadHours.of(plan, null, Mild.of(years), 42L).acWh());
    assertFalse(Arrays.equals(varied, LoadHours.of(plan, null, Mild.of(years), 43L).acWh()));
    // a year keeps its days whatever years stand around it, to the rounding of its scale
    double[] alone = LoadHours.of(plan, null, Mild.of(HourCalendar.of(2017, 1)), 42L).acWh();
    double[] within =
        Arrays.copyOfRange(varied, years.firstHourOfYear(2), years.firstHourOfYear(3));
    assertArrayEquals(alone, within, 1e-9);

    // 1461 days: the standard deviation of the factors is known to about 2 %, five times that
    // allowed
    double squares = 0.0;
    for (int d = 0; d < years.days(); d++) {
      double f = varied[d * 24 + 1] / plain[d * 24 + 1] - 1.0;
      squares += f * f;
    }
    assertEquals(0.25, Math.sqrt(squares / years.days()), 0.1 * 0.25);
  }

  @Property(tries = 200)
  void energyIsTheSumOfItsParts(@ForAll long seed) {
    var random = new Random(seed);
    var plan = new ApplianceSpec[3];
    for (int i = 0; i < plan.length; i++) {
      double fromH = 24.0 * random.nextDouble();
      double toH = 24.0 * random.nextDouble();
      plan[i] =
          appliance(
              random.nextInt(4),
              1000.0 * random.nextDouble(),
              10.0 * random.nextDouble(),
              random.nextDouble(),
              EVERY_DAY,
              ALWAYS,
              new HourSpan(fromH, toH));
    }
    LoadHours got = hours(Y2018, plan);
    double expectedWh = 0.0;
    double booksWh = 0.0;
    for (int i = 0; i < plan.length; i++) {
      HourSpan span = plan[i].hours().get(0);
      double lengthH = span.toH() - span.fromH() + (span.toH() < span.fromH() ? 24.0 : 0.0);
      double runH = lengthH * plan[i].dutyShare();
      expectedWh +=
          365 * plan[i].quantity() * (plan[i].powerW() * runH + plan[i].standbyW() * (24.0 - runH));
      booksWh += got.books().get(i).yearlyWh();
    }
    assertEquals(expectedWh, Arrays.stream(got.acWh()).sum(), 1e-6 + 1e-9 * expectedWh);
    assertEquals(expectedWh, booksWh, 1e-6 + 1e-9 * expectedWh);
    assertTrue(Arrays.stream(got.acWh()).allMatch(wh -> wh >= 0.0));
  }

  @Test
  void refusesWhatNoApplianceCanBe() {
    assertThrows(IllegalArgumentException.class, () -> new HourSpan(6, 6));
    assertThrows(IllegalArgumentException.class, () -> new HourSpan(24, 6));
    assertThrows(IllegalArgumentException.class, () -> new HourSpan(Double.NaN, 6));
    assertThrows(
        IllegalArgumentException.class,
        () -> appliance(1, 10, 0, 0.9, EVERY_DAY, Monthly.constant(1.2), new HourSpan(1, 2)));
    assertThrows(IllegalArgumentException.class, () -> appliance(1, -10, 0, 1, EVERY_DAY, ALWAYS));
  }
}
