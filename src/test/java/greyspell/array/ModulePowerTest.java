package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ModulePowerTest {
  private static final ModuleChoices SIMPLE =
      new ModuleChoices(
          ModuleChoices.CellHeat.FAIMAN,
          ModuleChoices.PowerCurve.TEMPERATURE_COEFFICIENT,
          25.0,
          6.84);

  @Test
  void testConditionsGiveTheRatedPowerInBothModels() {
    // sticker says 300 W, its voltage times current 300.625
    var sheet =
        new ModuleSpec(
            "m", 300, 39.8, 9.83, 32.5, 9.25, -0.0038, -0.0031, 0.0005, 45, 60, null, null);
    assertEquals(
        300.0, PowerModel.of(sheet, ModuleChoices.usual()).power().powerW(1000.0, 25.0), 1e-9);
    assertEquals(300.0, PowerModel.of(sheet, SIMPLE).power().powerW(1000.0, 25.0), 1e-9);
  }

  @Test
  void temperatureCoefficientAndLowLight() {
    var power = new TemperatureCoefficientPower(Sheets.PV_3);
    double rated = Sheets.PV_3.ratedPowerW();
    assertEquals(rated * (1.0 - 0.0038 * 25.0), power.powerW(1000.0, 50.0), 1e-9);
    assertEquals(rated * 0.2 * 0.97, power.powerW(200.0, 25.0), 1e-9);
    assertEquals(0.0, power.powerW(0.0, 25.0));
    assertEquals(0.0, power.powerW(1e-30, 25.0));
  }

  /** Own construction: the two models agree within 1 % at working light, low-light factor aside. */
  @Test
  void bothModelsAgreeAtWorkingLight() {
    ModulePower diode = PowerModel.of(Sheets.PV_3, ModuleChoices.usual()).power();
    for (double cellC : new double[] {5.0, 25.0, 45.0}) {
      for (double irradianceWm2 : new double[] {400.0, 700.0, 1000.0}) {
        double linearW =
            Sheets.PV_3.ratedPowerW() * irradianceWm2 / 1000.0 * (1.0 - 0.0038 * (cellC - 25.0));
        double got = diode.powerW(irradianceWm2, cellC);
        assertEquals(linearW, got, 0.012 * linearW, irradianceWm2 + " W/m², " + cellC + " °C");
      }
    }
  }

  @Test
  void anImpossibleSheetFallsBackWithACaution() {
    ModuleSpec sheet = Sheets.sheet(60, 10.0, 40.0, 9.99, 39.99, 0.0005, -0.003, -0.004);
    PowerModel model = PowerModel.of(sheet, ModuleChoices.usual());
    assertInstanceOf(TemperatureCoefficientPower.class, model.power());
    assertEquals(1, model.cautions().size());
    assertTrue(model.cautions().get(0).endsWith("rating and temperature coefficient instead"));
  }

  @Test
  void refusesNaNAndAPowerPointOutsideTheCurve() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Sheets.sheet(60, 10.0, 40.0, 9.0, 41.0, 0.0005, -0.003, -0.004));
    assertThrows(
        IllegalArgumentException.class,
        () -> Sheets.sheet(60, 10.0, 40.0, 9.0, Double.NaN, 0.0005, -0.003, -0.004));
  }
}
