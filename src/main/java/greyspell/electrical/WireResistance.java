package greyspell.electrical;

/**
 * Resistance of a wire, warm as it works.
 *
 * <pre>
 * R(T) = Rt (T0 + T) / (T0 + Tt)        copper T0 = 234.5 K, aluminium T0 = 228.1 K
 * aluminium at 20 °C = copper at 20 °C / 0.61
 * there and back: 2 L R / n
 *
 * Rt  of the table at Tt (75 °C for AWG, 20 °C for mm²)   Ohm/m
 * T   of the metal                                        °C     -50 .. 150
 * L   one-way length                                      m      n  wires side by side
 * </pre>
 *
 * Aluminium has no table here: it follows from copper by its conductivity of 61 per cent of
 * copper's (from memory), which is within some per cent of printed tables. Tinned copper is about
 * 2.5 per cent above. Nothing is clamped. Contacts, fuses and switches come on top.
 *
 * <p>Sources: as {@link WireSize}; temperature factor IEC 60228, annex (seen second-hand), for
 * aluminium from memory. Held by ElectricalPublishedTest and ConductorJudgeTest.
 */
public final class WireResistance {
  private static final double COPPER_ZERO_K = 234.5;
  private static final double ALUMINIUM_ZERO_K = 228.1;
  private static final double ALUMINIUM_CONDUCTIVITY_SHARE = 0.61;
  private static final double REFERENCE_C = 20.0;

  private WireResistance() {}

  /** What the wire is drawn from. */
  public enum Metal {
    COPPER,
    ALUMINIUM
  }

  /** One wire. */
  public static double ohmPerM(
      WireSize size, WireSize.Strands strands, Metal metal, double conductorC) {
    double tableOhmPerM = size.ohmPerM(strands);
    if (metal == Metal.COPPER) {
      return tableOhmPerM * copperFactor(size.tableC(), conductorC);
    }
    return tableOhmPerM
        * copperFactor(size.tableC(), REFERENCE_C)
        / ALUMINIUM_CONDUCTIVITY_SHARE
        * (ALUMINIUM_ZERO_K + conductorC)
        / (ALUMINIUM_ZERO_K + REFERENCE_C);
  }

  /** Copper at one temperature over copper at another. */
  public static double copperFactor(double fromC, double toC) {
    return (COPPER_ZERO_K + toC) / (COPPER_ZERO_K + fromC);
  }

  /** There and back. */
  public static double loopOhm(ConductorRun run, double conductorC) {
    return 2.0
        * run.lengthM()
        * ohmPerM(run.size(), run.strands(), run.metal(), conductorC)
        / run.inParallel();
  }
}
