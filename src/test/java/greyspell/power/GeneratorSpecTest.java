package greyspell.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import greyspell.power.GeneratorSpec.Derating;
import greyspell.power.GeneratorSpec.FuelAt;
import java.util.List;
import org.junit.jupiter.api.Test;

class GeneratorSpecTest {
  @Test
  void fuelRunsStraightBetweenThePoints() {
    GeneratorSpec g = Engines.diesel();
    assertEquals(0.6, g.fuelLPerH(1000.0), 1e-12);
    assertEquals(0.75, g.fuelLPerH(1500.0), 1e-12);
    assertEquals(1.25, g.fuelLPerH(3000.0), 1e-12);
    assertEquals(1.6, g.fuelLPerH(4000.0), 1e-12);
  }

  /** From 0.6 at a quarter and 0.9 at half load the line meets 0.3 with nothing drawn. */
  @Test
  void theLowestLineIsCarriedOnToNoLoad() {
    assertEquals(0.3, Engines.diesel().fuelLPerH(0.0), 1e-12);
    assertEquals(0.36, Engines.diesel().fuelLPerH(200.0), 1e-12);
  }

  @Test
  void fuelIsNeverNegative() {
    GeneratorSpec steep = Engines.diesel(Derating.NONE, new FuelAt(0.5, 0.2), new FuelAt(1.0, 1.6));
    assertEquals(0.0, steep.fuelLPerH(0.0));
  }

  @Test
  void aStraightLineIsItsTwoEnds() {
    GeneratorSpec line =
        new GeneratorSpec("g", 1, 5000.0, Fuel.PETROL, GeneratorSpec.line(0.5, 2.5), Derating.NONE);
    assertEquals(0.5, line.fuelLPerH(0.0));
    assertEquals(0.9, line.fuelLPerH(1000.0), 1e-12);
    assertEquals(2.5, line.fuelLPerH(5000.0), 1e-12);
  }

  /** 1500 m take 5 times 3.5 %, 35 °C take 10 times 0.18 %: 0.825 times 0.982. */
  @Test
  void thinAndHotAirTakePower() {
    GeneratorSpec g = Engines.diesel();
    assertEquals(4000.0, g.mostW(0.0, 25.0));
    assertEquals(4000.0, g.mostW(-300.0, -30.0), "thick and cold air give none");
    assertEquals(4000.0 * 0.825, g.mostW(1500.0, 10.0), 1e-9);
    assertEquals(4000.0 * 0.825 * 0.982, g.mostW(1500.0, 35.0), 1e-9);
    assertEquals(0.0, g.mostW(50_000.0, 35.0), "never below nothing");
  }

  @Test
  void refusesWhatCannotBe() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Engines.diesel(Derating.NONE, new FuelAt(0.5, 1.0), new FuelAt(1.0, 0.9)));
    assertThrows(
        IllegalArgumentException.class,
        () -> Engines.diesel(Derating.NONE, new FuelAt(0.5, 1.0), new FuelAt(0.5, 1.1)));
    assertThrows(IllegalArgumentException.class, () -> new FuelAt(Double.NaN, 1.0));
    assertThrows(IllegalArgumentException.class, () -> new Derating(0, -0.1, 25, 0));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new GeneratorSpec("g", 1, 0.0, Fuel.PETROL, List.of(new FuelAt(1, 1)), Derating.NONE));
    assertThrows(IllegalArgumentException.class, () -> new Charger(100.0, 1.1));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new GeneratorRules(
                GeneratorRules.Policy.AUTO,
                0.8,
                0.8,
                1,
                RunTimes.ALWAYS,
                RunTimes.ALWAYS,
                Engines.CHARGER));
  }
}
