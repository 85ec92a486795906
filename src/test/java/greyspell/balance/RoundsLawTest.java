package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Laps that end where they meet the lap before, against whole ones, to the last bit. */
class RoundsLawTest {
  private static final int DAYS = 60;
  private static final int LAPS = 4;

  @Property(tries = 200)
  void everyLapIsAWholeOne(@ForAll long seed) {
    check(Houses.random(seed, DAYS), Houses.randomDesign(seed), seed);
  }

  @Property(tries = 200)
  void withEverythingInTheHouseToo(@ForAll long seed) {
    Forcing forcing = Houses.randomFull(seed, DAYS);
    check(forcing, Houses.randomFullDesign(seed, forcing.hours()), seed);
  }

  private static void check(Forcing forcing, Design design, long seed) {
    var random = new Random(seed);
    Ledger books = Ledger.of(forcing, design), whole = Ledger.of(forcing, design);
    var rounds = new Rounds(forcing, design, books);
    for (int lap = 0; lap < LAPS; lap++) {
      double startWh = random.nextDouble() * design.bank().windowWh();
      assertEquals(Balance.run(forcing, design, startWh, whole), rounds.run(startWh));
      assertEquals(startWh, books.startChargeWh());
      for (LedgerColumn column : LedgerColumn.values()) {
        assertArrayEquals(column.of(whole), column.of(books), column.header());
      }
      assertArrayEquals(whole.generatorOn, books.generatorOn);
      assertArrayEquals(whole.bankV, books.bankV);
    }
  }

  /** What is booked in brief is what is booked at length; the rest is not there to be misread. */
  @Property(tries = 200)
  void briefBooksAreTheSame(@ForAll long seed) {
    Forcing forcing = Houses.randomFull(seed, DAYS);
    Design design = Houses.randomFullDesign(seed, forcing.hours());
    Ledger brief = Ledger.brief(forcing, design), whole = Ledger.of(forcing, design);
    double startWh = new Random(seed).nextDouble() * design.bank().windowWh();
    Balance.run(forcing, design, startWh, whole);
    assertEquals(
        whole.chargeWh[whole.hours() - 1], new Rounds(forcing, design, brief).run(startWh));
    assertArrayEquals(whole.chargeWh, brief.chargeWh);
    assertArrayEquals(whole.bankV, brief.bankV);
    assertArrayEquals(whole.generatorWh, brief.generatorWh);
    assertArrayEquals(whole.generatorOn, brief.generatorOn);
    assertArrayEquals(whole.unmetWh(), brief.unmetWh());
    for (int h = 0; h < whole.hours(); h++) {
      assertEquals(whole.isOutOfCharge(h), brief.isOutOfCharge(h));
    }
    if (whole.isFull()) {
      assertEquals(0, LedgerColumn.SERVED.of(brief).length);
    }
  }

  /** Else the laws above would hold whatever the marks were good for. */
  @Test
  void mostLapsEndEarly() {
    int fast = 0, full = 0;
    for (long seed = 0; seed < 100; seed++) {
      Forcing forcing = Houses.random(seed, DAYS), all = Houses.randomFull(seed, DAYS);
      fast += isLeftEarly(forcing, Houses.randomDesign(seed)) ? 1 : 0;
      full += isLeftEarly(all, Houses.randomFullDesign(seed, all.hours())) ? 1 : 0;
    }
    assertTrue(fast > 50 && full > 50, fast + " and " + full + " of 100");
  }

  private static boolean isLeftEarly(Forcing forcing, Design design) {
    Ledger books = Ledger.of(forcing, design);
    var rounds = new Rounds(forcing, design, books);
    rounds.run(design.bank().windowWh());
    int last = books.hours() - 1;
    books.servedWh[last] = Double.NaN;
    rounds.run(0.5 * design.bank().windowWh());
    return Double.isNaN(books.servedWh[last]);
  }
}
