package greyspell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import greyspell.power.step.InverterLimits;
import org.junit.jupiter.api.Test;

class WiresTest {
  /**
   * 16 mm², 8 m one way, 60 A at 48 V: R = 2 × 8 m × 1.21 ohm/km = 19.36 mohm, drop 1.162 V, 69.7 W
   * (worked by hand at 20 °C). As a share of the squared power: 69.7 / 2880² = R / V².
   */
  @Test
  void lossIsTheSquareOfTheCurrentTimesTheResistance() {
    double ohm = 2.0 * 8.0 * 1.21e-3;
    InverterLimits bare = new InverterLimits(5000.0, 0.0, 0.0);
    InverterLimits wired = bare.withWires(ohm, 48.0);
    assertEquals(2880.0, bare.busWh(2880.0), 0.0);
    assertEquals(69.7, wired.busWh(2880.0) - 2880.0, 0.05);
    assertEquals(4.0 * (wired.busWh(1000.0) - 1000.0), wired.busWh(2000.0) - 2000.0, 1e-9);
  }
}
