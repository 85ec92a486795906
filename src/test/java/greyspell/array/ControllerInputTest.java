package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Voltage windows, controllers that do not track, and efficiency by load. */
class ControllerInputTest {
  private static final HourCalendar YEAR = HourCalendar.typicalYear();
  private static final SingleDiode PV_3 = Sheets.diode(DataSheetFit.of(Sheets.PV_3));

  private static ControllerSpec mppt(
      @Nullable Double lowV, @Nullable Double highV, @Nullable Double startV) {
    return new ControllerSpec(
        "c",
        1,
        null,
        60.0,
        0.97,
        lowV,
        highV,
        startV,
        null,
        null,
        1.0,
        ControllerKind.MPPT,
        List.of());
  }

  private static ArraySpec array(ModuleSpec module, int inSeries, int inParallel) {
    return new ArraySpec(
        "roof",
        45.0,
        180.0,
        module,
        inSeries,
        inParallel,
        Monthly.constant(0.0),
        Monthly.constant(0.0),
        0.01,
        0.02,
        0.03,
        ModuleChoices.usual());
  }

  private static SolarHours run(
      ArraySpec array, double[] light, double[] air, ControllerInput input) {
    return SolarChain.run(
        array,
        PowerModel.of(array.module(), array.choices()).power(),
        YEAR,
        light,
        light,
        air,
        null,
        input);
  }

  private static double lit(double irradianceWm2, double airC) {
    return new FaimanCell(25.0, 6.84).cellC(irradianceWm2, airC, SolarChain.ASSUMED_WIND_MS);
  }

  @Test
  void insideTheWindowNothingIsLost() {
    double[] light = {300.0, 900.0};
    SolarHours got =
        run(
            array(Sheets.PV_3, 3, 2),
            light,
            new double[] {5.0, 15.0},
            ControllerInput.of(mppt(60.0, 145.0, 80.0), 48.0));
    SolarHours free =
        run(array(Sheets.PV_3, 3, 2), light, new double[] {5.0, 15.0}, ControllerInput.boundless());
    assertEquals(0.0, Arrays.stream(got.lossWh(ArrayLoss.OUTSIDE_WINDOW)).sum());
    assertEquals(free.availableWh()[1], got.availableWh()[1]);
  }

  /** Two modules in a row against a window that begins above their best voltage but below open. */
  @Test
  void belowTheLowEndTheArrayWorksAtTheLowEnd() {
    double cellC = lit(800.0, 30.0);
    double bestV = 2 * PV_3.maxPowerV(800.0, cellC);
    double openV = 2 * PV_3.openCircuitV(800.0, cellC);
    double lowV = 0.5 * (bestV + openV);
    SolarHours got =
        run(
            array(Sheets.PV_3, 2, 1),
            new double[] {800.0},
            new double[] {30.0},
            ControllerInput.of(mppt(lowV, 145.0, null), 24.0));
    double share = lowV / 2 * PV_3.currentA(800.0, cellC, lowV / 2) / PV_3.maxPowerW(800.0, cellC);
    assertTrue(share > 0.05 && share < 0.95);
    double wiredWh = got.availableWh()[0] + got.lossWh(ArrayLoss.OUTSIDE_WINDOW)[0];
    assertEquals(share, got.availableWh()[0] / wiredWh, 1e-9);
    assertEquals(2 * PV_3.maxPowerW(800.0, cellC) * 0.99 * 0.98 * 0.97, wiredWh, 1e-6);
  }

  @Test
  void belowTheOpenCircuitVoltageOfTheWindowNothingComes() {
    SolarHours got =
        run(
            array(Sheets.PV_3, 1, 1),
            new double[] {900.0},
            new double[] {20.0},
            ControllerInput.of(mppt(60.0, 145.0, null), 48.0));
    assertEquals(0.0, got.availableWh()[0]);
    assertTrue(got.lossWh(ArrayLoss.OUTSIDE_WINDOW)[0] > 200.0);
  }

  /**
   * Four modules in a row in the cold against 100 V: they work at 100 V, near their full current.
   */
  @Test
  void aboveTheHighEndTheArrayWorksAtTheHighEnd() {
    double cellC = lit(700.0, -20.0);
    double bestV = 4 * PV_3.maxPowerV(700.0, cellC);
    assertTrue(bestV > 130.0);
    SolarHours got =
        run(
            array(Sheets.PV_3, 4, 1),
            new double[] {700.0},
            new double[] {-20.0},
            ControllerInput.of(mppt(20.0, 100.0, null), 48.0));
    double share = 25.0 * PV_3.currentA(700.0, cellC, 25.0) / PV_3.maxPowerW(700.0, cellC);
    double wiredWh = got.availableWh()[0] + got.lossWh(ArrayLoss.OUTSIDE_WINDOW)[0];
    assertEquals(share, got.availableWh()[0] / wiredWh, 1e-9);
    assertTrue(share > 0.7 && share < 0.85, "share " + share);
  }

  /**
   * In dim light the string does not reach the start voltage; once started it goes on in the heat.
   */
  @Test
  void theStartVoltageIsNeededOnceADay() {
    double coolV = 2 * PV_3.openCircuitV(900.0, lit(900.0, 0.0));
    double hotV = 2 * PV_3.openCircuitV(900.0, lit(900.0, 40.0));
    double startV = 0.5 * (coolV + hotV);
    var input = ControllerInput.of(mppt(30.0, 145.0, startV), 24.0);
    double[] light = {900.0, 900.0, 0.0, 900.0};
    double[] air = {0.0, 40.0, 30.0, 40.0};
    SolarHours got = run(array(Sheets.PV_3, 2, 1), light, air, input);
    double[] lost = got.lossWh(ArrayLoss.OUTSIDE_WINDOW);
    assertEquals(0.0, lost[0]);
    assertEquals(0.0, lost[1]);
    assertEquals(0.0, got.availableWh()[3]);
    assertTrue(lost[3] > 300.0);
  }

  /**
   * Worked out apart from this code (own construction, not published): 36-cell module, De Soto's
   * five parameters.
   */
  @ParameterizedTest
  @CsvSource({
    "1000, 25, 13.0, 0.780, 78.03",
    "1000, 50, 13.8, 0.932, 83.14",
    "500, 0, 12.2, 0.641, 36.15",
    "1000, 0, 12.2, 0.653, 72.21",
    "800, 45, 14.4, 0.937, 69.22"
  })
  void heldAtBankVoltage(
      double irradianceWm2, double cellC, double bankV, double share, double heldW) {
    SingleDiode diode = Sheets.diode(DataSheetFit.deSoto(Sheets.PV_4));
    var power = new SingleDiodePower(Sheets.PV_4, diode);
    var voltage = new WorkingVoltage(power, diode, 1, ControllerInput.atBankVoltage(bankV));
    assertEquals(
        power.powerW(irradianceWm2, cellC), voltage.openHour(irradianceWm2, cellC), 1e-12 * 100.0);
    double got = voltage.powerShare(0, irradianceWm2, cellC);
    assertEquals(share, got, 0.002);
    assertEquals(heldW, got * diode.maxPowerW(irradianceWm2, cellC), 0.002 * heldW);
    // two in a row on twice the voltage are the same
    var two = new WorkingVoltage(power, diode, 2, ControllerInput.atBankVoltage(2.0 * bankV));
    two.openHour(irradianceWm2, cellC);
    assertEquals(got, two.powerShare(0, irradianceWm2, cellC), 1e-12);
  }

  @Test
  void highVoltageModulesOnALowBankLoseHalf() {
    ArraySpec array = array(Sheets.PV_3, 1, 2);
    double[] light = {200.0, 600.0, 900.0};
    double[] air = {0.0, 5.0, 10.0};
    ControllerInput pwm =
        ControllerInput.of(
            new ControllerSpec(
                "p",
                1,
                null,
                30.0,
                0.98,
                null,
                null,
                null,
                50.0,
                null,
                0.3,
                ControllerKind.PWM,
                List.of()),
            12.8);
    SolarHours got = run(array, light, air, pwm);
    for (int h = 0; h < 3; h++) {
      double lost = got.lossWh(ArrayLoss.HELD_AT_BANK_VOLTAGE)[h];
      double share = lost / (lost + got.availableWh()[h]);
      assertTrue(share > 0.55 && share < 0.65, "hour " + h + ": " + share);
      assertEquals(0.0, got.lossWh(ArrayLoss.OUTSIDE_WINDOW)[h]);
    }
    // what is booked as held is what a tracking controller would bring besides
    SolarHours tracked = run(array, light, air, ControllerInput.boundless());
    assertEquals(
        Arrays.stream(tracked.availableWh()).sum(),
        Arrays.stream(got.availableWh()).sum()
            + Arrays.stream(got.lossWh(ArrayLoss.HELD_AT_BANK_VOLTAGE)).sum(),
        1e-9);
  }

  @Test
  void aBankAboveTheOpenCircuitVoltageTakesNothing() {
    SolarHours got =
        run(
            array(Sheets.PV_4, 1, 1),
            new double[] {1000.0},
            new double[] {25.0},
            ControllerInput.atBankVoltage(25.6));
    assertEquals(0.0, got.availableWh()[0]);
  }

  @Test
  void theBankVoltageMayChangeByTheHour() {
    double[] light = {800.0, 800.0};
    double[] air = {10.0, 10.0};
    SolarHours got =
        run(
            array(Sheets.PV_4, 1, 1),
            light,
            air,
            ControllerInput.atBankVoltage(new double[] {12.0, 14.4}));
    SolarHours low = run(array(Sheets.PV_4, 1, 1), light, air, ControllerInput.atBankVoltage(12.0));
    assertEquals(low.availableWh()[0], got.availableWh()[0]);
    assertTrue(got.availableWh()[1] > 1.1 * got.availableWh()[0]);
  }

  @Test
  void theSimplePowerModelTakesItsVoltageFromTheCurve() {
    ArraySpec usual = array(Sheets.PV_4, 1, 1);
    var simple = new TemperatureCoefficientPower(Sheets.PV_4);
    double[] light = {700.0};
    double[] air = {10.0};
    var input = ControllerInput.atBankVoltage(13.0);
    SolarHours got = SolarChain.run(usual, simple, YEAR, light, light, air, null, input);
    SolarHours curve = run(usual, light, air, input);
    assertEquals(
        curve.availableWh()[0]
            / (curve.availableWh()[0] + curve.lossWh(ArrayLoss.HELD_AT_BANK_VOLTAGE)[0]),
        got.availableWh()[0]
            / (got.availableWh()[0] + got.lossWh(ArrayLoss.HELD_AT_BANK_VOLTAGE)[0]),
        1e-12);
  }

  @Test
  void aModuleWithoutACurveCannotBeHeldButCanBeTracked() {
    ModuleSpec sheet = Sheets.sheet(60, 10.0, 40.0, 9.99, 39.99, 0.0005, -0.003, -0.004);
    assertFalse(SolarChain.isVoltageKnown(sheet));
    assertTrue(SolarChain.isVoltageKnown(Sheets.PV_3));
    double[] light = {500.0};
    double[] air = {10.0};
    var refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> run(array(sheet, 1, 1), light, air, ControllerInput.atBankVoltage(12.0)));
    assertTrue(String.valueOf(refused.getMessage()).contains("no curve"));
    SolarHours got =
        run(array(sheet, 1, 1), light, air, ControllerInput.of(mppt(60.0, 100.0, null), 48.0));
    assertEquals(0.0, got.lossWh(ArrayLoss.OUTSIDE_WINDOW)[0]);
  }

  @Property(tries = 300)
  void booksCloseUnderEveryController(@ForAll long seed) {
    var random = new Random(seed);
    ModuleSpec module = Sheets.random(random);
    int inSeries = 1 + random.nextInt(4);
    double lowV = 10.0 + 100.0 * random.nextDouble();
    double highV = lowV + 150.0 * random.nextDouble();
    ControllerInput input =
        switch (random.nextInt(3)) {
          case 0 -> ControllerInput.atBankVoltage(12.0 + 50.0 * random.nextDouble());
          case 1 -> ControllerInput.of(mppt(lowV, highV, null), 48.0);
          default -> ControllerInput.of(mppt(lowV, highV, lowV + 40.0 * random.nextDouble()), 48.0);
        };
    int hours = 48;
    var light = new double[hours];
    var air = new double[hours];
    for (int h = 0; h < hours; h++) {
      light[h] = random.nextInt(3) == 0 ? 0.0 : 1200.0 * random.nextDouble();
      air[h] = -30.0 + 70.0 * random.nextDouble();
    }
    SolarHours got = run(array(module, inSeries, 2), light, air, input);
    SolarHours free = run(array(module, inSeries, 2), light, air, ControllerInput.boundless());
    for (int h = 0; h < hours; h++) {
      double left = got.nominalWh()[h];
      for (ArrayLoss loss : ArrayLoss.values()) {
        left -= got.lossWh(loss)[h];
      }
      assertEquals(left, got.availableWh()[h], 1e-9);
      assertTrue(got.lossWh(input.loss())[h] >= 0.0);
      assertTrue(got.availableWh()[h] >= 0.0);
      assertTrue(got.availableWh()[h] <= free.availableWh()[h]);
    }
  }

  @Test
  void theHourLoopAllocatesNothing() {
    var voltage =
        new WorkingVoltage(
            new SingleDiodePower(Sheets.PV_3, PV_3),
            PV_3,
            3,
            ControllerInput.of(mppt(95.0, 100.0, 90.0), 48.0));
    double sum = 0.0;
    for (int k = 0; k < 20_000; k++) {
      sum += voltage.openHour(100.0 + k % 900, -10.0 + k % 60);
      sum += voltage.powerShare(k, 100.0 + k % 900, -10.0 + k % 60);
    }
    var thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = thread.getCurrentThreadAllocatedBytes();
    for (int k = 0; k < 5_000; k++) {
      sum += voltage.openHour(100.0 + k % 900, -10.0 + k % 60);
      sum += voltage.powerShare(k, 100.0 + k % 900, -10.0 + k % 60);
    }
    long took = thread.getCurrentThreadAllocatedBytes() - before;
    assertTrue(took < 5_000, took + " bytes for 5000 hours, sum " + sum);
  }

  /** By hand: 1000 W; 200 W out at 90 %, 1000 W out at 96 %. */
  @Test
  void efficiencyByLoad() {
    var spec =
        new ControllerSpec(
            "c",
            2,
            500.0,
            null,
            0.5,
            null,
            null,
            null,
            null,
            null,
            1.0,
            ControllerKind.MPPT,
            List.of(new EfficiencyPoint(0.2, 0.90), new EfficiencyPoint(0.8, 0.96)));
    double lowIn = 200.0 / 0.90;
    double highIn = 800.0 / 0.96;
    ControllerHours got =
        new ControllerChain(spec, 48.0)
            .run(
                new double[] {
                  0.0, 100.0, lowIn, 0.5 * (lowIn + highIn), highIn, 1000.0, 1000.0 / 0.96, 2000.0
                });
    double[] bus = got.busWh();
    assertEquals(0.0, bus[0]);
    assertEquals(90.0, bus[1], 1e-9);
    assertEquals(200.0, bus[2], 1e-9);
    assertEquals(500.0, bus[3], 1e-9);
    assertEquals(800.0, bus[4], 1e-9);
    assertEquals(960.0, bus[5], 1e-9);
    assertEquals(1000.0, bus[6], 1e-9);
    assertEquals(1000.0, bus[7], 1e-9);
    assertEquals(2000.0 - 1000.0 / 0.96, got.clippedWh()[7], 1e-9);
    for (int h = 0; h < bus.length; h++) {
      assertTrue(got.lossWh()[h] >= -1e-12);
    }
  }

  @Test
  void pointsThatDoNotRiseAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new ControllerSpec(
                "c",
                1,
                500.0,
                null,
                0.9,
                null,
                null,
                null,
                null,
                null,
                1.0,
                ControllerKind.MPPT,
                List.of(new EfficiencyPoint(0.8, 0.96), new EfficiencyPoint(0.2, 0.90))));
  }

  @Test
  void soManyTimesTheSameController() {
    ControllerSpec three = mppt(20.0, 145.0, 25.0).times(3);
    assertEquals(3, three.count());
    assertEquals(
        new ControllerSpec(
            "c",
            3,
            null,
            60.0,
            0.97,
            20.0,
            145.0,
            25.0,
            null,
            null,
            1.0,
            ControllerKind.MPPT,
            List.of()),
        three);
  }

  @Test
  void noControllerOnABankIsBoundless() {
    assertTrue(ControllerInput.boundless().isBoundless());
    assertFalse(ControllerInput.of(mppt(null, null, null), 48.0).isBoundless());
    assertFalse(ControllerInput.atBankVoltage(12.0).isBoundless());
  }

  /**
   * One module of 36 cells, about 17 V, on a tracking controller whose window begins at 10 V: it
   * fills a bank of 12 V, but not one of 24 V, for nothing steps the voltage up.
   */
  @Test
  void belowTheBankNothingPasses() {
    double[] light = {800.0};
    double[] air = {15.0};
    ControllerSpec controller = mppt(10.0, 90.0, null);
    SolarHours low =
        run(array(Sheets.PV_4, 1, 1), light, air, ControllerInput.of(controller, 12.0));
    SolarHours high =
        run(array(Sheets.PV_4, 1, 1), light, air, ControllerInput.of(controller, 24.0));
    SolarHours two =
        run(array(Sheets.PV_4, 2, 1), light, air, ControllerInput.of(controller, 24.0));
    assertEquals(0.0, low.lossWh(ArrayLoss.OUTSIDE_WINDOW)[0]);
    assertEquals(0.0, high.availableWh()[0]);
    assertEquals(low.availableWh()[0], high.lossWh(ArrayLoss.OUTSIDE_WINDOW)[0], 1e-9);
    assertEquals(2.0 * low.availableWh()[0], two.availableWh()[0], 1e-9);
  }
}
