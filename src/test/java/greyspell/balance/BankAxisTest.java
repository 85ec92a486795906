package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.power.step.InverterLimits;
import greyspell.storage.step.BankLimits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Every size of bank in one pass, and the search built on it, against one size at a time. */
class BankAxisTest {
  private static final double KWH_TO_1E_8 = 1e-5;
  private static final int DAYS = 60;

  private static Forcing unlocked(Forcing forcing, boolean hasIdleHours, long seed) {
    var columns = forcing.columns();
    columns.lockedShare = new double[forcing.hours()];
    if (hasIdleHours) {
      // nobody at home: only the standing draw
      var random = new Random(seed);
      columns.acAskedWh = forcing.acAskedWh().clone();
      columns.dcAskedWh = forcing.dcAskedWh().clone();
      for (int day = 0; day < forcing.hours() / 24; day++) {
        if (random.nextBoolean()) {
          Arrays.fill(columns.acAskedWh, day * 24, day * 24 + 24, 0.0);
          Arrays.fill(columns.dcAskedWh, day * 24, day * 24 + 24, 0.0);
        }
      }
    }
    return new Forcing(forcing.calendar(), columns);
  }

  /** Windows at even or uneven steps, some the same, often beginning with none. */
  private static List<BankLimits> banksLike(BankLimits like, long seed, int count) {
    var random = new Random(seed + 11);
    double windowWh = random.nextBoolean() ? 0.0 : random.nextDouble() * 3000.0;
    double largestStepWh = 10.0 + random.nextDouble() * 3000.0;
    boolean isEven = random.nextBoolean();
    var banks = new ArrayList<BankLimits>();
    for (int i = 0; i < count; i++) {
      banks.add(
          new BankLimits(
              windowWh,
              like.chargeEfficiency(),
              like.dischargeEfficiency(),
              like.mostInWh(),
              like.mostOutWh(),
              1.0));
      double share = isEven ? 0.5 : random.nextInt(6) == 0 ? 0.0 : random.nextDouble();
      windowWh += share * largestStepWh;
    }
    return banks;
  }

  @Property(tries = 200)
  void onePassEqualsTheLedgerOfEverySize(@ForAll long seed, @ForAll boolean hasIdleHours) {
    var random = new Random(seed);
    Design design = Houses.randomDesign(seed);
    List<BankLimits> banks = banksLike(design.bank(), seed, 1 + random.nextInt(15));
    double factor = 0.3 + 2.0 * random.nextDouble();
    var axis = new BankAxis(banks);
    axis.restart();
    var expectedHours = new int[banks.size()];
    var expectedWh = new double[banks.size()];
    for (long winter = seed; winter < seed + 2; winter++) {
      Forcing forcing = unlocked(Houses.random(winter, DAYS), hasIdleHours, winter);
      BusHours hours = BusHours.of(forcing, design.inverter());
      assertTrue(BankAxis.isExactFor(hours, factor, banks));
      axis.fillUp();
      axis.add(hours, factor);
      for (int i = 0; i < banks.size(); i++) {
        var one = new Design(banks.get(i), design.inverter());
        assertTrue(BankAxis.isExactFor(forcing, one));
        RunSums booked = LaneLoopTest.booked(forcing, factor, one, banks.get(i).windowWh());
        expectedHours[i] += booked.unmetHours();
        expectedWh[i] += booked.unmetWh();
      }
    }
    assertArrayEquals(expectedHours, axis.unmetHours());
    assertArrayEquals(expectedWh, axis.unmetWh(), KWH_TO_1E_8);
  }

  @Test
  void hoursMayComeInPieces() {
    Forcing forcing = unlocked(Houses.random(21, DAYS), false, 0);
    BankLimits like = Houses.randomDesign(21).bank();
    List<BankLimits> banks = banksLike(like, 21, 12);
    InverterLimits inverter = Houses.randomDesign(21).inverter();
    var whole = new BankAxis(banks);
    whole.add(BusHours.of(forcing, inverter), 1.0);
    var pieces = new BankAxis(banks);
    for (int from = 0; from < forcing.hours(); from += 7) {
      int to = Math.min(forcing.hours(), from + 7);
      pieces.add(BusHours.of(part(forcing, from, to), inverter), 1.0);
    }
    assertArrayEquals(whole.unmetHours(), pieces.unmetHours());
    assertArrayEquals(whole.unmetWh(), pieces.unmetWh(), KWH_TO_1E_8);
  }

  private static Forcing part(Forcing f, int from, int to) {
    var c = f.columns();
    c.solarBusWh = Arrays.copyOfRange(f.solarBusWh(), from, to);
    c.controllerLossWh = Arrays.copyOfRange(f.controllerLossWh(), from, to);
    c.acAskedWh = Arrays.copyOfRange(f.acAskedWh(), from, to);
    c.dcAskedWh = Arrays.copyOfRange(f.dcAskedWh(), from, to);
    c.standingWh = Arrays.copyOfRange(f.standingWh(), from, to);
    c.lockedShare = Arrays.copyOfRange(f.lockedShare(), from, to);
    c.chargeShare = Arrays.copyOfRange(f.chargeShare(), from, to);
    return new Forcing(f.calendar(), c);
  }

  @Test
  void itSaysWhereItIsNotExact() {
    Forcing cold = Houses.random(2, 30), mild = unlocked(cold, false, 0);
    InverterLimits inverter = Houses.perfectInverter();
    var still = Houses.bank(5_000, 0.95, 0.95);
    var leaking = new BankLimits(5_000, 0.95, 0.95, 1e12, 1e12, 0.9999);
    assertTrue(BankAxis.isExactFor(mild, new Design(still, inverter)));
    assertFalse(BankAxis.isExactFor(mild, new Design(leaking, inverter)), "self-discharge");
    assertTrue(Arrays.stream(cold.lockedShare()).anyMatch(share -> share > 0.0));
    assertFalse(BankAxis.isExactFor(cold, new Design(still, inverter)), "lock");
    BusHours hours = BusHours.of(mild, inverter);
    assertTrue(BankAxis.isExactFor(hours, 1.0, List.of(still, Houses.bank(9_000, 0.95, 0.95))));
    assertFalse(BankAxis.isExactFor(hours, 1.0, List.of(still, Houses.bank(9_000, 0.9, 0.95))));
    assertFalse(BankAxis.isExactFor(BusHours.of(cold, inverter), 1.0, List.of(still)));
    assertFalse(BankAxis.isExactFor(hours, 1.0, byRate(0.05, 1.0)), "a limit by rate that binds");
    assertTrue(BankAxis.isExactFor(hours, 1.0, byRate(100.0, 1.0)), "one that never binds");
  }

  /** Ten sizes whose limits go with the window. */
  private static List<BankLimits> byRate(double perWh, double kept) {
    var banks = new ArrayList<BankLimits>();
    for (int i = 1; i <= 10; i++) {
      double windowWh = 1500.0 * i;
      banks.add(
          new BankLimits(windowWh, 0.96, 0.95, perWh * windowWh, 1.2 * perWh * windowWh, kept));
    }
    return banks;
  }

  @Property(tries = 150)
  void theConfirmedBankIsThatOfTryingThemAll(@ForAll long seed) {
    var random = new Random(seed);
    double kept = random.nextBoolean() ? 1.0 : 1.0 - 1e-4 * random.nextDouble();
    List<BankLimits> banks = byRate(0.1 + 0.6 * random.nextDouble(), kept);
    InverterLimits inverter = Houses.randomDesign(seed).inverter();
    var winters = new ArrayList<BusHours>();
    for (int w = 0; w < 3; w++) {
      Forcing forcing = Houses.random(seed + w, 40);
      boolean isCold = random.nextInt(3) == 0;
      winters.add(BusHours.of(isCold ? forcing : unlocked(forcing, false, 0), inverter));
    }
    double factor = 0.5 + 2.0 * random.nextDouble();
    var unmet = new int[banks.size()];
    for (int i = 0; i < unmet.length; i++) {
      for (BusHours winter : winters) {
        double fullWh = banks.get(i).windowWh();
        unmet[i] += UnmetLoop.run(winter, factor, banks.get(i), fullWh).unmetHours();
      }
    }
    var search = new BankSearch(banks);
    // targets that are just met, and just not met, by some size
    for (int target : new int[] {0, unmet[9], unmet[5], unmet[5] - 1, unmet[2], unmet[0] + 1}) {
      int expected = 0;
      while (expected < unmet.length && unmet[expected] > target) {
        expected++;
      }
      assertEquals(expected, search.leastBank(winters, factor, target), "target " + target);
    }
  }

  @Property(tries = 150)
  void theSequentPeakIsTheLeastWindow(@ForAll long seed, @ForAll boolean hasIdleHours) {
    Forcing forcing = unlocked(Houses.random(seed, DAYS), hasIdleHours, seed);
    BankLimits like = banksLike(Houses.randomDesign(seed).bank(), seed, 1).get(0);
    InverterLimits inverter = Houses.randomDesign(seed).inverter();
    double leastWh = SequentPeak.leastWindowWh(BusHours.of(forcing, inverter), 1.5, like);
    if (leastWh == Double.POSITIVE_INFINITY) {
      assertTrue(hoursWith(forcing, like, inverter, 1e9) > 0);
    } else {
      assertEquals(0, hoursWith(forcing, like, inverter, leastWh * (1.0 + 1e-9) + 1e-6));
      if (leastWh > 0.0) {
        assertTrue(hoursWith(forcing, like, inverter, leastWh * (1.0 - 1e-6)) > 0);
      }
    }
  }

  private static int hoursWith(
      Forcing forcing, BankLimits like, InverterLimits inverter, double windowWh) {
    var bank =
        new BankLimits(
            windowWh,
            like.chargeEfficiency(),
            like.dischargeEfficiency(),
            like.mostInWh(),
            like.mostOutWh(),
            1.0);
    return LaneLoopTest.booked(forcing, 1.5, new Design(bank, inverter), windowWh).unmetHours();
  }
}
