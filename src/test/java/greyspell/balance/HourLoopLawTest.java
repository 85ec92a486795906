package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import greyspell.storage.step.BankLimits;
import java.lang.management.ManagementFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class HourLoopLawTest {
  private static final double ONE_MICRO_WH = 1e-6;
  private static final int DAYS = 60;

  private static Ledger run(Forcing forcing, Design design, double startShare) {
    var books = new Ledger(forcing, design.bank().windowWh());
    HourLoop.run(forcing, design, startShare * design.bank().windowWh(), books);
    return books;
  }

  @Property
  void everyHourClosesToAMillionthOfAWattHour(@ForAll long seed) {
    Forcing forcing = Houses.random(seed, DAYS);
    Design design = Houses.randomDesign(seed);
    Ledger l = run(forcing, design, 0.6);
    double beforeWh = l.startChargeWh();
    for (int h = 0; h < l.hours(); h++) {
      double curtailedWh = l.curtailedFullWh[h] + l.curtailedRateWh[h] + l.curtailedColdWh[h];
      assertEquals(
          forcing.solarAvailableWh()[h],
          forcing.clippedWh()[h] + curtailedWh + l.controllerLossWh[h] + l.solarUsedWh[h],
          ONE_MICRO_WH,
          "solar");
      assertEquals(
          l.solarUsedWh[h] + l.bankOutWh[h],
          l.bankInWh[h]
              + l.standingServedWh[h]
              + l.servedWh[h]
              + l.inverterLossWh[h]
              + l.inverterWiringWh[h],
          ONE_MICRO_WH,
          "bus");
      assertEquals(
          l.chargeWh[h] - beforeWh,
          l.bankInWh[h]
              - l.chargeLossWh[h]
              - l.bankOutWh[h]
              - l.dischargeLossWh[h]
              - l.selfDischargeWh[h],
          ONE_MICRO_WH,
          "bank");
      assertEquals(l.askedWh(h), l.servedWh[h] + l.unmetWh(h), ONE_MICRO_WH, "load");
      beforeWh = l.chargeWh[h];
    }
  }

  @Property
  void noFlowIsNegativeAndChargeStaysInItsWindow(@ForAll long seed) {
    Ledger l = run(Houses.random(seed, DAYS), Houses.randomDesign(seed), 1.0);
    for (LedgerColumn column : LedgerColumn.values()) {
      for (double wh : column.of(l)) {
        assertTrue(wh >= -1e-9, () -> column + " " + wh);
      }
    }
    for (double chargeWh : l.chargeWh()) {
      assertTrue(chargeWh >= 0.0 && chargeWh <= l.windowWh(), () -> "charge " + chargeWh);
    }
  }

  @Property
  void equalsThePlainBalance(@ForAll long seed) {
    Forcing forcing = Houses.random(seed, DAYS);
    Design design = Houses.randomDesign(seed);
    Ledger l = run(forcing, design, 0.5);
    var plain = new PlainBalance(0.5 * design.bank().windowWh());
    for (int h = 0; h < l.hours(); h++) {
      plain.hour(forcing, h, design);
      assertEquals(plain.chargeWh, l.chargeWh[h], ONE_MICRO_WH);
      assertEquals(plain.inWh, l.bankInWh[h], ONE_MICRO_WH);
      assertEquals(plain.outWh, l.bankOutWh[h], ONE_MICRO_WH);
      assertEquals(plain.usedWh, l.solarUsedWh[h], ONE_MICRO_WH);
      assertEquals(plain.servedWh, l.servedWh[h], ONE_MICRO_WH);
      assertEquals(plain.unmetWh, l.unmetEmptyWh[h] + l.unmetRateWh[h], ONE_MICRO_WH);
      assertEquals(plain.overloadWh, l.unmetInverterWh[h], ONE_MICRO_WH);
    }
  }

  /**
   * With no self-discharge, no cold and limits that stay, a larger bank or a larger array can only
   * help.
   */
  @Property
  void moreBankOrMorePanelsNeverLeavesMoreUnserved(@ForAll long seed) {
    Forcing forcing = warm(Houses.random(seed, DAYS));
    Design d = Houses.randomDesign(seed);
    double unmetWh = unmet(run(forcing, still(d, 1.0), 0.0));
    assertTrue(unmet(run(forcing, still(d, 1.3), 0.0)) <= unmetWh + ONE_MICRO_WH, "bank");
    assertTrue(
        unmet(run(withSun(forcing, 1.3), still(d, 1.0), 0.0)) <= unmetWh + ONE_MICRO_WH, "panels");
  }

  /**
   * Elsewhere a larger bank can leave a little more unserved, for two causes, each bounding what it
   * adds: it loses more by itself while it stands fuller, and cold that locks a share of the window
   * locks more of a larger one each time that it deepens.
   */
  @Property
  void otherwiseALargerBankIsWorseByNoMoreThanItsExtraSelfDischargeAndColdLock(@ForAll long seed) {
    Forcing forcing = Houses.random(seed, DAYS);
    Design d = Houses.randomDesign(seed);
    BankLimits b = d.bank();
    var bigger =
        new BankLimits(
            1.3 * b.windowWh(),
            b.chargeEfficiency(),
            b.dischargeEfficiency(),
            b.mostInWh(),
            b.mostOutWh(),
            b.keptPerHourShare());
    Ledger small = run(forcing, d, 0.0);
    Ledger big = run(forcing, new Design(bigger, d.inverter()), 0.0);
    double boundWh = Math.max(0.0, sum(big.selfDischargeWh) - sum(small.selfDischargeWh));
    double lockedMoreWh = 0.0;
    for (double share : forcing.lockedShare()) {
      double nowWh = 0.3 * b.windowWh() * share;
      boundWh += Math.max(0.0, nowWh - lockedMoreWh);
      lockedMoreWh = nowWh;
    }
    assertTrue(unmet(big) <= unmet(small) + boundWh + ONE_MICRO_WH);
  }

  @Test
  void noSunAndNoLoadLeavesOnlySelfDischarge() {
    Forcing forcing = Houses.plain(new double[720], new double[720]);
    var bank = new BankLimits(10_000.0, 0.95, 0.95, 1e9, 1e9, Math.pow(0.97, 1.0 / 720.0));
    Ledger l = run(forcing, new Design(bank, Houses.perfectInverter()), 1.0);
    assertEquals(9_700.0, l.chargeWh[719], ONE_MICRO_WH);
    assertEquals(300.0, sum(l.selfDischargeWh), ONE_MICRO_WH);
    assertEquals(0.0, sum(l.bankOutWh) + sum(l.bankInWh), 0.0);
  }

  @Test
  void theLoopAllocatesNothing() {
    Forcing forcing = Houses.random(7, 365);
    Design design = Houses.randomDesign(7);
    var books = new Ledger(forcing, design.bank().windowWh());
    for (int i = 0; i < 100; i++) {
      HourLoop.run(forcing, design, 0.0, books);
    }
    var bean = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    bean.getThreadAllocatedBytes(thread);
    long idleBytes = -bean.getThreadAllocatedBytes(thread) + bean.getThreadAllocatedBytes(thread);
    long beforeBytes = bean.getThreadAllocatedBytes(thread);
    for (int i = 0; i < 100; i++) {
      HourLoop.run(forcing, design, 0.0, books);
    }
    assertEquals(idleBytes, bean.getThreadAllocatedBytes(thread) - beforeBytes);
  }

  private static Design still(Design d, double factor) {
    BankLimits b = d.bank();
    return new Design(
        new BankLimits(
            factor * b.windowWh(),
            b.chargeEfficiency(),
            b.dischargeEfficiency(),
            b.mostInWh(),
            b.mostOutWh(),
            1.0),
        d.inverter());
  }

  private static Forcing withSun(Forcing f, double factor) {
    var columns = Houses.copy(f);
    columns.solarBusWh = f.solarBusWh().clone();
    for (int h = 0; h < f.hours(); h++) {
      columns.solarBusWh[h] *= factor;
    }
    return new Forcing(f.calendar(), columns);
  }

  private static Forcing warm(Forcing f) {
    var columns = Houses.copy(f);
    columns.lockedShare = new double[f.hours()];
    return new Forcing(f.calendar(), columns);
  }

  private static double unmet(Ledger l) {
    return sum(l.unmetEmptyWh) + sum(l.unmetRateWh) + sum(l.unmetInverterWh);
  }

  static double sum(double[] wh) {
    double sum = 0.0;
    for (double x : wh) {
      sum += x;
    }
    return sum;
  }
}
