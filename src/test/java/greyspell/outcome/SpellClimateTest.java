package greyspell.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.balance.Design;
import greyspell.balance.Forcing;
import greyspell.balance.HourLoop;
import greyspell.balance.Ledger;
import greyspell.outcome.SpellClimate.HowOften;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellClimateTest {
  private static final WinterBook FORTY = SomeWinters.book(40, 14_000.0);

  /** The bank for one winter in T, run hour by hour: dark in just as many winters as it may be. */
  @ParameterizedTest
  @CsvSource({"2, 20", "5, 8", "10, 4"})
  void theBankRidesThroughInThatShareOfWinters(int onceIn, int mayFail) {
    ReturnCurve bank = SpellClimate.of(FORTY).bank();
    assertEquals(mayFail, bank.mayPass(onceIn));
    double windowWh = bank.counted(onceIn);
    assertEquals(mayFail, dark(windowWh + 1e-6));
    assertEquals(mayFail + 1, dark(windowWh - 0.1));
  }

  /** Winters that are dark with a bank of this size, full when they begin. */
  private static int dark(double windowWh) {
    Design design = SomeWinters.design(windowWh);
    int dark = 0;
    for (int w = 0; w < FORTY.count(); w++) {
      Forcing ring = SomeWinters.forcing(w);
      var ledger = new Ledger(ring, windowWh);
      double endWh = HourLoop.run(ring, design, windowWh, ledger);
      HourLoop.run(ring, design, endWh, ledger);
      assertEquals(windowWh, ledger.chargeWh()[SomeWinters.SEAM - 9], 1e-6, "full at the seam");
      dark += new WinterReader(design, SomeWinters.SEAM).read(ledger, w, "w").isDarkFree() ? 0 : 1;
    }
    return dark;
  }

  @Test
  void theDesignsOwnDarkWintersAreThoseThatNeedALargerBank() {
    int larger = 0;
    for (WinterRecord w : FORTY.winters()) {
      larger += w.ridingBank().leastWh() > FORTY.usableBankWh() ? 1 : 0;
    }
    assertEquals(FORTY.darkCount(), larger);
    assertTrue(larger > 0 && larger < 40, "dark in " + larger);
  }

  @Test
  void aDeeperSizeReturnsLessOften() {
    var climate = SpellClimate.of(FORTY);
    for (List<HowOften> rows : List.of(climate.byLength(), climate.byDepth())) {
      assertTrue(rows.size() > 2);
      for (int k = 1; k < rows.size(); k++) {
        assertTrue(rows.get(k).least() > rows.get(k - 1).least());
        assertTrue(rows.get(k).spells() <= rows.get(k - 1).spells());
        assertTrue(rows.get(k).winters() <= rows.get(k - 1).winters());
        assertTrue(rows.get(k).winters() <= rows.get(k).spells());
      }
    }
    HowOften first = climate.byLength().get(0);
    int spells = FORTY.winters().stream().mapToInt(w -> w.spells().size()).sum();
    assertEquals(new HowOften(1.0, spells, 40), first);
  }

  @Test
  void ranksArePlottedAfterGringorten() {
    ReturnCurve curve = ReturnCurve.of(new double[] {3.0, 9.0, 1.0, 4.0});
    assertEquals(9.0, curve.value(0));
    assertEquals(4.12 / 0.56, curve.onceIn(0), 1e-12);
    assertEquals(4.12 / 3.56, curve.onceIn(3), 1e-12);
    assertNull(curve.tail());
    assertEquals(9.0, curve.counted(10), "of fewer winters the largest");
    assertEquals(3.0, curve.counted(2));
  }

  @Test
  void aWinterBeyondAnyBankLeavesNoTail() {
    double[] largest = {1, 2, 3, 4, Double.POSITIVE_INFINITY, 5};
    ReturnCurve curve = ReturnCurve.of(largest);
    assertNull(curve.tail());
    assertEquals(Double.POSITIVE_INFINITY, curve.counted(10));
    assertEquals(4.0, curve.counted(3));
  }

  @Test
  void theTailPassesThroughTheRanks() {
    ReturnCurve bank = SpellClimate.of(FORTY).bank();
    ExtremeTail tail = bank.tail();
    assertNotNull(tail);
    for (int rank : new int[] {4, 8, 20}) {
      double onceIn = bank.onceIn(rank);
      assertTrue(tail.low(onceIn) < bank.value(rank) && bank.value(rank) < tail.high(onceIn));
    }
  }

  @Test
  void theWinterOnceInTenIsRankedByWhatWentUnserved() {
    List<WinterRecord> worst = FORTY.worstFirst();
    for (int k = 1; k < worst.size(); k++) {
      assertTrue(worst.get(k - 1).wh(WinterSum.UNMET) >= worst.get(k).wh(WinterSum.UNMET));
    }
    assertEquals(worst.get(3), FORTY.onceIn(10));
    WinterBook ten = SomeWinters.book(10, 14_000.0);
    assertEquals(ten.worstFirst().get(0), ten.onceIn(10), "the worst of ten");
    assertEquals(ten.worstFirst().get(1), ten.onceIn(5), "the second of ten");
  }
}
