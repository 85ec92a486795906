package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.calendar.HourCalendar;
import greyspell.calendar.Monthly;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SolarChainTest {
  private static final HourCalendar YEAR = HourCalendar.typicalYear();
  private static final int JULY_NOON = YEAR.hourOf(HourCalendar.TYPICAL_YEAR, 7, 1, 12);

  private static ArraySpec plane(
      double shade, double soiling, double mismatch, double wiring, double ageing) {
    return new ArraySpec(
        "roof",
        45.0,
        180.0,
        Sheets.PV_3,
        3,
        2,
        Monthly.constant(soiling),
        Monthly.of(shade, shade, shade, shade, shade, shade, 0, 0, shade, shade, shade, shade),
        mismatch,
        wiring,
        ageing,
        ModuleChoices.usual());
  }

  private static SolarHours run(
      ArraySpec array, double[] front, double[] absorbed, double[] air, double[] wind) {
    ModulePower power = PowerModel.of(array.module(), array.choices()).power();
    return SolarChain.run(array, power, YEAR, front, absorbed, air, wind);
  }

  /**
   * Worked by hand: six modules of 300.625 W; 500 W/m² of which 480 pass the glass; no shade in
   * July.
   */
  @Test
  void oneHourByHand() {
    var front = new double[YEAR.hours()];
    var absorbed = new double[YEAR.hours()];
    var air = new double[YEAR.hours()];
    var wind = new double[YEAR.hours()];
    front[JULY_NOON] = 500.0;
    absorbed[JULY_NOON] = 480.0;
    air[JULY_NOON] = 15.0;
    wind[JULY_NOON] = 2.0;
    SolarHours got = run(plane(0.3, 0.05, 0.02, 0.03, 0.10), front, absorbed, air, wind);

    double rated = 6 * 300.625;
    double cellC = 15.0 + 500.0 / (25.0 + 6.84 * 2.0);
    double cellsW =
        6 * PowerModel.of(Sheets.PV_3, ModuleChoices.usual()).power().powerW(456.0, cellC);
    assertEquals(rated * 0.5, got.nominalWh()[JULY_NOON], 1e-9);
    assertEquals(rated * 0.02, got.lossWh(ArrayLoss.INCIDENCE)[JULY_NOON], 1e-9);
    assertEquals(0.0, got.lossWh(ArrayLoss.SHADE)[JULY_NOON], 1e-9);
    assertEquals(rated * 0.024, got.lossWh(ArrayLoss.SOILING)[JULY_NOON], 1e-9);
    assertEquals(
        rated * 0.456 - cellsW,
        got.lossWh(ArrayLoss.TEMPERATURE_AND_LOW_LIGHT_DELTA)[JULY_NOON],
        1e-9);
    assertEquals(cellsW * 0.02, got.lossWh(ArrayLoss.MISMATCH)[JULY_NOON], 1e-9);
    assertEquals(cellsW * 0.98 * 0.10, got.lossWh(ArrayLoss.AGEING)[JULY_NOON], 1e-9);
    assertEquals(cellsW * 0.98 * 0.9 * 0.03, got.lossWh(ArrayLoss.ARRAY_WIRING)[JULY_NOON], 1e-9);
    assertEquals(cellsW * 0.98 * 0.9 * 0.97, got.availableWh()[JULY_NOON], 1e-9);
    assertEquals(0.0, got.availableWh()[JULY_NOON + 1]);
  }

  @Test
  void shadeFollowsTheMonthAndCoolsTheCells() {
    var front = new double[24];
    var absorbed = new double[24];
    front[12] = 600.0;
    absorbed[12] = 600.0;
    SolarHours got =
        run(plane(0.3, 0.0, 0.0, 0.0, 0.0), front, absorbed, new double[24], new double[24]);
    assertEquals(6 * 300.625 * 0.18, got.lossWh(ArrayLoss.SHADE)[12], 1e-9);
    ModulePower power = PowerModel.of(Sheets.PV_3, ModuleChoices.usual()).power();
    assertEquals(6 * power.powerW(420.0, 420.0 / 25.0), got.availableWh()[12], 1e-9);
  }

  @Test
  void coldCellsAreANegativeDelta() {
    double[] front = {1000.0};
    SolarHours got =
        run(plane(0, 0, 0, 0, 0), front, front, new double[] {-30.0}, new double[] {5.0});
    assertTrue(got.lossWh(ArrayLoss.TEMPERATURE_AND_LOW_LIGHT_DELTA)[0] < -50.0);
  }

  @Test
  void missingWindIsTakenAsOneMetreASecond() {
    double[] front = {700.0};
    double[] air = {20.0};
    ArraySpec array = plane(0, 0, 0, 0, 0);
    ModulePower power = PowerModel.of(array.module(), array.choices()).power();
    assertEquals(
        run(array, front, front, air, new double[] {1.0}).availableWh()[0],
        SolarChain.run(array, power, YEAR, front, front, air, null).availableWh()[0]);
  }

  @Property(tries = 200)
  void booksCloseAndTheOrderOfPlanesDoesNotMatter(@ForAll long seed) {
    var random = new Random(seed);
    SolarHours a = randomHours(random);
    SolarHours b = randomHours(random);
    SolarHours c = randomHours(random);
    SolarHours sum = SolarHours.sum(List.of(a, b, c));
    SolarHours other = SolarHours.sum(List.of(c, a, b));
    for (SolarHours hours : List.of(a, b, c, sum)) {
      for (int h = 0; h < hours.hours(); h++) {
        double left = hours.nominalWh()[h];
        for (ArrayLoss loss : ArrayLoss.values()) {
          left -= hours.lossWh(loss)[h];
        }
        assertEquals(left, hours.availableWh()[h], 1e-9);
      }
    }
    for (int h = 0; h < sum.hours(); h++) {
      assertEquals(sum.availableWh()[h], other.availableWh()[h], 1e-9);
      assertEquals(sum.nominalWh()[h], other.nominalWh()[h], 1e-9);
    }
  }

  private static SolarHours randomHours(Random random) {
    int hours = 30;
    var front = new double[hours];
    var absorbed = new double[hours];
    var air = new double[hours];
    var wind = new double[hours];
    for (int h = 0; h < hours; h++) {
      front[h] = random.nextInt(3) == 0 ? 0.0 : 1200.0 * random.nextDouble();
      absorbed[h] = front[h] * random.nextDouble();
      air[h] = -40.0 + 80.0 * random.nextDouble();
      wind[h] = 15.0 * random.nextDouble();
    }
    double[] share = random.doubles(5).toArray();
    return run(plane(share[0], share[1], share[2], share[3], share[4]), front, absorbed, air, wind);
  }

  private static ControllerSpec controller(
      int count, @Nullable Double maxOutputW, @Nullable Double maxOutputA, double efficiency) {
    return new ControllerSpec(
        "c",
        count,
        maxOutputW,
        maxOutputA,
        efficiency,
        null,
        null,
        null,
        null,
        null,
        2.0,
        ControllerKind.MPPT,
        List.of());
  }

  /** Two controllers of 60 A at 51.2 V: 6144 W on the bus, so 6400 W go in at 96 %. */
  @Test
  void limitsStandAtTheOutput() {
    var chain = new ControllerChain(controller(2, 5000.0, 60.0, 0.96), 51.2);
    ControllerHours got = chain.run(new double[] {0.0, 1000.0, 6400.0, 7000.0});
    assertEquals(6144.0, chain.mostOutputWh(), 1e-9);
    assertEquals(0.0, got.busWh()[0]);
    assertEquals(960.0, got.busWh()[1], 1e-9);
    assertEquals(40.0, got.lossWh()[1], 1e-9);
    assertEquals(0.0, got.clippedWh()[2], 1e-9);
    assertEquals(6144.0, got.busWh()[3], 1e-9);
    assertEquals(600.0, got.clippedWh()[3], 1e-9);
    assertEquals(256.0, got.lossWh()[3], 1e-9);
  }

  @Test
  void powerLimitAloneAndNoLimit() {
    assertEquals(
        3000.0, new ControllerChain(controller(1, 3000.0, null, 1.0), 48.0).mostOutputWh());
    ControllerHours got =
        new ControllerChain(controller(1, null, null, 0.97), 48.0).run(new double[] {1e6});
    assertEquals(0.0, got.clippedWh()[0]);
    assertEquals(970_000.0, got.busWh()[0], 1e-6);
  }

  @Property(tries = 200)
  void controllerBooksClose(@ForAll long seed) {
    var random = new Random(seed);
    var spec =
        controller(
            1 + random.nextInt(3),
            100.0 + 5000.0 * random.nextDouble(),
            random.nextBoolean() ? null : 5.0 + 100.0 * random.nextDouble(),
            0.5 + 0.5 * random.nextDouble());
    double[] availableWh = random.doubles(100, 0.0, 15_000.0).toArray();
    ControllerHours got =
        new ControllerChain(spec, 12.0 + 40.0 * random.nextDouble()).run(availableWh);
    for (int h = 0; h < availableWh.length; h++) {
      assertEquals(availableWh[h], got.clippedWh()[h] + got.lossWh()[h] + got.busWh()[h], 1e-9);
    }
    assertTrue(Arrays.stream(got.clippedWh()).allMatch(wh -> wh >= 0.0));
    assertTrue(Arrays.stream(got.lossWh()).allMatch(wh -> wh >= 0.0));
  }
}
