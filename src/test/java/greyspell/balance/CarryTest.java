package greyspell.balance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class CarryTest {
  /** 8 kWh usable, 95 % out, 312.5 W, no sun: 24.32 h from any day. */
  @Test
  void noSunIsUsableEnergyOverLoad() {
    var loadWh = new double[72];
    Arrays.fill(loadWh, 312.5);
    double[] hours =
        new Carry(Houses.plain(new double[72], loadWh), Houses.perfect(8000, 1, 0.95))
            .hoursFromEachDay(1000);
    assertEquals(3, hours.length);
    for (double carried : hours) {
      assertEquals(24.32, carried, 1e-9);
    }
  }

  @Test
  void aHouseThatIsAlwaysServedIsCarriedForTheLongestTime() {
    var sunWh = new double[48];
    Arrays.fill(sunWh, 500.0);
    var loadWh = new double[48];
    Arrays.fill(loadWh, 400.0);
    assertEquals(
        77.0,
        new Carry(Houses.plain(sunWh, loadWh), Houses.perfect(1000, 1, 1)).hoursFromEachDay(77)[0],
        0.0);
  }

  /** A second source carries as sun on the same bus does. */
  @Property(tries = 30)
  void aSecondSourceCountsAsSunDoes(@ForAll long seed) {
    Forcing sun = Houses.random(seed, 20);
    var columns = sun.columns();
    columns.solarBusWh = new double[sun.hours()];
    columns.otherBusWh = new double[sun.hours()];
    for (int h = 0; h < sun.hours(); h++) {
      columns.otherBusWh[h] = 0.25 * sun.solarBusWh()[h];
      columns.solarBusWh[h] = 0.75 * sun.solarBusWh()[h];
    }
    Design design = Houses.randomDesign(seed);
    assertArrayEquals(
        new Carry(sun, design).hoursFromEachDay(480.0),
        new Carry(new Forcing(sun.calendar(), columns), design).hoursFromEachDay(480.0),
        1e-6);
  }

  /** Against the plain form, started full at each midnight and the weather put twice in a row. */
  @Property(tries = 60)
  void agreesWithThePlainForm(@ForAll long seed) {
    int days = 20;
    Forcing forcing = Houses.random(seed, days);
    Design design = Houses.randomDesign(seed);
    double[] carried = new Carry(forcing, design).hoursFromEachDay(24.0 * days);
    for (int day = 0; day < days; day++) {
      assertEquals(byPlain(forcing, design, day * 24, 24 * days), carried[day], 1e-6, "day " + day);
    }
  }

  private static double byPlain(Forcing forcing, Design design, int start, int hours) {
    var plain = new PlainBalance(design.bank().windowWh());
    for (int t = start; t < start + hours; t++) {
      int h = t % forcing.hours();
      plain.hour(forcing, h, design);
      double needWh = BusNeed.wh(forcing, design.inverter())[h];
      double suppliedWh = Math.min(forcing.solarBusWh()[h], needWh) + plain.outWh;
      if (suppliedWh < needWh - 1e-9) {
        return t - start + suppliedWh / needWh;
      }
    }
    return hours;
  }
}
