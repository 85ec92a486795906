package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Two ways of computing the same curve agree. */
class LambertFormTest {
  private static final double SAME = 1e-9;

  /** Omega constant: W(1) = 0.567143290409783872999968662210. */
  @Test
  void omegaConstantAndLargeArguments() {
    assertEquals(0.5671432904097838, LambertForm.w(0.0), 1e-15);
    double w = LambertForm.w(5000.0);
    assertEquals(5000.0, w + Math.log(w), 1e-11);
    assertEquals(1e-9, LambertForm.w(Math.log(1e-9)), 1.1e-18);
  }

  @Property(tries = 3000)
  void currentVoltageAndMaximumPowerAgreeWithTheSolver(@ForAll long seed) {
    var random = new Random(seed);
    ModuleSpec sheet =
        random.nextInt(4) == 0
            ? Sheets.USUAL.get(random.nextInt(Sheets.USUAL.size()))
            : Sheets.random(random);
    SingleDiode diode = Sheets.diode(DataSheetFit.of(sheet));
    double irradianceWm2 = 5.0 + 1295.0 * random.nextDouble();
    double cellC = -40.0 + 130.0 * random.nextDouble();
    DiodeParameters p = diode.at(irradianceWm2, cellC);
    if (p.seriesOhm() < 1e-6 || Double.isInfinite(p.shuntOhm())) {
      return; // the closed form divides by both
    }
    CurvePoint closed = LambertForm.maxPower(p);
    assertEquals(closed.powerW(), diode.maxPowerW(irradianceWm2, cellC), SAME * closed.powerW());
    assertEquals(
        closed.voltageV(), diode.maxPowerV(irradianceWm2, cellC), SAME * closed.voltageV());
    double isc = LambertForm.currentA(p, 0.0);
    for (double share : new double[] {0.0, 0.3, 0.7, 0.85, 0.95, 1.05}) {
      double v = share * sheet.openCircuitV();
      assertEquals(
          LambertForm.currentA(p, v),
          diode.currentA(irradianceWm2, cellC, v),
          SAME * Math.max(isc, Math.abs(LambertForm.currentA(p, v))));
    }
    for (double share : new double[] {0.0, 0.2, 0.6, 0.9}) {
      double v = LambertForm.voltageV(p, share * isc);
      double x =
          SingleDiode.diodeVoltageV(
              p.lightA(), p.saturationA(), 1.0 / p.shuntOhm(), p.idealityV(), share * isc);
      assertEquals(v, x - share * isc * p.seriesOhm(), SAME * sheet.openCircuitV());
    }
    assertEquals(
        LambertForm.voltageV(p, 0.0),
        diode.openCircuitV(irradianceWm2, cellC),
        SAME * sheet.openCircuitV());
  }
}
