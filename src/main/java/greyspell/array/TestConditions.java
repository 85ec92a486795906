package greyspell.array;

/** Standard test conditions of a data sheet: 1000 W/m², 25 °C cell, air mass 1.5. */
public final class TestConditions {
  public static final double IRRADIANCE_WM2 = 1000.0;
  public static final double CELL_C = 25.0;

  private TestConditions() {}
}
