package greyspell.electrical;

import org.jspecify.annotations.Nullable;

/**
 * How much a crystalline silicon module's open-circuit voltage rises in the cold, by the handbook's
 * table: a cross-check where the maker states a coefficient.
 *
 * <pre>
 * Voc(T) = f(T) Voc
 *
 * f  1.00 from 25 °C upward, then one step a 5 K: 1.02 for 24 .. 20 °C down to 1.25 for -36 .. -40 °C
 * T  lowest expected air temperature   °C   -40 upward
 * </pre>
 *
 * Between two printed whole degrees the colder step is taken. Below -40 °C the table ends and there
 * is no answer.
 *
 * <p>Source: NEC (NFPA 70), Table 690.7(A), 2017 to 2023 editions (from memory). Held by
 * ElectricalPublishedTest.
 */
public final class ColdTable {
  public static final String SOURCE = "NEC Table 690.7(A), 2017 to 2023 editions";
  private static final double WARMEST_C = 25.0;
  private static final double STEP_K = 5.0;

  private static final double[] FACTOR = {
    1.02, 1.04, 1.06, 1.08, 1.10, 1.12, 1.14, 1.16, 1.18, 1.20, 1.21, 1.23, 1.25
  };
  // The printed steps are 24 to 20, 19 to 15 ... 4 to 0, then -1 to -5: each ends on a multiple.
  private static final double COLDEST_C = WARMEST_C - STEP_K * 13.0;

  private ColdTable() {}

  /** Null below the end of the table. */
  public static @Nullable Double factor(double coldestC) {
    if (coldestC >= WARMEST_C) {
      return 1.0;
    }
    if (!(coldestC >= COLDEST_C)) {
      return null;
    }
    return FACTOR[(int) Math.ceil((WARMEST_C - coldestC) / STEP_K) - 1];
  }
}
