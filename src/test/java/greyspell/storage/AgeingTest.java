package greyspell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import greyspell.storage.LifeSheet.CyclesAt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class AgeingTest {
  private static List<String> counted(double... series) {
    var found = new ArrayList<String>();
    Rainflow.count(series, (range, mean, count) -> found.add(range + " " + mean + " " + count));
    return found;
  }

  /** In the order in which the ASTM example finds them (public test file). */
  @Test
  void findsTheExampleInOrder() {
    assertEquals(
        List.of(
            "3.0 -0.5 0.5",
            "4.0 -1.0 0.5",
            "4.0 1.0 1.0",
            "8.0 1.0 0.5",
            "9.0 0.5 0.5",
            "8.0 0.0 0.5",
            "6.0 1.0 0.5"),
        counted(-2, 1, -3, 5, -1, 3, -4, 4, -2));
  }

  /** Own construction; steps on the way and rests count nothing. */
  @Test
  void countsADaysAndAWeeksSwing() {
    var want =
        List.of(
            "30.0 55.0 1.0",
            "30.0 75.0 1.0",
            "15.0 87.5 1.0",
            "70.0 65.0 0.5",
            "70.0 65.0 0.5",
            "80.0 60.0 0.5",
            "80.0 60.0 0.5");
    var got = counted(100, 60, 90, 40, 70, 30, 100, 80, 95, 20, 100);
    assertEquals(want.stream().sorted().toList(), got.stream().sorted().toList());
    var slow = counted(100, 100, 80, 60, 60, 90, 40, 50, 70, 30, 55, 100, 80, 95, 95, 20, 100, 100);
    assertEquals(got, slow);
    assertEquals(List.of(), counted());
    assertEquals(List.of(), counted(5, 5, 5));
    assertEquals(List.of("3.0 6.5 0.5"), counted(5, 6, 8));
  }

  /** Range times count is half of all ups and downs, however long the series. */
  @Property(tries = 100)
  void countsAllUpsAndDowns(
      @ForAll @Size(min = 2, max = 400) List<@DoubleRange(min = 0.0, max = 1.0) Double> values) {
    double[] series = values.stream().mapToDouble(Double::doubleValue).toArray();
    double travelled = 0.0;
    for (int i = 1; i < series.length; i++) {
      travelled += Math.abs(series[i] - series[i - 1]);
    }
    double[] sum = new double[1];
    Rainflow.count(series, (range, mean, count) -> sum[0] += range * count);
    assertEquals(0.5 * travelled, sum[0], 1e-9 * (1.0 + travelled));
  }

  @Test
  void shrinkingAndGrowingSwingsNeedNoLuck() {
    var shrinking = new double[5000];
    var growing = new double[5000];
    for (int i = 0; i < 5000; i++) {
      shrinking[i] = (i % 2 == 0 ? 1.0 : -1.0) / (1.0 + i);
      growing[i] = (i % 2 == 0 ? 1.0 : -1.0) * (1.0 + i);
    }
    assertEquals(4999, counted(shrinking).size());
    assertEquals(4999, counted(growing).size());
  }

  // ---- cycle life -------------------------------------------------------------------------------

  private static final List<CyclesAt> POINTS =
      List.of(new CyclesAt(0.2, 4000.0), new CyclesAt(0.8, 500.0));

  /** Slope ln(8) / ln(4) = 1.5: at 40 % 4000 / 2^1.5. */
  @Test
  void lifeRunsStraightOnLogarithmicAxes() {
    var life = new CycleLife(POINTS);
    assertEquals(4000.0, life.cycles(0.2), 1e-9);
    assertEquals(500.0, life.cycles(0.8), 1e-9);
    assertEquals(4000.0 / Math.pow(2.0, 1.5), life.cycles(0.4), 1e-9);
    assertEquals(4000.0 * Math.pow(2.0, 1.5), life.cycles(0.1), 1e-6);
    assertEquals(2000.0, new CycleLife(List.of(new CyclesAt(0.5, 1000.0))).cycles(0.25), 1e-9);
  }

  @Test
  void damageAddsUp() {
    var life = new CycleLife(POINTS);
    for (int i = 0; i < 250; i++) {
      life.cycle(0.8, 0.5, 1.0);
    }
    assertEquals(0.5, life.damageShare(), 1e-9);
    life.cycle(0.2, 0.5, 0.5);
    assertEquals(0.5 + 0.5 / 4000.0, life.damageShare(), 1e-12);
    life.cycle(1e-5, 0.5, 1.0);
    assertEquals(0.5 + 0.5 / 4000.0, life.damageShare(), 1e-12);
  }

  // ---- a year -----------------------------------------------------------------------------------

  private static LifeSheet life(double calendarYears, double endShare) {
    return new LifeSheet(POINTS, 0.7, calendarYears * LifeSheet.HOURS_IN_YEAR, endShare, null, 0);
  }

  /**
   * 365 cycles of 80 % from a sheet of 500 to 70 %: 30 % of 365 / 500; ten years to 80 %: 2 % a
   * year.
   */
  @Test
  void aYearOfDeepCycles() {
    var charge = new double[8760];
    for (int h = 0; h < 8760; h++) {
      charge[h] = h % 24 < 12 ? 0.9 - 0.8 * (h % 24) / 12.0 : 0.1 + 0.8 * (h % 24 - 12) / 12.0;
    }
    var atC = new double[8760];
    Arrays.fill(atC, 25.0);
    Ageing.Fade fade = Ageing.year(charge, atC, Chemistry.LITHIUM_IRON_PHOSPHATE, life(10.0, 0.8));
    assertEquals(0.3 * 365.0 / 500.0, fade.cycleShare(), 1e-3);
    assertEquals(0.02, fade.calendarShare(), 1e-6);
    var twice = Arrays.copyOf(charge, 17_520);
    System.arraycopy(charge, 0, twice, 8760, 8760);
    var twiceC = new double[17_520];
    Arrays.fill(twiceC, 25.0);
    Ageing.Fade mean =
        Ageing.year(twice, twiceC, Chemistry.LITHIUM_IRON_PHOSPHATE, life(10.0, 0.8));
    assertEquals(fade.totalShare(), mean.totalShare(), 1e-3);
  }

  @Test
  void heatAgesAndChargeTells() {
    assertEquals(
        2.0, Ageing.standingFactor(Chemistry.LEAD_ACID_FLOODED, 1.0, 35.0), 1e-12, "half the life");
    assertEquals(1.0, Ageing.standingFactor(Chemistry.LEAD_ACID_SEALED, 1.0, 25.0), 1e-12);
    assertEquals(1.0, Ageing.standingFactor(Chemistry.LITHIUM_IRON_PHOSPHATE, 0.5, 25.0), 1e-12);
    assertTrue(
        Ageing.standingFactor(Chemistry.LITHIUM_IRON_PHOSPHATE, 1.0, 25.0)
            > Ageing.standingFactor(Chemistry.LITHIUM_IRON_PHOSPHATE, 0.2, 25.0));
    assertTrue(
        Ageing.standingFactor(Chemistry.LEAD_ACID_FLOODED, 1.0, 25.0)
            < Ageing.standingFactor(Chemistry.LEAD_ACID_FLOODED, 0.2, 25.0));
    // the published activation energy: rates at 45 and 25 °C stand as the published losses do
    assertEquals(
        LithiumFade.byChargeMovedShare(45.0, 5000.0, 2.2)
            / LithiumFade.byChargeMovedShare(25.0, 5000.0, 2.2),
        Ageing.standingFactor(Chemistry.LITHIUM_IRON_PHOSPHATE, 0.5, 45.0),
        1e-9);
  }

  // ---- service ----------------------------------------------------------------------------------

  private static BankSpec bank() {
    return new BankSpec(
            "b",
            Chemistry.LITHIUM_IRON_PHOSPHATE,
            1,
            10_000.0,
            51.2,
            1.0,
            0.1,
            0.97,
            0.97,
            5000.0,
            5000.0,
            0.0,
            List.of(new BankSpec.CapacityAt(25.0, 1.0)),
            0.0,
            0.0,
            new Enclosure.Indoors(20.0))
        .withLife(life(10.0, 0.8));
  }

  /** Nothing but standing at 25 °C, half charged: 2 % a year, 80 % after ten years. */
  @Test
  void capacityIsFollowedToItsReplacement() {
    var half = new double[8760];
    Arrays.fill(half, 0.5);
    var warm = new double[8760];
    Arrays.fill(warm, 25.0);
    var seen = new ArrayList<Double>();
    var hours =
        new ServiceLife.Hours() {
          @Override
          public double[] chargeShare(int number, BankSpec bank) {
            seen.add(bank.usableWh());
            return half;
          }

          @Override
          public double[] temperatureC(int number) {
            return warm;
          }
        };
    ServiceLife got = ServiceLife.follow(bank(), 12, hours);
    assertEquals(12, got.years().size());
    assertEquals(0.98, got.years().get(1).healthShare(), 1e-9);
    assertEquals(9000.0, seen.get(0), 1e-9);
    assertEquals(9000.0 * 0.9, seen.get(5), 1e-6);
    Double replaced = got.replacementYears();
    assertTrue(replaced != null && Math.abs(replaced - 10.0) < 1e-6, "after " + replaced);
    assertNull(ServiceLife.follow(bank(), 9, hours).replacementYears());
    assertEquals(0.0, ServiceLife.follow(bank().withHealth(0.7), 2, hours).replacementYears());
    assertThrows(IllegalArgumentException.class, () -> ServiceLife.follow(bank(), 0, hours));
  }

  // ---- full charge ------------------------------------------------------------------------------

  @Test
  void theLongestTimeWithoutAFullCharge() {
    var charge = new double[24 * 40];
    Arrays.fill(charge, 0.7);
    charge[24 * 5] = 0.99;
    charge[24 * 25] = 1.0;
    charge[24 * 25 + 1] = 1.0;
    FullCharge line = FullCharge.read(charge, 1.0, false);
    assertEquals(new FullCharge(24 * 20 - 1, 24 * 5 + 1, 2), line);
    // as a ring the last 15 days join the first 5: one hour less of full ones on either side
    FullCharge ring = FullCharge.read(charge, 1.0, true);
    assertEquals(24 * 20 - 1, ring.longestH());
    charge[24 * 5] = 0.7;
    assertEquals(24 * 40 - 2, FullCharge.read(charge, 1.0, true).longestH());
    assertEquals(24 * 25 + 2, FullCharge.read(charge, 1.0, true).fromHour());
    Arrays.fill(charge, 0.5);
    assertEquals(new FullCharge(960, 0, 0), FullCharge.read(charge, 1.0, true));
    assertEquals(new FullCharge(0, 0, 1), FullCharge.read(new double[] {1.0, 1.0}, 1.0, false));
  }

  @Test
  void onlyLeadAcidIsWarnedOf() {
    var long20 = new FullCharge(20 * 24, 0, 3);
    assertEquals(List.of(), long20.cautions(bank()));
    BankSpec lead = bank().withLife(LifeSheet.usual(Chemistry.LEAD_ACID_FLOODED));
    assertEquals(1, long20.cautions(lead).size());
    assertTrue(long20.cautions(lead).get(0).startsWith("The bank goes 20 days without a full"));
    assertEquals(List.of(), new FullCharge(14 * 24, 0, 3).cautions(lead));
  }
}
