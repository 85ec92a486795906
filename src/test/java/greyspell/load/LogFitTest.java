package greyspell.load;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.load.LogFit.Coefficient;
import greyspell.load.LogFit.Term;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Logs made of known parts give these parts back. */
class LogFitTest {
  private static final HourCalendar YEARS = HourCalendar.of(2017, 2);
  private static final long FIRST_DAY = 17167; // 1 January 2017

  private static double airC(int day) {
    return 10 - 12 * Math.cos(day * 2 * Math.PI / 365) + 5 * Math.sin(day * 1.7);
  }

  private static LoadWeather weather() {
    var airC = new double[YEARS.hours()];
    for (int h = 0; h < airC.length; h++) {
      airC[h] = airC(h / 24);
    }
    return Mild.of(YEARS, airC);
  }

  /** 4800 Wh, 600 more on weekends, 120 a degree below 15, 75 a degree above 22, and some noise. */
  private static LoadLog log(int days, double noiseWh) {
    var random = new Random(11);
    var minute = new long[days * 24];
    var wh = new double[days * 24];
    for (int h = 0; h < wh.length; h++) {
      int day = h / 24;
      minute[h] = (FIRST_DAY * 24 + h) * 60;
      boolean isWeekend = (day + 6) % 7 >= 5; // 1 January 2017 was a Sunday
      double dayWh =
          4800
              + (isWeekend ? 600 : 0)
              + 120 * Math.max(0, 15 - airC(day))
              + 75 * Math.max(0, airC(day) - 22);
      wh[h] = dayWh * (h % 24 == 18 ? 0.31 : 0.03);
    }
    for (int day = 0; day < days; day++) {
      wh[day * 24 + 18] += noiseWh * random.nextGaussian();
    }
    return LoadLog.of(new LoadRecord(minute, wh, 60));
  }

  private static double value(LogFit fit, Term term) {
    for (Coefficient c : fit.coefficients()) {
      if (c.term() == term) {
        return c.valueWh();
      }
    }
    return Double.NaN;
  }

  @Test
  void givesBackWhatItWasMadeOf() {
    LogFit fit = LogFit.of(log(365, 0.0), weather());
    assertEquals(4800.0, value(fit, Term.CONSTANT), 1e-6);
    assertEquals(600.0, value(fit, Term.WEEKEND), 1e-6);
    assertEquals(120.0, value(fit, Term.COLD), 1e-6);
    assertEquals(75.0, value(fit, Term.HEAT), 1e-6);
    assertEquals(0.0, value(fit, Term.COSINE), 1e-6);
    assertEquals(1.0, fit.rSquaredShare(), 1e-9);
    assertEquals(365, fit.days());
    assertEquals(List.of(), fit.notes());
  }

  /** Noise of 300 Wh is the standard error of a day, and each coefficient lies near its own. */
  @Test
  void tellsHowSureItIs() {
    LogFit fit = LogFit.of(log(365, 300.0), weather());
    assertEquals(300.0, fit.standardErrorWh(), 40.0);
    assertTrue(fit.rSquaredShare() > 0.5 && fit.rSquaredShare() < 1.0);
    for (Coefficient c : fit.coefficients()) {
      double truth =
          switch (c.term()) {
            case CONSTANT -> 4800;
            case WEEKEND -> 600;
            case COLD -> 120;
            case HEAT -> 75;
            default -> 0;
          };
      assertEquals(truth, c.valueWh(), 4 * c.standardErrorWh(), c.term().name());
    }
  }

  /** The second year is not measured, and comes out as it was made. */
  @Test
  void otherDaysFollowTheFit() {
    var spec =
        new LogSpec(
            "x", 1.0, Priority.SHOULD_RUN, LogClock.STANDARD, null, LogExtension.FIT, false);
    var plan = new LoadPlan(List.of(), spec, 0.0);
    LoadHours got = LoadHours.of(plan, log(365, 0.0), weather(), 1L);
    double[] wh = got.acWh(Priority.SHOULD_RUN);
    for (int day : new int[] {10, 200, 370, 400, 560, 700}) {
      boolean isWeekend = (day + 6) % 7 >= 5;
      double wanted =
          4800
              + (isWeekend ? 600 : 0)
              + 120 * Math.max(0, 15 - airC(day))
              + 75 * Math.max(0, airC(day) - 22);
      assertEquals(wanted, Arrays.stream(wh, day * 24, day * 24 + 24).sum(), 1e-4, "day " + day);
      assertEquals(0.31 * wanted, wh[day * 24 + 18], 1e-4, "the shape stays");
    }
    assertNotNull(got.logFit());
  }

  @Test
  void scatterComesFromTheSeed() {
    var spec =
        new LogSpec("x", 1.0, Priority.MUST_RUN, LogClock.STANDARD, null, LogExtension.FIT, true);
    var plan = new LoadPlan(List.of(), spec, 0.0);
    LoadLog log = log(365, 300.0);
    double[] wh = LoadHours.of(plan, log, weather(), 5L).acWh();
    assertArrayEquals(wh, LoadHours.of(plan, log, weather(), 5L).acWh());
    double[] other = LoadHours.of(plan, log, weather(), 6L).acWh();
    int year = 365 * 24;
    assertArrayEquals(Arrays.copyOf(wh, year), Arrays.copyOf(other, year), "measured days stay");
    assertFalse(Arrays.equals(wh, other));
  }

  @Test
  void shortLogsSaySo() {
    LogFit ten = LogFit.of(log(10, 0.0), weather());
    assertFalse(ten.isUsable());
    assertTrue(
        ten.notes().get(0).contains("too short for a fit (10 measured days"),
        ten.notes()::toString);
    LogFit sixty = LogFit.of(log(60, 50.0), weather());
    assertTrue(sixty.isUsable());
    assertEquals(3, sixty.coefficients().size(), "constant, weekend, cold");
    String notes = String.join("; ", sixty.notes());
    assertTrue(notes.contains("too short for the season (60 days"), notes);
    assertTrue(notes.contains("each degree above 22 °C"), notes);
  }

  @Test
  void withoutWeatherOfItsOwnYearsNoTemperature() {
    LogFit fit = LogFit.of(log(365, 50.0), Mild.of(HourCalendar.typicalYear()));
    String notes = String.join("; ", fit.notes());
    assertTrue(notes.contains("temperature could not be fitted: 0 measured days"), notes);
    assertEquals(Double.NaN, value(fit, Term.COLD));
    assertFalse(Double.isNaN(value(fit, Term.COSINE)));
  }
}
