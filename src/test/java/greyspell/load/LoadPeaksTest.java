package greyspell.load;

import static greyspell.load.Things.ALL_DAY;
import static greyspell.load.Things.plan;
import static greyspell.load.Things.thing;
import static greyspell.load.Things.varied;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.load.ApplianceSpec.HourSpan;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class LoadPeaksTest {
  private static final LoadWeather MILD = Mild.of(HourCalendar.of(2018, 1));
  private static final ApplianceSpec PUMP =
      thing("pump", 1, 800, 0, 3600.0, 0.1, Priority.MUST_RUN, false, new HourSpan(8, 10));
  private static final ApplianceSpec FRIDGE =
      thing("fridge", 2, 100, 0, 600.0, 0.3, Priority.MUST_RUN, false, ALL_DAY);
  private static final ApplianceSpec TELEVISION =
      thing("tv", 1, 90, 5, null, 1.0, Priority.CAN_WAIT, false, new HourSpan(8.5, 9));
  private static final ApplianceSpec ON_THE_BUS =
      thing("bus", 1, 500, 0, 5000.0, 1.0, Priority.MUST_RUN, true, ALL_DAY);

  /**
   * 0 h: two fridges, one starts: 200 + 500, the television stands by. 8 h: all, the pump starts.
   */
  @Test
  void everythingThatCanRunTogetherAndOneStart() {
    double[] peakW =
        LoadHours.of(plan(PUMP, FRIDGE, TELEVISION, ON_THE_BUS), null, MILD, 1L).peakW();
    assertEquals(200 + 5 + 500, peakW[0], 1e-9);
    assertEquals(800 + 200 + 90 + 2800, peakW[8], 1e-9);
    assertEquals(800 + 200 + 5 + 2800, peakW[9], 1e-9);
  }

  @Test
  void theSeedDecidesWhatRunsTogether() {
    LoadPlan plan = varied(0.2, 0.0, PUMP, FRIDGE, TELEVISION);
    double[] peakW = LoadHours.of(plan, null, MILD, 7L).peakW();
    assertArrayEquals(peakW, LoadHours.of(plan, null, MILD, 7L).peakW());
    assertFalse(Arrays.equals(peakW, LoadHours.of(plan, null, MILD, 8L).peakW()));
    boolean isOneFridge = false;
    double[] wh = LoadHours.of(plan, null, MILD, 7L).acWh();
    for (int h = 0; h < peakW.length; h++) {
      assertTrue(peakW[h] >= wh[h], "hour " + h);
      assertTrue(peakW[h] <= Math.max(wh[h], 800 + 200 + 90 + 2800), "hour " + h);
      isOneFridge |= peakW[h] == 5 + 100 + 500;
    }
    assertTrue(isOneFridge, "two fridges do not always run together");
  }

  @Test
  void aPeakIsTheSameWhicheverHoursAreAskedFor() {
    LoadHours got = LoadHours.of(varied(0.2, 0.1, PUMP, FRIDGE, TELEVISION), null, MILD, 7L);
    double[] peakW = got.peakW(), belowW = got.peaksBelowW(62.0).get();
    int asked = 0;
    for (int h = 0; h < peakW.length; h++) {
      boolean isAsked = got.acWh()[h] < 62.0;
      asked += isAsked ? 1 : 0;
      assertEquals(isAsked ? peakW[h] : got.acWh()[h], belowW[h], 0.0, "hour " + h);
    }
    assertTrue(asked > 500 && asked < peakW.length - 500, asked + " hours");
  }

  /** A log in quarter hours: 100, 100, 100 and 500 Wh are 800 Wh with a peak of 2 kW. */
  @Test
  void aLogKnowsItsPeaks() {
    var minute = new long[14 * 96];
    var wh = new double[14 * 96];
    for (int i = 0; i < wh.length; i++) {
      minute[i] = 17532L * 1440 + 15L * i; // 1 January 2018
      wh[i] = i % 4 == 3 ? 500 : 100;
    }
    LoadLog log = LoadLog.of(new LoadRecord(minute, wh, 15));
    var plan = new LoadPlan(List.of(FRIDGE), new LogSpec("x", 2.0), 0.0);
    LoadHours got = LoadHours.of(plan, log, MILD, 1L);
    assertEquals(2 * 800 + 60, got.acWh()[5], 1e-9);
    assertEquals(2 * 2000 + 200 + 500, got.peakW()[5], 1e-9);
    assertEquals(2 * 2000 + 200 + 500, got.peakW()[8000], 1e-9);
    assertEquals(2 * 800.0, got.acWh(Priority.MUST_RUN)[5] - 60, 1e-9, "a log must run");
  }

  @Test
  void growthIsInThePeak() {
    var plan = new LoadPlan(List.of(PUMP), null, 0.0, 0.0, 0.5, LoadPolicy.NONE);
    assertEquals(1.5 * 800 + 2800, LoadHours.of(plan, null, MILD, 1L).peakW()[8], 1e-9);
  }

  @Test
  void alwaysOnIsStandbyAndWhatNeverStops() {
    AlwaysOn got =
        LoadHours.of(
                plan(FRIDGE, TELEVISION, thing("router", 12, 1, ALL_DAY), PUMP), null, MILD, 1L)
            .alwaysOn();
    assertEquals(17.0, got.meanW(), 1e-9);
    assertEquals(List.of("router", "tv"), got.parts().stream().map(AlwaysOn.Part::name).toList());
  }
}
