package greyspell.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/**
 * Heavy overcast, about a tenth of full sun: the open-circuit voltage stays above 90 % of its rated
 * value, two in a row read double, two in parallel the same (common practice, no source).
 */
class LowLightTest {
  private static final double OVERCAST_WM2 = 100.0;

  @Test
  void voltageHoldsUnderHeavyOvercastForEveryUsualSheet() {
    for (ModuleSpec sheet : Sheets.USUAL) {
      holds(sheet);
    }
  }

  @Property(tries = 1000)
  void voltageHoldsUnderHeavyOvercastForPlausibleSheets(@ForAll long seed) {
    ModuleSpec sheet = Sheets.random(new Random(seed));
    DiodeFit fit = DataSheetFit.of(sheet);
    if (fit.cautions().isEmpty()) {
      holds(sheet);
    }
  }

  private static void holds(ModuleSpec sheet) {
    SingleDiode diode = Sheets.diode(DataSheetFit.of(sheet));
    double v = diode.openCircuitV(OVERCAST_WM2, TestConditions.CELL_C);
    assertTrue(
        v > 0.9 * sheet.openCircuitV(),
        () -> sheet.name() + ": " + v + " V of " + sheet.openCircuitV() + " V");
    var one = new LitString(diode, 1, 3, OVERCAST_WM2, TestConditions.CELL_C);
    var two = new LitString(diode, 2, 3, OVERCAST_WM2, TestConditions.CELL_C);
    assertEquals(2.0 * v, StringCurve.of(two).openCircuitV(), 1e-9 * v);
    assertEquals(
        v,
        PanelCurve.of(List.of(StringCurve.of(one), StringCurve.of(one))).openCircuitV(),
        1e-9 * v);
  }

  /** Voc(G) = Voc + a ln(G / 1000), which leaves out the shunt alone (own construction). */
  @Test
  void openCircuitVoltageFollowsTheLogarithmOfLight() {
    for (ModuleSpec sheet : Sheets.USUAL) {
      SingleDiode diode = Sheets.diode(DataSheetFit.of(sheet));
      for (double g : new double[] {100.0, 200.0, 500.0, 800.0, 1200.0}) {
        double expected =
            sheet.openCircuitV() + diode.reference().idealityV() * Math.log(g / 1000.0);
        assertEquals(
            expected,
            diode.openCircuitV(g, TestConditions.CELL_C),
            0.0005 * sheet.openCircuitV(),
            sheet.name());
      }
    }
  }
}
