package greyspell.power;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class FuelUseTest {
  /** Two runs: 2 kW for an hour and a half, 4 kW for half an hour: 0.9, 0.45 and 0.8 l. */
  @Test
  void litresHoursAndStarts() {
    FuelUse use =
        FuelUse.of(
            Engines.diesel(),
            new double[] {0, 2000, 1000, 0, 2000, 0},
            new double[] {0, 1, 0.5, 0, 0.5, 0});
    assertArrayEquals(new double[] {0, 0.9, 0.45, 0, 0.8, 0}, use.litresL(), 1e-12);
    assertEquals(2.15, use.totalL(), 1e-12);
    assertEquals(2.0, use.runningH(), 1e-12);
    assertEquals(2, use.starts());
    assertEquals(1, use.starts(2, 6), "the run that began before is not counted");
    assertEquals(0.8, use.totalL(3, 6), 1e-12);
    assertEquals(0.5, use.runningH(3, 6), 1e-12);
  }

  @Test
  void anIdlingEngineBurnsFuel() {
    FuelUse use = FuelUse.of(Engines.diesel(), new double[] {0.0}, new double[] {1.0});
    assertEquals(0.3, use.totalL(), 1e-12);
    assertEquals(1, use.starts());
  }

  @Test
  void gallonsCostAndCarbonDioxide() {
    FuelUse use = FuelUse.of(Engines.diesel(), new double[] {4000}, new double[] {1});
    assertEquals(1.0, FuelUse.usGallons(3.785411784), 1e-12);
    assertEquals(3.2, FuelUse.cost(use.totalL(), 2.0));
    assertNull(FuelUse.cost(use.totalL(), null));
    assertEquals(10.16, use.co2Kg(3.785411784), 1e-9);
  }

  @Test
  void refusesEnergyFromAnEngineThatStands() {
    assertThrows(
        IllegalArgumentException.class,
        () -> FuelUse.of(Engines.diesel(), new double[] {5.0}, new double[] {0.0}));
    assertThrows(
        IllegalArgumentException.class,
        () -> FuelUse.of(Engines.diesel(), new double[] {5.0}, new double[] {1.0, 1.0}));
  }
}
