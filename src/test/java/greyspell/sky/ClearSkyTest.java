package greyspell.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClearSkyTest {
  /** check CLR-3b, our own construction: the factor of later copies, which is not used. */
  @ParameterizedTest
  @CsvSource({"30, 910.44", "60, 487.25", "75, 220.47"})
  void regressesOnTheFactorOfLaterCopies(double zenithDeg, double global) {
    double cos = Math.cos(Math.toRadians(zenithDeg));
    double mass = AirMass.relative(cos, zenithDeg);
    double got =
        new IneichenPerezClearSky(0.0).globalWm2(1367.0, cos, mass, 3.0)
            * IneichenPerezClearSky.laterFactor(mass);
    assertEquals(global, got, 0.02);
  }

  /** Trap: the exponent is 0.059 and not the 0.057 of a later report (1037.16 overhead). */
  @Test
  void haurwitzHasTheOriginalExponent() {
    assertTrue(Math.abs(HaurwitzClearSky.globalWm2(1.0) - 1037.16) > 1.0);
  }

  @Test
  void noSunNoLight() {
    var sky = new IneichenPerezClearSky(500.0);
    assertEquals(0.0, HaurwitzClearSky.globalWm2(0.0));
    assertEquals(0.0, HaurwitzClearSky.globalWm2(-0.5));
    assertEquals(0.0, sky.globalWm2(1367.0, 0.0, 38.0, 3.0));
    assertEquals(0.0, sky.directNormalWm2(1367.0, -0.1, 38.0, 3.0));
  }

  @Test
  void hazeTakesLightAndHeightGivesIt() {
    double mass = AirMass.relative(0.5, 60.0);
    var low = new IneichenPerezClearSky(0.0);
    assertTrue(low.globalWm2(1367, 0.5, mass, 2) > low.globalWm2(1367, 0.5, mass, 5));
    assertTrue(
        new IneichenPerezClearSky(2000.0).globalWm2(1367, 0.5, mass * 0.785, 3)
            > low.globalWm2(1367, 0.5, mass, 3));
  }

  @Test
  void airIsThinnerHighUp() {
    assertEquals(101_325.0, AirMass.pressurePa(0.0));
    // standard atmosphere at 1800 m: 81.49 kPa (check CLR-8, the form named there)
    assertEquals(81_490.0, AirMass.pressurePa(1800.0), 10.0);
  }
}
