package greyspell.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.power.InverterSpec.EfficiencyAt;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PeakCheckTest {
  private static InverterSpec inverter(@Nullable Double surgeW) {
    return new InverterSpec("i", 1, 3000, surgeW, 9, 9, List.of(new EfficiencyAt(0.5, 0.92)));
  }

  @Test
  void countsHoursAboveEachRating() {
    double[] running = {100, 3000, 3001, 2000, 4000};
    double[] peak = {100, 6000, 5000, 6001, 6001};
    PeakCheck got = PeakCheck.of(inverter(6000.0), running, peak);
    assertEquals(new PeakCheck(2, 2, 3, 6001.0, 4, 4000.0), got);
  }

  @Test
  void withoutASurgeRatingStartsAreNotJudged() {
    PeakCheck got = PeakCheck.of(inverter(null), new double[] {10.0}, new double[] {1e6});
    assertNull(got.hoursAboveSurge());
    assertEquals(0, got.hoursAboveContinuous());
    assertEquals(1e6, got.worstPeakW());
  }

  @Test
  void withoutHoursThereIsNoWorst() {
    assertEquals(
        new PeakCheck(0, 0, -1, 0.0, -1, 0.0),
        PeakCheck.of(inverter(6000.0), new double[0], new double[0]));
    assertThrows(
        IllegalArgumentException.class,
        () -> PeakCheck.of(inverter(6000.0), new double[1], new double[0]));
  }
}
