package greyspell.array;

import greyspell.published.PublishedCheck;
import greyspell.published.PublishedChecks;
import java.util.List;
import java.util.function.DoubleSupplier;

class ArrayPublishedTest implements PublishedChecks {
  private static final String VILLALVA =
      "Villalva, Gazoli, Filho (2009), Comprehensive approach to modeling and simulation of"
          + " photovoltaic arrays, IEEE Trans. Power Electronics 24, tables I and II; data sheet seen"
          + " second-hand, fitted parameters (from memory)";
  private static final String NOMINAL =
      "definition of nominal operating cell temperature, 800 W/m², 20 °C, 1 m/s; recomputed apart (from memory)";
  private static final String FAIMAN =
      "Faiman (2008), Progress in Photovoltaics 16, 307-315; values recomputed apart from its formula (from memory)";

  /** The paper's own parameters, not De Soto's: a is 1.3 times 54 cells times kT/q. */
  private static final SingleDiode PAPER =
      new SingleDiode(
          new DiodeParameters(
              8.214,
              9.825e-8,
              0.221,
              415.405,
              1.3 * 54 * SingleDiode.BOLTZMANN_EV_PER_K * SingleDiode.REFERENCE_K),
          0.0032,
          SingleDiode.SILICON_BAND_GAP_EV,
          0.0);

  @Override
  public List<PublishedCheck> checks() {
    return List.of(
        check(
            VILLALVA,
            "54-cell module, power of the fitted curve at 26.3 V",
            "W",
            200.143,
            0.05,
            () -> 26.3 * PAPER.currentA(1000.0, 25.0, 26.3)),
        check(
            VILLALVA,
            "54-cell module, maximum power of the fitted curve",
            "W",
            200.143,
            0.05,
            () -> PAPER.maxPowerW(1000.0, 25.0)),
        check(
            VILLALVA,
            "54-cell module, short-circuit current of the fitted curve",
            "A",
            8.21,
            0.005,
            () -> PAPER.shortCircuitA(1000.0, 25.0)),
        check(
            VILLALVA,
            "54-cell module, open-circuit voltage of the fitted curve",
            "V",
            32.9,
            0.05,
            () -> PAPER.openCircuitV(1000.0, 25.0)),
        check(
            NOMINAL,
            "45 °C nominal, 10 °C air, 1000 W/m²",
            "°C",
            41.25,
            1e-9,
            () -> new NominalCell(45.0).cellC(1000.0, 10.0, 1.0)),
        check(
            NOMINAL,
            "45 °C nominal, -10 °C air, 600 W/m²",
            "°C",
            8.75,
            1e-9,
            () -> new NominalCell(45.0).cellC(600.0, -10.0, 1.0)),
        check(
            FAIMAN,
            "above air at 800 W/m², 1 m/s, u0 25.0, u1 6.84",
            "K",
            25.126,
            1e-3,
            () -> new FaimanCell(25.0, 6.84).cellC(800.0, 0.0, 1.0)),
        check(
            FAIMAN,
            "above air at 1000 W/m², 5 m/s, u0 25.0, u1 6.84",
            "K",
            16.892,
            1e-3,
            () -> new FaimanCell(25.0, 6.84).cellC(1000.0, 0.0, 5.0)));
  }

  private static PublishedCheck check(
      String source,
      String what,
      String unit,
      double expected,
      double tolerance,
      DoubleSupplier got) {
    return new PublishedCheck("array", source, what, unit, expected, tolerance, got);
  }
}
