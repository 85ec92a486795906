package greyspell.weather.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.Monthly;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Years made from monthly means: exact means, published days, skies that last, any order. */
class MadeWintersTest {
  private static final int[] MONTH = YearDays.monthOfDay();
  private static final long SEED = 11;

  static Stream<SiteClimate> climates() {
    return Stream.of(Climates.maritime(), Climates.plateau(), Climates.south());
  }

  private static double dayWhm2(WeatherYear year, int day) {
    double sum = 0.0;
    for (int h = 0; h < 24; h++) {
      sum += year.globalHorizontalWm2()[day * 24 + h];
    }
    return sum;
  }

  @ParameterizedTest
  @MethodSource("climates")
  void monthlyMeansAreMetExactlyOverTheEnsemble(SiteClimate climate) {
    for (int years : new int[] {1, 2, 10, 100}) {
      WinterSource source = EnsembleSource.of(climate, SynthesisChoices.USUAL, years, SEED);
      var sumWhm2 = new double[12];
      var sumC = new double[12];
      var year = new WeatherYear();
      for (int y = 0; y < years; y++) {
        source.fill(y, year);
        for (int day = 0; day < 365; day++) {
          sumWhm2[MONTH[day]] += dayWhm2(year, day);
          for (int h = 0; h < 24; h++) {
            sumC[MONTH[day]] += year.airTemperatureC()[day * 24 + h];
          }
        }
      }
      for (int m = 0; m < 12; m++) {
        double days = (double) YearDays.length(m) * years;
        double wantedWhm2 = climate.dailyGlobalWhm2().in(m + 1);
        assertEquals(wantedWhm2, sumWhm2[m] / days, 1e-9 * wantedWhm2, years + " y, month " + m);
        assertEquals(climate.meanTemperatureC().in(m + 1), sumC[m] / days / 24.0, 1e-9);
      }
    }
  }

  /**
   * Bendt et al. (1981): the share of days below a clearness. 400 winters hold about 12,400 days of
   * a month; those that follow each other count as fewer, so that three standard errors are 0.02.
   */
  @ParameterizedTest
  @MethodSource("climates")
  void daysMeetThePublishedDistribution(SiteClimate climate) {
    int years = 400;
    for (SkyMemory memory : new SkyMemory[] {SkyMemory.ONE_LAG, SkyMemory.GREY_SPELLS}) {
      var choices = SynthesisChoices.USUAL.withMemory(memory);
      WinterSource source = EnsembleSource.of(climate, choices, years, SEED);
      var sun = new SunYear(climate.site());
      var year = new WeatherYear();
      double[][] days = new double[12][];
      var count = new int[12];
      for (int m = 0; m < 12; m++) {
        days[m] = new double[years * YearDays.length(m)];
      }
      for (int y = 0; y < years; y++) {
        source.fill(y, year);
        for (int day = 0; day < 365; day++) {
          days[MONTH[day]][count[MONTH[day]]++] = dayWhm2(year, day) / sun.dayWhm2[day];
        }
      }
      for (int m = 0; m < 12; m++) {
        Arrays.sort(days[m]);
        double mean =
            climate.dailyGlobalWhm2().in(m + 1) / SiteClimate.aboveWhm2(climate.site(), m + 1);
        var published = new DailyClearness(mean);
        for (double share = 0.05; share < 1.0; share += 0.05) {
          double clearness = days[m][(int) (share * days[m].length)];
          assertEquals(share, published.share(clearness), 0.02, memory + " month " + m);
        }
      }
    }
  }

  @Test
  void aYearIsTheSameInAnyOrderAndFromASecondSource() {
    SiteClimate climate = Climates.maritime();
    WinterSource source = EnsembleSource.of(climate, SynthesisChoices.USUAL, 30, SEED);
    WinterSource again = EnsembleSource.of(climate, SynthesisChoices.USUAL, 30, SEED);
    var one = new WeatherYear();
    var other = new WeatherYear();
    source.fill(17, one);
    for (int y = 29; y >= 17; y--) {
      again.fill(y, other);
    }
    assertArrayEquals(one.globalHorizontalWm2(), other.globalHorizontalWm2(), 0.0);
    assertArrayEquals(one.airTemperatureC(), other.airTemperatureC(), 0.0);
    again.fill(16, other);
    assertFalse(Arrays.equals(one.globalHorizontalWm2(), other.globalHorizontalWm2()));
    EnsembleSource.of(climate, SynthesisChoices.USUAL, 30, SEED + 1).fill(17, other);
    assertFalse(Arrays.equals(one.globalHorizontalWm2(), other.globalHorizontalWm2()));
  }

  @Test
  void aFillAllocatesNothing() {
    WinterSource source = EnsembleSource.of(Climates.maritime(), SynthesisChoices.USUAL, SEED);
    var year = new WeatherYear();
    var threads =
        (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
    long self = Thread.currentThread().getId();
    for (int y = 0; y < 200; y++) {
      source.fill(y, year);
    }
    long before = threads.getThreadAllocatedBytes(self);
    long nothing = threads.getThreadAllocatedBytes(self) - before;
    before = threads.getThreadAllocatedBytes(self);
    for (int y = 200; y < 400; y++) {
      source.fill(y, year);
    }
    long used = threads.getThreadAllocatedBytes(self) - before - nothing;
    assertTrue(used < 2_000, used + " bytes");
  }

  /** The memory shows: own working-out of the spread of a month's mean, and what years do. */
  @Test
  void monthsSwingAsWorkedOutAndAsStated() {
    for (double stated : new double[] {0.0, 0.16, 0.25}) {
      var choices = SynthesisChoices.USUAL;
      if (stated > 0.0) {
        choices = choices.withYearSpread(Monthly.constant(stated));
      }
      SiteClimate climate = Climates.maritime();
      int years = 600;
      WinterSource source = EnsembleSource.of(climate, choices, years, SEED);
      var year = new WeatherYear();
      var sum = new double[12];
      var square = new double[12];
      for (int y = 0; y < years; y++) {
        source.fill(y, year);
        var month = new double[12];
        for (int day = 0; day < 365; day++) {
          month[MONTH[day]] += dayWhm2(year, day);
        }
        for (int m = 0; m < 12; m++) {
          sum[m] += month[m] / years;
          square[m] += month[m] * month[m] / years;
        }
      }
      for (int m = 0; m < 12; m++) {
        double got = Math.sqrt(square[m] - sum[m] * sum[m]) / sum[m];
        var sky =
            new MonthSky(
                climate.dailyGlobalWhm2().in(m + 1) / SiteClimate.aboveWhm2(climate.site(), m + 1),
                YearDays.length(m));
        sky.remember(choices.memory());
        double wanted = stated > 0.0 ? stated : sky.spreadFraction();
        // a standard deviation of 600 years is known to 3 %; the sun's course within a month adds
        assertEquals(wanted, got, 0.12 * wanted, "month " + (m + 1) + " stated " + stated);
      }
    }
  }

  /** Own construction: mean clearness 0.45, one lag of 0.29 gives 0.274 of days. */
  @Test
  void oneLagGivesTheDaysTheirCorrelation() {
    var sky = new MonthSky(0.45, 31);
    sky.remember(SkyMemory.ONE_LAG);
    var random = new YearRandom();
    random.begin(SEED, 0, YearRandom.SKY);
    double x = random.normal();
    double sum = 0.0;
    double square = 0.0;
    double product = 0.0;
    double before = sky.clearness(x);
    int n = 400_000;
    for (int i = 0; i < n; i++) {
      x = 0.29 * x + Math.sqrt(1.0 - 0.29 * 0.29) * random.normal();
      double clearness = sky.clearness(x);
      sum += clearness / n;
      square += clearness * clearness / n;
      product += clearness * before / n;
      before = clearness;
    }
    double variance = square - sum * sum;
    assertEquals(0.450, sum, 0.002);
    assertEquals(0.1986, Math.sqrt(variance), 0.001);
    assertEquals(0.274, (product - sum * sum) / variance, 0.005);
  }

  @ParameterizedTest
  @MethodSource("climates")
  void hoursAreWithinTheSun(SiteClimate climate) {
    WinterSource source = EnsembleSource.of(climate, SynthesisChoices.USUAL, SEED);
    var sun = new SunYear(climate.site());
    var year = new WeatherYear();
    for (int y = 0; y < 20; y++) {
      source.fill(y, year);
      for (int hour = 0; hour < WeatherYear.HOURS; hour++) {
        double wm2 = year.globalHorizontalWm2()[hour];
        assertTrue(wm2 >= 0.0 && wm2 <= 0.95 * sun.aboveWm2[hour] + 1e-9, hour + ": " + wm2);
      }
    }
  }

  /**
   * Graham and Hollands (1990): successive hours correlate by 0.54, +- 0.14. Once a day's sum is
   * held less of it is left to be seen: in this measure ten measured years of two lowland stations
   * show 0.38 (worked out apart), and the spread is the paper's.
   */
  @Test
  void hoursOfADayFollowEachOther() {
    SiteClimate climate = Climates.plateau();
    WinterSource source = EnsembleSource.of(climate, SynthesisChoices.USUAL, SEED);
    var sun = new SunYear(climate.site());
    var year = new WeatherYear();
    double product = 0.0;
    double square = 0.0;
    for (int y = 0; y < 30; y++) {
      source.fill(y, year);
      for (int day = 0; day < 365; day++) {
        double clearness = dayWhm2(year, day) / sun.dayWhm2[day];
        if (clearness > 0.6) {
          continue; // bright hours stand at their cap
        }
        double before = 0.0;
        for (int h = 8; h < 17; h++) {
          int hour = day * 24 + h;
          double smooth = clearness * sun.dayWhm2[day] * sun.dayShare[hour];
          double off = (year.globalHorizontalWm2()[hour] - smooth) / sun.aboveWm2[hour];
          double sd = HourSpread.deviation(clearness, sun.sinHeight[hour]);
          product += h > 8 ? off / sd * before : 0.0;
          square += h > 8 ? 0.5 * (off / sd * off / sd + before * before) : 0.0;
          before = off / sd;
        }
      }
    }
    assertEquals(0.38, product / square, 0.14);
  }

  @Test
  void clearDaysAreColdInWinterAndWarmInSummer() {
    SiteClimate climate = Climates.maritime();
    WinterSource source = EnsembleSource.of(climate, SynthesisChoices.USUAL, SEED);
    var sun = new SunYear(climate.site());
    var year = new WeatherYear();
    var sum = new double[2][2];
    var count = new int[2][2];
    double stepK = 0.0;
    for (int y = 0; y < 60; y++) {
      source.fill(y, year);
      for (int day = 0; day < 365; day++) {
        int season = MONTH[day] == 0 ? 0 : MONTH[day] == 6 ? 1 : -1;
        if (season < 0) {
          continue;
        }
        double mean = season == 0 ? 0.29 : 0.45;
        int bright = dayWhm2(year, day) / sun.dayWhm2[day] > mean ? 1 : 0;
        for (int h = 0; h < 24; h++) {
          sum[season][bright] += year.airTemperatureC()[day * 24 + h] / 24.0;
        }
        count[season][bright]++;
      }
      for (int hour = 1; hour < WeatherYear.HOURS; hour++) {
        if (hour != year.seamHour()) {
          double step = year.airTemperatureC()[hour] - year.airTemperatureC()[hour - 1];
          stepK = Math.max(stepK, Math.abs(step));
        }
      }
    }
    assertTrue(sum[0][1] / count[0][1] < sum[0][0] / count[0][0] - 1.0, "clear frosts");
    assertTrue(sum[1][1] / count[1][1] > sum[1][0] / count[1][0] + 1.0, "warm summers");
    assertTrue(stepK < 6.0, "largest step between hours " + stepK);
  }

  /**
   * A public example (opened second-hand) has this clearness, month by month, 1594.5 kWh/m2 a year,
   * and says that years made of it bring 1550 to 1700. The mean of fifty must meet the sum within 2
   * %. The bounds of a single year are our own choice, some 9 % off: 3.4 standard deviations of
   * years with one lag of memory, so that one in some thousands goes beyond.
   */
  @Test
  void fiftyYearsOfASunnyCoastStayAboutTheirMean() {
    WinterSource source =
        EnsembleSource.of(
            Climates.south(), SynthesisChoices.USUAL.withMemory(SkyMemory.ONE_LAG), SEED);
    var year = new WeatherYear();
    double mean = 0.0;
    for (int y = 0; y < 50; y++) {
      source.fill(y, year);
      double sum = 0.0;
      for (double wm2 : year.globalHorizontalWm2()) {
        sum += wm2 / 1000.0;
      }
      assertTrue(sum > 1450.0 && sum < 1740.0, "year " + y + " " + sum);
      mean += sum / 50.0;
    }
    assertEquals(1594.5, mean, 0.02 * 1594.5);
  }

  @Test
  void refusesWhatItCannotMake() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new SiteClimate(
                Climates.maritime().site(), Monthly.constant(5000), Monthly.constant(10)));
    WinterSource source = EnsembleSource.of(Climates.maritime(), SynthesisChoices.USUAL, 5, SEED);
    assertThrows(IllegalArgumentException.class, () -> source.fill(5, new WeatherYear()));
    assertThrows(IllegalArgumentException.class, () -> source.fill(-1, new WeatherYear()));
    assertThrows(IllegalArgumentException.class, () -> new SkyMemory(Double.NaN, 0.1, 10.0));
  }

  @Test
  void saysWhatCannotBeMet() {
    var choices = SynthesisChoices.USUAL.withYearSpread(Monthly.constant(0.02));
    var notes = EnsembleSource.of(Climates.maritime(), choices, 2, SEED).notes();
    assertTrue(notes.stream().anyMatch(n -> n.contains("cannot be met")), notes.toString());
  }
}
