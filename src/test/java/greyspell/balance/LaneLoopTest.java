package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import greyspell.power.step.InverterLimits;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** The loops that keep sums only, against the ledger. */
class LaneLoopTest {
  private static final double A_BILLIONTH_OF_A_KWH = 1e-6;
  private static final int DAYS = 45;

  /** What the ledger says, with the panels as a factor. */
  static RunSums booked(Forcing forcing, double solarFactor, Design design, double startWh) {
    var columns = forcing.columns();
    columns.solarBusWh = times(forcing.solarBusWh(), solarFactor);
    columns.controllerLossWh = times(forcing.controllerLossWh(), solarFactor);
    var more = new Forcing(forcing.calendar(), columns);
    var books = new Ledger(more, design.bank().windowWh());
    double endWh = HourLoop.run(more, design, startWh, books);
    double lowestWh = Double.POSITIVE_INFINITY, curtailedWh = 0.0;
    int unmetHours = 0, run = 0, longest = 0;
    for (int h = 0; h < books.hours(); h++) {
      lowestWh = Math.min(lowestWh, books.chargeWh[h]);
      curtailedWh += books.curtailedFullWh[h] + books.curtailedRateWh[h] + books.curtailedColdWh[h];
      boolean isUnmet = books.unmetWh(h) > UnmetLoop.LEAST_UNMET_WH;
      unmetHours += isUnmet ? 1 : 0;
      run = isUnmet ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return new RunSums(
        HourLoopLawTest.sum(books.unmetInverterWh),
        HourLoopLawTest.sum(books.unmetRateWh),
        HourLoopLawTest.sum(books.unmetEmptyWh),
        curtailedWh,
        HourLoopLawTest.sum(books.bankOutWh),
        lowestWh,
        endWh,
        unmetHours,
        longest);
  }

  private static double[] times(double[] wh, double factor) {
    double[] more = wh.clone();
    for (int h = 0; h < more.length; h++) {
      more[h] *= factor;
    }
    return more;
  }

  private static void assertSame(RunSums expected, RunSums got) {
    assertEquals(expected.unmetHours(), got.unmetHours(), "unmet hours");
    assertEquals(expected.longestHours(), got.longestHours(), "longest");
    near(expected.unmetInverterWh(), got.unmetInverterWh(), "inverter");
    near(expected.unmetRateWh(), got.unmetRateWh(), "rate");
    near(expected.unmetEmptyWh(), got.unmetEmptyWh(), "empty");
    near(expected.curtailedWh(), got.curtailedWh(), "curtailed");
    near(expected.bankOutWh(), got.bankOutWh(), "out");
    near(expected.lowestChargeWh(), got.lowestChargeWh(), "lowest");
    near(expected.endChargeWh(), got.endChargeWh(), "end");
  }

  private static void near(double expected, double got, String what) {
    assertEquals(expected, got, A_BILLIONTH_OF_A_KWH, what);
  }

  /** Lanes of random banks and panels; one inverter for all, or each its own. */
  private static List<Lane> randomLanes(long seed, int count, boolean isOwnInverter) {
    var random = new Random(seed * 31 + 5);
    InverterLimits shared = Houses.randomDesign(seed).inverter();
    var lanes = new ArrayList<Lane>();
    for (int i = 0; i < count; i++) {
      Design d = Houses.randomDesign(seed + 1000L * i);
      lanes.add(
          new Lane(
              0.2 + 2.0 * random.nextDouble(), isOwnInverter ? d : new Design(d.bank(), shared)));
    }
    return lanes;
  }

  @Property(tries = 300)
  void theLeanLoopEqualsTheLedger(@ForAll long seed) {
    Forcing forcing = Houses.random(seed, DAYS);
    Design design = Houses.randomDesign(seed);
    double startWh = 0.4 * design.bank().windowWh();
    RunSums booked = booked(forcing, 1.0, design, startWh);
    assertSame(booked, UnmetLoop.run(forcing, design, startWh));
    BusHours hours = BusHours.of(forcing, design.inverter());
    int all = Integer.MAX_VALUE, hoursUnmet = booked.unmetHours();
    assertEquals(hoursUnmet, UnmetLoop.unmetHours(hours, 1.0, design.bank(), startWh, all));
    int most = hoursUnmet / 2,
        early = UnmetLoop.unmetHours(hours, 1.0, design.bank(), startWh, most);
    assertEquals(Math.min(hoursUnmet, most + 1), early);
  }

  @Property(tries = 60)
  void everyLaneEqualsTheLedger(@ForAll long seed, @ForAll boolean isOwnInverter) {
    Forcing forcing = mild(seed);
    List<Lane> list = randomLanes(seed, 9, isOwnInverter);
    var all = new Lanes(list);
    var light = new Lanes(list);
    for (int i = 0; i < list.size(); i++) {
      all.startAt(i, 0.5 * list.get(i).design().bank().windowWh());
      light.startAt(i, 0.5 * list.get(i).design().bank().windowWh());
    }
    if (isOwnInverter) {
      LaneLoop.runAll(forcing, all);
      LaneLoop.runUnmet(forcing, light);
    } else {
      BusHours hours = BusHours.of(forcing, list.get(0).design().inverter());
      LaneLoop.runAll(hours, all);
      LaneLoop.runUnmet(hours, light);
    }
    for (int i = 0; i < list.size(); i++) {
      Lane lane = list.get(i);
      double startWh = 0.5 * lane.design().bank().windowWh();
      RunSums booked = booked(forcing, lane.solarFactor(), lane.design(), startWh);
      assertSame(booked, all.sums(i));
      assertEquals(booked.unmetHours(), light.unmetHours(i));
      near(booked.unmetWh(), light.unmetWh(i), "light");
    }
  }

  /** Half of the seeds without cold, so that the short ways are walked as well. */
  private static Forcing mild(long seed) {
    Forcing forcing = Houses.random(seed, DAYS);
    if (seed % 2 == 0) {
      return forcing;
    }
    var columns = forcing.columns();
    columns.lockedShare = new double[forcing.hours()];
    return new Forcing(forcing.calendar(), columns);
  }

  @Test
  void wintersAddUpAndStartFullWhenTold() {
    Forcing first = Houses.random(3, DAYS), second = Houses.random(4, DAYS);
    List<Lane> list = randomLanes(8, 300, false);
    InverterLimits inverter = list.get(0).design().inverter();
    var lanes = new Lanes(list);
    LaneLoop.runUnmet(BusHours.of(first, inverter), lanes);
    lanes.fillUp();
    LaneLoop.runUnmet(BusHours.of(second, inverter), lanes);
    for (int i : new int[] {0, 255, 256, 299}) {
      Lane lane = list.get(i);
      double fullWh = lane.design().bank().windowWh();
      RunSums a = booked(first, lane.solarFactor(), lane.design(), fullWh);
      RunSums b = booked(second, lane.solarFactor(), lane.design(), fullWh);
      assertEquals(a.unmetHours() + b.unmetHours(), lanes.unmetHours(i));
      near(a.unmetWh() + b.unmetWh(), lanes.unmetWh(i), "both");
    }
  }

  @Test
  void anotherInverterThanTheHoursIsRefused() {
    Forcing forcing = Houses.random(1, 2);
    BusHours hours = BusHours.of(forcing, Houses.perfectInverter());
    var lanes = new Lanes(List.of(new Lane(1.0, Houses.randomDesign(1))));
    assertThrows(IllegalArgumentException.class, () -> LaneLoop.runUnmet(hours, lanes));
  }

  @Test
  void aDesignWithAGeneratorIsRefused() {
    Design full = null;
    for (long seed = 0; full == null || full.detail().generator() == null; seed++) {
      full = Houses.randomFullDesign(seed, 48);
    }
    Design design = full;
    var lanes = new Lanes(List.of(new Lane(1.0, design)));
    Forcing forcing = Houses.random(1, 2);
    assertThrows(IllegalArgumentException.class, () -> LaneLoop.runAll(forcing, lanes));
    assertThrows(IllegalArgumentException.class, () -> UnmetLoop.run(forcing, design, 0.0));
  }

  @Test
  void theLoopAllocatesNothing() {
    Forcing forcing = Houses.random(7, 60);
    List<Lane> list = randomLanes(7, 40, false);
    BusHours hours = BusHours.of(forcing, list.get(0).design().inverter());
    var lanes = new Lanes(list);
    long hoursRun = forcing.hours();
    for (int i = 0; i < 20; i++) {
      LaneLoop.runAll(hours, lanes);
    }
    var bean = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    bean.getThreadAllocatedBytes(thread);
    long idleBytes = -bean.getThreadAllocatedBytes(thread) + bean.getThreadAllocatedBytes(thread);
    long beforeBytes = bean.getThreadAllocatedBytes(thread);
    for (int i = 0; i < 20; i++) {
      LaneLoop.runAll(hours, lanes);
    }
    long bytes = bean.getThreadAllocatedBytes(thread) - beforeBytes - idleBytes;
    // a compiler at work leaves a few bytes; one object an hour would be half a million
    assertTrue(bytes < 20 * hoursRun, () -> bytes + " bytes");
  }
}
