package greyspell.load;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import greyspell.load.ApplianceSpec.HourSpan;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Over random houses: classes sum to the whole, months to the year, seeds repeat. */
class LoadClassesLawTest {
  private static LoadWeather weather(Random random) {
    HourCalendar calendar = HourCalendar.of(2015 + random.nextInt(6), 1);
    var airC = new double[calendar.hours()];
    for (int h = 0; h < airC.length; h++) {
      airC[h] = 10 - 12 * Math.cos(h * 2 * Math.PI / 8760) + 4 * random.nextGaussian();
    }
    return Mild.of(calendar, airC);
  }

  private static ApplianceSpec appliance(Random random) {
    var days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (random.nextInt(4) > 0) {
        days.add(day);
      }
    }
    double from = random.nextInt(96) / 4.0;
    double to = random.nextInt(97) / 4.0;
    var months = new double[12];
    for (int m = 0; m < 12; m++) {
      months[m] = random.nextInt(3) / 2.0;
    }
    var spec =
        new ApplianceSpec(
            "thing",
            random.nextInt(4),
            1 + random.nextInt(2000),
            random.nextInt(5),
            random.nextBoolean() ? 4000.0 : null,
            random.nextDouble(),
            from == to ? List.of() : List.of(new HourSpan(from, to)),
            days,
            Monthly.of(months),
            List.of(Priority.values()).get(random.nextInt(3)),
            List.of(Evidence.values()).get(random.nextInt(3)),
            random.nextInt(4) == 0,
            false);
    WeatherDraw draw =
        switch (random.nextInt(4)) {
          case 0 ->
              new DegreeHours(
                  random.nextBoolean(),
                  random.nextInt(200),
                  15,
                  List.of(new DegreeHours.CopAt(-10, 2), new DegreeHours.CopAt(10, 4)));
          case 1 -> new RoomDraw(null, 0, 40, 0.04, 20);
          default -> null;
        };
    Season season =
        switch (random.nextInt(4)) {
          case 0 -> new Season.ByTemperature(random.nextBoolean(), 10);
          case 1 -> new Season.ByDayLength(random.nextBoolean(), 12.1);
          default -> null;
        };
    return spec.with(season, draw, null);
  }

  private static LoadPlan plan(Random random) {
    var appliances = new ArrayList<ApplianceSpec>();
    int count = random.nextInt(7);
    for (int i = 0; i < count; i++) {
      appliances.add(appliance(random));
    }
    return new LoadPlan(
        appliances,
        null,
        random.nextInt(2) * 0.3,
        random.nextInt(2) * 0.5,
        random.nextInt(2) * 0.2,
        LoadPolicy.NONE);
  }

  @Property(tries = 40)
  void classesAndMonthsSumToTheWhole(@ForAll long seed) {
    var random = new Random(seed);
    LoadWeather weather = weather(random);
    LoadPlan plan = plan(random);
    LoadHours got = LoadHours.of(plan, null, weather, seed);
    double[] peakW = got.peakW();
    double allWh = 0.0;
    for (int h = 0; h < weather.calendar().hours(); h++) {
      double ac = 0.0;
      double dc = 0.0;
      for (Priority priority : Priority.values()) {
        ac += got.acWh(priority)[h];
        dc += got.dcWh(priority)[h];
      }
      assertEquals(got.acWh()[h], ac, 0.0);
      assertEquals(got.dcWh()[h], dc, 0.0);
      org.junit.jupiter.api.Assertions.assertTrue(ac >= 0.0 && dc >= 0.0 && peakW[h] >= ac);
      allWh += ac + dc;
    }
    double booksWh = 0.0;
    for (LoadBook book : got.books()) {
      double monthsWh = book.monthlyWh().list().stream().mapToDouble(x -> x).sum();
      assertEquals(book.yearlyWh(), monthsWh, 1e-9 * (1 + monthsWh));
      booksWh += monthsWh;
    }
    assertEquals(allWh, booksWh, 1e-9 * (1 + allWh));
  }

  @Property(tries = 20)
  void seedsRepeatAndVariationAddsNothing(@ForAll long seed) {
    var random = new Random(seed);
    LoadWeather weather = weather(random);
    LoadPlan plan = plan(random);
    LoadHours first = LoadHours.of(plan, null, weather, seed);
    LoadHours again = LoadHours.of(plan, null, weather, seed);
    assertArrayEquals(first.acWh(), again.acWh());
    assertArrayEquals(first.dcWh(), again.dcWh());
    assertArrayEquals(first.peakW(), again.peakW());
    var plain = new LoadPlan(plan.appliances(), null, 0, 0, plan.growthFraction(), LoadPolicy.NONE);
    double plainWh = sum(LoadHours.of(plain, null, weather, seed));
    assertEquals(plainWh, sum(first), 1e-9 * (1 + plainWh));
  }

  private static double sum(LoadHours load) {
    return Arrays.stream(load.acWh()).sum() + Arrays.stream(load.dcWh()).sum();
  }

  /** One factor moves one load's book, and no other. */
  @Property(tries = 20)
  void oneLoadAtATime(@ForAll long seed) {
    var random = new Random(seed);
    LoadWeather weather = weather(random);
    LoadPlan plan = plan(random);
    if (plan.loads() == 0) {
      return;
    }
    int one = random.nextInt(plan.loads());
    var still = new LoadPlan(plan.appliances(), null, 0.0);
    List<LoadBook> before = LoadHours.of(still, null, weather, seed).books();
    List<LoadBook> after = LoadHours.of(still.withFactor(one, 1.3), null, weather, seed).books();
    for (int i = 0; i < before.size(); i++) {
      double factor = i == one ? 1.3 : 1.0;
      double wantedWh = factor * before.get(i).yearlyWh();
      assertEquals(wantedWh, after.get(i).yearlyWh(), 1e-9 * (1 + wantedWh));
    }
    double lowWh = sum(LoadHours.of(still.low(), null, weather, seed));
    double statedWh = before.stream().mapToDouble(LoadBook::lowYearlyWh).sum();
    assertEquals(statedWh, lowWh, 1e-9 * (1 + lowWh));
  }
}
