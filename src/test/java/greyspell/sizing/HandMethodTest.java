package greyspell.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.Monthly;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Steps of the hand method, each worked out by hand. */
class HandMethodTest {
  private static HandMethod method(
      double[] arrayWh, double[] otherWh, double mostNeedWh, DoubleUnaryOperator rateShare) {
    return HandMethod.of(
        new HandMethod.Asked(
            24.0,
            100.0 * 24.0,
            Monthly.constant(3000.0),
            Monthly.of(arrayWh),
            Monthly.of(otherWh),
            mostNeedWh,
            10,
            4.0,
            0.5,
            0.5,
            1.0,
            1.0,
            0.1,
            rateShare,
            1.3));
  }

  private static double[] all(double value) {
    var months = new double[12];
    Arrays.fill(months, value);
    return months;
  }

  @Test
  void aSecondSourceIsNoPanel() {
    double[] array = all(4000.0), other = all(1000.0);
    array[11] = 2500.0;
    HandMethod hand = method(array, other, 100.0, inH -> 1.0);
    assertEquals(12, hand.arrayMonth());
    assertEquals(3500.0 / 3000.0, hand.nowRatio(), 1e-12);
    // 1.3 x 3000 - 1000 = 2900 Wh of panels, where ten bring 2500
    assertEquals(11.6, hand.modules(), 1e-9);
    assertTrue(hand.hasOther());
  }

  @Test
  void theMonthIsThatWhichAsksForMostPanels() {
    double[] array = all(4000.0), other = all(0.0);
    array[11] = 2000.0; // ratio 1.00 with the stream: lowest
    other[11] = 1000.0;
    array[0] = 3100.0; // ratio 1.03 without
    HandMethod hand = method(array, other, 100.0, inH -> 1.0);
    assertEquals(12, hand.arrayMonth());
    assertEquals(14.5, hand.modules(), 1e-9);
    other[11] = 1500.0;
    hand = method(array, other, 100.0, inH -> 1.0);
    // December 2400 of 2000: 12.0; January 3900 of 3100: 12.58, though its ratio is the lower one
    assertEquals(1, hand.arrayMonth());
    assertEquals(39000.0 / 3100.0, hand.modules(), 1e-9);
    other = all(5000.0);
    assertEquals(0.0, method(array, other, 100.0, inH -> 1.0).modules());
  }

  @Test
  void aBankThatIsEmptiedFastIsTakenAtThatRate() {
    // 125 Ah a day, 4 days, half of it, 10 %: 1100 Ah
    HandMethod slow = method(all(4000.0), all(0.0), 55.0 * 24.0, inH -> 0.8);
    assertEquals(1100.0, slow.withMarginAh(), 1e-9);
    assertEquals(20.0, slow.emptiedInH(), 1e-9);
    assertTrue(slow.isSlow());
    assertEquals(1100.0, slow.capacityAh(), 1e-9);
    assertEquals(11, slow.packs());
    HandMethod fast = method(all(4000.0), all(0.0), 110.0 * 24.0, inH -> inH / 12.5);
    assertEquals(110.0, fast.mostA(), 1e-9);
    assertEquals(10.0, fast.emptiedInH(), 1e-9);
    assertFalse(fast.isSlow());
    assertEquals(1375.0, fast.capacityAh(), 1e-9);
    assertEquals(14, fast.packs());
  }
}
