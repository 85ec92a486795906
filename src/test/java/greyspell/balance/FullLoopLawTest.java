package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import greyspell.power.step.GeneratorLimits;
import greyspell.power.step.InverterLimits;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.EnumSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class FullLoopLawTest {
  private static final double ONE_MICRO_WH = 1e-6;
  private static final int DAYS = 40;

  private static Ledger run(Forcing forcing, Design design, double startShare) {
    var books = new Ledger(forcing, design.bank().windowWh(), true);
    FullLoop.run(forcing, design, startShare * design.bank().windowWh(), books);
    return books;
  }

  @Property
  void everyHourClosesToAMillionthOfAWattHour(@ForAll long seed) {
    Forcing forcing = Houses.randomFull(seed, DAYS);
    Ledger l = run(forcing, Houses.randomFullDesign(seed, forcing.hours()), 0.6);
    double beforeWh = l.startChargeWh(), waitingWh = 0.0;
    for (int h = 0; h < l.hours(); h++) {
      double curtailedWh =
          l.curtailedFullWh[h]
              + l.curtailedRateWh[h]
              + l.curtailedColdWh[h]
              + l.curtailedAbsorptionWh[h];
      assertEquals(
          forcing.solarAvailableWh()[h],
          forcing.clippedWh()[h] + curtailedWh + l.controllerLossWh[h] + l.solarUsedWh[h],
          ONE_MICRO_WH,
          "solar");
      double otherWh = Forcing.at(forcing.otherBusWh(), h) - l.otherCurtailedWh[h];
      assertEquals(
          l.solarUsedWh[h] + otherWh + l.generatorWh[h] + l.bankOutWh[h],
          l.bankInWh[h]
              + l.standingServedWh[h]
              + l.servedWh[h]
              + l.inverterLossWh[h]
              + l.inverterWiringWh[h]
              + l.chargerLossWh[h],
          ONE_MICRO_WH,
          "bus and sockets");
      assertEquals(
          l.chargeWh[h] - beforeWh,
          l.bankInWh[h]
              - l.chargeLossWh[h]
              - l.bankOutWh[h]
              - l.dischargeLossWh[h]
              - l.selfDischargeWh[h],
          ONE_MICRO_WH,
          "bank");
      assertEquals(
          l.askedWh(h) + waitingWh,
          l.servedWh[h] + l.unmetWh(h) + l.shedWh[h] + l.waitingWh[h],
          ONE_MICRO_WH,
          "load");
      assertEquals(
          l.waitingWh[h] - waitingWh,
          l.putOffWh[h] - l.madeUpWh[h] - Math.max(0.0, droppedWh(l, h, waitingWh)),
          ONE_MICRO_WH,
          "waiting");
      beforeWh = l.chargeWh[h];
      waitingWh = l.waitingWh[h];
    }
  }

  /** What waited too long leaves the waiting at a day's first hour only. */
  private static double droppedWh(Ledger l, int h, double waitingWh) {
    return h % 24 == 0 ? waitingWh + l.putOffWh[h] - l.madeUpWh[h] - l.waitingWh[h] : 0.0;
  }

  @Property
  void noFlowIsNegativeAndChargeStaysInItsWindow(@ForAll long seed) {
    Forcing forcing = Houses.randomFull(seed, DAYS);
    Ledger l = run(forcing, Houses.randomFullDesign(seed, forcing.hours()), 1.0);
    for (LedgerColumn column : LedgerColumn.values()) {
      for (double wh : column.of(l)) {
        assertTrue(wh >= -1e-9 && wh < 1e9, () -> column + " " + wh);
      }
    }
    for (double chargeWh : l.chargeWh()) {
      assertTrue(chargeWh >= -1e-9 && chargeWh <= l.windowWh() + 1e-9, () -> "charge " + chargeWh);
    }
  }

  @Property
  void withNothingBeyondItGivesTheNumbersOfTheHourLoop(@ForAll long seed) {
    Forcing forcing = Houses.random(seed, DAYS);
    Design design = Houses.randomDesign(seed);
    Ledger full = run(forcing, design, 0.5);
    var fast = new Ledger(forcing, design.bank().windowWh());
    HourLoop.run(forcing, design, 0.5 * design.bank().windowWh(), fast);
    for (LedgerColumn column : LedgerColumn.values()) {
      for (int h = 0; h < full.hours(); h++) {
        assertEquals(column.of(fast)[h], column.of(full)[h], 1e-9, column.header());
      }
    }
  }

  /**
   * Nobody sits in the dark beside a generator that may always run, is large enough and starts when
   * the bank is short. Left out are wires, whose loss the decision takes at the stated voltage, and
   * the hour in which it stops, which by its rule is none in which it starts.
   */
  @Property
  void aLargeGeneratorThatMayAlwaysRunLeavesOnlyInverterAndSleepUnmet(@ForAll long seed) {
    Forcing forcing = Houses.randomFull(seed, DAYS);
    Ledger l = run(forcing, withLargeGenerator(seed, forcing.hours()), 0.4);
    for (int h = 0; h < l.hours(); h++) {
      boolean stops = h > 0 && l.isGeneratorOn(h - 1) && !l.isGeneratorOn(h);
      if (!stops) {
        double allowedWh = l.unmetInverterWh[h] + l.unmetAsleepWh[h];
        assertEquals(allowedWh, l.unmetWh(h), ONE_MICRO_WH, "hour " + h);
      }
      if (l.isGeneratorOn(h)) {
        assertEquals(0.0, l.unmetInverterWh[h], ONE_MICRO_WH, "beside the generator, hour " + h);
      }
    }
  }

  /** Else the law above would hold for houses that need no generator. */
  @Test
  void withoutItTheSameHousesAreShortAndItRunsOnlySometimes() {
    double unmetWh = 0.0;
    int ran = 0, all = 0;
    for (long seed = 0; seed < 20; seed++) {
      Forcing forcing = Houses.randomFull(seed, DAYS);
      Design with = withLargeGenerator(seed, forcing.hours());
      Detail detail = with.detail();
      var without =
          new Design(with.bank(), with.inverter(), new Detail(detail.bank(), null, detail.rules()));
      Ledger dark = run(forcing, without, 0.4), lit = run(forcing, with, 0.4);
      for (int h = 0; h < forcing.hours(); h++) {
        unmetWh += dark.unmetWh(h) - dark.unmetInverterWh[h] - dark.unmetAsleepWh[h];
        ran += lit.isGeneratorOn(h) ? 1 : 0;
        all++;
      }
    }
    assertTrue(unmetWh > 10_000.0, "unmet without it " + unmetWh);
    assertTrue(ran > all / 20 && ran < all - all / 20, ran + " of " + all);
  }

  private static Design withLargeGenerator(long seed, int hours) {
    Design any = Houses.randomFullDesign(seed, hours);
    var mostW = new double[hours];
    var permitted = new boolean[hours];
    Arrays.fill(mostW, 50_000.0);
    Arrays.fill(permitted, true);
    var generator = new GeneratorLimits(mostW, permitted, 20_000.0, 0.9, 0.0, 0.5, 2);
    InverterLimits inverter = any.inverter();
    return new Design(
        any.bank(),
        new InverterLimits(
            inverter.continuousW(), inverter.linearLossShare(), inverter.quadraticLossShare()),
        new Detail(any.detail().bank(), generator, any.detail().rules()));
  }

  /** Else the laws above would hold for houses in which nothing happens. */
  @Test
  void everyColumnIsUsedByTheRandomHouses() {
    var seen = EnumSet.noneOf(LedgerColumn.class);
    for (long seed = 0; seed < 60; seed++) {
      Forcing forcing = Houses.randomFull(seed, DAYS);
      Ledger l = run(forcing, Houses.randomFullDesign(seed, forcing.hours()), 0.5);
      for (LedgerColumn column : LedgerColumn.values()) {
        if (HourLoopLawTest.sum(column.of(l)) > 1.0) {
          seen.add(column);
        }
      }
    }
    assertEquals(EnumSet.allOf(LedgerColumn.class), seen);
  }

  @Test
  void theHoursAllocateNothing() {
    Forcing small = Houses.randomFull(7, 10), large = Houses.randomFull(7, 300);
    assertEquals(bytes(small), bytes(large), 64.0);
  }

  private static double bytes(Forcing forcing) {
    Design design = Houses.randomFullDesign(12, forcing.hours());
    var books = new Ledger(forcing, design.bank().windowWh(), true);
    for (int i = 0; i < 200; i++) {
      FullLoop.run(forcing, design, 0.0, books);
    }
    var bean = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    long beforeBytes = bean.getThreadAllocatedBytes(thread);
    for (int i = 0; i < 100; i++) {
      FullLoop.run(forcing, design, 0.0, books);
    }
    return (bean.getThreadAllocatedBytes(thread) - beforeBytes) / 100.0;
  }
}
