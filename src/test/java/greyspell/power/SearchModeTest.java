package greyspell.power;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.power.InverterSpec.EfficiencyAt;
import greyspell.power.InverterSpec.Search;
import java.util.List;
import org.junit.jupiter.api.Test;

class SearchModeTest {
  private static final Search SEARCH = new Search(2.0, 15.0);

  @Test
  void peakOrMeanWakesIt() {
    SearchMode got =
        SearchMode.of(
            SEARCH,
            new double[] {0, 5, 5, 15, 40, 14.9},
            () -> new double[] {0, 5, 60, 15, Double.NaN, Double.NaN});
    assertArrayEquals(new boolean[] {true, true, false, false, false, true}, got.asleep());
    assertArrayEquals(new double[] {0, 5, 0, 0, 0, 14.9}, got.notWokenWh());
    assertEquals(3, got.hoursAsleep());
  }

  @Test
  void peaksAreAskedForOnlyWhereAMeanDoesNotWakeIt() {
    SearchMode got =
        SearchMode.of(
            SEARCH,
            new double[] {15, 40},
            () -> {
              throw new AssertionError("every mean wakes it");
            });
    assertEquals(0, got.hoursAsleep());
    assertArrayEquals(new double[2], got.notWokenWh());
  }

  @Test
  void asleepItDrawsTheSearchPower() {
    var inverter =
        new InverterSpec(
            "i", 1, 2000, null, 30, 20, List.of(new EfficiencyAt(0.5, 0.92)), SEARCH, null);
    boolean[] asleep = {true, false, false, true};
    double[] daylight = {1.0, 1.0, 0.0, 0.0};
    assertArrayEquals(new double[] {2, 30, 20, 2}, inverter.standbyWh(daylight, asleep));
    var awake = new InverterSpec("i", 1, 2000, null, 30, 20, List.of(new EfficiencyAt(0.5, 0.92)));
    assertArrayEquals(new double[] {30, 30, 20, 20}, awake.standbyWh(daylight, asleep));
  }

  @Test
  void refusesOtherLengths() {
    assertThrows(
        IllegalArgumentException.class,
        () -> SearchMode.of(SEARCH, new double[] {1.0}, () -> new double[0]));
    assertThrows(IllegalArgumentException.class, () -> new Search(2.0, 0.0));
  }
}
