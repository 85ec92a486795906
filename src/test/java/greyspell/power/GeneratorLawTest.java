package greyspell.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.power.GeneratorSpec.Derating;
import greyspell.power.GeneratorSpec.FuelAt;
import java.time.DayOfWeek;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class GeneratorLawTest {
  private static final double MICRO_L = 1e-6;

  private static GeneratorSpec random(SplittableRandom draw) {
    var points = new ArrayList<FuelAt>();
    double share = draw.nextDouble() * 0.3;
    double rate = draw.nextDouble();
    for (int i = draw.nextInt(1, 6); i > 0; i--) {
      points.add(new FuelAt(share, rate));
      share += 0.01 + draw.nextDouble() * 0.2;
      rate += draw.nextDouble();
    }
    var derating =
        new Derating(
            draw.nextDouble(-400, 2000),
            draw.nextDouble() * 1e-3,
            draw.nextDouble(-20, 40),
            draw.nextDouble() * 0.05);
    return new GeneratorSpec(
        "g", 1, 500.0 + 20_000.0 * draw.nextDouble(), Fuel.PETROL, points, derating);
  }

  @Property
  void fuelIsMonotoneInLoadAndNeverNegative(@ForAll long seed) {
    GeneratorSpec g = random(new SplittableRandom(seed));
    double last = 0.0;
    for (int i = 0; i <= 120; i++) {
      double now = g.fuelLPerH(g.ratedPowerW() * i / 100.0);
      assertTrue(now >= last - 1e-12, "at " + i + " %: " + now + " after " + last);
      last = now;
    }
  }

  @Property
  void whatItCanHoldLiesBetweenNothingAndItsRating(
      @ForAll long seed,
      @ForAll @DoubleRange(min = -450, max = 9000) double elevationM,
      @ForAll @DoubleRange(min = -60, max = 60) double airC) {
    GeneratorSpec g = random(new SplittableRandom(seed));
    double mostW = g.mostW(elevationM, airC);
    assertTrue(mostW >= 0.0 && mostW <= g.ratedPowerW(), () -> "" + mostW);
    assertTrue(g.mostW(elevationM + 100.0, airC) <= mostW);
    assertTrue(g.mostW(elevationM, airC + 1.0) <= mostW);
  }

  /** Minute by minute, the slow way. */
  @Property(tries = 60)
  void permittedHoursAreAsStated(@ForAll long seed) {
    var draw = new SplittableRandom(seed);
    var spans = new ArrayList<RunTimes.Span>();
    for (int i = draw.nextInt(1, 4); i > 0; i--) {
      int from = draw.nextInt(96);
      int to = (from + draw.nextInt(1, 96)) % 96;
      spans.add(new RunTimes.Span(from / 4.0, to == 0 ? 24.0 : to / 4.0));
    }
    var days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (draw.nextBoolean()) {
        days.add(day);
      }
    }
    var months = EnumSet.of(Month.of(draw.nextInt(1, 13)), Month.of(draw.nextInt(1, 13)));
    HourCalendar calendar = HourCalendar.of(2016 + draw.nextInt(4), 1);
    boolean[] got = new RunTimes(spans, days, months).hours(calendar);
    for (int h = 0; h < got.length; h++) {
      boolean isWhole = months.contains(Month.of(calendar.month(h)));
      for (int minute = 0; minute < 60 && isWhole; minute++) {
        isWhole = isInside(h % 24 + minute / 60.0, calendar.dayOfWeek(h), spans, days);
      }
      assertEquals(isWhole, got[h], "hour " + h);
    }
  }

  private static boolean isInside(
      double timeH, DayOfWeek day, List<RunTimes.Span> spans, EnumSet<DayOfWeek> days) {
    for (RunTimes.Span span : spans) {
      boolean isOver = span.toH() < span.fromH();
      boolean isToday = timeH >= span.fromH() && (isOver || timeH < span.toH());
      boolean isTail = isOver && timeH < span.toH();
      if ((isToday && days.contains(day)) || (isTail && days.contains(day.minus(1)))) {
        return true;
      }
    }
    return false;
  }

  @Property
  void partsOfTheFuelMakeUpTheWhole(@ForAll long seed) {
    var draw = new SplittableRandom(seed);
    GeneratorSpec g = random(draw);
    int hours = draw.nextInt(1, 200);
    var wh = new double[hours];
    var on = new double[hours];
    for (int h = 0; h < hours; h++) {
      if (draw.nextBoolean()) {
        on[h] = 0.01 + 0.99 * draw.nextDouble();
        wh[h] = on[h] * g.ratedPowerW() * draw.nextDouble();
      }
    }
    FuelUse use = FuelUse.of(g, wh, on);
    int middle = draw.nextInt(hours + 1);
    assertEquals(use.totalL(), use.totalL(0, middle) + use.totalL(middle, hours), MICRO_L);
    assertEquals(use.runningH(), use.runningH(0, middle) + use.runningH(middle, hours), MICRO_L);
    assertEquals(use.starts(), use.starts(0, middle) + use.starts(middle, hours));
    assertTrue(use.starts() <= (hours + 1) / 2);
    double mostL = use.runningH() * g.fuelLPerH(g.ratedPowerW());
    assertTrue(use.totalL() >= 0.0 && use.totalL() <= mostL + MICRO_L);
  }
}
