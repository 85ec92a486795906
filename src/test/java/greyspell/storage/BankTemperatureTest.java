package greyspell.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class BankTemperatureTest {
  private static double[] waves(int hours, double meanC, double swingC) {
    var airC = new double[hours];
    for (int h = 0; h < hours; h++) {
      airC[h] = meanC + swingC * Math.sin(2.0 * Math.PI * h / 24.0);
    }
    return airC;
  }

  @Test
  void indoorsIsConstant() {
    BankTemperature got = BankTemperature.of(new Enclosure.Indoors(15.0), waves(48, 0.0, 10.0));
    assertEquals(15.0, Arrays.stream(got.temperatureC()).min().orElseThrow());
    assertEquals(15.0, Arrays.stream(got.temperatureC()).max().orElseThrow());
    assertEquals(0.0, Arrays.stream(got.heaterWh()).sum());
  }

  @Test
  void withoutLagItIsTheAir() {
    double[] airC = waves(48, -5.0, 10.0);
    assertArrayEquals(
        airC, BankTemperature.of(new Enclosure.Outdoors(0.0), airC).temperatureC(), 1e-12);
  }

  /** A step from 0 to 10 °C, lag 5 h: after n hours 10 (1 - exp(-n / 5)), meaned over the hour. */
  @Test
  void aStepIsFollowedExactly() {
    var airC = new double[2000];
    Arrays.fill(airC, 1000, 2000, 10.0);
    double[] got = BankTemperature.of(new Enclosure.Outdoors(5.0), airC).temperatureC();
    assertEquals(0.0, got[999], 1e-9);
    for (int n = 0; n < 30; n++) {
      double mean = 10.0 - 10.0 * 5.0 * (Math.exp(-n / 5.0) - Math.exp(-(n + 1) / 5.0));
      assertEquals(mean, got[1000 + n], 1e-9);
    }
  }

  /** The start is that of the same air repeated, so the first day equals every other. */
  @Test
  void startIsPeriodic() {
    double[] got =
        BankTemperature.of(new Enclosure.Outdoors(72.0), waves(240, 3.0, 8.0)).temperatureC();
    for (int h = 0; h < 24; h++) {
      assertEquals(got[h], got[h + 216], 1e-6);
    }
    assertEquals(3.0, Arrays.stream(got).average().orElseThrow(), 1e-6);
  }

  /**
   * Amplitude of a lagged daily wave: 1 / sqrt(1 + (2 pi lag / 24)²), within the hour steps' error.
   */
  @Test
  void lagFlattensTheDay() {
    double[] got =
        BankTemperature.of(new Enclosure.Outdoors(12.0), waves(240, 0.0, 10.0)).temperatureC();
    double expected = 10.0 / Math.sqrt(1.0 + Math.PI * Math.PI);
    assertEquals(expected, Arrays.stream(got).max().orElseThrow(), 0.03 * expected);
  }

  /** Constant -10 °C, held at 5 °C, 2 W/K: 30 W for ever. */
  @Test
  void heaterMakesUpTheLoss() {
    var airC = new double[100];
    Arrays.fill(airC, -10.0);
    BankTemperature got = BankTemperature.of(new Enclosure.Heated(24.0, 5.0, 2.0), airC);
    for (int h = 0; h < 100; h++) {
      assertEquals(5.0, got.temperatureC()[h], 1e-9);
      assertEquals(30.0, got.heaterWh()[h], 1e-9);
    }
  }

  /** Over a repeated year what the heater gives is what the box loses: heat is conserved. */
  @Test
  void heatIsConserved() {
    double[] airC = waves(24 * 60, 4.0, 9.0);
    for (double lagH : new double[] {0.0, 2.0, 20.0}) {
      BankTemperature got = BankTemperature.of(new Enclosure.Heated(lagH, 5.0, 3.0), airC);
      double lostWh = 0.0;
      for (int h = 0; h < airC.length; h++) {
        lostWh += 3.0 * (got.temperatureC()[h] - airC[h]);
        assertTrue(got.temperatureC()[h] >= 5.0 - 1e-12);
      }
      double heaterWh = Arrays.stream(got.heaterWh()).sum();
      assertTrue(heaterWh > 1000.0);
      assertEquals(heaterWh, lostWh, 1e-6 * heaterWh, "lag " + lagH);
    }
  }
}
