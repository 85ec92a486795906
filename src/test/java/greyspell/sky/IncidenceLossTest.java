package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class IncidenceLossTest {
  @ParameterizedTest
  @EnumSource
  void fallsFromOneToNothing(IncidenceLoss glass) {
    assertEquals(1.0, glass.factor(1.0));
    assertEquals(1.0, glass.factor(1.0 + 1e-15), "a cosine that rounding lifted above 1");
    assertEquals(1.0, glass.factor(Math.nextDown(1.0)), 1e-12);
    double before = 1.0;
    for (double angle = 1.0; angle < 90.0; angle += 1.0) {
      double factor = glass.factor(Math.cos(Math.toRadians(angle)));
      assertTrue(factor >= 0.0 && factor <= before, glass + " at " + angle);
      before = factor;
    }
    assertEquals(0.0, glass.factor(1e-9), 1e-6, "also where 1 - b0 (1/cos - 1) is below 0");
    assertEquals(0.0, glass.factor(0.0));
    assertEquals(0.0, glass.factor(-0.3));
  }

  @ParameterizedTest
  @EnumSource
  void skyAndGroundFactorsAreSharesAtEveryTilt(IncidenceLoss glass) {
    for (double tilt = 0.0; tilt <= 90.0; tilt += 5.0) {
      assertTrue(glass.skyFactor(tilt) > 0.9 && glass.skyFactor(tilt) < 1.0);
      assertTrue(glass.groundFactor(tilt) >= 0.0 && glass.groundFactor(tilt) < 1.0);
    }
  }
}
