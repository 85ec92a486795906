package greyspell.storage.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class TaperTest {
  private static final Taper LEAD = new Taper(0.8, 0.05, 1.0);

  @Test
  void belowTheTaperTheLimitIsTaken() {
    assertEquals(500.0, LEAD.mostInWh(0.3, 10_000.0, 500.0, 0.9), 1e-9);
    assertEquals(1.0, LEAD.acceptedShare(0.8));
    assertEquals(0.525, LEAD.acceptedShare(0.9), 1e-12);
    assertEquals(0.05, LEAD.acceptedShare(1.0), 1e-12);
    assertEquals(0.0, LEAD.mostInWh(1.0, 10_000.0, 500.0, 0.9));
  }

  /** From 80 % to the top: ln(20) / (g r), here 0.2 / 0.95 / 0.1 ln(20) = 6.307 hours (own). */
  @Test
  void theLastFifthTakesAsLongAsTheClosedFormSays() {
    double s = 0.8;
    double hours = 0.0;
    while (s < 1.0 - 1e-9) {
      double in = LEAD.mostInWh(s, 1000.0, 100.0, 1.0);
      double share = LEAD.acceptedShare(s) * 100.0;
      hours += 1.0;
      s += in / 1000.0;
      assertTrue(in < share, "acceptance falls within the hour");
    }
    assertEquals(7.0, hours);
    double whole = Math.log(20.0) / (0.95 / 0.2 * 0.1);
    assertEquals(6.307, whole, 1e-3);
    double atSix = 0.8 + 0.2 / 0.95 * (1.0 - Math.exp(-6.0 * 0.475));
    double walked = 0.8;
    for (int h = 0; h < 6; h++) {
      walked += LEAD.mostInWh(walked, 1000.0, 100.0, 1.0) / 1000.0;
    }
    assertEquals(atSix, walked, 1e-12);
  }

  @Test
  void withoutTaperOnlyRoomAndLimitTell() {
    var none = new Taper(1.0, 0.05, 1.0);
    assertEquals(500.0, none.mostInWh(0.5, 10_000.0, 500.0, 0.9), 1e-9);
    assertEquals(100.0 / 0.9, none.mostInWh(0.99, 10_000.0, 500.0, 0.9), 1e-9);
    var whole = new Taper(0.8, 1.0, 1.0);
    assertEquals(500.0, whole.mostInWh(0.9, 10_000.0, 500.0, 0.9), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> new Taper(0.8, 0.0, 1.0));
  }

  @Test
  void chargingEndsWhereTheBankCountsAsFull() {
    var capped = new Taper(0.8, 0.05, 0.9);
    assertEquals(0.0, capped.mostInWh(0.9, 1000.0, 100.0, 1.0));
    assertEquals(10.0, capped.mostInWh(0.89, 1000.0, 100.0, 1.0), 1e-9);
  }

  /** The closed form against 20 000 small steps of the equation. */
  @Property(tries = 60)
  void equalsTheEquation(
      @ForAll @DoubleRange(min = 0.0, max = 0.999) @Scale(8) double start,
      @ForAll @DoubleRange(min = 0.1, max = 0.98) @Scale(8) double from,
      @ForAll @DoubleRange(min = 0.01, max = 0.9) @Scale(8) double top,
      @ForAll @DoubleRange(min = 0.02, max = 2.0) @Scale(8) double limit,
      @ForAll @DoubleRange(min = 0.01, max = 1.5) @Scale(8) double offer) {
    var taper = new Taper(from, top, 1.0);
    double s = start;
    int steps = 20_000;
    for (int i = 0; i < steps && s < 1.0; i++) {
      double half = s + 0.5 / steps * Math.min(offer * limit, limit * taper.acceptedShare(s));
      s += Math.min(offer * limit, limit * taper.acceptedShare(half)) / steps;
    }
    s = Math.min(s, 1.0);
    double got = taper.acceptedWh(offer * limit, start, 1.0, limit, 1.0);
    assertEquals(s - start, got, 2e-4 * limit);
    assertTrue(got <= taper.mostInWh(start, 1.0, limit, 1.0) + 1e-12);
    assertTrue(got <= offer * limit + 1e-12);
  }
}
