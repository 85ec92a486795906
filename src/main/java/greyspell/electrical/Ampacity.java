package greyspell.electrical;

/**
 * What current a wire's insulation bears without overheating, by the handbook's table.
 *
 * <pre>
 * I(Ta) = n It k(Ta),     k = sqrt[(Tr - Ta) / (Tr - 30)], two decimals
 *
 * It  of the table at 30 °C of air          A     copper, 14 AWG to 4/0, columns 75 and 90 °C
 * Tr  insulation rating                     °C    75 or 90
 * Ta  upper end of the air's 5 K step       °C    10 or less counts as 10; at Tr and above 0 A
 * n   wires side by side in each direction
 * </pre>
 *
 * For up to three loaded wires in a raceway or cable: more wires, sun on a roof or thermal
 * insulation bear less. Aluminium and mm² are not in this table and are not judged by it: their
 * insulation and laying are others', so no size is borrowed from the nearest AWG.
 *
 * <p>Sources: NEC 310.16, 2023 edition (table seen second-hand; older editions print 110 and 150 A
 * for 3 and 1 AWG at 90 °C); factors NEC Table 310.15(B)(1)(1) and the equation behind it, 2023
 * edition (seen second-hand). Held by ElectricalPublishedTest.
 */
public final class Ampacity {
  public static final String SOURCE = "NEC 310.16, 2023 edition";
  private static final double TABLE_AIR_C = 30.0;
  private static final double STEP_K = 5.0;
  private static final double COOLEST_STEP_C = 10.0;
  private static final double DECIMALS = 100.0;

  private Ampacity() {}

  /** Insulation column. */
  public enum Insulation {
    C75(75.0),
    C90(90.0);

    private final double ratingC;

    Insulation(double ratingC) {
      this.ratingC = ratingC;
    }

    public double ratingC() {
      return ratingC;
    }
  }

  /** One copper wire at 30 °C; 0 for a size that is not in the table. */
  public static double tableA(WireSize size, Insulation insulation) {
    return insulation == Insulation.C75 ? size.ampacity75A() : size.ampacity90A();
  }

  /** Correction for the air around the wire. */
  public static double ambientFactor(Insulation insulation, double ambientC) {
    double stepC = Math.max(COOLEST_STEP_C, Math.ceil(ambientC / STEP_K) * STEP_K);
    double room = (insulation.ratingC() - stepC) / (insulation.ratingC() - TABLE_AIR_C);
    return room > 0.0 ? Math.rint(Math.sqrt(room) * DECIMALS) / DECIMALS : 0.0;
  }
}
