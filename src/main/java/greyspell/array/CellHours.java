package greyspell.array;

import greyspell.calendar.HourCalendar;
import org.jspecify.annotations.Nullable;

/**
 * Light that reaches a plane's cells, and how warm they get, hour by hour. The arrays are not
 * written.
 *
 * <pre>
 * light = absorbed (1 - shade) (1 - soiling)           W/m²
 * Tc    = cell temperature at front (1 - shade)        see {@link CellTemperature}
 *
 * front     light on the glass                         W/m²      shade, soiling   share, by month
 * absorbed  of it, what gets past the glass            W/m²
 * </pre>
 *
 * Dirt takes light from the cells but warms the glass, so it does not cool them. Without light the
 * cells are as warm as the air. Source: own bookkeeping. Held by SolarChainTest.
 */
public final class CellHours {
  private final double[] lightWm2;
  private final double[] cellC;

  private CellHours(int hours) {
    lightWm2 = new double[hours];
    cellC = new double[hours];
  }

  /**
   * Works out all hours of one plane.
   *
   * @param windMs null takes {@link SolarChain#ASSUMED_WIND_MS}
   */
  public static CellHours of(
      ArraySpec array,
      HourCalendar calendar,
      double[] frontWm2,
      double[] absorbedWm2,
      double[] airC,
      double @Nullable [] windMs) {
    var out = new CellHours(frontWm2.length);
    out.fill(array, calendar, frontWm2, absorbedWm2, airC, windMs);
    return out;
  }

  /** For {@link #fill}. */
  static CellHours empty(int hours) {
    return new CellHours(hours);
  }

  /** As {@link #of}, over what it held. */
  void fill(
      ArraySpec array,
      HourCalendar calendar,
      double[] frontWm2,
      double[] absorbedWm2,
      double[] airC,
      double @Nullable [] windMs) {
    int hours = lightWm2.length;
    if (frontWm2.length != hours
        || hours > calendar.hours()
        || absorbedWm2.length != hours
        || airC.length < hours) {
      throw new IllegalArgumentException("columns of different lengths");
    }
    CellTemperature heat = CellTemperature.of(array.module(), array.choices());
    for (int h = 0; h < hours; h++) {
      double front = frontWm2[h];
      if (!(front > 0.0)) {
        lightWm2[h] = 0.0;
        cellC[h] = airC[h];
        continue;
      }
      int month = calendar.month(h);
      double unshaded = 1.0 - array.shadeFraction().in(month);
      lightWm2[h] = absorbedWm2[h] * unshaded * (1.0 - array.soilingFraction().in(month));
      cellC[h] =
          heat.cellC(
              front * unshaded, airC[h], windMs == null ? SolarChain.ASSUMED_WIND_MS : windMs[h]);
    }
  }

  public int hours() {
    return lightWm2.length;
  }

  public double[] lightWm2() {
    return lightWm2;
  }

  public double[] cellC() {
    return cellC;
  }
}
