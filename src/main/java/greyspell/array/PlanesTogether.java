package greyspell.array;

import java.util.List;

/**
 * What two strings that look different ways bring on controller inputs of their own, joined in
 * parallel, and joined in a row.
 *
 * <pre>
 * own      = max P1 + max P2
 * parallel = max of V [I1(V) + I2(V)]
 * in a row = max of I [V1(I) + V2(I)],   bypassed where that is more
 *
 * own is never below parallel, nor below the row without bypass drops: one working point serves both
 * </pre>
 *
 * In parallel the two share a voltage, which moves little with light, so that little is lost if
 * they hold the same number of like modules. In a row they share a current, which falls with the
 * light: the darker string holds the brighter one down, or is bypassed and gives nothing. Source:
 * Kirchhoff's laws on {@link PanelCurve}. Held by PlanesTogetherTest.
 *
 * @param first working point of the first string on an input of its own
 * @param second of the second
 * @param parallel of both in parallel
 * @param series of both in a row
 */
public record PlanesTogether(
    CurvePoint first, CurvePoint second, CurvePoint parallel, CurvePoint series) {

  public static PlanesTogether of(LitString first, LitString second) {
    return new PlanesTogether(
        PanelCurve.of(StringCurve.of(first)).maxPower(),
        PanelCurve.of(StringCurve.of(second)).maxPower(),
        inParallel(first, second).maxPower(),
        inSeries(first, second).maxPower());
  }

  public static PanelCurve inParallel(LitString first, LitString second) {
    return PanelCurve.of(StringCurve.of(first), StringCurve.of(second));
  }

  public static PanelCurve inSeries(LitString first, LitString second) {
    return PanelCurve.of(
        StringCurve.of(List.of(first.cells(), second.cells()), StringCurve.USUAL_BYPASS_DROP_V));
  }

  public double separateW() {
    return first.powerW() + second.powerW();
  }

  /** Part of what own inputs would give that is lost in parallel. */
  public double parallelLossShare() {
    return lossShare(parallel.powerW(), separateW());
  }

  /** Part of what own inputs would give that is lost in a row. */
  public double seriesLossShare() {
    return lossShare(series.powerW(), separateW());
  }

  /**
   * The same over many hours, for planes of one string each. Not for the hourly loop: about a tenth
   * of a millisecond an hour.
   *
   * @param firstCells light and cell temperature of the first plane, see {@link CellHours}
   */
  public static Energy over(
      LitString first, CellHours firstCells, LitString second, CellHours secondCells) {
    double separateWh = 0.0;
    double parallelWh = 0.0;
    double seriesWh = 0.0;
    for (int h = 0; h < firstCells.hours(); h++) {
      double firstWm2 = firstCells.lightWm2()[h];
      double secondWm2 = secondCells.lightWm2()[h];
      if (!(firstWm2 > 0.0 || secondWm2 > 0.0)) {
        continue;
      }
      PlanesTogether now =
          of(
              lit(first, firstWm2, firstCells.cellC()[h]),
              lit(second, secondWm2, secondCells.cellC()[h]));
      separateWh += now.separateW();
      parallelWh += now.parallel().powerW();
      seriesWh += now.series().powerW();
    }
    return new Energy(separateWh, parallelWh, seriesWh);
  }

  /** Energy over many hours in the three ways of joining. */
  public record Energy(double separateWh, double parallelWh, double seriesWh) {
    public double parallelLossShare() {
      return lossShare(parallelWh, separateWh);
    }

    public double seriesLossShare() {
      return lossShare(seriesWh, separateWh);
    }
  }

  private static LitString lit(LitString string, double irradianceWm2, double cellC) {
    return new LitString(
        string.diode(), string.inSeries(), string.bypassGroups(), irradianceWm2, cellC);
  }

  private static double lossShare(double got, double most) {
    return most > 0.0 ? 1.0 - got / most : 0.0;
  }
}
